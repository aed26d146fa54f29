using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>All that follows from a panel and what was said about it, worked out once when it is first asked for.</summary>
internal sealed class PieceLines
{
    internal PieceLines(Panel half, PieceSettings settings)
    {
        Panel = settings.IsUnfolded ? PanelUnfolding.Unfold(half, settings.Fold!.Value) : half;
        SeamLine = Panel.CapOutline();
        if (!SeamLine.IsSimple())
        {
            throw PieceErrors.SeamCrosses(Panel, SeamLine);
        }

        double hand = SeamLine.SignedAreaMm2 > 0 ? 1 : -1;
        CutLine cut = Pieces.CutLine.Draw(Panel, settings, hand);
        CutOutline = cut.Outline;
        Edges = [.. cut.Edges.Select((edge, i) => new PieceEdge(edge.Edge.Name, edge.Edge.Role, edge.IsOnFold, edge.AllowanceMm, SeamOf(edge.Edge), cut.Lines[i], cut.Corners[i]))];
        var marks = new PieceMarks(Panel, cut, hand);
        Darts = marks.Darts();
        Notches = marks.Notches();
        InternalLines = Unfolded(half, settings);
    }

    internal Panel Panel { get; }

    internal CurvePath SeamLine { get; }

    internal CurvePath CutOutline { get; }

    internal PieceEdge[] Edges { get; }

    internal PieceDart[] Darts { get; }

    internal PieceNotch[] Notches { get; }

    internal InternalLine[] InternalLines { get; }

    private static InternalLine[] Unfolded(Panel half, PieceSettings settings)
    {
        if (!settings.IsUnfolded)
        {
            return settings.InternalLines;
        }

        Transform2D mirror = Transform2D.Mirror(PanelUnfolding.FoldLine(half, settings.Fold!.Value));
        return [.. settings.InternalLines, .. settings.InternalLines.Select(line => line.Transformed(mirror))];
    }

    private static CurvePath SeamOf(PanelEdge edge)
    {
        var segments = new List<PathSegment>();
        for (int i = 0; i < edge.Stretches.Count; i++)
        {
            segments.AddRange(edge.Stretches[i].SegmentsRaw);
            if (i < edge.Darts.Count)
            {
                segments.AddRange(edge.Darts[i].Cap.SegmentsRaw);
            }
        }

        return CurvePath.FromSegments(segments);
    }
}
