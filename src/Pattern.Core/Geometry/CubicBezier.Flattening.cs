using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <content>Straight lines that keep within a tolerance of the curve.</content>
public readonly partial struct CubicBezier
{
    /// <summary>The vertices, start and end included, of a polyline that keeps within a tolerance of the curve.</summary>
    /// <remarks>All vertices lie on the curve, and the tolerance is a bound that holds, not an estimate.</remarks>
    /// <param name="tolerance">The largest distance between the curve and the polyline.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not greater than zero, or so fine that more than a million
    /// chords would be needed.</exception>
    [Pure]
    public Point2D[] Flatten(Length tolerance) => CurvePath.FromCubic(this).Flatten(tolerance);

#if NET
    /// <summary>Writes the vertices, start and end included, of a polyline that keeps within a tolerance of the curve.</summary>
    /// <param name="tolerance">The largest distance between the curve and the polyline: a bound that holds.</param>
    /// <param name="vertices">Receives the vertices, as many as there is room for.</param>
    /// <returns>How many vertices there are in all, which may be more than there was room for.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not greater than zero, or so fine that more than a million
    /// chords would be needed.</exception>
    public unsafe int Flatten(Length tolerance, Span<Point2D> vertices)
    {
        fixed (Point2D* first = vertices)
        {
            return FlattenRaw(SegmentFlattening.CheckedMm(PathSegment.FromCubic(this), tolerance, nameof(tolerance)), first, vertices.Length);
        }
    }
#endif

    /// <summary>Writes the vertices, start and end included, of a polyline that keeps within a tolerance of the curve.</summary>
    /// <param name="tolerance">The largest distance between the curve and the polyline: a bound that holds.</param>
    /// <param name="vertices">Receives the vertices, as many as there is room for.</param>
    /// <returns>How many vertices there are in all, which may be more than there was room for.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not greater than zero, or so fine that more than a million
    /// chords would be needed.</exception>
    public unsafe int Flatten(Length tolerance, Point2D[] vertices)
    {
        fixed (Point2D* first = Guard.NotNull(vertices, nameof(vertices)))
        {
            return FlattenRaw(SegmentFlattening.CheckedMm(PathSegment.FromCubic(this), tolerance, nameof(tolerance)), first, vertices.Length);
        }
    }

    /// <summary>Writes as many vertices as there is room for; returns how many there are in all.</summary>
    internal unsafe int FlattenRaw(double toleranceMm, Point2D* vertices, int room)
    {
        const int Chunk = 64;
        var walk = new FlattenWalk(this, toleranceMm);
        int count = 1;
        if (room > 0)
        {
            vertices[0] = Start;
            count += walk.Fill(vertices + 1, room - 1);
        }

        // What does not fit is counted all the same, so that the caller learns how much room is needed.
        if (count >= room)
        {
            Point2D* rest = stackalloc Point2D[Chunk];
            int more;
            while ((more = walk.Fill(rest, Chunk)) > 0)
            {
                count += more;
            }
        }

        return count;
    }
}
