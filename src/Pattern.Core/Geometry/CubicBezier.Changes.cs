using System;
using System.Diagnostics.Contracts;

namespace Pattern.Core.Geometry;

/// <content>What can be done to a curve; each returns a new one.</content>
public readonly partial struct CubicBezier
{
    /// <summary>Cuts the curve in two at a parameter.</summary>
    /// <param name="t">From 0 to 1.</param>
    /// <param name="before">The part up to the cut.</param>
    /// <param name="after">The part from the cut on; begins exactly where the first ends.</param>
    /// <exception cref="ArgumentOutOfRangeException">The parameter is outside 0 to 1.</exception>
    public void Split(double t, out CubicBezier before, out CubicBezier after)
    {
        CheckParameter(t);
        SplitRaw(t, out before, out after);
    }

    /// <summary>The same curve from end to start.</summary>
    [Pure]
    public CubicBezier Reversed() => new(X3, Y3, X2, Y2, X1, Y1, X0, Y0);

    /// <summary>This curve after a transform.</summary>
    /// <param name="transform">The move.</param>
    [Pure]
    public CubicBezier Transformed(in Transform2D transform)
        => new(transform.Apply(Start), transform.Apply(StartControl), transform.Apply(EndControl), transform.Apply(End));

    internal void SplitRaw(double t, out CubicBezier before, out CubicBezier after)
    {
        double s = 1 - t;
        double x01 = (s * X0) + (t * X1);
        double y01 = (s * Y0) + (t * Y1);
        double x12 = (s * X1) + (t * X2);
        double y12 = (s * Y1) + (t * Y2);
        double x23 = (s * X2) + (t * X3);
        double y23 = (s * Y2) + (t * Y3);
        double x012 = (s * x01) + (t * x12);
        double y012 = (s * y01) + (t * y12);
        double x123 = (s * x12) + (t * x23);
        double y123 = (s * y12) + (t * y23);
        double x = (s * x012) + (t * x123);
        double y = (s * y012) + (t * y123);
        before = new CubicBezier(X0, Y0, x01, y01, x012, y012, x, y);
        after = new CubicBezier(x, y, x123, y123, x23, y23, X3, Y3);
    }

    internal CubicBezier SubCurveRaw(double from, double to)
    {
        if (from == 0 && to == 1)
        {
            return this;
        }

        // Cut off the end first, then the start in the parameter of what is left.
        CubicBezier head = this;
        if (to < 1)
        {
            SplitRaw(to, out head, out _);
        }

        if (from <= 0 || to <= 0)
        {
            return head;
        }

        head.SplitRaw(from / to, out _, out CubicBezier part);
        return part;
    }
}
