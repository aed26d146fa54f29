using System;

namespace Pattern.Core.Layout;

/// <summary>Where every copy lies: its shape, and where the origin of that shape stands.</summary>
internal sealed class Arrangement
{
    internal Arrangement(int count)
    {
        X = new double[count];
        Y = new double[count];
        Shape = new int[count];
    }

    internal double[] X { get; }

    internal double[] Y { get; }

    internal int[] Shape { get; }

    /// <summary>The length of cloth that it lies on, or is to lie on.</summary>
    internal double LengthMm { get; set; }

    internal void CopyFrom(Arrangement other)
    {
        Array.Copy(other.X, X, X.Length);
        Array.Copy(other.Y, Y, Y.Length);
        Array.Copy(other.Shape, Shape, Shape.Length);
        LengthMm = other.LengthMm;
    }

    /// <summary>How much cloth it takes, from its beginning.</summary>
    internal double ExtentMm(LayTask task)
    {
        double extent = 0;
        for (int i = 0; i < X.Length; i++)
        {
            extent = Math.Max(extent, X[i] + task.Shapes[Shape[i]].Outline.MaxX);
        }

        return extent;
    }

    /// <summary>Puts a copy at the nearest place to a point where it lies on the cloth.</summary>
    internal void Put(LayTask task, int copy, double x, double y)
    {
        LayShape shape = task.Shapes[Shape[copy]];
        X[copy] = Math.Max(shape.LeastXMm, Math.Min(shape.MostXMm(LengthMm), x));
        Y[copy] = Math.Max(shape.LeastYMm, Math.Min(shape.MostYMm(task.WidthMm), y));
    }
}
