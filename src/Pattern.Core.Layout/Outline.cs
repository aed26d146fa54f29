using System;
using System.Linq;

namespace Pattern.Core.Layout;

/// <summary>A closed polygon in millimetres, counter-clockwise, with the box of what it stands for.</summary>
internal sealed class Outline
{
    private Outline(double[] x, double[] y, double minX, double maxX, double minY, double maxY)
    {
        X = x;
        Y = y;
        MinX = minX;
        MaxX = maxX;
        MinY = minY;
        MaxY = maxY;
    }

    internal double[] X { get; }

    internal double[] Y { get; }

    internal int Count => X.Length;

    internal double MinX { get; }

    internal double MaxX { get; }

    internal double MinY { get; }

    internal double MaxY { get; }

    internal double AcrossMm => MaxY - MinY;

    internal double AlongMm => MaxX - MinX;

    internal double AreaMm2 => SignedArea(X, Y);

    /// <summary>Takes over vertices in either sense, without a repeated last one.</summary>
    internal static Outline Of(double[] x, double[] y)
    {
        if (SignedArea(x, y) < 0)
        {
            Array.Reverse(x);
            Array.Reverse(y);
        }

        return new Outline(x, y, x.Min(), x.Max(), y.Min(), y.Max());
    }

    /// <summary>The same polygon, in the box of the curves that it stands for.</summary>
    internal Outline Within(double minX, double maxX, double minY, double maxY) => new(X, Y, minX, maxX, minY, maxY);

    internal static double SignedArea(double[] x, double[] y)
    {
        double sum = 0;
        for (int i = 0, j = x.Length - 1; i < x.Length; j = i++)
        {
            sum += (x[j] * y[i]) - (x[i] * y[j]);
        }

        return sum / 2;
    }

    /// <summary>Twice the area of a triangle: positive where c lies to the left of the way from a to b.</summary>
    internal double Cross(int a, int b, int c) => ((X[b] - X[a]) * (Y[c] - Y[a])) - ((Y[b] - Y[a]) * (X[c] - X[a]));

    /// <summary>Whether the outline covers the same ground as another one that may lie elsewhere.</summary>
    internal bool IsShifted(Outline other, double toleranceMm)
    {
        if (Count != other.Count)
        {
            return false;
        }

        for (int first = 0; first < Count; first++)
        {
            bool same = true;
            for (int i = 0; i < Count && same; i++)
            {
                int j = (first + i) % Count;
                same = Math.Abs(X[i] - MinX - (other.X[j] - other.MinX)) <= toleranceMm && Math.Abs(Y[i] - MinY - (other.Y[j] - other.MinY)) <= toleranceMm;
            }

            if (same)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The number of the first side that meets another one that is not its neighbour, or turns back on its neighbour; -1 where none does.</summary>
    internal int FindCrossing()
    {
        for (int i = 0; i < Count; i++)
        {
            int iNext = (i + 1) % Count;
            if (TurnsBack(i, iNext, (i + 2) % Count))
            {
                return i;
            }

            for (int j = i + 2; j < Count; j++)
            {
                int jNext = (j + 1) % Count;
                if (jNext != i && Meet(i, iNext, j, jNext))
                {
                    return i;
                }
            }
        }

        return -1;
    }

    private bool TurnsBack(int a, int b, int c)
        => Cross(a, b, c) == 0 && ((X[b] - X[a]) * (X[c] - X[b])) + ((Y[b] - Y[a]) * (Y[c] - Y[b])) <= 0;

    private bool Meet(int a, int b, int c, int d)
    {
        double abc = Cross(a, b, c);
        double abd = Cross(a, b, d);
        double cda = Cross(c, d, a);
        double cdb = Cross(c, d, b);
        bool acrossFirst = (abc >= 0 && abd <= 0) || (abc <= 0 && abd >= 0);
        bool acrossSecond = (cda >= 0 && cdb <= 0) || (cda <= 0 && cdb >= 0);
        return acrossFirst && acrossSecond
            && Math.Max(X[a], X[b]) >= Math.Min(X[c], X[d]) && Math.Max(X[c], X[d]) >= Math.Min(X[a], X[b])
            && Math.Max(Y[a], Y[b]) >= Math.Min(Y[c], Y[d]) && Math.Max(Y[c], Y[d]) >= Math.Min(Y[a], Y[b]);
    }
}
