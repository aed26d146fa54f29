using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>Finds places for labels where they cover no line, no point, no other label, and do not leave the sheet.</summary>
/// <remarks>Greedy and deterministic: labels are placed in the order in which they are asked for, each in the first free place of its list: with air around it before
/// close to a line, at its full size before a smaller one. A label of a point that finds none goes farther away and is joined to the point by a thin line. All lines
/// have to be known before the first label is placed.</remarks>
internal sealed class LabelPlacer
{
    private const double LabelGapMm = 0.8;
    private const double PointGapMm = 1;
    private const double SamePointMm = 1;

    // Words of one line of type that stand nearer to each other are read as one phrase; in parts of the size.
    private const double BetweenWords = 0.9;

    // Where there is a choice, a word keeps this much off all lines but the one that it speaks of.
    private const double AirMm = 1.1;

    // A name stands nearer to its point, and to the lines that meet there.
    private const double AirByPointMm = 0.5;

    // A leader that crosses no line may be this many steps longer than one that does.
    private const int Detour = 2;

    private static readonly double[] Shrinking = [1, 0.88, 0.78];
    private static readonly double[] LeaderLengthsMm = [7, 11, 16, 22, 30, 40, 52, 66, 82, 100, 130, 170, 220];

    private readonly BoundingBox _sheet;
    private readonly FreeRoom _room = new();
    private readonly List<(TurnedBox Box, BoundingBox Bounds, double SizeMm)> _labels = [];
    private readonly List<Point2D> _points = [];

    internal LabelPlacer(in BoundingBox sheet) => _sheet = sheet;

    /// <summary>How far a leader may go where the name of a point gives way: farther off, nobody looks for it.</summary>
    internal static double ShortLeadersMm => 30;

    /// <summary>Keeps labels off a mark.</summary>
    internal void Avoid(DrawingMark mark)
    {
        switch (mark)
        {
            case PathMark path:
                _room.Take(path.Path, path.Role.WeightMm / 2);
                foreach (CurvePath head in path.ArrowHeads())
                {
                    _room.Take(head, path.Role.WeightMm / 2);
                }

                break;
            case PointMark point:
                _room.Take(point.Position, point.Position, point.DiameterMm / 2);
                _points.Add(point.Position);
                break;
            case TextMark text:
                Placed(text, text.SizeMm);
                break;
        }
    }

    /// <summary>Places a label along a line, or anywhere, at one of its spots.</summary>
    /// <returns>The label, or null where none of the spots is free even at the smallest size.</returns>
    internal TextMark? TryPlace(string text, double sizeMm, TextWeight weight, Ink ink, IReadOnlyList<LabelSpot> spots)
        => TryPlace(text, sizeMm, weight, ink, spots, BetweenWords * sizeMm, AirMm, null);

    /// <summary>Places a label that begins or ends beside what it names, at one of its spots.</summary>
    /// <returns>The label, or null where none of the spots is free even at the smallest size.</returns>
    internal TextMark? TryPlaceBeside(string text, double sizeMm, TextWeight weight, Ink ink, IReadOnlyList<LabelSpot> spots)
        => TryPlace(text, sizeMm, weight, ink, spots, AirMm, AirMm, null);

    /// <summary>Places the label of a point beside it or, joined to it by a line, farther away.</summary>
    /// <param name="text">The name.</param>
    /// <param name="sizeMm">The size of the type.</param>
    /// <param name="ink">The colour.</param>
    /// <param name="point">What is named.</param>
    /// <param name="first">Where the name would best stand.</param>
    /// <param name="lean">To which side it goes before the other; null where it does not matter.</param>
    /// <param name="gapMm">From the point to the name.</param>
    /// <param name="farthestMm">The longest line that may join it.</param>
    /// <returns>The label, and the line that joins it or null; nothing where there is no room for it so near.</returns>
    internal (TextMark? Label, PathMark? Leader) PlaceBeside(
        string text, double sizeMm, Ink ink, Point2D point, Direction first, Direction? lean, double gapMm, double farthestMm)
    {
        TextMark? beside = TryPlace(text, sizeMm, TextWeight.Regular, ink, [.. LabelSpot.Around(point, first, lean, gapMm)], AirByPointMm, AirByPointMm, point);
        if (beside is not null)
        {
            return (beside, null);
        }

        // Where points crowd, as those of the side do on a body without a waist, leaders in more directions may pass other points and names more closely.
        var tied = new Tie(text, sizeMm * Shrinking[1], ink, point, first, lean, gapMm, 24, PointGapMm, LabelGapMm / 2);
        return TryTied(tied, farthestMm)
            ?? TryTied(tied with { SizeMm = sizeMm * Shrinking[2], Directions = 120, PointGapMm = 0.4 * PointGapMm, LabelGapMm = LabelGapMm / 8 }, farthestMm)
            ?? (null, null);
    }

