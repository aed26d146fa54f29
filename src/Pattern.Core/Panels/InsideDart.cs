using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>A double-pointed dart: it lies inside the panel, widest in the middle, and ends in a point at either end. Immutable.</summary>
public sealed class InsideDart
{
    internal InsideDart(Point2D firstApex, Point2D secondApex, Point2D left, Point2D right)
    {
        FirstApex = firstApex;
        SecondApex = secondApex;
        Left = left;
        Right = right;
    }

    /// <summary>One point, the upper one where the dart stands upright.</summary>
    public Point2D FirstApex { get; }

    /// <summary>The other point.</summary>
    public Point2D SecondApex { get; }

    /// <summary>The widest place on the left hand of who goes from the first point to the second.</summary>
    public Point2D Left { get; }

    /// <summary>The widest place on the right hand of who goes from the first point to the second.</summary>
    public Point2D Right { get; }

    /// <summary>The width taken out at the widest place.</summary>
    public Length Intake => Left.DistanceTo(Right);

    /// <summary>From point to point.</summary>
    public Length Length => FirstApex.DistanceTo(SecondApex);

    /// <summary>The dart moved; turned over, its left is where its right was.</summary>
    internal InsideDart Transformed(in Transform2D transform)
    {
        Point2D left = transform.Apply(Left);
        Point2D right = transform.Apply(Right);
        return new(transform.Apply(FirstApex), transform.Apply(SecondApex), transform.TurnsOver ? right : left, transform.TurnsOver ? left : right);
    }

    internal Point2D[] Corners() => [FirstApex, Left, SecondApex, Right];

    /// <summary>Intake and length.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"dart inside the panel, {Intake.Millimeters:0.##} mm wide, {Length.Millimeters:0.##} mm long");
}
