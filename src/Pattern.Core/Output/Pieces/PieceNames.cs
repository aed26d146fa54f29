using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>The words along the lines of pieces: edges with their allowance, grainlines, folds, lines inside.</summary>
internal sealed class PieceNames
{
    private const double PieceMm = 12;
    private const double EdgeMm = 5;
    private const double LineMm = 4.5;
    private const double GapMm = 2;
    private const double OnSeamMm = 0.01;

    private static readonly double[] NearMiddle = [.5, .45, .55, .4, .6, .35, .65, .3, .7, .25, .75, .2, .8, .15, .85, .1, .9];
    private static readonly double[] Parts = [.5, .4, .6, .3, .7, .2, .8, .1, .9];
    private static readonly double[] BesideMiddle = [.5, .25, .75, .35, .65, .2, .8];
    private static readonly double[] NearEnds = [.2, .8, .25, .75, .15, .85, .3, .7, .35, .65, .4, .6, .5, .1, .9];

    private readonly TapeFigures _figures;
    private readonly LabelPlacer _placer;

    internal PieceNames(TapeFigures figures, LabelPlacer placer)
    {
        _figures = figures;
        _placer = placer;
    }

    /// <summary>The words of edges that found no room for them, with the name of the piece before each.</summary>
    internal List<string> SilentEdges { get; } = [];

    /// <summary>Adds every name that finds room: of edges to a list of their own, the others to the layer of what they name.</summary>
    internal void Place(DrawnPiece piece, List<DrawingMark> names)
    {
        // What a short mark means has one place, beyond its end; edges are longer and give way.
        foreach (InternalLine line in piece.Piece.InternalLines)
        {
            CurvePath path = piece.Placed(line.Path);
            if (!IsLongEnough(path, line.Name))
            {
                Beside(line.Name, LineMm, [.. Beyond(path)], piece.InternalLines);
            }
        }

        foreach (PieceEdge edge in piece.Piece.Edges)
        {
            if (edge.IsOnFold)
            {
                Along(NameOf(piece.Piece, edge) + ", on the fold", EdgeMm, piece.Placed(edge.SeamLine), Inside(piece), NearMiddle, piece.Folds);
            }
        }

        for (int i = 0; i < piece.Piece.Edges.Count; i++)
        {
            PieceEdge edge = piece.Piece.Edges[i];
            if (edge.IsOnFold)
            {
                continue;
            }

            string words = WordsOf(piece.Piece, edge);
            CurvePath path = piece.Placed(Longest(piece.Piece.Panel.Edges[i]));
            if (!Along(words, EdgeMm, path, Inside(piece), NearMiddle, names)
                && !Beside(words, EdgeMm, [.. LabelSpot.AwayFrom(path, Inside(piece)[0], GapMm, BesideMiddle)], names))
            {
                SilentEdges.Add(piece.Piece.Name.Text + ": " + words);
            }
        }

        if (piece.Piece.Label is null)
        {
            NamePiece(piece);
        }

        Along("straight grain", EdgeMm, piece.Placed(CurvePath.FromLine(piece.Piece.Grainline)), Both, NearMiddle, piece.Grainlines);
        foreach (InternalLine line in piece.Piece.InternalLines)
        {
            CurvePath path = piece.Placed(line.Path);
            if (IsLongEnough(path, line.Name))
            {
                Along(line.Name, LineMm, path, Both, NearEnds, piece.InternalLines);
            }
        }
    }

    private static bool IsLongEnough(CurvePath path, string name) => path.LengthMm > TextMark.WidthOfMm(name, LineMm, TextWeight.Regular);

    // Where a piece has no label, or no room for one: once it is cut out, nothing else would say what it is.
    private void NamePiece(DrawnPiece piece)
    {
        BoundingBox box = piece.Bounds;
        string name = piece.Piece.Name.Text.ToUpperInvariant();
        string cutting = string.Join("; ", piece.Piece.CuttingLines());
        var spots = new List<LabelSpot>();
        foreach (double down in Parts)
        {
            foreach (double across in Parts)
            {
                Point2D at = new(box.LeftMm + (across * (box.RightMm - box.LeftMm)), box.TopMm - (down * (box.TopMm - box.BottomMm)));
                if (piece.IsInside(at))
                {
                    spots.Add(LabelSpot.On(at));
                    spots.Add(LabelSpot.Upright(at));
                }
            }
        }

        // Smaller where the piece is small, and beside it in the end.
        foreach (double sizeMm in new[] { PieceMm, PieceMm / 2, LineMm })
        {
            if (_placer.TryPlace(name, sizeMm, TextWeight.Bold, Ink.Strong, spots) is { } label)
            {
                piece.Labels.Add(label);
                if (cutting.Length > 0)
                {
                    Place(cutting, LineMm, [Below(label), .. spots], piece.Labels);
                }

                return;
            }
        }

        (TextMark? beside, PathMark? leader) = _placer.PlaceBeside(name, LineMm, Ink.Strong, box.Centre, Direction.Right, null, GapMm, double.PositiveInfinity);
        piece.Labels.AddRange(new DrawingMark?[] { beside, leader }.OfType<DrawingMark>());
    }

