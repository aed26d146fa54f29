using System;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using UnitsNet;

namespace Pattern.Core.Patterns;

/// <summary>How the pieces of a skirt are made from its block. All defaults are common practice, no source, unless one is named.</summary>
public sealed record SkirtPatternOptions
{
    private readonly LiningChoice _lining;
    private readonly WaistbandJoin _waistbandJoin;
    private readonly HemFinish _hem;

    /// <summary>The allowance of side seams and waist, and of the waistband.</summary>
    /// <value>Default 1/2 in; 1.2 cm for a body in metric units.</value>
    public Length SeamAllowance
    {
        get => Length.FromMillimeters(SeamMm);
        init => GivenSeamMm = Guard.Millimetres(value, 0, 100, nameof(SeamAllowance));
    }

    /// <summary>What is turned up at the hem.</summary>
    /// <value>Default 1 1/2 in; 4 cm for a body in metric units. The American Sewing Guild ("How Deep Is That Hem", 2025-09-12) gives 2 to 3 in for a straight or A-line skirt,
    /// and 1/4 to 3/8 in for a full or flared one. Where nobody says, a hem that fans out up to 35 degrees in a panel is turned up 1 in (2.5 cm), one that fans out more 3/8 in (1 cm).</value>
    public Length HemAllowance
    {
        get => Length.FromMillimeters(HemMm);
        init => GivenHemMm = Guard.Millimetres(value, 0, 200, nameof(HemAllowance));
    }

    /// <summary>How hems are finished.</summary>
    /// <value>Default <see cref="HemFinish.TurnedUp"/>.</value>
    public HemFinish Hem
    {
        get => _hem;
        init => _hem = (HemFinish)Guard.Choice((int)value, 2, nameof(Hem));
    }

    /// <summary>How wide a hem facing is.</summary>
    /// <value>Default 2 in; 5 cm for a body in metric units.</value>
    public Length HemFacingDepth
    {
        get => Length.FromMillimeters(GivenFacingMm ?? (IsMetric ? 50 : 50.8));
        init => GivenFacingMm = Guard.Millimetres(value, 10, 300, nameof(HemFacingDepth));
    }

    /// <summary>The allowance of the centre back, which takes the zip.</summary>
    /// <value>Default 1 in; 2.5 cm for a body in metric units.</value>
    public Length ZipAllowance
    {
        get => Length.FromMillimeters(ZipAllowanceMm);
        init => GivenZipAllowanceMm = Guard.Millimetres(value, 0, 100, nameof(ZipAllowance));
    }

    /// <summary>From the waist seam down the centre back to the stop of the zip.</summary>
    /// <value>Default 7 in, 18 cm for a body in metric units; no more than nine tenths of the upper hip depth, on a small body.</value>
    public Length ZipLength
    {
        get => Length.FromMillimeters(ZipMm);
        init => GivenZipMm = Guard.Millimetres(value, 10, 600, nameof(ZipLength));
    }

    /// <summary>How wide the finished waistband is; it is cut twice as wide and folded.</summary>
    /// <value>Default 1 1/4 in; 3 cm for a body in metric units.</value>
    public Length WaistbandWidth
    {
        get => Length.FromMillimeters(BandMm);
        init => GivenBandMm = Guard.Millimetres(value, 10, 200, nameof(WaistbandWidth));
    }

    /// <summary>How much longer the waistband is than the closed waist, to button. Nothing: both its ends meet at the centre back, and are named for it.</summary>
    /// <value>Default 1 in; 3 cm for a body in metric units.</value>
    public Length WaistbandOverlap
    {
        get => Length.FromMillimeters(OverlapMm);
        init => GivenOverlapMm = Guard.Millimetres(value, 0, 200, nameof(WaistbandOverlap));
    }

    /// <summary>Whether the waistband is cut in one or joined.</summary>
    /// <value>Default <see cref="WaistbandJoin.None"/>.</value>
    public WaistbandJoin WaistbandJoin
    {
        get => _waistbandJoin;
        init => _waistbandJoin = (WaistbandJoin)Guard.Choice((int)value, 2, nameof(WaistbandJoin));
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
    /// <value>Default 1 in; 2.5 cm for a body in metric units. Where nobody says, a hem that fans out is turned up 3/8 in (1 cm) in all.</value>
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
        $"seams {SeamMm:0.##} mm, hem {HemMm:0.##} mm, zip {ZipMm:0.##} mm in {ZipAllowanceMm:0.##} mm, waistband {BandMm:0.##} mm and {OverlapMm:0.##} mm over{(_waistbandJoin == WaistbandJoin.None ? string.Empty : ", joined at the side seams")}{(_hem == HemFinish.TurnedUp ? string.Empty : ", curved hems faced")}, lining {Lining}, {(Label is null ? "no label" : "labels")}");

