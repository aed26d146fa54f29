using System;
using Pattern.Core.Diagnostics;
using UnitsNet;

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
        RequireApart(chord, nameof(end));

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

    /// <summary>The fairest curve with a given heading at the end, free at the start.</summary>
    /// <remarks>Of all cubics with these ends and this end heading, the one with the least integral of the squared second
    /// derivative. It begins without curvature, as a strip does that is held at its start but not turned there.</remarks>
    /// <param name="start">Where the curve begins.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="endDirection">The heading with which it arrives.</param>
    /// <exception cref="ArgumentException">Start and end are the same point.</exception>
    public static CubicBezier Between(Point2D start, Point2D end, Direction endDirection)
    {
        Vector2D way = end - start;
        double chord = way.LengthMm;
        RequireApart(chord, nameof(end));
        double endSpeed = Math.Max(3 * LeastHandleShare * chord, (way.XMm * endDirection.X) + (way.YMm * endDirection.Y));
        Vector2D endTangent = endDirection.TimesMm(endSpeed);
        return new CubicBezier(start, start + (((3 * way) - endTangent) * (1.0 / 6)), end - (endTangent * (1.0 / 3)), end);
    }

    /// <summary>The fairest curve with a given heading at the start, free at the end.</summary>
    /// <remarks>As with the overload for the end heading, seen from the other side.</remarks>
    /// <param name="start">Where the curve begins.</param>
    /// <param name="startDirection">The heading with which it leaves.</param>
    /// <param name="end">Where it ends.</param>
    /// <exception cref="ArgumentException">Start and end are the same point.</exception>
    public static CubicBezier Between(Point2D start, Direction startDirection, Point2D end)
        => Between(end, start, startDirection.Reversed).Reversed();

    /// <summary>A curve that arrives at a line without a corner: the hip curve.</summary>
    /// <remarks>It runs along the line at its end, in the sense that leads on. The fairest such curve, free at its start: see
    /// <see cref="Between(Point2D, Point2D, Direction)"/>.</remarks>
    /// <param name="start">Where the curve begins.</param>
    /// <param name="line">The line that it runs into.</param>
    /// <param name="touch">The point of the line where it arrives.</param>
    /// <exception cref="ArgumentException">The touching point is not on the line, or is the start.</exception>
    internal static CubicBezier TangentTo(Point2D start, Line line, Point2D touch) => Between(start, touch, Onward(start, line, touch));

    /// <summary>A curve that leaves with a given heading and arrives at a line without a corner.</summary>
    /// <param name="start">Where the curve begins.</param>
    /// <param name="startDirection">The heading with which it leaves.</param>
    /// <param name="line">The line that it runs into.</param>
    /// <param name="touch">The point of the line where it arrives.</param>
    /// <exception cref="ArgumentException">The touching point is not on the line, or is the start.</exception>
    internal static CubicBezier TangentTo(Point2D start, Direction startDirection, Line line, Point2D touch)
        => Between(start, startDirection, touch, Onward(start, line, touch));

    /// <summary>A curve that ends square to a line, at a given point of it.</summary>
    /// <param name="start">Where the curve begins.</param>
    /// <param name="startDirection">The heading with which it leaves.</param>
    /// <param name="line">The line that it meets at a right angle.</param>
    /// <param name="end">The point of the line where it ends.</param>
    /// <exception cref="ArgumentException">The end is not on the line, or is the start, or the start is on the line.</exception>
    public static CubicBezier SquareTo(Point2D start, Direction startDirection, Line line, Point2D end)
    {
        RequireOn(line, end, nameof(end));
        return Between(start, startDirection, end, Across(start, line));
    }

    /// <summary>A curve that ends square to a line wherever that is fairest.</summary>
    /// <remarks>Of all cubics from the start to any point of the line, the one with the least integral of the squared second
    /// derivative; the end is free to slide along the line.</remarks>
    /// <param name="start">Where the curve begins.</param>
    /// <param name="startDirection">The heading with which it leaves.</param>
    /// <param name="line">The line that it meets at a right angle.</param>
    /// <exception cref="ArgumentException">The start is on the line.</exception>
    public static CubicBezier SquareTo(Point2D start, Direction startDirection, Line line)
    {
        // Along u and across n: with p = e0.u, c = e0.n and g the way across, the gradient vanishes at T0 = 3gc / (1 + 2c^2)
        // and a slide of T0 p / 2 from the foot. A heading away from the line slides no farther than the shortest handle leads.
        Direction across = Across(start, line);
        double gap = Math.Abs(line.OffsetMm(start));
        double c = (startDirection.X * across.X) + (startDirection.Y * across.Y);
        double p = (startDirection.X * line.Direction.X) + (startDirection.Y * line.Direction.Y);
        double startSpeed = Math.Max(3 * LeastHandleShare * gap, 3 * gap * c / (1 + (2 * c * c)));
        Point2D foot = line.FootOf(start);
        return Between(start, startDirection, foot + line.Direction.TimesMm(0.5 * startSpeed * p), across);
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

    private static void RequireApart(double chordMm, string parameter)
    {
        if (!(chordMm > 0 && chordMm <= double.MaxValue))
        {
            Raw.RequireFinite(chordMm, parameter);
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.EndsCoincide), parameter);
        }
    }

    private static void RequireOn(in Line line, in Point2D point, string parameter)
    {
        double offMm = Math.Abs(line.OffsetMm(point));
        double magnitude = Math.Max(Math.Abs(point.XMm), Math.Abs(point.YMm));
        if (offMm > Math.Max(GeometryTolerance.JoinMm, 16 * Raw.Epsilon * magnitude))
        {
            throw new ArgumentException(
                MessageRegistry.Format(DiagnosticCode.PointOffLine, point, Length.FromMillimeters(offMm), GeometryTolerance.Join), parameter);
        }
    }

    /// <summary>The heading along a line that leads on, away from where the curve comes from.</summary>
    private static Direction Onward(in Point2D start, in Line line, in Point2D touch)
    {
        RequireOn(line, touch, nameof(touch));
        return line.AlongMm(touch) < line.AlongMm(start) ? line.Direction.Reversed : line.Direction;
    }

    /// <summary>The heading across a line, from the side that a point is on.</summary>
    private static Direction Across(in Point2D start, in Line line)
    {
        double offsetMm = line.OffsetMm(start);
        if (offsetMm == 0)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.EndsCoincide), nameof(start));
        }

        return offsetMm > 0 ? line.Direction.TurnedRight : line.Direction.TurnedLeft;
    }
}
