using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <content>From lines on the sheet to a panel.</content>
public sealed partial class DraftingSheet
{
    internal const string TracesPanel = TraceVerb + "{0}: ";

    private const string TraceVerb = "Trace the ";
    private const string Tracing = "tracing a panel";

    /// <summary>Traces a panel off the sheet.</summary>
    /// <param name="outline">Its edges, darts, notches and grain.</param>
    /// <exception cref="ConstructionException">A line does not begin where the one before ended, the outline does not come back to its start or crosses itself,
    /// an edge stands twice, or a dart or notch does not lie on its edge.</exception>
    public Panel Trace(PanelOutline outline)
    {
        PanelName name = Guard.NotNull(outline, nameof(outline)).Name;
        Require(outline.From, Tracing);
        var sentence = new Sentence(TraceVerb, name.Text);
        var corners = new List<Landmark>();
        var paths = new List<CurvePath>();
        Landmark at = outline.From;
        foreach (OutlineEdge edge in outline.Edges)
        {
            corners.Add(at);
            paths.Add(TraceEdge(name, edge, ref at, sentence));
        }

        double gapMm = at.Position.DistanceMm(outline.From.Position);
        if (gapMm > GeometryTolerance.JoinMm)
        {
            throw Refuse(DiagnosticCode.OutlineNotClosed, Tracing, at.Name.Text, gapMm, GeometryTolerance.JoinMm, name, at.Name, Millimetres(gapMm), outline.From.Name);
        }

        var edges = new PanelEdge[paths.Count];
        for (int i = 0; i < edges.Length; i++)
        {
            edges[i] = WithDarts(name, outline.Edges[i], paths[i], outline.Darts.Where(d => d.Edge == outline.Edges[i].Name), sentence);
        }

        PanelBuilder.RefuseGaps(name, edges);
        foreach (OutlineDart dart in outline.Darts)
        {
            _ = IndexOf(name, edges, dart.Edge);
        }

        Notch[] notches = [.. outline.Notches.Select(n => PlaceNotch(name, n, edges, paths))];
        foreach (Landmark kept in outline.Landmarks.Concat(outline.Grain))
        {
            Require(kept, Tracing);
        }

        LineSegment? grain = outline.Grain.Length == 2 ? new LineSegment(outline.Grain[0].Position, outline.Grain[1].Position) : null;
        Panel panel = PanelBuilder.Finish(name, edges, paths.SelectMany(path => path.Segments), notches, [.. corners, .. outline.Landmarks], grain);
        sentence.RecordOn(this);
        return panel;
    }

    private CurvePath TraceEdge(PanelName panel, in OutlineEdge edge, ref Landmark at, Sentence sentence)
    {
        if (edge.To is { } to)
        {
            Direction way = WayBetween(at, to, Tracing);
            sentence.Add("{0} straight from {1} to {2}", edge.Name.Text, at, to);
            var line = new LineSegment(at.Position, to.Position);
            at = to;
            return CurvePath.FromLine(line);
        }

        CurvePath? path = null;
        foreach (DraftedLine line in edge.Lines)
        {
            Require(line, Tracing);
            double forwardMm = line.From.Position.DistanceMm(at.Position);
            double backwardMm = line.To.Position.DistanceMm(at.Position);
            double gapMm = System.Math.Min(forwardMm, backwardMm);
            if (gapMm > GeometryTolerance.JoinMm)
            {
                throw Refuse(DiagnosticCode.LineNotNext, Tracing, at.Name.Text, gapMm, GeometryTolerance.JoinMm, panel, at.Name, line.Name, Millimetres(gapMm));
            }

            bool forward = forwardMm <= backwardMm;
            CurvePath next = forward ? line.Path : line.Path.Reversed();
            path = path is null ? next : path.Then(next);
            sentence.Add(path == next ? "{0} along the {1}" : "then the {1}", edge.Name.Text, line);
            at = forward ? line.To : line.From;
        }

        return path!;
    }

