namespace Pattern.Core.Measurement;

/// <summary>The fractions that Unicode has as one character, and its raised and lowered digits.</summary>
/// <remarks>Source: The Unicode Standard, blocks Latin-1 Supplement (U+00BC to U+00BE) and Number Forms (U+2150 to U+215F, U+2189),
/// and Superscripts and Subscripts. U+215F, one over what follows, is left to the reader.</remarks>
internal static class VulgarFractions
{
    internal const char OneOver = '\u215F';

    internal const string Raised = "\u2070\u00B9\u00B2\u00B3\u2074\u2075\u2076\u2077\u2078\u2079";

    internal const string Lowered = "\u2080\u2081\u2082\u2083\u2084\u2085\u2086\u2087\u2088\u2089";

    private static readonly (char Sign, int Numerator, int Denominator)[] All =
    [
        ('\u00BC', 1, 4), ('\u00BD', 1, 2), ('\u00BE', 3, 4),
        ('\u2150', 1, 7), ('\u2151', 1, 9), ('\u2152', 1, 10), ('\u2153', 1, 3), ('\u2154', 2, 3),
        ('\u2155', 1, 5), ('\u2156', 2, 5), ('\u2157', 3, 5), ('\u2158', 4, 5), ('\u2159', 1, 6), ('\u215A', 5, 6),
        ('\u215B', 1, 8), ('\u215C', 3, 8), ('\u215D', 5, 8), ('\u215E', 7, 8), ('\u2189', 0, 3),
    ];

    internal static char? Find(long numerator, long denominator)
    {
        foreach ((char sign, int over, int under) in All)
        {
            if (over == numerator && under == denominator)
            {
                return sign;
            }
        }

        return null;
    }

    internal static bool TryRead(char sign, out int numerator, out int denominator)
    {
        foreach ((char candidate, int over, int under) in All)
        {
            if (candidate == sign)
            {
                (numerator, denominator) = (over, under);
                return true;
            }
        }

        (numerator, denominator) = (0, 1);
        return false;
    }
}
