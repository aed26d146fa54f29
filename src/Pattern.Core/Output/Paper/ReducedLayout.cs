using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>One sheet with the drawing at a small scale, to be stuck into an exercise book. Immutable.</summary>
/// <remarks>The one layout that scales, and the sheet says so: its scale, and that nothing is ever cut from it. A line of so much cloth shows whether the printer kept the scale.
/// What a cutter needs is left out: construction, title block and test squares. Lines get thinner, and names that find no room are left out.</remarks>
public sealed class ReducedLayout : SheetLayout
{
    private const double MarginMm = 10;
    private const double HeadMm = 5;
    private const double WarningMm = 4.2;
    private const double NoteMm = 3;
    private const double LeastNameMm = 2.2;
    private const double HeaderMm = 27;
    private const double BarTickMm = 2;

    private static readonly LayerName[] LeftOut = [LayerName.Warning, LayerName.Construction, LayerName.Alternatives, LayerName.TestSquares, LayerName.TitleBlock, LayerName.SheetMarks, LayerName.SheetMap];
    private static readonly LayerName[] Named = [LayerName.Names, LayerName.Labels];

    private readonly PaperSize _paper;
    private readonly Phrasebook _book;

    internal ReducedLayout(PaperSize paper, Reduction scale, Phrasebook book)
    {
        _paper = paper;
        Scale = scale;
        _book = book;
    }

    /// <summary>The paper.</summary>
    public PaperSize Paper => _paper;

    /// <summary>How small the print is.</summary>
    public Reduction Scale { get; }

    private int Parts => Scale switch { Reduction.Half => 2, Reduction.Quarter => 4, _ => 5 };

    /// <summary>Says scale and caution in another language.</summary>
    /// <param name="phrases">The language.</param>
    [Pure]
    public ReducedLayout WithPhrases(Phrasebook phrases) => new(_paper, Scale, Guard.NotNull(phrases, nameof(phrases)));

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">At this scale the drawing is larger than the paper, whichever way that lies.</exception>
    [Pure]
    public override IReadOnlyList<PrintSheet> Arrange(Drawing drawing)
    {
        Guard.NotNull(drawing, nameof(drawing));
        PathMark[] lines = [.. Kept(drawing).SelectMany(layer => layer.Marks).OfType<PathMark>()];
        BoundingBox box = lines.Length == 0 ? drawing.Bounds : lines.Select(line => line.Bounds).Aggregate((one, other) => one.Union(other));
        double widthMm = (box.RightMm - box.LeftMm) / Parts;
        double heightMm = (box.TopMm - box.BottomMm) / Parts;
        PaperSize paper = new[] { _paper, _paper.Turned() }.FirstOrDefault(one => widthMm <= one.WidthMm - (2 * MarginMm) && heightMm <= one.HeightMm - (2 * MarginMm) - HeaderMm)
            ?? throw new ArgumentException(
                MessageRegistry.Format(DiagnosticCode.ReducedTooLarge, "1:" + Parts, Length.FromMillimeters(widthMm), Length.FromMillimeters(heightMm + HeaderMm), _paper, Length.FromMillimeters(MarginMm)),
                nameof(drawing));

        var marks = new List<DrawingMark>();
        WriteHeader(drawing, paper, marks);
        var corner = new Point2D(box.LeftMm, box.TopMm);
        Transform2D small = Transform2D.Scaling(corner, Ratio.FromDecimalFractions(1.0 / Parts)).Then(Transform2D.Translation(new Point2D(MarginMm, paper.HeightMm - MarginMm - HeaderMm) - corner));
        PathMark[] shown = [.. lines.Select(line => new PathMark(line.Path.Transformed(small), RoleOf(line.Role)))];
        marks.AddRange(shown);
        var sheet = new BoundingBox(0, 0, paper.WidthMm, paper.HeightMm);
        WriteNames(drawing, small, sheet, shown, marks);
        Drawing drawn = Drawing.Of(drawing.Title, _book.Say("{title} at a scale of 1:{parts}, never to cut.", ("title", drawing.Title), ("parts", Text(Parts))), sheet, [DrawingLayer.Of(LayerName.Lesson, marks)]);
        return [new PrintSheet("1:" + Text(Parts), drawn, paper.WidthMm, paper.HeightMm, null, sheet)];
    }

    /// <summary>Scale and paper in words.</summary>
    public override string ToString() => "1:" + Text(Parts) + " on " + _paper.Name;

    private static IEnumerable<DrawingLayer> Kept(Drawing drawing) => drawing.Layers.Where(layer => Array.IndexOf(LeftOut, layer.Name) < 0);

