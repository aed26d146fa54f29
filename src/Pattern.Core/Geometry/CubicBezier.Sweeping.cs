using System;

namespace Pattern.Core.Geometry;

/// <content>Lines drawn in one sweep: how they turn, and how to keep them from turning back.</content>
public readonly partial struct CubicBezier
{
    /// <summary>A curve that would have to do all its turning within this share of its chord is left to turn back a little instead.</summary>
    internal const double LeastSweepShare = 0.1;

    /// <summary>The fairest curve that turns one way only, where its two headings and its chord leave such a curve.</summary>
    /// <remarks>Such a curve stays inside the triangle of its chord and its two end tangents: neither handle is longer than its side of that triangle. Where there is no such
    /// triangle, or one side of it is next to nothing, the curve turns back as little as a handle of a tenth of the chord makes it.</remarks>
    internal static CubicBezier InOneSweep(in Point2D start, in Direction startDirection, in Point2D end, in Direction endDirection)
    {
        CubicBezier fairest = Between(start, startDirection, end, endDirection);
        double dx = end.XMm - start.XMm;
        double dy = end.YMm - start.YMm;
        double chord = Raw.Hypot(dx, dy);
        double d0 = (dx * startDirection.X) + (dy * startDirection.Y);
        double d1 = (dx * endDirection.X) + (dy * endDirection.Y);
        double turn = startDirection.TurnRadTo(endDirection);
        if (!TrySides(startDirection, dx, dy, turn, out double side0, out double side1))
        {
            return fairest;
        }

        double c = Math.Cos(turn);
        double most0 = 3 * chord * LongestHandle(side0);
        double most1 = 3 * chord * LongestHandle(side1);
        double t0 = 3 * Raw.Hypot(fairest.X1 - fairest.X0, fairest.Y1 - fairest.Y0);
        double t1 = 3 * Raw.Hypot(fairest.X3 - fairest.X2, fairest.Y3 - fairest.Y2);
        if (t0 <= most0 && t1 <= most1)
        {
            return fairest;
        }

        // The energy is quadratic: one handle after the other, each the best for the other within its limits. With one of them held the next sweep changes nothing.
        const int Sweeps = 8;
        double least = 3 * LeastHandleShare * chord;
        t1 = Raw.Clamp(t1, least, most1);
        for (int i = 0; i < Sweeps; i++)
        {
            t0 = Raw.Clamp(0.5 * ((3 * d0) - (c * t1)), least, most0);
            t1 = Raw.Clamp(0.5 * ((3 * d1) - (c * t0)), least, most1);
        }

        return FromHandles(start, startDirection, t0 / 3, end, endDirection, t1 / 3);
    }

    /// <summary>Whether two headings and the chord between them leave a curve that turns one way only, without doing all of it at one end.</summary>
    internal static bool CanSweep(in Point2D start, in Direction startDirection, in Point2D end, in Direction endDirection)
        => TrySides(startDirection, end.XMm - start.XMm, end.YMm - start.YMm, startDirection.TurnRadTo(endDirection), out double side0, out double side1)
            && side0 >= LeastSweepShare && side1 >= LeastSweepShare;

    /// <summary>Adds how far the curve turns left and how far right, and what it stands off the straight line at most where it does.</summary>
    internal void AddTurns(ref Turns turns)
    {
        double c0 = Cross(X1 - X0, Y1 - Y0, X2 - X1, Y2 - Y1);
        double c1 = Cross(X1 - X0, Y1 - Y0, X3 - X2, Y3 - Y2) / 2;
        double c2 = Cross(X2 - X1, Y2 - Y1, X3 - X2, Y3 - Y2);
        double a = c0 - (2 * c1) + c2;
        double b = c1 - c0;
        double root = (b * b) - (a * c0);
        double first = 1;
        double second = 1;
        if (root > 0)
        {
            double q = -(b + (b < 0 ? -Math.Sqrt(root) : Math.Sqrt(root)));
            double one = q != 0 ? c0 / q : 1;
            double other = a != 0 ? q / a : 1;
            first = Raw.Clamp(Math.Min(one, other), 0, 1);
            second = Raw.Clamp(Math.Max(one, other), 0, 1);
        }

        AddTurn(0, first, ref turns);
        AddTurn(first, second, ref turns);
        AddTurn(second, 1, ref turns);
    }

    private static double Cross(double ax, double ay, double bx, double by) => (ax * by) - (ay * bx);

    // The sides of the triangle of chord and end tangents, in parts of the chord; negative where a tangent leads away from it.
    private static bool TrySides(in Direction startDirection, double dx, double dy, double turnRad, out double atStart, out double atEnd)
    {
        const double Straight = 1e-9;
        double away = Math.Atan2(Cross(startDirection.X, startDirection.Y, dx, dy), (startDirection.X * dx) + (startDirection.Y * dy));
        double back = turnRad - away;
        double sine = Math.Sin(turnRad);
        atStart = Math.Sin(back) / sine;
        atEnd = Math.Sin(away) / sine;
        return Math.Abs(turnRad) > Straight && Math.Abs(turnRad) < Math.PI / 2 && Math.Abs(away) < Math.PI / 2 && Math.Abs(back) < Math.PI / 2;
    }

    // Without a break from one kind of curve to the other: truing moves the end and must not be thrown.
    private static double LongestHandle(double side) => side >= 0 ? Math.Max(side, LeastSweepShare) : LeastSweepShare - side;

    private void AddTurn(double from, double to, ref Turns turns)
    {
        const int Samples = 8;
        if (!(to > from) || !TryDirectionAt(from, out Direction leaving) || !TryDirectionAt(to, out Direction arriving))
        {
            return;
        }

        double turn = leaving.TurnRadTo(arriving);
        Point2D start = PointAtRaw(from);
        Point2D end = PointAtRaw(to);
        double chord = start.DistanceMm(end);
        double hump = 0;
        for (int i = 1; i < Samples && chord > 0; i++)
        {
            Point2D at = PointAtRaw(from + ((to - from) * i / Samples));
            hump = Math.Max(hump, Math.Abs(Cross(end.XMm - start.XMm, end.YMm - start.YMm, at.XMm - start.XMm, at.YMm - start.YMm)) / chord);
        }

        turns.Add(turn, hump);
    }

    /// <summary>How far a line turns left and right, and the largest hump of either kind.</summary>
    internal struct Turns
    {
        private double _leftRad;
        private double _rightRad;
        private double _leftHumpMm;
        private double _rightHumpMm;

        /// <summary>How far the line turns against itself: the lesser of its turns to either side.</summary>
        internal readonly double BackRad => Math.Min(_leftRad, _rightRad);

        /// <summary>How far the part that turns the lesser way stands off its chord.</summary>
        internal readonly double BackMm => _leftRad < _rightRad ? _leftHumpMm : _rightHumpMm;

        internal void Add(double turnRad, double humpMm)
        {
            if (turnRad > 0)
            {
                _leftRad += turnRad;
                _leftHumpMm = Math.Max(_leftHumpMm, humpMm);
            }
            else
            {
                _rightRad -= turnRad;
                _rightHumpMm = Math.Max(_rightHumpMm, humpMm);
            }
        }
    }
}