    internal double SeamMm => GivenSeamMm ?? 12.7;

    internal double HemMm => GivenHemMm ?? (IsMetric ? 40 : 38.1);

    internal double ZipAllowanceMm => GivenZipAllowanceMm ?? 25.4;

    internal double ZipMm => GivenZipMm ?? 177.8;

    internal double BandMm => GivenBandMm ?? 31.75;

    internal double OverlapMm => GivenOverlapMm ?? 25.4;

    internal double? ShorterMm { get; private init; }

    /// <summary>What is turned up at a hem: as said, else the less the more the hem fans out, since cloth folded back over a curve is too short or too full.</summary>
    internal Length HemOf(PanelEdge hem)
    {
        const double ALittleRad = 35 * Math.PI / 180;
        double turns = TurnsRad(hem);
        return GivenHemMm is not null || turns == 0 ? HemAllowance
            : turns <= ALittleRad ? Length.FromMillimeters(IsMetric ? 25 : 25.4)
            : Length.FromMillimeters(IsMetric ? 10 : 9.525);
    }

    /// <summary>The hems of a panel that are faced: those that turn so much that the usual turn-up would not lie flat within 2 mm.</summary>
    internal EdgeName[] FacedHemsOf(Panel panel)
    {
        // Folded back, an edge that turns is too full by twice the depth times the angle that it turns by.
        const double FullnessMm = 2;
        return _hem != HemFinish.FacedWhereCurved ? [] : [.. panel.Edges
            .Where(edge => edge.Role == EdgeRole.Hem && edge.StretchesRaw.Length == 1 && 2 * HemMm * TurnsRad(edge) > FullnessMm)
            .Select(edge => edge.Name)];
    }

    private static double TurnsRad(PanelEdge edge) => edge.StretchesRaw.Sum(stretch => stretch.SegmentsRaw.Sum(segment => Math.Abs(segment.TurningRad)));

    private double? GivenFacingMm { get; init; }

    private bool IsMetric { get; init; }

    internal double? LiningHemMm { get; private init; }

    /// <summary>The allowance of a lining's hem; where nobody says, a hem that fans out is turned up twice as narrow as cloth allows.</summary>
    internal double LiningHemOf(PanelEdge hem) => IsUsualLiningHem && TurnsRad(hem) > 0 ? IsMetric ? 10 : 9.525 : LiningHemMm!.Value;

    private bool IsUsualLiningHem { get; init; }

    private double? GivenSeamMm { get; init; }

    private double? GivenHemMm { get; init; }

    private double? GivenZipAllowanceMm { get; init; }

    private double? GivenZipMm { get; init; }

    private double? GivenBandMm { get; init; }

    private double? GivenOverlapMm { get; init; }

    /// <summary>The same with everything said that was left out: round figures on the tape of the body, and a zip that a small body has room for.</summary>
    internal SkirtPatternOptions FilledFor(bool isMetric, double upperHipMm, double? zipMm)
    {
        const double MostOfUpperHip = 0.9;
        double markMm = isMetric ? 10 : 12.7;
        double roomMm = Math.Max(markMm, Math.Floor(upperHipMm * MostOfUpperHip / markMm) * markMm);
        SkirtPatternOptions filled = this with { GivenZipMm = GivenZipMm ?? zipMm ?? Math.Min(isMetric ? 180 : ZipMm, roomMm), ShorterMm = ShorterMm ?? (isMetric ? 25 : 25.4), LiningHemMm = LiningHemMm ?? (isMetric ? 25 : 25.4), IsUsualLiningHem = LiningHemMm is null, IsMetric = isMetric };
        return !isMetric ? filled : filled with
        {
            GivenSeamMm = GivenSeamMm ?? 12,
            GivenZipAllowanceMm = GivenZipAllowanceMm ?? 25,
            GivenBandMm = GivenBandMm ?? 30,
            GivenOverlapMm = GivenOverlapMm ?? 30,
        };
    }
}
