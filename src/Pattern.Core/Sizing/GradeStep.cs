using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Sizing;

/// <summary>One step of grading: from a size to the next, and back.</summary>
/// <remarks>The way up is said by the two drafted panels; the way down is searched as the panel whose way up ends here, so that both undo each other whatever the panel.</remarks>
internal static class GradeStep
{
    // Each round leaves about a hundredth of the error of the one before.
    private const int MostRounds = 40;
    private const double SameMm = 1e-9;
    private const string Step = "grading a panel";

    internal static Panel Up(Panel panel, Panel small, Panel large)
    {
        Panel bending = ArcsAsCurves.Everywhere(panel);
        Point2D[] points = PanelPoints.Read(bending);
        return PanelPoints.Checked(PanelPoints.Write(bending, Moved(bending, points, small, large), isSmooth: true), Step);
    }

    internal static Panel Down(Panel panel, Panel small, Panel large)
    {
        Panel bending = ArcsAsCurves.Everywhere(panel);
        Point2D[] target = PanelPoints.Read(bending);
        Point2D[] points = (Point2D[])target.Clone();
        for (int round = 0; round < MostRounds; round++)
        {
            Point2D[] up = Moved(PanelPoints.Write(bending, points, isSmooth: false), points, small, large);
            double off = 0;
            for (int i = 0; i < points.Length; i++)
            {
                Vector2D error = target[i] - up[i];
                points[i] += error;
                off = Math.Max(off, error.LengthMm);
            }

            if (off <= SameMm)
            {
                break;
            }
        }

        return PanelPoints.Checked(PanelPoints.Write(bending, points, isSmooth: true), Step);
    }

    internal static bool TryFind(Panel panel, LandmarkName name, out Point2D at)
    {
        foreach (Landmark landmark in panel.Features.Landmarks)
        {
            if (landmark.Name.Equals(name))
            {
                at = landmark.Position;
                return true;
            }
        }

        at = default;
        return false;
    }

    private static Point2D[] Moved(Panel panel, Point2D[] points, Panel small, Panel large)
    {
        var moved = new List<Point2D>(points.Length);
        int count = panel.EdgesRaw.Length;
        for (int e = 0; e < count; e++)
        {
            PanelEdge edge = panel.EdgesRaw[e];
            Vector2D start = CornerMove(panel.EdgesRaw[(e + count - 1) % count], edge, small, large);
            Vector2D end = CornerMove(edge, panel.EdgesRaw[(e + 1) % count], small, large);
            small.TryFindEdge(edge.Name, out PanelEdge? from);
            large.TryFindEdge(edge.Name, out PanelEdge? to);
            bool isAlike = from is not null && to is not null && from.DartsRaw.Length == edge.DartsRaw.Length && to.DartsRaw.Length == edge.DartsRaw.Length;
            double sewnMm = edge.SewnLengthMm();
            double before = 0;
            for (int s = 0; s < edge.StretchesRaw.Length; s++)
            {
                CurvePath stretch = edge.StretchesRaw[s];
                double lengthMm = stretch.LengthMm;
                double first = before / sewnMm;
                double last = (before + lengthMm) / sewnMm;
                Vector2D[] joints = isAlike
                    ? JointMoves(stretch, from!.StretchesRaw[s], to!.StretchesRaw[s])
                    : Even(stretch, start + ((end - start) * first), start + ((end - start) * last));
                joints[0] = s == 0 ? start : joints[0];
                joints[joints.Length - 1] = s == edge.StretchesRaw.Length - 1 ? end : joints[joints.Length - 1];
                Add(stretch, joints, moved);
                before += lengthMm;
            }

            double at = 0;
            for (int d = 0; d < edge.DartsRaw.Length; d++)
            {
                // A dart that the sizes do not have goes whole with its place on the edge, its intake as it was.
                at += edge.StretchesRaw[d].LengthMm;
                moved.Add(edge.DartsRaw[d].Apex + (isAlike ? to!.DartsRaw[d].Apex - from!.DartsRaw[d].Apex : start + ((end - start) * (at / sewnMm))));
            }
        }

        AddFeatures(panel, small, large, moved);
        return moved.ToArray();
    }

