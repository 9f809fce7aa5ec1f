namespace ConcreteAttach.Presentation.Drawings;

/// <summary>
/// How wide a text is at most. Each width is the largest that any of the usual free serif and sans-serif fonts, upright or italic, has for the character, so that a label is
/// never wider than the box that was kept free for it, whichever font a reader has.
/// </summary>
/// <remarks>Measured from the horizontal metrics of DejaVu Sans, DejaVu Serif, Liberation Sans, Liberation Serif and their italics.</remarks>
internal static class GlyphWidths
{
    /// <summary>What a character without a place in the table takes: the width of a wide capital letter.</summary>
    private const int Other = 105;

    /// <summary>In hundredths of the font size, from the blank (32) to the tilde (126).</summary>
    private static ReadOnlySpan<byte> Ascii =>
    [
        32, 41, 46, 84, 64, 96, 90, 28, 40, 40, 50, 84, 32, 37, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34, 84, 84, 84, 56,
        102, 73, 74, 77, 81, 73, 70, 80, 88, 40, 50, 75, 67, 103, 88, 82, 68, 82, 76, 69, 67, 85, 73, 103, 73, 73, 70, 40, 34, 40, 84, 56,
        50, 62, 65, 56, 65, 62, 38, 65, 65, 32, 31, 61, 32, 98, 65, 62, 65, 65, 48, 53, 41, 65, 60, 86, 60, 60, 53, 64, 34, 64, 84,
    ];

    /// <summary>Width of a text at a font size.</summary>
    public static double Of(string text, double size)
    {
        int sum = 0;
        foreach (char c in text)
        {
            sum += Of(c);
        }

        return sum * size / 100;
    }

    private static int Of(char c) => c switch
    {
        >= ' ' and <= '~' => Ascii[c - ' '],
        'ψ' or '−' or '×' or '≥' or '≤' or '±' or '≈' or '∞' => 84,
        'φ' or 'λ' or 'τ' or 'β' or 'θ' or 'κ' => 71,
        '·' => 32,
        '′' or '²' or '³' or '°' or '–' or '’' => 56,
        _ => Other,
    };
}
