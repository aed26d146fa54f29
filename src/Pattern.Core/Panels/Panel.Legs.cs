using System.Linq;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <content>The legs of a dart.</content>
public sealed partial class Panel
{
    /// <summary>The panel with the legs of a dart longer or shorter, each along its own line; apex and wedge stay.</summary>
    internal Panel WithLegLengthMm(DartName dart, double legMm)
    {
        Dart old = FindDart(dart);
        return WithLegs(dart, old.Apex + old.Apex.DirectionTo(old.StartLeg).TimesMm(legMm), old.Apex + old.Apex.DirectionTo(old.EndLeg).TimesMm(legMm), old.Apex);
    }

    /// <summary>The panel with a dart laid anew along a middle line: its legs square to it, its intake as it was.</summary>
    internal Panel WithDartAlong(DartName dart, in Point2D middle, in Point2D apex)
    {
        Dart old = FindDart(dart);
        Direction across = apex.DirectionTo(middle).TurnedLeft;
        Vector2D half = across.TimesMm(across.Dot(old.StartLeg - old.EndLeg) > 0 ? old.IntakeMm / 2 : -old.IntakeMm / 2);
        return WithLegs(dart, middle + half, middle - half, apex);
    }

    // The curves beside the dart follow and keep both their directions, so the edge has no more corners than it had.
    private Panel WithLegs(DartName dart, in Point2D start, in Point2D end, in Point2D apex)
    {
        PanelEdge edge = FindEdge(dart.Edge);
        CurvePath[] stretches = [.. edge.StretchesRaw];
        stretches[dart.Number - 1] = WithStartAt(stretches[dart.Number - 1].Reversed(), start).Reversed();
        stretches[dart.Number] = WithStartAt(stretches[dart.Number], end);
        DartShape[] darts = [.. edge.DartsRaw.Select(one => one.Shape)];
        darts[dart.Number - 1] = darts[dart.Number - 1] with { Apex = apex, StartLeg = start, EndLeg = end };
        PanelEdge[] edges = [.. _edges];
        edges[IndexOf(dart.Edge)] = new PanelEdge(edge.Name, edge.Role, stretches, darts);
        return WithEdges(edges, _features, "changing the legs of a dart");
    }

    private static CurvePath WithStartAt(CurvePath path, in Point2D start)
    {
        Vector2D move = start - path.Start;
        var segments = (PathSegment[])path.SegmentsRaw.Clone();
        PathSegment first = segments[0];
        CubicBezier curve = first.Kind == PathSegmentKind.Cubic ? first.CubicRaw
            : first.Kind == PathSegmentKind.Line ? first.LineRaw.ToCubic()
            : CubicBezier.Between(first.Start, first.StartDirection, first.End, first.EndDirection);
        segments[0] = PathSegment.FromCubic(new CubicBezier(start, curve.StartControl + move, curve.EndControl, curve.End));
        return CurvePath.Trusted(segments, isClosed: false);
    }
}
