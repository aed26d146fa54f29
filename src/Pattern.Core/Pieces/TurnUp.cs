using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>How wide a piece is beyond an edge that is folded back, against how wide it is as far before that edge: what is folded lies flat where both agree.</summary>
/// <remarks>Measured on the finished cut line: along lines beside the fold, from the cut line on one side of its middle to that on the other.</remarks>
internal sealed class TurnUp
{
    private const int SamplesPerSegment = 24;
    private const int Depths = 16;
    private const int Halvings = 12;

    // What is folded by less than an edge may be off its straight fold, twice over, is no turn-up.
    private const double LeastMm = 2;

    // At its full depth a slice would run along the cut line itself.
    private const double ShortMm = 0.02;

    // A free edge that is level to a tenth of a millimetre is level to a cutter.
    private const double MostUnevenMm = 0.1;

    private readonly Point2D[] _fold;
    private readonly Vector2D[] _outward;
    private readonly Vector2D _before;
    private readonly Vector2D _beyond;
    private readonly CurvePath _cutLine;
    private readonly double _allowanceMm;
    private readonly double _deepestMm;
    private readonly double _reachMm;

    private TurnUp(PatternPiece piece, PieceEdge edge)
    {
        _cutLine = piece.CutLine;
        _allowanceMm = edge.AllowanceMm;
        BoundingBox box = _cutLine.Bounds;
        _reachMm = (box.RightMm - box.LeftMm) + (box.TopMm - box.BottomMm);
        CurvePath seam = edge.SeamLine;
        bool isStraight = EdgeFold.IsStraight(seam);
        CurvePath fold = isStraight ? CurvePath.FromLine(new LineSegment(seam.Start, seam.End)) : seam;

        // The cut line follows the edge, which may be a little off its straight fold: a slice as deep as the allowance would leave the cloth where it is.
        _deepestMm = _allowanceMm - ShortMm - (isStraight ? EdgeFold.OffStraightMm(seam) : 0);
        bool isInsideLeft = piece.SeamLine.SignedAreaMm2 > 0;
        if (isStraight)
        {
            Direction along = fold.StartDirection;
            _deepestMm -= UnevenMm(fold.Start, isInsideLeft ? along.TurnedRight : along.TurnedLeft);
        }

        var points = new List<Point2D>();
        var outward = new List<Vector2D>();
        foreach (PathSegment segment in fold.SegmentsRaw)
        {
            int count = segment.Kind == PathSegmentKind.Line ? 2 : SamplesPerSegment;
            for (int i = 0; i <= count; i++)
            {
                double t = (double)i / count;
                Direction along = segment.DirectionAtRaw(t);
                points.Add(segment.PointAtRaw(t));
                outward.Add((isInsideLeft ? along.TurnedRight : along.TurnedLeft).TimesMm(1));
            }
        }

        (_fold, _outward) = ([.. points], [.. outward]);

        // The line itself goes on along its own directions; those of chords between its points would leave the allowance of a wide neighbour.
        _before = fold.StartDirection.Reversed.TimesMm(1);
        _beyond = fold.EndDirection.TimesMm(1);
    }

    // Mirrored over a neighbour that curves, the free edge runs on not quite level, and a slice as deep as most of it would miss that part. Only so much is overlooked.
    private double UnevenMm(Point2D onFold, Direction outward)
    {
        double most = 0;
        foreach (PathSegment segment in _cutLine.SegmentsRaw)
        {
            double shortMm = _allowanceMm - outward.TimesMm(1).DotMm2(segment.Start - onFold);
            most = shortMm <= MostUnevenMm ? Math.Max(most, shortMm) : most;
        }

        return most;
    }

    /// <summary>By how much the allowance is wider than the cloth before the fold, at the depth where that is least; negative where it is too narrow to lie flat.</summary>
    internal double LeastWiderMm()
    {
        double least = double.PositiveInfinity;
        for (int i = 1; i <= Depths; i++)
        {
            least = Math.Min(least, WiderMm(_deepestMm * i / Depths));
        }

        return least;
    }

