using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>The strip that faces an edge of a panel: as wide everywhere, and of the same shape as the edge.</summary>
internal static class PieceFacing
{
    internal const string Word = "facing";

    private const int Samples = 64;

    private static readonly EdgeName Inner = EdgeName.Of("inner");

    /// <summary>Whether a panel is the facing of an edge of another: by its name and its edges.</summary>
    internal static bool IsOf(Panel facing, PanelName panel, EdgeName edge) => facing.Name.Text == NameOf(panel, edge)
        && facing.TryFindEdge(edge, out PanelEdge? own) && own!.StretchesRaw.Length == 1
        && facing.TryFindEdge(Inner, out PanelEdge? inner) && inner!.StretchesRaw.Length == 1;

    private static string NameOf(PanelName panel, EdgeName edge) => panel.Text + " " + edge.Text + " " + Word;

    /// <summary>Cuts the strip out of the panel: the edge, the neighbours' seams as far as the strip is deep, and the line beside the edge.</summary>
    internal static Panel Of(Panel panel, EdgeName name, double depthMm)
    {
        PanelEdge edge = panel.FindEdge(name);
        PanelEdge[] edges = panel.EdgesRaw;
        int index = Array.IndexOf(edges, edge);
        PanelEdge before = edges[(index + edges.Length - 1) % edges.Length];
        PanelEdge after = edges[(index + 1) % edges.Length];
        if (edge.StretchesRaw.Length > 1 || edges.Length < 3)
        {
            throw NoRoom(panel, name, depthMm);
        }

        CurvePath outer = edge.StretchesRaw[0];
        bool isInsideLeft = panel.SeamOutline().SignedAreaMm2 > 0;
        CurvePath beside = Longer(outer.Offset(UnitsNet.Length.FromMillimeters(isInsideLeft ? depthMm : -depthMm), OffsetJoin.Mitre).Paths[0], depthMm);
        CurvePath ends = before.StretchesRaw[before.StretchesRaw.Length - 1];
        CurvePath begins = after.StretchesRaw[0];
        if (!TryMeet(beside, ends, outer.Start, out PathIntersection left) || !TryMeet(beside, begins, outer.End, out PathIntersection right) || right.FirstPosition <= left.FirstPosition)
        {
            throw NoRoom(panel, name, depthMm);
        }

        List<PathSegment> inner = PathSpot.Between(beside, new PathSpot(left.FirstSegment, left.FirstParameter), new PathSpot(right.FirstSegment, right.FirstParameter));
        CurvePath up = CurvePath.FromSegments(PathSpot.Between(begins, PathSpot.StartOf(begins), new PathSpot(right.SecondSegment, right.SecondParameter)));
        CurvePath down = CurvePath.FromSegments(PathSpot.Between(ends, new PathSpot(left.SecondSegment, left.SecondParameter), PathSpot.EndOf(ends)));
        CurvePath across = CurvePath.FromSegments(inner).Reversed();
        across = across.WithStartMovedTo(up.End).Reversed().WithStartMovedTo(down.Start).Reversed();
        return new Panel(
            PanelName.Of(NameOf(panel.Name, name)),
            [
                new PanelEdge(name, EdgeRole.Seam, outer),
                new PanelEdge(after.Name, after.Role, up),
                new PanelEdge(Inner, EdgeRole.Opening, across),
                new PanelEdge(before.Name, before.Role, down),
            ],
            new PanelFeatures(Grainline(panel, outer, isInsideLeft, depthMm), [], [], []));
    }

    /// <summary>Whether a facing is as long as the edge that it faces, lies on it, and is as deep everywhere.</summary>
    internal static void Check(CheckList list, Panel facing, Panel faced, EdgeName name)
    {
        string place = facing.Name.Text;
        CurvePath own = facing.FindEdge(name).StretchesRaw[0];
        CurvePath other = faced.FindEdge(name).StretchesRaw[0];
        list.Length(Word + " along the edge that it faces", place, own.LengthMm, other.LengthMm);
        double offMm = 0;
        double nearestMm = double.PositiveInfinity;
        double farthestMm = 0;
        CurvePath inner = facing.FindEdge(Inner).StretchesRaw[0];
        for (int i = 0; i <= Samples; i++)
        {
            offMm = Math.Max(offMm, other.ClosestTo(own.PointAtMm(own.LengthMm * i / Samples)).DistanceMm);
            PathLocation nearest = own.ClosestTo(inner.PointAtMm(inner.LengthMm * i / Samples));

            // Beside a corner that is not square the strip reaches past the end of the edge: what is nearest there is the corner.
            if (nearest.Point.DistanceMm(own.Start) > GeometryTolerance.JoinMm && nearest.Point.DistanceMm(own.End) > GeometryTolerance.JoinMm)
            {
                nearestMm = Math.Min(nearestMm, nearest.DistanceMm);
                farthestMm = Math.Max(farthestMm, nearest.DistanceMm);
            }
        }

        list.Length(Word + " off the edge that it faces", place, offMm, 0);
        list.Length(Word + " deepest less shallowest", place, farthestMm - nearestMm, 0);
    }

    // The seam beside may lean: the line beside the edge goes straight on beyond both its ends until it meets it.
    private static CurvePath Longer(CurvePath path, double byMm)
    {
        Point2D first = path.Start - path.StartDirection.TimesMm(byMm);
        Point2D last = path.End + path.EndDirection.TimesMm(byMm);
        PathSegment[] segments =
        [
            PathSegment.FromLine(new LineSegment(first, path.Start)),
            .. path.SegmentsRaw,
            PathSegment.FromLine(new LineSegment(path.End, last)),
        ];
        return CurvePath.FromSegments(segments);
    }

    private static bool TryMeet(CurvePath beside, CurvePath seam, in Point2D corner, out PathIntersection meeting)
    {
        Point2D near = corner;
        IReadOnlyList<PathIntersection> points = beside.IntersectionsWith(seam).Points;
        meeting = points.OrderBy(point => point.Point.DistanceMm(near)).FirstOrDefault();
        return points.Count > 0;
    }

    // With the grain of the panel, across the middle of the strip.
    private static LineSegment Grainline(Panel panel, CurvePath outer, bool isInsideLeft, double depthMm)
    {
        const double HalfOfDepth = 0.35;
        double halfway = outer.LengthMm / 2;
        Direction along = outer.SegmentsRaw[outer.Locate(halfway, out double t)].DirectionAtRaw(t);
        Point2D middle = outer.PointAtMm(halfway) + (isInsideLeft ? along.TurnedLeft : along.TurnedRight).TimesMm(depthMm / 2);
        Vector2D half = panel.Grainline.Direction.TimesMm(HalfOfDepth * depthMm);
        return new LineSegment(middle - half, middle + half);
    }

    private static ConstructionException NoRoom(Panel panel, EdgeName edge, double depthMm)
        => new(DiagnosticCode.FacingWithoutRoom, edge, panel.Name, UnitsNet.Length.FromMillimeters(depthMm)) { Step = "making a facing", Landmark = edge.Text, Measured = UnitsNet.Length.FromMillimeters(depthMm) };
}
