using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>One quarter of a skirt pleated all around: as it is sewn, with the pleats folded, and as the flat cloth that it is cut from.</summary>
internal sealed class PleatedQuarter
{
    private readonly double _hand;
    private readonly double _centreMm;
    private readonly double _hipMm;
    private readonly double _hemMm;
    private readonly double _depthMm;
    private readonly bool _isBox;
    private readonly double[] _lines;

    /// <param name="quarter">The quarter of the block.</param>
    /// <param name="stock">Targets and levels.</param>
    /// <param name="widthMm">How wide the quarter is at the hip, folded.</param>
    /// <param name="count">How many pleats it has.</param>
    /// <param name="lappingMm">What each takes in further at the waist; zero for none.</param>
    /// <param name="depthMm">How deep a fold lies under.</param>
    /// <param name="isBox">Box pleats rather than knife pleats.</param>
    internal PleatedQuarter(Panel quarter, SkirtStock stock, double widthMm, int count, double lappingMm, double depthMm, bool isBox)
    {
        Point2D centreHem = quarter.FindEdge(EdgeName.Centre).Start;
        _hand = SkirtStock.TopOf(quarter).StretchesRaw[0].StartDirection.X > 0 ? 1 : -1;
        _centreMm = centreHem.XMm;
        _hipMm = -stock.Levels.UpperHipMm;
        _hemMm = -stock.LengthMm;
        _depthMm = depthMm;
        _isBox = isBox;

        // The first line half a pleat from the centre, so that the centre lies in the middle of one.
        double visible = widthMm / count;
        _lines = [.. Enumerable.Range(0, count).Select(k => _centreMm + (_hand * visible * (k + 0.5)))];
        Sewn = Fold(quarter, stock.WaistMm / 4, widthMm, lappingMm);
    }

    /// <summary>The quarter as it is sewn.</summary>
    internal Panel Sewn { get; }

    /// <summary>The lines along which the pleats fall, from the hip to the hem, as sewn.</summary>
    internal IEnumerable<(string Name, CurvePath Path)> Lines => _lines.Select((x, k) => (
        FormattableString.Invariant($"{Sewn.Name} pleat {k + 1}"), CurvePath.FromLine(new LineSegment(new Point2D(x, _hipMm), new Point2D(x, _hemMm)))));

    /// <summary>Where the flat cloth is folded.</summary>
    internal List<(string Name, CurvePath Path)> Folds { get; } = [];

    private double StripMm => _depthMm * (_isBox ? 4 : 2);

