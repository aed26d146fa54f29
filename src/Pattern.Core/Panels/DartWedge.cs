using System;

namespace Pattern.Core.Panels;

/// <summary>A dart asked for on a waist edge: where its upright middle line stands, how wide and how long it is.</summary>
internal readonly struct DartWedge
{
    internal DartWedge(double middleXMm, double intakeMm, double lengthMm)
    {
        MiddleXMm = middleXMm;
        IntakeMm = intakeMm;
        LengthMm = lengthMm;
    }

    /// <summary>Where the middle line stands with the darts before this one open. It is upright: square to the waist level, along the grain.</summary>
    internal double MiddleXMm { get; }

    /// <summary>Straight from leg to leg.</summary>
    internal double IntakeMm { get; }

    /// <summary>From the middle of the intake to the apex.</summary>
    internal double LengthMm { get; }

    internal double AngleRad => 2 * Math.Atan2(IntakeMm / 2, LengthMm);
}