    private static LabelSpot Below(TextMark label)
    {
        const double gapMm = 1.5;
        double lineMm = TypeWidths.Ascent + TypeWidths.Descent;
        double down = (lineMm * (label.SizeMm + LineMm) / 2) + gapMm;
        Point2D middle = label.Bounds.Centre;
        return label.AngleRad == 0 ? LabelSpot.On(middle + Direction.Down.TimesMm(down)) : LabelSpot.Upright(middle + Direction.Right.TimesMm(down));
    }

    private static Side[] Both => [Side.Left, Side.Right];

    private static Side[] Inside(DrawnPiece piece) => [piece.IsInsideLeft ? Side.Left : Side.Right];

    private static CurvePath Longest(PanelEdge edge)
    {
        CurvePath longest = edge.Stretches[0];
        foreach (CurvePath stretch in edge.Stretches)
        {
            longest = stretch.LengthMm > longest.LengthMm ? stretch : longest;
        }

        return longest;
    }

    private string WordsOf(PatternPiece piece, PieceEdge edge) => NameOf(piece, edge) + ", " + (edge.AllowanceMm == 0
        ? "no allowance"
        : _figures.Of(edge.AllowanceMm) + (edge.Role == EdgeRole.Hem ? " to turn up" : " allowance"));

    // A cutter says centre back; sewn, it is a seam, and what ends at a stop on it is in that seam.
    private static string NameOf(PatternPiece piece, PieceEdge edge)
    {
        PanelName panel = piece.Panel.Name;
        if (edge.Role != EdgeRole.Centre || (panel != PanelName.Front && panel != PanelName.Back))
        {
            return edge.Name.Text;
        }

        const string stop = " stop";
        string name = "centre " + panel.Text + (edge.IsOnFold ? string.Empty : " seam");
        foreach (InternalLine line in piece.InternalLines)
        {
            bool isOnIt = line.Kind == InternalLineKind.Stop && edge.SeamLine.ClosestTo(line.Path.Start).DistanceMm < OnSeamMm;
            name += isOnIt && line.Name.EndsWith(stop, StringComparison.Ordinal) ? ", " + line.Name.Substring(0, line.Name.Length - stop.Length) : string.Empty;
        }

        return name;
    }

    private bool Along(string text, double sizeMm, CurvePath path, Side[] sides, double[] parts, List<DrawingMark> marks)
    {
        var spots = new List<LabelSpot>();
        foreach (double gapMm in new[] { GapMm, 2 * GapMm, 4 * GapMm, 8 * GapMm })
        {
            foreach (Side side in sides)
            {
                spots.AddRange(LabelSpot.Along(path, side, gapMm, parts));
            }
        }

        return Place(text, sizeMm, spots, marks);
    }

    // Beyond the ends of a line that is shorter than its name; the last end first, since a line begins at the seam.
    private static IEnumerable<LabelSpot> Beyond(CurvePath path)
    {
        foreach (double gapMm in new[] { GapMm, 2 * GapMm, 4 * GapMm })
        {
            yield return LabelSpot.Beside(path.End, path.EndDirection, gapMm);
            yield return LabelSpot.Beside(path.Start, path.StartDirection.Reversed, gapMm);
        }
    }

    private bool Place(string text, double sizeMm, List<LabelSpot> spots, List<DrawingMark> marks)
        => Added(_placer.TryPlace(text, sizeMm, TextWeight.Regular, Ink.Middle, spots), marks);

    private bool Beside(string text, double sizeMm, List<LabelSpot> spots, List<DrawingMark> marks)
        => Added(_placer.TryPlaceBeside(text, sizeMm, TextWeight.Regular, Ink.Middle, spots), marks);

    private static bool Added(TextMark? label, List<DrawingMark> marks)
    {
        if (label is not null)
        {
            marks.Add(label);
        }

        return label is not null;
    }
}
