using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>What is printed on the sheets of a tiling so that they can be joined: where to cut, where to lay the cut edge, and arrows whose tips then meet.</summary>
/// <remarks>Everything is set out on the drawing first and moved onto the sheet last, so that the marks of two neighbours are the same points.</remarks>
internal sealed class JoinMarks
{
    private const double ArrowMm = 14;
    private const double NumberMm = 4.6;
    private const double NumberGapMm = 1.2;

    // From the middle of a figure to the end of the box that its type takes.
    private const double NumberBoxEms = 0.65;
    private const double LargestNameMm = 44;
    private const double FootMm = 2.9;
    private const double FootInsetMm = 3;

    // Between the two arrows, and off the middle where the name of the sheet is.
    private const double ScissorsPlace = 0.6;

    // Two arrows on each joint: one leaves the sheets free to turn. Each slides along the joint until it and its number stand clear of the drawing.
    private static readonly double[][] ArrowPlaces =
    [
        [0.25, 0.22, 0.28, 0.19, 0.31, 0.16, 0.34, 0.13, 0.37, 0.1, 0.4, 0.43, 0.46, 0.5, 0.54, 0.58, 0.62],
        [0.75, 0.78, 0.72, 0.81, 0.69, 0.84, 0.66, 0.87, 0.63, 0.9, 0.6, 0.57, 0.54, 0.5, 0.46, 0.42, 0.38, 0.34, 0.12, 0.08],
    ];

    // Nearer to each other than this part of the joint, two arrows are one.
    private const double LeastApart = 0.1;

    // Words slide as well, and stay where they are first looked for where the drawing is everywhere.
    private static readonly double[] WordPlaces = [0.5, 0.46, 0.54, 0.42, 0.58, 0.38, 0.62, 0.34, 0.66, 0.3, 0.7, 0.25, 0.75, 0.2, 0.8];
    private static readonly double[] Asides = [0, 3, -3];

    // Where a line runs along a joint just where its numbers stand, they move away from the tail of the arrow.
    private static readonly double[] Slides = [0, 3, 6, 9, 12, 16, 20, 25, 30];
    private static readonly double[] FromTheStart = [0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1];
    private static readonly double[] FromTheEnd = [1, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6, 0.55, 0.5, 0.45, 0.4, 0.35, 0.3, 0.2, 0.1, 0];

    private readonly Tiling _tiling;
    private readonly int[] _toTheRight;
    private readonly int[] _below;

    internal JoinMarks(Tiling tiling)
    {
        _tiling = tiling;
        _toTheRight = new int[tiling.Sheets.Count];
        _below = new int[tiling.Sheets.Count];
        int number = 0;
        for (int i = 0; i < tiling.Sheets.Count; i++)
        {
            TiledSheet sheet = tiling.Sheets[i];
            if (!sheet.IsEmpty)
            {
                _toTheRight[i] = tiling.IsPrinted(sheet.Row, sheet.Column + 1) ? ++number : 0;
                _below[i] = tiling.IsPrinted(sheet.Row + 1, sheet.Column) ? ++number : 0;
            }
        }
    }

