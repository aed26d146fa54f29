using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <content>Moving darts around their apex.</content>
public sealed partial class Panel
{
    /// <summary>Returns a copy of this panel with a dart closed where it lies and opened at another place instead.</summary>
    /// <remarks>The pivot: the panel is cut from the new place to the apex, and what lies between turns about the apex until the old dart is closed. The angle at
    /// the apex stays the same, so the intake changes in proportion to the leg length: 30 mm on 140 mm legs becomes 34.3 mm on 160 mm legs. Sewn
    /// lengths of all edges and the area outside the darts stay the same. One part stays where it is, and the grain with it.</remarks>
    /// <param name="dart">The dart.</param>
    /// <param name="to">Anywhere on the outline, on the same edge too; between the ends of the edge, both excluded.</param>
    /// <param name="keep">The edge that stays where it is, with all on its side of the cut. Default: the centre line (see <see cref="EdgeRole.Centre"/>); where there is
    /// none, or it is cut itself, the part that holds the middle of the grainline.</param>
    /// <exception cref="ConstructionException">The cut would cross another dart or leave the panel, the place is the dart's own, or the edge to keep is cut.</exception>
    [Pure]
    public Panel TransferDart(DartName dart, EdgePlace to, EdgeName? keep = null) => TransferPartOfDart(dart, to, Ratio.FromDecimalFractions(1), keep);

    /// <summary>Returns a copy of this panel with a part of a dart moved to another place; both darts then share the apex.</summary>
    /// <remarks>Where a dart with the same apex stands at that place already, it becomes wider.</remarks>
    /// <param name="dart">The dart.</param>
    /// <param name="to">The place of the new dart.</param>
    /// <param name="share">The part of its angle that goes, 0 to 100 %.</param>
    /// <param name="keep">The edge that stays where it is, as in <see cref="TransferDart"/>.</param>
    /// <exception cref="ConstructionException">The cut would cross another dart or leave the panel, the place is the dart's own, or the edge to keep is cut.</exception>
    [Pure]
    public Panel TransferPartOfDart(DartName dart, EdgePlace to, Ratio share, EdgeName? keep = null)
    {
        const string Step = "transferring a dart";
        Dart from = FindDart(dart);
        double part = Guard.Share(share, nameof(share));
        if (part == 0)
        {
            return this;
        }

        var parts = new OutlineParts(this);
        RefuseOwnPlace(from, to);
        int closing = parts.IndexOf(from);
        int cut = parts.Cut(to, from.Apex, Step, ref closing);
        bool widens = !parts[cut].Dart.IsClosed && parts[cut].Dart.Apex.DistanceMm(from.Apex) <= CheckList.ToleranceMm;
        if (!widens)
        {
            RefuseOccupied(parts[cut].Dart, from, Step);
            CutRules.RefuseCut(this, from.Apex, parts[cut].Dart.StartLeg, Step, from.Shape);
        }

        return Pivot(parts, closing, cut, part * from.SignedAngleRad, from.Apex, keep, Step);
    }

    /// <summary>Returns a copy of this panel with a dart split into several of the same angle and apex, side by side on the same edge.</summary>
    /// <remarks>The first stands where the dart stood; the others follow at equal spacing along the sewn edge. The angles add up to what they were.</remarks>
    /// <param name="dart">The dart.</param>
    /// <param name="count">How many darts it becomes, 2 to 8.</param>
    /// <param name="spacing">Along the sewn edge from dart to dart; negative goes towards the start of the edge.</param>
    /// <param name="keep">The edge that stays where it is, as in <see cref="TransferDart"/>.</param>
    /// <exception cref="ConstructionException">A new dart would stand off the edge or cross another dart, or the edge to keep is cut.</exception>
    [Pure]
    public Panel SplitDart(DartName dart, int count, Length spacing, EdgeName? keep = null)
    {
        Guard.InRange(count, 2, 8, nameof(count));
        double spacingMm = Guard.Millimetres(spacing, nameof(spacing));
        PanelEdge edge = FindEdge(dart.Edge);
        double stands = edge.SewnPositionMm(FindDart(dart).Number - 1);
        Panel panel = this;
        int number = dart.Number;
        for (int i = 1; i < count; i++)
        {
            // What is left of the dart gives one part of what it still has.
            panel = panel.TransferPartOfDart(
                dart.Edge.Dart(number), dart.Edge.At(Length.FromMillimeters(stands + (i * spacingMm))), Ratio.FromDecimalFractions(1.0 / (count - i + 1)), keep);
            number += spacingMm < 0 ? 1 : 0;
        }

        return panel;
    }

