using System;

namespace Pattern.Core.Panels;

/// <summary>A dart asked for: where along the sewn edge it stands, how wide and how long it is.</summary>
internal readonly struct DartWedge
{
    internal DartWedge(double share, double intakeMm, double lengthMm)
    {
        Share = share;
        IntakeMm = intakeMm;
        LengthMm = lengthMm;
    }

    /// <summary>The part of the sewn edge, from its start, that lies before the dart: 0 to 1.</summary>
    internal double Share { get; }

    /// <summary>Straight from leg to leg.</summary>
    internal double IntakeMm { get; }

    /// <summary>From the middle of the intake to the apex.</summary>
    internal double LengthMm { get; }

    internal double LegMm => Math.Sqrt((LengthMm * LengthMm) + (IntakeMm * IntakeMm / 4));

    internal double AngleRad => 2 * Math.Atan2(IntakeMm / 2, LengthMm);
}
