using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>Sets text downwards from a point, broken into lines of a width.</summary>
internal sealed class TextColumn
{
    private const double Leading = 1.36;

    private readonly double _leftMm;
    private readonly double _widthMm;
    private readonly List<DrawingMark> _marks;

    internal TextColumn(double leftMm, double widthMm, double topMm, List<DrawingMark> marks)
    {
        _leftMm = leftMm;
        _widthMm = widthMm;
        BottomMm = topMm;
        _marks = marks;
    }

    /// <summary>How far down the column has come.</summary>
    internal double BottomMm { get; private set; }

    internal void Space(double heightMm) => BottomMm -= heightMm;

    internal void Write(string text, double sizeMm, TextWeight weight, Ink ink) => Write(text, sizeMm, weight, ink, 0);

    /// <summary>One line in a smaller size where it would be too long; broken only where it still is.</summary>
    internal void WriteFitted(string text, double sizeMm, double leastSizeMm, TextWeight weight, Ink ink)
    {
        double width = TextMark.WidthOfMm(text, sizeMm, weight);
        double fitting = width > _widthMm ? sizeMm * _widthMm / width : sizeMm;
        Write(text, fitting < leastSizeMm ? leastSizeMm : fitting, weight, ink);
    }

    /// <summary>A label and, from a tab on, its value.</summary>
    internal void WriteRow(string label, string value, double tabMm, double sizeMm, TextWeight weight, Ink ink)
    {
        double top = BottomMm;
        Write(value, sizeMm, weight, ink, tabMm);
        double below = BottomMm;
        BottomMm = top;
        _marks.Add(Line(label, sizeMm, TextWeight.Regular, Ink.Middle, 0));
        BottomMm = below;
    }

    private void Write(string text, double sizeMm, TextWeight weight, Ink ink, double indentMm)
    {
        foreach (string line in Broken(text, _widthMm - indentMm, sizeMm, weight))
        {
            _marks.Add(Line(line, sizeMm, weight, ink, indentMm));
            BottomMm -= Leading * sizeMm;
        }
    }

    private TextMark Line(string text, double sizeMm, TextWeight weight, Ink ink, double indentMm)
        => new(text, new Point2D(_leftMm + indentMm, BottomMm - (TypeWidths.Ascent * sizeMm)), sizeMm, 0, TextAlignment.Start, weight, ink);

    // Between words; a word that is wider than the column is cut.
    private static IEnumerable<string> Broken(string text, double widthMm, double sizeMm, TextWeight weight)
    {
        string line = string.Empty;
        foreach (string word in text.Split([' ', '\n', '\r', '\t'], System.StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (TextMark.WidthOfMm(longer, sizeMm, weight) <= widthMm)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
            {
                yield return line;
            }

            line = word;
            while (TextMark.WidthOfMm(line, sizeMm, weight) > widthMm && line.Length > 2)
            {
                int count = line.Length - 1;
                while (count > 1 && TextMark.WidthOfMm(line.Substring(0, count), sizeMm, weight) > widthMm)
                {
                    count--;
                }

                count -= char.IsHighSurrogate(line[count - 1]) && count > 1 ? 1 : 0;
                yield return line.Substring(0, count);
                line = line.Substring(count);
            }
        }

        if (line.Length > 0)
        {
            yield return line;
        }
    }
}
