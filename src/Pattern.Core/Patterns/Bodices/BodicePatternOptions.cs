using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Pieces;
using UnitsNet;

namespace Pattern.Core.Patterns;

/// <summary>How the pieces of a bodice are made from its block. All defaults are common practice, no source.</summary>
public sealed record BodicePatternOptions
{
    private readonly ArmholeFinish _armhole;

    /// <summary>The allowance of shoulders, sides and waist.</summary>
    /// <value>Default 1/2 in; 1.2 cm for a body in metric units.</value>
    public Length SeamAllowance
    {
        get => Length.FromMillimeters(GivenSeamMm ?? (IsMetric ? 12 : 12.7));
        init => GivenSeamMm = Guard.Millimetres(value, 0, 100, nameof(SeamAllowance));
    }

    /// <summary>The allowance of neckline and armhole, which are enclosed by facings or by a sleeve and clipped.</summary>
    /// <value>Default 3/8 in; 1 cm for a body in metric units.</value>
    public Length CurveAllowance
    {
        get => Length.FromMillimeters(GivenCurveMm ?? (IsMetric ? 10 : 9.525));
        init => GivenCurveMm = Guard.Millimetres(value, 0, 100, nameof(CurveAllowance));
    }

    /// <summary>The allowance of the centre back, which takes the zip.</summary>
    /// <value>Default 1 in; 2.5 cm for a body in metric units.</value>
    public Length ZipAllowance
    {
        get => Length.FromMillimeters(GivenZipMm ?? (IsMetric ? 25 : 25.4));
        init => GivenZipMm = Guard.Millimetres(value, 0, 100, nameof(ZipAllowance));
    }

    /// <summary>How deep the facings of neckline and armhole are.</summary>
    /// <value>Default 2 in; 5 cm for a body in metric units.</value>
    public Length FacingDepth
    {
        get => Length.FromMillimeters(GivenFacingMm ?? (IsMetric ? 50 : 50.8));
        init => GivenFacingMm = Guard.Millimetres(value, 10, 150, nameof(FacingDepth));
    }

    /// <summary>What becomes of the armhole.</summary>
    /// <value>Default <see cref="ArmholeFinish.Faced"/>.</value>
    public ArmholeFinish Armhole
    {
        get => _armhole;
        init => _armhole = (ArmholeFinish)Guard.Choice((int)value, 2, nameof(Armhole));
    }

    /// <summary>What is printed on front and back besides their names, or null for pieces without a label; facings have room for their names alone.</summary>
    /// <value>Default null.</value>
    public PieceLabel? Label { get; init; }

    /// <summary>All of it in millimetres, whatever the culture.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"seams {SeamAllowance.Millimeters:0.##} mm, curves {CurveAllowance.Millimeters:0.##} mm, zip in {ZipAllowance.Millimeters:0.##} mm, facings {FacingDepth.Millimeters:0.##} mm deep, armhole {_armhole}, {(Label is null ? "no label" : "labels")}");

    internal bool IsMetric { get; init; }

    private double? GivenSeamMm { get; init; }

    private double? GivenCurveMm { get; init; }

    private double? GivenZipMm { get; init; }

    private double? GivenFacingMm { get; init; }
}
