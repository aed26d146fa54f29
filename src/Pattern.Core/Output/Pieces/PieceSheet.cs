using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>Lays out a sheet of pieces.</summary>
internal sealed class PieceSheet : IPieceLayout
{
    private const double MarginMm = 14;
    private const double BetweenMm = 20;
    private const double BelowMm = 16;

    private readonly PieceSet _pieces;
    private readonly CheckReport _report;
    private readonly PieceDrawingOptions _options;

    /// <summary>The report comes apart from the pieces so that a test can draw a failed one.</summary>
    internal PieceSheet(PieceSet pieces, CheckReport report, PieceDrawingOptions options)
    {
        _pieces = pieces;
        _report = report;
        _options = options;
    }

    /// <inheritdoc/>
    public double WidthMm => _options.SheetWidthMm - (2 * MarginMm);

    internal Drawing Draw() => Draw(WidthMm, []);

    /// <inheritdoc/>
    public Drawing Outline(double widthMm)
    {
        List<DrawnPiece> drawn = SideBySide(widthMm, [], out BoundingBox content);
        DrawingMark[] marks = [.. drawn.SelectMany(piece => piece.All).SelectMany(of => of)];
        return new Drawing("pieces", "pieces", content, [new DrawingLayer(LayerName.CutLines, marks)]);
    }

    /// <inheritdoc/>
    public Drawing Draw(double widthMm, IReadOnlyList<BoundingBox> sheets)
    {
        List<DrawnPiece> drawn = SideBySide(widthMm, sheets, out BoundingBox content);
        double left = content.LeftMm;
        double right = Math.Max(content.RightMm, left + TitleBlock.LeastWidthMm);

        // Words first, since the title block says whether all of them found room. They stay between the upper edge and the block.
        var placer = new LabelPlacer(new BoundingBox(left, content.BottomMm - (BelowMm / 2), right, content.TopMm));
        foreach (List<DrawingMark> marks in drawn.SelectMany(piece => piece.All))
        {
            marks.ForEach(placer.Avoid);
        }

        var names = new List<DrawingMark>();
        var pieceNames = new PieceNames(new TapeFigures(_options.Tape ?? UsualTape(), TapeStyle.Typographic), placer);
        drawn.ForEach(piece => pieceNames.Place(piece, names));

        var titles = new List<DrawingMark>();
        var squares = new List<DrawingMark>();
        var warnings = new List<DrawingMark>();
        var notes = new PieceNotes(_pieces, _report, pieceNames.SilentEdges);
        TitleBlock foot = notes.TitleBlock();
        double bottom = foot.Set(left, right, content.BottomMm - BelowMm, titles, squares);
        double top = _report.Passed ? content.TopMm : WarningMarks.Banner(_report, left, right, content.TopMm + BelowMm, titles);
        var sheet = new BoundingBox(left - MarginMm, bottom - MarginMm, right + MarginMm, top + MarginMm);
        if (!_report.Passed)
        {
            WarningMarks.Frame(sheet, warnings);
            drawn.ForEach(piece => WarningMarks.Across(piece.Bounds, warnings));
        }

        var layers = new List<DrawingLayer>();
        Add(layers, LayerName.Warning, warnings);
        AddAll(layers, LayerName.InternalLines, drawn, piece => piece.InternalLines);
        AddAll(layers, LayerName.Grainlines, drawn, piece => piece.Grainlines);
        AddAll(layers, LayerName.Folds, drawn, piece => piece.Folds);
        AddAll(layers, LayerName.Darts, drawn, piece => piece.Darts);
        AddAll(layers, LayerName.SeamLines, drawn, piece => piece.SeamLines);
        AddAll(layers, LayerName.CutLines, drawn, piece => piece.CutLines);
        AddAll(layers, LayerName.DrillHoles, drawn, piece => piece.DrillHoles);
        AddAll(layers, LayerName.Notches, drawn, piece => piece.Notches);
        AddAll(layers, LayerName.Labels, drawn, piece => piece.Labels);
        Add(layers, LayerName.Names, names);
        Add(layers, LayerName.TestSquares, squares);
        Add(layers, LayerName.TitleBlock, titles);

        // What must not be cut is not made handy to print.
        return new Drawing(notes.Title, notes.Description(), sheet, [.. layers]) { Foot = _report.Passed ? foot : null, Pieces = _report.Passed ? this : null };
    }

    // Where no piece remembers a tape: who chose allowances of 5/8 in works with a tape in inches.
    private TapeStep UsualTape() => _pieces.Pieces.FirstOrDefault(piece => piece.Tape is not null)?.Tape ?? TapeOfAllowances();

    private TapeStep TapeOfAllowances() => _pieces.Pieces.SelectMany(piece => piece.Edges).All(edge => Tape.IsOnMark(edge.AllowanceMm, TapeStep.SixtyFourth))
        ? TapeStep.Eighth
        : TapeStep.Millimeter;

    // In the order of the set, each as far up as there is room for it, and there as far left.
    private List<DrawnPiece> SideBySide(double widthMm, IReadOnlyList<BoundingBox> sheets, out BoundingBox content)
    {
        var room = new RoomBelow(widthMm, BetweenMm);
        var drawn = new List<DrawnPiece>(_pieces.Pieces.Count);
        content = default;
        foreach (PatternPiece piece in _pieces.Pieces)
        {
            (double width, double height) = DrawnPiece.SizeMm(piece);
            Point2D upperLeft = room.Take(width, height);
            var placed = new DrawnPiece(piece, upperLeft.XMm, upperLeft.YMm, sheets);
            drawn.Add(placed);
            content = content.Union(placed.Bounds);
        }

        return drawn;
    }

    private static void AddAll(List<DrawingLayer> layers, LayerName name, List<DrawnPiece> pieces, Func<DrawnPiece, List<DrawingMark>> marksOf)
    {
        var marks = new List<DrawingMark>();
        pieces.ForEach(piece => marks.AddRange(marksOf(piece)));
        Add(layers, name, marks);
    }

    private static void Add(List<DrawingLayer> layers, LayerName name, List<DrawingMark> marks)
    {
        if (marks.Count > 0)
        {
            layers.Add(new DrawingLayer(name, [.. marks]));
        }
    }
}