    /// <summary>The marks of one sheet, in the coordinates of the sheet.</summary>
    internal Drawing On(TiledSheet sheet, Vector2D move)
    {
        var marks = new Pen(move);
        BoundingBox window = sheet.Window;
        BoundingBox cell = sheet.Cell;
        Name(sheet, marks);
        bool cutLeft = _tiling.IsPrinted(sheet.Row, sheet.Column - 1);
        bool cutTop = _tiling.IsPrinted(sheet.Row - 1, sheet.Column);
        bool joinRight = _toTheRight[Index(sheet.Row, sheet.Column)] > 0;
        bool joinBelow = _below[Index(sheet.Row, sheet.Column)] > 0;

        marks.Line(window.LeftMm, window.BottomMm, window.LeftMm, window.TopMm, cutLeft ? LineRole.PaperCut : LineRole.PaperFrame);
        marks.Line(window.LeftMm, window.TopMm, window.RightMm, window.TopMm, cutTop ? LineRole.PaperCut : LineRole.PaperFrame);
        marks.Line(window.RightMm, window.BottomMm, window.RightMm, window.TopMm, LineRole.PaperFrame);
        marks.Line(window.LeftMm, window.BottomMm, window.RightMm, window.BottomMm, LineRole.PaperFrame);
        if (cutLeft)
        {
            Scissors.Draw(new Point2D(window.LeftMm, cell.BottomMm + (ScissorsPlace * (cell.TopMm - cell.BottomMm))), Direction.Up, marks.Add);
            ArrowsAcross(cell.LeftMm, cell, inwards: 1, _toTheRight[Index(sheet.Row, sheet.Column - 1)], marks);
        }

        if (cutTop)
        {
            Scissors.Draw(new Point2D(cell.LeftMm + (ScissorsPlace * (cell.RightMm - cell.LeftMm)), window.TopMm), Direction.Right, marks.Add);
            ArrowsAlong(cell.TopMm, cell, inwards: -1, _below[Index(sheet.Row - 1, sheet.Column)], marks);
        }

        if (joinRight)
        {
            marks.Line(cell.RightMm, window.BottomMm, cell.RightMm, window.TopMm, LineRole.PaperJoin);
            double strip = (cell.RightMm + window.RightMm) / 2;
            string lay = StripWords(sheet.Row, sheet.Column + 1);
            double half = TextMark.WidthOfMm(lay, FootMm, TextWeight.Regular) / 2;
            (double y, double aside) = FirstFree(
                WordPlaces,
                place => cell.BottomMm + (place * (cell.TopMm - cell.BottomMm)),
                (at, by) => new BoundingBox(strip + by - FootMm, at - half, strip + by + FootMm, at + half));
            marks.Text(lay, strip + aside + (0.36 * FootMm), y, FootMm, Math.PI / 2, TextAlignment.Middle, TextWeight.Regular, Ink.Accent);
            ArrowsAcross(cell.RightMm, cell, inwards: -1, _toTheRight[Index(sheet.Row, sheet.Column)], marks);
        }

        if (joinBelow)
        {
            marks.Line(window.LeftMm, cell.BottomMm, window.RightMm, cell.BottomMm, LineRole.PaperJoin);
            double strip = (cell.BottomMm + window.BottomMm) / 2;
            string lay = StripWords(sheet.Row + 1, sheet.Column);
            double width = TextMark.WidthOfMm(lay, FootMm, TextWeight.Regular);
            double right = cell.RightMm - FootInsetMm;
            double left = cell.LeftMm + FootInsetMm + width;
            (double x, double aside) = FirstFree(
                FromTheEnd,
                place => left + (place * (right - left)),
                (at, by) => new BoundingBox(at - width, strip + by - FootMm, at, strip + by + FootMm));
            marks.Text(lay, x, strip + aside - (0.36 * FootMm), FootMm, 0, TextAlignment.End, TextWeight.Regular, Ink.Accent);
            ArrowsAlong(cell.BottomMm, cell, inwards: 1, _below[Index(sheet.Row, sheet.Column)], marks);
        }

        string words = FormattableString.Invariant($"Sheet {sheet.Name} of {_tiling.Drawing.Title}: row {sheet.Row} of {_tiling.Rows}, column {sheet.ColumnName} of {LastColumn}.");
        return new Drawing(
            "Sheet " + sheet.Name,
            words,
            new BoundingBox(0, 0, _tiling.Paper.WidthMm, _tiling.Paper.HeightMm),
            [new DrawingLayer(LayerName.SheetMarks, marks.Marks.ToArray())]);
    }

    private string LastColumn => _tiling.SheetAt(1, _tiling.Columns).ColumnName;

    private int Index(int row, int column) => ((row - 1) * _tiling.Columns) + column - 1;

    private string StripWords(int row, int column) => "Lay " + _tiling.SheetAt(row, column).Name + " on this strip";

    // Large and faint below the drawing, and small at the foot, where it can be read on a pile of paper.
    private void Name(TiledSheet sheet, Pen marks)
    {
        BoundingBox cell = sheet.Cell;
        BoundingBox window = sheet.Window;
        double size = Math.Min(LargestNameMm, 0.4 * Math.Min(cell.RightMm - cell.LeftMm, cell.TopMm - cell.BottomMm));
        Point2D middle = cell.Centre;
        marks.Text(sheet.Name, middle.XMm, middle.YMm - (0.36 * size), size, 0, TextAlignment.Middle, TextWeight.Bold, Ink.Faint);

        string place = FormattableString.Invariant($"{sheet.Name}  \u00B7  row {sheet.Row} of {_tiling.Rows}, column {sheet.ColumnName} of {LastColumn}");
        string longer = place + "  \u00B7  " + _tiling.Drawing.Title;
        double room = cell.RightMm - window.LeftMm - (2 * FootInsetMm);
        string words = TextMark.WidthOfMm(longer, FootMm, TextWeight.Regular) <= room ? longer : TextMark.WidthOfMm(place, FootMm, TextWeight.Regular) <= room ? place : sheet.Name;
        double width = TextMark.WidthOfMm(words, FootMm, TextWeight.Regular);
        double first = window.LeftMm + FootInsetMm;
        double last = Math.Max(first, cell.RightMm - FootInsetMm - width);
        double left = FirstFree(FromTheStart, share => first + (share * (last - first)), at => new BoundingBox(at, window.BottomMm, at + width, window.BottomMm + 1.6 + FootMm));
        marks.Text(words, left, window.BottomMm + 1.6, FootMm, 0, TextAlignment.Start, TextWeight.Regular, Ink.Middle);
    }

    // Along a strip of paper, and where a line runs all along its middle, aside from that.
    private (double At, double Aside) FirstFree(double[] places, Func<double, double> at, Func<double, double, BoundingBox> box)
    {
        foreach (double aside in Asides)
        {
            double found = FirstFree(places, at, place => box(place, aside));
            if (Math.Abs(aside) + FootMm <= _tiling.Layout.OverlapMm / 2 && !_tiling.Ink.Meets(box(found, aside)))
            {
                return (found, aside);
            }
        }

        return (at(places[0]), 0);
    }

