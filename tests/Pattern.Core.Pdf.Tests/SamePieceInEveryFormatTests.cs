using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using System.Xml.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Output;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Pdf.Tests;

/// <summary>Each edge of each piece, measured in the SVG, the PDF, the DXF and the JSON file by readers that know nothing of this library.</summary>
/// <remarks>The model says only where an edge begins and ends; every length comes from a file.</remarks>
public class SamePieceInEveryFormatTests
{
    private const double ToleranceMm = 0.05;
    private const int Chords = 512;

    public static TheoryData<string, string, string> Bodies => new()
    {
        { "29 1/2", "39 3/4", "26" },
        { "44", "42", "24" },
        { "33", "52", "36" },
    };

    [Theory]
    [MemberData(nameof(Bodies))]
    public void EveryEdge_InEveryFormat_IsEquallyLong(string waist, string hip, string length)
    {
        SkirtBlock block = SkirtBlock
            .For(BodyMeasurements.In(LengthUnit.Inch).With(BodyMeasurement.WaistGirth, waist).With(BodyMeasurement.HipGirth, hip))
            .WithLength(Tape.Inches(length)).Fitted(SkirtFit.Usual).Draft();
        PieceSet pieces = SkirtPattern.From(block, new SkirtPatternOptions { Lining = LiningChoice.Loose });
        Drawing drawing = pieces.Draw();
        XElement[] svg = [.. SvgFile.Paths(drawing.ToSvg())];
        ReadPage pdf = Assert.Single(ReadPage.All(drawing.ToPdf()));
        DxfFile dxf = DxfFile.Read(pieces.Pieces.ToDxf());
        using JsonDocument json = JsonDocument.Parse(PatternDocument.Of(block, pieces).ToJson());
        int compared = 0;
        for (int p = 0; p < pieces.Pieces.Count; p++)
        {
            PatternPiece piece = pieces.Pieces[p];
            JsonElement saved = json.RootElement.GetProperty("pieces")[p];
            List<DxfFile.Entity> outlined = dxf.Blocks.First(named => named.Key.StartsWith(piece.Name.Text.Replace(' ', '-'), StringComparison.Ordinal)
                && named.Value.Any(entity => entity.Type == "TEXT" && entity.Text(1) == "Piece Name: " + piece.Name.Text)).Value;
            for (int e = 0; e < piece.Edges.Count; e++)
            {
                PieceEdge edge = piece.Edges[e];
                string place = piece.Name + ", " + edge.Name;
                AssertSame(
                    place + ", cut line",
                    InSvg(svg, piece, "data-cut", edge),
                    InPdf(pdf, drawing, piece, MarkPart.Cut, edge),
                    InDxf(outlined, "1", [(edge.CutLine.Start, edge.CutLine.End)]),
                    InJson(saved.GetProperty("drawn").GetProperty("cutLine"), edge.CutLine));
                compared++;
                if (edge.IsOnFold)
                {
                    continue;
                }

                PanelEdge sewn = piece.Panel.FindEdge(edge.Name);
                AssertSame(
                    place + ", seam line",
                    InSvg(svg, piece, "data-edge", edge),
                    InPdf(pdf, drawing, piece, MarkPart.Seam, edge),
                    InDxf(outlined, "14", [.. sewn.Stretches.Select(stretch => (stretch.Start, stretch.End))]),
                    saved.GetProperty("panel").GetProperty("edges")[e].GetProperty("stretches").EnumerateArray().Sum(stretch => stretch.EnumerateArray().Sum(Measured)));
                compared++;
            }
        }

        // Five pieces of four edges, two of which lie on a fold: a cut line each, a seam line each but for the folds.
        Assert.Equal((5 * 4) + (5 * 4) - 2, compared);
    }

    private static void AssertSame(string place, double svg, double pdf, double dxf, double json)
    {
        double[] all = [svg, pdf, dxf, json];
        Assert.True(all.Min() > 1, place);
        Assert.True(all.Max() - all.Min() <= ToleranceMm, FormattableString.Invariant($"{place}: SVG {svg:0.0000}, PDF {pdf:0.0000}, DXF {dxf:0.0000}, JSON {json:0.0000} mm"));
    }

    private static double InSvg(XElement[] paths, PatternPiece piece, string attribute, PieceEdge edge)
        => paths.Where(path => SvgFile.Value(path, "data-panel") == piece.Name.Text && SvgFile.Value(path, attribute) == edge.Name.Text).Sum(SvgFile.Measured);

