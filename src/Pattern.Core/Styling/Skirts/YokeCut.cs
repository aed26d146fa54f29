using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Styling;

/// <summary>One quarter cut along a line below its waist: the yoke with its darts closed, and what hangs below it.</summary>
internal sealed class YokeCut
{
    private readonly Panel _quarter;
    private readonly CurvePath _side;
    private readonly CurvePath _centre;
    private readonly double _depthMm;
    private readonly double _sideDepthMm;
    private readonly Point2D _start;
    private readonly Direction _leaving;

    /// <summary>Half a centimetre is eased in without a gather; common practice, no source.</summary>
    internal const double MostEaseMm = 5;

    // Near the side a parallel line bends until it is square to the seam; common practice, no source.
    private const double BendMm = 40;

    // Where moving shortens a part to less than this, it would soon turn back on itself.
    private const double LeastStretch = 0.2;

    /// <param name="quarter">The quarter.</param>
    /// <param name="depthMm">How deep the yoke is at the centre.</param>
    /// <param name="sideDepthMm">How deep it is along the side, in one sweep from the centre; none where its line runs parallel to the closed waist.</param>
    internal YokeCut(Panel quarter, double depthMm, double? sideDepthMm)
    {
        _quarter = quarter;
        _depthMm = depthMm;
        _side = quarter.FindEdge(EdgeName.SideSeam).StretchesRaw[0];
        _centre = quarter.FindEdge(EdgeName.Centre).StretchesRaw[0];
        PanelEdge waist = SkirtStock.TopOf(quarter);
        _sideDepthMm = sideDepthMm ?? depthMm;

        // What lies beyond the last dart, with all darts closed.
        Transform2D closing = waist.Darts.Aggregate(Transform2D.Identity, (turn, dart) => dart.Closing().Then(turn));
        CurvePath closedWaist = waist.Closed();
        CurvePath closedSide = _side.SubPathMm(0, _sideDepthMm).Transformed(closing);
        CurvePath closedCentre = _centre.SubPathMm(_centre.LengthMm - depthMm, _centre.LengthMm);
        _start = closedCentre.Start;
        _leaving = closedCentre.StartDirection.TurnedRad(closedCentre.EndDirection.TurnRadTo(closedWaist.StartDirection));
        Direction arriving = closedSide.EndDirection.TurnedRad(closedSide.StartDirection.TurnRadTo(closedWaist.EndDirection));
        CurvePath line = (sideDepthMm is not null ? null : Parallel(closedWaist, depthMm, quarter.SeamOutline().SignedAreaMm2 > 0, closedSide.End, arriving))
            ?? CurvePath.FromCubic(CubicBezier.InOneSweep(_start, _leaving, closedSide.End, arriving));
        LineMm = line.LengthMm;
        LeftOverMm = Math.Max(0, _start.DistanceMm(_side.PointAtMm(_sideDepthMm)) - _start.DistanceMm(closedSide.End));
        PanelEdge[] edges =
        [
            new PanelEdge(EdgeName.Waist, EdgeRole.Opening, closedWaist),
            new PanelEdge(EdgeName.SideSeam, EdgeRole.Seam, closedSide),
            new PanelEdge(HipYokeDesign.Seam, EdgeRole.Seam, line.Reversed()),
            new PanelEdge(EdgeName.Centre, EdgeRole.Centre, closedCentre),
        ];
        Yoke = PanelBuilder.Finish(HipYokeDesign.YokeOf(quarter.Name), edges, edges.SelectMany(edge => edge.StretchesRaw[0].SegmentsRaw), [], [], null);
    }

    internal Panel Yoke { get; }

    /// <summary>How far down along the side a level is; zero where the side does not come to it.</summary>
    internal static double SideDepthMm(Panel quarter, double levelMm)
    {
        CurvePath side = quarter.FindEdge(EdgeName.SideSeam).StretchesRaw[0];
        IReadOnlyList<PathIntersection> hits = side.IntersectionsWith(Line.Horizontal(new Point2D(0, levelMm))).Points;
        return hits.Count == 0 ? 0 : side.LengthToMm(side.ClosestTo(hits[0].Point));
    }

    /// <summary>How long the seam to the yoke is.</summary>
    internal double LineMm { get; }

    /// <summary>How deep the yoke is along the side.</summary>
    internal double DepthAtSideMm => _sideDepthMm;

    /// <summary>How deep it is along the centre.</summary>
    internal double DepthAtCentreMm => _depthMm;

    /// <summary>What the darts would still take in at the yoke line.</summary>
    internal double LeftOverMm { get; }

    /// <summary>How much longer the top of the skirt is than the yoke: gathered as much as asked for, or what is left of the darts eased in as far as that goes.</summary>
    internal double EaseMm(double fullness) => fullness > 1 ? (fullness - 1) * LineMm : Math.Min(LeftOverMm, MostEaseMm);

    /// <summary>What is left of the darts and comes off the side.</summary>
    internal double OffSideMm(double fullness) => Math.Max(0, LeftOverMm - EaseMm(fullness));

