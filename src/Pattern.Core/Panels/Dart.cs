using System;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>A wedge folded away and stitched: two legs of equal length from the seam line to an apex.</summary>
public sealed class Dart
{
    internal Dart(int number, Point2D apex, Point2D centreLeg, Point2D sideLeg, CurvePath cap)
    {
        Number = number;
        Apex = apex;
        CentreLeg = centreLeg;
        SideLeg = sideLeg;
        Cap = cap;
    }

    /// <summary>The dart's number on its edge, counted from the centre, starting at 1.</summary>
    public int Number { get; }

    /// <summary>The point of the wedge.</summary>
    public Point2D Apex { get; }

    /// <summary>Where the leg nearer the centre meets the seam line.</summary>
    public Point2D CentreLeg { get; }

    /// <summary>Where the leg nearer the side meets the seam line.</summary>
    public Point2D SideLeg { get; }

    /// <summary>The cut edge across the intake, from the centre leg over the fold to the side leg.</summary>
    /// <remarks>Shaped for a dart pressed towards the centre: folded and sewn, it lies exactly under the seam line.</remarks>
    public CurvePath Cap { get; }

    /// <summary>The width taken out at the seam, measured straight from leg to leg.</summary>
    public Length Intake => Length.FromMillimeters(IntakeMm);

    /// <summary>From the middle of the intake straight to the apex.</summary>
    public Length Length => Length.FromMillimeters(LengthMm);

    /// <summary>The opening of the wedge at the apex. It stays the same wherever the dart is moved to.</summary>
    public Angle Angle => Angle.FromRadians(AngleRad);

    /// <summary>The middle of the intake, half way between the legs.</summary>
    public Point2D MiddleOfIntake => new((CentreLeg.XMm + SideLeg.XMm) / 2, (CentreLeg.YMm + SideLeg.YMm) / 2);

    internal double IntakeMm => (SideLeg - CentreLeg).LengthMm;

    internal double LengthMm => (MiddleOfIntake - Apex).LengthMm;

    /// <summary>The unsigned angle between the legs.</summary>
    internal double AngleRad => Math.Abs(SignedAngleRad);

    /// <summary>The turn about the apex that carries the centre leg onto the side leg.</summary>
    internal double SignedAngleRad
    {
        get
        {
            Vector2D centre = CentreLeg - Apex;
            Vector2D side = SideLeg - Apex;
            return Math.Atan2(centre.CrossMm2(side), centre.DotMm2(side));
        }
    }

    /// <summary>The length of one leg.</summary>
    /// <param name="toward">Which leg.</param>
    public Length LegLength(Toward toward) => Length.FromMillimeters(LegLengthMm(toward));

    internal double LegLengthMm(Toward toward) => ((toward == Toward.Centre ? CentreLeg : SideLeg) - Apex).LengthMm;

    /// <summary>The motion that closes this dart: what lies beyond it turns about the apex until its side leg meets its centre leg.</summary>
    internal Transform2D Closing() => Transform2D.RotationRaw(Apex, Direction.FromRadians(-SignedAngleRad));
}
