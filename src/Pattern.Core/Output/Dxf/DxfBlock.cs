using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using Pattern.Core.Geometry;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>One piece in one size, cut from one cloth: one block of a pattern file.</summary>
internal sealed class DxfBlock
{
    // The longest name that the format allows.
    private const int LongestName = 31;

    private const double TypeMm = 4;
    private const double LineSpacing = 1.6;
    private const double FromGrainMm = 6;
    // Of its length.
    private const double HeadOfArrow = 0.3;

    private const double CrossMm = 5;

    // Off the line that words belong to, and off the seam line that it begins at.
    private const double AboveLineMm = 2;
    private const double FromSeamMm = 10;

    // What can still be read on cloth or card. Common practice, no source.
    private const double SmallestTypeMm = 1.5;

    private DxfBlock(PatternPiece piece, CutCount? cut, string name)
    {
        Piece = piece;
        Cut = cut;
        Name = name;
        Size = SizeOf(piece);
    }

    internal PatternPiece Piece { get; }

    internal CutCount? Cut { get; }

    /// <summary>The name of the block: unlike all others of the file.</summary>
    internal string Name { get; }

    internal string Size { get; }

    internal string Cloth => ClothOf(Cut);

    /// <summary>The blocks of some pieces: one for each cloth that a piece is cut from.</summary>
    internal static IReadOnlyList<DxfBlock> Of(IReadOnlyList<PatternPiece> pieces)
    {
        var blocks = new List<DxfBlock>(pieces.Count);
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (PatternPiece piece in pieces)
        {
            CutCount?[] cuts = piece.Cuts.Count == 0 ? [null] : [.. piece.Cuts];
            foreach (CutCount? cut in cuts)
            {
                string name = piece.Name.Text;
                name += piece.LabelText is null ? string.Empty : "_" + SizeOf(piece);
                name += piece.Cuts.Count > 1 ? "_" + ClothOf(cut) : string.Empty;
                blocks.Add(new DxfBlock(piece, cut, Free(Plain(name), taken)));
            }
        }

        return blocks;
    }

    /// <summary>The block alone, its coordinates those of the piece.</summary>
    internal void Write(DxfText text)
    {
        text.Entity("BLOCK", DxfLayers.Boundary).Word(2, Name).Whole(70, 0).At(10, 0, 0).Word(3, Name);
        WriteLine(text, DxfLayers.Boundary, Piece.CutLine, Piece.Notches.SelectMany(notch => notch.Cuts).Where(cut => text.Units.Steps(cut.LengthMm) > 0).Select(cut => cut.Start));
        WriteLine(text, DxfLayers.SewLine, Piece.SeamLine);
        WriteNotches(text);
        foreach (PieceEdge edge in Piece.Edges.Where(edge => edge.IsOnFold))
        {
            text.Line(DxfLayers.MirrorLine, new LineSegment(edge.CutLine.Start, edge.CutLine.End));
        }

        text.Line(DxfLayers.Grainline, Piece.Grainline);
        foreach (PieceDart dart in Piece.Darts)
        {
            foreach (LineSegment leg in dart.Legs)
            {
                text.Line(DxfLayers.InternalLines, leg);
            }

            text.Line(DxfLayers.InternalLines, dart.FoldLine, DxfLayers.FoldColour);
            if (dart.PressArrow is { } arrow)
            {
                Vector2D back = (arrow.Start - arrow.End) * HeadOfArrow;
                Vector2D aside = arrow.Direction.TurnedLeft.TimesMm(back.LengthMm / 2);
                Sign(text, arrow);
                Sign(text, new LineSegment(arrow.End + back + aside, arrow.End));
                Sign(text, new LineSegment(arrow.End + back - aside, arrow.End));
            }

            foreach (Point2D hole in dart.DrillHoles)
            {
                text.Point(DxfLayers.DrillHoles, hole);
                Vector2D across = Direction.Right.TimesMm(CrossMm / 2);
                Vector2D up = Direction.Up.TimesMm(CrossMm / 2);
                Sign(text, new LineSegment(hole - across, hole + across));
                Sign(text, new LineSegment(hole - up, hole + up));
            }
        }

        foreach (InternalLine line in Piece.InternalLines)
        {
            WriteLine(text, DxfLayers.InternalLines, line.Path, colour: line.Kind == InternalLineKind.Fold ? DxfLayers.FoldColour : -1);
        }

        WriteTexts(text);
        text.Entity("ENDBLK", DxfLayers.Boundary);
    }