    // A label joined to its point by a line, the shortest that is free, and rather a little longer than across other lines.
    private (TextMark? Label, PathMark? Leader)? TryTied(in Tie tie, double farthestMm)
    {
        for (int i = 0; i < LeaderLengthsMm.Length + Detour; i++)
        {
            if (i < LeaderLengthsMm.Length && LeaderLengthsMm[i] <= farthestMm && TryTied(tie, LeaderLengthsMm[i], false) is { } round)
            {
                return round;
            }

            if (i >= Detour && LeaderLengthsMm[i - Detour] <= farthestMm && TryTied(tie, LeaderLengthsMm[i - Detour], true) is { } across)
            {
                return across;
            }
        }

        return null;
    }

    private (TextMark? Label, PathMark? Leader)? TryTied(in Tie tie, double reachMm, bool crosses)
    {
        foreach (int turn in LabelSpot.TurnsOf(tie.First, tie.Lean, tie.Directions))
        {
            Direction away = tie.First.TurnedRad(turn * (2 * Math.PI / tie.Directions));
            TextMark label = LabelSpot.Beside(tie.Point, away, reachMm).Set(tie.Text, tie.SizeMm, TextWeight.Regular, tie.Ink);
            TurnedBox box = label.Box;
            if (!IsFree(box, tie.SizeMm))
            {
                continue;
            }

            Point2D end = box.NearestTo(tie.Point);
            Direction along = tie.Point.DirectionTo(end);
            var leader = new LineSegment(tie.Point + along.TimesMm(tie.GapMm * 0.6), end + along.TimesMm(-LabelGapMm));
            if (MeetsLabel(leader, tie.LabelGapMm) || PassesAnotherPoint(leader, tie.Point, tie.PointGapMm) || (!crosses && !_room.IsFree(leader)))
            {
                continue;
            }

            var mark = new PathMark(CurvePath.FromLine(leader), LineRole.Leader);
            Avoid(mark);
            return (Placed(label, tie.SizeMm), mark);
        }

        return null;
    }

    private TextMark? TryPlace(string text, double sizeMm, TextWeight weight, Ink ink, IReadOnlyList<LabelSpot> spots, double alongMm, double upMm, Point2D? named)
    {
        (TextMark Label, double SizeMm)? close = null;
        foreach (double factor in Shrinking)
        {
            foreach (LabelSpot spot in spots)
            {
                TextMark label = spot.Set(text, factor * sizeMm, weight, ink);
                TurnedBox box = label.Box;
                if (!IsFree(box, factor * sizeMm) || (named is { } point && !IsNearest(point, box)))
                {
                    continue;
                }

                if (_room.IsFree(box.Grown(factor * alongMm, upMm)))
                {
                    return Placed(label, factor * sizeMm);
                }

                close ??= (label, factor * sizeMm);
            }
        }

        return close is { } found ? Placed(found.Label, found.SizeMm) : null;
    }

    private TextMark Placed(TextMark label, double sizeMm)
    {
        TurnedBox box = label.Box;
        _labels.Add((box, box.Bounds, sizeMm));
        return label;
    }

    private bool IsFree(in TurnedBox box, double sizeMm)
    {
        BoundingBox bounds = box.Bounds;
        if (bounds.LeftMm < _sheet.LeftMm || bounds.RightMm > _sheet.RightMm || bounds.BottomMm < _sheet.BottomMm || bounds.TopMm > _sheet.TopMm)
        {
            return false;
        }

        foreach ((TurnedBox label, BoundingBox around, double otherMm) in _labels)
        {
            double betweenMm = Math.Max(LabelGapMm, BetweenWords * Math.Min(sizeMm, otherMm));
            if (around.IsNear(bounds, 1.5 * betweenMm) && box.Grown(betweenMm, LabelGapMm).Meets(label))
            {
                return false;
            }
        }

        return _room.IsFree(box);
    }

    // A name that stands as near to another point would be read as that one's.
    private bool IsNearest(in Point2D named, in TurnedBox box)
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
        foreach ((TurnedBox label, _, _) in _labels)
        {
            if (label.Grown(gapMm).Meets(leader.Start, leader.End))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The name of a point that is to be joined to it by a line, and how near that may pass others.</summary>
    private readonly record struct Tie(
        string Text, double SizeMm, Ink Ink, Point2D Point, Direction First, Direction? Lean, double GapMm, int Directions, double PointGapMm, double LabelGapMm);
}
