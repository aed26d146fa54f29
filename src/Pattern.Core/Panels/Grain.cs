using System.Linq;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>Where the line is drawn that shows the straight grain.</summary>
internal static class Grain
{
    /// <summary>Whether both ends lie inside an outline.</summary>
    internal static bool EndsWithin(CurvePath outline, in LineSegment grain)
        => outline.ContainmentOf(grain.Start) == Containment.Inside && outline.ContainmentOf(grain.End) == Containment.Inside;

    /// <summary>Whether all of it lies inside an outline.</summary>
    internal static bool LiesWithin(CurvePath outline, in LineSegment grain)
    {
        if (!EndsWithin(outline, grain))
        {
            return false;
        }

        PathIntersections meets = outline.IntersectionsWith(CurvePath.FromLine(grain));
        return meets.Points.Count == 0 && meets.Overlaps.Count == 0;
    }

    /// <summary>A line of a direction inside an outline.</summary>
    /// <remarks>Through the middle of the box around the outline as seen along the grain, as long as half of what is inside there: where the outline bends in, half of the
    /// longest part.</remarks>
    internal static LineSegment Within(CurvePath outline, Direction along)
    {
        if (along == Direction.Down)
        {
            return Upright(outline);
        }

        Transform2D turn = Transform2D.RotationRaw(outline.Start, Direction.FromRadians(along.TurnRadTo(Direction.Down)));
        return Upright(outline.Transformed(turn)).Transformed(turn.Inverted());
    }

    private static LineSegment Upright(CurvePath outline)
    {
        BoundingBox box = outline.Bounds;
        double x = (box.LeftMm + box.RightMm) / 2;
        double[] heights = [.. outline.IntersectionsWith(Line.Vertical(new Point2D(x, 0))).Points.Select(hit => hit.Point.YMm).OrderBy(y => y)];
        double low = box.BottomMm;
        double high = box.TopMm;
        if (heights.Length > 2)
        {
            int longest = Enumerable.Range(0, heights.Length - 1)
                .Where(i => outline.ContainmentOf(new Point2D(x, (heights[i] + heights[i + 1]) / 2)) == Containment.Inside)
                .OrderByDescending(i => heights[i + 1] - heights[i]).FirstOrDefault();
            (low, high) = (heights[longest], heights[longest + 1]);
        }
        else if (heights.Length == 2)
        {
            (low, high) = (heights[0], heights[1]);
        }

        return new LineSegment(new Point2D(x, low + (0.75 * (high - low))), new Point2D(x, low + (0.25 * (high - low))));
    }
}
