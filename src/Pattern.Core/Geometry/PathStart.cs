using System.Diagnostics.Contracts;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>Where a path begins: the pencil is on the paper, nothing is drawn yet.</summary>
/// <remarks>The first verb makes a <see cref="CurvePath"/>, which has the same verbs.</remarks>
public readonly struct PathStart
{
    internal PathStart(Point2D point) => Point = point;

    /// <summary>The starting point.</summary>
    public Point2D Point { get; }

    /// <summary>Draws a straight line.</summary>
    /// <param name="end">Where it ends.</param>
    [Pure]
    public CurvePath LineTo(Point2D end) => CurvePath.Trusted(PathSegment.FromLine(new LineSegment(Point, end)));

    /// <summary>Draws a cubic curve.</summary>
    /// <param name="startControl">The control point it leaves towards.</param>
    /// <param name="endControl">The control point it arrives from.</param>
    /// <param name="end">Where it ends.</param>
    [Pure]
    public CurvePath CurveTo(Point2D startControl, Point2D endControl, Point2D end)
        => CurvePath.Trusted(PathSegment.FromCubic(new CubicBezier(Point, startControl, endControl, end)));

    /// <summary>Draws the fairest curve with given headings: <see cref="CubicBezier.Between(Point2D, Direction, Point2D, Direction)"/>.</summary>
    /// <param name="startDirection">The heading with which it leaves.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="endDirection">The heading with which it arrives.</param>
    /// <exception cref="System.ArgumentException">Both ends are the same point.</exception>
    [Pure]
    public CurvePath CurveTo(Direction startDirection, Point2D end, Direction endDirection)
        => CurvePath.Trusted(PathSegment.FromCubic(CubicBezier.Between(Point, startDirection, end, endDirection)));

    /// <summary>Draws an arc round a centre.</summary>
    /// <param name="centre">The centre of the circle.</param>
    /// <param name="sweep">How far round; counter-clockwise is positive.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">The sweep is more than a turn.</exception>
    [Pure]
    public CurvePath ArcAround(Point2D centre, Angle sweep)
        => CurvePath.Trusted(PathSegment.FromArc(CircularArc.Around(centre, Point, sweep)));

    /// <summary>Draws an arc through a point.</summary>
    /// <param name="through">A point that it passes.</param>
    /// <param name="end">Where it ends.</param>
    /// <exception cref="System.ArgumentException">The points lie on one straight line, or two are the same.</exception>
    [Pure]
    public CurvePath ArcThrough(Point2D through, Point2D end)
        => CurvePath.Trusted(PathSegment.FromArc(CircularArc.Through(Point, through, end)));

    /// <summary>Where the path begins.</summary>
    public override string ToString()
        => "path from " + Point;
}
