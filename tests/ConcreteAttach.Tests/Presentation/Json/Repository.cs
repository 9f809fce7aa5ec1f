using System.Reflection;

namespace ConcreteAttach.Tests.Presentation.Json;

/// <summary>Files of the repository that the tests read.</summary>
internal static class Repository
{
    public static string Root { get; } =
        typeof(Repository).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == "RepositoryRoot").Value!;

    public static string Sample(string name) => Path.Combine(Root, "docs", "samples", name);

    public static IEnumerable<string> Samples => Directory.EnumerateFiles(Path.Combine(Root, "docs", "samples"), "*.json").Order(StringComparer.Ordinal);
}
