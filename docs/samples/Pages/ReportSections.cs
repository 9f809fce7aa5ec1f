using ConcreteAttach.Presentation;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Samples.Pages;

/// <summary>A Markdown report taken apart at its headings, so that a page can show one section under a heading of its own.</summary>
internal sealed class ReportSections
{
    private readonly Dictionary<string, string> _sections = new(StringComparer.Ordinal);

    public ReportSections(AttachmentVerification verification, ReportOptions? options = null)
    {
        string heading = "";
        var lines = new List<string>();
        foreach (string line in MarkdownReport.Write(verification, options).Split('\n').Skip(1))
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
            {
                _sections.Add(heading, string.Join('\n', lines).Trim());
                heading = line[3..];
                lines.Clear();
            }
            else
            {
                lines.Add(line);
            }
        }

        _sections.Add(heading, string.Join('\n', lines).Trim());
    }

    /// <summary>The answer in a sentence or two.</summary>
    public string Answer => _sections[""];

    /// <summary>The section under a heading.</summary>
    public string this[string heading] => _sections[heading];

    /// <summary>The calculation of the load case that carries the sheets.</summary>
    public string Calculation => _sections.Single(section => section.Key.StartsWith("Calculation, load case ", StringComparison.Ordinal)).Value;

    /// <summary>How the load case that carries the sheets reaches the fasteners, without the table of forces.</summary>
    public string Distribution => _sections["Forces on the fasteners"][_sections["Forces on the fasteners"].IndexOf("### How load case", StringComparison.Ordinal)..];

    /// <summary>The notices; a sentence where there are none.</summary>
    public string Notices => _sections.GetValueOrDefault("Notices", "None.");
}
