using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>Finds what an edge of a panel was drawn as on the sheet, and what was done to it after.</summary>
internal static class EdgeOrigins
{
    // What truing leaves where it was, as far as a pencil can tell; and how far a line drawn by hand may lie off what truing made of it, as a share of its length.
    private const double SamePlaceMm = 0.01;
    private const double OffShare = 0.05;

    /// <summary>The lines that the edge runs along and the landmarks that it begins and ends in, as drawn by hand.</summary>
    internal static (IReadOnlyList<LandmarkName> Landmarks, IReadOnlyList<DraftedLine> Lines) Of(Block block, Panel panel, PanelEdge edge)
        => Traced(block, panel, edge) is { Landmarks.Count: > 0 } or { Lines.Count: > 0 } ? Traced(block, panel, edge) : Touching(block, panel, edge);

    /// <summary>The steps that drew nothing new and are about a landmark, a line or the edge: what truing or a design did. With a landmark counts the line that it was marked on.</summary>
    internal static IReadOnlyList<Step> Changes(Block block, IReadOnlyList<LandmarkName> landmarks, IReadOnlyList<DraftedLine> lines, string? edge = null)
    {
        var about = new HashSet<string>(lines.Select(line => line.Name.Text));
        foreach (Step step in block.Steps.Where(step => step.Marked.Any(mark => landmarks.Contains(mark.Name))))
        {
            about.UnionWith(step.Words.Select(word => word.Line?.Text).OfType<string>());
        }

        return [.. block.Steps.Where(step => step is { IsTaking: false, DartLegs: null, Traces: null } && !step.Marked.Any() && !step.Drew.Any() && IsAbout(step, landmarks, about, edge))];
    }

    /// <summary>The steps of the designs: where nothing says which edge they changed, all count.</summary>
    internal static IReadOnlyList<Step> OfDesigns(Block block)
        => block.Designs.Where(design => design.FirstStep > 0).Select(design => design.FirstStep).DefaultIfEmpty(int.MaxValue).Min() is var first && first < int.MaxValue
            ? [.. block.Steps.Where(step => step.Number >= first)]
            : [];

    internal static bool HasMoved(Block block, LandmarkName name)
        => block.Drafted.Find(name).Position.DistanceMm(block.Trued.Find(name).Position) > SamePlaceMm;

    // What a sentence names first it is about; what it names after that says where.
    private static bool IsAbout(Step step, IReadOnlyList<LandmarkName> landmarks, HashSet<string> lines, string? edge)
    {
        foreach (StepWord word in step.Words)
        {
            if (word.Dart is { } dart)
            {
                return landmarks.Contains(dart.Middle.Name) || landmarks.Contains(dart.Apex.Name) || lines.Contains(dart.Line.Name.Text);
            }

            if (word.Line is { } line)
            {
                return lines.Contains(line.Text);
            }

            if (word.Landmark is { } landmark)
            {
                return landmarks.Contains(landmark);
            }

            if (word.Length is null && edge is not null && word.ToString().IndexOf(edge, StringComparison.Ordinal) >= 0)
            {
                return true;
            }
        }

        return false;
    }

    // As the step says that traced the panel off the sheet.
    private static (List<LandmarkName> Landmarks, List<DraftedLine> Lines) Traced(Block block, Panel panel, PanelEdge edge)
    {
        var landmarks = new List<LandmarkName>();
        var lines = new List<DraftedLine>();
        if (block.Steps.LastOrDefault(step => step.Traces == panel.Name.Text) is not { } trace)
        {
            return (landmarks, lines);
        }

        bool isOn = false;
        for (int i = 1; i < trace.Words.Count; i++)
        {
            StepWord word = trace.Words[i];
            bool isMoved = i + 1 < trace.Words.Count && trace.Words[i + 1].Length is not null;
            if (word.Line is { } line)
            {
                if (isOn)
                {
                    lines.Add(trace.FindLine(line));
                }
            }
            else if (word.Landmark is { } landmark)
            {
                if (isOn && !isMoved)
                {
                    landmarks.Add(landmark);
                }
            }
            else if (word.Length is null)
            {
                isOn = word.ToString() == edge.Name.Text;
            }
        }

        return (landmarks, lines);
    }

    // By where they lie: whatever a method made its panel of, its corners are landmarks of the sheet.
    private static (List<LandmarkName> Landmarks, List<DraftedLine> Lines) Touching(Block block, Panel panel, PanelEdge edge)
    {
        IReadOnlyList<Landmark> now = block.Trued.Landmarks;
        var landmarks = new List<LandmarkName>();
        foreach (Point2D corner in new[] { edge.Start, edge.End })
        {
            Landmark[] there = [.. now.Where(landmark => landmark.Position.DistanceMm(corner) <= SamePlaceMm)];
            if (there.Length > 0)
            {
                Landmark own = Array.Find(there, landmark => panel.Landmarks.Any(kept => kept.Name.Equals(landmark.Name)));
                landmarks.Add((own.Name is null ? there[0] : own).Name);
            }
        }

        Dictionary<LandmarkName, Point2D> places = now.ToDictionary(landmark => landmark.Name, landmark => landmark.Position);
        DraftedLine[] lines = [.. block.Steps.SelectMany(step => step.Drew).Where(line => IsAlong(line, places, edge))];
        return (landmarks, [.. lines]);
    }

    private static bool IsAlong(DraftedLine line, Dictionary<LandmarkName, Point2D> places, PanelEdge edge)
    {
        double lengthMm = line.LengthMm();
        return places.TryGetValue(line.From.Name, out Point2D from) && places.TryGetValue(line.To.Name, out Point2D to)
            && OffMm(edge, from) <= SamePlaceMm && OffMm(edge, to) <= SamePlaceMm
            && OffMm(edge, line.Path.PointAtMm(lengthMm / 2)) <= Math.Max(SamePlaceMm, OffShare * lengthMm);
    }

    // Over a dart the edge goes on as if there were none.
    private static double OffMm(PanelEdge edge, in Point2D point)
    {
        double leastMm = double.PositiveInfinity;
        foreach (CurvePath stretch in edge.StretchesRaw)
        {
            leastMm = Math.Min(leastMm, stretch.ClosestTo(point).DistanceMm);
        }

        foreach (Dart dart in edge.DartsRaw)
        {
            leastMm = Math.Min(leastMm, CurvePath.FromLine(new LineSegment(dart.StartLeg, dart.EndLeg)).ClosestTo(point).DistanceMm);
        }

        return leastMm;
    }
}