    // A line of the page is known by its ends; a page has no names.
    private static double InPdf(ReadPage page, Drawing drawing, PatternPiece piece, MarkPart part, PieceEdge edge) => drawing.Layers
        .SelectMany(layer => layer.Marks).OfType<PathMark>()
        .Where(mark => mark.Facts is { } facts && facts.Panel == piece.Name && facts.Part == part && facts.Edge == edge.Name)
        .Sum(mark =>
        {
            (double X, double Y) from = OnPage(mark.Path.Start, drawing);
            (double X, double Y) to = OnPage(mark.Path.End, drawing);
            return page.Lines.First(line => DxfFile.Entity.Distance(line.Segments[0][0], from) < 0.01 && DxfFile.Entity.Distance(line.Segments[^1][^1], to) < 0.01)
                .Segments.Sum(segment => Measured([.. segment]));
        });

    private static (double X, double Y) OnPage(Point2D point, Drawing drawing)
        => ((point.X - drawing.Bounds.Left).Millimeters, (point.Y - drawing.Bounds.Bottom).Millimeters);

    private static double InDxf(List<DxfFile.Entity> block, string layer, (Point2D From, Point2D To)[] stretches)
    {
        DxfFile.Entity outline = block.Single(entity => entity.Type == "POLYLINE" && entity.Layer == layer);
        double length = 0;
        foreach ((Point2D from, Point2D to) in stretches)
        {
            int end = Nearest(outline, to);
            for (int i = Nearest(outline, from); i != end; i = (i + 1) % outline.Vertices.Count)
            {
                length += DxfFile.Entity.Distance(outline.Vertices[i], outline.Vertices[(i + 1) % outline.Vertices.Count]);
            }
        }

        return length;
    }

    private static int Nearest(DxfFile.Entity outline, Point2D point)
    {
        (double X, double Y) at = (point.X.Millimeters, point.Y.Millimeters);
        int nearest = Enumerable.Range(0, outline.Vertices.Count).MinBy(i => DxfFile.Entity.Distance(outline.Vertices[i], at));
        Assert.True(DxfFile.Entity.Distance(outline.Vertices[nearest], at) < 0.001);
        return nearest;
    }

    private static double InJson(JsonElement outline, CurvePath edge)
    {
        JsonElement[] segments = [.. outline.EnumerateArray()];
        int first = Array.FindIndex(segments, segment => IsAt(Corners(segment)[0], edge.Start));
        int last = Array.FindIndex(segments, segment => IsAt(Corners(segment)[^1], edge.End));
        double length = 0;
        for (int i = first; ; i = (i + 1) % segments.Length)
        {
            length += Measured(segments[i]);
            if (i == last)
            {
                return length;
            }
        }
    }

    private static bool IsAt((double X, double Y) read, Point2D point)
        => Math.Abs(read.X - point.X.Millimeters) < 1e-6 && Math.Abs(read.Y - point.Y.Millimeters) < 1e-6;

    private static double Measured(JsonElement segment) => Measured(Corners(segment));

    private static (double X, double Y)[] Corners(JsonElement segment)
    {
        JsonProperty kind = segment.EnumerateObject().Single();
        double[] numbers = [.. kind.Value.EnumerateArray().Select(number => number.GetDouble())];
        if (kind.Name != "arc")
        {
            return [.. Enumerable.Range(0, numbers.Length / 2).Select(i => (numbers[2 * i], numbers[(2 * i) + 1]))];
        }

        // Centre, radius, start and sweep, as docs/json.md says.
        return [.. Enumerable.Range(0, Chords + 1).Select(i => numbers[3] + (numbers[4] * i / Chords)).Select(angle => (numbers[0] + (numbers[2] * Math.Cos(angle)), numbers[1] + (numbers[2] * Math.Sin(angle))))];
    }

    // A cubic by its four control points, anything else by its corners.
    private static double Measured((double X, double Y)[] points)
    {
        (double X, double Y)[] corners = points.Length == 4 ? [.. Enumerable.Range(0, Chords + 1).Select(i => OnCubic(points, (double)i / Chords))] : points;
        return corners.Zip(corners.Skip(1), DxfFile.Entity.Distance).Sum();
    }

    private static (double X, double Y) OnCubic((double X, double Y)[] p, double t)
    {
        double u = 1 - t;
        double[] weights = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
        return (weights.Zip(p, (weight, point) => weight * point.X).Sum(), weights.Zip(p, (weight, point) => weight * point.Y).Sum());
    }
}