    // The first place whose box is free of ink; the first of all where none is. Of a joint both sheets look along the same stretch, and find the same place.
    private double FirstFree(double[] places, Func<double, double> at, Func<double, BoundingBox> box)
    {
        foreach (double place in places)
        {
            if (!_tiling.Ink.Meets(box(at(place))))
            {
                return at(place);
            }
        }

        return at(places[0]);
    }

    // At an upright joint: level arrows, pointing at it from inside the sheet.
    private void ArrowsAcross(double xMm, in BoundingBox cell, int inwards, int number, Pen marks)
    {
        string words = FormattableString.Invariant($"{number}");
        double wide = TextMark.WidthOfMm(words, NumberMm, TextWeight.Bold);
        double high = NumberBoxEms * NumberMm;
        double reach = ArrowMm + NumberGapMm + wide;
        BoundingBox joint = cell;
        double other = double.MinValue;
        foreach (double[] places in ArrowPlaces)
        {
            double taken = other;
            double y = FirstFree(
                Array.FindAll(places, place => Math.Abs(joint.BottomMm + (place * (joint.TopMm - joint.BottomMm)) - taken) >= LeastApart * (joint.TopMm - joint.BottomMm)),
                place => joint.BottomMm + (place * (joint.TopMm - joint.BottomMm)),
                at => new BoundingBox(xMm - reach, at - high, xMm + reach, at + high));
            other = y;
            double x = FirstFree(
                Slides,
                slide => xMm + (inwards * (ArrowMm + NumberGapMm + slide)),
                at => new BoundingBox(Math.Min(at, at + (inwards * wide)), y - high, Math.Max(at, at + (inwards * wide)), y + high));
            marks.Arrow(xMm + (inwards * ArrowMm), y, xMm, y);
            marks.Text(
                words,
                x,
                y - (0.36 * NumberMm),
                NumberMm,
                0,
                inwards > 0 ? TextAlignment.Start : TextAlignment.End,
                TextWeight.Bold,
                Ink.Accent);
        }
    }

    // At a level joint: upright arrows.
    private void ArrowsAlong(double yMm, in BoundingBox cell, int inwards, int number, Pen marks)
    {
        string words = FormattableString.Invariant($"{number}");
        double high = 2 * NumberBoxEms * NumberMm;
        double reach = ArrowMm + NumberGapMm + high;
        double half = Math.Max(NumberMm, TextMark.WidthOfMm(words, NumberMm, TextWeight.Bold)) / 2;
        BoundingBox joint = cell;
        double other = double.MinValue;
        foreach (double[] places in ArrowPlaces)
        {
            double taken = other;
            double x = FirstFree(
                Array.FindAll(places, place => Math.Abs(joint.LeftMm + (place * (joint.RightMm - joint.LeftMm)) - taken) >= LeastApart * (joint.RightMm - joint.LeftMm)),
                place => joint.LeftMm + (place * (joint.RightMm - joint.LeftMm)),
                at => new BoundingBox(at - half, yMm - reach, at + half, yMm + reach));
            other = x;
            marks.Arrow(x, yMm + (inwards * ArrowMm), x, yMm);
            double y = FirstFree(
                Slides,
                slide => yMm + (inwards * (ArrowMm + NumberGapMm + slide)),
                at => new BoundingBox(x - half, Math.Min(at, at + (inwards * high)), x + half, Math.Max(at, at + (inwards * high))));
            marks.Text(words, x, y + (inwards > 0 ? TypeWidths.Descent * NumberMm : -TypeWidths.Ascent * NumberMm), NumberMm, 0, TextAlignment.Middle, TextWeight.Bold, Ink.Accent);
        }
    }

    /// <summary>Draws in the coordinates of the drawing onto a sheet.</summary>
    private sealed class Pen
    {
        private readonly Vector2D _move;

        internal Pen(Vector2D move) => _move = move;

        internal List<DrawingMark> Marks { get; } = [];

        internal void Add(CurvePath path, LineRole role) => Marks.Add(new PathMark(path.Transformed(Transform2D.Translation(_move)), role));

        internal void Line(double fromXMm, double fromYMm, double toXMm, double toYMm, LineRole role)
            => Marks.Add(new PathMark(Path(fromXMm, fromYMm, toXMm, toYMm), role));

        internal void Arrow(double fromXMm, double fromYMm, double toXMm, double toYMm)
            => Marks.Add(new PathMark(Path(fromXMm, fromYMm, toXMm, toYMm), LineRole.PaperArrow, facts: null, ArrowEnds.End));

        internal void Text(string words, double xMm, double yMm, double sizeMm, double angleRad, TextAlignment alignment, TextWeight weight, Ink ink)
            => Marks.Add(new TextMark(words, new Point2D(xMm, yMm) + _move, sizeMm, angleRad, alignment, weight, ink));

        private CurvePath Path(double fromXMm, double fromYMm, double toXMm, double toYMm)
            => CurvePath.FromLine(new LineSegment(new Point2D(fromXMm, fromYMm) + _move, new Point2D(toXMm, toYMm) + _move));
    }
}
