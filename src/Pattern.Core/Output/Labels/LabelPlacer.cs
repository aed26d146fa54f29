using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>Finds places for labels where they cover no line, no point, no other label, and do not leave the sheet.</summary>
/// <remarks>Greedy and deterministic: labels are placed in the order in which they are asked for, each in the first free place of its list, at its full size or a
/// smaller one. A label of a point that finds none goes farther away and is joined to the point by a thin line. All lines have to be known
/// before the first label is placed.</remarks>
internal sealed class LabelPlacer
{
    private const double LabelGapMm = 0.8;
    private const double PointGapMm = 1;
    private const double SamePointMm = 1;

    // Far less than the room that a label keeps from a line.
    private static readonly Length Flatness = Length.FromMillimeters(0.05);

    private static readonly double[] Shrinking = [1, 0.88, 0.78];
    private static readonly double[] LeaderLengthsMm = [7, 11, 16, 22, 30, 40, 52, 66, 82, 100, 130, 170, 220];

    private readonly BoundingBox _sheet;
    private readonly List<Obstacle> _obstacles = [];
    private readonly List<LabelBox> _labels = [];
    private readonly List<Point2D> _points = [];

    internal LabelPlacer(in BoundingBox sheet) => _sheet = sheet;

    /// <summary>Keeps labels off a mark.</summary>
    internal void Avoid(DrawingMark mark)
    {
        switch (mark)
        {
            case PathMark path:
                Avoid(path.Path, path.Role.WeightMm / 2);
                foreach (CurvePath head in path.ArrowHeads())
                {
                    Avoid(head, path.Role.WeightMm / 2);
                }

                break;
            case PointMark point:
                _obstacles.Add(new Obstacle([point.Position, point.Position], point.DiameterMm / 2));
                _points.Add(point.Position);
                break;
            case TextMark text:
                _labels.Add(text.Box);
                break;
        }
    }

    /// <summary>Places a label at one of its spots.</summary>
    /// <returns>The label, or null where none of the spots is free even at the smallest size.</returns>
    internal TextMark? TryPlace(string text, double sizeMm, TextWeight weight, Ink ink, IReadOnlyList<LabelSpot> spots)
        => TryPlace(text, sizeMm, weight, ink, spots, null);

    /// <summary>Places the label of a point beside it or, joined to it by a line, farther away.</summary>
    /// <returns>The label, and the line that joins it or null; nothing where the sheet is full.</returns>
    internal (TextMark? Label, PathMark? Leader) PlaceBeside(string text, double sizeMm, Ink ink, Point2D point, Direction first, double gapMm)
    {
        TextMark? beside = TryPlace(text, sizeMm, TextWeight.Regular, ink, [.. LabelSpot.Around(point, first, gapMm)], point);
        if (beside is not null)
        {
            return (beside, null);
        }

        // Where points crowd, as those of the side do on a body without a waist, leaders in more directions may pass other points and names more closely.
        return TryTied(text, sizeMm * Shrinking[1], ink, point, first, gapMm, 24, PointGapMm, LabelGapMm / 2)
            ?? TryTied(text, sizeMm * Shrinking[2], ink, point, first, gapMm, 120, 0.4 * PointGapMm, LabelGapMm / 8)
            ?? (null, null);
    }

    // A label joined to its point by a line, the shortest that is free; of those, the one nearest to the preferred direction.
    private (TextMark? Label, PathMark? Leader)? TryTied(
        string text, double sizeMm, Ink ink, Point2D point, Direction first, double gapMm, int directions, double pointGapMm, double labelGapMm)
    {
        foreach (double reachMm in LeaderLengthsMm)
        {
            for (int i = 0; i < directions; i++)
            {
                // Alternately to either side of the preferred direction.
                double turn = (i + 1) / 2 * (i % 2 == 0 ? 1 : -1) * (2 * Math.PI / directions);
                Direction away = first.TurnedRad(turn);
                TextMark label = LabelSpot.Beside(point, away, reachMm).Set(text, sizeMm, TextWeight.Regular, ink);
                LabelBox box = label.Box;
                if (!IsFree(box))
                {
                    continue;
                }

                Point2D end = box.NearestTo(point);
                Direction along = point.DirectionTo(end);
                var leader = new LineSegment(point + along.TimesMm(gapMm * 0.6), end + along.TimesMm(-LabelGapMm));
                if (MeetsLabel(leader, labelGapMm) || PassesAnotherPoint(leader, point, pointGapMm))
                {
                    continue;
                }

                _labels.Add(box);
                var mark = new PathMark(CurvePath.FromLine(leader), LineRole.Leader);
                Avoid(mark);
                return (label, mark);
            }
        }

        return null;
    }

