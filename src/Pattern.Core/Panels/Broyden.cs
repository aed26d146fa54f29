using System;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Panels;

/// <summary>Three numbers: unknowns or residuals of a system of three equations.</summary>
internal readonly struct Vector3
{
    internal readonly double A;
    internal readonly double B;
    internal readonly double C;

    internal Vector3(double a, double b, double c)
    {
        A = a;
        B = b;
        C = c;
    }

    internal bool IsFinite => Guard.IsFinite(A) && Guard.IsFinite(B) && Guard.IsFinite(C);

    internal double Norm => Math.Sqrt(Dot(this));

    internal double Dot(in Vector3 other) => (A * other.A) + (B * other.B) + (C * other.C);

    public static Vector3 operator +(Vector3 l, Vector3 r) => new(l.A + r.A, l.B + r.B, l.C + r.C);

    public static Vector3 operator -(Vector3 v) => new(-v.A, -v.B, -v.C);

    public static Vector3 operator -(Vector3 l, Vector3 r) => new(l.A - r.A, l.B - r.B, l.C - r.C);

    public static Vector3 operator *(double k, Vector3 v) => new(k * v.A, k * v.B, k * v.C);
}

/// <summary>The approximate inverse Jacobian of three equations, kept by Broyden's good method.</summary>
internal readonly struct Matrix3
{
    private readonly Vector3 _row0;
    private readonly Vector3 _row1;
    private readonly Vector3 _row2;

    private Matrix3(in Vector3 row0, in Vector3 row1, in Vector3 row2)
    {
        _row0 = row0;
        _row1 = row1;
        _row2 = row2;
    }

    /// <summary>The inverse of the identity with one more number in its lower left corner.</summary>
    internal static Matrix3 InverseOfCorner(double corner) => new(new Vector3(1, 0, 0), new Vector3(0, 1, 0), new Vector3(-corner, 0, 1));

    /// <summary>The update after a move that changed the residual: H + (move - H change) move' H / (move' H change).</summary>
    internal Matrix3 Broyden(in Vector3 move, in Vector3 change)
    {
        Vector3 predicted = this * change;
        double scale = move.Dot(predicted);
        if (Math.Abs(scale) < 1e-300)
        {
            return this;
        }

        Vector3 correction = (1 / scale) * (move - predicted);
        var moveTimes = new Vector3(
            (move.A * _row0.A) + (move.B * _row1.A) + (move.C * _row2.A),
            (move.A * _row0.B) + (move.B * _row1.B) + (move.C * _row2.B),
            (move.A * _row0.C) + (move.B * _row1.C) + (move.C * _row2.C));
        return new Matrix3(
            _row0 + (correction.A * moveTimes),
            _row1 + (correction.B * moveTimes),
            _row2 + (correction.C * moveTimes));
    }

    public static Vector3 operator *(Matrix3 m, Vector3 v) => new(m._row0.Dot(v), m._row1.Dot(v), m._row2.Dot(v));
}
