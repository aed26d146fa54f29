using System;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>What truing did with something that may move.</summary>
public sealed class TruingMove
{
    internal TruingMove(Movable what, double acrossMm, double upMm, double distanceMm, bool isAtLimit)
    {
        What = what;
        AcrossMm = acrossMm;
        UpMm = upMm;
        DistanceMm = distanceMm;
        IsAtLimit = isAtLimit;
    }

    /// <summary>It did not move.</summary>
    internal static TruingMove None(Movable what) => new(what, 0, 0, 0, isAtLimit: false);

    /// <summary>What may move.</summary>
    public Movable What { get; }

    /// <summary>How far it moved; along the edge for a notch, the farthest for handles and legs; for a line drawn in one sweep, how far it leaves the hand's at most.</summary>
    public Length Distance => Length.FromMillimeters(DistanceMm);

    /// <summary>How far a corner or a dart moved to the right on the sheet; negative to the left.</summary>
    public Length Across => Length.FromMillimeters(AcrossMm);

    /// <summary>How far a corner or a dart moved up the sheet; negative down.</summary>
    public Length Up => Length.FromMillimeters(UpMm);

    /// <summary>Whether it stands at its limit: with more room truing would have moved it farther, or could have met what it did not.</summary>
    public bool IsAtLimit { get; }

    internal double AcrossMm { get; }

    internal double UpMm { get; }

    internal double DistanceMm { get; }

    /// <summary>Such as <c>end of the back waist moved 3.2 mm, at its limit</c>.</summary>
    public override string ToString() => FormattableString.Invariant($"{What.Name} moved {DistanceMm:0.###} mm{(IsAtLimit ? ", at its limit" : string.Empty)}");
}
