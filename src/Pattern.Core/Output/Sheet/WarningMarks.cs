using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>What says across the whole sheet that it must not be cut.</summary>
internal static class WarningMarks
{
    private const string Words = "DO NOT CUT";
    private const double BannerMm = 20;
    private const double FailureMm = 5;
    private const double FrameInsetMm = 4;
    private const int MostListed = 12;
    private const double LargestMm = 90;

    /// <summary>The verdict in large letters above a height, and every check that failed.</summary>
    /// <returns>How far up it goes.</returns>
    internal static double Banner(CheckReport report, double leftMm, double rightMm, double bottomMm, List<DrawingMark> marks)
    {
        // Set downwards from nowhere first, to learn how high it is.
        var trial = new TextColumn(leftMm, rightMm - leftMm, 0, []);
        Write(report, trial);
        double topMm = bottomMm - trial.BottomMm;
        Write(report, new TextColumn(leftMm, rightMm - leftMm, topMm, marks));
        return topMm;
    }

    /// <summary>A heavy frame along the border of the sheet.</summary>
    internal static void Frame(in BoundingBox sheet, List<DrawingMark> marks) => marks.Add(new PathMark(
        CurvePath.From(new Point2D(sheet.LeftMm + FrameInsetMm, sheet.BottomMm + FrameInsetMm))
            .LineTo(new Point2D(sheet.RightMm - FrameInsetMm, sheet.BottomMm + FrameInsetMm))
            .LineTo(new Point2D(sheet.RightMm - FrameInsetMm, sheet.TopMm - FrameInsetMm))
            .LineTo(new Point2D(sheet.LeftMm + FrameInsetMm, sheet.TopMm - FrameInsetMm))
            .Closed(),
        LineRole.Warning));

    /// <summary>Faint letters across a panel or piece, as large as it is wide. They lie under the lines and may cross them.</summary>
    internal static void Across(in BoundingBox box, List<DrawingMark> marks)
    {
        double width = box.RightMm - box.LeftMm;
        double height = box.TopMm - box.BottomMm;
        double atOne = TextMark.WidthOfMm(Words, 1, TextWeight.Bold);
        double size = System.Math.Min(LargestMm, 0.95 * System.Math.Max(width, height) / atOne);
        double angle = height > width ? System.Math.PI / 2 : 0;
        Point2D middle = box.Centre;
        double down = (TypeWidths.Ascent - TypeWidths.Descent) / 2 * size;
        marks.Add(new TextMark(
            Words,
            angle == 0 ? new Point2D(middle.XMm, middle.YMm - down) : new Point2D(middle.XMm + down, middle.YMm),
            size,
            angle,
            TextAlignment.Middle,
            TextWeight.Bold,
            Ink.Faint));
    }

    private static void Write(CheckReport report, TextColumn column)
    {
        column.WriteFitted(report.Verdict(), BannerMm, BannerMm / 2, TextWeight.Bold, Ink.Accent);
        column.Space(1);
        int listed = 0;
        foreach (Finding failure in report.Failures)
        {
            if (listed++ == MostListed)
            {
                column.Write("The report lists all of them.", FailureMm, TextWeight.Regular, Ink.Accent);
                break;
            }

            column.Write(failure.ToString(), FailureMm, TextWeight.Regular, Ink.Accent);
        }
    }
}
