using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <summary>Makes the whole of a panel that was drawn as one half.</summary>
internal static class PanelUnfolding
{
    /// <summary>How far a fold may be from straight.</summary>
    internal const double StraightMm = 0.01;

    private const string Other = "other ";
    private const int LongestName = 40;

    internal static EdgeName ImageOf(EdgeName edge) => EdgeName.Of(Fitting(Other + edge.Text));

    internal static EdgeName OriginalOf(EdgeName edge) => TryFindOriginal(edge, out EdgeName original) ? original : edge;

    internal static bool TryFindOriginal(EdgeName edge, out EdgeName original)
    {
        bool isImage = edge.Text.StartsWith(Other, StringComparison.Ordinal);
        original = isImage ? EdgeName.Of(edge.Text.Substring(Other.Length)) : edge;
        return isImage;
    }

    /// <summary>The line that a fold lies on.</summary>
    /// <exception cref="ConstructionException">The edge is not straight, or has darts.</exception>
    internal static Line FoldLine(Panel panel, EdgeName name)
    {
        PanelEdge edge = panel.FindEdge(name);
        double off = edge.Start == edge.End ? double.PositiveInfinity : 0;
        if (off == 0)
        {
            Line line = Line.Through(edge.Start, edge.End);
            if (edge.Darts.Count == 0 && edge.Stretches[0].SegmentsRaw.All(s => OffMm(s, line) <= StraightMm))
            {
                return line;
            }

            off = edge.Stretches.SelectMany(s => s.SegmentsRaw).Max(s => OffMm(s, line));
        }

        throw new ConstructionException(DiagnosticCode.FoldNotStraight, name, panel.Name, Length.FromMillimeters(Math.Min(off, 1e6)), Length.FromMillimeters(StraightMm))
        {
            Step = "cutting on the fold",
            Landmark = name.Text,
            Measured = Length.FromMillimeters(Math.Min(off, 1e6)),
            Allowed = Length.FromMillimeters(StraightMm),
        };
    }

    /// <summary>The panel and its mirror image over an edge, in one.</summary>
    /// <remarks>The edge itself is gone. The edges on either side of it go on across it; every other edge gets an image, named "other" and the name
    /// of the edge. The order begins with the image of the edge that follows the fold, so that a skirt keeps waist, side, hem.</remarks>
    internal static Panel Unfold(Panel panel, EdgeName fold)
    {
        Transform2D mirror = Transform2D.Mirror(FoldLine(panel, fold));
        int at = panel.IndexOf(fold);
        int count = panel.EdgesRaw.Length;
        PanelEdge[] half = [.. Enumerable.Range(1, count - 1).Select(i => panel.EdgesRaw[(at + i) % count])];
        var edges = new List<PanelEdge>((2 * count) - 4);
        int last = half.Length - 1;
        if (last == 0)
        {
            edges.Add(Mirrored(half[0], half[0].Name, mirror));
            edges.Add(half[0]);
        }
        else
        {
            edges.Add(Joined(Mirrored(half[0], half[0].Name, mirror), half[0]));
            edges.AddRange(half.Skip(1).Take(last - 1));
            edges.Add(Joined(half[last], Mirrored(half[last], half[last].Name, mirror)));
            for (int i = last - 1; i > 0; i--)
            {
                edges.Add(Mirrored(half[i], ImageOf(half[i].Name), mirror));
            }
        }

        return new Panel(panel.Name, [.. edges], Features(panel, half, mirror));
    }

    private static PanelFeatures Features(Panel panel, PanelEdge[] half, Transform2D mirror)
    {
        var notches = new List<Notch>();
        int last = half.Length - 1;
        foreach (Notch notch in panel.Notches)
        {
            int index = Array.FindIndex(half, e => e.Name == notch.Edge);
            if (index < 0)
            {
                continue;
            }

            double length = half[index].SewnLengthMm();
            double fromStart = index == 0 ? length + notch.FromStartMm : notch.FromStartMm;
            double image = index == 0 ? length - notch.FromStartMm : index == last ? (2 * length) - notch.FromStartMm : length - notch.FromStartMm;
            EdgeName imageEdge = index == 0 || index == last ? notch.Edge : ImageOf(notch.Edge);
            notches.Add(new Notch(notch.Edge, notch.Position, fromStart, notch.Count));
            notches.Add(new Notch(imageEdge, mirror.Apply(notch.Position), image, notch.Count));
        }

        Landmark[] images = [.. panel.Landmarks
            .Where(l => mirror.Apply(l.Position).DistanceMm(l.Position) > StraightMm)
            .Select(l => new Landmark(LandmarkName.Of(Fitting(Other + l.Name.Text)), mirror.Apply(l.Position), l.Kind))];
        return new PanelFeatures(
            panel.Grainline,
            [.. notches],
            [.. panel.Landmarks, .. images],
            [.. panel.InsideDarts, .. panel.InsideDarts.Select(d => d.Transformed(mirror))]);
    }

    // The mirror image, run the other way so that it follows on: what was pressed to the start of the edge is pressed on to its end now.
    private static PanelEdge Mirrored(PanelEdge edge, EdgeName name, Transform2D mirror) => new(
        name,
        edge.Role,
        [.. edge.Stretches.Reverse().Select(s => s.Transformed(mirror).Reversed())],
        [.. edge.Darts.Reverse().Select(d => d.Shape.Transformed(mirror)).Select(s => s with
        {
            StartLeg = s.EndLeg,
            EndLeg = s.StartLeg,
            PressedToward = s.PressedToward == Toward.Start ? Toward.End : Toward.Start,
        })]);

    private static PanelEdge Joined(PanelEdge first, PanelEdge second)
    {
        CurvePath[] stretches =
        [
            .. first.Stretches.Take(first.Stretches.Count - 1),
            first.Stretches[first.Stretches.Count - 1].Then(second.Stretches[0]),
            .. second.Stretches.Skip(1),
        ];
        return new PanelEdge(second.Name, second.Role, stretches, [.. first.Darts.Select(d => d.Shape), .. second.Darts.Select(d => d.Shape)]);
    }

    /// <summary>How far a segment lies off a line, never too little.</summary>
    internal static double OffMm(in PathSegment segment, in Line line)
    {
        // The control points of a cubic enclose it; an arc is farthest off in its middle, or at an end.
        return segment.Kind == PathSegmentKind.Cubic
            ? Math.Max(
                Math.Max(Math.Abs(line.OffsetMm(segment.Start)), Math.Abs(line.OffsetMm(segment.End))),
                Math.Max(Math.Abs(line.OffsetMm(new Point2D(segment.CubicRaw.X1, segment.CubicRaw.Y1))), Math.Abs(line.OffsetMm(new Point2D(segment.CubicRaw.X2, segment.CubicRaw.Y2)))))
            : Math.Max(Math.Max(Math.Abs(line.OffsetMm(segment.Start)), Math.Abs(line.OffsetMm(segment.End))), Math.Abs(line.OffsetMm(segment.PointAtRaw(0.5))));
    }

    private static string Fitting(string name) => name.Length <= LongestName ? name : name.Substring(0, LongestName).TrimEnd();
}
