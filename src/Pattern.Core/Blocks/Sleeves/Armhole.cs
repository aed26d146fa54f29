using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>The armhole that a sleeve is set into: its front and back, each from the side seam up to the shoulder, with the notches on them. Immutable.</summary>
/// <remarks>Whose armhole it is does not matter: two panels of any block, or two lines of your own.</remarks>
/// <example><code>
/// CurvePath frontLine = CurvePath.From(Point2D.FromMillimeters(0, 0)).CurveTo(Direction.Right, Point2D.FromMillimeters(60, 170), Direction.Up);
/// CurvePath backLine = CurvePath.From(Point2D.FromMillimeters(0, 0)).CurveTo(Direction.Left, Point2D.FromMillimeters(-60, 180), Direction.Up);
/// Armhole armhole = Armhole.Of(frontLine, backLine);
/// </code></example>
public sealed class Armhole
{
    private const double LeastMm = 40;
    private const double MostMm = 1000;

    // A single notch in front 7 to 8 cm from the side seam, a double one behind 8 to 9 cm: common practice, no source. On a small armhole no farther than this part of it.
    private const double FrontNotchMm = 75;
    private const double BackNotchMm = 85;
    private const double MostOfHalf = 0.4;

    internal Armhole(ArmholeHalf front, ArmholeHalf back)
    {
        FrontHalf = front;
        BackHalf = back;
    }

    /// <summary>The front armhole, from the side seam up to the shoulder.</summary>
    public CurvePath Front => FrontHalf.Path;

    /// <summary>The back armhole, from the side seam up to the shoulder.</summary>
    public CurvePath Back => BackHalf.Path;

    /// <summary>How long the front armhole is, along its seam line.</summary>
    public Length FrontLength => Length.FromMillimeters(FrontHalf.LengthMm);

    /// <summary>How long the back armhole is, along its seam line.</summary>
    public Length BackLength => Length.FromMillimeters(BackHalf.LengthMm);

    /// <summary>How far the notches of the front lie from the side seam, along the seam line, the nearest first.</summary>
    public IReadOnlyList<Length> FrontNotches => FrontHalf.Distances();

    /// <summary>How far the notches of the back lie from the side seam, along the seam line, the nearest first.</summary>
    public IReadOnlyList<Length> BackNotches => BackHalf.Distances();

    internal ArmholeHalf FrontHalf { get; }

    internal ArmholeHalf BackHalf { get; }

    internal double LengthMm => FrontHalf.LengthMm + BackHalf.LengthMm;

    /// <summary>The armhole of a block with the panels <c>front</c> and <c>back</c>.</summary>
    /// <param name="block">The block.</param>
    /// <exception cref="ConstructionException">It has no such panels, or they have no armhole.</exception>
    [Pure]
    public static Armhole Of(Block block) => Of(Guard.NotNull(block, nameof(block)).FindPanel(PanelName.Front), block.FindPanel(PanelName.Back));

    /// <summary>The armhole of two panels, darts on it closed.</summary>
    /// <remarks>Notches that stand on the armholes count. Where there are none, one is put on the front 7.5 cm from the side seam and a double one on the back at 8.5 cm, but no
    /// farther than two fifths of the way to the shoulder; <see cref="Notched"/> puts them on the panels.</remarks>
    /// <param name="front">A panel with an edge named <c>armhole</c>, beside an edge named <c>side</c> or <c>shoulder</c>.</param>
    /// <param name="back">Likewise.</param>
    /// <exception cref="ConstructionException">A panel has no armhole, or none that begins at its side seam or ends at its shoulder.</exception>
    [Pure]
    public static Armhole Of(Panel front, Panel back)
        => new(Half(Guard.NotNull(front, nameof(front)), FrontNotchMm, 1), Half(Guard.NotNull(back, nameof(back)), BackNotchMm, 2));

    /// <summary>An armhole of two lines, with the usual notches.</summary>
    /// <param name="front">From the side seam up to the shoulder; open, 40 to 1,000 mm long.</param>
    /// <param name="back">Likewise.</param>
    /// <exception cref="ArgumentOutOfRangeException">A line is shorter or longer than any armhole.</exception>
    /// <exception cref="ArgumentException">A line is closed.</exception>
    [Pure]
    public static Armhole Of(CurvePath front, CurvePath back) => new(
        Half(Checked(front, nameof(front)), [], FrontNotchMm, 1),
        Half(Checked(back, nameof(back)), [], BackNotchMm, 2));

