using ConcreteAttach.Verification;

namespace ConcreteAttach.Cli;

/// <summary>The exit codes of the tool.</summary>
internal static class ExitCode
{
    public const int Holds = 0;
    public const int DoesNotHold = 1;
    public const int NotCovered = 2;
    public const int BadInput = 3;

    private static readonly int[] FromBestToWorst = [Holds, NotCovered, DoesNotHold, BadInput];

    public static int Of(Verdict verdict) => verdict switch
    {
        Verdict.Holds => Holds,
        Verdict.DoesNotHold => DoesNotHold,
        _ => NotCovered,
    };

    /// <summary>The worse of two, in the order 3, 1, 2, 0.</summary>
    public static int Worse(int one, int other) =>
        Array.IndexOf(FromBestToWorst, one) > Array.IndexOf(FromBestToWorst, other) ? one : other;
}
