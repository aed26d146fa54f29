using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>One part of an outline: a stretch of seam line, or the dart between two stretches.</summary>
internal readonly record struct OutlinePart(int Edge, CurvePath? Stretch, DartShape Dart)
{
    internal bool IsDart => Stretch is null;
}

/// <summary>An outline taken apart into stretches and darts, in order around the panel, to be worked on and put together again.</summary>
/// <remarks>Every operation on darts is one of two: put a dart without width where a cut is to be, or turn the part of the outline between
/// two darts that share an apex, so that one closes as the other opens. What has closed is gone when the outline is put together.</remarks>
internal sealed class OutlineParts
{
    private const double EndMm = 1e-6;

    private readonly Panel _panel;
    private readonly List<OutlinePart> _parts;

    internal OutlineParts(Panel panel)
    {
        _panel = panel;
        _parts = new List<OutlinePart>(12);
        for (int e = 0; e < panel.EdgesRaw.Length; e++)
        {
            PanelEdge edge = panel.EdgesRaw[e];
            for (int i = 0; i < edge.Stretches.Count; i++)
            {
                _parts.Add(new OutlinePart(e, edge.Stretches[i], default));
                if (i < edge.Darts.Count)
                {
                    _parts.Add(new OutlinePart(e, null, edge.Darts[i].Shape));
                }
            }
        }
    }

    internal OutlinePart this[int index] => _parts[index];

    /// <summary>The part that is a dart of the panel. Ask before any cut, since cuts count as darts.</summary>
    internal int IndexOf(Dart dart)
    {
        int edge = _panel.IndexOf(dart.Name.Edge);
        int number = 0;
        for (int i = 0; i < _parts.Count; i++)
        {
            if (_parts[i].Edge == edge && _parts[i].IsDart && ++number == dart.Number)
            {
                return i;
            }
        }

        throw new ConstructionException(DiagnosticCode.DartNotOnEdge, dart.Name, _panel.Name, number);
    }

    /// <summary>Puts a dart without width at a place and returns its index; an index found before moves on where the cut comes first.</summary>
    internal int Cut(EdgePlace place, in Point2D apex, string step, ref int found)
    {
        int before = _parts.Count;
        int cut = Cut(place, apex, step);
        if (cut <= found)
        {
            found += _parts.Count - before;
        }

        return cut;
    }

    /// <summary>Puts a dart without width at a place and returns its index.</summary>
    internal int Cut(EdgePlace place, in Point2D apex, string step)
    {
        int edge = _panel.IndexOf(place.Edge);
        double length = _panel.EdgesRaw[edge].SewnLengthMm();
        double distance = place.ResolveMm(_panel);
        if (!(distance > EndMm && distance < length - EndMm))
        {
            throw PanelErrors.OffEdge(_panel.Name, place, distance, length, step);
        }

        for (int i = 0; i < _parts.Count; i++)
        {
            if (_parts[i].Edge != edge || _parts[i].Stretch is not { } stretch)
            {
                continue;
            }

            double within = stretch.LengthMm;
            if (distance < within - EndMm)
            {
                Point2D at = stretch.PointAtMm(distance);
                _parts[i] = new OutlinePart(edge, stretch.SubPathMm(0, distance), default);
                _parts.Insert(i + 1, new OutlinePart(edge, null, new DartShape(apex, at, at, Toward.Start)));
                _parts.Insert(i + 2, new OutlinePart(edge, stretch.SubPathMm(distance, within), default));
                return i + 1;
            }

            if (distance <= within + EndMm)
            {
                // The place is where a dart already stands.
                return i + 1;
            }

            distance -= within;
        }

        throw PanelErrors.OffEdge(_panel.Name, place, distance, length, step);
    }

    /// <summary>The closed way around what lies between two darts, from the first forward to the second, and back through the apex.</summary>
    internal CurvePath RegionBetween(int first, int second, in Point2D apex)
    {
        var segments = new List<PathSegment>();
        for (int i = Next(first); i != second; i = Next(i))
        {
            AddSegments(segments, _parts[i]);
        }

        Join(segments, apex);
        return CurvePath.FromSegments(segments).Closed();
    }

    /// <summary>Turns everything from one dart forward to another, the legs that it ends in included.</summary>
    internal void TurnBetween(int first, int second, in Transform2D turn)
    {
        DartShape start = _parts[first].Dart;
        _parts[first] = _parts[first] with { Dart = start with { EndLeg = turn.Apply(start.EndLeg) } };
        DartShape end = _parts[second].Dart;
        _parts[second] = _parts[second] with { Dart = end with { StartLeg = turn.Apply(end.StartLeg) } };
        for (int i = Next(first); i != second; i = Next(i))
        {
            OutlinePart part = _parts[i];
            _parts[i] = part.Stretch is { } stretch
                ? part with { Stretch = stretch.Transformed(turn) }
                : part with { Dart = part.Dart.Transformed(turn) };
        }
    }

