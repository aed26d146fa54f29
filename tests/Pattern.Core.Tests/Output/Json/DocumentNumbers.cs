using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;

namespace Pattern.Core.Tests.Output;

/// <summary>All coordinates of a document in order, from the model by its public readings, and from its file by the platform's JSON reader.</summary>
internal static class DocumentNumbers
{
    internal static IEnumerable<double> OfModel(PatternDocument document)
        => Of(document.Block).Concat(document.Pieces.Pieces.SelectMany(piece => Of(piece.Half).Concat(Drawn(piece))));

    internal static IEnumerable<double> OfFile(JsonElement root)
    {
        IEnumerable<double> panels = root.GetProperty("panels").EnumerateArray().SelectMany(PanelIn);
        IEnumerable<double> marks = Each(root, "landmarks", mark => In(mark, "drafted", "trued"));
        IEnumerable<double> lines = Each(root, "lines", line => In(line, "drafted", "trued"));
        return marks.Concat(lines).Concat(panels).Concat(root.GetProperty("pieces").EnumerateArray().SelectMany(piece => PanelIn(piece.GetProperty("panel")).Concat(DrawnIn(piece.GetProperty("drawn")))));
    }

    internal static void AssertSameBits(IEnumerable<double> expected, IEnumerable<double> actual)
        => Assert.Equal(expected.Select(BitConverter.DoubleToInt64Bits), actual.Select(BitConverter.DoubleToInt64Bits));

    /// <summary>Points, lines and panels; a line drawn by hand is an edge as trued, and no line.</summary>
    internal static IEnumerable<double> Of(Block block)
    {
        BlockLine[] left = [.. block.Trued.Lines];
        int next = 0;
        return
        [
            .. block.Drafted.Landmarks.Zip(block.Trued.Landmarks, (drafted, trued) => Of(drafted.Position).Concat(Of(trued.Position))).SelectMany(pair => pair),
            .. block.Drafted.Lines.SelectMany(line => line.Role == ConstructionRole.HandDrawn ? Of(line.Path) : Of(line.Path).Concat(Of(left[next++].Path))),
            .. block.Panels.SelectMany(Of),
        ];
    }

    internal static IEnumerable<double> Of(CurvePath path) => path.Segments.SelectMany(segment => segment.Kind switch
    {
        PathSegmentKind.Line => Of(segment.AsLine()),
        PathSegmentKind.Arc => [.. Of(segment.AsArc().Centre), segment.AsArc().Radius.Millimeters, segment.AsArc().StartAngle.Radians, segment.AsArc().Sweep.Radians],
        _ => [.. Of(segment.AsCubic().Start), .. Of(segment.AsCubic().StartControl), .. Of(segment.AsCubic().EndControl), .. Of(segment.AsCubic().End)],
    });

    private static IEnumerable<double> Of(Point2D point) => [point.X.Millimeters, point.Y.Millimeters];

    private static IEnumerable<double> Of(LineSegment line) => [.. Of(line.Start), .. Of(line.End)];

    private static IEnumerable<double> Of(Panel panel) =>
    [
        .. panel.Edges.SelectMany(edge => edge.Stretches.SelectMany(Of).Concat(edge.Darts.SelectMany(dart => Of(dart.StartLeg).Concat(Of(dart.Apex)).Concat(Of(dart.EndLeg))))),
        .. panel.InsideDarts.SelectMany(dart => Of(dart.FirstApex).Concat(Of(dart.SecondApex)).Concat(Of(dart.Left)).Concat(Of(dart.Right))),
        .. Of(panel.Grainline),
        .. panel.Notches.SelectMany(notch => Of(notch.Position).Prepend(notch.DistanceFromStart.Millimeters)),
        .. panel.Landmarks.SelectMany(landmark => Of(landmark.Position)),
    ];

    private static IEnumerable<double> Drawn(PatternPiece piece) =>
    [
        .. Of(piece.CutLine),
        .. Of(piece.SeamLine),
        .. piece.FoldLine is { } fold ? Of(fold) : [],
        .. piece.Notches.SelectMany(notch => Of(notch.OnSeam).Concat(notch.Cuts.SelectMany(Of))),
        .. piece.Darts.SelectMany(dart => dart.Legs.SelectMany(Of).Concat(Of(dart.FoldLine)).Concat(dart.DrillHoles.SelectMany(Of))),
        .. piece.InternalLines.SelectMany(line => Of(line.Path)),
    ];

    private static IEnumerable<double> PanelIn(JsonElement panel) =>
    [
        .. Each(panel, "edges", edge => Each(edge, "stretches", Numbers).Concat(Each(edge, "darts", dart => In(dart, "startLeg", "apex", "endLeg")))),
        .. Each(panel, "insideDarts", dart => In(dart, "firstApex", "secondApex", "left", "right")),
        .. In(panel, "grainline"),
        .. Each(panel, "notches", notch => In(notch, "distanceFromStart", "position")),
        .. Each(panel, "landmarks", landmark => In(landmark, "position")),
    ];

    private static IEnumerable<double> DrawnIn(JsonElement drawn) =>
    [
        .. In(drawn, "cutLine", "seamLine", "foldLine"),
        .. Each(drawn, "notches", notch => In(notch, "onSeam", "cuts")),
        .. Each(drawn, "darts", dart => In(dart, "legs", "foldLine", "drillHoles")),
        .. Each(drawn, "internalLines", line => In(line, "path")),
    ];

    private static IEnumerable<double> Each(JsonElement parent, string name, Func<JsonElement, IEnumerable<double>> numbers)
        => parent.GetProperty(name).EnumerateArray().SelectMany(numbers);

    private static IEnumerable<double> In(JsonElement parent, params string[] names) => names.SelectMany(name => Numbers(parent.GetProperty(name)));

    private static IEnumerable<double> Numbers(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Number => [element.GetDouble()],
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Numbers),
        JsonValueKind.Object => element.EnumerateObject().SelectMany(property => Numbers(property.Value)),
        _ => [],
    };
}
