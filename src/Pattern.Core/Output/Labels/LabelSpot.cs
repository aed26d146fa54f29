using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>A place where a label may stand: a point, and which point of the label's box lies on it.</summary>
internal readonly struct LabelSpot
{
    // The sine of 15 degrees.
    private const double NearlyUpright = 0.26;

    private LabelSpot(Point2D at, double across, double up, double angleRad)
    {
        At = at;
        Across = across;
        Up = up;
        AngleRad = angleRad;
    }

    internal Point2D At { get; }

    /// <summary>0 where the text begins on the point, 0.5 where its middle, 1 where its end lies there.</summary>
    internal double Across { get; }

    /// <summary>0 where the box stands on the point, 1 where it hangs from it.</summary>
    internal double Up { get; }

    internal double AngleRad { get; }

    /// <summary>Level text with its middle on a point.</summary>
    internal static LabelSpot On(in Point2D point) => new(point, 0.5, 0.5, 0);

    /// <summary>Upright text with its middle on a point.</summary>
    internal static LabelSpot Upright(in Point2D point) => new(point, 0.5, 0.5, Math.PI / 2);

    /// <summary>Level text beside a point, in a direction from it.</summary>
    internal static LabelSpot Beside(in Point2D point, Direction toward, double gapMm)
        => new(point + toward.TimesMm(gapMm), Side(toward.X), Side(toward.Y), 0);

    /// <summary>Level text at the eight places around a point, those nearest to a direction first; of two that are as near, the one on the side that it leans to.</summary>
    internal static IEnumerable<LabelSpot> Around(Point2D point, Direction first, Direction? lean, double gapMm)
    {
        const double eighth = Math.PI / 4;
        foreach (int turn in TurnsOf(first, lean, 8))
        {
            yield return Beside(point, first.TurnedRad(turn * eighth), gapMm);
        }
    }

    /// <summary>Turns away from a direction in parts of a circle, the smallest first and alternately to both sides, beginning with the one that it leans to.</summary>
    internal static IEnumerable<int> TurnsOf(Direction first, Direction? lean, int parts)
    {
        // Where the lean lies across, its side comes first; else the left.
        int hand = lean is { } toward && (toward.X * first.TurnedLeft.X) + (toward.Y * first.TurnedLeft.Y) < 0 ? -1 : 1;
        yield return 0;
        for (int i = 1; i < parts; i++)
        {
            yield return (i + 1) / 2 * (i % 2 == 0 ? -hand : hand);
        }
    }

    /// <summary>Text along a line, to its left or right, at parts of its length; turned so that it is not upside down.</summary>
    internal static IEnumerable<LabelSpot> Along(CurvePath path, Side side, double gapMm, params double[] parts)
    {
        foreach (double part in parts)
        {
            int index = path.Locate(part * path.LengthMm, out double t);
            PathSegment segment = path.SegmentsRaw[index];
            Direction heading = segment.DirectionAtRaw(t);
            Direction away = side == Output.Side.Left ? heading.TurnedLeft : heading.TurnedRight;

            // Read from below or, where upright or nearly so, from the right: a seam that leans a little is read as its neighbours are.
            bool turned = heading.X < -NearlyUpright || (heading.X <= NearlyUpright && heading.Y < 0);
            Direction reading = turned ? heading.Reversed : heading;
            bool above = side == Output.Side.Left != turned;
            yield return new LabelSpot(segment.PointAtRaw(t) + away.TimesMm(gapMm), 0.5, above ? 0 : 1, reading.AngleRad);
        }
    }

    /// <summary>Text that runs away from a line, square to it, from parts of its length; turned so that it is not upside down.</summary>
    internal static IEnumerable<LabelSpot> AwayFrom(CurvePath path, Side side, double gapMm, params double[] parts)
    {
        foreach (double part in parts)
        {
            int index = path.Locate(part * path.LengthMm, out double t);
            PathSegment segment = path.SegmentsRaw[index];
            Direction heading = segment.DirectionAtRaw(t);
            Direction away = side == Output.Side.Left ? heading.TurnedLeft : heading.TurnedRight;
            bool turned = away.X < -NearlyUpright || (away.X <= NearlyUpright && away.Y < 0);
            yield return new LabelSpot(segment.PointAtRaw(t) + away.TimesMm(gapMm), turned ? 1 : 0, 0.5, (turned ? away.Reversed : away).AngleRad);
        }
    }

    /// <summary>The text set here.</summary>
    internal TextMark Set(string text, double sizeMm, TextWeight weight, Ink ink)
    {
        (double cos, double sin) = TurnedBox.Turn(AngleRad);
        double height = (TypeWidths.Ascent + TypeWidths.Descent) * sizeMm;
        double up = (TypeWidths.Descent * sizeMm) - (Up * height);
        TextAlignment alignment = Across switch { 0 => TextAlignment.Start, 1 => TextAlignment.End, _ => TextAlignment.Middle };
        return new TextMark(text, new Point2D(At.XMm - (up * sin), At.YMm + (up * cos)), sizeMm, AngleRad, alignment, weight, ink);
    }

    // Text to the right of a point begins there, text to its left ends there.
    private static double Side(double component) => component > 0.4 ? 0 : component < -0.4 ? 1 : 0.5;
}

/// <summary>A side of a line, seen along it.</summary>
internal enum Side
{
    Left,
    Right,
}
