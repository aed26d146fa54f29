using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Output;
using UnitsNet;

namespace Pattern.Core.Layout;

/// <summary>Draws a lay: the cloth, and on it the pieces with their grain and their names.</summary>
internal static class LayDrawing
{
    // Type as parts of the width of the cloth, and within what can be read and what looks silly.
    private const double TitlePart = 0.028;
    private const double NamePart = 0.016;
    private const double LeastTypeMm = 0.5;
    private const double MostTypeMm = 40;

    // Of a level line of type: how much of the room across it takes, and how wide a letter is for its size.
    private const double TypePartOfRoom = 0.5;
    private const double LetterWidth = 0.62;
    private const double HalfCapital = 0.35;

    // How far apart two lines of type stand.
    private const double LineSpacing = 1.5;

    internal static Drawing Of(ClothLay lay)
    {
        double width = lay.Cloth.UsableWidthMm;
        double selvedge = lay.Cloth.SelvedgeMm;
        double bottom = lay.Cloth.IsFolded ? 0 : -selvedge;
        double top = width + selvedge;
        double title = Type(TitlePart * width);
        string[] words = Words(lay);
        double margin = 2 * title;
        var names = new List<DrawingMark>();
        for (int i = 0; i < words.Length; i++)
        {
            names.Add(Text(words[i], 0, bottom - (LineSpacing * title * (i + 1)), title, 0, TextAlignment.Start, i == 0 ? TextWeight.Bold : TextWeight.Regular));
        }

        double widest = names.Max(mark => mark.Bounds.RightMm);
        names.AddRange(lay.Pieces.Select(piece => NameOf(piece, Type(NamePart * width))));
        var box = new BoundingBox(-margin, bottom - (LineSpacing * title * words.Length) - margin, Math.Max(lay.LengthMm, widest) + margin, top + margin);
        return Drawing.Of(
            "Cloth layout",
            string.Join(" ", words) + " The length of the cloth runs to the right.",
            box,
            [
                DrawingLayer.Of(LayerName.Of("cloth"), ClothLines(lay, bottom, top, width)),
                DrawingLayer.Of(LayerName.Grainlines, lay.Pieces.Where(piece => piece.Piece.Grainline is not null)
                    .Select(piece => PathMark.Of(CurvePath.FromLine(piece.Piece.Grainline!.Value.Transformed(piece.Place)), LineRole.Grain, null, ArrowEnds.End))),
                DrawingLayer.Of(LayerName.CutLines, lay.Pieces.Select(piece => PathMark.Of(piece.CutLine, LineRole.Cut))),
                DrawingLayer.Of(LayerName.Names, names),
            ]);
    }

    /// <summary>What the lay comes to, in sentences.</summary>
    internal static string[] Words(ClothLay lay)
    {
        string how = lay.Cloth.IsFolded ? "folded along its length" : "open";
        string spares = lay.Spares.Count > 0 ? " One more than needed is cut of " + string.Join(", ", lay.Spares) + "." : string.Empty;
        return
        [
            FormattableString.Invariant($"{lay.LengthMm / 10:0.0} cm of cloth, {lay.Efficiency.Percent:0.0} % of it covered."),
            FormattableString.Invariant($"Cloth {lay.Cloth.WidthMm / 10:0.0} cm wide, {how}; {lay.Cloth.UsableWidthMm / 10:0.0} cm to lay on. No lay needs less than {lay.LowerBound.Centimeters:0.0} cm.{spares}"),
        ];
    }

    private static List<DrawingMark> ClothLines(ClothLay lay, double bottom, double top, double width)
    {
        CurvePath Level(double y) => CurvePath.FromLine(new LineSegment(new Point2D(0, y), new Point2D(lay.LengthMm, y)));
        CurvePath Across(double x) => CurvePath.FromLine(new LineSegment(new Point2D(x, bottom), new Point2D(x, top)));
        var lines = new List<DrawingMark>
        {
            PathMark.Of(Across(0), LineRole.Rule),
            PathMark.Of(Across(lay.LengthMm), LineRole.Rule),
            PathMark.Of(Level(top), LineRole.Rule),
            PathMark.Of(Level(bottom), lay.Cloth.IsFolded ? LineRole.Fold : LineRole.Rule),
        };
        if (lay.Cloth.SelvedgeMm > 0)
        {
            lines.Add(PathMark.Of(Level(width), LineRole.Construction));
            if (!lay.Cloth.IsFolded)
            {
                lines.Add(PathMark.Of(Level(0), LineRole.Construction));
            }
        }

        return lines;
    }

    // In the largest convex part of the piece, along its longer side; above the grainline where there is one.
    private static TextMark NameOf(LaidPiece piece, double mostMm)
    {
        Point2D[] corners = piece.CutLine.Flatten(Length.FromMillimeters(1));
        Outline outline = Outline.Of([.. corners.Skip(1).Select(corner => corner.XMm)], [.. corners.Skip(1).Select(corner => corner.YMm)]);
        Outline part = ConvexParts.Of(outline).OrderByDescending(one => one.AreaMm2).First();
        bool isUpright = part.AcrossMm > 2 * part.AlongMm && piece.Piece.Grainline is null;
        double along = isUpright ? part.AcrossMm : part.AlongMm;
        double across = isUpright ? part.AlongMm : part.AcrossMm;
        double size = Math.Max(LeastTypeMm, Math.Min(mostMm, Math.Min(TypePartOfRoom * across, along / (LetterWidth * (piece.Name.Length + 1)))));
        double x = part.X.Average();
        double y = part.Y.Average();
        if (piece.Piece.Grainline is { } grain)
        {
            Point2D middle = grain.Transformed(piece.Place).Midpoint;
            return Text(piece.Name, middle.XMm, middle.YMm + (HalfCapital * size), size, 0, TextAlignment.Middle, TextWeight.Regular);
        }

        return isUpright
            ? Text(piece.Name, x + (HalfCapital * size), y, size, 90, TextAlignment.Middle, TextWeight.Regular)
            : Text(piece.Name, x, y - (HalfCapital * size), size, 0, TextAlignment.Middle, TextWeight.Regular);
    }

    private static double Type(double size) => Math.Max(LeastTypeMm, Math.Min(MostTypeMm, size));

    private static TextMark Text(string words, double x, double y, double size, double degrees, TextAlignment alignment, TextWeight weight)
        => TextMark.Of(words, new Point2D(x, y), Length.FromMillimeters(size), Angle.FromDegrees(degrees), alignment, weight, Ink.Strong);
}
