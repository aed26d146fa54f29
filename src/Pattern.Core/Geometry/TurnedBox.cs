using System;

namespace Pattern.Core.Geometry;

/// <summary>A rectangle at any angle.</summary>
internal readonly struct TurnedBox
{
    private readonly double _cornerXMm;
    private readonly double _cornerYMm;
    private readonly double _cos;
    private readonly double _sin;

    private TurnedBox(double cornerXMm, double cornerYMm, double cos, double sin, double widthMm, double heightMm)
    {
        _cornerXMm = cornerXMm;
        _cornerYMm = cornerYMm;
        _cos = cos;
        _sin = sin;
        WidthMm = widthMm;
        HeightMm = heightMm;
    }

    internal double WidthMm { get; }

    internal double HeightMm { get; }

    internal BoundingBox Bounds
    {
        get
        {
            Point2D corner = At(0, 0);
            return BoundingBox.Around(corner, At(WidthMm, HeightMm)).Union(BoundingBox.Around(At(WidthMm, 0), At(0, HeightMm)));
        }
    }

    /// <summary>The box that begins so far before and so far below a point, along and up as it is turned.</summary>
    internal static TurnedBox Around(in Point2D anchor, double angleRad, double beforeMm, double belowMm, double widthMm, double heightMm)
    {
        (double cos, double sin) = Turn(angleRad);
        return new TurnedBox(
            anchor.XMm - (beforeMm * cos) + (belowMm * sin),
            anchor.YMm - (beforeMm * sin) - (belowMm * cos),
            cos,
            sin,
            widthMm,
            heightMm);
    }

    /// <summary>Cosine and sine, exact for quarter turns, so that upright text is upright.</summary>
    internal static (double Cos, double Sin) Turn(double angleRad)
    {
        double quarters = angleRad / (Math.PI / 2);
        double nearest = Math.Round(quarters);
        if (Math.Abs(quarters - nearest) > 1e-12)
        {
            return (Math.Cos(angleRad), Math.Sin(angleRad));
        }

        return (nearest - (4 * Math.Floor(nearest / 4))) switch { 0 => (1, 0), 1 => (0, 1), 2 => (-1, 0), _ => (0, -1) };
    }

    /// <summary>The same box with room around it.</summary>
    internal TurnedBox Grown(double byMm) => Grown(byMm, byMm);

    /// <summary>The same box with room at both its ends, and above and below it.</summary>
    internal TurnedBox Grown(double alongMm, double upMm)
    {
        Point2D corner = At(-alongMm, -upMm);
        return new TurnedBox(corner.XMm, corner.YMm, _cos, _sin, WidthMm + (2 * alongMm), HeightMm + (2 * upMm));
    }

    /// <summary>The point so far along and so far up from the lower left corner.</summary>
    internal Point2D At(double alongMm, double upMm) => new(
        _cornerXMm + (alongMm * _cos) - (upMm * _sin),
        _cornerYMm + (alongMm * _sin) + (upMm * _cos));

    internal bool Contains(in Point2D point)
    {
        Point2D local = Local(point);
        return local.XMm >= 0 && local.XMm <= WidthMm && local.YMm >= 0 && local.YMm <= HeightMm;
    }

    /// <summary>Whether any point of a straight line lies in the box; the border counts.</summary>
    internal bool Meets(in Point2D from, in Point2D to)
    {
        Point2D a = Local(from);
        Point2D b = Local(to);
        double enter = 0;
        double leave = 1;
        return Clip(a.XMm, b.XMm - a.XMm, WidthMm, ref enter, ref leave) && Clip(a.YMm, b.YMm - a.YMm, HeightMm, ref enter, ref leave);
    }

    /// <summary>Whether two boxes have a point in common.</summary>
    internal bool Meets(in TurnedBox other)
    {
        if (Contains(other.At(0, 0)) || other.Contains(At(0, 0)))
        {
            return true;
        }

        Point2D a = other.At(0, 0);
        Point2D b = other.At(other.WidthMm, 0);
        Point2D c = other.At(other.WidthMm, other.HeightMm);
        Point2D d = other.At(0, other.HeightMm);
        return Meets(a, b) || Meets(b, c) || Meets(c, d) || Meets(d, a);
    }

    /// <summary>The point of the box nearest to another point.</summary>
    internal Point2D NearestTo(in Point2D point)
    {
        Point2D local = Local(point);
        return At(Math.Max(0, Math.Min(WidthMm, local.XMm)), Math.Max(0, Math.Min(HeightMm, local.YMm)));
    }

    // Keeps the part of the way, from enter to leave, on which start + way * u lies within 0 to size.
    private static bool Clip(double start, double way, double size, ref double enter, ref double leave)
    {
        if (way == 0)
        {
            return start >= 0 && start <= size;
        }

        double first = -start / way;
        double second = (size - start) / way;
        enter = Math.Max(enter, Math.Min(first, second));
        leave = Math.Min(leave, Math.Max(first, second));
        return enter <= leave;
    }

    private Point2D Local(in Point2D point)
    {
        double dx = point.XMm - _cornerXMm;
        double dy = point.YMm - _cornerYMm;
        return new Point2D((dx * _cos) + (dy * _sin), (dy * _cos) - (dx * _sin));
    }
}
