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
    private readonly Dictionary<(int Panel, int Edge, int Stretch), int> _firstPiece = new();
    private readonly Dictionary<(int Panel, int Edge, int Dart, DartLine Line), int> _dartPieces = new();
    private readonly Dictionary<(int Panel, int Edge, int Dart), int> _apexes = new();
    private readonly HashSet<int> _moving = new();
    private int _spots;

    internal TruingLayout(Movable[] movables, Condition[] conditions, Panel[] panels)
    {
        _panels = panels;
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

        foreach (TruingFollow follow in _follows)
        {
            _moving.Add(follow.Spot);
        }

        RefuseMovingArcs();
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
    }

    internal Panel[] Panels => _panels;

    internal TruingPiece[] Pieces { get; }

    /// <summary>In the order of their spots.</summary>
    internal TruingFollow[] Follows { get; }

    internal TruingUnknown[] Unknowns { get; }

    internal TruingEquation[] Equations { get; }

    internal TruingNotch[] Notches { get; }

    internal TruingJoint[] Joints { get; }

    internal int SpotCount => _spots;

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
            if (panels[p].Name != _panels[p].Name || (IsLaidOut(p) && !Alike(panels[p], _panels[p])))
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

    private static bool Alike(Panel one, Panel other)
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

            for (int s = 0; s < a.Stretches.Count; s++)
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
                PathSegment[] segments = edges[e].Stretches[s].SegmentsRaw;
                for (int i = 0; i < segments.Length; i++)
                {
                    bool closes = e == edges.Length - 1 && s == edges[e].Stretches.Count - 1 && i == segments.Length - 1;
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

                if (s < edges[e].Darts.Count)
                {
                    int startLeg = node;
                    int endLeg = _spots++;
                    int apex = _spots++;
                    _apexes[(p, e, s)] = apex;
                    AddDart(p, e, s, DartLine.StartLeg, apex, startLeg);
                    AddDart(p, e, s, DartLine.EndLeg, apex, endLeg);
                    AddDart(p, e, s, DartLine.Intake, startLeg, endLeg);
                    node = endLeg;
                }
            }

            corner = node;
        }
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
        return _firstPiece[(p, e, stretch)] + _panels[p].EdgesRaw[e].Stretches[stretch].SegmentsRaw.Length - 1;
    }

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

    private void RefuseMovingArcs()
    {
        foreach (TruingPiece piece in _pieces)
        {
            if (piece.Kind == PathSegmentKind.Arc && (_moving.Contains(piece.Start) || _moving.Contains(piece.End)))
            {
                PanelEdge edge = _panels[piece.Panel].EdgesRaw[piece.Edge];
                throw new ConstructionException(DiagnosticCode.ArcWouldBend, edge.Name, _panels[piece.Panel].Name) { Step = Step, Landmark = edge.Name.Text };
            }
        }
    }
}
