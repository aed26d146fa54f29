using System;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Patterns;

/// <summary>How the pieces of a gown are made from its block. All defaults are common practice, no source.</summary>
public sealed record GownPatternOptions
{
    private readonly BodicePatternOptions _bodice = new();

    /// <summary>How the bodice is made; its seam and zip allowances serve the skirt and the sleeve too. Where the gown has sleeves its armhole is not faced, whatever this says.</summary>
    /// <value>Default: as for a bodice.</value>
    public BodicePatternOptions Bodice
    {
        get => _bodice;
        init => _bodice = Guard.NotNull(value, nameof(Bodice));
    }

    /// <summary>What is turned up at the hem of the skirt.</summary>
    /// <value>Default 2 in; 5 cm for a body in metric units.</value>
    public Length HemAllowance
    {
        get => Length.FromMillimeters(GivenHemMm ?? (IsMetric ? 50 : 50.8));
        init => GivenHemMm = Guard.Millimetres(value, 0, 200, nameof(HemAllowance));
    }

    /// <summary>What is turned up at the lower edge of the sleeve.</summary>
    /// <value>Default 1 in; 2.5 cm for a body in metric units.</value>
    public Length WristAllowance
    {
        get => Length.FromMillimeters(GivenWristMm ?? (IsMetric ? 25 : 25.4));
        init => GivenWristMm = Guard.Millimetres(value, 0, 200, nameof(WristAllowance));
    }

    /// <summary>How far the zip goes on below the waist seam, to step in.</summary>
    /// <value>Default 7 in; 18 cm for a body in metric units.</value>
    public Length ZipBelowWaist
    {
        get => Length.FromMillimeters(GivenZipMm ?? (IsMetric ? 180 : 177.8));
        init => GivenZipMm = Guard.Millimetres(value, 0, 400, nameof(ZipBelowWaist));
    }

    /// <summary>All of it in millimetres, whatever the culture.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{_bodice}; hem {HemAllowance.Millimeters:0.##} mm, wrist {WristAllowance.Millimeters:0.##} mm, zip {ZipBelowWaist.Millimeters:0.##} mm below the waist");

    internal bool IsMetric { get; init; }

    private double? GivenHemMm { get; init; }

    private double? GivenWristMm { get; init; }

    private double? GivenZipMm { get; init; }
}
