using System.Reflection;

namespace ConcreteAttach.Samples.Pages;

/// <summary>The tree that the program was built in.</summary>
internal static class Repository
{
    public static string Root { get; } = typeof(Repository).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>()
        .Single(attribute => attribute.Key == "RepositoryRoot").Value!;

    /// <summary>A file of docs/samples.</summary>
    public static string Sample(string name) => Path.Combine(Root, "docs", "samples", name);
}