    /// <summary>Puts the notches of this armhole on a panel whose armhole has none; a panel that has its own comes back as it is.</summary>
    /// <param name="panel">The front or the back that the armhole was taken from; its armhole is as long as one half.</param>
    /// <exception cref="ConstructionException">The panel has no armhole, or none that begins at its side seam or ends at its shoulder.</exception>
    /// <exception cref="ArgumentException">The armhole of the panel is as long as neither half.</exception>
    [Pure]
    public Panel Notched(Panel panel)
    {
        PanelEdge edge = Guard.NotNull(panel, nameof(panel)).FindEdge(EdgeName.Armhole);
        if (panel.Notches.Any(notch => notch.Edge == EdgeName.Armhole))
        {
            return panel;
        }

        double lengthMm = edge.SewnLengthMm();
        bool beginsAtSide = BeginsAtSide(panel);
        double frontOffMm = Math.Abs(lengthMm - FrontHalf.LengthMm);
        double backOffMm = Math.Abs(lengthMm - BackHalf.LengthMm);
        if (Math.Min(frontOffMm, backOffMm) > CheckList.ToleranceMm)
        {
            throw new ArgumentException(
                MessageRegistry.Format(DiagnosticCode.ArmholeOfOtherPanel, panel.Name, Length.FromMillimeters(lengthMm), FrontLength, BackLength), nameof(panel));
        }

        ArmholeHalf half = panel.Name == PanelName.Back && backOffMm <= CheckList.ToleranceMm ? BackHalf
            : frontOffMm <= CheckList.ToleranceMm ? FrontHalf
            : BackHalf;
        return panel.WithMoreNotches([.. half.Notches.Select(notch =>
        {
            double fromStartMm = beginsAtSide ? notch.FromSideMm : lengthMm - notch.FromSideMm;
            return new Notch(EdgeName.Armhole, edge.PointAtSewnMm(fromStartMm), fromStartMm, notch.Count);
        })]);
    }

    /// <summary>Both lengths in millimetres, whatever the culture.</summary>
    public override string ToString() => FormattableString.Invariant($"armhole, front {FrontHalf.LengthMm:0.##} mm, back {BackHalf.LengthMm:0.##} mm");

    /// <summary>One half of lines and notches that were read.</summary>
    internal static ArmholeHalf Half(CurvePath path, ArmholeNotch[] notches, double usualMm, int usualCount) => new(
        path,
        notches.Length > 0 ? notches : [new ArmholeNotch(Math.Min(usualMm, MostOfHalf * path.LengthMm), usualCount)]);

    internal static CurvePath Checked(CurvePath path, string parameter)
    {
        if (Guard.NotNull(path, parameter).IsClosed)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.PathClosed, parameter), parameter);
        }

        _ = Guard.Millimetres(path.Length, LeastMm, MostMm, parameter);
        return path;
    }

    private static ArmholeHalf Half(Panel panel, double usualMm, int usualCount)
    {
        PanelEdge edge = panel.FindEdge(EdgeName.Armhole);
        bool beginsAtSide = BeginsAtSide(panel);
        CurvePath path = beginsAtSide ? edge.Closed() : edge.Closed().Reversed();
        double lengthMm = path.LengthMm;
        ArmholeNotch[] notches =
        [
            .. panel.Notches.Where(notch => notch.Edge == EdgeName.Armhole)
                .Select(notch => new ArmholeNotch(beginsAtSide ? notch.FromStartMm : lengthMm - notch.FromStartMm, notch.Count))
                .OrderBy(notch => notch.FromSideMm),
        ];
        return Half(Checked(path, panel.Name.Text), notches, usualMm, usualCount);
    }

    internal static bool BeginsAtSide(Panel panel)
    {
        EdgeName before = panel.Neighbour(EdgeName.Armhole, Toward.Start);
        EdgeName after = panel.Neighbour(EdgeName.Armhole, Toward.End);
        return before == EdgeName.SideSeam || after == EdgeName.Shoulder || (after != EdgeName.SideSeam && before != EdgeName.Shoulder
            ? throw new ConstructionException(DiagnosticCode.ArmholeBetweenOthers, panel.Name, before, after) { Step = "taking an armhole", Landmark = EdgeName.Armhole.Text }
            : false);
    }
}

/// <summary>The front or the back of an armhole.</summary>
internal sealed class ArmholeHalf(CurvePath path, ArmholeNotch[] notches)
{
    internal CurvePath Path { get; } = path;

    /// <summary>The nearest to the side seam first; at least one.</summary>
    internal ArmholeNotch[] Notches { get; } = notches;

    internal double LengthMm { get; } = path.LengthMm;

    internal IReadOnlyList<Length> Distances() => [.. Notches.Select(notch => Length.FromMillimeters(notch.FromSideMm))];

    /// <summary>Where a notch lies on a head that is longer by its ease: below the first notch nothing is eased, above it evenly.</summary>
    internal double OnHeadMm(double fromSideMm, double easeMm)
    {
        double first = Notches[0].FromSideMm;
        return fromSideMm <= first ? fromSideMm : fromSideMm + (easeMm * (fromSideMm - first) / (LengthMm - first));
    }
}

/// <summary>A notch of an armhole.</summary>
internal readonly record struct ArmholeNotch(double FromSideMm, int Count);
