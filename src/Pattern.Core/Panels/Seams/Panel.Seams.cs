using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <content>What seams need to know of a panel.</content>
public sealed partial class Panel
{
    /// <summary>Whether the outline runs with the cloth on its left.</summary>
    internal bool RunsCounterClockwise
    {
        get
        {
            // Measured from a corner of the panel, so that a panel far from the origin keeps its digits; dart legs are straight.
            Point2D from = _edges[0].Start;
            Transform2D toOrigin = Transform2D.Translation(Point2D.Origin - from);
            double twiceMm2 = 0;
            foreach (PanelEdge edge in _edges)
            {
                foreach (CurvePath stretch in edge.StretchesRaw)
                {
                    foreach (PathSegment segment in stretch.SegmentsRaw)
                    {
                        twiceMm2 += 2 * segment.TransformedRaw(toOrigin).SignedAreaMm2;
                    }
                }

                foreach (Dart dart in edge.DartsRaw)
                {
                    twiceMm2 += (dart.StartLeg - from).CrossMm2(dart.Apex - from) + (dart.Apex - from).CrossMm2(dart.EndLeg - from);
                }
            }

            return twiceMm2 > 0;
        }
    }

    internal Panel WithMoreNotches(Notch[] notches) => notches.Length == 0 ? this : new Panel(Name, _edges, _features with { Notches = [.. _features.Notches, .. notches] });
}
