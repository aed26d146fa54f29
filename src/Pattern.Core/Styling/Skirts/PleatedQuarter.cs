using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Styling;

/// <summary>One quarter of a skirt, pleated from centre to side: as it is sewn, with the pleats folded, and as the flat cloth that it is cut from.</summary>
/// <remarks>Drawn from the centre out to the right, and put where the quarter lay at last.</remarks>
internal sealed class PleatedQuarter
{
    private const double LeastShapingMm = 0.5;

    private readonly PleatPlan _plan;
    private readonly double _hipMm;
    private readonly double _hemMm;
    private readonly Transform2D _place;
    private readonly Panel _sewn;
    private readonly Func<string, ConstructionException> _refusal;

    /// <param name="quarter">The quarter of the block; its top begins at the centre.</param>
    /// <param name="target">What the top and the side are trued to.</param>
    /// <param name="plan">The pleats.</param>
    /// <param name="refusal">What is thrown where the cloth cannot be folded so, from its reason.</param>
    internal PleatedQuarter(Panel quarter, in PleatTarget target, in PleatPlan plan, Func<string, ConstructionException> refusal)
    {
        _refusal = refusal;
        _plan = plan;
        _hipMm = SkirtFlare.FootOf(quarter).YMm;
        CurvePath centre = quarter.FindEdge(EdgeName.Centre).StretchesRaw[0];
        _hemMm = centre.Start.YMm;
        bool isRight = SkirtStock.TopOf(quarter).StretchesRaw[0].StartDirection.X > 0;
        Transform2D across = Transform2D.Translation(new Vector2D(centre.Start.XMm, 0));
        _place = isRight ? across : Transform2D.Mirror(Line.Vertical(Point2D.Origin)).Then(across);
        LappingMm = plan.WidthMm - target.TopMm < LeastShapingMm * plan.Count ? 0 : (plan.WidthMm - target.TopMm) / (plan.Count - 0.5);
        _sewn = Fold(quarter, target, centre.End.YMm);
        Sewn = _sewn.Transformed(_place);
        AsCut = Flat().Transformed(_place);
    }

    /// <summary>The quarter as it is sewn.</summary>
    internal Panel Sewn { get; }

    /// <summary>The flat cloth: at each line where folds meet a strip let in, its cut edge shaped as the layers that it lies under are.</summary>
    internal Panel AsCut { get; }

    /// <summary>What each line between centre and side takes in further at the top; the side takes half of it.</summary>
    internal double LappingMm { get; }

    internal PleatPlan Plan => _plan;

    /// <summary>The lines along which the folds fall, from the hip to the hem, as sewn.</summary>
    internal IEnumerable<(string Name, CurvePath Path)> Lines => Enumerable.Range(0, _plan.Between).Select(k => (
        FormattableString.Invariant($"{Sewn.Name} pleat {k + 1}"), Upright(_plan.LineMm(k)).Transformed(_place)));

    /// <summary>Where the flat cloth is folded.</summary>
    internal List<(string Name, CurvePath Path)> Folds { get; } = [];

    private CurvePath Upright(double x) => CurvePath.FromLine(new LineSegment(new Point2D(x, _hipMm), new Point2D(x, _hemMm)));

