using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <content>Panels laid edge to edge and made one: the seam between them is gone.</content>
public sealed partial class Panel
{
    /// <summary>Returns one panel made of this one and another, laid edge to edge: the seam between them is left out.</summary>
    /// <remarks>This panel stays where it is, and its grain counts; the other one is turned to it. Edges of one name that meet at an end of the seam become one edge, with whatever corner they meet in:
    /// true it where it is to be smooth. The opposite of <see cref="CutApart"/>.</remarks>
    /// <param name="seam">The edge of this panel that is left out.</param>
    /// <param name="other">The other panel.</param>
    /// <param name="otherSeam">Its edge that lies on the first one: as long, and of the same shape.</param>
    /// <param name="name">What the panel is called then.</param>
    /// <exception cref="ConstructionException">A panel has no such edge, the edges do not lie on each other, two edges would have one name, or the panels would lie over each other.</exception>
    [Pure]
    public Panel JoinedTo(EdgeName seam, Panel other, EdgeName otherSeam, PanelName name)
    {
        const string Step = "joining two panels";
        int own = IndexOf(seam);
        int theirs = Guard.NotNull(other, nameof(other)).IndexOf(otherSeam);
        PanelEdge first = _edges[own];
        Panel laid = other.Transformed(Onto(first, other._edges[theirs]));
        RefuseApart(first, laid._edges[theirs], Step);

        var edges = new List<PanelEdge>();
        var notches = new List<Notch>();
        Add(this, own, edges, notches);
        int ownNotches = notches.Count;
        Add(laid, theirs, edges, notches);
        if (edges.Count > 1 && edges[edges.Count - 1].Name == edges[0].Name && edges[edges.Count - 1].Role == edges[0].Role)
        {
            PanelEdge last = edges[edges.Count - 1];
            double byMm = last.SewnLengthMm();
            for (int i = 0; i < ownNotches; i++)
            {
                Notch notch = notches[i];
                notches[i] = notch.Edge == edges[0].Name ? new Notch(notch.Edge, notch.Position, notch.FromStartMm + byMm, notch.Count) : notch;
            }

            edges[0] = Chained(last, edges[0]);
            edges.RemoveAt(edges.Count - 1);
        }

        PanelBuilder.RefuseGaps(name, [.. edges]);
        Landmark[] landmarks = [.. Landmarks.Concat(laid.Landmarks).GroupBy(landmark => landmark.Name).Select(same => same.First())];
        var joined = new Panel(name, [.. edges], new PanelFeatures(Grainline, [.. notches], landmarks, [.. InsideDarts, .. laid.InsideDarts]));
        joined.RefuseCrossedOutline(Step);
        return joined;
    }

    // From each end of the seam the edges run on around both panels; where those that meet have one name they are one.
    private static void Add(Panel panel, int seam, List<PanelEdge> edges, List<Notch> notches)
    {
        for (int i = 1; i < panel._edges.Length; i++)
        {
            PanelEdge edge = panel._edges[(seam + i) % panel._edges.Length];
            IEnumerable<Notch> marks = panel.Notches.Where(notch => notch.Edge == edge.Name);
            if (i == 1 && edges.Count > 0 && edges[edges.Count - 1].Name == edge.Name && edges[edges.Count - 1].Role == edge.Role)
            {
                PanelEdge before = edges[edges.Count - 1];
                double beforeMm = before.SewnLengthMm();
                notches.AddRange(marks.Select(notch => new Notch(notch.Edge, notch.Position, beforeMm + notch.FromStartMm, notch.Count)));
                edges[edges.Count - 1] = Chained(before, edge);
            }
            else
            {
                notches.AddRange(marks);
                edges.Add(edge);
            }
        }
    }

    private static PanelEdge Chained(PanelEdge before, PanelEdge after)
    {
        CurvePath[] stretches =
        [
            .. before.StretchesRaw.Take(before.StretchesRaw.Length - 1),
            before.StretchesRaw[before.StretchesRaw.Length - 1].Then(after.StretchesRaw[0]),
            .. after.StretchesRaw.Skip(1),
        ];
        return new PanelEdge(before.Name, before.Role, stretches, [.. before.DartsRaw.Concat(after.DartsRaw).Select(dart => dart.Shape)]);
    }

    // The motion that lays the end of the other edge on the start of this one, and its start on the end.
    private static Transform2D Onto(PanelEdge edge, PanelEdge other)
    {
        Direction along = edge.Start.DirectionTo(edge.End);
        Direction against = other.End.DirectionTo(other.Start);
        return Transform2D.RotationRaw(other.End, Direction.FromRadians(against.TurnRadTo(along))).Then(Transform2D.Translation(edge.Start - other.End));
    }

    private void RefuseApart(PanelEdge edge, PanelEdge laid, string step)
    {
        double lengthMm = edge.SewnLengthMm();
        double apartMm = Math.Abs(lengthMm - laid.SewnLengthMm());
        CurvePath[] stretches = edge.StretchesRaw;
        bool isPlain = stretches.Length == 1 && laid.StretchesRaw.Length == 1;
        const int Samples = 16;
        for (int i = 0; isPlain && i <= Samples && apartMm <= CheckList.ToleranceMm; i++)
        {
            Point2D on = edge.PointAtSewnMm(lengthMm * i / Samples);
            apartMm = Math.Max(apartMm, laid.StretchesRaw[0].ClosestTo(on).DistanceMm);
        }

        if (!isPlain || apartMm > CheckList.ToleranceMm)
        {
            throw new ConstructionException(DiagnosticCode.EdgesNotAlike, edge.Name, laid.Name, Length.FromMillimeters(apartMm), Length.FromMillimeters(CheckList.ToleranceMm))
            {
                Step = step,
                Landmark = edge.Name.Text,
                Measured = Length.FromMillimeters(apartMm),
                Allowed = Length.FromMillimeters(CheckList.ToleranceMm),
            };
        }
    }
}