    /// <summary>Returns a copy of this panel with two darts that share an apex made into one, where the first stands.</summary>
    /// <param name="keep">The dart that takes all.</param>
    /// <param name="close">The dart that closes.</param>
    /// <param name="keepEdge">The edge that stays where it is, as in <see cref="TransferDart"/>.</param>
    /// <exception cref="ConstructionException">The darts do not share an apex, or are the same, or the edge to keep is cut.</exception>
    [Pure]
    public Panel MergeDarts(DartName keep, DartName close, EdgeName? keepEdge = null)
    {
        const string Step = "merging darts";
        Dart kept = FindDart(keep);
        Dart closed = FindDart(close);
        double apart = kept.Apex.DistanceMm(closed.Apex);
        if (keep == close || apart > CheckList.ToleranceMm)
        {
            throw new ConstructionException(DiagnosticCode.DartsApart, keep, close, Name, Length.FromMillimeters(apart))
            {
                Step = Step,
                Landmark = keep.ToString(),
                Measured = Length.FromMillimeters(apart),
                Allowed = Length.FromMillimeters(CheckList.ToleranceMm),
            };
        }

        var parts = new OutlineParts(this);
        return Pivot(parts, parts.IndexOf(closed), parts.IndexOf(kept), closed.SignedAngleRad, closed.Apex, keepEdge, Step);
    }

    /// <summary>Returns this panel with a dart closed flat. Only a dart whose apex lies on an edge can be: what lies beyond it turns about that point.</summary>
    /// <remarks>A dart that ends inside the panel makes it round, which paper cannot be: move it to another edge, or see <see cref="PanelEdge.Closed"/> for the
    /// edge alone.</remarks>
    /// <param name="dart">The dart.</param>
    /// <param name="keep">The edge that stays where it is, as in <see cref="TransferDart"/>.</param>
    /// <exception cref="ConstructionException">The dart ends inside the panel, or the edge to keep lies on both sides of it.</exception>
    [Pure]
    public Panel CloseDart(DartName dart, EdgeName? keep = null)
    {
        const string Step = "closing a dart";
        Dart closed = FindDart(dart);
        PanelEdge? hinge = null;
        double at = 0;
        double nearest = double.PositiveInfinity;
        foreach (PanelEdge edge in _edges)
        {
            double before = 0;
            foreach (CurvePath stretch in edge.StretchesRaw)
            {
                PathLocation location = stretch.ClosestTo(closed.Apex);
                if (location.DistanceMm < nearest && location.Point.DistanceMm(closed.StartLeg) > OnLineMm && location.Point.DistanceMm(closed.EndLeg) > OnLineMm)
                {
                    (hinge, nearest, at) = (edge, location.DistanceMm, before + stretch.LengthToMm(location));
                }

                before += stretch.LengthMm;
            }
        }

        if (hinge is null || nearest > OnLineMm)
        {
            throw new ConstructionException(DiagnosticCode.DartNotFlat, dart, Name, Length.FromMillimeters(nearest))
            {
                Step = Step,
                Landmark = dart.ToString(),
                Measured = Length.FromMillimeters(nearest),
                Allowed = Length.Zero,
            };
        }

        var parts = new OutlineParts(this);
        int closing = parts.IndexOf(closed);
        int cut = parts.Cut(hinge.Name.At(Length.FromMillimeters(at)), closed.Apex, Step, ref closing);
        return Pivot(parts, closing, cut, closed.SignedAngleRad, closed.Apex, keep, Step);
    }

    /// <summary>Returns a copy of this panel slashed from a place to a hinge on the outline and spread open: a new dart with its apex on the hinge.</summary>
    /// <remarks>The opposite of <see cref="CloseDart"/>. Sewn lengths of all edges stay the same. One part stays where it is, and the grain with it.</remarks>
    /// <param name="at">Where the panel opens.</param>
    /// <param name="hinge">Where it holds together.</param>
    /// <param name="intake">How far it opens, straight from leg to leg.</param>
    /// <param name="keep">The edge that stays where it is, as in <see cref="TransferDart"/>.</param>
    /// <exception cref="ConstructionException">The slash would cross a dart or leave the panel, the intake is more than twice the length of the slash, or the edge to
    /// keep is cut.</exception>
    [Pure]
    public Panel OpenDart(EdgePlace at, EdgePlace hinge, Length intake, EdgeName? keep = null)
    {
        const string Step = "opening a dart";
        double intakeMm = Guard.Millimetres(intake, 0, 10_000, nameof(intake));
        var parts = new OutlineParts(this);
        int hold = parts.Cut(hinge, default, Step);
        Point2D apex = parts[hold].Dart.StartLeg;
        int open = parts.Cut(at, apex, Step, ref hold);
        RefuseOccupied(parts[open].Dart, null, Step);
        RefuseOccupied(parts[hold].Dart, null, Step);
        parts.Replace(hold, new DartShape(apex, apex, apex, Toward.Start));
        double leg = apex.DistanceMm(parts[open].Dart.StartLeg);
        if (intakeMm > 2 * leg)
        {
            throw PanelErrors.TooWide(Name, at.Edge, intakeMm, 2 * leg, Step);
        }

        CutRules.RefuseCut(this, apex, parts[open].Dart.StartLeg, Step);

        // Opening about the hinge is closing by a negative angle; which way round the outline runs decides the sign.
        double angle = 2 * Math.Asin(intakeMm / 2 / leg) * (SeamOutline().SignedAreaMm2 > 0 ? -1 : 1);
        return intakeMm == 0 ? this : Pivot(parts, hold, open, -angle, apex, keep, Step);
    }

