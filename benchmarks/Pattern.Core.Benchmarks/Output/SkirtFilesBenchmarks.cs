using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using BenchmarkDotNet.Attributes;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Patterns;
using Pattern.Core.Pdf;
using Pattern.Core.Pieces;
using SkiaSharp;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Benchmarks.Output;

/// <summary>Every file of one large skirt, in one run: its block on 24 sheets of A4 and a map, on one sheet and as SVG; its pieces as a drawing, SVG, DXF and JSON.</summary>
/// <remarks>The block is drafted, and the lines of the pieces are worked out, beforehand: only the writing counts.</remarks>
[MemoryDiagnoser]
public class SkirtFilesBenchmarks
{
    private const int Sheets = 24;

    private static readonly TiledLayout Tiled = SheetLayout.TiledOn(PaperSize.A4);

    private Drawing _drawing = null!;
    private PieceSet _pieces = null!;
    private Drawing _sheet = null!;
    private PatternDocument _document = null!;

    [GlobalSetup]
    public void Setup()
    {
        SkirtBlock block = SkirtBlock.For(BodyMeasurements.In(LengthUnit.Inch)
            .Named("Rosalind")
            .With(BodyMeasurement.WaistGirth, "52")
            .With(BodyMeasurement.HipGirth, "60")).WithLength(Tape.Inches("36 1/2")).Draft();
        _drawing = block.Draw();
        _pieces = SkirtPattern.From(block, new SkirtPatternOptions { Label = PieceLabel.For("Act 2 skirt").ForWhom("Rosalind") });
        _sheet = _pieces.Draw();
        _document = PatternDocument.Of(block, _pieces);
        int count = Tiled.Tile(_drawing).SheetCount;
        if (count != Sheets)
        {
            throw new InvalidOperationException($"The drawing takes {count} sheets.");
        }

        Console.WriteLine(
            $"// Marks: block {_drawing.Layers.Sum(layer => layer.Marks.Count)}, pieces {_sheet.Layers.Sum(layer => layer.Marks.Count)}. Bytes: tiled {TiledPdf().Length}, one sheet {SinglePdf().Length}, "
            + $"SVG {Svg().Length}, Skia {SkiaTiled().Length}, pieces as SVG {PiecesSvg().Length}, DXF {PiecesDxf().Length}, JSON {Json().Length}");
    }

    [Benchmark(Baseline = true)]
    public byte[] TiledPdf() => _drawing.ToPdf(Tiled);

    [Benchmark]
    public byte[] SinglePdf() => _drawing.ToPdf();

    /// <summary>Parting the drawing into sheets and making their marks, before any format.</summary>
    [Benchmark]
    public IReadOnlyList<PrintSheet> ArrangeOnly() => Tiled.Arrange(_drawing);

    [Benchmark]
    public string Svg() => _drawing.ToSvg();

    /// <summary>Laying out the sheet of pieces, and finding room for its words.</summary>
    [Benchmark]
    public Drawing DrawPieces() => _pieces.Draw();

    [Benchmark]
    public string PiecesSvg() => _sheet.ToSvg();

    [Benchmark]
    public string PiecesDxf() => _pieces.Pieces.ToDxf();

    [Benchmark]
    public string DrawingDxf() => _drawing.ToDxf();

    [Benchmark]
    public string Json() => _document.ToJson();

    /// <summary>A peer that does less: the lines and words of the drawing on the same sheets, without layers, marks or map, in the font of the system.</summary>
    [Benchmark]
    public byte[] SkiaTiled()
    {
        const float pointsPerMm = 72 / 25.4f;
        using var stream = new MemoryStream();
        using (SKDocument document = SKDocument.CreatePdf(stream))
        {
            foreach (PrintSheet sheet in Tiled.Arrange(_drawing).Where(sheet => sheet.Placement is not null))
            {
                float height = (float)sheet.Height.Millimeters;
                using SKCanvas canvas = document.BeginPage((float)sheet.Width.Millimeters * pointsPerMm, height * pointsPerMm);
                canvas.Scale(pointsPerMm);
                canvas.ClipRect(new SKRect(
                    (float)sheet.Window.Left.Millimeters, height - (float)sheet.Window.Top.Millimeters, (float)sheet.Window.Right.Millimeters, height - (float)sheet.Window.Bottom.Millimeters));
                foreach (DrawingMark mark in _drawing.Layers.SelectMany(layer => layer.Marks))
                {
                    Paint(canvas, mark, sheet.Placement!.Value, height);
                }

                document.EndPage();
            }

            document.Close();
        }

        return stream.ToArray();
    }

    private static void Paint(SKCanvas canvas, DrawingMark mark, Transform2D placement, float height)
    {
        switch (mark)
        {
            case PathMark path:
                var sink = new SkiaSink(height);
                path.Path.Transformed(placement).WriteTo(sink, LengthUnit.Millimeter);
                using (SKPath outline = sink.Path.Detach())
                using (var paint = new SKPaint { Style = SKPaintStyle.Stroke, StrokeWidth = (float)path.Role.Weight.Millimeters })
                {
                    canvas.DrawPath(outline, paint);
                }

                sink.Path.Dispose();
                break;
            case TextMark text:
                Point2D anchor = placement.Apply(text.Anchor);
                using (var font = new SKFont(SKTypeface.Default, (float)text.Size.Millimeters))
                using (var paint = new SKPaint())
                {
                    canvas.DrawText(text.Text, (float)anchor.X.Millimeters, height - (float)anchor.Y.Millimeters, SKTextAlign.Left, font, paint);
                }

                break;
        }
    }

    private sealed class SkiaSink(float height) : IPathSink
    {
        internal SKPathBuilder Path { get; } = new();

        public void MoveTo(double x, double y) => Path.MoveTo((float)x, height - (float)y);

        public void LineTo(double x, double y) => Path.LineTo((float)x, height - (float)y);

        public void CubicTo(double startControlX, double startControlY, double endControlX, double endControlY, double x, double y)
            => Path.CubicTo((float)startControlX, height - (float)startControlY, (float)endControlX, height - (float)endControlY, (float)x, height - (float)y);

        public void ArcTo(double centreX, double centreY, double radius, double startAngle, double sweep, double x, double y) => throw new NotSupportedException("No arcs were asked for.");

        public void Close() => Path.Close();
    }
}
