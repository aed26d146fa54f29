using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>A plan laid out on panels: every point a spot, every movable some unknowns, every condition some equations. Holds for all panels of the same make.</summary>
internal sealed partial class TruingLayout
{
    private const string Step = "laying out what must hold";

    private readonly Panel[] _panels;
    private readonly List<TruingPiece> _pieces = new(64);
    private readonly List<TruingFollow> _follows = new(128);
    private readonly List<TruingUnknown> _unknowns = new(64);
    private readonly List<TruingEquation> _equations = new(24);
    private readonly List<TruingNotch> _notches = new();
    private readonly List<TruingJoint> _joints = new();
    private readonly List<TruingSweep> _sweeps = new();
    private readonly HashSet<(int Panel, int Edge)> _sweptEdges = new();
    private readonly HashSet<int> _sweptSpots = new();
    private readonly Dictionary<(int Panel, int Edge, int Stretch), int> _firstPiece = new();
    private readonly Dictionary<(int Panel, int Edge, int Dart, DartLine Line), int> _dartPieces = new();
    private readonly Dictionary<(int Panel, int Edge, int Dart), int> _apexes = new();
    private int _spots;

    internal TruingLayout(Movable[] movables, Condition[] conditions, Panel[] panels)
    {
        _panels = panels;
        foreach (Movable movable in movables.Where(m => m.Kind == MovableKind.OneSweep))
        {
            _sweptEdges.Add(Find(movable.Edge));
        }

        for (int p = 0; p < panels.Length; p++)
        {
            if (movables.Any(m => m.Edge.PanelName == panels[p].Name) || conditions.Any(c => c.Panels.Contains(panels[p].Name)))
            {
                LayOut(p);
            }
        }

        for (int m = 0; m < movables.Length; m++)
        {
            Free(m, movables[m]);
        }

        for (int m = 0; m < movables.Length; m++)
        {
            if (movables[m].Kind == MovableKind.OneSweep)
            {
                FreeSweep(m, movables[m]);
            }
        }

        for (int c = 0; c < conditions.Length; c++)
        {
            State(c, conditions[c]);
        }

        KeepJointsSmooth(conditions.Length);
        Pieces = _pieces.ToArray();
        Follows = _follows.OrderBy(f => f.Spot).ToArray();
        Unknowns = _unknowns.ToArray();
        Equations = _equations.ToArray();
        Notches = _notches.ToArray();
        Joints = _joints.ToArray();
        Sweeps = _sweeps.ToArray();
    }

    internal Panel[] Panels => _panels;

    internal TruingPiece[] Pieces { get; }

    /// <summary>In the order of their spots.</summary>
    internal TruingFollow[] Follows { get; }

    internal TruingUnknown[] Unknowns { get; }

    internal TruingEquation[] Equations { get; }

    internal TruingNotch[] Notches { get; }

    internal TruingJoint[] Joints { get; }

    internal TruingSweep[] Sweeps { get; }

    internal int SpotCount => _spots;

    /// <summary>Whether a spot lies where a sweep puts it.</summary>
    internal bool IsSwept(int spot) => _sweptSpots.Contains(spot);

    internal bool IsLaidOut(int panel) => _firstPiece.ContainsKey((panel, 0, 0));

    internal int FirstPiece(int panel, int edge, int stretch) => _firstPiece[(panel, edge, stretch)];

    internal int DartPiece(int panel, int edge, int dart, DartLine line) => _dartPieces[(panel, edge, dart, line)];

    internal int Apex(int panel, int edge, int dart) => _apexes[(panel, edge, dart)];

    /// <summary>Whether other panels have the same edges, darts, segments and notches, so that the layout holds for them too.</summary>
    internal bool Fits(Panel[] panels)
    {
        if (panels.Length != _panels.Length)
        {
            return false;
        }

        for (int p = 0; p < panels.Length; p++)
        {
            if (panels[p].Name != _panels[p].Name || (IsLaidOut(p) && !Alike(panels[p], _panels[p], p)))
            {
                return false;
            }
        }

        foreach (TruingJoint joint in _joints)
        {
            TruingPiece first = _pieces[joint.First];
            PathSegment[] segments = panels[first.Panel].EdgesRaw[first.Edge].Stretches[first.Stretch].SegmentsRaw;
            if (IsSmooth(segments, first.Index) != joint.IsSmooth)
            {
                return false;
            }
        }

        return true;
    }

    private bool Alike(Panel one, Panel other, int panel)
    {
        if (ReferenceEquals(one, other))
        {
            return true;
        }

        if (one.EdgesRaw.Length != other.EdgesRaw.Length || one.Notches.Count != other.Notches.Count)
        {
            return false;
        }

        for (int e = 0; e < one.EdgesRaw.Length; e++)
        {
            PanelEdge a = one.EdgesRaw[e];
            PanelEdge b = other.EdgesRaw[e];
            if (a.Name != b.Name || a.Stretches.Count != b.Stretches.Count)
            {
                return false;
            }

            for (int s = 0; s < a.Stretches.Count && !_sweptEdges.Contains((panel, e)); s++)
            {
                PathSegment[] x = a.Stretches[s].SegmentsRaw;
                PathSegment[] y = b.Stretches[s].SegmentsRaw;
                if (x.Length != y.Length)
                {
                    return false;
                }

                for (int i = 0; i < x.Length; i++)
                {
                    if (x[i].Kind != y[i].Kind)
                    {
                        return false;
                    }
                }
            }
        }

        for (int n = 0; n < one.Notches.Count; n++)
        {
            if (one.Notches[n].Edge != other.Notches[n].Edge)
            {
                return false;
            }
        }

        return true;
    }

