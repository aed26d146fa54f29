namespace Pattern.Core.Pieces;

/// <summary>How much room text takes, when nobody knows in which type it will be set.</summary>
/// <remarks>No type is at hand where a drawing is made, and the one that a viewer shows it in is not ours to choose. So for each character the
/// table holds the largest of the advance widths of three usual sans serif types: Inter, DejaVu Sans (the widest, which most Linux systems fall
/// back to) and Helvetica, whose widths Arial shares. What it measures is therefore never too little for these, and about an eighth too much for Helvetica.</remarks>
internal static class TypeWidths
{
    /// <summary>From the base line up to the top of a capital with an accent, in parts of the size.</summary>
    internal const double Ascent = 0.82;

    /// <summary>From the base line down to the lowest part of a letter or bracket, in parts of the size.</summary>
    internal const double Descent = 0.24;

    private const char First = ' ';
    private const char Last = '~';
    private const int Thousand = 1000;

    // Thousandths of the size, from the blank to the tilde.
    private static readonly short[] Regular =
    [
        318, 401, 460, 838, 655, 950, 780, 275, 409, 409, 565, 838, 318, 469, 318, 390,
        688, 636, 636, 659, 678, 645, 660, 636, 661, 660, 337, 337, 838, 838, 838, 562,
        1031, 748, 686, 752, 770, 667, 611, 778, 752, 295, 570, 690, 567, 915, 748, 787,
        667, 787, 722, 667, 668, 732, 748, 1036, 714, 724, 685, 409, 390, 409, 838, 556,
        500, 613, 635, 587, 635, 615, 386, 635, 634, 278, 278, 582, 278, 974, 634, 614,
        635, 635, 411, 562, 392, 634, 592, 850, 592, 592, 572, 636, 374, 636, 838,
    ];

    private static readonly short[] Bold =
    [
        348, 456, 521, 838, 696, 1002, 872, 306, 457, 457, 599, 838, 380, 497, 380, 413,
        729, 696, 696, 699, 719, 696, 700, 696, 700, 700, 400, 400, 838, 838, 838, 611,
        1093, 793, 762, 797, 830, 683, 683, 821, 837, 372, 604, 775, 637, 995, 837, 850,
        733, 850, 770, 720, 708, 812, 793, 1103, 771, 767, 725, 457, 410, 457, 838, 556,
        527, 675, 716, 622, 716, 678, 435, 716, 712, 343, 343, 665, 343, 1042, 712, 687,
        716, 716, 493, 596, 478, 712, 652, 924, 645, 652, 608, 712, 396, 712, 838,
    ];

    /// <summary>The width of a line of text in type of the usual weight.</summary>
    internal static double RegularMm(string text, double sizeMm) => WidthMm(text, sizeMm, Regular, 1030);

    /// <summary>The width of a line of text in bold type.</summary>
    internal static double BoldMm(string text, double sizeMm) => WidthMm(text, sizeMm, Bold, 1110);

    private static double WidthMm(string text, double sizeMm, short[] table, int other)
    {
        int sum = 0;
        foreach (char c in text)
        {
            sum += WidthOf(c, table, other);
        }

        return sum * sizeMm / Thousand;
    }

    private static int WidthOf(char c, short[] table, int other)
    {
        if (c is >= First and <= Last)
        {
            return table[c - First];
        }

        return c switch
        {
            '\u00A0' => table[0],
            '\u00B7' => table['.' - First],
            '\u2032' or '\u2033' => table['"' - First],

            // Superscript and subscript digits, the fraction stroke between them.
            '\u00B2' or '\u00B3' or '\u00B9' or (>= '\u2070' and <= '\u2089') or '\u2044' => 465,

            // Letters with accents are as wide as the widest small or capital letter that takes one.
            >= '\u00DF' and <= '\u00FF' when c is not '\u00E6' => table['o' - First] + 30,
            >= '\u00C0' and <= '\u00DE' when c is not '\u00C6' => table['O' - First],

            // One whole size for anything else: fractions, dashes, letters of other scripts. A pair of surrogates counts twice.
            _ => other,
        };
    }
}
