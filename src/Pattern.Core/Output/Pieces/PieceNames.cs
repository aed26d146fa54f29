using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>The words along the lines of pieces: edges with their allowance, grainlines, folds, lines inside.</summary>
internal sealed class PieceNames
{
    private const double EdgeMm = 5;
    private const double LineMm = 4.5;
    private const double GapMm = 2;

    private static readonly double[] NearMiddle = [.5, .45, .55, .4, .6, .35, .65, .3, .7, .25, .75, .2, .8, .15, .85, .1, .9];
    private static readonly double[] NearEnds = [.2, .8, .25, .75, .15, .85, .3, .7, .35, .65, .4, .6, .5, .1, .9];

    private readonly TapeFigures _figures;
    private readonly LabelPlacer _placer;

    internal PieceNames(TapeFigures figures, LabelPlacer placer)
    {
        _figures = figures;
        _placer = placer;
    }

    /// <summary>Adds every name that finds room: of edges to a list of their own, the others to the layer of what they name.</summary>
    internal void Place(DrawnPiece piece, List<DrawingMark> names)
    {
        foreach (PieceEdge edge in piece.Piece.Edges)
        {
            if (edge.IsOnFold)
            {
                Along("place on the fold", EdgeMm, piece.Placed(edge.SeamLine), Inside(piece), NearMiddle, piece.Folds);
            }
        }

        for (int i = 0; i < piece.Piece.Edges.Count; i++)
        {
            PieceEdge edge = piece.Piece.Edges[i];
            if (!edge.IsOnFold)
            {
                Along(WordsOf(edge), EdgeMm, piece.Placed(Longest(piece.Piece.Panel.Edges[i])), Inside(piece), NearMiddle, names);
            }
        }

        Along("straight grain", EdgeMm, piece.Placed(CurvePath.FromLine(piece.Piece.Grainline)), Both, NearMiddle, piece.Grainlines);
        foreach (InternalLine line in piece.Piece.InternalLines)
        {
            CurvePath path = piece.Placed(line.Path);
            if (path.LengthMm > TextWidths.WidthMm(line.Name, LineMm, TextWeight.Regular))
            {
                Along(line.Name, LineMm, path, Both, NearEnds, piece.InternalLines);
            }
            else
            {
                Place(line.Name, LineMm, [.. Beyond(path)], piece.InternalLines);
            }
        }
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

    private string WordsOf(PieceEdge edge) => edge.Name.Text + ", " + (edge.AllowanceMm == 0
        ? "no allowance"
        : _figures.Of(edge.AllowanceMm) + (edge.Role == EdgeRole.Hem ? " to turn up" : " allowance"));

    private void Along(string text, double sizeMm, CurvePath path, Side[] sides, double[] parts, List<DrawingMark> marks)
    {
        var spots = new List<LabelSpot>();
        foreach (double gapMm in new[] { GapMm, 2 * GapMm, 4 * GapMm, 8 * GapMm })
        {
            foreach (Side side in sides)
            {
                spots.AddRange(LabelSpot.Along(path, side, gapMm, parts));
            }
        }

        Place(text, sizeMm, spots, marks);
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

    private void Place(string text, double sizeMm, List<LabelSpot> spots, List<DrawingMark> marks)
    {
        if (_placer.TryPlace(text, sizeMm, TextWeight.Regular, Ink.Middle, spots) is { } label)
        {
            marks.Add(label);
        }
    }
}