    /// <summary>What hangs below: its top as long as the yoke and the ease. What is left of the darts is gathered or eased in, the rest taken off at the side.</summary>
    internal Panel Lower(double fullness)
    {
        PathSegment[] segments = _side.SegmentsRaw;
        Point2D at = _side.PointAtMm(_sideDepthMm);
        double offSide = OffSideMm(fullness);
        double outwardMm = Math.Max(0, EaseMm(fullness) - LeftOverMm);
        PanelEdge top = new(HipYokeDesign.Seam, EdgeRole.Seam, CurvePath.FromLine(new LineSegment(_start, at)));
        (PanelEdge trued, CubicBezier curve) = SkirtFlare.TrueTop(_quarter.Name, top, new TopTarget(
            _start,
            _leaving,
            at + at.DirectionTo(_start).TimesMm(offSide),
            segments[0].End,
            segments[1].StartDirection,
            LineMm + EaseMm(fullness) - outwardMm,
            segments[0].LengthMm() - _sideDepthMm));
        Vector2D outward = _leaving.Reversed.TimesMm(outwardMm);
        CurvePath hem = _quarter.FindEdge(EdgeName.Hem).StretchesRaw[0];
        CurvePath centre = _centre.SubPathMm(0, _centre.LengthMm - _depthMm);
        CurvePath line = trued.StretchesRaw[0];
        if (outwardMm > 0)
        {
            line = CurvePath.FromLine(new LineSegment(_start + outward, _start)).Then(line);
            hem = hem.Then(CurvePath.FromLine(new LineSegment(hem.End, hem.End + outward)));
            centre = centre.Transformed(Transform2D.Translation(outward));
        }

        PanelEdge[] edges =
        [
            new PanelEdge(HipYokeDesign.Seam, EdgeRole.Seam, line),
            new PanelEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.Trusted([PathSegment.FromCubic(curve), .. segments.Skip(1)], isClosed: false)),
            new PanelEdge(EdgeName.Hem, EdgeRole.Hem, hem),
            new PanelEdge(EdgeName.Centre, EdgeRole.Centre, centre),
        ];
        var panel = new Panel(_quarter.Name, edges, _quarter.Features with { Notches = [], Landmarks = [], InsideDarts = [] });
        panel.RefuseCrossedOutline("cutting a yoke");
        CurvePath outline = panel.SeamOutline();
        return new Panel(_quarter.Name, edges, new PanelFeatures(
            Grain.LiesWithin(outline, _quarter.Grainline) ? _quarter.Grainline : Grain.Within(outline, _quarter.Grainline.Direction),
            [.. _quarter.Notches.Where(notch => notch.Edge == EdgeName.SideSeam && notch.FromStartMm > _sideDepthMm).Select(notch => new Notch(notch.Edge, notch.Position, notch.FromStartMm - _sideDepthMm, notch.Count))],
            [.. _quarter.Landmarks.Select(landmark => IsOnCentre(landmark) ? landmark.At(landmark.Position + outward) : landmark).Where(landmark => edges.Any(edge => edge.StretchesRaw[0].ClosestTo(landmark.Position).DistanceMm < GeometryTolerance.JoinMm))],
            []));
    }

    // The closed waist moved square to itself, from the centre to near the side, and from there bent into the side; none where the waist is hollow by less than the yoke is deep.
    private static CurvePath? Parallel(CurvePath waist, double depthMm, bool isPanelLeft, in Point2D end, Direction arriving)
    {
        CurvePath straight = waist.SubPathMm(0, waist.LengthMm - Math.Min(BendMm, 0.3 * waist.LengthMm));
        var moved = new List<PathSegment>();
        foreach (PathSegment segment in straight.SegmentsRaw)
        {
            // Ends and slopes of each part are exact; in four parts what lies between is, to far below what one can draw.
            const int Parts = 4;
            CubicBezier cubic = segment.CubicRaw;
            for (int i = 0; i < Parts; i++)
            {
                CubicBezier part = cubic.SubCurveRaw((double)i / Parts, (i + 1.0) / Parts);
                double before = 1 - (Inward(part.CurvaturePerMm(0)) * depthMm);
                double after = 1 - (Inward(part.CurvaturePerMm(1)) * depthMm);
                if (before < LeastStretch || after < LeastStretch)
                {
                    return null;
                }

                moved.Add(PathSegment.FromCubic(CubicBezier.FromHandles(
                    Moved(part.Start, part.StartDirection),
                    part.StartDirection,
                    part.Start.DistanceMm(part.StartControl) * before,
                    Moved(part.End, part.EndDirection),
                    part.EndDirection,
                    part.End.DistanceMm(part.EndControl) * after)));
            }
        }

        PathSegment last = moved[moved.Count - 1];
        moved.Add(PathSegment.FromCubic(CubicBezier.Between(last.End, last.EndDirection, end, arriving)));
        return CurvePath.Trusted([.. moved], isClosed: false);

        // Turning toward the panel counts as positive.
        double Inward(double curvature) => isPanelLeft ? curvature : -curvature;
        Point2D Moved(in Point2D point, Direction along) => point + (isPanelLeft ? along.TurnedLeft : along.TurnedRight).TimesMm(depthMm);
    }

    private bool IsOnCentre(in Landmark landmark) => _centre.ClosestTo(landmark.Position).DistanceMm < GeometryTolerance.JoinMm;
}