    /// <summary>Turns what lies between two darts that share an apex, so that the first closes by an angle and the second opens by it.</summary>
    /// <summary>Returns a copy of this panel that was slashed from a place to a hinge on another edge and spread there: wider at the one, as wide as before at the other.</summary>
    /// <remarks>The edge that is spread runs on across the opening, as after <see cref="TurnDartIntoFlare"/>. The other edge keeps its length and gets a corner at the hinge:
    /// true it when all is spread.</remarks>
    /// <param name="hinge">Where the cloth stays together.</param>
    /// <param name="at">Where it is spread; <see cref="FootOn"/> finds the place where the slash is square to the edge.</param>
    /// <param name="by">How far, straight across the opening.</param>
    /// <param name="keep">The edge that stays where it is, as in <see cref="TransferDart"/>.</param>
    /// <exception cref="ConstructionException">The slash would cross a dart or leave the panel, or is too short to be spread so far.</exception>
    [Pure]
    public Panel SlashAndSpread(EdgePlace hinge, EdgePlace at, Length by, EdgeName? keep = null)
    {
        double place = at.ResolveMm(this);
        Panel opened = OpenDart(at, hinge, by, keep);
        PanelEdge edge = opened.FindEdge(at.Edge);
        Dart? spread = edge.Darts.OrderBy(dart => Math.Abs(edge.SewnPositionMm(dart.Number - 1) - place)).FirstOrDefault();
        return Guard.Millimetres(by, nameof(by)) == 0 ? this : opened.ReleaseDart(spread!, "slashing and spreading");
    }

    private Panel Pivot(OutlineParts parts, int closing, int opening, double angleRad, in Point2D apex, EdgeName? keep, string step)
    {
        // Either side of the two may turn.
        CurvePath forward = parts.RegionBetween(closing, opening, apex);
        bool turnForward = !StaysForward(parts, closing, opening, forward, keep, step);
        Transform2D turn = Transform2D.RotationRaw(apex, Direction.FromRadians(turnForward ? -angleRad : angleRad));
        CurvePath backward = parts.RegionBetween(opening, closing, apex);
        PanelFeatures features = Turned(turnForward ? forward : backward, turn);
        if (turnForward)
        {
            parts.TurnBetween(closing, opening, turn);
        }
        else
        {
            parts.TurnBetween(opening, closing, turn);
        }

        Panel turned = WithEdges(parts.ToEdges(), features, step);

        // The grain lies as it did to what stays. Where its line now ends beside the panel, another one parallel to it is drawn on what stays.
        return Grain.EndsWithin(SeamOutline(), Grainline) && !Grain.EndsWithin(turned.SeamOutline(), Grainline)
            ? new Panel(Name, turned._edges, turned._features with { Grainline = Grain.Within(turnForward ? backward : forward, Grainline.Direction) })
            : turned;
    }

    // Whether what runs forward from the one dart to the other stays where it is.
    private bool StaysForward(OutlineParts parts, int closing, int opening, CurvePath forward, EdgeName? keep, string step)
    {
        int kept = keep is { } named ? IndexOf(named) : -1;
        bool isForward = false;
        bool isBackward = false;
        for (int i = 0; i < _edges.Length; i++)
        {
            if (i == kept || (kept < 0 && _edges[i].Role == EdgeRole.Centre))
            {
                isForward |= parts.HasBetween(closing, opening, i);
                isBackward |= parts.HasBetween(opening, closing, i);
            }
        }

        if (isForward != isBackward)
        {
            return isForward;
        }

        if (kept < 0)
        {
            return forward.ContainmentOf(Grainline.Midpoint) == Containment.Inside;
        }

        IEnumerable<string> whole = _edges.Where((_, i) => parts.HasBetween(closing, opening, i) != parts.HasBetween(opening, closing, i)).Select(edge => edge.Name.Text);
        throw new ConstructionException(DiagnosticCode.KeptEdgeCut, keep!.Value, Name, string.Join(", ", whole)) { Step = step, Landmark = keep.Value.Text };
    }

    private void RefuseOwnPlace(Dart dart, EdgePlace to)
    {
        PanelEdge edge = FindEdge(to.Edge);
        if (dart.Name.Edge != to.Edge)
        {
            return;
        }

        double stands = edge.SewnPositionMm(dart.Number - 1);
        if (Math.Abs(to.ResolveMm(this) - stands) < CheckList.ToleranceMm)
        {
            throw new ConstructionException(DiagnosticCode.TransferOntoItself, dart.Name, Name, Length.FromMillimeters(stands))
            {
                Step = "transferring a dart",
                Landmark = dart.Name.ToString(),
                Measured = Length.FromMillimeters(stands),
            };
        }
    }

    private void RefuseOccupied(in DartShape place, Dart? by, string step)
    {
        if (!place.IsClosed)
        {
            throw new ConstructionException(DiagnosticCode.CutCrossesDart, by?.Apex ?? place.Apex, place.StartLeg, Name, "a dart that stands at that place") { Step = step };
        }
    }
}
