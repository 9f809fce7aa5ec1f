using ConcreteAttach.Aci318;
using ConcreteAttach.Calculation;
using ConcreteAttach.Tests.Properties;
using ConcreteAttach.Verification;
using Xunit.Abstractions;

namespace ConcreteAttach.Tests.Calculation;

/// <summary>Sheets of random attachments hold together line by line, for a reader who has nothing but the printed text.</summary>
public sealed class SheetConsistencyTests(ITestOutputHelper output)
{
    private const int Attachments = 2_000;

    [Fact]
    public void Every_sheet_of_random_attachments_can_be_recomputed_from_what_it_shows()
    {
        var problems = new SortedDictionary<string, string>(StringComparer.Ordinal);
        var statuses = new Dictionary<(FailureModeKind, ModeStatus), int>();
        int steps = 0, branches = 0, count = 0;
        foreach (AttachmentSample sample in AttachmentSamples.Take(Attachments, seed: 1))
        {
            AttachmentVerification verification = sample.Prepared.Verify([sample.LoadCase], SheetScope.All);
            foreach (FailureMode mode in verification.Modes)
            {
                statuses[(mode.Kind, mode.Status)] = statuses.GetValueOrDefault((mode.Kind, mode.Status)) + 1;
            }

            IEnumerable<(string Name, CalculationSheet Sheet)> sheets =
            [
                .. verification.Distribution.Select(d => ("distribution", d.Sheet)),
                .. verification.Modes.Where(m => m.Sheet is not null).Select(m => (m.Kind.ToString(), m.Sheet!)),
            ];
            foreach ((string name, CalculationSheet sheet) in sheets)
            {
                SheetReader reader = SheetReader.Read(sheet);
                steps += reader.Steps;
                branches += reader.Branches;
                count += reader.Problems.Count;
                foreach (string problem in reader.Problems)
                {
                    // One example of each kind is enough to read.
                    problems.TryAdd($"{name}: {problem.Split(' ')[0]} {problem.Split(": ")[^1][..4]}", $"{name}: {problem}");
                }
            }
        }

        foreach (((FailureModeKind kind, ModeStatus status), int number) in statuses.OrderBy(s => s.Key))
        {
            output.WriteLine($"{kind} {status}: {number}");
        }

        output.WriteLine($"{steps} steps, {branches} comparisons");
        Assert.True(problems.Count == 0, $"{count} problems, such as\n{string.Join("\n", problems.Values.Take(40))}");
        Assert.InRange(steps, 20 * Attachments, int.MaxValue);
        Assert.InRange(branches, Attachments, int.MaxValue);
        Assert.True(statuses.ContainsKey((FailureModeKind.ConcreteBreakoutTension, ModeStatus.NotSatisfied)) && statuses.ContainsKey((FailureModeKind.ConcreteBreakoutTension, ModeStatus.Satisfied)));
    }

    /// <summary>
    /// In in., lbf, psi, mm, N and MPa nothing real is smaller than 1e-9: what a sum of forces or a difference of positions leaves behind is 0, not 0.000000000000071 lbf.
    /// </summary>
    [Fact]
    public void No_sheet_shows_rounding_noise()
    {
        var noise = new SortedSet<string>(StringComparer.Ordinal);
        foreach (AttachmentSample sample in AttachmentSamples.Take(500, seed: 1))
        {
            AttachmentVerification verification = sample.Prepared.Verify([sample.LoadCase], SheetScope.All);
            IEnumerable<(string Name, CalculationSheet Sheet)> sheets =
            [
                .. verification.Distribution.Select(d => ("distribution", d.Sheet)),
                .. verification.Modes.Where(m => m.Sheet is not null).Select(m => (m.Kind.ToString(), m.Sheet!)),
            ];
            noise.UnionWith(sheets.SelectMany(s => s.Sheet.Lines.OfType<ValueLine>().Where(l => l.Value != 0 && Math.Abs(l.Value) < 1e-9 && l.ShownValue is not ("0" or "0.0" or "0.00")).Select(l => $"{s.Name}: {l.Id}")));
        }

        Assert.Empty(noise);
    }
}
