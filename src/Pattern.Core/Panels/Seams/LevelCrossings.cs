using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>Where a segment crosses a level of the sheet.</summary>
internal static class LevelCrossings
{
    /// <summary>The parameters at which a segment is at a height, its start included and its end not, so that a path counts each crossing once.</summary>
    internal static IEnumerable<double> Of(PathSegment segment, double yMm)
    {
        switch (segment.Kind)
        {
            case PathSegmentKind.Line:
                double rise = segment.End.YMm - segment.Start.YMm;
                double u = (yMm - segment.Start.YMm) / rise;
                if (rise != 0 && u >= 0 && u < 1)
                {
                    yield return u;
                }

                break;
            case PathSegmentKind.Arc:
                CircularArc arc = segment.ArcRaw;
                double sine = (yMm - arc.CentreYMm) / arc.RadiusMm;
                if (Math.Abs(sine) <= 1)
                {
                    double up = Math.Asin(sine);
                    foreach (double angle in new[] { up, Math.PI - up })
                    {
                        double turn = (angle - arc.StartRad) / (2 * Math.PI);
                        double ahead = (turn - Math.Floor(turn)) * 2 * Math.PI;
                        double share = arc.SweepRad > 0 ? ahead / arc.SweepRad : ((2 * Math.PI) - ahead) / -arc.SweepRad;
                        if (share >= 0 && share < 1)
                        {
                            yield return share;
                        }
                    }
                }

                break;
            default:
                segment.CubicRaw.IntersectLine(Line.Horizontal(new Point2D(0, yMm)), out ParameterHits hits);
                for (int i = 0; i < hits.Count; i++)
                {
                    if (hits[i] < 1)
                    {
                        yield return hits[i];
                    }
                }

                break;
        }
    }
}
