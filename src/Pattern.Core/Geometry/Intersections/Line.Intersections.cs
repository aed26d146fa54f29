using System;

namespace Pattern.Core.Geometry;

/// <content>Where it meets others.</content>
public readonly partial struct Line
{
    /// <summary>The point where two lines cross.</summary>
    /// <param name="other">The other line.</param>
    /// <param name="crossing">The point.</param>
    /// <returns>Whether there is one; none where the lines run side by side or on top of each other.</returns>
    internal bool TryIntersect(Line other, out Point2D crossing)
    {
        double cross = (Direction.X * other.Direction.Y) - (Direction.Y * other.Direction.X);

        // Headings are rounded, so that lines meant to be parallel may differ by that.
        if (Math.Abs(cross) <= 4 * Raw.Epsilon)
        {
            crossing = default;
            return false;
        }

        double alongMm = (((other.Point.XMm - Point.XMm) * other.Direction.Y) - ((other.Point.YMm - Point.YMm) * other.Direction.X)) / cross;
        crossing = new Point2D(Point.XMm + (Direction.X * alongMm), Point.YMm + (Direction.Y * alongMm));
        return true;
    }
}
