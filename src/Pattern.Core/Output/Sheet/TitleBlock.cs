using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>The foot of a sheet: what is drawn and for whom, what it was made from, the test squares, the cautions.</summary>
internal sealed class TitleBlock
{
    /// <summary>Narrower than this the three columns do not fit side by side.</summary>
    internal const double LeastWidthMm = 400;

    private const double HeadingMm = 17;
    private const double SubjectMm = 9;
    private const double TextMm = 5.8;
    private const double CautionMm = 4.2;
    private const double GutterMm = 14;
    private const double TabMm = 46;
    private const double WidestNotesMm = 190;
    private const double WidestRowsMm = 230;

    /// <summary>What the sheet shows: "Skirt block".</summary>
    internal string Heading { get; init; } = string.Empty;

    /// <summary>For whom, or empty.</summary>
    internal string Subject { get; init; } = string.Empty;

    /// <summary>Short sentences below the heading.</summary>
    internal IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>What it was made from, label and value.</summary>
    internal IReadOnlyList<(string Label, string Value)> Rows { get; init; } = [];

    /// <summary>The last row, set heavier.</summary>
    internal (string Label, string Value) Verdict { get; init; }

    /// <summary>The ink of the verdict.</summary>
    internal Ink VerdictInk { get; init; }

    /// <summary>Sentences of warning along the foot.</summary>
    internal IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Sets everything below a height, between two sides.</summary>
    /// <returns>How far down it came.</returns>
    internal double Set(double leftMm, double rightMm, double topMm, List<DrawingMark> marks, List<DrawingMark> squares)
    {
        Rule(leftMm, rightMm, topMm, marks);
        double top = topMm - 7;
        double free = rightMm - leftMm - TestSquares.WidthMm - (2 * GutterMm);
        double notesWidth = System.Math.Min(WidestNotesMm, free * 0.4);
        double rowsWidth = System.Math.Min(WidestRowsMm, free - notesWidth);

        var notes = new TextColumn(leftMm, notesWidth, top, marks);
        notes.WriteFitted(Heading, HeadingMm, HeadingMm / 2, TextWeight.Bold, Ink.Strong);
        if (Subject.Length > 0)
        {
            notes.WriteFitted(Subject, SubjectMm, SubjectMm / 2, TextWeight.Regular, Ink.Strong);
        }

        notes.Space(3);
        foreach (string note in Notes)
        {
            notes.Write(note, TextMm, TextWeight.Regular, Ink.Middle);
            notes.Space(0.8);
        }

        // A method names its settings as it likes: values stand clear of the longest name.
        double tab = System.Math.Min(rowsWidth / 2, TabMm);
        foreach ((string label, string _) in Rows)
        {
            tab = System.Math.Max(tab, TextMark.WidthOfMm(label, TextMm, TextWeight.Regular) + TextMm);
        }

        var rows = new TextColumn(leftMm + notesWidth + GutterMm, rowsWidth, top, marks);
        foreach ((string label, string value) in Rows)
        {
            rows.WriteRow(label, value, tab, TextMm, TextWeight.Regular, Ink.Strong);
        }

        rows.Space(1.2);
        rows.WriteRow(Verdict.Label, Verdict.Value, tab, TextMm, TextWeight.Bold, VerdictInk);

        double squaresLeft = rightMm - TestSquares.WidthMm;
        TestSquares.Draw(squaresLeft, top, squares);
        var below = new TextColumn(squaresLeft, TestSquares.WidthMm, top - TestSquares.HeightMm - 3, squares);
        below.WriteFitted("Measure both squares before cutting cloth.", TextMm, TextMm / 2, TextWeight.Bold, Ink.Strong);

        double lowest = System.Math.Min(notes.BottomMm, System.Math.Min(rows.BottomMm, below.BottomMm)) - 4;
        Rule(leftMm, rightMm, lowest, marks);
        var foot = new TextColumn(leftMm, rightMm - leftMm, lowest - 3, marks);
        foreach (string caution in Cautions)
        {
            foot.Write(caution, CautionMm, TextWeight.Regular, Ink.Middle);
        }

        return foot.BottomMm;
    }

    private static void Rule(double leftMm, double rightMm, double yMm, List<DrawingMark> marks)
        => marks.Add(new PathMark(CurvePath.FromLine(new LineSegment(new Point2D(leftMm, yMm), new Point2D(rightMm, yMm))), LineRole.Rule));
}
