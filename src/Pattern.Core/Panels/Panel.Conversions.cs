using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <content>What a dart can be turned into.</content>
public sealed partial class Panel
{
    /// <summary>Returns a copy of this panel with a dart closed and its angle opened as flare at another edge, usually the hem.</summary>
    /// <remarks>The cut is not sewn: the edge it opens runs on across it, longer by the width of the opening, and the cloth between is kept. Where the cut is square to the edge, as at
    /// <see cref="FootOn"/>, the edge runs on as an arc about the apex, so that a level hem stays level.</remarks>
    /// <param name="dart">The dart.</param>
    /// <param name="at">Where the flare falls.</param>
    /// <param name="share">The part of the dart that goes into flare, 0 to 100 %.</param>
    /// <param name="keep">The edge that stays where it is, as in <see cref="TransferDart"/>: by default the centre line, so that it can still lie on the fold.</param>
    /// <exception cref="ConstructionException">The cut would cross another dart or leave the panel, or the edge to keep is cut.</exception>
    [Pure]
    public Panel TurnDartIntoFlare(DartName dart, EdgePlace at, Ratio share, EdgeName? keep = null)
    {
        if (Guard.Share(share, nameof(share)) == 0)
        {
            return this;
        }

        Point2D apex = FindDart(dart).Apex;
        Panel opened = TransferPartOfDart(dart, at, share, keep);
        double place = at.ResolveMm(this);
        return opened.ReleaseDart(opened.DartAt(at.Edge, place, apex), "turning a dart into flare");
    }

    /// <summary>The place on an edge that is nearest to a point: where a cut from the point meets the edge square.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="point">Anywhere.</param>
    /// <exception cref="ConstructionException">The panel has no such edge.</exception>
    [Pure]
    public EdgePlace FootOn(EdgeName edge, Point2D point)
    {
        double before = 0;
        double nearest = double.PositiveInfinity;
        double at = 0;
        foreach (CurvePath stretch in FindEdge(edge).StretchesRaw)
        {
            PathLocation location = stretch.ClosestTo(point);
            if (location.DistanceMm < nearest)
            {
                nearest = location.DistanceMm;
                at = before + stretch.LengthToMm(location);
            }

            before += stretch.LengthMm;
        }

        return edge.At(Length.FromMillimeters(at));
    }

    /// <summary>Returns a copy of this panel with a dart left unsewn: its intake is eased or gathered into the seam.</summary>
    /// <remarks>The edge runs on smoothly across the intake and becomes longer by it. The longer edge is then sewn to a shorter one: the seam plan says with how much
    /// ease.</remarks>
    /// <param name="dart">The dart.</param>
    [Pure]
    public Panel TurnDartIntoGathers(DartName dart) => ReleaseDart(FindDart(dart), "turning a dart into gathers");

    /// <summary>Returns a copy of this panel with a dart only held at the seam line, as a tuck: the intake stays, the stitching ends early.</summary>
    /// <param name="dart">The dart.</param>
    /// <param name="stitched">How far from the seam line the legs are stitched; more than zero and less than their length.</param>
    /// <exception cref="ConstructionException">The stitching would be as long as the legs, or longer.</exception>
    [Pure]
    public Panel TurnDartIntoTuck(DartName dart, Length stitched)
    {
        const string Step = "turning a dart into a tuck";
        double stitchedMm = Guard.Millimetres(stitched, 0.1, 10_000, nameof(stitched));
        Dart old = FindDart(dart);
        double leg = old.LegLengthMm(Toward.Start);
        return stitchedMm < leg
            ? WithDart(old, old.Shape with { TuckMm = stitchedMm }, Step)
            : throw new ConstructionException(DiagnosticCode.TuckTooLong, dart, Name, stitched, Length.FromMillimeters(leg))
            {
                Step = Step,
                Landmark = dart.ToString(),
                Measured = stitched,
                Allowed = Length.FromMillimeters(leg),
            };
    }

    /// <summary>Cuts this panel in two along a dart and on from its apex to another edge: the dart becomes part of the seam between them.</summary>
    /// <remarks>The new edges run along the legs and the cut; true them to round the corner at the apex. Sewn lengths of all edges stay as they were in all, and the two new
    /// edges are equal. Neither part turns. Where the grainline does not lie whole on a part, that part gets one of its own,
    /// parallel to it.</remarks>
    /// <param name="dart">The dart.</param>
    /// <param name="to">Where the cut ends, on another edge than the dart stands on.</param>
    /// <param name="seam">What the new edges are called, on both parts.</param>
    /// <param name="before">What the part before the dart in the order of the edges is called.</param>
    /// <param name="beyond">What the part beyond the dart is called.</param>
    /// <exception cref="ConstructionException">The cut would cross another dart or leave the panel, or ends on the edge of the dart.</exception>
    [Pure]
    public PanelPair TurnDartIntoSeam(DartName dart, EdgePlace to, EdgeName seam, PanelName before, PanelName beyond)
    {
        const string Step = "turning a dart into a seam";
        Dart from = FindDart(dart);
        if (dart.Edge == to.Edge)
        {
            throw new ConstructionException(DiagnosticCode.CutEndsOnOwnEdge, Name, dart.Edge) { Step = Step, Landmark = dart.ToString() };
        }

        var parts = new OutlineParts(this);
        int start = parts.IndexOf(from);
        int cut = parts.Cut(to, from.Apex, Step, ref start);
        RefuseOccupied(parts[cut].Dart, from, Step);
        CutRules.RefuseCut(this, from.Apex, parts[cut].Dart.StartLeg, Step, from.Shape);
        return Part(parts, start, cut, from.Apex, seam, before, beyond, Step);
    }