    private static string SizeOf(PatternPiece piece) => piece.LabelText?.Size ?? piece.LabelText?.Wearer ?? "made to measure";

    private static string ClothOf(CutCount? cut) => cut?.Cloth.Text ?? ClothName.Main.Text;

    // Letters, digits and hyphens of ASCII: what the format allows in names, without the signs that mean something to it.
    private static string Plain(string text)
    {
        var name = new StringBuilder(text.Length);
        foreach (char c in text)
        {
            bool isPlain = c is (>= 'a' and <= 'z') or (>= 'A' and <= 'Z') or (>= '0' and <= '9') or '_';
            if (isPlain || (name.Length > 0 && name[name.Length - 1] != '-'))
            {
                name.Append(isPlain ? c : '-');
            }
        }

        return name.ToString().TrimEnd('-', '_');
    }

    private static string Free(string name, HashSet<string> taken)
    {
        string free = name.Length <= LongestName ? name : name.Substring(0, LongestName).TrimEnd('-', '_');
        for (int i = 2; !taken.Add(free); i++)
        {
            string ending = "-" + i.ToString(CultureInfo.InvariantCulture);
            free = name.Substring(0, Math.Min(name.Length, LongestName - ending.Length)) + ending;
        }

        return free;
    }

    private static void WriteLine(DxfText text, string layer, CurvePath path, IEnumerable<Point2D>? marks = null, int colour = -1)
    {
        if (path.SegmentsRaw.Length == 1 && path.SegmentsRaw[0].Kind == PathSegmentKind.Line)
        {
            text.Line(layer, path.SegmentsRaw[0].LineRaw, colour);
            return;
        }

        var polyline = new DxfPolyline(path, text.Units);
        foreach (Point2D mark in marks ?? [])
        {
            polyline.Include(mark);
        }

        polyline.Write(text, layer, colour: colour);
        for (int i = 0; i < polyline.Points.Count; i++)
        {
            text.Point(polyline.Turnings[i] ? DxfLayers.TurnPoints : DxfLayers.CurvePoints, polyline.Points[i]);
        }
    }

    // Points are hardly seen on a screen. What is drawn beside them stands with the words, where no machine takes it for a line to cut.
    private static void Sign(DxfText text, in LineSegment line) => text.Line(DxfLayers.Annotation, line, DxfLayers.MarkColour);

    // A point on the cut line; its thickness is the depth of the cut and its angle the way that it runs, where it has any.
    private void WriteNotches(DxfText text)
    {
        foreach (LineSegment cut in Piece.Notches.SelectMany(notch => notch.Cuts))
        {
            text.Point(DxfLayers.Notches, cut.Start);
            if (text.Units.Steps(cut.LengthMm) > 0)
            {
                text.LengthOf(39, cut.LengthMm).Degrees(50, Math.Atan2(cut.End.YMm - cut.Start.YMm, cut.End.XMm - cut.Start.XMm) * 180 / Math.PI);
                Sign(text, cut);
            }
        }
    }

