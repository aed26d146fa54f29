using System;
using System.Collections.Generic;
using System.Linq;

namespace Pattern.Core.Layout;

/// <summary>Where one outline must not lie beside another: the shifts between their origins at which they overlap, as convex polygons.</summary>
/// <remarks>For two convex polygons that is the Minkowski sum of the one and the mirrored other, their no-fit polygon; for the convex parts of two outlines, one for each pair.
/// How deep a shift lies inside a polygon is how far the parts have to move to come apart.</remarks>
internal sealed class KeepOut
{
    /// <summary>So little depth is the rounding of coordinates of some metres, and no overlap.</summary>
    internal const double NoiseMm = 1e-8;

    /// <summary>The sides of all polygons, one after the other: the normal that points out, x and y, and how far the side lies along it.</summary>
    private readonly double[] _sides;

    /// <summary>Prepares two outlines.</summary>
    /// <param name="still">The convex parts of the outline that lies still.</param>
    /// <param name="moving">The convex parts of the one that is placed.</param>
    /// <param name="gapMm">How far apart they stay; negative for what they may overlap.</param>
    internal KeepOut(IReadOnlyList<Outline> still, IReadOnlyList<Outline> moving, double gapMm)
    {
        Count = still.Count * moving.Count;
        MinX = new double[Count];
        MaxX = new double[Count];
        MinY = new double[Count];
        MaxY = new double[Count];
        First = new int[Count + 1];
        var sides = new List<double>();
        int polygon = 0;
        foreach (Outline one in still)
        {
            foreach (Outline other in moving)
            {
                double room = Math.Max(gapMm, 0);
                MinX[polygon] = one.MinX - other.MaxX - room;
                MaxX[polygon] = one.MaxX - other.MinX + room;
                MinY[polygon] = one.MinY - other.MaxY - room;
                MaxY[polygon] = one.MaxY - other.MinY + room;
                AddSides(one, other, gapMm, sides);
                First[++polygon] = sides.Count;
            }
        }

        _sides = [.. sides];
        LeftMm = MinX.Min();
        RightMm = MaxX.Max();
        BottomMm = MinY.Min();
        TopMm = MaxY.Max();
    }

    /// <summary>How many polygons there are.</summary>
    internal int Count { get; }

    internal double[] MinX { get; }

    internal double[] MaxX { get; }

    internal double[] MinY { get; }

    internal double[] MaxY { get; }

    /// <summary>Where the sides of each polygon begin, and at last where those of the last one end.</summary>
    internal int[] First { get; }

    internal double[] Sides => _sides;

    internal double LeftMm { get; }

    internal double RightMm { get; }

    internal double BottomMm { get; }

    internal double TopMm { get; }

    /// <summary>How much two outlines overlap at a shift from the still to the placed one: the depths of their parts, added up.</summary>
    internal double DepthMm(double x, double y)
    {
        if (x <= LeftMm || x >= RightMm || y <= BottomMm || y >= TopMm)
        {
            return 0;
        }

        double sum = 0;
        for (int k = 0; k < Count; k++)
        {
            if (x > MinX[k] && x < MaxX[k] && y > MinY[k] && y < MaxY[k])
            {
                sum += DepthMm(_sides, First[k], First[k + 1], x, y);
            }
        }

        return sum;
    }

    /// <summary>How deep a shift lies inside one polygon; 0 outside.</summary>
    internal static double DepthMm(double[] sides, int first, int end, double x, double y)
    {
        double least = double.MaxValue;
        for (int q = first; q < end; q += 3)
        {
            double depth = sides[q + 2] - (sides[q] * x) - (sides[q + 1] * y);
            if (depth < least)
            {
                if (depth <= NoiseMm)
                {
                    return 0;
                }

                least = depth;
            }
        }

        return least;
    }

    // Each side of either polygon is a side of the sum, which reaches along its normal as far as both polygons do.
    private static void AddSides(Outline still, Outline moving, double gapMm, List<double> sides)
    {
        int start = sides.Count;
        AddNormals(still, 1, sides, start);
        AddNormals(moving, -1, sides, start);
        for (int q = start; q < sides.Count; q += 3)
        {
            double nx = sides[q];
            double ny = sides[q + 1];
            double reach = double.MinValue;
            for (int i = 0; i < still.Count; i++)
            {
                reach = Math.Max(reach, (nx * still.X[i]) + (ny * still.Y[i]));
            }

            double back = double.MaxValue;
            for (int i = 0; i < moving.Count; i++)
            {
                back = Math.Min(back, (nx * moving.X[i]) + (ny * moving.Y[i]));
            }

            sides[q + 2] = reach - back + gapMm;
        }
    }

    // Of sides that look the same way one is enough.
    private static void AddNormals(Outline polygon, int sign, List<double> sides, int start)
    {
        const double Same = 1e-12;
        for (int i = 0, j = polygon.Count - 1; i < polygon.Count; j = i++)
        {
            double ex = polygon.X[i] - polygon.X[j];
            double ey = polygon.Y[i] - polygon.Y[j];
            double length = Math.Sqrt((ex * ex) + (ey * ey));
            double nx = sign * ey / length;
            double ny = -sign * ex / length;
            bool isThere = length == 0;
            for (int q = start; q < sides.Count && !isThere; q += 3)
            {
                isThere = (sides[q] * nx) + (sides[q + 1] * ny) >= 1 - Same;
            }

            if (!isThere)
            {
                sides.AddRange([nx, ny, 0]);
            }
        }
    }
}
