using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>The rank of each landmark of a block, and to which side of it its panel lies.</summary>
internal sealed class LandmarkRanks
{
    private const double SamePlaceMm = 1;

    // A point belongs to the panel that is nearer by this much.
    private const double NearerMm = 1;

    private readonly (Panel Panel, CurvePath Outline)[] _panels;
    private readonly Point2D[] _corners;
    private readonly Dictionary<LandmarkName, LandmarkRank> _ranks = [];

    internal LandmarkRanks(BlockLayout layout)
    {
        _panels = [.. layout.Panels.Select(panel => (panel, panel.SeamOutline()))];
        _corners = [.. from panel in layout.Panels from edge in panel.Edges from stretch in edge.Stretches from end in new[] { stretch.Start, stretch.End } select end];
        var taken = new List<Point2D>();
        foreach (Landmark landmark in layout.Landmarks.OrderBy(Alone))
        {
            // Where two stand at one place, the one with the higher rank names it.
            bool isSecond = taken.Exists(point => point.DistanceMm(landmark.Position) < SamePlaceMm);
            _ranks[landmark.Name] = isSecond ? LandmarkRank.Guide : Alone(landmark);
            taken.Add(landmark.Position);
        }
    }

    internal LandmarkRank Of(Landmark landmark) => _ranks[landmark.Name];

    /// <summary>Across, toward the panel that the point belongs to; null for a point between panels or on two of them.</summary>
    internal Direction? LeanOf(Landmark landmark)
    {
        (Panel Panel, double AwayMm)[] panels = [.. _panels.Select(panel => (panel.Panel, panel.Outline.ClosestTo(landmark.Position).DistanceMm)).OrderBy(panel => panel.DistanceMm)];
        if (panels.Length > 1 && panels[1].AwayMm < panels[0].AwayMm + NearerMm)
        {
            return null;
        }

        return panels[0].Panel.SeamOutline().Bounds.Centre.XMm < landmark.Position.XMm ? Direction.Left : Direction.Right;
    }

    private LandmarkRank Alone(Landmark landmark)
    {
        Point2D at = landmark.Position;
        return _corners.Any(corner => corner.DistanceMm(at) < SamePlaceMm) ? LandmarkRank.Corner
            : landmark.Kind is LandmarkKind.DartApex or LandmarkKind.DartMiddle ? LandmarkRank.Dart
            : _panels.Any(panel => panel.Outline.ClosestTo(at).DistanceMm < SamePlaceMm) ? LandmarkRank.OnSeam
            : LandmarkRank.Guide;
    }
}
