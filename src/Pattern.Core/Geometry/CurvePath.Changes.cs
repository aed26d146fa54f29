using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <content>What can be done to a path; each returns a new one.</content>
public sealed partial class CurvePath
{
    /// <summary>The part between two distances along the path.</summary>
    /// <param name="from">Where the part begins, from zero to the length of the path.</param>
    /// <param name="to">Where it ends. On a closed path it may be less than <paramref name="from"/>: the part then runs over the start.</param>
    /// <exception cref="ArgumentOutOfRangeException">A distance is negative or beyond the end, or the part has no length.</exception>
    [Pure]
    internal CurvePath SubPath(Length from, Length to)
    {
        double fromMm = CheckedDistance(from, nameof(from));
        double toMm = CheckedDistance(to, nameof(to));
        if (toMm == fromMm || (toMm < fromMm && !IsClosed))
        {
            throw new ArgumentOutOfRangeException(
                nameof(to), MessageRegistry.Format(DiagnosticCode.PartEmpty, from, to));
        }

        return SubPathMm(fromMm, toMm);
    }

    /// <summary>Cuts the path in two at a distance from its start.</summary>
    /// <param name="distance">More than zero and less than the length of the path.</param>
    /// <param name="before">The part up to the cut.</param>
    /// <param name="after">The part from the cut on.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not between the ends.</exception>
    /// <exception cref="InvalidOperationException">The path is closed: one cut does not make two parts of it.</exception>
    public void SplitAt(Length distance, out CurvePath before, out CurvePath after)
    {
        RequireOpen();
        before = SubPath(Length.Zero, distance);
        after = SubPath(distance, Length);
    }

    /// <summary>Cuts the path in two at a place on it.</summary>
    /// <param name="location">A place on this path, not one of its ends.</param>
    /// <param name="before">The part up to the cut.</param>
    /// <param name="after">The part from the cut on.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is not on this path, or is one of its ends.</exception>
    /// <exception cref="InvalidOperationException">The path is closed: one cut does not make two parts of it.</exception>
    public void SplitAt(PathLocation location, out CurvePath before, out CurvePath after) => SplitAt(LengthTo(location), out before, out after);

    /// <summary>Cuts the path in two at a point of it.</summary>
    /// <param name="point">A point on the path, to within <see cref="GeometryTolerance.Join"/>; <c>ClosestTo</c> finds one. Where the
    /// path crosses itself, the earlier place is cut.</param>
    /// <param name="before">The part up to the cut.</param>
    /// <param name="after">The part from the cut on.</param>
    /// <exception cref="ArgumentException">The point is not on the path.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The point is an end of the path.</exception>
    /// <exception cref="InvalidOperationException">The path is closed: one cut does not make two parts of it.</exception>
    public void SplitAt(Point2D point, out CurvePath before, out CurvePath after)
    {
        PathLocation nearest = ClosestTo(point);
        if (!Meets(nearest.Point, point))
        {
            throw new ArgumentException(
                MessageRegistry.Format(DiagnosticCode.PointOffLine, point, nearest.Distance, GeometryTolerance.Join), nameof(point));
        }

        SplitAt(nearest, out before, out after);
    }

    /// <summary>This path mirrored over a line.</summary>
    /// <param name="line">The mirror line.</param>
    [Pure]
    public CurvePath MirroredOver(Line line) => Transformed(Transform2D.Mirror(line));

    /// <summary>This path with a straight line before its start, along the tangent there.</summary>
    /// <param name="distance">How long the line is; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not greater than zero.</exception>
    /// <exception cref="InvalidOperationException">The path is closed.</exception>
    [Pure]
    internal CurvePath ExtendedAtStart(Length distance) => Reversed().ExtendedAtEnd(distance).Reversed();

    /// <summary>This path with a straight line after its end, along the tangent there.</summary>
    /// <param name="distance">How long the line is; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not greater than zero.</exception>
    /// <exception cref="InvalidOperationException">The path is closed.</exception>
    [Pure]
    internal CurvePath ExtendedAtEnd(Length distance)
    {
        double distanceMm = GeometryTolerance.CheckedMm(distance, nameof(distance));
        RequireOpen();
        return LineTo(End + EndDirection.TimesMm(distanceMm));
    }

    /// <summary>The same path from end to start.</summary>
    [Pure]
    public CurvePath Reversed()
    {
        var reversed = new PathSegment[_segments.Length];
        for (int i = 0; i < reversed.Length; i++)
        {
            reversed[i] = _segments[_segments.Length - 1 - i].Reversed();
        }

        return new CurvePath(reversed, IsClosed);
    }

    /// <summary>This path after a transform.</summary>
    /// <remarks>Arcs stay arcs unless the transform stretches one way more than the other; then they become cubics that are
    /// off by no more than <see cref="GeometryTolerance.Join"/>.</remarks>
    /// <param name="transform">The move.</param>
    [Pure]
    public CurvePath Transformed(Transform2D transform)
    {
        bool keepsShape = transform.KeepsShape;
        var moved = new List<PathSegment>(_segments.Length);
        foreach (PathSegment segment in _segments)
        {
            if (keepsShape || segment.Kind != PathSegmentKind.Arc)
            {
                moved.Add(segment.TransformedRaw(transform));
                continue;
            }

            CircularArc arc = segment.ArcRaw;
            int pieces = arc.CubicCount(GeometryTolerance.JoinMm / transform.MostStretch);
            for (int i = 0; i < pieces; i++)
            {
                moved.Add(PathSegment.FromCubic(arc.CubicPiece(i, pieces).Transformed(transform)));
            }
        }

        return new CurvePath(moved.ToArray(), IsClosed);
    }

    private void AddPart(double fromMm, double toMm, List<PathSegment> parts)
    {
        int first = Locate(fromMm, out double t0);
        int last = Locate(toMm, out double t1);
        AddPart(first, t0, last, t1, parts);
    }

    /// <summary>Adds what lies from one place of the path to a later one; nothing where there is nothing between.</summary>
    internal void AddPart(int first, double t0, int last, double t1, List<PathSegment> parts)
    {
        for (int i = first; i <= last; i++)
        {
            double from = i == first ? t0 : 0;
            double to = i == last ? t1 : 1;
            if (_segments[i].TryPartRaw(from, to, out PathSegment part))
            {
                parts.Add(part);
            }
        }
    }

    private static void RequireNextOpen(CurvePath next)
    {
        if (Guard.NotNull(next, nameof(next)).IsClosed)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.PathClosed), nameof(next));
        }
    }
}
