using System;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>A panel in a pattern file, with all that is needed to make the same one again.</summary>
internal static class PanelJson
{
    // What panels themselves keep to where a dart meets its seam line.
    private const double JoinMm = GeometryTolerance.JoinMm;

    // A dart is turned about its apex when it is closed: legs further apart than this could not be sewn to each other.
    private const double LegsMm = 0.01;
    private const double OnSeamMm = 0.01;

    internal static void Write(JsonWriter json, Panel panel)
    {
        json.Begin('{').Name("name").Text(panel.Name.Text);
        json.Name("edges").RequireEntries(panel.EdgesRaw.Sum(edge => edge.Stretches.Sum(stretch => stretch.SegmentsRaw.Length)));
        json.Begin('[');
        foreach (PanelEdge edge in panel.EdgesRaw)
        {
            Write(json, edge);
        }

        json.End(']').Name("insideDarts").RequireEntries(panel.InsideDarts.Count);
        json.Begin('[');
        foreach (InsideDart dart in panel.InsideDarts)
        {
            json.Begin('{').Name("firstApex").Point(dart.FirstApex);
            json.Name("secondApex").Point(dart.SecondApex);
            json.Name("left").Point(dart.Left);
            json.Name("right").Point(dart.Right);
            json.End('}');
        }

        json.End(']').Name("grainline").Line(panel.Grainline);
        json.Name("notches").RequireEntries(panel.Notches.Count);
        json.Begin('[');
        foreach (Notch notch in panel.Notches)
        {
            json.Begin('{').Name("edge").Text(notch.Edge.Text);
            json.Name("distanceFromStart").Number(notch.FromStartMm);
            json.Name("position").Point(notch.Position);
            json.Name("count").Whole(notch.Count);
            json.End('}');
        }

        json.End(']').Name("landmarks").RequireEntries(panel.Landmarks.Count);
        json.Begin('[');
        foreach (Landmark landmark in panel.Landmarks)
        {
            json.Begin('{').Name("name").Text(landmark.Name.Text);
            json.Name("kind").Text(JsonWords.LandmarkKinds.WordOf(landmark.Kind));
            json.Name("position").Point(landmark.Position);
            json.End('}');
        }

        json.End(']').End('}');
    }

    internal static Panel Read(JsonValue value)
    {
        JsonObject said = value.Object("name", "edges", "insideDarts", "grainline", "notches", "landmarks");
        PanelName name = said["name"].Name(PanelName.Of);
        PanelEdge[] edges = said["edges"].List(Edge);
        int segments = edges.Sum(edge => edge.Stretches.Sum(stretch => stretch.SegmentsRaw.Length));
        if (segments > JsonLimits.Entries)
        {
            throw said["edges"].Fault(DiagnosticCode.JsonTooLarge, JsonValue.Number(segments) + " segments", JsonValue.Number(JsonLimits.Entries));
        }

        said["edges"].Make(() => PanelBuilder.RefuseGaps(name, edges));
        LineSegment grain = PathJson.Line(said["grainline"]);
        said["grainline"].Make(() => PanelBuilder.RefuseNoLength(name, "the grainline", grain.LengthMm));
        var bare = new Panel(name, edges, new PanelFeatures(default, [], [], []));
        var panel = new Panel(name, edges, new PanelFeatures(
            grain,
            said["notches"].List(notch => Notch(notch, bare)),
            said["landmarks"].List(Landmark),
            said["insideDarts"].List(InsideDart)));
        said["edges"].Make(() => panel.RefuseCrossedOutline("reading a panel"));
        return panel;
    }

    private static void Write(JsonWriter json, PanelEdge edge)
    {
        json.Begin('{').Name("name").Text(edge.Name.Text);
        json.Name("role").Text(JsonWords.Roles.WordOf(edge.Role));
        json.Name("stretches").Begin('[');
        foreach (CurvePath stretch in edge.Stretches)
        {
            PathJson.Write(json, stretch);
        }

        json.End(']').Name("darts").Begin('[');
        foreach (Dart dart in edge.Darts)
        {
            json.Begin('{').Name("startLeg").Point(dart.StartLeg);
            json.Name("apex").Point(dart.Apex);
            json.Name("endLeg").Point(dart.EndLeg);
            json.Name("pressedToward").Text(JsonWords.Ways.WordOf(dart.PressedToward));
            json.Name("stitched").Number(dart.IsTuck ? dart.Shape.TuckMm : null);
            json.End('}');
        }

        json.End(']').End('}');
    }

