using System.Collections.Immutable;
using ConcreteAttach.Calculation;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>How a run of a label is set.</summary>
internal enum RunStyle
{
    Upright,
    Italic,
    Subscript,
}

/// <summary>A piece of a label in one style.</summary>
internal readonly record struct LabelRun(string Text, RunStyle Style);

/// <summary>The text of a label: plain words, and symbols with an italic letter and an upright subscript as a textbook sets them.</summary>
internal sealed class LabelText
{
    /// <summary>Size of a subscript as a share of the size of its letter.</summary>
    public const double SubscriptSize = 0.75;

    private LabelText(ImmutableArray<LabelRun> runs) => Runs = runs;

    public ImmutableArray<LabelRun> Runs { get; }

    /// <summary>Text as it stands, such as the name of a load case.</summary>
    public static LabelText Plain(string text) => new([new(text, RunStyle.Upright)]);

    /// <summary>Text in which symbols of a sheet stand between braces: <c>{h_ef} = 8</c>.</summary>
    public static LabelText WithSymbols(string text)
    {
        var runs = ImmutableArray.CreateBuilder<LabelRun>();
        int at = 0;
        while (at < text.Length)
        {
            int open = text.IndexOf('{', at);
            if (open < 0)
            {
                runs.Add(new(text[at..], RunStyle.Upright));
                break;
            }

            if (open > at)
            {
                runs.Add(new(text[at..open], RunStyle.Upright));
            }

            int close = text.IndexOf('}', open);
            AddSymbol(runs, text[(open + 1)..close]);
            at = close + 1;
        }

        return new(runs.ToImmutable());
    }

    /// <summary>Largest width at a font size.</summary>
    public double Width(double size)
    {
        double width = 0;
        foreach (LabelRun run in Runs)
        {
            width += GlyphWidths.Of(run.Text, run.Style == RunStyle.Subscript ? SubscriptSize * size : size);
        }

        return width;
    }

    private static void AddSymbol(ImmutableArray<LabelRun>.Builder runs, string id)
    {
        int product = id.IndexOf(' ', StringComparison.Ordinal);
        if (product > 0)
        {
            AddSymbol(runs, id[..product]);
            AddSymbol(runs, id[(product + 1)..]);
            return;
        }

        (string stem, bool prime, string subscript) = SymbolText.Split(id);
        runs.Add(new(SymbolText.Greek(stem) + (prime ? "′" : ""), RunStyle.Italic));
        if (subscript.Length > 0)
        {
            runs.Add(new(SymbolText.Below(subscript).Replace('-', '−'), RunStyle.Subscript));
        }
    }
}