    private PanelEdge WithDarts(PanelName panel, in OutlineEdge edge, CurvePath path, IEnumerable<OutlineDart> darts, Sentence sentence)
    {
        var placed = new List<(double FromMm, double ToMm, DartShape Shape)>();
        foreach (OutlineDart asked in darts)
        {
            DraftedDart dart = asked.Dart;
            double first = OnEdgeMm(edge.Name, path, dart.FirstLeg, dart.Middle.Name);
            double second = OnEdgeMm(edge.Name, path, dart.SecondLeg, dart.Middle.Name);
            (Point2D from, Point2D to) = first <= second ? (dart.FirstLeg, dart.SecondLeg) : (dart.SecondLeg, dart.FirstLeg);

            // On the line that halves the intake: there both legs are equal, and nowhere nearer to where the hand put it.
            Point2D middle = from.MidpointTo(to);
            Direction square = from.DirectionTo(to).TurnedLeft;
            Point2D apex = middle + square.TimesMm(square.TimesMm(1).DotMm2(dart.Apex.Position - middle));
            double movedMm = apex.DistanceMm(dart.Apex.Position);
            if (movedMm > GeometryTolerance.DefaultMm)
            {
                sentence.Add("{0} moved {1} so that both legs are equal", dart.Apex, WorkedLength.GivenMm(null, movedMm, LengthSource.Found));
            }

            placed.Add((System.Math.Min(first, second), System.Math.Max(first, second), new DartShape(apex, from, to, asked.Pressed)));
        }

        placed.Sort((a, b) => a.FromMm.CompareTo(b.FromMm));
        var stretches = new List<CurvePath>();
        double atMm = 0;
        foreach ((double fromMm, double toMm, DartShape _) in placed)
        {
            if (fromMm <= atMm || toMm >= path.LengthMm)
            {
                throw PanelErrors.TooWide(panel, edge.Name, toMm - fromMm, System.Math.Max(0, System.Math.Min(toMm, path.LengthMm) - System.Math.Max(fromMm, atMm)), Now(Tracing));
            }

            stretches.Add(path.SubPathMm(atMm, fromMm));
            atMm = toMm;
        }

        stretches.Add(placed.Count == 0 ? path : path.SubPathMm(atMm, path.LengthMm));
        return new PanelEdge(edge.Name, edge.Role, [.. stretches], [.. placed.Select(p => p.Shape)]);
    }

    private double OnEdgeMm(EdgeName edge, CurvePath path, in Point2D point, LandmarkName landmark)
    {
        PathLocation place = path.ClosestTo(point);
        return place.DistanceMm <= GeometryTolerance.JoinMm
            ? path.LengthToMm(place)
            : throw Refuse(DiagnosticCode.LandmarkOffLine, Tracing, landmark.Text, place.DistanceMm, GeometryTolerance.JoinMm, landmark, Millimetres(place.DistanceMm), edge);
    }

    private Notch PlaceNotch(PanelName panel, in OutlineNotch notch, PanelEdge[] edges, List<CurvePath> paths)
    {
        Require(notch.At, Tracing);
        int index = IndexOf(panel, edges, notch.Edge);
        PanelEdge edge = edges[index];
        double alongMm = OnEdgeMm(notch.Edge, paths[index], notch.At.Position, notch.At.Name);
        double sewnMm = alongMm;
        foreach (Dart dart in edge.Darts)
        {
            double fromMm = paths[index].LengthToMm(paths[index].ClosestTo(dart.StartLeg));
            double toMm = paths[index].LengthToMm(paths[index].ClosestTo(dart.EndLeg));
            if (alongMm > fromMm && alongMm < toMm)
            {
                throw PanelErrors.OffEdge(panel, notch.Edge, alongMm, edge.SewnLengthMm(), Now(Tracing));
            }

            sewnMm -= alongMm >= toMm ? toMm - fromMm : 0;
        }

        return new Notch(notch.Edge, notch.At.Position, System.Math.Max(0, System.Math.Min(sewnMm, edge.SewnLengthMm())), notch.Count);
    }

    private int IndexOf(PanelName panel, PanelEdge[] edges, EdgeName name)
    {
        int index = System.Array.FindIndex(edges, edge => edge.Name == name);
        return index >= 0
            ? index
            : throw new ConstructionException(DiagnosticCode.EdgeNotOnPanel, panel, name, string.Join(", ", edges.Select(e => e.Name.Text))) { Step = Now(Tracing), Landmark = name.Text };
    }

    /// <summary>A sentence that is put together from clauses.</summary>
    private sealed class Sentence(string verb, string what)
    {
        private readonly StringBuilder _template = new(verb + "{0}");
        private readonly List<StepWord> _words = [what];

        internal void Add(string clause, params StepWord[] words)
        {
            for (int i = words.Length - 1; i >= 0; i--)
            {
                clause = clause.Replace(Place(i), "{#" + (i + _words.Count).ToString(CultureInfo.InvariantCulture) + "}");
            }

            _template.Append(_words.Count == 1 ? ": " : "; ").Append(clause.Replace("{#", "{"));
            _words.AddRange(words);
        }

        internal void RecordOn(DraftingSheet sheet) => sheet.Record(_template.Append('.').ToString(), [.. _words]);

        private static string Place(int index) => "{" + index.ToString(CultureInfo.InvariantCulture) + "}";
    }
}