    /// <summary>How deep it may be turned up and still be no more than a length wider than the cloth that it lies on; all of the allowance where that is so.</summary>
    internal double FlatDepthMm(double atMostMm)
    {
        double flat = 0;
        for (int i = 1; i <= Depths; i++)
        {
            double depth = _deepestMm * i / Depths;
            if (WiderMm(depth) > atMostMm)
            {
                // Between two depths the width grows evenly enough to be halved.
                for (int k = 0; k < Halvings; k++)
                {
                    double middle = (flat + depth) / 2;
                    (flat, depth) = WiderMm(middle) > atMostMm ? (flat, middle) : (middle, depth);
                }

                return flat;
            }

            flat = depth;
        }

        return _allowanceMm;
    }

    /// <summary>The edges of a piece that are folded back: hems, and whatever both its neighbours are mirrored over.</summary>
    internal static IEnumerable<(PieceEdge Edge, TurnUp TurnUp)> Of(PatternPiece piece)
    {
        int count = piece.Edges.Count;
        for (int i = 0; i < count; i++)
        {
            PieceEdge edge = piece.Edges[i];
            bool isFolded = edge.Role == EdgeRole.Hem
                || (IsOver(piece, edge, piece.Edges[(i + count - 1) % count], endsFirst: false) && IsOver(piece, edge, piece.Edges[(i + 1) % count], endsFirst: true));
            if (isFolded && !edge.IsOnFold && edge.AllowanceMm > LeastMm)
            {
                yield return (edge, new TurnUp(piece, edge));
            }
        }
    }

    private static bool IsOver(PatternPiece piece, PieceEdge edge, PieceEdge neighbour, bool endsFirst)
    {
        EdgeName ends = endsFirst ? edge.Name : neighbour.Name;
        EdgeName begins = endsFirst ? neighbour.Name : edge.Name;
        Corner corner = CutLine.CornerOf(ends, begins, piece.Settings, out bool acrossEnds);
        return neighbour.IsOnFold || (corner == Corner.Mirrored && acrossEnds == endsFirst);
    }

    private double WiderMm(double depthMm) => WidthMm(depthMm) - WidthMm(-depthMm);

    // Along the line beside the fold, drawn on straight beyond both ends, from the cut line before its middle to the cut line after it.
    private double WidthMm(double outMm)
    {
        int last = _fold.Length - 1;
        var points = new List<Point2D>(_fold.Length + 2);
        for (int i = 0; i <= last; i++)
        {
            Point2D at = _fold[i] + (_outward[i] * outMm);
            if (points.Count == 0 || points[points.Count - 1] != at)
            {
                points.Add(at);
            }
        }

        int middle = points.Count / 2;
        if (points.Count < 3 || _cutLine.ContainmentOf(points[middle]) != Containment.Inside)
        {
            return 0;
        }

        points.Insert(0, points[0] + (_before * _reachMm));
        points.Add(points[points.Count - 1] + (_beyond * _reachMm));
        middle++;
        var steps = new PathSegment[points.Count - 1];
        var passedMm = new double[points.Count];
        for (int i = 0; i < steps.Length; i++)
        {
            var step = new LineSegment(points[i], points[i + 1]);
            steps[i] = PathSegment.FromLine(step);
            passedMm[i + 1] = passedMm[i] + step.LengthMm;
        }

        double from = 0;
        double to = passedMm[steps.Length];
        foreach (PathIntersection hit in CurvePath.Trusted(steps, isClosed: false).IntersectionsWith(_cutLine).Points)
        {
            double at = passedMm[hit.FirstSegment] + points[hit.FirstSegment].DistanceMm(hit.Point);
            (from, to) = at < passedMm[middle] ? (Math.Max(from, at), to) : (from, Math.Min(to, at));
        }

        return to - from;
    }
}
