using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>One quarter of the skirt as drawn by hand, before truing: what the steps on the sheet have led to.</summary>
internal sealed class SkirtQuarter
{
    internal SkirtQuarter(QuarterNames names, double hand)
    {
        Names = names;
        Hand = hand;
    }

    internal QuarterNames Names { get; }

    /// <summary>+1 where the side lies to the right of the centre (back), -1 where it lies to the left (front).</summary>
    internal double Hand { get; }

    internal Across TowardSide => Hand > 0 ? Across.Right : Across.Left;

    internal Across TowardCentre => Hand > 0 ? Across.Left : Across.Right;

    internal WorkedLength HipWidth { get; set; } = null!;

    internal SkirtShaping Shaping { get; set; } = null!;

    /// <summary>How far the centre comes in at the waist; null where it does not.</summary>
    internal WorkedLength? ComesIn { get; set; }

    /// <summary>How far the side comes in from the hip to the waist, darts taken; negative where it goes out.</summary>
    internal double SideInMm { get; set; }

    /// <summary>Where the side seam leaves the upright line of the hip for the waist.</summary>
    internal Landmark SideFoot { get; set; }

    /// <summary>Where the centre leaves its line for the waist.</summary>
    internal Landmark CentreFoot { get; set; }

    internal Landmark CentreUpperHip { get; set; }

    internal Landmark CentreLowerHip { get; set; }

    /// <summary>Where the waist is laid off from, at the waist level: the centre line, or in from it.</summary>
    internal Landmark CentreLevel { get; set; }

    internal Landmark CentreWaist { get; set; }

    internal Landmark CentreHem { get; set; }

    internal Landmark WaistPoint { get; set; }

    internal Landmark SideWaist { get; set; }

    internal Landmark SideHem { get; set; }

    /// <summary>From the upper hip up to the waist, as drawn by hand.</summary>
    internal CubicBezier SideSeam { get; set; }

    /// <summary>From the upper hip up to the waist where the centre comes in; else null: the centre is straight.</summary>
    internal CubicBezier? CentreSeam { get; set; }

    /// <summary>From the lower hip down to the hem where the side comes in; else null: the side is straight.</summary>
    internal CubicBezier? SideSeamBelow { get; set; }

    /// <summary>From the lower hip down to the hem where the centre comes in; else null: the centre is straight.</summary>
    internal CubicBezier? CentreSeamBelow { get; set; }

    /// <summary>The waistline from centre to side in one sweep, darts not yet folded.</summary>
    internal DraftedLine Waistline { get; set; } = null!;

    internal DartWedge[] Wedges { get; set; } = [];

    /// <summary>The darts as drawn by hand, from the centre.</summary>
    internal DraftedDart[] Darts { get; set; } = [];

    /// <summary>What the hand-drawn waistline measures once the darts are folded.</summary>
    internal double HandClosedWaistMm { get; set; }

    /// <summary>The largest difference between the two legs of a hand-drawn dart.</summary>
    internal double HandLegDifferenceMm { get; set; }

    internal double HandSideLengthMm => SideSeam.LengthMm();

    /// <summary>The direction in which a line square to the centre leaves it for the side.</summary>
    internal Direction LeavingCentre => CentreSeam is { } seam ? Square(seam.EndDirection) : TowardSide == Across.Right ? Direction.Right : Direction.Left;

    /// <summary>A direction that goes up, turned a right angle to the side.</summary>
    internal Direction Square(Direction up) => Hand > 0 ? up.TurnedRight : up.TurnedLeft;
}
