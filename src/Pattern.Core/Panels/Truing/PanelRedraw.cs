using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>Puts redrawn edges into a panel; notches and named points go along with the edge that they lie on.</summary>
internal sealed class PanelRedraw
{
    // A named point that was computed from the line lies on it within this.
    private const double OnLineMm = 1e-6;

    private readonly Panel _panel;
    private readonly string _step;
    private readonly PanelEdge[] _edges;
    private readonly List<(int Index, double AddedMm, bool IsShare)> _redrawn = new(3);

    internal PanelRedraw(Panel panel, string step)
    {
        _panel = panel;
        _step = step;
        _edges = (PanelEdge[])panel.EdgesRaw.Clone();
    }

    internal PanelEdge this[int index] => _edges[index];

    /// <summary>An edge that changed near one end: what lies on it stays where it is on the sheet.</summary>
    /// <param name="index">Which edge.</param>
    /// <param name="edge">The edge now.</param>
    /// <param name="addedAtStartMm">How much longer it became before what lies on it.</param>
    internal void Replace(int index, PanelEdge edge, double addedAtStartMm)
    {
        _edges[index] = edge;
        _redrawn.Add((index, addedAtStartMm, false));
    }

    /// <summary>An edge that was drawn again all along: what lies on it stays at the same part of its sewn length.</summary>
    internal void ReplaceAllAlong(int index, PanelEdge edge)
    {
        _edges[index] = edge;
        _redrawn.Add((index, 0, true));
    }

    internal Panel Make()
    {
        var notches = (Notch[])_panel.Features.Notches.Clone();
        for (int i = 0; i < notches.Length; i++)
        {
            int index = _panel.IndexOf(notches[i].Edge);
            double newMm = _edges[index].SewnLengthMm();
            double atMm = Moved(index, notches[i].FromStartMm);
            if (!(atMm >= -OnLineMm && atMm <= newMm + OnLineMm))
            {
                throw PanelErrors.OffEdge(_panel.Name, notches[i].Edge, atMm, newMm, _step);
            }

            notches[i] = new Notch(notches[i].Edge, notches[i].Position, Raw.Clamp(atMm, 0, newMm), notches[i].Count);
        }

        var landmarks = (Landmark[])_panel.Features.Landmarks.Clone();
        for (int i = 0; i < landmarks.Length; i++)
        {
            landmarks[i] = landmarks[i].At(Moved(landmarks[i].Position));
        }

        return _panel.WithEdges(_edges, _panel.Features with { Notches = notches, Landmarks = landmarks }, _step);
    }

    private double Moved(int index, double atMm)
    {
        foreach ((int edge, double added, bool isShare) in _redrawn)
        {
            if (edge == index)
            {
                atMm = isShare ? atMm * _edges[index].SewnLengthMm() / _panel.EdgesRaw[index].SewnLengthMm() : atMm + added;
            }
        }

        return atMm;
    }

    private Point2D Moved(in Point2D point)
    {
        foreach ((int index, _, _) in _redrawn)
        {
            PanelEdge old = _panel.EdgesRaw[index];
            PanelEdge now = _edges[index];

            // Corners and legs first: they are exact, and belong to more than one line.
            if (point.DistanceMm(old.Start) < OnLineMm)
            {
                return now.Start;
            }

            if (point.DistanceMm(old.End) < OnLineMm)
            {
                return now.End;
            }

            for (int i = 0; i < old.Darts.Count; i++)
            {
                if (point.DistanceMm(old.Darts[i].StartLeg) < OnLineMm)
                {
                    return now.Darts[i].StartLeg;
                }

                if (point.DistanceMm(old.Darts[i].EndLeg) < OnLineMm)
                {
                    return now.Darts[i].EndLeg;
                }
            }
        }

        foreach ((int index, _, _) in _redrawn)
        {
            double before = 0;
            foreach (CurvePath stretch in _panel.EdgesRaw[index].StretchesRaw)
            {
                PathLocation nearest = stretch.ClosestTo(point);
                if (nearest.DistanceMm < OnLineMm)
                {
                    double atMm = Moved(index, before + stretch.LengthToMm(nearest));
                    return _edges[index].PointAtSewnMm(Math.Max(0, Math.Min(atMm, _edges[index].SewnLengthMm())));
                }

                before += stretch.LengthMm;
            }
        }

        return point;
    }
}
