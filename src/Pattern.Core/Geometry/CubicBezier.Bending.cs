using System;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <content>How a curve bends.</content>
public readonly partial struct CubicBezier
{
    // A root this close to the curve is a cusp and not a tight bend: in t, relative to the whole curve.
    private const double CuspWidth = 1e-12;

    /// <summary>By how much the heading turns from start to end, left turns positive: the integral of the curvature.</summary>
    /// <remarks>More than half a turn is told from a turn the other way. The half turn on the spot at a cusp has no side and counts as none.</remarks>
    internal Angle TotalTurning => Angle.FromRadians(TotalTurningRad());

    internal double TotalTurningRad()
    {
        // z'(t) = a (t - r1)(t - r2): the heading turns by as much as both factors do.
        Hodograph roots = Hodograph.Of(this);
        return TurnRad(roots.Along1, roots.Beside1) + TurnRad(roots.Along2, roots.Beside2);
    }

    /// <summary>Largest absolute curvature per millimetre; infinite at a cusp, 0 for a straight line.</summary>
    internal unsafe double MaxCurvaturePerMm(out double t)
    {
        t = 0;
        double scale = HodographMm;
        if (scale == 0)
        {
            return 0;
        }

        // k = c / |z'|^3 with c = z' x z'' of degree 2: k' = 0 where c' |z'|^2 = 3 c (z' . z''), of degree 5.
        double unit = 1 / scale;
        Vector2D d0 = new((X1 - X0) * unit, (Y1 - Y0) * unit);
        Vector2D d1 = new((X2 - X1) * unit, (Y2 - Y1) * unit);
        Vector2D d2 = new((X3 - X2) * unit, (Y3 - Y2) * unit);
        double c01 = d0.CrossMm2(d1);
        double c02 = d0.CrossMm2(d2);
        double c12 = d1.CrossMm2(d2);
        if (Math.Max(Math.Abs(c01), Math.Max(Math.Abs(c02), Math.Abs(c12))) <= 4 * Raw.Epsilon * (1 + (MagnitudeMm * unit)))
        {
            return 0;
        }

        // All in Bernstein form: speed squared (degree 4), half its slope (degree 3), cross (degree 2) and its slope (degree 1).
        double* speed2 = stackalloc double[5];
        speed2[0] = d0.DotMm2(d0);
        speed2[1] = d0.DotMm2(d1);
        speed2[2] = ((2 * d1.DotMm2(d1)) + d0.DotMm2(d2)) / 3;
        speed2[3] = d1.DotMm2(d2);
        speed2[4] = d2.DotMm2(d2);
        double* dot = stackalloc double[4];
        for (int i = 0; i < 4; i++)
        {
            dot[i] = 2 * (speed2[i + 1] - speed2[i]);
        }

        double* cross = stackalloc double[3];
        cross[0] = 2 * c01;
        cross[1] = c02;
        cross[2] = 2 * c12;
        double* crossSlope = stackalloc double[2];
        crossSlope[0] = 2 * (cross[1] - cross[0]);
        crossSlope[1] = 2 * (cross[2] - cross[1]);
        double* left = stackalloc double[6];
        double* right = stackalloc double[6];
        Polynomial.Multiply(crossSlope, 1, speed2, 4, left);
        Polynomial.Multiply(cross, 2, dot, 3, right);
        for (int i = 0; i < 6; i++)
        {
            left[i] -= 3 * right[i];
        }

        BernsteinRoots extrema = BernsteinRoots.Find(left, 5, 0);
        Hodograph roots = Hodograph.Of(this);
        double most = 0;
        for (int i = -4; i < extrema.Count; i++)
        {
            double candidate = i switch { -4 => 0, -3 => 1, -2 => Raw.Clamp(roots.Along1, 0, 1), -1 => Raw.Clamp(roots.Along2, 0, 1), _ => extrema[i] };
            double curvature = Math.Abs(CurvaturePerMm(candidate));
            if (curvature > most)
            {
                most = curvature;
                t = candidate;
            }
        }

        return most;
    }

    /// <summary>How far t - r turns while t goes from 0 to 1.</summary>
    private static double TurnRad(double along, double beside)
        => Math.Abs(beside) <= CuspWidth && along > -CuspWidth && along < 1 + CuspWidth
            ? 0
            : Math.Atan2(-beside, 1 - along) - Math.Atan2(-beside, -along);
}