    // The quarter as it is sewn: straight below the hip, each line lapped from there to the top, which is a dart on the drawing.
    private Panel Fold(Panel quarter, in PleatTarget target, double topMm)
    {
        PanelEdge old = SkirtStock.TopOf(quarter);
        var foot = new Point2D(_plan.WidthMm, _hipMm);
        PleatPlan plan = _plan;
        double lapping = LappingMm;
        double stitched = target.StitchedMm;
        DartWedge[] wedges = lapping == 0 ? [] : [.. Enumerable.Range(0, plan.Between).Select(k => new DartWedge(plan.LineMm(k), lapping, stitched))];
        SkirtWaist trued = SkirtWaist.Solve(
            new WaistTarget(
                quarter.Name.Text,
                new Point2D(0, topMm),
                Direction.Right,
                foot,
                new Point2D(foot.XMm - (lapping / 2), _hipMm + target.SideMm),
                target.TopMm,
                target.SideMm)
            { IsStraightSide = true },
            wedges);
        var hem = new Point2D(foot.XMm, _hemMm);
        var bottom = new Point2D(0, _hemMm);
        double grain = 0.3 * Math.Min(plan.WidthMm, plan.LineMm(0));
        PanelEdge top = trued.ToEdge(old.Name, old.Role);
        PanelEdge[] edges =
        [
            top,
            new PanelEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.Trusted([PathSegment.FromCubic(trued.Side.Reversed()), PathSegment.FromLine(new LineSegment(foot, hem))], isClosed: false)),
            new PanelEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromLine(new LineSegment(hem, bottom))),
            new PanelEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.FromLine(new LineSegment(bottom, top.Start))),
        ];
        CurvePath side = edges[1].StretchesRaw[0];
        Notch[] notches = [.. quarter.Notches.Where(notch => notch.Edge == EdgeName.SideSeam).Select(notch => new Notch(notch.Edge, side.PointAtMm(notch.FromStartMm), notch.FromStartMm, notch.Count))];
        var panel = new Panel(quarter.Name, edges, new PanelFeatures(
            new LineSegment(new Point2D(grain, _hipMm), new Point2D(grain, (0.15 * _hipMm) + (0.85 * _hemMm))),
            notches,
            [],
            []));
        panel.RefuseCrossedOutline("folding pleats");
        return panel;
    }

    private CurvePath Layer(CurvePath? layer) => layer ?? throw _refusal(FormattableString.Invariant(
        $"On the {_sewn.Name} each line takes in {LappingMm:0} mm further at the top: its folds lean so much there that a layer under them runs on beyond the side seam. Pleat it from a hip yoke, which takes the shaping."));

    private Panel Flat()
    {
        PanelEdge sewn = SkirtStock.TopOf(_sewn);
        CurvePath closed = sewn.Closed();
        var layers = new PleatLayers(closed);
        Section[] sections = Sections(sewn, closed);
        double middle = _plan.WidthMm + (_plan.Between * _plan.StripMm) + (2 * _plan.DepthMm);
        double start = _plan.HasCentre ? -2 * _plan.DepthMm : 0;
        double reach = (2 * _plan.DepthMm) + (2 * LappingMm) + 5;
        CurvePath? top = null;
        if (_plan.HasCentre)
        {
            var centre = new Point2D(0, sewn.Start.YMm);
            Line inner = Line.Vertical(new Point2D(-_plan.DepthMm, 0));
            top = Layer(PleatLayers.Twice(layers.Beyond(0, reach), Line.Vertical(centre), inner)).Reversed();
            AddFold("inner fold at the centre", new Point2D(-_plan.DepthMm, top.PointAtMm(top.LengthMm / 2).YMm), -_plan.DepthMm, _hipMm);
            AddFold("visible fold at the centre", centre, 0, _hipMm);
        }

        for (int k = 0; k < sections.Length; k++)
        {
            Section section = sections[k];
            CurvePath stretch = section.Stretch;
            top = top is null ? stretch : top.Then(stretch);
            bool isSide = k == sections.Length - 1;
            Point2D leg = stretch.End;
            Point2D foot = section.Foot;
            double fold = foot.XMm;
            CurvePath over = layers.Before(section.ToMm, reach).Transformed(section.Frame);
            string number = isSide ? "at the side" : FormattableString.Invariant($"{k + 1}");
            Line visible = Line.Through(foot, leg);
            AddFold("visible fold " + number, leg, fold, foot.YMm);
            if (_plan.Kind == PleatKind.Knife && !isSide)
            {
                double half = fold + _plan.DepthMm;
                CurvePath layer = Layer(PleatLayers.Under(over, visible, Line.Vertical(new Point2D(half, 0))));
                AddFold("inner fold " + number, layer.End, half, foot.YMm);
                top = top.Then(layer).Then(layer.Reversed().Transformed(Transform2D.Mirror(Line.Vertical(new Point2D(half, 0)))));
                AddFold("meets the visible fold " + number, top.End, fold + _plan.StripMm, foot.YMm);
                continue;
            }

            double axis = isSide ? middle : fold + (2 * _plan.DepthMm);
            Line inner = PleatLayers.Halving(foot, foot.DirectionTo(leg), axis);
            CurvePath left = Layer(PleatLayers.Twice(over, visible, inner));
            AddFold("inner fold " + number, left.PointAtMm(left.LengthMm / 2), fold + _plan.DepthMm, PleatLayers.HeightAt(inner, fold + _plan.DepthMm, foot.YMm));
            top = top.Then(left);
            if (!isSide)
            {
                Section next = sections[k + 1];
                Point2D other = next.Stretch.Start;
                var otherFoot = new Point2D(fold + _plan.StripMm, foot.YMm);
                Line otherInner = PleatLayers.Halving(otherFoot, otherFoot.DirectionTo(other), axis);
                CurvePath right = Layer(PleatLayers.Twice(layers.Beyond(section.ToMm, reach).Transformed(next.Frame), Line.Through(otherFoot, other), otherInner));
                double innerFoot = otherFoot.XMm - _plan.DepthMm;
                AddFold("inner fold " + number, right.PointAtMm(right.LengthMm / 2), innerFoot, PleatLayers.HeightAt(otherInner, innerFoot, foot.YMm));
                AddFold("visible fold " + number, other, otherFoot.XMm, foot.YMm);
                top = top.Then(right.Reversed());
            }
        }

        var sideTop = new Point2D(middle, top!.End.YMm);
        var sideHem = new Point2D(middle, _hemMm);
        var centreHem = new Point2D(start, _hemMm);
        PanelBuilder flat = Panel.Named(_sewn.Name)
            .WithEdge(sewn.Name, sewn.Role, top)
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.FromLine(new LineSegment(sideTop, sideHem)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromLine(new LineSegment(sideHem, centreHem)))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.FromLine(new LineSegment(centreHem, top.Start)))
            .WithGrainline(_sewn.Grainline);

        // As far above the hem as on the panel as it is sewn.
        double side = _sewn.FindEdge(EdgeName.SideSeam).SewnLengthMm();
        return _sewn.Notches.Aggregate(flat, (one, notch) => one.WithNotch(notch.Edge, SkirtStock.Mm(sideTop.YMm - _hemMm - side + notch.FromStartMm), notch.Count)).Make();
    }

    // The visible parts of the top between its lines, each where it lies on the flat cloth.
    private Section[] Sections(PanelEdge sewn, CurvePath closed)
    {
        var sections = new Section[_plan.Count];
        Transform2D opening = Transform2D.Identity;
        double from = 0;
        for (int k = 0; k < sections.Length; k++)
        {
            bool isSide = k == sections.Length - 1;
            Transform2D moved = Transform2D.Translation(new Vector2D(k * _plan.StripMm, 0));
            Transform2D frame = opening.Then(moved);
            CurvePath stretch;
            Point2D foot = new(isSide ? _plan.WidthMm : _plan.LineMm(k), _hipMm);
            double to = closed.LengthMm;
            if (LappingMm > 0)
            {
                stretch = sewn.StretchesRaw[k].Transformed(moved);
                to = isSide ? to : from + sewn.StretchesRaw[k].LengthMm;
                if (!isSide)
                {
                    foot = sewn.DartsRaw[k].Apex;
                    opening = opening.Then(sewn.DartsRaw[k].Opening());
                }
            }
            else
            {
                // Without lapping there are no darts to let the strips in at: the top is one smooth line, cut at the lines.
                to = isSide ? to : closed.LengthToMm(closed.ClosestTo(closed.IntersectionsWith(Line.Vertical(foot)).Points[0].Point));
                stretch = closed.SubPathMm(from, to).Transformed(moved);
            }

            sections[k] = new Section(stretch, frame, moved.Apply(foot), to);
            from = to;
        }

        return sections;
    }

    private void AddFold(string name, in Point2D top, double x, double footMm) => Folds.Add((
        name, CurvePath.From(top).LineTo(new Point2D(x, footMm)).LineTo(new Point2D(x, _hemMm)).Transformed(_place)));

    /// <summary>A visible part of the top.</summary>
    /// <param name="Stretch">Where it lies on the flat cloth.</param>
    /// <param name="Frame">From the closed edge to there.</param>
    /// <param name="Foot">Where the fold that ends it begins to lap.</param>
    /// <param name="ToMm">Where it ends along the closed edge.</param>
    private readonly record struct Section(CurvePath Stretch, Transform2D Frame, Point2D Foot, double ToMm);
}

/// <summary>What the top and the side of a pleated quarter are trued to.</summary>
/// <param name="TopMm">How long the top is, folded.</param>
/// <param name="SideMm">How long the side is from the top to the hip.</param>
/// <param name="StitchedMm">How far down from the top the pleats are lapped and stitched.</param>
internal readonly record struct PleatTarget(double TopMm, double SideMm, double StitchedMm);
