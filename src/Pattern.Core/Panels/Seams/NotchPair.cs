using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>Two places on the edges of a seam that meet when it is sewn: where a notch and its twin go.</summary>
public sealed class NotchPair
{
    internal NotchPair(double onFirstMm, Point2D firstPosition, double onSecondMm, Point2D secondPosition)
    {
        OnFirstMm = onFirstMm;
        OnSecondMm = onSecondMm;
        FirstPosition = firstPosition;
        SecondPosition = secondPosition;
    }

    /// <summary>Along the sewn first edge from its own start, darts closed.</summary>
    public Length OnFirst => Length.FromMillimeters(OnFirstMm);

    /// <summary>Along the sewn second edge from its own start, darts closed.</summary>
    public Length OnSecond => Length.FromMillimeters(OnSecondMm);

    /// <summary>The place on the first panel. At a dart, the end of the leg that the edge reaches first.</summary>
    public Point2D FirstPosition { get; }

    /// <summary>The place on the second panel.</summary>
    public Point2D SecondPosition { get; }

    internal double OnFirstMm { get; }

    internal double OnSecondMm { get; }

    /// <summary>Where they stand on both edges.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"notches at {OnFirstMm:0.##} mm and {OnSecondMm:0.##} mm");
}
