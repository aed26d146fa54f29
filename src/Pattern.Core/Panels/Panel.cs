using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>One flat part of a block: named edges around it, darts on them, and the grain. Immutable.</summary>
/// <remarks>The edges run head to tail around the panel, beginning at the top of the centre line: waist, side, hem, centre. A panel
/// and its mirror image keep that order, so the outline may run either way round.</remarks>
public sealed class Panel
{
    private readonly PanelEdge[] _edges;

    internal Panel(PanelName name, PanelEdge[] edges, LineSegment grainline, Notch[] notches)
    {
        Name = name;
        _edges = edges;
        Grainline = grainline;
        Notches = notches;
    }

    /// <summary>The name of the panel.</summary>
    public PanelName Name { get; }

    /// <summary>The edges in order around the panel, head to tail.</summary>
    public IReadOnlyList<PanelEdge> Edges => _edges;

    /// <summary>All darts of the panel, edge by edge.</summary>
    public IEnumerable<Dart> Darts => _edges.SelectMany(edge => edge.Darts);

    /// <summary>Where the straight grain of the cloth lies.</summary>
    public LineSegment Grainline { get; }

    /// <summary>Marks that have to meet their twins on the panel next to this one.</summary>
    public IReadOnlyList<Notch> Notches { get; }

    /// <summary>Returns the edge of that name.</summary>
    /// <exception cref="ConstructionException">The panel has no such edge.</exception>
    [Pure]
    public PanelEdge FindEdge(EdgeName name)
        => TryFindEdge(name, out PanelEdge? edge)
            ? edge!
            : throw new ConstructionException(DiagnosticCode.EdgeNotOnPanel, Name, name, string.Join(", ", _edges.Select(e => e.Name.Text))) { Landmark = name.Text };

    /// <summary>Looks for the edge of that name.</summary>
    /// <returns>Whether the panel has it.</returns>
    public bool TryFindEdge(EdgeName name, out PanelEdge? edge)
    {
        foreach (PanelEdge candidate in _edges)
        {
            if (candidate.Name == name)
            {
                edge = candidate;
                return true;
            }
        }

        edge = null;
        return false;
    }

    /// <summary>The seam line all around, going down one leg of every dart to its apex and up the other: the cloth outside the darts.</summary>
    [Pure]
    public CurvePath SeamOutline() => Outline(withCaps: false);

    /// <summary>The seam line all around, crossing every dart along its cap: the paper to cut out, before allowances.</summary>
    [Pure]
    public CurvePath CapOutline() => Outline(withCaps: true);

    private CurvePath Outline(bool withCaps)
    {
        var segments = new List<PathSegment>(24);
        foreach (PanelEdge edge in _edges)
        {
            for (int i = 0; i < edge.Stretches.Count; i++)
            {
                segments.AddRange(edge.Stretches[i].SegmentsRaw);
                if (i >= edge.Darts.Count)
                {
                    continue;
                }

                Dart dart = edge.Darts[i];
                if (withCaps)
                {
                    segments.AddRange(dart.Cap.Segments);
                }
                else
                {
                    segments.Add(PathSegment.FromLine(new LineSegment(dart.CentreLeg, dart.Apex)));
                    segments.Add(PathSegment.FromLine(new LineSegment(dart.Apex, dart.SideLeg)));
                }
            }
        }

        return CurvePath.FromSegments(segments).Closed();
    }
}
