using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>Makes a panel of your own, edge by edge. Immutable: every method returns a new builder.</summary>
/// <example><code>
/// Panel panel = Panel.Named(PanelName.Front)
///     .WithEdge(EdgeName.Waist, EdgeRole.Opening, waist)
///     .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, side)
///     .WithEdge(EdgeName.Hem, EdgeRole.Hem, hem)
///     .WithEdge(EdgeName.Centre, EdgeRole.Centre, centre)
///     .WithGrainline(grain)
///     .Make();
/// </code></example>
public sealed class PanelBuilder
{
    // Ends that a caller computed from the same point in two ways.
    private const double GapMm = 1e-6;

    private readonly PanelName _name;
    private readonly (EdgeName Name, EdgeRole Role, CurvePath Path)[] _edges;
    private readonly (EdgeName Edge, double FromStartMm, int Count)[] _notches;
    private readonly Landmark[] _landmarks;
    private readonly LineSegment? _grainline;

    internal PanelBuilder(PanelName name)
        : this(name, [], [], [], null)
    {
    }

    private PanelBuilder(PanelName name, (EdgeName, EdgeRole, CurvePath)[] edges, (EdgeName, double, int)[] notches, Landmark[] landmarks, LineSegment? grainline)
    {
        _name = name;
        _edges = edges;
        _notches = notches;
        _landmarks = landmarks;
        _grainline = grainline;
    }

    /// <summary>Adds the next edge. It begins where the one before it ended; the last one ends where the first began.</summary>
    [Pure]
    public PanelBuilder WithEdge(EdgeName name, EdgeRole role, CurvePath path)
        => new(_name, [.. _edges, (name, role, Guard.NotNull(path, nameof(path)))], _notches, _landmarks, _grainline);

    /// <summary>Adds a notch.</summary>
    /// <param name="edge">The edge that carries it.</param>
    /// <param name="distanceFromStart">Along the edge, both ends included.</param>
    /// <param name="count">How many cuts make the mark, 1 to 3.</param>
    [Pure]
    public PanelBuilder WithNotch(EdgeName edge, Length distanceFromStart, int count = 1)
        => new(_name, _edges, [.. _notches, (edge, Guard.Millimetres(distanceFromStart, nameof(distanceFromStart)), Guard.InRange(count, 1, 3, nameof(count)))], _landmarks, _grainline);

    /// <summary>Adds a named point.</summary>
    [Pure]
    public PanelBuilder WithLandmark(LandmarkName name, Point2D position)
        => new(_name, _edges, _notches, [.. _landmarks, new Landmark(Guard.NotNull(name, nameof(name)), position)], _grainline);

    /// <summary>Says where the straight grain lies.</summary>
    /// <remarks>Default: upright in the middle of the panel.</remarks>
    [Pure]
    public PanelBuilder WithGrainline(LineSegment grainline) => new(_name, _edges, _notches, _landmarks, grainline);

    /// <summary>Makes the panel.</summary>
    /// <exception cref="ConstructionException">The edges do not run head to tail or cross each other, a name stands twice, or a notch lies off its edge.</exception>
    [Pure]
    public Panel Make()
    {
        PanelEdge[] edges = [.. _edges.Select(e => new PanelEdge(e.Name, e.Role, e.Path))];
        RefuseGaps(_name, edges);
        Notch[] notches = [.. _notches.Select(n => Place(n, edges))];
        return Finish(_name, edges, _edges.SelectMany(e => e.Path.Segments), notches, _landmarks, _grainline);
    }

    /// <summary>Makes a panel of edges that run head to tail; the outline is the same with its darts left out.</summary>
    internal static Panel Finish(PanelName name, PanelEdge[] edges, IEnumerable<PathSegment> outline, Notch[] notches, Landmark[] landmarks, LineSegment? grainline)
    {
        new Panel(name, edges, new PanelFeatures(default, [], [], [])).RefuseCrossedOutline("making a panel");
        LineSegment grain = grainline ?? Grain.Within(CurvePath.FromSegments(outline).Closed(), Direction.Down);
        RefuseNoLength(name, "the grainline", grain.LengthMm);
        return new Panel(name, edges, new PanelFeatures(grain, notches, landmarks, []));
    }

    /// <summary>Refuses edges that do not make a panel: too few, of one name, or not head to tail.</summary>
    internal static void RefuseGaps(PanelName panel, PanelEdge[] edges)
    {
        if (edges.Length < 2)
        {
            throw new ConstructionException(DiagnosticCode.PanelNotClosed, panel, edges.Length, Length.Zero) { Step = "making a panel" };
        }

        for (int i = 0; i < edges.Length; i++)
        {
            PanelEdge edge = edges[i];
            PanelEdge next = edges[(i + 1) % edges.Length];
            double gap = edge.End.DistanceMm(next.Start);
            if (gap > GapMm)
            {
                throw new ConstructionException(DiagnosticCode.EdgesApart, panel, edge.Name, next.Name, Length.FromMillimeters(gap))
                {
                    Step = "making a panel",
                    Landmark = edge.Name.Text,
                    Measured = Length.FromMillimeters(gap),
                    Allowed = Length.FromMillimeters(GapMm),
                };
            }

            RefuseNoLength(panel, "edge " + edge.Name.Text, edge.Stretches.Sum(stretch => stretch.LengthMm));
            if (edges.Count(e => e.Name == edge.Name) > 1)
            {
                throw new ConstructionException(DiagnosticCode.EdgeNamedTwice, panel, edge.Name) { Step = "making a panel", Landmark = edge.Name.Text };
            }
        }
    }

    private Notch Place((EdgeName Edge, double FromStartMm, int Count) notch, PanelEdge[] edges)
    {
        PanelEdge edge = edges.FirstOrDefault(e => e.Name == notch.Edge)
            ?? throw new ConstructionException(DiagnosticCode.EdgeNotOnPanel, _name, notch.Edge, string.Join(", ", edges.Select(e => e.Name.Text))) { Landmark = notch.Edge.Text };
        double length = edge.SewnLengthMm();
        return notch.FromStartMm >= 0 && notch.FromStartMm <= length
            ? new Notch(edge.Name, edge.PointAtSewnMm(notch.FromStartMm), notch.FromStartMm, notch.Count)
            : throw PanelErrors.OffEdge(_name, edge.Name, notch.FromStartMm, length, "placing a notch");
    }

    internal static void RefuseNoLength(PanelName panel, string line, double lengthMm)
    {
        if (lengthMm == 0)
        {
            throw new ConstructionException(DiagnosticCode.LineWithoutLength, panel, line, Length.Zero) { Step = "making a panel", Landmark = line };
        }
    }

    /// <summary>The panel and its edges so far.</summary>
    public override string ToString()
        => _name + ": " + string.Join(", ", _edges.Select(edge => edge.Name.Text));
}
