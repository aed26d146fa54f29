using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>Opens one quarter of a skirt at the hem: by closing darts, by slashing and spreading, by swinging the side seam out. The hem stays as far from the hip line as it was.</summary>
/// <remarks>Every cut meets the hem square and opens about a point above it, so the hem runs on as an arc about that point: straight, arc, straight, without a corner.</remarks>
internal static class SkirtFlare
{
    // Computed lines that are meant to be straight or square differ by rounding.
    private const double StraightRad = 1e-6;

    /// <summary>Whether a quarter hangs straight: below the hip its side is one straight line, and its hem is square to side and centre, or smooth and square as a design left it.</summary>
    internal static bool HangsStraight(Panel panel)
    {
        PathSegment[] side = panel.FindEdge(EdgeName.SideSeam).StretchesRaw[0].SegmentsRaw;
        CurvePath hem = panel.FindEdge(EdgeName.Hem).StretchesRaw[0];
        CurvePath centre = panel.FindEdge(EdgeName.Centre).StretchesRaw[0];
        Direction down = side[side.Length - 1].EndDirection;
        return side.Length > 1
            && side.Skip(1).All(segment => segment.Kind == PathSegmentKind.Line && Math.Abs(segment.StartDirection.TurnRadTo(down)) < StraightRad)
            && Math.Abs(CheckList.CornerRad(panel.FindEdge(EdgeName.SideSeam).StretchesRaw[0], hem) - SkirtStock.SquareRad) < StraightRad
            && Math.Abs(CheckList.CornerRad(hem, centre) - SkirtStock.SquareRad) < StraightRad;
    }

    /// <summary>Where the hip curve of the side ends and its straight part begins: the level of the hip.</summary>
    internal static Point2D FootOf(Panel panel) => panel.FindEdge(EdgeName.SideSeam).StretchesRaw[0].SegmentsRaw[0].End;

    /// <summary>From the level of the hip down the side to the hem.</summary>
    internal static double BelowHipMm(Panel panel) => panel.FindEdge(EdgeName.SideSeam).StretchesRaw[0].SegmentsRaw.Skip(1).Sum(segment => segment.LengthMm());

    /// <summary>The width at the level of the hip, along the hip line: what the hem measures, less what it fans out below the hip.</summary>
    /// <remarks>The hip line runs as far above the hem everywhere, so each turn of the hem by an angle makes the hem longer than it by that angle times the distance.</remarks>
    internal static double HipWidthMm(Panel panel)
    {
        double above = BelowHipMm(panel);
        return panel.FindEdge(EdgeName.Hem).StretchesRaw[0].SegmentsRaw.Sum(segment => segment.LengthMm() - (above * Math.Abs(segment.TurningRad)));
    }

    /// <summary>Closes a share of each waist dart, so that the hem opens below its apex.</summary>
    internal static Panel CloseDarts(Panel panel, double share, List<(DartName Dart, double OpeningMm)> openings)
    {
        int number = 1;
        EdgeName top = SkirtStock.TopOf(panel).Name;
        int count = panel.FindEdge(top).Darts.Count;
        for (int i = 0; i < count; i++)
        {
            DartName name = top.Dart(number);
            Point2D apex = panel.FindDart(name).Apex;
            double before = panel.FindEdge(EdgeName.Hem).SewnLengthMm();
            panel = panel.TurnDartIntoFlare(name, panel.FootOn(EdgeName.Hem, apex), Ratio.FromDecimalFractions(share));
            openings.Add((top.Dart(i + 1), panel.FindEdge(EdgeName.Hem).SewnLengthMm() - before));
            number += share < 1 ? 1 : 0;
        }

        return panel;
    }

    /// <summary>Slashes a quarter without darts from its top to the hem at several places and spreads it there; the top keeps its length, and a corner at each hinge until it is trued.</summary>
    /// <param name="panel">A quarter that hangs straight.</param>
    /// <param name="spreadsMm">How far each slash is spread at the hem, measured straight, from the centre on.</param>
    internal static Panel Spread(Panel panel, double[] spreadsMm)
    {
        EdgeName top = SkirtStock.TopOf(panel).Name;
        double length = panel.FindEdge(top).SewnLengthMm();
        for (int i = 0; i < spreadsMm.Length; i++)
        {
            double at = length * (i + 0.5) / spreadsMm.Length;
            Point2D hinge = panel.FindEdge(top).PointAtSewnMm(at);
            panel = panel.SlashAndSpread(top.At(Length.FromMillimeters(at)), panel.FootOn(EdgeName.Hem, hinge), Length.FromMillimeters(spreadsMm[i]));
        }

        return panel;
    }

