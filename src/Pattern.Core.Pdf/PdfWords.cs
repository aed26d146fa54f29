using System.Text;

namespace Pattern.Core.Pdf;

/// <summary>Words as a PDF takes them.</summary>
internal static class PdfWords
{
    private const char Unreadable = '\uFFFD';

    /// <summary>The same words on one line: no control characters, no halves of characters.</summary>
    internal static string Clean(string words)
    {
        var clean = new StringBuilder(words.Length);
        for (int i = 0; i < words.Length; i++)
        {
            char c = words[i];
            if (char.IsHighSurrogate(c) && i + 1 < words.Length && char.IsLowSurrogate(words[i + 1]))
            {
                clean.Append(c).Append(words[++i]);
            }
            else if (c is '\t' or '\n' or '\r')
            {
                clean.Append(' ');
            }
            else
            {
                clean.Append(char.IsControl(c) || char.IsSurrogate(c) || c >= '\uFFFE' ? Unreadable : c);
            }
        }

        return clean.ToString();
    }
}