    private void WriteTexts(DxfText text)
    {
        var lines = new List<string> { "Piece Name: " + Piece.Name.Text, "Size: " + Size };
        if (Cut is not null)
        {
            lines.Add("Quantity: " + Cut.Count.ToString(CultureInfo.InvariantCulture) + (Piece.FoldLine is null ? string.Empty : ", on the fold"));
            lines.Add("Material: " + Cut.Cloth.Text);
        }

        if (Piece.LabelText is { } label)
        {
            lines.Add("Category: " + label.Garment);
        }

        lines.AddRange(Annotations().Select(words => "Annotation: " + words));
        Point2D start = Piece.Grainline.Midpoint;
        double typeMm = TypeMm;
        double x = start.XMm + FromGrainMm;
        double y = start.YMm;
        if (Piece.Label is { } block)
        {
            typeMm = Math.Min(typeMm, (block.Bounds.TopMm - block.Bounds.BottomMm) / LineSpacing / lines.Count);
            x = block.Bounds.LeftMm;
            y = block.Bounds.TopMm - typeMm;
        }

        lines = [.. lines.SelectMany(DxfWords.Split)];
        int rows = lines.Count;
        double columnMm = 0;
        if (Piece.Label is { } low && typeMm < TypeMm)
        {
            // A low and long piece, such as a band: the words go along it in columns, in full size, where it is long enough for them.
            int few = Math.Max(1, (int)((low.Bounds.TopMm - low.Bounds.BottomMm) / (TypeMm * LineSpacing)));
            int columns = (lines.Count + few - 1) / few;
            double wide = TypeMm * (DxfWords.WidestEms(lines) + 1);
            if (columns * wide <= Piece.Bounds.RightMm - Piece.Bounds.LeftMm)
            {
                (rows, columnMm, typeMm) = (few, wide, TypeMm);
                x = Math.Max(Piece.Bounds.LeftMm, Math.Min(x, Piece.Bounds.RightMm - (columns * wide)));
                y = low.Bounds.TopMm - TypeMm;
            }
        }

        typeMm = Fitted(typeMm, lines);
        x = columnMm > 0 ? x : Indented(x, typeMm, lines);
        for (int i = 0; i < lines.Count; i++)
        {
            text.Label(DxfLayers.Annotation, new Point2D(x + (i / rows * columnMm), y - (i % rows * typeMm * LineSpacing)), typeMm, 0, lines[i]);
        }

        foreach (InternalLine line in Piece.InternalLines)
        {
            List<string> words = [.. DxfWords.Split("Annotation: " + line.Name)];
            double sizeMm = Fitted(TypeMm, words);
            Point2D at = Beside(line.Path, sizeMm * DxfWords.WidestEms(words));
            for (int i = 0; i < words.Count; i++)
            {
                text.Label(DxfLayers.Annotation, new Point2D(Indented(at.XMm, sizeMm, words), at.YMm - (i * sizeMm * LineSpacing)), sizeMm, 0, words[i]);
            }
        }
    }

    // Above a long line, a little way in from its left end; beyond a short one, which begins at the seam.
    private static Point2D Beside(CurvePath path, double wordsMm)
    {
        if (path.LengthMm < wordsMm + FromSeamMm)
        {
            return path.End + new Vector2D(AboveLineMm, 0);
        }

        Point2D left = path.Start.XMm <= path.End.XMm ? path.Start : path.End;
        return left + new Vector2D(FromSeamMm, AboveLineMm);
    }

    // The type in which the longest line is no wider than the piece; the standard type where there is room for it.
    private double Fitted(double typeMm, List<string> lines)
        => Math.Max(Math.Min(typeMm, SmallestTypeMm), Math.Min(typeMm, (Piece.Bounds.RightMm - Piece.Bounds.LeftMm) / DxfWords.WidestEms(lines)));

    // Where lines begin, so that the longest one ends inside the box around the piece if there is room for it.
    private double Indented(double x, double typeMm, List<string> lines)
        => Math.Max(Piece.Bounds.LeftMm, Math.Min(x, Piece.Bounds.RightMm - (typeMm * DxfWords.WidestEms(lines))));

    private IEnumerable<string> Annotations()
    {
        int own = 0;
        foreach (string how in Piece.CuttingLines())
        {
            // Said in the order of the cuts; the other cloths have blocks of their own.
            if (Cut == Piece.Cuts[own++])
            {
                yield return how;
            }
        }

        if (Piece.LabelText is { } label)
        {
            if (label.Wearer is not null)
            {
                yield return "for " + label.Wearer;
            }

            foreach (string note in label.Notes)
            {
                yield return note;
            }

            if (label.Date is { } date)
            {
                yield return date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            }
        }
    }
}
