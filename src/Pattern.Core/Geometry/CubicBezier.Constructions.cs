using System;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Geometry;

/// <content>Curves that drafters ask for.</content>
public readonly partial struct CubicBezier
{
    // A handle shorter than this share of the chord makes the end look like a corner.
    private const double LeastHandleShare = 0.05;

    /// <summary>The fairest curve through two points with a given heading at each.</summary>
    /// <remarks>Fairest means: of all cubics with these ends and headings, the one with the least integral of the squared
    /// second derivative, which is what a thin strip bent by hand comes close to. It has a closed form, so there is no
    /// search. A handle (end to its control point) never gets shorter than 5 % of the chord: where the headings fight the
    /// chord, the other handle is chosen again for the one that was held.</remarks>
    /// <param name="start">Where the curve begins.</param>
    /// <param name="startDirection">The heading with which it leaves.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="endDirection">The heading with which it arrives.</param>
    /// <exception cref="ArgumentException">Start and end are the same point.</exception>
    public static CubicBezier Between(Point2D start, Direction startDirection, Point2D end, Direction endDirection)
    {
        double dx = end.XMm - start.XMm;
        double dy = end.YMm - start.YMm;
        double chord = Raw.Hypot(dx, dy);
        if (chord == 0)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.EndsCoincide), nameof(end));
        }

        // E = |B''|^2 integrated is quadratic in the handle tangents T0, T1: its gradient gives two linear equations.
        double d0 = (dx * startDirection.X) + (dy * startDirection.Y);
        double d1 = (dx * endDirection.X) + (dy * endDirection.Y);
        double c = (startDirection.X * endDirection.X) + (startDirection.Y * endDirection.Y);
        double least = 3 * LeastHandleShare * chord;
        double t0 = ((6 * d0) - (3 * c * d1)) / (4 - (c * c));
        double t1 = ((6 * d1) - (3 * c * d0)) / (4 - (c * c));
        if (t0 < least)
        {
            t0 = least;
            t1 = 0.5 * ((3 * d1) - (c * t0));
        }

        if (t1 < least)
        {
            t1 = least;
            t0 = Math.Max(least, 0.5 * ((3 * d0) - (c * t1)));
        }

        return FromHandles(start, startDirection, t0 / 3, end, endDirection, t1 / 3);
    }

    internal static CubicBezier FromHandles(
        in Point2D start, in Direction startDirection, double startHandleMm, in Point2D end, in Direction endDirection, double endHandleMm) => new(
            start.XMm,
            start.YMm,
            start.XMm + (startDirection.X * startHandleMm),
            start.YMm + (startDirection.Y * startHandleMm),
            end.XMm - (endDirection.X * endHandleMm),
            end.YMm - (endDirection.Y * endHandleMm),
            end.XMm,
            end.YMm);

    /// <summary>Where the curve meets an infinite line: all parameters in 0 to 1, ascending, ends and tangencies included.</summary>
    /// <returns>How many.</returns>
    internal int IntersectLine(in Line line, out ParameterHits hits)
    {
        double d0 = line.OffsetMm(Start);
        double d1 = line.OffsetMm(StartControl);
        double d2 = line.OffsetMm(EndControl);
        double d3 = line.OffsetMm(End);
        double spread = Math.Max(MagnitudeMm, Math.Max(Math.Abs(line.Point.XMm), Math.Abs(line.Point.YMm)));
        double zero = 8 * Raw.Epsilon * spread;
        if (Math.Abs(d0) <= zero && Math.Abs(d1) <= zero && Math.Abs(d2) <= zero && Math.Abs(d3) <= zero)
        {
            hits = new ParameterHits { Overlaps = true };
            return 0;
        }

        Polynomial.CubicRoots(d0, d1, d2, d3, zero, out hits);
        return hits.Count;
    }
}
