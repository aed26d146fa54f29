using System;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <content>How an operation makes a new panel, and what of the panel goes along.</content>
public sealed partial class Panel
{
    /// <summary>Returns a copy of this panel, moved, turned or mirrored.</summary>
    /// <param name="transform">A motion that keeps shape and size; a mirror makes the other half.</param>
    /// <exception cref="ArgumentException">The transform stretches or scales.</exception>
    [Pure]
    public Panel Transformed(Transform2D transform)
    {
        if (!transform.KeepsShape || Math.Abs(transform.ScaleFactor - 1) > 1e-12)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.PanelNotRigid, Name), nameof(transform));
        }

        PanelEdge[] edges = [.. _edges.Select(edge => new PanelEdge(
            edge.Name,
            edge.Role,
            [.. edge.Stretches.Select(stretch => stretch.Transformed(transform))],
            [.. edge.Darts.Select(dart => dart.Shape.Transformed(transform))]))];
        return new Panel(Name, edges, new PanelFeatures(
            Grainline.Transformed(transform),
            [.. Notches.Select(notch => new Notch(notch.Edge, transform.Apply(notch.Position), notch.FromStartMm, notch.Count))],
            [.. Landmarks.Select(landmark => landmark.At(transform.Apply(landmark.Position)))],
            [.. InsideDarts.Select(dart => dart.Transformed(transform))]));
    }

    /// <summary>Returns a copy of this panel with its grainline parallel to the straight line from the start of an edge to its end.</summary>
    /// <param name="edge">The edge that lies along the grain, such as the centre line of a panel that was turned.</param>
    /// <exception cref="ConstructionException">The panel has no such edge.</exception>
    [Pure]
    public Panel WithGrainlineAlong(EdgeName edge)
    {
        PanelEdge along = FindEdge(edge);
        return new Panel(Name, _edges, _features with { Grainline = Grain.Within(SeamOutline(), along.Start.DirectionTo(along.End)) });
    }

    /// <summary>The panel with other edges of the same names; notches stay as far along the sewn edge as they were.</summary>
    internal Panel WithEdges(PanelEdge[] edges, PanelFeatures features, string step)
    {
        var panel = new Panel(Name, edges, features);
        Notch[] notches = [.. features.Notches.Select(notch => notch.On(panel.FindEdge(notch.Edge)))];
        panel = new Panel(Name, edges, features with { Notches = notches });
        panel.RefuseCrossedOutline(step);
        return panel;
    }

    /// <summary>What lies in a region that turns goes with it: named points and double-pointed darts. The grain keeps to what stays.</summary>
    private PanelFeatures Turned(CurvePath region, Transform2D turn)
    {
        bool Goes(Point2D point) => region.ContainmentOf(point) != Containment.Outside;
        return _features with
        {
            Landmarks = [.. Landmarks.Select(l => Goes(l.Position) ? l.At(turn.Apply(l.Position)) : l)],
            InsideDarts = [.. InsideDarts.Select(d => Goes(d.FirstApex) ? d.Transformed(turn) : d)],
        };
    }

    private const double OnLineMm = 1e-6;

    internal void RefuseCrossedOutline(string step)
    {
        if (HasSimpleOutline())
        {
            return;
        }

        CurvePath outline = SeamOutline();

        // A dart that ends on an edge holds the panel together at its apex: the outline touches itself there, and that is meant. Its two legs meet at most two
        // segments there, each at its end or at its beginning.
        Point2D[] apexes = [.. Darts.Select(dart => dart.Apex)];
        PathIntersection[] crossings = [.. outline.FirstSelfIntersections(1 + (8 * apexes.Length)).Where(p => !Array.Exists(apexes, apex => apex.DistanceMm(p.Point) < 1e-4))];
        if (crossings.Length == 0)
        {
            return;
        }

        Point2D first = crossings[0].Point;
        EdgeName one = NearestEdge(first, default).Name;
        throw new ConstructionException(DiagnosticCode.OutlineWouldCross, Name, first, one, NearestEdge(first, one).Name)
        {
            Step = step,
            Landmark = one.Text,
        };
    }

    internal PanelEdge NearestEdge(Point2D point, EdgeName otherThan)
        => _edges.Where(e => e.Name != otherThan).OrderBy(e => e.Stretches.Min(s => s.ClosestTo(point).DistanceMm)).First();
}