    /// <summary>The flat cloth: at each pleat a strip let in, its cut edge shaped as the layers that it lies under are.</summary>
    internal Panel AsCut()
    {
        Folds.Clear();
        PanelEdge waist = SkirtStock.TopOf(Sewn);
        CurvePath? top = null;
        for (int k = 0; k < waist.StretchesRaw.Length; k++)
        {
            CurvePath stretch = waist.StretchesRaw[k].Transformed(Moved(k));
            top = top is null ? stretch : top.Then(stretch);
            if (k < waist.DartsRaw.Length)
            {
                Dart dart = waist.DartsRaw[k];
                top = top.Then(Under(k, waist.PressedOnto(k), dart.StartLeg, dart.EndLeg, dart.Apex));
            }
        }

        // Without lapping there are no darts to let the strips in at: the top is one smooth line, cut at the pleat lines.
        top = waist.DartsRaw.Length > 0 ? top! : Unlapped(waist.StretchesRaw[0]);
        Transform2D last = Moved(_lines.Length);
        CurvePath side = Sewn.FindEdge(EdgeName.SideSeam).StretchesRaw[0].Transformed(last);
        var bottom = new Point2D(_centreMm, _hemMm);
        return Panel.Named(Sewn.Name)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, top)
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, side)
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromLine(new LineSegment(side.End, bottom)))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.FromLine(new LineSegment(bottom, top.Start)))
            .WithNotch(EdgeName.SideSeam, Sewn.Notches[0].DistanceFromStart, Sewn.Notches[0].Count)
            .WithGrainline(Sewn.Grainline)
            .Make();
    }

    private Transform2D Moved(int strips) => Transform2D.Translation(new Vector2D(_hand * strips * StripMm, 0));

    private Panel Fold(Panel quarter, double waistMm, double widthMm, double lappingMm)
    {
        var foot = new Point2D(_centreMm + (_hand * widthMm), _hipMm);
        DartWedge[] wedges = lappingMm == 0 ? [] : [.. _lines.Select(x => new DartWedge(x, lappingMm, -_hipMm))];
        SkirtWaist trued = SkirtWaist.Solve(
            new WaistTarget(
                quarter.Name.Text,
                new Point2D(_centreMm, 0),
                _hand > 0 ? Direction.Right : Direction.Left,
                foot,
                new Point2D(foot.XMm, 0),
                waistMm,
                -_hipMm),
            wedges);
        var hem = new Point2D(foot.XMm, _hemMm);
        var bottom = new Point2D(_centreMm, _hemMm);
        double grain = _centreMm + (_hand * 0.25 * Math.Abs(_lines[0] - _centreMm) * 2);
        PanelEdge waist = trued.ToEdge(EdgeName.Waist, EdgeRole.Opening);
        PanelEdge[] edges =
        [
            waist,
            new PanelEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.Trusted([PathSegment.FromCubic(trued.Side.Reversed()), PathSegment.FromLine(new LineSegment(foot, hem))], isClosed: false)),
            new PanelEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromLine(new LineSegment(hem, bottom))),
            new PanelEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.FromLine(new LineSegment(bottom, waist.Start))),
        ];
        var panel = new Panel(quarter.Name, edges, new PanelFeatures(
            new LineSegment(new Point2D(grain, _hipMm), new Point2D(grain, (0.15 * _hipMm) + (0.85 * _hemMm))),
            [new Notch(EdgeName.SideSeam, foot, trued.Side.LengthMm(), quarter.Name == PanelName.Back ? 2 : 1)],
            [],
            []));
        panel.RefuseCrossedOutline("folding pleats");
        return panel;
    }

    // The cut edge of the strip between two legs: each layer under the last mirrored over the fold between them, so that folded it lies under the seam line.
    private CurvePath Under(int k, CurvePath before, Point2D startLeg, Point2D endLeg, Point2D apex)
    {
        Transform2D here = Moved(k);
        Point2D left = here.Apply(startLeg);
        Point2D right = Moved(k + 1).Apply(endLeg);
        Point2D hip = here.Apply(apex);
        var end = hip + new Vector2D(_hand * StripMm, 0);
        double middle = (left.XMm + right.XMm) / 2;
        Transform2D overMiddle = Transform2D.Mirror(Line.Vertical(new Point2D(middle, 0)));
        Line leg = Line.Through(hip, left);
        CurvePath under = before.Transformed(here).ExtendedAtStart(Length.FromMillimeters(2 * StripMm)).Reversed().Transformed(Transform2D.Mirror(leg));
        AddFold(k, "visible fold", hip, left);
        CurvePath half;
        if (_isBox)
        {
            // The inner fold halves the way from the leg to the middle of the strip.
            Point2D atHip = hip.MidpointTo(new Point2D(middle, hip.YMm));
            Point2D atTop = left.MidpointTo(new Point2D(middle, left.YMm));
            CurvePath layer = CutAt(under, Line.Through(atHip, atTop));
            half = layer.Then(layer.Reversed().Transformed(Transform2D.Mirror(Line.Through(atHip, atTop))));
            AddFold(k, "inner fold", atHip, layer.End);
            AddFold(k, "inner fold", new Point2D((2 * middle) - atHip.XMm, atHip.YMm), overMiddle.Apply(layer.End));

            // The second layer ends at the middle, but for what the slant of the fold is off.
            half = EndingAt(half, middle);
        }
        else
        {
            half = CutAt(under, Line.Vertical(new Point2D(middle, 0)));
            AddFold(k, "inner fold", new Point2D(middle, hip.YMm), half.End);
        }

        AddFold(k, "meets the visible fold", end, right);
        CurvePath other = half.Reversed().Transformed(overMiddle);
        return half.Then(other);
    }

    private CurvePath Unlapped(CurvePath waist)
    {
        CurvePath? top = null;
        double from = 0;
        for (int k = 0; k <= _lines.Length; k++)
        {
            double to = k == _lines.Length ? waist.LengthMm : waist.LengthToMm(waist.ClosestTo(waist.IntersectionsWith(Line.Vertical(new Point2D(_lines[k], 0))).Points.First().Point));
            CurvePath part = waist.SubPathMm(from, to).Transformed(Moved(k));
            top = top is null ? part : top.Then(part);
            if (k < _lines.Length)
            {
                Point2D at = waist.PointAtMm(to);
                top = top.Then(Under(k, waist.SubPathMm(0, to), at, at, new Point2D(_lines[k], _hipMm)));
            }

            from = to;
        }

        return top!;
    }

    private void AddFold(int k, string name, Point2D atHip, Point2D top) => Folds.Add((
        FormattableString.Invariant($"{name} {k + 1}"),
        CurvePath.From(top).LineTo(atHip).LineTo(new Point2D(atHip.XMm, _hemMm))));

    private static CurvePath CutAt(CurvePath path, Line line)
        => path.SubPathMm(0, path.LengthToMm(path.ClosestTo(path.IntersectionsWith(line).Points.First().Point)));

    private CurvePath EndingAt(CurvePath path, double xMm)
    {
        PathIntersection[] hits = [.. path.IntersectionsWith(Line.Vertical(new Point2D(xMm, 0))).Points];
        return hits.Length > 0 ? path.SubPathMm(0, path.LengthToMm(path.ClosestTo(hits[hits.Length - 1].Point))) : CurvePath.FromSegments([.. path.SegmentsRaw, PathSegment.FromLine(new LineSegment(path.End, new Point2D(xMm, path.End.YMm)))]);
    }
}
