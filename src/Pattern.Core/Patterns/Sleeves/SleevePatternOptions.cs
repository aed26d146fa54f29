using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Pieces;
using UnitsNet;

namespace Pattern.Core.Patterns;

/// <summary>How the pieces of a sleeve are made from its block. All defaults are common practice, no source.</summary>
public sealed record SleevePatternOptions
{
    /// <summary>The allowance of head and seams.</summary>
    /// <value>Default 1/2 in; 1.2 cm for a body in metric units.</value>
    public Length SeamAllowance
    {
        get => Length.FromMillimeters(GivenSeamMm ?? 12.7);
        init => GivenSeamMm = Guard.Millimetres(value, 0, 100, nameof(SeamAllowance));
    }

    /// <summary>What is turned up at the lower edge. Where the seams come in toward it, the turn-up flares: it has the shape of the sleeve that it lies on.</summary>
    /// <value>Default 1 1/4 in; 3 cm for a body in metric units.</value>
    public Length HemAllowance
    {
        get => Length.FromMillimeters(GivenHemMm ?? 31.75);
        init => GivenHemMm = Guard.Millimetres(value, 0, 200, nameof(HemAllowance));
    }

    /// <summary>What is printed on each piece besides its name, or null for pieces without a label.</summary>
    /// <value>Default null.</value>
    public PieceLabel? Label { get; init; }

    /// <summary>All of it in millimetres, whatever the culture.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"seams {SeamAllowance.Millimeters:0.##} mm, hem {HemAllowance.Millimeters:0.##} mm, {(Label is null ? "no label" : "labels")}");

    /// <summary>The same with everything said that was left out: round figures on the tape of the body.</summary>
    internal SleevePatternOptions FilledFor(bool isMetric) => isMetric ? this with { GivenSeamMm = GivenSeamMm ?? 12, GivenHemMm = GivenHemMm ?? 30 } : this;

    private double? GivenSeamMm { get; init; }

    private double? GivenHemMm { get; init; }
}