    private void WriteHeader(Drawing drawing, PaperSize paper, List<DrawingMark> marks)
    {
        double topMm = paper.HeightMm - MarginMm;
        double roomMm = paper.WidthMm - (2 * MarginMm);
        string warning = Scale switch
        {
            Reduction.Half => _book.Say("Half scale, 1:2: never to cut."),
            Reduction.Quarter => _book.Say("Quarter scale, 1:4: never to cut."),
            _ => _book.Say("Fifth scale, 1:5: never to cut."),
        };
        if (drawing.TryFindLayer(LayerName.Warning, out _))
        {
            warning += " " + _book.Say("Its checks FAILED.");
        }

        Write(drawing.Title, HeadMm, TextWeight.Bold, topMm - HeadMm);
        Write(warning, WarningMm, TextWeight.Bold, topMm - HeadMm - (1.5 * WarningMm));

        // So much cloth is so long on this paper: a ruler shows whether the printer kept the scale.
        double barMm = topMm - HeadMm - (1.5 * WarningMm) - 7;
        double rightMm = Bar(MarginMm, 100, _book.Say("{length} of cloth", ("length", "10 cm")));
        Bar(rightMm, 4 * 25.4, _book.Say("{length} of cloth", ("length", "4 in")));

        void Write(string words, double sizeMm, TextWeight weight, double atMm)
            => marks.Add(new TextMark(LessonLineBreaks.Shortened(words, sizeMm, weight, roomMm), new Point2D(MarginMm, atMm), sizeMm, 0, TextAlignment.Start, weight, Ink.Strong));

        double Bar(double leftMm, double clothMm, string words)
        {
            double endMm = leftMm + (clothMm / Parts);
            marks.Add(Stroke(leftMm, barMm, endMm, barMm));
            marks.Add(Stroke(leftMm, barMm - BarTickMm, leftMm, barMm + BarTickMm));
            marks.Add(Stroke(endMm, barMm - BarTickMm, endMm, barMm + BarTickMm));
            marks.Add(new TextMark(words, new Point2D(endMm + 2, barMm - (0.35 * NoteMm)), NoteMm, 0, TextAlignment.Start, TextWeight.Regular, Ink.Strong));
            return endMm + 2 + TextMark.WidthOfMm(words, NoteMm, TextWeight.Regular) + 6;
        }
    }

    private static PathMark Stroke(double fromX, double fromY, double toX, double toY)
        => new(CurvePath.FromLine(new LineSegment(new Point2D(fromX, fromY), new Point2D(toX, toY))), LineRole.LessonDart);

    // The largest first: where two names are in each other's way, the lesser one stays away, and so does a name that would hide a line.
    private static void WriteNames(Drawing drawing, Transform2D small, BoundingBox sheet, PathMark[] lines, List<DrawingMark> marks)
    {
        Point2D[] drawn = [.. lines.SelectMany(line => Along(line.Path))];
        var placed = new List<BoundingBox>();
        foreach (TextMark name in drawing.Layers.Where(layer => Array.IndexOf(Named, layer.Name) >= 0).SelectMany(layer => layer.Marks).OfType<TextMark>().OrderByDescending(mark => mark.SizeMm))
        {
            double scale = small.Apply(new Vector2D(1, 0)).LengthMm;
            var shrunk = new TextMark(name.Text, small.Apply(name.Anchor), Math.Max(LeastNameMm, scale * name.SizeMm), name.AngleRad, name.Alignment, name.Weight, Ink.Strong);
            BoundingBox box = shrunk.Bounds;
            bool isInside = box.LeftMm >= sheet.LeftMm + (MarginMm / 2) && box.RightMm <= sheet.RightMm - (MarginMm / 2) && box.BottomMm >= sheet.BottomMm + (MarginMm / 2);
            if (isInside && !Array.Exists(drawn, box.Contains) && !placed.Exists(other => box.LeftMm < other.RightMm && other.LeftMm < box.RightMm && box.BottomMm < other.TopMm && other.BottomMm < box.TopMm))
            {
                placed.Add(box);
                marks.Add(shrunk);
            }
        }
    }

    // Nearer to each other than a name is high.
    private static IEnumerable<Point2D> Along(CurvePath path)
    {
        int steps = (int)Math.Min(1000, Math.Ceiling(path.LengthMm));
        for (int i = 0; i <= steps; i++)
        {
            yield return path.PointAtMm(path.LengthMm * i / Math.Max(1, steps));
        }
    }

    private static LineRole RoleOf(LineRole role)
        => role == LineRole.Seam || role == LineRole.Cut ? LineRole.LessonSeam
        : role == LineRole.Stitching || role == LineRole.Level || role == LineRole.Fold || role == LineRole.Placement ? LineRole.LessonLevel
        : role == LineRole.Leader || role == LineRole.Frame ? LineRole.Frame
        : LineRole.LessonDart;

    private static string Text(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
