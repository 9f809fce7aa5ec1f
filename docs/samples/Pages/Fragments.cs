using System.Text;
using System.Text.RegularExpressions;

namespace ConcreteAttach.Samples.Pages;

/// <summary>Pieces of Markdown that the pages include. The numbers of the pages stand in them, and nowhere else.</summary>
internal sealed partial class Fragments
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    public Fragments(string folder)
    {
        Folder = folder;
        Directory.CreateDirectory(folder);
    }

    public string Folder { get; }

    public int Count { get; private set; }

    /// <summary>Writes a fragment.</summary>
    /// <param name="name">File name without extension.</param>
    /// <param name="markdown">Its text, never empty: an empty piece would leave a hole in a page that nobody sees.</param>
    public void Write(string name, string markdown)
    {
        if (string.IsNullOrWhiteSpace(markdown))
        {
            throw new InvalidOperationException($"The fragment {name} is empty.");
        }

        File.WriteAllText(Path.Combine(Folder, name + ".md"), Formula().Replace(markdown.TrimEnd(), m => Breakable(m.Value)) + "\n", Utf8);
        Count++;
    }

    /// <summary>Writes text as it is printed, in a box.</summary>
    public void WriteText(string name, string text, string language = "text") =>
        Write(name, $"```{language}\n{text.TrimEnd()}\n```");

    /// <summary>A formula in parts, so that the page can break it before an equals sign; a comparison stays in one piece.</summary>
    private static string Breakable(string formula)
    {
        string[] parts = formula.Split(" = ");
        return parts.Length < 3 || Comparison().IsMatch(formula) ? formula : $"{parts[0]} = {string.Join("$ $= ", parts[1..])}";
    }

    [GeneratedRegex(@"\$[^$\n]+\$")]
    private static partial Regex Formula();

    [GeneratedRegex(@"<|>|\\le\b|\\ge\b")]
    private static partial Regex Comparison();
}
