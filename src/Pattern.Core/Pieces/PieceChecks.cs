using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <summary>The checks of a finished piece. They measure its lines and repeat nothing of what drew them.</summary>
internal static class PieceChecks
{
    private const int SamplesPerSegment = 24;

    // What is folded back lies flat where it is as wide as what it lies on; a millimetre less is smoothed in as it is pressed. Common practice, no source.
    private const double TurnUpToleranceMm = 1;

    // More fullness than this shows as ripples in a pressed hem: of a short edge, or as a part of a long one, which is eased in on a thread. Common practice, no source.
    private const double FullnessMm = 2;
    private const double FullnessPart = 1 / 16.0;

    private static readonly Advice NoRoomForLabel = Advice.Of(
        "The piece is too small for its label between its lines and marks.",
        "Write its name and how it is cut on it by hand, and measure the scale line on another piece.");

    private static readonly Advice TooFull = Advice.Of(
        "Turned up along a curve, the free edge is longer than where it lies, and ripples.",
        "Turn up no more than can be eased in, or face the edge with a piece of its own shape.");

    internal static CheckReport Check(PatternPiece piece)
    {
        var list = new CheckList();
        string place = piece.Name.Text;
        list.Count("cut line meets itself", place, piece.CutLine.SelfIntersections().Points.Count, 0);
        foreach (PieceEdge edge in piece.Edges)
        {
            if (!edge.IsOnFold)
            {
                list.LengthAtLeast("allowance of " + edge.Name, place, NarrowestMm(edge), edge.AllowanceMm, CheckList.ToleranceMm);
            }
        }

        foreach ((PieceEdge edge, TurnUp turnUp) in TurnUp.Of(piece))
        {
            list.LengthAtLeast(edge.Name + " beyond its fold less before it", place, turnUp.LeastWiderMm(), 0, TurnUpToleranceMm);
            double flatMm = turnUp.FlatDepthMm(Math.Max(FullnessMm, FullnessPart * edge.SeamLine.LengthMm));
            if (flatMm < edge.AllowanceMm)
            {
                list.Advise(
                    TooFull, edge.Name + " turned up and eased in", place, Length.FromMillimeters(edge.AllowanceMm), FindingRelation.AtMost, Length.FromMillimeters(flatMm));
            }
        }

        AddTooNear(list, place, piece);
        list.Count("ends of the grainline inside the seam line", place, Inside(piece.SeamLine, [piece.Grainline.Start, piece.Grainline.End]), 2);
        if (piece.Settings.Fold is { } fold)
        {
            PanelEdge edge = piece.Half.FindEdge(fold);
            double turnRad = Math.Abs(piece.Grainline.Direction.TurnRadTo(edge.Start.DirectionTo(edge.End)));
            list.Angle("grain along the fold", place, Math.Min(turnRad, Math.PI - turnRad), 0);
        }

        int holes = 0;
        int inside = 0;
        foreach (PieceDart dart in piece.Darts)
        {
            holes += dart.DrillHoles.Count;
            inside += Inside(piece.SeamLine, dart.DrillHoles);
        }

        list.Count("drill holes inside the seam line", place, inside, holes);
        if (piece.LabelText is not null)
        {
            if (piece.Label is null)
            {
                list.Advise(NoRoomForLabel, "label has room", place, 0, FindingRelation.AtLeast, 1);
            }
            else
            {
                list.Count("label has room", place, 1, 1);
            }
        }

        return list.ToReport();
    }

    // The whole cut line against the seam line of each edge. Where two allowances meet, the narrower of them is what both edges have there.
    private static void AddTooNear(CheckList list, string place, PatternPiece piece)
    {
        var faults = new List<CutFault>();
        for (int k = 0; k < piece.Edges.Count; k++)
        {
            CutFault? worst = null;
            for (int i = 0; i < piece.Edges.Count; i++)
            {
                PieceEdge edge = piece.Edges[i];
                double neededMm = Math.Min(piece.Edges[k].AllowanceMm, edge.AllowanceMm);
                worst = i == k ? worst : Worse(worst, Clearance.Find(edge.CutLine, piece.Panel.Edges[k], neededMm));
                if (edge.CornerLine is { } corner)
                {
                    double next = piece.Edges[(i + 1) % piece.Edges.Count].AllowanceMm;
                    worst = Worse(worst, Clearance.Find(corner, piece.Panel.Edges[k], Math.Min(neededMm, next)));
                }
            }

            if (worst is not null)
            {
                faults.Add(worst);
            }
        }

        list.Count("seam lines that the cut line comes too near", place, faults.Count, 0);
        foreach (CutFault fault in faults)
        {
            list.LengthAtLeast("from the cut line at " + fault.At + " to " + fault.Edge, place, fault.NearestMm!.Value, fault.AllowanceMm, CheckList.ToleranceMm);
        }
    }

    private static CutFault? Worse(CutFault? one, CutFault? other)
        => one is null || (other is not null && other.AllowanceMm - other.NearestMm > one.AllowanceMm - one.NearestMm) ? other ?? one : one;

    private static double NarrowestMm(PieceEdge edge)
    {
        double narrowest = double.PositiveInfinity;
        foreach (PathSegment segment in edge.CutLine.SegmentsRaw)
        {
            for (int i = 0; i <= SamplesPerSegment; i++)
            {
                narrowest = Math.Min(narrowest, edge.SeamLine.ClosestTo(segment.PointAtRaw((double)i / SamplesPerSegment)).DistanceMm);
            }
        }

        return narrowest;
    }

    private static int Inside(CurvePath outline, IReadOnlyList<Point2D> points)
    {
        int count = 0;
        foreach (Point2D point in points)
        {
            count += outline.ContainmentOf(point) == Containment.Inside ? 1 : 0;
        }

        return count;
    }
}