    private void LayOut(int p)
    {
        PanelEdge[] edges = _panels[p].EdgesRaw;
        int firstCorner = _spots++;
        int corner = firstCorner;
        for (int e = 0; e < edges.Length; e++)
        {
            int node = corner;
            for (int s = 0; s < edges[e].Stretches.Count; s++)
            {
                _firstPiece[(p, e, s)] = _pieces.Count;
                bool closing = e == edges.Length - 1 && s == edges[e].Stretches.Count - 1;
                if (_sweptEdges.Contains((p, e)))
                {
                    node = LayOutDart(p, e, s, LayOutSwept(p, e, s, node, closing ? firstCorner : -1));
                    continue;
                }

                PathSegment[] segments = edges[e].Stretches[s].SegmentsRaw;
                for (int i = 0; i < segments.Length; i++)
                {
                    bool closes = closing && i == segments.Length - 1;
                    bool bends = segments[i].Kind == PathSegmentKind.Cubic;
                    int startControl = bends ? _spots++ : -1;
                    int endControl = bends ? _spots++ : -1;
                    int end = closes ? firstCorner : _spots++;
                    _pieces.Add(new TruingPiece(p, e, s, i, segments[i].Kind, DartLine.None, node, startControl, endControl, end));
                    if (i > 0)
                    {
                        _joints.Add(new TruingJoint(_pieces.Count - 2, _pieces.Count - 1, IsSmooth(segments, i - 1)));
                    }

                    node = end;
                }

                node = LayOutDart(p, e, s, node);
            }

            corner = node;
        }
    }

    /// <summary>The dart after a stretch, if there is one; the spot where the next stretch begins.</summary>
    private int LayOutDart(int p, int e, int s, int node)
    {
        if (s >= _panels[p].EdgesRaw[e].Darts.Count)
        {
            return node;
        }

        int endLeg = _spots++;
        int apex = _spots++;
        _apexes[(p, e, s)] = apex;
        AddDart(p, e, s, DartLine.StartLeg, apex, node);
        AddDart(p, e, s, DartLine.EndLeg, apex, endLeg);
        AddDart(p, e, s, DartLine.Intake, node, endLeg);
        if (_sweptEdges.Contains((p, e)))
        {
            _sweptSpots.UnionWith([node, endLeg]);
        }

        return endLeg;
    }

    /// <summary>A stretch that is one curve, whatever the hand drew.</summary>
    private int LayOutSwept(int p, int e, int s, int node, int closingCorner)
    {
        int startControl = _spots++;
        int endControl = _spots++;
        int end = closingCorner >= 0 ? closingCorner : _spots++;
        _pieces.Add(new TruingPiece(p, e, s, 0, PathSegmentKind.Cubic, DartLine.None, node, startControl, endControl, end));
        _sweptSpots.UnionWith([startControl, endControl]);
        return end;
    }

    private void AddDart(int p, int e, int dart, DartLine line, int from, int to)
    {
        _dartPieces[(p, e, dart, line)] = _pieces.Count;
        _pieces.Add(new TruingPiece(p, e, dart, 0, PathSegmentKind.Line, line, from, -1, -1, to));
    }

    private static bool IsSmooth(PathSegment[] segments, int first)
        => segments[first].TryDirectionAtRaw(1, out Direction arriving) && segments[first + 1].TryDirectionAtRaw(0, out Direction leaving)
            && Math.Abs(arriving.TurnRadTo(leaving)) <= PathEnds.SmoothRad;

    private (int Panel, int Edge) Find(EdgeOf edge)
    {
        int panel = Array.FindIndex(_panels, p => p.Name == edge.PanelName);
        return panel >= 0
            ? (panel, _panels[panel].IndexOf(edge.EdgeName))
            : throw new ConstructionException(DiagnosticCode.PanelMissing, edge.PanelName, string.Join(", ", _panels.Select(p => p.Name.Text))) { Step = Step, Landmark = edge.ToString() };
    }

    private int FirstOf(int p, int e) => _firstPiece[(p, e, 0)];

    private int LastOf(int p, int e)
    {
        int stretch = _panels[p].EdgesRaw[e].Stretches.Count - 1;
        return LastOf(p, e, stretch);
    }

    private int LastOf(int p, int e, int stretch)
        => _firstPiece[(p, e, stretch)] + (_sweptEdges.Contains((p, e)) ? 1 : _panels[p].EdgesRaw[e].Stretches[stretch].SegmentsRaw.Length) - 1;

    /// <summary>The pieces of an edge, without those of its darts.</summary>
    private IEnumerable<int> PiecesOf(int p, int e)
    {
        for (int i = 0; i < _pieces.Count; i++)
        {
            if (_pieces[i].Panel == p && _pieces[i].Edge == e && _pieces[i].Dart == DartLine.None)
            {
                yield return i;
            }
        }
    }
}
