using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Pieces;

/// <summary>Finds room for the label of a piece.</summary>
internal static class LabelSearch
{
    // Wider and taller than what stands on it by this, so that rounding leaves the ends of lines on the label.
    private const double HairMm = 1e-6;
    private const double TitleMm = 10;
    private const double LineMm = 5;
    private const double Leading = 1.35;

    // Long enough to measure, short enough for small pieces. The words above it stay true at any size of type.
    private const double ScaleCheckMm = 50;
    private const string ScaleCheckWords = "this line is 5 cm long";
    private const double BelowWordsMm = 2;

    // Between the label and any line.
    private const double MarginMm = 4;

    private const double FarMm = 10_000;

    // The sign for the fold stands this far inside it.
    private const double FoldSignMm = 16;

    // The smallest is type of 3.5 mm, whose capitals are 2.5 mm tall: the least usual height of lettering on a drawing (ISO 3098, from memory).
    private static readonly double[] Shrinking = [1, 0.94, 0.88, 0.82, 0.76, 0.7];

    // For a piece that has no room for that: down to capitals of 1.8 mm, the least height that the same standard knows.
    private static readonly double[] Small = [0.65, 0.6, 0.55, 0.5];

    internal static LabelBlock? Place(PatternPiece piece, PieceLabel label) => Place(piece, label, RoomIn(piece));

    /// <summary>The label wholly on one of several sheets of paper: the one on which it is set largest, and of those nearest to the middle of the piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="label">What it says.</param>
    /// <param name="sheets">What each sheet shows, in the coordinates of the piece.</param>
    internal static LabelBlock? Place(PatternPiece piece, PieceLabel label, IEnumerable<BoundingBox> sheets)
    {
        LabelBlock? best = null;
        Point2D middle = piece.SeamLine.Bounds.Centre;
        double away = double.PositiveInfinity;
        foreach (BoundingBox sheet in sheets)
        {
            FreeRoom room = RoomIn(piece);
            TakeAllBut(sheet, room);
            if (Place(piece, label, room) is not { } found)
            {
                continue;
            }

            double foundAway = found.Bounds.Centre.DistanceMm(middle);
            double larger = best is null ? 1 : found.Lines[0].SizeMm - best.Lines[0].SizeMm;
            if (larger > 0 || (larger == 0 && foundAway < away))
            {
                (best, away) = (found, foundAway);
            }
        }

        return best;
    }

    // Beyond each border of the sheet nothing is free: one line beside it, as broad as anything can be drawn.
    private static void TakeAllBut(in BoundingBox sheet, FreeRoom room)
    {
        Point2D middle = sheet.Centre;
        foreach (Direction way in new[] { Direction.Left, Direction.Right, Direction.Up, Direction.Down })
        {
            double outMm = (Math.Abs(way.Dot(sheet.UpperRight - sheet.LowerLeft)) / 2) + FarMm;
            Point2D beside = middle + way.TimesMm(outMm);
            Vector2D along = way.TurnedLeft.TimesMm(FarMm);
            room.Take(beside - along, beside + along, FarMm);
        }
    }

    // A piece too small for all of it says its name and how it is cut: whose it is, the other pieces say too.
    private static LabelBlock? Place(PatternPiece piece, PieceLabel label, FreeRoom room)
        => Place(piece, [.. label.Lines(piece.CuttingLines())], room, Shrinking)
            ?? Place(piece, [.. piece.CuttingLines()], room, Shrinking)
            ?? Place(piece, [.. piece.CuttingLines()], room, Small);

    private static LabelBlock? Place(PatternPiece piece, string[] all, FreeRoom room, double[] sizes)
    {
        string title = piece.Name.Text.ToUpperInvariant();
        BoundingBox box = piece.SeamLine.Bounds;

        // A line for each thing to say, or two things on a line; in a strip such as a waistband all of them on one below the name, the check beside the name. Type that
        // stays large comes before short lines; what fits nowhere else has all of it on one line and the check below.
        foreach (int onLine in new[] { 1, 2, 0, Math.Max(1, all.Length) })
        {
            if (onLine == 0)
            {
                // All on one line, or on two in a short strip.
                if ((Strip(title, [.. Joined(all, Math.Max(1, all.Length))], room, piece.SeamLine, box.Centre, sizes) ?? Strip(title, [.. Joined(all, Math.Max(1, (all.Length + 1) / 2))], room, piece.SeamLine, box.Centre, sizes)) is { } strip)
                {
                    return strip;
                }

                continue;
            }

            string[] lines = [.. Joined(all, onLine), ScaleCheckWords];
            foreach (double factor in sizes)
            {
                (double width, double height) = Size(title, lines, factor);
                width += (2 * MarginMm) + HairMm;
                height += (2 * MarginMm) + HairMm;
                if (room.TryFind(piece.SeamLine, width, height, box.Centre, out BoundingBox place))
                {
                    return Set(title, lines, factor, Inside(place), Direction.Right);
                }

                if (room.TryFind(piece.SeamLine, height, width, box.Centre, out place))
                {
                    return Set(title, lines, factor, Inside(place), Direction.Up);
                }
            }
        }

        return null;
    }

