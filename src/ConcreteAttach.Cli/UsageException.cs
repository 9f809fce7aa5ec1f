namespace ConcreteAttach.Cli;

/// <summary>A command line that the tool does not understand.</summary>
internal sealed class UsageException(string message) : Exception(message);
