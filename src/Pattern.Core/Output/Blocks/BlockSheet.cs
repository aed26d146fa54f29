using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>Lays out the sheet of one block.</summary>
internal sealed class BlockSheet
{
    private const double MarginMm = 14;
    private const double AboveMm = 24;
    private const double BelowMm = 20;

    private readonly Block _block;
    private readonly CheckReport _report;
    private readonly DrawingOptions _options;
    private readonly TapeFigures _figures;
    private readonly BlockLayout _layout;
    private readonly BlockMarks _lines;
    private readonly bool _isNarrow;

    /// <summary>The report comes apart from the block so that a test can draw a failed one.</summary>
    internal BlockSheet(Block block, CheckReport report, DrawingOptions options, bool isNarrow = false)
    {
        _isNarrow = isNarrow;
        _block = block;
        _report = report;
        _options = options;
        _figures = new TapeFigures(options.Tape ?? TapeStep.For(block.Body.Unit), TapeStyle.Typographic);
        _layout = new BlockLayout(block);
        _lines = new BlockMarks(block, _layout, options.Alternatives.Select(block.FindAlternative));
    }

    private IEnumerable<List<DrawingMark>> DrawnLines =>
    [
        _lines.Construction, _lines.Levels, _lines.Alternatives, _lines.Grainlines, _lines.Darts, _lines.Seams, _lines.Notches, _lines.Landmarks,
    ];

    internal Drawing Draw()
    {
        BoundingBox content = Content();
        double left = content.LeftMm - (_isNarrow ? 0 : BlockLabels.Room(_layout, Direction.Left)) - MarginMm;
        double right = content.RightMm + (_isNarrow ? 0 : BlockLabels.Room(_layout, Direction.Right)) + MarginMm;
        double missing = TitleBlock.LeastWidthMm + (2 * MarginMm) - (right - left);
        if (missing > 0)
        {
            left -= missing / 2;
            right += missing / 2;
        }

        // Names first, since the title block says which of them found no room. They stay between the upper edge and the block.
        double top = content.TopMm + AboveMm;
        var placer = new LabelPlacer(new BoundingBox(
            _isNarrow ? content.LeftMm : left + (MarginMm / 2),
            content.BottomMm - (BelowMm / 2),
            _isNarrow ? content.RightMm : right - (MarginMm / 2),
            top + (_report.Passed ? MarginMm / 2 : 0)));
        foreach (List<DrawingMark> marks in DrawnLines)
        {
            marks.ForEach(placer.Avoid);
        }

        var names = new List<DrawingMark>();
        var labels = new BlockLabels(_layout, _figures, placer, _isNarrow);
        labels.Place(_lines, names);

        var titles = new List<DrawingMark>();
        var squares = new List<DrawingMark>();
        var warnings = new List<DrawingMark>();
        double sheetTop = top + MarginMm;
        BlockNotes notes = new(_block, _report, _options, _figures, [.. _lines.LeftOut, .. labels.LeftOut()]);
        TitleBlock foot = notes.TitleBlock();
        double bottom = foot.Set(left + MarginMm, right - MarginMm, content.BottomMm - BelowMm, titles, squares);
        if (!_report.Passed)
        {
            sheetTop = WarningMarks.Banner(_report, left + MarginMm, right - MarginMm, top, titles) + MarginMm;
        }

        var sheet = new BoundingBox(left, bottom - MarginMm, right, sheetTop);
        if (!_report.Passed)
        {
            WarningMarks.Frame(sheet, warnings);
            foreach (Panel panel in _layout.Panels)
            {
                WarningMarks.Across(panel.SeamOutline().Bounds, warnings);
            }
        }

        var layers = new List<DrawingLayer>();
        Add(layers, LayerName.Warning, warnings);
        Add(layers, LayerName.Construction, _lines.Construction);
        Add(layers, LayerName.Levels, _lines.Levels);
        Add(layers, LayerName.Alternatives, _lines.Alternatives);
        Add(layers, LayerName.Grainlines, _lines.Grainlines);
        Add(layers, LayerName.Darts, _lines.Darts);
        Add(layers, LayerName.SeamLines, _lines.Seams);
        Add(layers, LayerName.Notches, _lines.Notches);
        Add(layers, LayerName.Landmarks, _lines.Landmarks);
        Add(layers, LayerName.Names, names);
        Add(layers, LayerName.TestSquares, squares);
        Add(layers, LayerName.TitleBlock, titles);

        // What must not be cut says so wherever it is looked at.
        return new Drawing(notes.Title, notes.Description(), sheet, layers.ToArray())
        {
            Foot = _report.Passed ? foot : null,
            Narrower = _isNarrow || !_report.Passed ? null : new NarrowBlock(_block, _report, _options),
        };
    }

    private BoundingBox Content()
    {
        BoundingBox box = _layout.Panels[0].SeamOutline().Bounds;
        foreach (List<DrawingMark> marks in DrawnLines)
        {
            foreach (DrawingMark mark in marks)
            {
                box = box.Union(mark.Bounds);
            }
        }

        return box;
    }

    private static void Add(List<DrawingLayer> layers, LayerName name, List<DrawingMark> marks)
    {
        if (marks.Count > 0)
        {
            layers.Add(new DrawingLayer(name, marks.ToArray()));
        }
    }
}
