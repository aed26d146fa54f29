using System.Collections.Generic;
using System.IO;
using System.Text;

namespace Pattern.Core.Measurement;

/// <summary>Reads comma-separated text (RFC 4180) record by record, and holds one record at a time.</summary>
/// <remarks>Blank lines are skipped. A cell may be quoted; an inch mark inside an unquoted cell is itself. Lines end in any of the three ways. However long a line and
/// however many lines a quote spans, no more is kept than so many characters: the rest of such a line is read over.</remarks>
internal sealed class CsvRecords(TextReader text, int mostCharacters = CsvRecords.MostCharacters)
{
    /// <summary>Of one record: far above any row of a table, low enough that a hostile text costs little.</summary>
    internal const int MostCharacters = 64 * 1024;

    /// <summary>That a quoted cell may run over.</summary>
    internal const int MostLines = 20;

    private readonly char[] _buffer = new char[4096];
    private readonly StringBuilder _cell = new();
    private readonly List<string> _cells = [];

    // Lines that a quote ran over without being closed: read again as lines of their own.
    private readonly Queue<(string Line, bool IsTooLong)> _again = new();
    private int _filled;
    private int _at;
    private bool _isAfterReturn;
    private bool _isTooLong;
    private int _lastLine;

    /// <summary>The line on which the record begins, from 1.</summary>
    internal int Line { get; private set; }

    /// <summary>That line as it stands.</summary>
    internal string Text { get; private set; } = string.Empty;

    /// <summary>The cells of the record, without quotes and blanks around them.</summary>
    internal IReadOnlyList<string> Cells => _cells;

    /// <summary>The place of the cell whose quote stayed open, from 0.</summary>
    internal int OpenCell { get; private set; }

    /// <summary>Goes on to the next line that is not blank.</summary>
    internal bool NextLine()
    {
        while (ReadLine() is { } line)
        {
            Line = _lastLine;
            Text = Line == 1 ? line.TrimStart('\uFEFF') : line;
            if (!string.IsNullOrWhiteSpace(Text))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Parts the record that begins on this line into cells.</summary>
    /// <param name="runsOn">Whether a quoted cell may run over the end of its line. Where its quote stays open all the same, the lines after the first are records of their own.</param>
    internal CsvFault ReadCells(bool runsOn)
    {
        _cells.Clear();
        if (_isTooLong)
        {
            return CsvFault.TooLong;
        }

        var over = new List<(string Line, bool IsTooLong)>();
        string line = Text;
        int at = 0;
        int characters = line.Length;
        while (true)
        {
            while (at < line.Length && line[at] == ' ')
            {
                at++;
            }

            if (at < line.Length && line[at] == '"')
            {
                at++;
                while (!ReadQuoted(line, ref at))
                {
                    string? next = runsOn && over.Count < MostLines ? ReadLine() : null;
                    characters += next?.Length ?? 0;
                    if (next is not null)
                    {
                        over.Add((next, _isTooLong));
                    }

                    if (next is null || _isTooLong || characters > mostCharacters)
                    {
                        return LeaveOpen(over);
                    }

                    _cell.Append('\n');
                    line = next;
                    at = 0;
                }
            }

            while (at < line.Length && line[at] != ',')
            {
                _cell.Append(line[at++]);
            }

            _cells.Add(_cell.ToString().Trim());
            _cell.Clear();
            if (at++ >= line.Length)
            {
                return CsvFault.None;
            }
        }
    }

    // Whether the quote was closed; then the place is after it.
    private bool ReadQuoted(string line, ref int at)
    {
        for (; at < line.Length; at++)
        {
            if (line[at] != '"')
            {
                _cell.Append(line[at]);
            }
            else if (at + 1 < line.Length && line[at + 1] == '"')
            {
                _cell.Append(line[at++]);
            }
            else
            {
                at++;
                return true;
            }
        }

        return false;
    }

    private CsvFault LeaveOpen(List<(string Line, bool IsTooLong)> over)
    {
        OpenCell = _cells.Count;
        _cell.Clear();
        _isTooLong = false;
        _lastLine -= over.Count;

        // Those still waiting stand after these.
        over.AddRange(_again);
        _again.Clear();
        foreach ((string Line, bool IsTooLong) line in over)
        {
            _again.Enqueue(line);
        }

        return CsvFault.QuoteOpen;
    }

    private string? ReadLine()
    {
        _isTooLong = false;
        if (_again.Count > 0)
        {
            _lastLine++;
            (string again, _isTooLong) = _again.Dequeue();
            return again;
        }

        var line = new StringBuilder();
        bool any = false;
        while (_at < _filled || (_filled = text.Read(_buffer, _at = 0, _buffer.Length)) > 0)
        {
            char c = _buffer[_at++];
            bool isSecondOfTwo = _isAfterReturn && c == '\n';
            _isAfterReturn = c == '\r';
            if (isSecondOfTwo)
            {
                continue;
            }

            if (c is '\n' or '\r')
            {
                _lastLine++;
                return line.ToString();
            }

            any = true;
            if (line.Length < mostCharacters)
            {
                line.Append(c);
            }
            else
            {
                _isTooLong = true;
            }
        }

        _filled = _at = 0;
        _lastLine += any ? 1 : 0;
        return any ? line.ToString() : null;
    }
}

/// <summary>Why a record has no cells.</summary>
internal enum CsvFault
{
    /// <summary>It has.</summary>
    None,

    /// <summary>A quote is opened and not closed.</summary>
    QuoteOpen,

    /// <summary>Its line is longer than any row.</summary>
    TooLong,
}
