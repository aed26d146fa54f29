using System;

namespace Pattern.Core.Geometry;

/// <content>How the length changes when the points move.</content>
public readonly partial struct CubicBezier
{
    // 16 points: to a millionth on curves of garments, and slopes need no more.
    private const int SlopeRule = 1;

    /// <summary>Writes how the length changes with the eight coordinates, in the order x0, y0, x1, ...</summary>
    internal void WriteLengthSlopes(double[] into, int at)
    {
        double w0x = 0;
        double w0y = 0;
        double w1x = 0;
        double w1y = 0;
        double w2x = 0;
        double w2y = 0;
        int count = GaussLegendre.Points(SlopeRule);
        for (int i = 0; i < count; i++)
        {
            double t = 0.5 * (1 + GaussLegendre.Node(SlopeRule, i));
            double s = 1 - t;
            double b0 = s * s;
            double b1 = 2 * s * t;
            double b2 = t * t;
            double dx = (b0 * (X1 - X0)) + (b1 * (X2 - X1)) + (b2 * (X3 - X2));
            double dy = (b0 * (Y1 - Y0)) + (b1 * (Y2 - Y1)) + (b2 * (Y3 - Y2));
            double speed = Math.Sqrt((dx * dx) + (dy * dy));
            if (speed == 0)
            {
                continue;
            }

            // The length is the integral of 3 |b0 (P1 - P0) + b1 (P2 - P1) + b2 (P3 - P2)|.
            double weight = 1.5 * GaussLegendre.Weight(SlopeRule, i) / speed;
            w0x += weight * b0 * dx;
            w0y += weight * b0 * dy;
            w1x += weight * b1 * dx;
            w1y += weight * b1 * dy;
            w2x += weight * b2 * dx;
            w2y += weight * b2 * dy;
        }

        into[at] = -w0x;
        into[at + 1] = -w0y;
        into[at + 2] = w0x - w1x;
        into[at + 3] = w0y - w1y;
        into[at + 4] = w1x - w2x;
        into[at + 5] = w1y - w2y;
        into[at + 6] = w2x;
        into[at + 7] = w2y;
    }
}
