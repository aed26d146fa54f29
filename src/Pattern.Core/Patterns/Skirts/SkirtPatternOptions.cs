using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Pieces;
using UnitsNet;

namespace Pattern.Core.Patterns;

/// <summary>How the pieces of a skirt are made from its block. All defaults are common practice, no source, unless one is named.</summary>
public sealed record SkirtPatternOptions
{
    private readonly LiningChoice _lining;

    /// <summary>The allowance of side seams and waist, and of the waistband.</summary>
    /// <value>Default 1/2 in.</value>
    public Length SeamAllowance
    {
        get => Length.FromMillimeters(SeamMm);
        init => SeamMm = Guard.Millimetres(value, 0, 100, nameof(SeamAllowance));
    }

    /// <summary>What is turned up at the hem.</summary>
    /// <value>Default 1 1/2 in. The American Sewing Guild ("How Deep Is That Hem", 2025-09-12) gives 2 to 3 in for a straight or A-line skirt.</value>
    public Length HemAllowance
    {
        get => Length.FromMillimeters(HemMm);
        init => HemMm = Guard.Millimetres(value, 0, 200, nameof(HemAllowance));
    }

    /// <summary>The allowance of the centre back, which takes the zip.</summary>
    /// <value>Default 1 in.</value>
    public Length ZipAllowance
    {
        get => Length.FromMillimeters(ZipAllowanceMm);
        init => ZipAllowanceMm = Guard.Millimetres(value, 0, 100, nameof(ZipAllowance));
    }

    /// <summary>From the waist seam down the centre back to the stop of the zip.</summary>
    /// <value>Default 7 in.</value>
    public Length ZipLength
    {
        get => Length.FromMillimeters(ZipMm);
        init => ZipMm = Guard.Millimetres(value, 10, 600, nameof(ZipLength));
    }

    /// <summary>How wide the finished waistband is; it is cut twice as wide and folded.</summary>
    /// <value>Default 1 1/4 in.</value>
    public Length WaistbandWidth
    {
        get => Length.FromMillimeters(BandMm);
        init => BandMm = Guard.Millimetres(value, 10, 200, nameof(WaistbandWidth));
    }

    /// <summary>How much longer the waistband is than the closed waist, to button.</summary>
    /// <value>Default 1 in.</value>
    public Length WaistbandOverlap
    {
        get => Length.FromMillimeters(OverlapMm);
        init => OverlapMm = Guard.Millimetres(value, 0, 200, nameof(WaistbandOverlap));
    }

    /// <summary>Whether there are pieces for a lining.</summary>
    /// <value>Default <see cref="LiningChoice.None"/>.</value>
    public LiningChoice Lining
    {
        get => _lining;
        init => _lining = (LiningChoice)Guard.Choice((int)value, 2, nameof(Lining));
    }

    /// <summary>How much shorter than the skirt a loose lining hangs, so that it does not show when the wearer sits or walks.</summary>
    /// <value>Default 1 in; 2.5 cm for a body in metric units.</value>
    public Length? LiningShorter
    {
        get => ShorterMm is { } mm ? Length.FromMillimeters(mm) : null;
        init => ShorterMm = value is { } length ? Guard.Millimetres(length, 0, 150, nameof(LiningShorter)) : null;
    }

    /// <summary>The allowance of the lining's hem. It is turned up by half of it twice, so that no raw edge frays against the skirt.</summary>
    /// <value>Default 1 in; 2.5 cm for a body in metric units.</value>
    public Length? LiningHemAllowance
    {
        get => LiningHemMm is { } mm ? Length.FromMillimeters(mm) : null;
        init => LiningHemMm = value is { } length ? Guard.Millimetres(length, 4, 150, nameof(LiningHemAllowance)) : null;
    }

    /// <summary>What is printed on each piece besides its name, or null for pieces without a label.</summary>
    /// <value>Default null.</value>
    public PieceLabel? Label { get; init; }

    /// <summary>All of it in millimetres, whatever the culture.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"seams {SeamMm:0.##} mm, hem {HemMm:0.##} mm, zip {ZipMm:0.##} mm in {ZipAllowanceMm:0.##} mm, waistband {BandMm:0.##} mm and {OverlapMm:0.##} mm over, lining {Lining}, {(Label is null ? "no label" : "labels")}");

    internal double SeamMm { get; private init; } = 12.7;

    internal double HemMm { get; private init; } = 38.1;

    internal double ZipAllowanceMm { get; private init; } = 25.4;

    internal double ZipMm { get; private init; } = 177.8;

    internal double BandMm { get; private init; } = 31.75;

    internal double OverlapMm { get; private init; } = 25.4;

    internal double? ShorterMm { get; private init; }

    internal double? LiningHemMm { get; private init; }
}
