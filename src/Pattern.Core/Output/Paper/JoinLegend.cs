using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>The lines on how to join sheets, each beside a small picture of the mark that it speaks of.</summary>
internal static class JoinLegend
{
    private const double PictureMm = 30;
    private const double GapMm = 5;
    private const double AfterMm = 1.6;
    private const double LeastHeightMm = 5;

    internal static double Cut(string words, double leftMm, double widthMm, double topMm, double sizeMm, List<DrawingMark> marks)
    {
        Line(leftMm, Middle(topMm), leftMm + PictureMm, Middle(topMm), LineRole.PaperCut, ArrowEnds.None, marks);
        Scissors.Draw(new Point2D(leftMm + (PictureMm / 2), Middle(topMm)), Direction.Right, (path, role) => marks.Add(new PathMark(path, role)));
        return Write(words, leftMm, widthMm, topMm, sizeMm, marks);
    }

    internal static double Lay(string words, double leftMm, double widthMm, double topMm, double sizeMm, List<DrawingMark> marks)
    {
        Line(leftMm, Middle(topMm), leftMm + PictureMm, Middle(topMm), LineRole.PaperJoin, ArrowEnds.None, marks);
        return Write(words, leftMm, widthMm, topMm, sizeMm, marks);
    }

    internal static double Arrows(string words, double leftMm, double widthMm, double topMm, double sizeMm, List<DrawingMark> marks)
    {
        double middle = leftMm + (PictureMm / 2);
        double y = Middle(topMm);
        Line(leftMm + 3.6, y, middle, y, LineRole.PaperArrow, ArrowEnds.End, marks);
        Line(leftMm + PictureMm - 3.6, y, middle, y, LineRole.PaperArrow, ArrowEnds.End, marks);
        Word("7", leftMm, y, TextAlignment.Start, marks);
        Word("7", leftMm + PictureMm, y, TextAlignment.End, marks);
        return Write(words, leftMm, widthMm, topMm, sizeMm, marks);
    }

    internal static double Rows(string words, double leftMm, double widthMm, double topMm, double sizeMm, List<DrawingMark> marks)
    {
        double y = Middle(topMm);
        for (int i = 0; i < 3; i++)
        {
            Word("1" + (char)('A' + i), leftMm + (PictureMm * ((2 * i) + 1) / 6), y, TextAlignment.Middle, marks);
        }

        return Write(words, leftMm, widthMm, topMm, sizeMm, marks);
    }

    private static double Middle(double topMm) => topMm - (LeastHeightMm / 2);

    private static double Write(string words, double leftMm, double widthMm, double topMm, double sizeMm, List<DrawingMark> marks)
    {
        var column = new TextColumn(leftMm + PictureMm + GapMm, widthMm - PictureMm - GapMm, topMm, marks);
        column.Write(words, sizeMm, TextWeight.Regular, Ink.Strong);
        return System.Math.Min(column.BottomMm, topMm - LeastHeightMm) - AfterMm;
    }

    private static void Line(double fromXMm, double fromYMm, double toXMm, double toYMm, LineRole role, ArrowEnds arrows, List<DrawingMark> marks)
        => marks.Add(new PathMark(CurvePath.FromLine(new LineSegment(new Point2D(fromXMm, fromYMm), new Point2D(toXMm, toYMm))), role, facts: null, arrows));

    private static void Word(string word, double xMm, double yMm, TextAlignment alignment, List<DrawingMark> marks)
        => marks.Add(new TextMark(word, new Point2D(xMm, yMm - 1.4), 4, 0, alignment, TextWeight.Bold, Ink.Accent));
}
