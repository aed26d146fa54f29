using System;
using System.Text;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>Words of a lesson as any writer takes them.</summary>
internal static class LessonText
{
    /// <summary>No line ends between a number and its fraction: 20 1/2 is not 20.</summary>
    internal static string Joined(string words)
    {
        var text = new StringBuilder(words);
        for (int i = 1; i + 1 < text.Length; i++)
        {
            if (text[i] == ' ' && char.IsDigit(text[i - 1]) && char.IsDigit(text[i + 1]))
            {
                text[i] = TapeText.NoBreakSpace;
            }
        }

        return text.ToString();
    }

    /// <summary>The words between the places to write in, in order: one more than there are places.</summary>
    internal static string[] AroundBlanks(string words) => Joined(words).Split([WorkedText.Blank], StringSplitOptions.None);

    /// <summary>Words without line ends and without marks that turn the direction of what follows: a name may hold anything.</summary>
    internal static string OneLine(string words)
    {
        var text = new StringBuilder(words.Length);
        foreach (char c in words)
        {
            if (c is not ((>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\u200E' or '\u200F'))
            {
                text.Append(char.IsControl(c) || c is '\u2028' or '\u2029' ? ' ' : c);
            }
        }

        return text.ToString();
    }
}
