using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>The cap of a set-in sleeve: as long in front and behind as the armhole and its ease, level at the crown. Immutable.</summary>
/// <remarks>
/// <para>Two lengths have to come out, so two things are found: where the crown stands between front and back, and either the height of the cap, where its width is given, or
/// the width, where its height is. With both lengths given, a higher cap is a narrower one.</para>
/// <para>Each half is one curve. Its bend is given by <see cref="CapBend"/> and stays in proportion while height and width are found.</para>
/// </remarks>
/// <example><code>
/// DrawnCap cap = CapCurve.Over(frontArmhole: Length.FromMillimeters(212), backArmhole: Length.FromMillimeters(214))
///     .WithEase(front: Length.FromMillimeters(11), back: Length.FromMillimeters(14))
///     .DrawAcross(width: Length.FromMillimeters(334));
/// Length height = cap.Height;
/// </code></example>
public sealed class CapCurve
{
    // The crown stands within a tenth of the width of the middle, and the height between 0.18 and 0.38 of the armhole: beyond that it is no cap any more.
    private const double MostShift = 0.1;
    internal const double LeastHeight = 0.18;
    internal const double MostHeight = 0.38;

    private static readonly Construction<(CapCurve Cap, double GivenMm), CapHalves> Across = Construction
        .Of<(CapCurve Cap, double GivenMm), CapHalves>("cap across its width", (asked, found) => asked.Cap.Halves(asked.GivenMm, found.Mm(1), found.Mm(2)))
        .WithUnknown(new("cap height", false, a => a.Cap.ArmholeMm / 3, a => LeastHeight * a.Cap.ArmholeMm, a => MostHeight * a.Cap.ArmholeMm))
        .WithUnknown(new("crown from the middle", false, _ => 0, a => -MostShift * a.GivenMm, a => MostShift * a.GivenMm))
        .MustBe(new("front cap", false, (a, halves) => halves.Front.LengthMm() - a.Cap._frontMm))
        .MustBe(new("back cap", false, (a, halves) => halves.Back.LengthMm() - a.Cap._backMm));

    private static readonly Construction<(CapCurve Cap, double GivenMm), CapHalves> UpTo = Construction
        .Of<(CapCurve Cap, double GivenMm), CapHalves>("cap up to its height", (asked, found) => asked.Cap.Halves(found.Mm(1), asked.GivenMm, found.Mm(2)))
        .WithUnknown(new("cap width", false, a => a.Cap.FirstWidthMm(a.GivenMm), a => 0.4 * a.Cap.FirstWidthMm(a.GivenMm), a => 1.2 * a.Cap.FirstWidthMm(a.GivenMm)))
        .WithUnknown(new("crown from the middle", false, _ => 0, a => -MostShift * a.Cap.FirstWidthMm(a.GivenMm), a => MostShift * a.Cap.FirstWidthMm(a.GivenMm)))
        .MustBe(new("front cap", false, (a, halves) => halves.Front.LengthMm() - a.Cap._frontMm))
        .MustBe(new("back cap", false, (a, halves) => halves.Back.LengthMm() - a.Cap._backMm));

    private readonly double _frontArmholeMm;
    private readonly double _backArmholeMm;
    private readonly double _frontMm;
    private readonly double _backMm;
    private readonly CapBend _frontBend;
    private readonly CapBend _backBend;
    private readonly (double LengthMm, double LowerMm)? _seams;

    private CapCurve(double frontArmholeMm, double backArmholeMm, double frontMm, double backMm, CapBend frontBend, CapBend backBend, (double LengthMm, double LowerMm)? seams)
    {
        _frontArmholeMm = frontArmholeMm;
        _backArmholeMm = backArmholeMm;
        _frontMm = frontMm;
        _backMm = backMm;
        _frontBend = frontBend;
        _backBend = backBend;
        _seams = seams;
    }

    /// <summary>How long the front half is: the front armhole and its ease.</summary>
    public Length Front => Length.FromMillimeters(_frontMm);

    /// <summary>How long the back half is: the back armhole and its ease.</summary>
    public Length Back => Length.FromMillimeters(_backMm);

    private double ArmholeMm => _frontArmholeMm + _backArmholeMm;

    /// <summary>A cap for an armhole, without ease as long as none is asked for.</summary>
    /// <param name="frontArmhole">Along the seam line, from the side seam to the shoulder; 20 to 1,000 mm.</param>
    /// <param name="backArmhole">Likewise.</param>
    public static CapCurve Over(Length frontArmhole, Length backArmhole)
    {
        double front = Guard.Millimetres(frontArmhole, 20, 1000, nameof(frontArmhole));
        double back = Guard.Millimetres(backArmhole, 20, 1000, nameof(backArmhole));
        return new CapCurve(front, back, front, back, CapBend.Front, CapBend.Back, null);
    }

    /// <summary>The same cap, longer than the armhole by what is eased in.</summary>
    /// <param name="front">In front; negative where the armhole is eased instead. Up to 100 mm.</param>
    /// <param name="back">Behind.</param>
    [Pure]
    public CapCurve WithEase(Length front, Length back) => new(
        _frontArmholeMm,
        _backArmholeMm,
        _frontArmholeMm + Guard.Millimetres(front, -100, 100, nameof(front)),
        _backArmholeMm + Guard.Millimetres(back, -100, 100, nameof(back)),
        _frontBend,
        _backBend,
        _seams);

    /// <summary>The same cap, bent otherwise.</summary>
    /// <param name="front">Default <see cref="CapBend.Front"/>.</param>
    /// <param name="back">Default <see cref="CapBend.Back"/>.</param>
    [Pure]
    public CapCurve WithBend(CapBend front, CapBend back)
        => new(_frontArmholeMm, _backArmholeMm, _frontMm, _backMm, Guard.NotNull(front, nameof(front)), Guard.NotNull(back, nameof(back)), _seams);