    /// <summary>Swings the side seam out about the level of the hip, and draws waist and hip curve again: square to each other, as long as before.</summary>
    /// <param name="panel">A quarter that hangs straight.</param>
    /// <param name="outMm">How far the side hem swings out, measured straight.</param>
    /// <param name="topMm">How long the top is to be; as long as it was where nobody says.</param>
    /// <param name="curveMm">How long the hip curve is to be; as long as it was where nobody says.</param>
    internal static Panel SwingSide(Panel panel, double outMm, double? topMm = null, double? curveMm = null)
    {
        PanelEdge waist = SkirtStock.TopOf(panel);
        if (outMm == 0 && waist.Darts.Count > 0)
        {
            return panel;
        }

        CurvePath side = panel.FindEdge(EdgeName.SideSeam).StretchesRaw[0];
        PathSegment[] segments = side.SegmentsRaw;
        Point2D foot = segments[0].End;
        double belowMm = BelowHipMm(panel);

        // Seen down the side, outward is to the left where the panel lies to the right.
        double angle = 2 * Math.Asin(Math.Min(1, outMm / 2 / belowMm)) * (panel.SeamOutline().SignedAreaMm2 > 0 ? -1 : 1);
        Transform2D swing = Transform2D.RotationRaw(foot, Direction.FromRadians(angle));
        Direction down = segments[1].StartDirection.TurnedRad(angle);
        (PanelEdge newWaist, CubicBezier curve) = waist.Darts.Count == 0
            ? TrueTop(panel.Name, waist, new TopTarget(waist.Start, waist.StretchesRaw[0].StartDirection, waist.End, foot, down, topMm ?? waist.SewnLengthMm(), curveMm ?? segments[0].LengthMm()))
            : (waist, CubicBezier.BetweenWithLength(side.Start, side.StartDirection, foot, down, Length.FromMillimeters(segments[0].LengthMm())));
        CurvePath newSide = CurvePath.Trusted([PathSegment.FromCubic(curve), .. segments.Skip(1).Select(segment => segment.TransformedRaw(swing))], isClosed: false);
        CurvePath hem = panel.FindEdge(EdgeName.Hem).StretchesRaw[0];
        CurvePath newHem = outMm == 0
            ? hem
            : CurvePath.FromArc(CircularArc.Around(foot, newSide.End, Angle.FromRadians(-angle))).Then(hem);
        PanelEdge[] edges = [.. panel.EdgesRaw.Select(edge => edge.Name == waist.Name ? newWaist
            : edge.Name == EdgeName.SideSeam ? new PanelEdge(edge.Name, edge.Role, newSide)
            : edge.Name == EdgeName.Hem ? new PanelEdge(edge.Name, edge.Role, newHem)
            : edge)];
        PanelFeatures features = panel.Features with
        {
            Landmarks = [.. panel.Landmarks.Select(landmark => landmark.Position.DistanceMm(side.Start) < GeometryTolerance.JoinMm ? landmark.At(newSide.Start)
                : side.ClosestTo(landmark.Position) is { SegmentIndex: > 0, DistanceMm: < GeometryTolerance.JoinMm } ? landmark.At(swing.Apply(landmark.Position))
                : landmark)],
        };
        return panel.WithEdges(edges, features, "swinging a side seam out");
    }

    /// <summary>The top of a quarter in one sweep from the centre, square to the side, and the hip curve below it, each with its length: as the block was trued, in the frame where the
    /// straight part of the side is upright.</summary>
    internal static (PanelEdge Top, CubicBezier Curve) TrueTop(PanelName panel, PanelEdge top, in TopTarget target)
    {
        double turn = target.Down.TurnRadTo(Direction.Down);
        Transform2D upright = Transform2D.RotationRaw(target.Foot, Direction.FromRadians(turn));
        Transform2D back = Transform2D.RotationRaw(target.Foot, Direction.FromRadians(-turn));
        SkirtWaist trued = SkirtWaist.Solve(
            new WaistTarget(panel.Text, upright.Apply(target.Start), target.Leaving.TurnedRad(turn), target.Foot, upright.Apply(target.NearEnd), target.TopMm, target.CurveMm) { IsNear = true },
            []);
        PanelEdge edge = trued.ToEdge(top.Name, top.Role);
        return (new PanelEdge(edge.Name, edge.Role, edge.StretchesRaw[0].Transformed(back)), trued.Side.Reversed().Transformed(back));
    }
}

/// <summary>What the top of a quarter is trued to.</summary>
/// <param name="Start">Where it begins, on the centre.</param>
/// <param name="Leaving">Its direction there.</param>
/// <param name="NearEnd">Where it ends, nearly.</param>
/// <param name="Foot">Where the hip curve ends and the side goes on straight.</param>
/// <param name="Down">The direction in which it goes on.</param>
/// <param name="TopMm">How long the top is to be.</param>
/// <param name="CurveMm">How long the hip curve is to be.</param>
internal readonly record struct TopTarget(Point2D Start, Direction Leaving, Point2D NearEnd, Point2D Foot, Direction Down, double TopMm, double CurveMm);
