using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <content>What can be measured along a path and done to it.</content>
public sealed partial class CurvePath
{
    /// <summary>The point at a distance along the path from its start.</summary>
    /// <param name="distance">From zero to the length of the path, both included.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative or beyond the end.</exception>
    [Pure]
    public Point2D PointAtLength(Length distance)
    {
        return PointAtMm(CheckedDistance(distance, nameof(distance)));
    }

    /// <summary>The part between two distances along the path.</summary>
    /// <param name="from">Where the part begins, from zero to the length of the path.</param>
    /// <param name="to">Where it ends. On a closed path it may be less than <paramref name="from"/>: the part then runs over the start.</param>
    /// <exception cref="ArgumentOutOfRangeException">A distance is negative or beyond the end, or the part has no length.</exception>
    [Pure]
    public CurvePath SubPath(Length from, Length to)
    {
        double fromMm = CheckedDistance(from, nameof(from));
        double toMm = CheckedDistance(to, nameof(to));
        if (toMm == fromMm || (toMm < fromMm && !IsClosed))
        {
            throw new ArgumentOutOfRangeException(
                nameof(to), MessageRegistry.Format(DiagnosticCode.PartEmpty, from, to));
        }

        var parts = new List<PathSegment>();
        if (toMm > fromMm)
        {
            AddPart(fromMm, toMm, parts);
        }
        else
        {
            AddPart(fromMm, LengthMm, parts);
            AddPart(0, toMm, parts);
        }

        return new CurvePath(parts.ToArray(), isClosed: false);
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
            int pieces = arc.CubicCount(GeometryTolerance.JoinMm);
            for (int i = 0; i < pieces; i++)
            {
                moved.Add(PathSegment.FromCubic(arc.CubicPiece(i, pieces).Transformed(transform)));
            }
        }

        return new CurvePath(moved.ToArray(), IsClosed);
    }

    internal Point2D PointAtMm(double distanceMm)
    {
        int index = Locate(distanceMm, out double t);
        return _segments[index].PointAtRaw(t);
    }

    /// <summary>Finds the segment and its parameter at a length that lies on the path.</summary>
    internal int Locate(double distanceMm, out double t)
    {
        double[] lengths = LengthsMm;
        int index = Array.BinarySearch(lengths, 0, _segments.Length, distanceMm);
        index = index >= 0 ? index : ~index - 1;
        double withinMm = distanceMm - lengths[index];
        double segmentMm = lengths[index + 1] - lengths[index];
        t = withinMm <= 0 ? 0 : withinMm >= segmentMm ? 1 : _segments[index].ParameterAtLengthMm(withinMm);
        return index;
    }

    private double CheckedDistance(Length distance, string parameter)
    {
        // What a caller adds up from lengths of parts may pass the end by rounding.
        double slackMm = GeometryTolerance.DefaultMm + (8 * Raw.Epsilon * LengthMm);
        return Raw.Clamp(Guard.Millimetres(distance, -slackMm, LengthMm + slackMm, parameter), 0, LengthMm);
    }

    private void AddPart(double fromMm, double toMm, List<PathSegment> parts)
    {
        int first = Locate(fromMm, out double t0);
        int last = Locate(toMm, out double t1);
        for (int i = first; i <= last; i++)
        {
            double from = i == first ? t0 : 0;
            double to = i == last ? t1 : 1;
            if (from < to)
            {
                parts.Add(from == 0 && to == 1 ? _segments[i] : _segments[i].SubSegmentRaw(from, to));
            }
        }
    }
}
