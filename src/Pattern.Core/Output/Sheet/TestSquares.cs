using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>A square of 5 cm and one of 2 in, side by side, to be measured before cloth is cut.</summary>
internal static class TestSquares
{
    internal const double WidthMm = MetricMm + GapMm + InchMm;

    internal const double HeightMm = InchMm;

    private const double MetricMm = 50;
    private const double InchMm = 50.8;
    private const double GapMm = 9;
    private const double TextMm = 7;

    internal static void Draw(double leftMm, double topMm, List<DrawingMark> marks)
    {
        DrawMetric(leftMm, topMm, marks);
        DrawInch(leftMm + MetricMm + GapMm, topMm, marks);
    }

    internal static void DrawMetric(double leftMm, double topMm, List<DrawingMark> marks) => Square(leftMm, topMm, MetricMm, parts: 5, "5 cm", marks);

    internal static void DrawInch(double leftMm, double topMm, List<DrawingMark> marks) => Square(leftMm, topMm, InchMm, parts: 8, "2 in", marks);

    // With marks inside along the upper and the left side, as on a tape.
    private static void Square(double leftMm, double topMm, double sizeMm, int parts, string words, List<DrawingMark> marks)
    {
        Point2D corner = new(leftMm, topMm - sizeMm);
        marks.Add(new PathMark(
            CurvePath.From(corner)
                .LineTo(new Point2D(leftMm + sizeMm, topMm - sizeMm))
                .LineTo(new Point2D(leftMm + sizeMm, topMm))
                .LineTo(new Point2D(leftMm, topMm))
                .Closed(),
            LineRole.TestSquare));
        for (int i = 1; i < parts; i++)
        {
            double at = sizeMm * i / parts;
            double tick = parts % 2 == 0 && i == parts / 2 ? 5 : 3;
            Tick(new Point2D(leftMm + at, topMm), new Point2D(leftMm + at, topMm - tick), marks);
            Tick(new Point2D(leftMm, topMm - sizeMm + at), new Point2D(leftMm + tick, topMm - sizeMm + at), marks);
        }

        marks.Add(LabelSpot.On(new Point2D(leftMm + (sizeMm / 2), topMm - (sizeMm / 2))).Set(words, TextMm, TextWeight.Bold, Ink.Strong));
    }

    private static void Tick(Point2D from, Point2D to, List<DrawingMark> marks)
        => marks.Add(new PathMark(CurvePath.FromLine(new LineSegment(from, to)), LineRole.TestSquare));
}