    private static PanelEdge Edge(JsonValue value)
    {
        JsonObject said = value.Object("name", "role", "stretches", "darts");
        JsonValue[] paths = said["stretches"].List(1);
        JsonValue[] darts = said["darts"].List(paths.Length - 1, paths.Length - 1);
        CurvePath[] stretches = Array.ConvertAll(paths, path => PathJson.Read(path));
        var shapes = new DartShape[darts.Length];
        for (int i = 0; i < darts.Length; i++)
        {
            shapes[i] = Dart(darts[i], stretches[i].End, stretches[i + 1].Start);
        }

        var edge = new PanelEdge(said["name"].Name(EdgeName.Of), said["role"].Choice(JsonWords.Roles), stretches, shapes);

        // The stretches must run head to tail with the darts closed, or nothing could be walked or sewn.
        said["stretches"].Make(edge.Closed);
        return edge;
    }

    private static DartShape Dart(JsonValue value, Point2D seamBefore, Point2D seamAfter)
    {
        JsonObject said = value.Object("startLeg", "apex", "endLeg", "pressedToward", "stitched");
        Point2D apex = PathJson.Point(said["apex"]);
        Point2D startLeg = Near(said["startLeg"], seamBefore, JoinMm, "where the stretch before it ends");
        Point2D endLeg = Near(said["endLeg"], seamAfter, JoinMm, "where the stretch after it begins");
        double length = apex.DistanceMm(startLeg);
        double other = apex.DistanceMm(endLeg);
        if (!(length > 0 && other > 0 && Math.Abs(length - other) <= LegsMm))
        {
            throw value.Fault(
                DiagnosticCode.JsonValueWrong,
                "a dart with legs of " + JsonValue.Number(length) + " and " + JsonValue.Number(other) + " mm",
                "legs with a length, the same to " + JsonValue.Number(LegsMm) + " mm");
        }

        double tuck = said["stitched"].IsNull ? 0 : said["stitched"].Number(0, length);
        if (tuck == 0 && !said["stitched"].IsNull)
        {
            throw said["stitched"].Fault(DiagnosticCode.JsonValueWrong, said["stitched"].Described(), "more than 0, up to " + JsonValue.Number(length) + ", or null for a dart that is stitched to its apex");
        }

        return new DartShape(apex, startLeg, endLeg, said["pressedToward"].Choice(JsonWords.Ways), tuck);
    }

    private static InsideDart InsideDart(JsonValue value)
    {
        JsonObject said = value.Object("firstApex", "secondApex", "left", "right");
        var dart = new InsideDart(PathJson.Point(said["firstApex"]), PathJson.Point(said["secondApex"]), PathJson.Point(said["left"]), PathJson.Point(said["right"]));
        if (dart.FirstApex == dart.SecondApex)
        {
            throw value.Fault(DiagnosticCode.JsonValueWrong, "a dart whose apexes are one point", "two apexes apart from each other");
        }

        return (dart.SecondApex - dart.FirstApex).CrossMm2(dart.Left - dart.Right) >= 0
            ? dart
            : throw value.Fault(DiagnosticCode.JsonValueWrong, "a dart whose left lies to its right", "left and right as seen from the first apex to the second");
    }

    private static Notch Notch(JsonValue value, Panel panel)
    {
        JsonObject said = value.Object("edge", "distanceFromStart", "position", "count");
        EdgeName name = said["edge"].Name(EdgeName.Of);
        PanelEdge edge = said["edge"].Make(() => panel.FindEdge(name));
        double fromStart = said["distanceFromStart"].Number(-JoinMm, edge.SewnLengthMm() + JoinMm);
        Point2D position = Near(said["position"], edge.PointAtSewnMm(fromStart), OnSeamMm, "on the edge at its distance");
        return new Notch(name, position, fromStart, said["count"].Whole(1, 3));
    }

    private static Landmark Landmark(JsonValue value)
    {
        JsonObject said = value.Object("name", "kind", "position");
        return new Landmark(said["name"].Name(LandmarkName.Of), PathJson.Point(said["position"]), said["kind"].Choice(JsonWords.LandmarkKinds));
    }

    private static Point2D Near(JsonValue value, Point2D place, double allowedMm, string what)
    {
        Point2D point = PathJson.Point(value);
        return point.DistanceMm(place) <= allowedMm
            ? point
            : throw value.Fault(DiagnosticCode.JsonValueWrong, $"the point {point}", $"{place} to {JsonValue.Number(allowedMm)} mm, {what}");
    }
}