    /// <summary>Cuts this panel in two along two darts and straight from apex to apex: both become parts of the seam between them.</summary>
    /// <remarks>As <see cref="TurnDartIntoSeam"/> does with one dart. True the new edges to round the corners at the apexes; they are equal until then.</remarks>
    /// <param name="dart">One dart.</param>
    /// <param name="other">Another dart, on another edge.</param>
    /// <param name="seam">What the new edges are called, on both parts.</param>
    /// <param name="before">What the part that holds the start of the first edge is called.</param>
    /// <param name="beyond">What the part between the two darts, in the order of the edges, is called.</param>
    /// <exception cref="ConstructionException">The cut would cross another dart or leave the panel, or both darts stand on one edge.</exception>
    [Pure]
    public PanelPair TurnDartsIntoSeam(DartName dart, DartName other, EdgeName seam, PanelName before, PanelName beyond)
    {
        const string Step = "turning two darts into a seam";
        if (dart.Edge == other.Edge)
        {
            throw new ConstructionException(DiagnosticCode.CutEndsOnOwnEdge, Name, dart.Edge) { Step = Step, Landmark = dart.ToString() };
        }

        (DartName first, DartName second) = IndexOf(dart.Edge) < IndexOf(other.Edge) ? (dart, other) : (other, dart);
        Dart start = FindDart(first);
        Dart end = FindDart(second);
        CutRules.RefuseCut(this, start.Apex, end.Apex, Step, start.Shape);
        var parts = new OutlineParts(this);
        return Part(parts, parts.IndexOf(start), parts.IndexOf(end), start.Apex, seam, before, beyond, Step);
    }

    /// <summary>Cuts this panel in two along a straight line, as for a yoke.</summary>
    /// <remarks>Neither part turns. Where the grainline does not lie whole on a part, that part gets one of its own, parallel to it.</remarks>
    /// <param name="from">Where the cut begins.</param>
    /// <param name="to">Where it ends, on another edge.</param>
    /// <param name="seam">What the new edges are called, on both parts.</param>
    /// <param name="before">What the part that holds the start of the first edge is called.</param>
    /// <param name="beyond">What the part between the two places, in the order of the edges, is called.</param>
    /// <exception cref="ConstructionException">The cut would cross a dart or leave the panel, or both places lie on one edge.</exception>
    [Pure]
    public PanelPair CutApart(EdgePlace from, EdgePlace to, EdgeName seam, PanelName before, PanelName beyond)
    {
        const string Step = "cutting a panel apart";
        if (from.Edge == to.Edge)
        {
            throw new ConstructionException(DiagnosticCode.CutEndsOnOwnEdge, Name, from.Edge) { Step = Step, Landmark = from.Edge.Text };
        }

        (EdgePlace first, EdgePlace second) = IndexOf(from.Edge) < IndexOf(to.Edge) ? (from, to) : (to, from);
        var parts = new OutlineParts(this);
        int start = parts.Cut(first, default, Step);
        Point2D apex = parts[start].Dart.StartLeg;
        int end = parts.Cut(second, apex, Step, ref start);
        RefuseOccupied(parts[start].Dart, null, Step);
        RefuseOccupied(parts[end].Dart, null, Step);
        parts.Replace(start, new DartShape(apex, apex, apex, Toward.Start));
        CutRules.RefuseCut(this, apex, parts[end].Dart.StartLeg, Step);
        return Part(parts, start, end, apex, seam, before, beyond, Step);
    }

    private PanelPair Part(OutlineParts parts, int first, int second, in Point2D apex, EdgeName seam, PanelName before, PanelName beyond, string step)
    {
        CurvePath beyondRegion = parts.RegionBetween(first, second, apex);
        List<PanelEdge> beyondEdges = parts.EdgesBetween(first, second, seam);
        List<PanelEdge> beforeEdges = parts.EdgesBetween(second, first, seam);
        PanelEdge startEdge = FindEdge(_edges[parts[first].Edge].Name);
        PanelEdge endEdge = FindEdge(_edges[parts[second].Edge].Name);
        return new PanelPair(
            MakePart(before, beforeEdges, beyondRegion, inside: false, step, startEdge.Name, endEdge.Name, beyondEdges),
            MakePart(beyond, beyondEdges, beyondRegion, inside: true, step, startEdge.Name, endEdge.Name, beforeEdges));
    }

