using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>The line beside one edge, dart by dart.</summary>
/// <remarks>The allowance is laid along the edge with its darts closed, as it will be worn. The line beside it is cut where the legs, drawn on, cross it, and
/// opened again; the allowance of a dart's cap is folded from it just as the cap is folded from the seam line. So a sewn and pressed
/// dart has its allowance exactly under that of the edge.</remarks>
internal sealed class EdgeCut
{
    private const double OnLineMm = 1e-6;

    private readonly CurvePath[] _caps;

    private EdgeCut(PanelEdge edge, double allowanceMm, bool isOnFold, CutStretch[] stretches, CurvePath[] caps)
    {
        Edge = edge;
        AllowanceMm = allowanceMm;
        IsOnFold = isOnFold;
        Stretches = stretches;
        _caps = caps;
    }

    internal PanelEdge Edge { get; }

    internal double AllowanceMm { get; }

    internal bool IsOnFold { get; }

    internal CutStretch[] Stretches { get; }

    internal CutStretch First => Stretches[0];

    internal CutStretch Last => Stretches[Stretches.Length - 1];

    internal CurvePath[] Caps => _caps;

    /// <summary>Lays the allowance along an edge.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="allowanceMm">How wide.</param>
    /// <param name="isOnFold">Whether the edge lies on the fold.</param>
    /// <param name="hand">+1 where the panel runs counter-clockwise, else -1.</param>
    /// <param name="reachMm">How far the line runs on at both ends.</param>
    /// <returns>The line, or null where nothing is left of it.</returns>
    internal static EdgeCut? Lay(PanelEdge edge, double allowanceMm, bool isOnFold, double hand, double reachMm)
    {
        CurvePath seam = edge.Closed();
        if (ParallelLine.Beside(seam, -hand * allowanceMm, reachMm) is not { } full)
        {
            return null;
        }

        int darts = edge.Darts.Count;
        if (darts == 0)
        {
            return new EdgeCut(edge, allowanceMm, isOnFold, [new CutStretch(full, true, true)], []);
        }

        var stretches = new CutStretch[darts + 1];
        var caps = new CurvePath[darts];
        Transform2D opening = Transform2D.Identity;
        PathSpot from = PathSpot.StartOf(full);
        int passed = 0;
        for (int k = 0; k <= darts; k++)
        {
            passed += edge.Stretches[k].SegmentsRaw.Length;
            PathSpot? leg = k == darts ? PathSpot.EndOf(full)
                : allowanceMm == 0 ? new PathSpot(passed, 1)
                : AtLeg(edge, k, full, opening.Inverted());
            if (leg is not { } to || !from.IsBefore(to))
            {
                return null;
            }

            if (Part(full, from, to, opening) is not { } stretch)
            {
                return null;
            }

            stretches[k] = new CutStretch(stretch, k == 0, k == darts);
            if (k == darts)
            {
                break;
            }

            Dart dart = edge.Darts[k];
            bool towardStart = dart.PressedToward == Toward.Start;
            Transform2D beyond = opening;
            opening = Transform2D.RotationRaw(opening.Inverted().Apply(dart.Apex), Direction.FromRadians(dart.SignedAngleRad)).Then(opening);
            CurvePath? under = towardStart ? Part(full, PathSpot.StartOf(full), to, beyond) : Part(full, to, PathSpot.EndOf(full), opening);
            if (under is null)
            {
                return null;
            }

            caps[k] = allowanceMm == 0 ? dart.Cap : DartCaps.Fold(dart.Shape, under, towardStart);
            from = to;
        }

        return new EdgeCut(edge, allowanceMm, isOnFold, stretches, caps);
    }

    /// <summary>Whether the corners have left nothing of a stretch.</summary>
    internal bool HasVanished => Array.Exists(Stretches, stretch => stretch.HasVanished);

    /// <summary>The cut line along the edge, once both corners have ended it.</summary>
    internal List<PathSegment> Line()
    {
        var line = new List<PathSegment>(8);
        for (int k = 0; k < Stretches.Length; k++)
        {
            line.AddRange(Stretches[k].Trimmed());
            if (k < _caps.Length)
            {
                line.AddRange(_caps[k].SegmentsRaw);
            }
        }

        return line;
    }

    // Where the line beside the closed edge crosses a dart's leg, drawn on beyond the seam line.
    private static PathSpot? AtLeg(PanelEdge edge, int index, CurvePath full, in Transform2D closing)
    {
        Dart dart = edge.Darts[index];
        Point2D apex = closing.Apply(dart.Apex);
        Point2D leg = closing.Apply(dart.StartLeg);
        double legMm = apex.DistanceMm(leg);
        double nearest = double.PositiveInfinity;
        PathSpot? spot = null;
        foreach (PathIntersection hit in full.IntersectionsWith(Geometry.Line.Through(apex, leg)).Points)
        {
            double beyondMm = hit.SecondParameter - legMm;
            if (beyondMm > OnLineMm && beyondMm < nearest)
            {
                nearest = beyondMm;
                spot = new PathSpot(hit.FirstSegment, hit.FirstParameter);
            }
        }

        return spot;
    }

    // Null where there is nothing between.
    private static CurvePath? Part(CurvePath full, PathSpot from, PathSpot to, in Transform2D opening)
        => PathSpot.Between(full, from, to) is { Count: > 0 } part ? CurvePath.FromSegments(part).Transformed(opening) : null;
}