    private static void AddFeatures(Panel panel, Panel small, Panel large, List<Point2D> moved)
    {
        InsideDart[] darts = panel.Features.InsideDarts;
        bool isAlike = small.Features.InsideDarts.Length == darts.Length && large.Features.InsideDarts.Length == darts.Length;
        for (int i = 0; i < darts.Length; i++)
        {
            Point2D[] corners = darts[i].Corners();
            Point2D[]? from = isAlike ? small.Features.InsideDarts[i].Corners() : null;
            Point2D[]? to = isAlike ? large.Features.InsideDarts[i].Corners() : null;
            Vector2D whole = isAlike ? default(Vector2D) : FieldMove(darts[i].FirstApex.MidpointTo(darts[i].SecondApex), small, large);
            for (int k = 0; k < corners.Length; k++)
            {
                moved.Add(corners[k] + (isAlike ? to![k] - from![k] : whole));
            }
        }

        foreach (Landmark landmark in panel.Features.Landmarks)
        {
            moved.Add(landmark.Position + (TryFind(small, landmark.Name, out Point2D from) && TryFind(large, landmark.Name, out Point2D to)
                ? to - from
                : FieldMove(landmark.Position, small, large)));
        }

        // The grain keeps its direction: it goes with the mean of the corners.
        Vector2D mean = default(Vector2D);
        foreach (PanelEdge edge in small.EdgesRaw)
        {
            mean += (large.FindEdge(edge.Name).Start - edge.Start) * (1.0 / small.EdgesRaw.Length);
        }

        moved.Add(panel.Grainline.Start + mean);
        moved.Add(panel.Grainline.End + mean);
    }

    private static void Add(CurvePath stretch, Vector2D[] joints, List<Point2D> moved)
    {
        PathSegment[] segments = stretch.SegmentsRaw;
        moved.Add(segments[0].Start + joints[0]);
        for (int i = 0; i < segments.Length; i++)
        {
            Point2D start = segments[i].Start + joints[i];
            Point2D end = segments[i].End + joints[i + 1];
            if (segments[i].Kind == PathSegmentKind.Cubic)
            {
                // Handles keep their directions and grow with the chord.
                CubicBezier cubic = segments[i].CubicRaw;
                double chordMm = cubic.Start.DistanceMm(cubic.End);
                double growth = chordMm > SameMm ? start.DistanceMm(end) / chordMm : 1;
                moved.Add(start + ((cubic.StartControl - cubic.Start) * growth));
                moved.Add(end + ((cubic.EndControl - cubic.End) * growth));
            }

            moved.Add(end);
        }
    }

    private static Vector2D CornerMove(PanelEdge arriving, PanelEdge leaving, Panel small, Panel large)
        => small.TryFindEdge(arriving.Name, out PanelEdge? from) && large.TryFindEdge(arriving.Name, out PanelEdge? to) ? to!.End - from!.End
            : small.TryFindEdge(leaving.Name, out from) && large.TryFindEdge(leaving.Name, out to) ? to!.Start - from!.Start
            : FieldMove(leaving.Start, small, large);

    // Joint by joint where both have as many; else by the part of the length.
    private static Vector2D[] JointMoves(CurvePath stretch, CurvePath from, CurvePath to)
    {
        PathSegment[] own = stretch.SegmentsRaw;
        var moves = new Vector2D[own.Length + 1];
        bool isAlike = from.SegmentsRaw.Length == own.Length && to.SegmentsRaw.Length == own.Length;
        double lengthMm = stretch.LengthMm;
        double beforeMm = 0;
        for (int i = 0; i < moves.Length; i++)
        {
            moves[i] = isAlike && i > 0 && i < own.Length ? to.SegmentsRaw[i].Start - from.SegmentsRaw[i].Start : MoveAt(from, to, i == own.Length ? 1 : Math.Min(1, beforeMm / lengthMm));
            beforeMm += i < own.Length ? own[i].LengthMm() : 0;
        }

        return moves;
    }

    private static Vector2D[] Even(CurvePath stretch, Vector2D start, Vector2D end)
    {
        PathSegment[] own = stretch.SegmentsRaw;
        var moves = new Vector2D[own.Length + 1];
        double lengthMm = stretch.LengthMm;
        double beforeMm = 0;
        for (int i = 0; i < moves.Length; i++)
        {
            moves[i] = start + ((end - start) * (i == own.Length ? 1 : beforeMm / lengthMm));
            beforeMm += i < own.Length ? own[i].LengthMm() : 0;
        }

        return moves;
    }

    private static Vector2D MoveAt(CurvePath from, CurvePath to, double part)
        => part <= 0 ? to.Start - from.Start : part >= 1 ? to.End - from.End : to.PointAtMm(part * to.LengthMm) - from.PointAtMm(part * from.LengthMm);

    // What no rule names goes with the nearest place on the outline of the smaller size.
    private static Vector2D FieldMove(Point2D point, Panel small, Panel large)
    {
        Vector2D move = default(Vector2D);
        double nearest = double.PositiveInfinity;
        foreach (PanelEdge edge in small.EdgesRaw)
        {
            PanelEdge other = large.FindEdge(edge.Name);
            for (int s = 0; s < edge.StretchesRaw.Length; s++)
            {
                PathLocation location = edge.StretchesRaw[s].ClosestTo(point);
                if (location.DistanceMm < nearest)
                {
                    nearest = location.DistanceMm;
                    move = MoveAt(edge.StretchesRaw[s], other.StretchesRaw[s], edge.StretchesRaw[s].LengthToMm(location) / edge.StretchesRaw[s].LengthMm);
                }
            }
        }

        return move;
    }
}