    private static LabelBlock? Strip(string title, string[] words, FreeRoom room, CurvePath outline, in Point2D near, double[] sizes)
    {
        foreach (double factor in sizes)
        {
            double titleMm = TypeWidths.BoldMm(title, TitleMm * factor) + (TitleMm * factor);
            double width = titleMm + Math.Max(ScaleCheckMm, TypeWidths.RegularMm(ScaleCheckWords, LineMm * factor));
            foreach (string line in words)
            {
                width = Math.Max(width, TypeWidths.RegularMm(line, LineMm * factor));
            }

            width += (2 * MarginMm) + HairMm;
            double base1 = TypeWidths.Ascent * TitleMm * factor;
            double below = (TypeWidths.Ascent + TypeWidths.Descent) * TitleMm * factor;
            double height = below + (words.Length * Leading * LineMm * factor) + (2 * MarginMm) + HairMm;
            Direction? reading = room.TryFind(outline, width, height, near, out BoundingBox place) ? Direction.Right
                : room.TryFind(outline, height, width, near, out place) ? Direction.Up
                : null;
            if (reading is not { } right)
            {
                continue;
            }

            BoundingBox bounds = Inside(place);
            Direction down = right.TurnedRight;
            Point2D first = right == Direction.Right ? new Point2D(bounds.LeftMm, bounds.TopMm) : bounds.LowerLeft;
            var lines = new List<LabelLine>(words.Length + 2) { new(title, first + down.TimesMm(base1), TitleMm * factor) };
            for (int i = 0; i < words.Length; i++)
            {
                double depth = below + ((((i + 1) * Leading) - TypeWidths.Descent) * LineMm * factor);
                lines.Add(new LabelLine(words[i], first + down.TimesMm(depth), LineMm * factor));
            }

            lines.Add(new LabelLine(ScaleCheckWords, first + right.TimesMm(titleMm) + down.TimesMm(base1 - BelowWordsMm), LineMm * factor));
            Point2D bar = first + right.TimesMm(titleMm) + down.TimesMm(base1 + (TypeWidths.Descent * LineMm * factor));
            return new LabelBlock([.. lines], right, new LineSegment(bar, bar + right.TimesMm(ScaleCheckMm)), bounds);
        }

        return null;
    }

    private static IEnumerable<string> Joined(string[] lines, int onLine)
    {
        for (int i = 0; i < lines.Length; i += onLine)
        {
            yield return string.Join("; ", lines, i, Math.Min(onLine, lines.Length - i));
        }
    }

    private static FreeRoom RoomIn(PatternPiece piece)
    {
        var room = new FreeRoom();
        room.Take(piece.SeamLine);
        foreach (PieceDart dart in piece.Darts)
        {
            foreach (LineSegment leg in dart.Legs)
            {
                room.Take(leg.Start, leg.End);
            }

            room.Take(dart.FoldLine.Start, dart.FoldLine.End);
            if (dart.PressArrow is { } arrow)
            {
                room.Take(arrow.Start, arrow.End);
            }

            foreach (Point2D hole in dart.DrillHoles)
            {
                room.Take(hole, hole);
            }
        }

        foreach (InternalLine line in piece.InternalLines)
        {
            room.Take(line.Path);
        }

        foreach (PieceNotch notch in piece.Notches)
        {
            foreach (LineSegment cut in notch.Cuts)
            {
                room.Take(cut.Start, cut.End);
            }
        }

        room.Take(piece.Grainline.Start, piece.Grainline.End);
        if (piece.FoldLine is { } fold)
        {
            foreach (double aside in new[] { FoldSignMm, -FoldSignMm, FoldSignMm / 2, -FoldSignMm / 2 })
            {
                Vector2D shift = fold.Direction.TurnedLeft.TimesMm(aside);
                room.Take(fold.Start + shift, fold.End + shift);
            }
        }

        return room;
    }

    private static (double Width, double Height) Size(string title, string[] lines, double factor)
    {
        double widest = Math.Max(ScaleCheckMm, TypeWidths.BoldMm(title, TitleMm * factor));
        foreach (string line in lines)
        {
            widest = Math.Max(widest, TypeWidths.RegularMm(line, LineMm * factor));
        }

        double below = (TypeWidths.Ascent + TypeWidths.Descent) * TitleMm;
        return (widest, (factor * (below + (lines.Length * Leading * LineMm))) + BelowWordsMm);
    }

    private static BoundingBox Inside(in BoundingBox place)
        => new(place.LeftMm + MarginMm, place.BottomMm + MarginMm, place.RightMm - MarginMm, place.TopMm - MarginMm);

    private static LabelBlock Set(string title, string[] lines, double factor, in BoundingBox bounds, Direction reading)
    {
        Direction down = reading.TurnedRight;
        Point2D first = reading == Direction.Right ? new Point2D(bounds.LeftMm, bounds.TopMm) : bounds.LowerLeft;
        var set = new List<LabelLine>(lines.Length + 1);
        double depth = TypeWidths.Ascent * TitleMm * factor;
        set.Add(new LabelLine(title, first + down.TimesMm(depth), TitleMm * factor));
        depth = (TypeWidths.Ascent + TypeWidths.Descent) * TitleMm * factor;
        foreach (string line in lines)
        {
            // Each line stands on the descent of its own row, so that the last one does not reach out of the box.
            depth += Leading * LineMm * factor;
            set.Add(new LabelLine(line, first + down.TimesMm(depth - (TypeWidths.Descent * LineMm * factor)), LineMm * factor));
        }

        Point2D bar = first + down.TimesMm(depth + BelowWordsMm);
        return new LabelBlock([.. set], reading, new LineSegment(bar, bar + reading.TimesMm(ScaleCheckMm)), bounds);
    }
}
