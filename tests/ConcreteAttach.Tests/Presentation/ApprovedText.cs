using System.Reflection;

namespace ConcreteAttach.Tests.Presentation;

/// <summary>
/// Compares a text with the one that a person has read and approved, in <c>Approved/</c>. A text that differs is written beside it as
/// <c>.received</c>: read the difference, and where it is meant, rename the file.
/// </summary>
internal static class ApprovedText
{
    private static readonly string Folder = Path.Combine(
        typeof(ApprovedText).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == "RepositoryRoot").Value!, "tests", "ConcreteAttach.Tests", "Approved");

    public static void Verify(string text, string name)
    {
        string approvedFile = Path.Combine(Folder, name);
        string receivedFile = approvedFile + ".received";
        string approved = File.Exists(approvedFile) ? File.ReadAllText(approvedFile).Replace("\r\n", "\n", StringComparison.Ordinal) : "";
        if (approved == text)
        {
            File.Delete(receivedFile);
            return;
        }

        File.WriteAllText(receivedFile, text);
        string[] expected = approved.Split('\n'), found = text.Split('\n');
        int line = expected.Zip(found).TakeWhile(pair => pair.First == pair.Second).Count();
        Assert.Fail($"{name}, line {line + 1}\napproved: {Line(expected)}\nreceived: {Line(found)}\nThe whole text stands in {receivedFile}.");

        string Line(string[] lines) => line < lines.Length ? lines[line] : "(the end)";
    }
}
