using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>Points, lines and paths in a pattern file.</summary>
internal static class PathJson
{
    // As an arc itself allows.
    private const double OneTurn = 2 * Math.PI * (1 + 1e-15);

    internal static void Write(JsonWriter json, CurvePath path)
    {
        json.RequireEntries(path.SegmentsRaw.Length);
        json.Begin('[');
        foreach (PathSegment segment in path.SegmentsRaw)
        {
            json.Segment(segment);
        }

        json.End(']');
    }

    internal static CurvePath Read(JsonValue value, bool isClosed = false)
    {
        PathSegment[] segments = value.List(Segment, 1);
        CurvePath path = value.Make(() => CurvePath.FromSegments(segments));
        return !isClosed ? path
            : CurvePath.Meets(path.End, path.Start) ? path.Closed()
            : throw value.Fault(DiagnosticCode.JsonValueWrong, $"a path from {path.Start} to {path.End}", "a closed path, which ends where it begins");
    }

    internal static Point2D Point(JsonValue value)
    {
        JsonValue[] xy = value.List(2, 2);
        return new Point2D(xy[0].Mm(), xy[1].Mm());
    }

    internal static LineSegment Line(JsonValue value)
    {
        JsonValue[] ends = value.List(4, 4);
        return new LineSegment(new Point2D(ends[0].Mm(), ends[1].Mm()), new Point2D(ends[2].Mm(), ends[3].Mm()));
    }

    private static PathSegment Segment(JsonValue value)
    {
        if (value.TryProperty("line", out _))
        {
            return PathSegment.FromLine(Line(value.Object("line")["line"]));
        }

        if (value.TryProperty("arc", out _))
        {
            JsonValue[] arc = value.Object("arc")["arc"].List(5, 5);
            var circular = new CircularArc(
                arc[0].Number(-JsonLimits.FarthestCentreMm, JsonLimits.FarthestCentreMm),
                arc[1].Number(-JsonLimits.FarthestCentreMm, JsonLimits.FarthestCentreMm),
                arc[2].Number(0, JsonLimits.FarthestCentreMm),
                arc[3].Mm(),
                arc[4].Number(-OneTurn, OneTurn));
            BoundingBox box = circular.Bounds;
            return Math.Max(Math.Max(box.RightMm, -box.LeftMm), Math.Max(box.TopMm, -box.BottomMm)) <= JsonLimits.FarthestMm
                ? PathSegment.FromArc(circular)
                : throw value.Fault(DiagnosticCode.JsonValueWrong, "an arc that leaves the sheet", "coordinates of " + JsonValue.Number(-JsonLimits.FarthestMm) + " to " + JsonValue.Number(JsonLimits.FarthestMm) + " all along it");
        }

        if (!value.TryProperty("cubic", out _))
        {
            throw value.Fault(DiagnosticCode.JsonValueWrong, value.Described(), "an object with line, cubic or arc");
        }

        JsonValue[] cubic = value.Object("cubic")["cubic"].List(8, 8);
        return PathSegment.FromCubic(new CubicBezier(
            cubic[0].Mm(), cubic[1].Mm(), cubic[2].Mm(), cubic[3].Mm(), cubic[4].Mm(), cubic[5].Mm(), cubic[6].Mm(), cubic[7].Mm()));
    }
}