    private Panel MakePart(PanelName name, List<PanelEdge> edges, CurvePath region, bool inside, string step, EdgeName startEdge, EdgeName endEdge, List<PanelEdge> other)
    {
        bool Mine(Point2D point) => (region.ContainmentOf(point) == Containment.Inside) == inside;
        var notches = new List<Notch>();
        foreach (Notch notch in Notches)
        {
            PanelEdge? edge = edges.FirstOrDefault(e => e.Name == notch.Edge);
            if (edge is null)
            {
                continue;
            }

            // Beyond the cut lie the end of the edge it begins on and the start of the edge it ends on.
            bool isEndPart = inside ? notch.Edge == startEdge : notch.Edge == endEdge;
            bool isWhole = notch.Edge != startEdge && notch.Edge != endEdge;
            double offset = isWhole || !isEndPart ? 0 : FindEdge(notch.Edge).SewnLengthMm() - edge.SewnLengthMm();
            double from = notch.FromStartMm - offset;
            if (from >= -OnLineMm && from <= edge.SewnLengthMm() + OnLineMm)
            {
                notches.Add(new Notch(notch.Edge, notch.Position, System.Math.Max(0, System.Math.Min(from, edge.SewnLengthMm())), notch.Count));
            }
        }

        var panel = new Panel(name, [.. edges], new PanelFeatures(
            Grainline,
            [.. notches],
            [.. Landmarks.Where(l => Mine(l.Position) || edges.Any(e => e.Stretches.Any(s => s.ClosestTo(l.Position).DistanceMm < OnLineMm)))],
            [.. InsideDarts.Where(d => Mine(d.FirstApex))]));
        panel.RefuseCrossedOutline(step);
        CurvePath outline = panel.SeamOutline();
        return Grain.LiesWithin(outline, Grainline)
            ? panel
            : new Panel(name, panel._edges, panel._features with { Grainline = Grain.Within(outline, Grainline.Direction) });
    }

    private Panel ReleaseDart(Dart dart, string step)
    {
        var parts = new OutlineParts(this);
        int index = parts.IndexOf(dart);
        PanelEdge edge = FindEdge(dart.Name.Edge);
        CubicBezier across = CubicBezier.Between(
            dart.StartLeg,
            edge.Stretches[dart.Number - 1].EndDirection,
            dart.EndLeg,
            edge.Stretches[dart.Number].StartDirection);
        CurvePath filling = SquareArc(dart, edge) is { } arc ? CurvePath.FromArc(arc) : CurvePath.FromCubic(across);
        parts.Fill(index, filling);
        double at = edge.SewnPositionMm(dart.Number - 1);
        double longer = filling.LengthMm;
        PanelFeatures features = _features with { Notches = [.. Notches.Select(n => n.Edge == edge.Name ? n.AfterLettingOut(at, longer) : n)] };
        return WithEdges(parts.ToEdges(), features, step);
    }

    // Where both legs are equal and meet the edge square, every place between is as far from the apex.
    private static CircularArc? SquareArc(Dart dart, PanelEdge edge)
    {
        const double SquareRad = 1e-6;
        Direction before = edge.Stretches[dart.Number - 1].EndDirection;
        Direction after = edge.Stretches[dart.Number].StartDirection;
        double radiusMm = dart.LegLengthMm(Toward.Start);
        bool isSquare = System.Math.Abs(radiusMm - dart.LegLengthMm(Toward.End)) <= OnLineMm
            && System.Math.Abs(before.Dot(dart.StartLeg - dart.Apex)) <= SquareRad * radiusMm
            && System.Math.Abs(after.Dot(dart.EndLeg - dart.Apex)) <= SquareRad * radiusMm;
        CircularArc arc = isSquare ? CircularArc.Around(dart.Apex, dart.StartLeg, Angle.FromRadians(dart.SignedAngleRad)) : default;

        // Where the legs meet the edge from outside, as a waist that is let out, an arc would bulge the wrong way.
        return isSquare && arc.StartDirection.Dot(before.TimesMm(1)) > 0 ? arc : null;
    }

    private Dart DartAt(EdgeName edge, double placeMm, Point2D apex)
    {
        PanelEdge on = FindEdge(edge);
        return on.Darts
            .Where(d => d.Apex.DistanceMm(apex) < CheckList.ToleranceMm)
            .OrderBy(d => System.Math.Abs(on.SewnPositionMm(d.Number - 1) - placeMm))
            .First();
    }
}
