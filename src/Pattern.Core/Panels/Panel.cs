using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>One flat part of a block: named edges around it, darts on them, and the grain. Immutable.</summary>
/// <remarks>The edges run head to tail around the panel. A panel
/// and its mirror image keep that order, so the outline may run either way round. Every verb returns a new panel; landmarks, notches
/// and grainline travel with it.</remarks>
public sealed partial class Panel
{
    private readonly PanelEdge[] _edges;
    private readonly PanelFeatures _features;

    internal Panel(PanelName name, PanelEdge[] edges, PanelFeatures features)
    {
        Name = name;
        _edges = edges;
        _features = features;
    }

    /// <summary>The name of the panel.</summary>
    public PanelName Name { get; }

    /// <summary>The edges in order around the panel, head to tail.</summary>
    public IReadOnlyList<PanelEdge> Edges => _edges;

    /// <summary>All darts that stand on edges, edge by edge.</summary>
    public IEnumerable<Dart> Darts => _edges.SelectMany(edge => edge.Darts);

    /// <summary>The double-pointed darts inside the panel.</summary>
    public IReadOnlyList<InsideDart> InsideDarts => _features.InsideDarts;

    /// <summary>Named points of the panel.</summary>
    public IReadOnlyList<Landmark> Landmarks => _features.Landmarks;

    /// <summary>Where the straight grain of the cloth lies.</summary>
    public LineSegment Grainline => _features.Grainline;

    /// <summary>Marks that have to meet their twins on the panel next to this one.</summary>
    public IReadOnlyList<Notch> Notches => _features.Notches;

    internal PanelFeatures Features => _features;

    internal PanelEdge[] EdgesRaw => _edges;

    /// <summary>Begins a panel of your own.</summary>
    [Pure]
    public static PanelBuilder Named(PanelName name) => new(name);

    /// <summary>Returns the edge of that name.</summary>
    /// <exception cref="ConstructionException">The panel has no such edge.</exception>
    [Pure]
    public PanelEdge FindEdge(EdgeName name) => _edges[IndexOf(name)];

    /// <summary>Looks for the edge of that name.</summary>
    /// <returns>Whether the panel has it.</returns>
    public bool TryFindEdge(EdgeName name, out PanelEdge? edge)
    {
        edge = null;
        foreach (PanelEdge candidate in _edges)
        {
            if (candidate.Name == name)
            {
                edge = candidate;
                return true;
            }
        }

        return false;
    }

    /// <summary>The word for a way along an edge: the name of the edge that it meets there; <c>start</c> or <c>end</c> where it meets one and the same at both ends.</summary>
    /// <remarks>On a skirt's waist <c>centre</c> and <c>side</c>, on a sleeve head <c>back underarm</c> and <c>front underarm</c>.</remarks>
    /// <param name="edge">The edge.</param>
    /// <param name="way">The way along it.</param>
    /// <exception cref="ConstructionException">The panel has no such edge.</exception>
    [Pure]
    public string WordFor(EdgeName edge, Toward way)
    {
        Guard.Choice((int)way, 2, nameof(way));
        EdgeName there = Neighbour(edge, way);
        return there != Neighbour(edge, way == Toward.Start ? Toward.End : Toward.Start) ? there.Text : way == Toward.Start ? "start" : "end";
    }

    /// <summary>Returns the dart of that name.</summary>
    /// <exception cref="ConstructionException">The panel has no such edge, or the edge no such dart.</exception>
    [Pure]
    public Dart FindDart(DartName name)
    {
        IReadOnlyList<Dart> darts = FindEdge(name.Edge).Darts;
        return name.Number >= 1 && name.Number <= darts.Count
            ? darts[name.Number - 1]
            : throw new ConstructionException(DiagnosticCode.DartNotOnEdge, name, Name, darts.Count) { Landmark = name.Edge.Text };
    }

    /// <summary>The seam line all around, going down one leg of every dart to its apex and up the other: the cloth outside the darts.</summary>
    [Pure]
    public CurvePath SeamOutline() => Outline(withCaps: false);

    /// <summary>The seam line all around, crossing every dart along its cap: the paper to cut out, before allowances.</summary>
    /// <exception cref="ConstructionException">A dart is too wide for the seam line that it is pressed onto.</exception>
    [Pure]
    public CurvePath CapOutline() => Outline(withCaps: true);

    internal EdgeName Neighbour(EdgeName edge, Toward way)
        => _edges[(IndexOf(edge) + (way == Toward.Start ? _edges.Length - 1 : 1)) % _edges.Length].Name;

    internal int IndexOf(EdgeName name)
    {
        for (int i = 0; i < _edges.Length; i++)
        {
            if (_edges[i].Name == name)
            {
                return i;
            }
        }

        throw new ConstructionException(DiagnosticCode.EdgeNotOnPanel, Name, name, string.Join(", ", _edges.Select(e => e.Name.Text))) { Landmark = name.Text };
    }

    /// <summary>Whether the outline, down one leg of every dart and up the other, is free of crossings.</summary>
    internal bool HasSimpleOutline()
    {
        PathSegment[] segments = OutlineRoom.Rent(CountSegments(withCaps: false));
        Write(segments, withCaps: false);
        return CurvePath.Trusted(segments, isClosed: true).IsSimple();
    }

    private CurvePath Outline(bool withCaps)
    {
        var segments = new PathSegment[CountSegments(withCaps)];
        Write(segments, withCaps);

        // The edges of a panel run head to tail by construction.
        return CurvePath.Trusted(segments, isClosed: true);
    }

    private int CountSegments(bool withCaps)
    {
        int count = 0;
        foreach (PanelEdge edge in _edges)
        {
            foreach (CurvePath stretch in edge.StretchesRaw)
            {
                count += stretch.SegmentsRaw.Length;
            }

            foreach (Dart dart in edge.DartsRaw)
            {
                count += withCaps ? dart.Cap.SegmentsRaw.Length : 2;
            }
        }

        return count;
    }

    private void Write(PathSegment[] segments, bool withCaps)
    {
        int next = 0;
        foreach (PanelEdge edge in _edges)
        {
            for (int i = 0; i < edge.StretchesRaw.Length; i++)
            {
                Add(edge.StretchesRaw[i].SegmentsRaw, segments, ref next);
                if (i >= edge.DartsRaw.Length)
                {
                    continue;
                }

                Dart dart = edge.DartsRaw[i];
                if (withCaps)
                {
                    Add(dart.Cap.SegmentsRaw, segments, ref next);
                }
                else
                {
                    segments[next++] = PathSegment.FromLine(new LineSegment(dart.StartLeg, dart.Apex));
                    segments[next++] = PathSegment.FromLine(new LineSegment(dart.Apex, dart.EndLeg));
                }
            }
        }
    }

    private static void Add(PathSegment[] from, PathSegment[] to, ref int next)
    {
        from.CopyTo(to, next);
        next += from.Length;
    }

    /// <summary>Name and edges.</summary>
    public override string ToString()
        => Name + ": " + string.Join(", ", _edges.Select(edge => edge.Name.Text));
}
