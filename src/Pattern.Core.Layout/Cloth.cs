using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Layout;

/// <summary>The cloth that pieces are laid on, and how they may lie on it. Immutable: every method returns a new one.</summary>
/// <remarks>What is not said keeps its default: open cloth without selvedge and without nap, every piece exactly on its grain, no room between pieces.</remarks>
/// <example><code>
/// Cloth velvet = Cloth.Wide(Length.FromCentimeters(140)).WithSelvedge(Length.FromMillimeters(10)).Napped();
/// </code></example>
public sealed class Cloth
{
    private const double LeastWidthMm = 10;
    private const double MostWidthMm = 10_000;
    private const double MostSelvedgeMm = 200;
    private const double MostGapMm = 100;
    private const double MostGrainDegrees = 10;
    private const int MostTurns = 24;

    private static readonly Angle[] EitherWay = [Angle.Zero, Angle.FromDegrees(180)];

    private readonly Angle[] _turns;

    private Cloth(double widthMm, double selvedgeMm, double gapMm, double grainRad, bool isFolded, Angle[] turns)
    {
        WidthMm = widthMm;
        SelvedgeMm = selvedgeMm;
        GapMm = gapMm;
        GrainRad = grainRad;
        IsFolded = isFolded;
        _turns = turns;
        Turns = Array.AsReadOnly(turns);
    }

    /// <summary>From edge to edge, selvedges included; of folded cloth, before it was folded.</summary>
    public Length Width => Length.FromMillimeters(WidthMm);

    /// <summary>How much of either edge is left free.</summary>
    /// <value>Default: none.</value>
    public Length Selvedge => Length.FromMillimeters(SelvedgeMm);

    /// <summary>What pieces may take across the cloth: of folded cloth from the fold to the selvedges.</summary>
    public Length UsableWidth => Length.FromMillimeters(UsableWidthMm);

    /// <summary>Whether the cloth lies folded along its length, so that each cut makes a pair.</summary>
    public bool IsFolded { get; }

    /// <summary>The turns against the grain that a piece may lie in, counter-clockwise.</summary>
    /// <value>Default: 0 and 180 degrees, for cloth without nap.</value>
    public IReadOnlyList<Angle> Turns { get; }

    /// <summary>How far a piece may be turned off its grain, to either side.</summary>
    /// <value>Default: not at all.</value>
    public Angle GrainTolerance => Angle.FromRadians(GrainRad);

    /// <summary>The least room between two pieces.</summary>
    /// <value>Default: none, so that one cut may part two pieces.</value>
    public Length Gap => Length.FromMillimeters(GapMm);

    internal double WidthMm { get; }

    internal double SelvedgeMm { get; }

    internal double GapMm { get; }

    internal double GrainRad { get; }

    internal double UsableWidthMm => IsFolded ? (WidthMm / 2) - SelvedgeMm : WidthMm - (2 * SelvedgeMm);

    /// <summary>Begins with the width.</summary>
    /// <param name="width">From edge to edge: 10 mm to 10 m. Common practice, no source: 90, 115, 140 or 150 cm (36, 45, 54 or 60 in).</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is outside its range.</exception>
    public static Cloth Wide(Length width) => new(Guard.Millimetres(width, LeastWidthMm, MostWidthMm, nameof(width)), 0, 0, 0, false, EitherWay);

    /// <summary>Leaves both edges of the cloth free.</summary>
    /// <param name="each">Of each edge: 0 to 200 mm, and less than what is left. Common practice, no source: 6 to 19 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The selvedge is outside its range.</exception>
    [Pure]
    public Cloth WithSelvedge(Length each) => new(
        WidthMm, Guard.Millimetres(each, 0, Math.Min(MostSelvedgeMm, (WidthMm - LeastWidthMm) / 2), nameof(each)), GapMm, GrainRad, IsFolded, _turns);

    /// <summary>Folds the cloth along its length, right sides together: pieces that are cut on the fold lie on it, and every other cut makes one piece and its mirror image.</summary>
    [Pure]
    public Cloth OnTheFold() => new(WidthMm, SelvedgeMm, GapMm, GrainRad, true, _turns);

    /// <summary>For cloth with a nap, a pile or a print that has an up and a down: all pieces lie the same way.</summary>
    [Pure]
    public Cloth Napped() => WithTurns(Angle.Zero);

    /// <summary>Says in which turns pieces may lie.</summary>
    /// <remarks>Felt and other cloth without grain takes any: 0, 90, 180 and 270 degrees, say.</remarks>
    /// <param name="turns">1 to 24 turns, counter-clockwise against lying on the grain. The first is that of a piece that has a choice between equals.</param>
    /// <exception cref="ArgumentException">There are no turns, too many, or one is not finite.</exception>
    [Pure]
    public Cloth WithTurns(params Angle[] turns)
    {
        _ = Guard.InRange(Guard.NotNull(turns, nameof(turns)).Length, 1, MostTurns, nameof(turns));
        return new Cloth(WidthMm, SelvedgeMm, GapMm, GrainRad, IsFolded, [.. turns.Select(turn => Angle.FromDegrees(Guard.Finite(turn.Degrees, nameof(turns))))]);
    }

    /// <summary>Lets pieces lie a little off their grain, where that saves cloth.</summary>
    /// <remarks>A piece lies on its grain, or off it by the tolerance to one side or the other. What lies on the fold stays on its grain.</remarks>
    /// <param name="tolerance">0 to 10 degrees. Common practice, no source: 1 degree for fashion, none for checks and stripes.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is outside its range.</exception>
    [Pure]
    public Cloth WithGrainTolerance(Angle tolerance)
    {
        double degrees = Guard.Finite(tolerance.Degrees, nameof(tolerance));
        return degrees >= 0 && degrees <= MostGrainDegrees
            ? new Cloth(WidthMm, SelvedgeMm, GapMm, tolerance.Radians, IsFolded, _turns)
            : throw new ArgumentOutOfRangeException(
                nameof(tolerance), MessageRegistry.Format(DiagnosticCode.QuantityOutOfRange, nameof(tolerance), tolerance, Angle.Zero, Angle.FromDegrees(MostGrainDegrees)));
    }

    /// <summary>Keeps room between pieces, for the blade or for a mark.</summary>
    /// <param name="gap">0 to 100 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The gap is outside its range.</exception>
    [Pure]
    public Cloth WithGap(Length gap) => new(WidthMm, SelvedgeMm, Guard.Millimetres(gap, 0, MostGapMm, nameof(gap)), GrainRad, IsFolded, _turns);

    /// <summary>How it lies and how wide it is.</summary>
    public override string ToString()
        => FormattableString.Invariant($"{(IsFolded ? "folded" : "open")} cloth, {UsableWidthMm:0.#} mm usable");
}
