using System;
using System.Collections.Generic;
using System.Linq;

namespace Pattern.Core.Layout;

/// <summary>Takes corners off an outline of curves in such a way that it only grows: what keeps clear of it keeps clear of the piece.</summary>
/// <remarks>A corner that bends inwards is left out; a side between two corners that bend outwards is left out by lengthening its neighbours until they meet. The smallest growth comes first.</remarks>
internal static class OutlineGrowth
{
    /// <summary>How far the outline grows at the most.</summary>
    internal const double MostMm = 1;

    private const int FewestCorners = 4;

    internal static Outline Simplified(Outline outline)
    {
        List<Corner> corners = [.. Enumerable.Range(0, outline.Count).Select(i => new Corner(outline.X[i], outline.Y[i], 0))];

        // Each round takes one corner away.
        while (corners.Count > FewestCorners && TryTakeOne(corners))
        {
        }

        Outline grown = Outline.Of([.. corners.Select(corner => corner.X)], [.. corners.Select(corner => corner.Y)]);

        // Where two parts of the piece lie so near each other that they have grown together, it stays as it was.
        return grown.FindCrossing() < 0 ? grown : outline;
    }

    private static bool TryTakeOne(List<Corner> corners)
    {
        int n = corners.Count;
        int at = -1;
        double least = MostMm;
        Corner? put = null;
        for (int i = 0; i < n; i++)
        {
            Corner a = corners[(i + n - 1) % n];
            Corner b = corners[i];
            Corner c = corners[(i + 1) % n];
            double bend = Cross(a, b, c);
            if (bend <= 0)
            {
                double grown = Math.Max(a.GrownMm, Math.Max(b.GrownMm, c.GrownMm)) + DistanceMm(b, a, c);
                if (grown <= least)
                {
                    (at, least, put) = (i, grown, null);
                }
            }
            else if (TryLengthen(a, b, c, corners[(i + 2) % n], out Corner meeting) && meeting.GrownMm < least)
            {
                (at, least, put) = (i, meeting.GrownMm, meeting);
            }
        }

        if (at < 0)
        {
            return false;
        }

        if (put is { } corner)
        {
            corners[(at + 1) % n] = corner;
        }

        corners.RemoveAt(at);
        return true;
    }

    // The side from b to c goes; those from a to b and from c to d are lengthened until they meet.
    private static bool TryLengthen(in Corner a, in Corner b, in Corner c, in Corner d, out Corner meeting)
    {
        meeting = default;
        double ux = b.X - a.X;
        double uy = b.Y - a.Y;
        double vx = c.X - d.X;
        double vy = c.Y - d.Y;
        double across = (ux * vy) - (uy * vx);
        if (Cross(b, c, d) <= 0 || across <= 0)
        {
            return false;
        }

        double t = (((c.X - b.X) * vy) - ((c.Y - b.Y) * vx)) / across;
        if (t < 0)
        {
            return false;
        }

        var point = new Corner(b.X + (t * ux), b.Y + (t * uy), 0);
        meeting = new Corner(point.X, point.Y, Math.Max(Math.Max(a.GrownMm, d.GrownMm), Math.Max(b.GrownMm, c.GrownMm)) + FromSideMm(point, b, c));
        return true;
    }

    private static double Cross(in Corner a, in Corner b, in Corner c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));

    private static double DistanceMm(in Corner point, in Corner a, in Corner b)
    {
        double dx = b.X - a.X;
        double dy = b.Y - a.Y;
        double length = Math.Sqrt((dx * dx) + (dy * dy));
        return length == 0 ? 0 : Math.Abs(Cross(a, b, point)) / length;
    }

    // From the side itself: beside a sharp corner the meeting point lies far beyond its end, and yet near its line.
    private static double FromSideMm(in Corner point, in Corner a, in Corner b)
    {
        double dx = b.X - a.X;
        double dy = b.Y - a.Y;
        double squared = (dx * dx) + (dy * dy);
        double t = squared == 0 ? 0 : Math.Max(0, Math.Min(1, (((point.X - a.X) * dx) + ((point.Y - a.Y) * dy)) / squared));
        double awayX = point.X - a.X - (t * dx);
        double awayY = point.Y - a.Y - (t * dy);
        return Math.Sqrt((awayX * awayX) + (awayY * awayY));
    }

    private readonly struct Corner(double x, double y, double grownMm)
    {
        internal double X => x;

        internal double Y => y;

        internal double GrownMm => grownMm;
    }
}