    /// <summary>Whether any of an edge lies between two darts, from the first forward to the second.</summary>
    internal bool HasBetween(int first, int second, int edge)
    {
        for (int i = Next(first); i != second; i = Next(i))
        {
            if (_parts[i].Edge == edge && !_parts[i].IsDart)
            {
                return true;
            }
        }

        return false;
    }

    internal void Replace(int index, in DartShape dart) => _parts[index] = _parts[index] with { Dart = dart };

    internal void Replace(int index, CurvePath stretch) => _parts[index] = _parts[index] with { Stretch = stretch };

    /// <summary>Fills a dart with a line across its mouth, in place of its legs.</summary>
    internal void Fill(int dart, CurvePath across) => _parts[dart] = new OutlinePart(_parts[dart].Edge, across, default);

    /// <summary>The edges again, closed darts gone and the stretches on either side joined.</summary>
    internal PanelEdge[] ToEdges()
    {
        var edges = new PanelEdge[_panel.EdgesRaw.Length];
        for (int e = 0; e < edges.Length; e++)
        {
            PanelEdge old = _panel.EdgesRaw[e];
            edges[e] = ToEdge(old.Name, old.Role, _parts.Where(p => p.Edge == e));
        }

        return edges;
    }

    /// <summary>The edges between two darts, from the first forward to the second, in order, and the way back through their apexes as an edge of its own.</summary>
    internal List<PanelEdge> EdgesBetween(int first, int second, EdgeName seam)
    {
        var edges = new List<PanelEdge>();
        int i = Next(first);
        while (i != second)
        {
            int edge = _parts[i].Edge;
            var run = new List<OutlinePart>();
            for (; i != second && _parts[i].Edge == edge; i = Next(i))
            {
                run.Add(_parts[i]);
            }

            PanelEdge old = _panel.EdgesRaw[edge];
            edges.Add(ToEdge(old.Name, old.Role, run));
        }

        Point2D from = _parts[second].Dart.StartLeg;
        Point2D apex = _parts[second].Dart.Apex;
        Point2D other = _parts[first].Dart.Apex;
        Point2D to = _parts[first].Dart.EndLeg;
        var back = new List<PathSegment>(3);
        AddLine(back, from, apex);
        if (apex.DistanceMm(other) > EndMm)
        {
            AddLine(back, back.Count == 0 ? from : apex, other);
        }

        AddLine(back, back.Count == 0 ? from : back[back.Count - 1].End, to);
        edges.Add(new PanelEdge(seam, EdgeRole.Seam, CurvePath.FromSegments(back)));
        return edges;
    }

    internal int Next(int index) => index + 1 == _parts.Count ? 0 : index + 1;

    private static PanelEdge ToEdge(EdgeName name, EdgeRole role, IEnumerable<OutlinePart> parts)
    {
        var stretches = new List<CurvePath>();
        var darts = new List<DartShape>();
        bool joins = false;
        foreach (OutlinePart part in parts)
        {
            if (part.Stretch is { } stretch)
            {
                if (joins)
                {
                    stretches[stretches.Count - 1] = stretches[stretches.Count - 1].Then(stretch);
                }
                else
                {
                    stretches.Add(stretch);
                }

                joins = true;
            }
            else if (!part.Dart.IsClosed)
            {
                darts.Add(part.Dart);
                joins = false;
            }
        }

        return new PanelEdge(name, role, [.. stretches], [.. darts]);
    }

    private static void AddSegments(List<PathSegment> segments, in OutlinePart part)
    {
        if (part.Stretch is { } stretch)
        {
            segments.AddRange(stretch.SegmentsRaw);
            return;
        }

        AddLine(segments, part.Dart.StartLeg, part.Dart.Apex);
        AddLine(segments, part.Dart.Apex, part.Dart.EndLeg);
    }

    private static void Join(List<PathSegment> segments, in Point2D through)
    {
        Point2D start = segments[0].Start;
        AddLine(segments, segments[segments.Count - 1].End, through);
        AddLine(segments, through, start);
    }

    private static void AddLine(List<PathSegment> segments, in Point2D from, in Point2D to)
    {
        if (from.DistanceMm(to) > 0)
        {
            segments.Add(PathSegment.FromLine(new LineSegment(from, to)));
        }
    }
}
