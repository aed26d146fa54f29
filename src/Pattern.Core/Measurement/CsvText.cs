namespace Pattern.Core.Measurement;

/// <summary>Writes comma-separated text (RFC 4180).</summary>
internal static class CsvText
{
    private static readonly char[] NeedQuotes = [',', '"', '\n', '\r'];

    /// <summary>A cell, in quotes where it needs them. What a table program would take for a formula gets an apostrophe before it.</summary>
    internal static string Cell(string words)
    {
        string plain = words.Length > 0 && words[0] is '=' or '@' ? "'" + words : words;
        return plain.IndexOfAny(NeedQuotes) < 0 ? plain : "\"" + plain.Replace("\"", "\"\"") + "\"";
    }
}
