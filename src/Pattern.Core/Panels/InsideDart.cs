using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>A double-pointed dart: it lies inside the panel, widest in the middle, and ends in a point at either end. Immutable.</summary>
public sealed class InsideDart
{
    internal InsideDart(Point2D firstApex, Point2D secondApex, Point2D centreLeg, Point2D sideLeg)
    {
        FirstApex = firstApex;
        SecondApex = secondApex;
        CentreLeg = centreLeg;
        SideLeg = sideLeg;
    }

    /// <summary>One point, the upper one where the dart stands upright.</summary>
    public Point2D FirstApex { get; }

    /// <summary>The other point.</summary>
    public Point2D SecondApex { get; }

    /// <summary>The widest place on the side of the centre.</summary>
    public Point2D CentreLeg { get; }

    /// <summary>The widest place on the side of the side seam.</summary>
    public Point2D SideLeg { get; }

    /// <summary>The width taken out at the widest place.</summary>
    public Length Intake => CentreLeg.DistanceTo(SideLeg);

    /// <summary>From point to point.</summary>
    public Length Length => FirstApex.DistanceTo(SecondApex);

    internal InsideDart Transformed(in Transform2D transform)
        => new(transform.Apply(FirstApex), transform.Apply(SecondApex), transform.Apply(CentreLeg), transform.Apply(SideLeg));

    internal Point2D[] Corners() => [FirstApex, SideLeg, SecondApex, CentreLeg];
}
