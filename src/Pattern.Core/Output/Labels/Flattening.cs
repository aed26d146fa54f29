using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>Curves as straight pieces, where a label or a viewer asks no more than that.</summary>
internal static class Flattening
{
    private const int MostPieces = 500;

    /// <summary>The corners of straight pieces that stay within a distance of the path.</summary>
    internal static Point2D[] Of(CurvePath path, double withinMm)
    {
        var points = new List<Point2D> { path.Start };
        foreach (PathSegment segment in path.SegmentsRaw)
        {
            int pieces = PiecesOf(segment, withinMm);
            for (int i = 1; i <= pieces; i++)
            {
                points.Add(segment.PointAtRaw((double)i / pieces));
            }
        }

        if (path.IsClosed)
        {
            points.Add(path.Start);
        }

        return points.ToArray();
    }

    private static int PiecesOf(in PathSegment segment, double withinMm)
    {
        switch (segment.Kind)
        {
            case PathSegmentKind.Line:
                return 1;
            case PathSegmentKind.Arc:
                // A chord over the angle a is r (1 - cos(a / 2)) away at most: about r a^2 / 8.
                return Bounded(Math.Abs(segment.ArcRaw.SweepRad) * Math.Sqrt(segment.ArcRaw.RadiusMm / (8 * withinMm)));
            default:
                // A chord over the parameter step h is |second derivative| h^2 / 8 away at most, and the second derivative is largest at an end.
                CubicBezier cubic = segment.CubicRaw;
                double bend = Math.Max(cubic.SecondDerivativeAtRaw(0).LengthMm, cubic.SecondDerivativeAtRaw(1).LengthMm);
                return Bounded(Math.Sqrt(bend / (8 * withinMm)));
        }
    }

    private static int Bounded(double pieces) => (int)Math.Max(1, Math.Min(MostPieces, Math.Ceiling(pieces)));
}