    private TextMark? TryPlace(string text, double sizeMm, TextWeight weight, Ink ink, IReadOnlyList<LabelSpot> spots, Point2D? named)
    {
        foreach (double factor in Shrinking)
        {
            foreach (LabelSpot spot in spots)
            {
                TextMark label = spot.Set(text, factor * sizeMm, weight, ink);
                if (IsFree(label.Box) && (named is not { } point || IsNearest(point, label.Box)))
                {
                    _labels.Add(label.Box);
                    return label;
                }
            }
        }

        return null;
    }

    private bool IsFree(in LabelBox box)
    {
        BoundingBox bounds = box.Bounds;
        if (bounds.LeftMm < _sheet.LeftMm || bounds.RightMm > _sheet.RightMm || bounds.BottomMm < _sheet.BottomMm || bounds.TopMm > _sheet.TopMm)
        {
            return false;
        }

        LabelBox roomy = box.Grown(LabelGapMm);
        foreach (LabelBox label in _labels)
        {
            if (roomy.Meets(label))
            {
                return false;
            }
        }

        foreach (Obstacle obstacle in _obstacles)
        {
            if (obstacle.Meets(box))
            {
                return false;
            }
        }

        return true;
    }

    // A name that stands as near to another point would be read as that one's.
    private bool IsNearest(in Point2D named, in LabelBox box)
    {
        double own = named.DistanceMm(box.NearestTo(named));
        foreach (Point2D other in _points)
        {
            if (other.DistanceMm(named) > SamePointMm && other.DistanceMm(box.NearestTo(other)) < own + PointGapMm)
            {
                return false;
            }
        }

        return true;
    }

    private bool PassesAnotherPoint(in LineSegment leader, in Point2D named, double gapMm)
    {
        foreach (Point2D other in _points)
        {
            if (other.DistanceMm(named) > SamePointMm && leader.ClosestTo(other).DistanceMm < gapMm)
            {
                return true;
            }
        }

        return false;
    }

    private bool MeetsLabel(in LineSegment leader, double gapMm)
    {
        foreach (LabelBox label in _labels)
        {
            if (label.Grown(gapMm).Meets(leader.Start, leader.End))
            {
                return true;
            }
        }

        return false;
    }

    private void Avoid(CurvePath path, double halfWidthMm) => _obstacles.Add(new Obstacle(path.Flatten(Flatness), halfWidthMm + Flatness.Millimeters));

    /// <summary>A line of straight pieces with a width.</summary>
    private sealed class Obstacle
    {
        private readonly Point2D[] _points;
        private readonly double _halfWidthMm;
        private readonly BoundingBox _bounds;

        internal Obstacle(Point2D[] points, double halfWidthMm)
        {
            _points = points;
            _halfWidthMm = halfWidthMm;
            _bounds = BoundingBox.Around(points[0], points[0]);
            foreach (Point2D point in points)
            {
                _bounds = _bounds.Including(point.XMm, point.YMm);
            }

        }

        internal bool Meets(in LabelBox box)
        {
            // Grown first: the corner of a slanted box moves farther than the box grows.
            LabelBox grown = box.Grown(_halfWidthMm);
            if (!_bounds.Overlaps(grown.Bounds))
            {
                return false;
            }

            for (int i = 1; i < _points.Length; i++)
            {
                if (grown.Meets(_points[i - 1], _points[i]))
                {
                    return true;
                }
            }

            return false;
        }
    }
}
