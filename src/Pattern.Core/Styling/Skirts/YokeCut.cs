using System;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Styling;

/// <summary>One quarter cut along a line parallel to its waist: the yoke with its darts closed, and what hangs below it.</summary>
internal sealed class YokeCut
{
    private readonly Panel _quarter;
    private readonly CurvePath _side;
    private readonly CurvePath _centre;
    private readonly double _depthMm;
    private readonly Point2D _start;
    private readonly Direction _leaving;

    internal YokeCut(Panel quarter, double depthMm)
    {
        _quarter = quarter;
        _depthMm = depthMm;
        _side = quarter.FindEdge(EdgeName.SideSeam).StretchesRaw[0];
        _centre = quarter.FindEdge(EdgeName.Centre).StretchesRaw[0];
        var strip = new EdgeStrip(quarter, SkirtStock.TopOf(quarter).Name, depthMm, closesAll: true, "cutting a yoke");
        _start = strip.Line.Start;
        _leaving = strip.Line.StartDirection;
        LineMm = strip.LineMm;
        LeftOverMm = Math.Max(0, _start.DistanceMm(_side.PointAtMm(depthMm)) - _start.DistanceMm(strip.Line.End));
        Yoke = strip.Strip(HipYokeDesign.YokeOf(quarter.Name), HipYokeDesign.Seam);
    }

    internal Panel Yoke { get; }

    /// <summary>How long the seam to the yoke is.</summary>
    internal double LineMm { get; }

    /// <summary>What the darts would still take in at the yoke line.</summary>
    internal double LeftOverMm { get; }

    /// <summary>What hangs below: its top as long as the yoke, what was left of the darts taken off at the side, and as much fuller as asked for.</summary>
    internal Panel Lower(double fullness)
    {
        PathSegment[] segments = _side.SegmentsRaw;
        Point2D at = _side.PointAtMm(_depthMm);
        PanelEdge top = new(HipYokeDesign.Seam, EdgeRole.Seam, CurvePath.FromLine(new LineSegment(_start, at)));
        (PanelEdge trued, CubicBezier curve) = SkirtFlare.TrueTop(_quarter.Name, top, new TopTarget(
            _start, _leaving, at + at.DirectionTo(_start).TimesMm(LeftOverMm), segments[0].End, segments[1].StartDirection, LineMm, segments[0].LengthMm() - _depthMm));
        Vector2D outward = _leaving.Reversed.TimesMm((fullness - 1) * LineMm);
        CurvePath hem = _quarter.FindEdge(EdgeName.Hem).StretchesRaw[0];
        CurvePath centre = _centre.SubPathMm(0, _centre.LengthMm - _depthMm);
        CurvePath line = trued.StretchesRaw[0];
        if (fullness > 1)
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
            [.. _quarter.Notches.Where(notch => notch.Edge == EdgeName.SideSeam && notch.FromStartMm > _depthMm).Select(notch => new Notch(notch.Edge, notch.Position, notch.FromStartMm - _depthMm, notch.Count))],
            [.. _quarter.Landmarks.Select(landmark => IsOnCentre(landmark) ? landmark.At(landmark.Position + outward) : landmark).Where(landmark => edges.Any(edge => edge.StretchesRaw[0].ClosestTo(landmark.Position).DistanceMm < GeometryTolerance.JoinMm))],
            []));
    }

    private bool IsOnCentre(in Landmark landmark) => _centre.ClosestTo(landmark.Position).DistanceMm < GeometryTolerance.JoinMm;
}