    /// <summary>The same cap, square to the seams under the arm: where they come in toward the lower edge it rises from the underarm points by as much as they lean, and is one line without a corner once they are sewn.</summary>
    /// <remarks>The seams are straight and come in by as much on either side; a lower edge that is wider than the cap counts as one that is as wide. The rise of the bend comes on top.</remarks>
    /// <param name="length">From the crown down to the lower edge, 20 to 2,000 mm.</param>
    /// <param name="lower">How wide the lower edge is, 10 to 2,000 mm.</param>
    [Pure]
    public CapCurve SquareToSeams(Length length, Length lower) => new(
        _frontArmholeMm,
        _backArmholeMm,
        _frontMm,
        _backMm,
        _frontBend,
        _backBend,
        (Guard.Millimetres(length, 20, 2000, nameof(length)), Guard.Millimetres(lower, 10, 2000, nameof(lower))));

    /// <summary>Draws the cap of a given width: its height is found.</summary>
    /// <param name="width">From underarm point to underarm point, 40 to 2,000 mm.</param>
    /// <exception cref="ConstructionException">No cap between 0.18 and 0.38 of the armhole high, its crown within a tenth of the width of the middle, has these lengths.</exception>
    [Pure]
    public DrawnCap DrawAcross(Length width) => new(Across.Draw((this, Guard.Millimetres(width, 40, 2000, nameof(width)))));

    /// <summary>Draws the cap of a given width, and says as data what cannot be met.</summary>
    /// <param name="width">From underarm point to underarm point, 40 to 2,000 mm.</param>
    /// <param name="outcome">The cap, or what comes nearest.</param>
    public bool TryDrawAcross(Length width, out ConstructionOutcome<DrawnCap> outcome) => TryDraw(Across, Guard.Millimetres(width, 40, 2000, nameof(width)), out outcome);

    /// <summary>Draws the cap of a given height: its width is found.</summary>
    /// <param name="height">From the underarm line to the crown, 10 to 1,000 mm.</param>
    /// <exception cref="ConstructionException">No cap of that height, its crown within a tenth of the width of the middle, has these lengths.</exception>
    [Pure]
    public DrawnCap DrawUpTo(Length height) => new(UpTo.Draw((this, Guard.Millimetres(height, 10, 1000, nameof(height)))));

    /// <summary>Draws the cap of a given height, and says as data what cannot be met.</summary>
    /// <param name="height">From the underarm line to the crown, 10 to 1,000 mm.</param>
    /// <param name="outcome">The cap, or what comes nearest.</param>
    public bool TryDrawUpTo(Length height, out ConstructionOutcome<DrawnCap> outcome) => TryDraw(UpTo, Guard.Millimetres(height, 10, 1000, nameof(height)), out outcome);

    /// <summary>Draws without an outcome, for measuring how long that takes.</summary>
    internal int CountDrawings(double widthMm)
    {
        Across.Draw((this, widthMm), LeastChange.UsualMostDrawings, out int drawings);
        return drawings;
    }

    private bool TryDraw(Construction<(CapCurve Cap, double GivenMm), CapHalves> way, double givenMm, out ConstructionOutcome<DrawnCap> outcome)
    {
        bool isMet = way.TryDraw((this, givenMm), out ConstructionOutcome<CapHalves> found);
        outcome = new ConstructionOutcome<DrawnCap>(new DrawnCap(found.Drawn), isMet, [.. found.Off], [.. found.AtLimit], found.Drawings);
        return isMet;
    }

    // Two right triangles under the halves, a little narrower: a curve is longer than its chord.
    private double FirstWidthMm(double heightMm)
    {
        double Leg(double halfMm) => Math.Sqrt(Math.Max((halfMm * halfMm) - (heightMm * heightMm), halfMm * halfMm / 16));
        return 0.95 * (Leg(_frontMm) + Leg(_backMm));
    }

    private CapHalves Halves(double widthMm, double heightMm, double shiftMm)
    {
        double crown = (widthMm / 2) + shiftMm;
        double leanRad = LeanRad(widthMm, heightMm);
        CubicBezier front = Half(_frontBend, widthMm - crown, heightMm, leanRad);
        return new CapHalves(
            Half(_backBend, crown, heightMm, leanRad),
            new CubicBezier(widthMm - front.X3, front.Y3, widthMm - front.X2, front.Y2, widthMm - front.X1, front.Y1, widthMm, 0));
    }

    private double LeanRad(double widthMm, double heightMm)
    {
        // Seams shorter than this are none; the limits of the height keep what is drawn away from it.
        const double LeastSeamMm = 10;
        return _seams is { } seams ? Math.Atan2(Math.Max(0, (widthMm - seams.LowerMm) / 2), Math.Max(LeastSeamMm, seams.LengthMm - heightMm)) : 0;
    }

    /// <summary>One half, its underarm point at the origin and its crown to the right.</summary>
    internal static CubicBezier Half(CapBend bend, double halfMm, double heightMm, double leanRad) => CubicBezier.FromHandles(
        Point2D.Origin,
        Direction.FromRadians(bend.RiseRad + leanRad),
        bend.UnderarmShare * halfMm,
        new Point2D(halfMm, heightMm),
        Direction.Right,
        bend.CrownShare * halfMm);

    /// <summary>The two lengths.</summary>
    public override string ToString()
        => FormattableString.Invariant($"cap curve, front {_frontMm:0.##} mm, back {_backMm:0.##} mm");
}
