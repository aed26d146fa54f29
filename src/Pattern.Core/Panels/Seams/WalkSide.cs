using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>One edge of a seam as it is walked: from where to where, in which direction, past which notches.</summary>
internal sealed class WalkSide
{
    // Nearer to an end than this, a notch says what the end already says.
    private const double EndMm = 1e-6;

    private readonly double _fromMm;
    private readonly double _toMm;

    private WalkSide(Panel panel, PanelEdge edge, double fromMm, double toMm, bool backwards, double[] notchesMm)
    {
        Panel = panel;
        Edge = edge;
        _fromMm = fromMm;
        _toMm = toMm;
        Backwards = backwards;
        NotchesMm = notchesMm;
    }

    internal Panel Panel { get; }

    internal PanelEdge Edge { get; }

    /// <summary>Whether the edge is walked from its end to its start.</summary>
    internal bool Backwards { get; }

    /// <summary>The notches on the way, ends not counted, along the way from where it begins.</summary>
    internal double[] NotchesMm { get; }

    internal double LengthMm => _toMm - _fromMm;

    /// <summary>Where the part that is sewn begins, along the edge from its own start.</summary>
    internal double FromMm => _fromMm;

    internal static bool TryFind(EdgeOf edge, IReadOnlyList<Panel> panels, out Panel? panel, out PanelEdge? found)
    {
        for (int i = 0; i < panels.Count; i++)
        {
            if (panels[i].Name == edge.PanelName && panels[i].TryFindEdge(edge.EdgeName, out found))
            {
                panel = panels[i];
                return true;
            }
        }

        panel = null;
        found = null;
        return false;
    }

    /// <summary>The way along an edge; null where the edge does not have the marks that the way runs between.</summary>
    internal static WalkSide? Along(Panel panel, PanelEdge edge, SeamMark from, SeamMark to, bool backwards)
    {
        double lengthMm = edge.SewnLengthMm();
        double[] all = NotchesOf(panel, edge.Name);
        double fromMm = from.ResolveMm(lengthMm, all);
        double toMm = to.ResolveMm(lengthMm, all);
        if (!(toMm - fromMm > EndMm))
        {
            return null;
        }

        // Most often all notches lie on the way, and the array serves as it is.
        int first = 0;
        while (first < all.Length && all[first] <= fromMm + EndMm)
        {
            first++;
        }

        int beyond = all.Length;
        while (beyond > first && all[beyond - 1] >= toMm - EndMm)
        {
            beyond--;
        }

        double[] notches = beyond - first == all.Length ? all : new double[beyond - first];
        for (int i = first; i < beyond; i++)
        {
            notches[i - first] = all[i] - fromMm;
        }

        if (backwards)
        {
            Array.Reverse(notches);
            for (int i = 0; i < notches.Length; i++)
            {
                notches[i] = toMm - fromMm - notches[i];
            }
        }

        return new WalkSide(panel, edge, fromMm, toMm, backwards, notches);
    }

    /// <summary>The notches of an edge along the sewn edge from its start, in its order.</summary>
    internal static double[] NotchesOf(Panel panel, EdgeName edge)
    {
        IReadOnlyList<Notch> notches = panel.Notches;
        int count = 0;
        for (int i = 0; i < notches.Count; i++)
        {
            count += notches[i].Edge == edge ? 1 : 0;
        }

        double[] found = count == 0 ? [] : new double[count];
        for (int i = 0, next = 0; i < notches.Count; i++)
        {
            if (notches[i].Edge == edge)
            {
                found[next++] = notches[i].FromStartMm;
            }
        }

        Array.Sort(found);
        return found;
    }

    /// <summary>Whether the part that is sewn goes up to an end of the edge, in its own order.</summary>
    internal bool Reaches(EdgeEnd end) => end == EdgeEnd.Start ? _fromMm <= EndMm : _toMm >= Edge.SewnLengthMm() - EndMm;

    /// <summary>Where a mark is along the edge from its own start; NaN where the edge has no such place.</summary>
    internal double ResolveMm(SeamMark mark) => mark.ResolveMm(Edge.SewnLengthMm(), NotchesOf(Panel, Edge.Name));

    /// <summary>From a distance along the way to one along the edge from its own start.</summary>
    internal double OnEdgeMm(double alongMm) => Backwards ? _toMm - alongMm : _fromMm + alongMm;

    /// <summary>From a distance along the edge from its own start to one along the way.</summary>
    internal double AlongMm(double onEdgeMm) => Backwards ? _toMm - onEdgeMm : onEdgeMm - _fromMm;

    internal Point2D PointAtMm(double alongMm) => Edge.PointAtSewnMm(OnEdgeMm(alongMm));
}
