using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Drafting;

/// <summary>The legs of a dart that a step draws. Found when a picture is drawn, not when the dart is: most drafts are never looked at.</summary>
internal static class StepDarts
{
    /// <summary>The two legs, from the line to the apex; none for a step that places no dart.</summary>
    internal static IReadOnlyList<CurvePath> LegsOf(Step step)
    {
        IReadOnlyList<StepWord> words = step.Words;
        if (!step.Template.StartsWith("Mark the two tops of the dart ", StringComparison.Ordinal) || words.Count < 4
            || words[0].Landmark is not { } middleName || words[1].Length is not { } intake || words[2].Landmark is not { } apexName || words[3].Line is not { } lineName)
        {
            return [];
        }

        Point2D middle = step.Find(middleName).Position;
        Point2D apex = step.Find(apexName).Position;
        if (!Direction.TryOfRaw(apex.XMm - middle.XMm, apex.YMm - middle.YMm, out Direction axis))
        {
            return [];
        }

        CurvePath line = step.FindLine(lineName).Path;
        var legs = new List<CurvePath>(2);
        foreach (Direction side in new[] { axis.TurnedLeft, axis.TurnedRight })
        {
            Point2D beside = middle + side.TimesMm(intake.ValueMm / 2);
            Point2D? top = null;
            foreach (PathIntersection hit in line.IntersectionsWith(Line.From(beside, axis)).Points)
            {
                top = top is { } nearest && nearest.DistanceMm(beside) <= hit.Point.DistanceMm(beside) ? top : hit.Point;
            }

            if (top is { } found)
            {
                legs.Add(CurvePath.FromLine(new LineSegment(found, apex)));
            }
        }

        return legs;
    }
}
