using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>A dart asked for on an edge that is swept across it: where its upright middle line stands, how wide and how long it is.</summary>
public readonly struct UprightDart
{
    /// <summary>Asks for a dart.</summary>
    /// <param name="middle">Across the sheet from the start of the edge to the middle line, with the darts before it open.</param>
    /// <param name="intake">Straight from leg to leg.</param>
    /// <param name="length">From the middle of the intake to the apex.</param>
    public UprightDart(Length middle, Length intake, Length length)
    {
        Middle = Length.FromMillimeters(Guard.Millimetres(middle, 0, 10_000, nameof(middle)));
        Intake = Length.FromMillimeters(Guard.Millimetres(intake, 0, 10_000, nameof(intake)));
        DartLength = Length.FromMillimeters(Guard.Millimetres(length, 0.1, 10_000, nameof(length)));
    }

    /// <summary>Across the sheet from the start of the edge to the middle line, with the darts before it open.</summary>
    public Length Middle { get; }

    /// <summary>Straight from leg to leg.</summary>
    public Length Intake { get; }

    /// <summary>From the middle of the intake to the apex.</summary>
    public Length DartLength { get; }

    /// <summary>Place, intake and length.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"dart at {Middle.Millimeters:0.##} mm, {Intake.Millimeters:0.##} mm wide, {DartLength.Millimeters:0.##} mm long");
}
