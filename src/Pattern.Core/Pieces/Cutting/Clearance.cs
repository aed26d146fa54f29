using System;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>How near a line to cut along comes to the seam line of an edge.</summary>
internal static class Clearance
{
    // Between two looks this far apart a line comes nearer to a point by no more than step squared / (8 x distance): a hundredth of a millimetre at 3 mm.
    private const double StepMm = 0.5;

    /// <summary>The most steps along one segment. Steps grow where that is not enough: beyond 8 m, and no garment is that long.</summary>
    internal const int MostSteps = 1 << 14;

    /// <summary>Finds where a line is nearest to an edge, the caps of its darts included, if that is nearer than is needed.</summary>
    /// <remarks>A line comes no nearer within a stretch than half of what the distances at both ends leave of its length, so most of it is settled by a few looks. The
    /// work is bounded: for each two segments less than four looks for each millimetre of three times the longest leg, besides those at both ends, and
    /// never more than <see cref="MostSteps"/> and one.</remarks>
    /// <returns>The place on the line and its distance, or null where the line keeps its distance.</returns>
    internal static CutFault? Find(CurvePath line, PanelEdge edge, double neededMm)
    {
        double nearestMm = neededMm - CheckList.ToleranceMm;
        CutFault? worst = null;
        if (nearestMm <= 0)
        {
            return null;
        }

        foreach (PathSegment segment in line.SegmentsRaw)
        {
            BoundingBox box = segment.LooseBounds;
            for (int k = 0; k < edge.StretchesRaw.Length; k++)
            {
                Look(edge.StretchesRaw[k]);
                if (k < edge.Darts.Count)
                {
                    Look(edge.Darts[k].Cap);
                }
            }

            void Look(CurvePath part)
            {
                foreach (PathSegment seam in part.SegmentsRaw)
                {
                    if (seam.LooseBounds.IsNear(box, nearestMm) && new Pair(segment, seam).TryNearer(ref nearestMm, out Point2D at))
                    {
                        worst = new CutFault(edge.Name, neededMm, at, nearestMm);
                    }
                }
            }
        }

        return worst;
    }

    /// <summary>A segment of the line and one of the seam.</summary>
    private readonly struct Pair
    {
        private readonly PathSegment _line;
        private readonly PathSegment _seam;

        // No point of the segment moves faster along it than this, for each unit of the parameter.
        private readonly double _speedMm;
        private readonly double _stepMm;

        internal Pair(in PathSegment line, in PathSegment seam)
        {
            _line = line;
            _seam = seam;
            CubicBezier c = line.CubicRaw;
            _speedMm = line.Kind != PathSegmentKind.Cubic
                ? line.LengthMm()
                : 3 * Math.Max(LegMm(c.X0, c.Y0, c.X1, c.Y1), Math.Max(LegMm(c.X1, c.Y1, c.X2, c.Y2), LegMm(c.X2, c.Y2, c.X3, c.Y3)));
            _stepMm = Math.Max(StepMm, _speedMm / MostSteps);
        }

        internal bool TryNearer(ref double nearestMm, out Point2D at)
        {
            double foundAt = double.NaN;
            double startMm = Look(0, ref nearestMm, ref foundAt);
            double endMm = Look(1, ref nearestMm, ref foundAt);
            Between(0, startMm, 1, endMm, ref nearestMm, ref foundAt);
            bool any = !double.IsNaN(foundAt);
            at = any ? _line.PointAtRaw(foundAt) : default;
            return any;
        }

        private void Between(double from, double fromMm, double to, double toMm, ref double nearestMm, ref double foundAt)
        {
            double lengthMm = _speedMm * (to - from);
            if (!(lengthMm > _stepMm) || (fromMm + toMm - lengthMm) / 2 >= nearestMm)
            {
                return;
            }

            double middle = (from + to) / 2;
            double middleMm = Look(middle, ref nearestMm, ref foundAt);
            Between(from, fromMm, middle, middleMm, ref nearestMm, ref foundAt);
            Between(middle, middleMm, to, toMm, ref nearestMm, ref foundAt);
        }

        private double Look(double t, ref double nearestMm, ref double foundAt)
        {
            SearchWork.Step();
            double distanceMm = double.PositiveInfinity;
            _seam.TryCloserRaw(_line.PointAtRaw(t), ref distanceMm, out _);
            if (distanceMm < nearestMm)
            {
                (nearestMm, foundAt) = (distanceMm, t);
            }

            return distanceMm;
        }

        private static double LegMm(double x0, double y0, double x1, double y1) => new Point2D(x0, y0).DistanceMm(new Point2D(x1, y1));
    }
}
