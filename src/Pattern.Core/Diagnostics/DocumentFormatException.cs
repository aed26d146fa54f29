using System;
using System.Globalization;
using System.Text;

namespace Pattern.Core.Diagnostics;

/// <summary>A file cannot be read as a pattern: what was found, where, and what is allowed there. Nothing of it was taken over.</summary>
/// <remarks>A refusal by the library itself, of a measurement or a panel, is the <see cref="Exception.InnerException"/>.</remarks>
public sealed class DocumentFormatException : FormatException
{
    // Together with what a refusal of the library repeats: less than any message may.
    private const int MostPath = 70;
    private const int MostFound = 80;

    internal DocumentFormatException(DiagnosticCode code, string path, int line, int column, string found, string allowed, Exception? cause = null)
        : base(MessageRegistry.Format(code, MessageRegistry.Whole(Place(path, line, column)), Guard.Echo(found, MostFound), MessageRegistry.Whole(allowed)), cause)
    {
        Code = code;
        Path = path;
        Line = line;
        Column = column;
    }

    /// <summary>What is wrong.</summary>
    public DiagnosticCode Code { get; }

    /// <summary>The place in the content, as a JSON Pointer (RFC 6901) such as <c>/pieces/0/cuts/1/count</c>; empty for the whole.</summary>
    public string Path { get; }

    /// <summary>The line of the text, counted from 1.</summary>
    public int Line { get; }

    /// <summary>The place in the line, in UTF-16 characters counted from 1.</summary>
    public int Column { get; }

    private static string Place(string path, int line, int column)
        => string.Format(CultureInfo.InvariantCulture, "at {0} (line {1}, column {2})", path.Length == 0 ? "the top" : OnOneLine(path), line, column);

    // A name in a file may hold what would break the message into lines.
    private static string OnOneLine(string path)
    {
        // Its end says more than its beginning.
        string end = path.Length <= MostPath ? path : "\u2026" + path.Substring(path.Length - MostPath);
        var shown = new StringBuilder(end.Length);
        foreach (char c in end)
        {
            shown.Append(char.IsControl(c) ? '\uFFFD' : c);
        }

        return shown.ToString();
    }
}
