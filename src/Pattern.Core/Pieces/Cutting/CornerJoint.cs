using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>One corner of a cut line: ends the line of one edge, begins that of the next, and draws what lies between.</summary>
internal readonly struct CornerJoint
{
    // Where the allowances of two edges lie this close together they meet.
    private const double MeetMm = 1e-6;

    // A corner is worth its point up to four allowances from the seam; that is an angle of 29 degrees.
    private const double FarthestPoint = 4;

    // The same angle as a turn of the seam line.
    private const double SharpRad = Math.PI - 0.505;

    private const double NeedleRad = 0.1;

    private readonly EdgeCut _before;
    private readonly EdgeCut _after;
    private readonly Point2D _seamCorner;
    private readonly Direction _arriving;
    private readonly Direction _leaving;
    private readonly double _hand;

    // By how much the seam line turns towards the inside; negative at a corner that points into the piece.
    private readonly double _turnRad;

    private CornerJoint(EdgeCut before, EdgeCut after, double hand)
    {
        _before = before;
        _after = after;
        _hand = hand;
        _seamCorner = after.Edge.Start;
        _arriving = before.Edge.Stretches[before.Edge.Stretches.Count - 1].EndDirection;
        _leaving = after.Edge.Stretches[0].StartDirection;
        _turnRad = hand * _arriving.TurnRadTo(_leaving);
        if (Math.Abs(_turnRad) > Math.PI - NeedleRad)
        {
            // Straight back: whether that is a needle or a slit shows a little away from the corner only.
            double beyondRad = hand * Chord(before.Edge, isLast: true).TurnRadTo(Chord(after.Edge, isLast: false));
            _turnRad += beyondRad * _turnRad < 0 ? 2 * Math.PI * Math.Sign(beyondRad) : 0;
        }
    }

    private static Direction Chord(PanelEdge edge, bool isLast)
    {
        CurvePath stretch = edge.Stretches[isLast ? edge.Stretches.Count - 1 : 0];
        double length = stretch.LengthMm;
        return isLast ? stretch.PointAtMm(0.75 * length).DirectionTo(stretch.End) : stretch.Start.DirectionTo(stretch.PointAtMm(0.25 * length));
    }

    private CutStretch Tail => _before.Last;

    private CutStretch Head => _after.First;

    private double WiderMm => Math.Max(_before.AllowanceMm, _after.AllowanceMm);

    /// <summary>Makes a corner.</summary>
    /// <param name="before">The edge that ends there.</param>
    /// <param name="after">The edge that begins there.</param>
    /// <param name="hand">+1 where the panel runs counter-clockwise, else -1.</param>
    /// <param name="corner">What is asked for.</param>
    /// <param name="acrossEnds">Whether the edge that is run into or folded back is the one that ends there.</param>
    /// <returns>What lies between the two lines.</returns>
    internal static List<PathSegment> Make(EdgeCut before, EdgeCut after, double hand, Corner corner, bool acrossEnds)
    {
        var joint = new CornerJoint(before, after, hand);
        if (joint._turnRad > SharpRad)
        {
            return joint.CutOff();
        }

        if (joint._turnRad < 0)
        {
            return joint.Extend(isBlunt: false);
        }

        return corner switch
        {
            Corner.SquaredOff => acrossEnds ? joint.SquareOffNext() : joint.SquareOffBefore(),
            Corner.Mirrored => acrossEnds ? joint.MirrorNext() : joint.MirrorBefore(),
            _ => joint.Extend(isBlunt: corner == Corner.Blunt),
        };
    }

    private List<PathSegment> Extend(bool isBlunt)
    {
        Point2D end = Tail.At(Tail.EndBeside);
        Point2D start = Head.At(Head.StartBeside);
        if (end.DistanceMm(start) <= MeetMm)
        {
            (Tail.To, Head.From) = (Tail.EndBeside, Head.StartBeside);
            return [];
        }

        if (!TryCross(out PathSpot onTail, out PathSpot onHead, out Point2D point))
        {
            return _turnRad > Math.PI / 2 ? CutOff() : Step();
        }

        double away = point.DistanceMm(_seamCorner);
        bool trimsTooMuch = _turnRad < Math.PI / 4
            && Math.Max(Behind(_arriving, end, point), Behind(_leaving.Reversed, start, point)) > WiderMm
            && !_before.IsOnFold && !_after.IsOnFold;
        if (trimsTooMuch || (away > FarthestPoint * WiderMm && _turnRad < Math.PI / 2))
        {
            return Step();
        }

        bool hasPoint = _turnRad > Math.PI / 4 && OutwardBetween().Dot(point - _seamCorner) > WiderMm;
        if ((isBlunt && hasPoint) || away > FarthestPoint * WiderMm)
        {
            return CutOff();
        }

        (Tail.To, Head.From) = (onTail, onHead);
        return [];
    }

    // How far a line is cut back before its end.
    private static double Behind(Direction along, in Point2D end, in Point2D point) => along.Dot(end - point);

    // Both lines end on one that lies an allowance beyond the corner, square to the middle between the two edges.
    private List<PathSegment> CutOff()
    {
        Direction outward = OutwardBetween();
        Line across = Line.From(_seamCorner + outward.TimesMm(WiderMm), outward.TurnedLeft);
        return TryCross(Tail.Tail(out int offset), across, _seamCorner, out PathSpot onTail) && TryCross(Head.Head(), across, _seamCorner, out PathSpot onHead)
            ? End(onTail.Moved(offset), onHead)
            : Step();
    }

    // The wider allowance ends square to its seam; the narrower one runs to where it meets that end.
    private List<PathSegment> Step()
    {
        Point2D end = Tail.At(Tail.EndBeside);
        Point2D start = Head.At(Head.StartBeside);
        if (_after.AllowanceMm > _before.AllowanceMm)
        {
            Line square = Line.From(_seamCorner, Outward(_leaving));
            PathSpot onTail = TryCross(Tail.Tail(out int offset), square, end, out PathSpot spot, isAhead: true) ? spot.Moved(offset) : Tail.EndBeside;
            return End(onTail, Head.StartBeside);
        }

        Line squareToEnd = Line.From(_seamCorner, Outward(_arriving));
        PathSpot onHead = TryCross(Head.Head(), squareToEnd, start, out PathSpot found, isAhead: true) ? found : Head.StartBeside;
        return End(Tail.EndBeside, onHead);
    }

    // The edge that ends here is run into by the next one.
    private List<PathSegment> SquareOffNext()
    {
        Line seamOn = Line.From(_seamCorner, _leaving.Reversed);
        if (!TryCross(Tail.Tail(out int offset), seamOn, _seamCorner, out PathSpot onTail, isAhead: true))
        {
            return Extend(isBlunt: false);
        }

        Line square = seamOn.PerpendicularThrough(Tail.At(onTail.Moved(offset)));
        return TryCross(Head.Head(), square, Head.At(Head.StartBeside), out PathSpot onHead) ? End(onTail.Moved(offset), onHead) : Extend(isBlunt: false);
    }

    private List<PathSegment> SquareOffBefore()
    {
        Line seamOn = Line.From(_seamCorner, _arriving);
        if (!TryCross(Head.Head(), seamOn, _seamCorner, out PathSpot onHead, isAhead: true))
        {
            return Extend(isBlunt: false);
        }

        Line square = seamOn.PerpendicularThrough(Head.At(onHead));
        return TryCross(Tail.Tail(out int offset), square, Tail.At(Tail.EndBeside), out PathSpot onTail) ? End(onTail.Moved(offset), onHead) : Extend(isBlunt: false);
    }

    // The edge that ends here is folded back; the cut line of the next one is mirrored over it.
    private List<PathSegment> MirrorNext()
    {
        Line fold = EdgeFold.At(_before.Edge, isEnd: true);
        CurvePath head = Head.Head();
        if (!TryCross(head, fold, _seamCorner, out PathSpot onFold))
        {
            return Extend(isBlunt: false);
        }

        if (PathSpot.Between(head, onFold, PathSpot.EndOf(head)) is not { Count: > 0 } kept)
        {
            return Extend(isBlunt: false);
        }

        CurvePath image = CurvePath.FromSegments(kept).MirroredOver(fold);
        if (!TryFirst(image, Tail.Tail(out int offset), out PathSpot onImage, out PathSpot onTail))
        {
            return Extend(isBlunt: false);
        }

        (Tail.To, Head.From) = (onTail.Moved(offset), onFold);
        List<PathSegment> between = PathSpot.Between(image, PathSpot.StartOf(image), onImage);
        between.Reverse();
        return between.ConvertAll(segment => segment.Reversed());
    }

    private List<PathSegment> MirrorBefore()
    {
        Line fold = EdgeFold.At(_after.Edge, isEnd: false);
        CurvePath tail = Tail.Tail(out int offset);
        if (!TryCross(tail, fold, _seamCorner, out PathSpot onFold))
        {
            return Extend(isBlunt: false);
        }

        if (PathSpot.Between(tail, PathSpot.StartOf(tail), onFold) is not { Count: > 0 } kept)
        {
            return Extend(isBlunt: false);
        }

        CurvePath image = CurvePath.FromSegments(kept).MirroredOver(fold).Reversed();
        if (!TryFirst(image, Head.Head(), out PathSpot onImage, out PathSpot onHead))
        {
            return Extend(isBlunt: false);
        }

        (Tail.To, Head.From) = (onFold.Moved(offset), onHead);
        return PathSpot.Between(image, PathSpot.StartOf(image), onImage);
    }

    private Direction OutwardBetween() => Outward(_arriving.TurnedRad(_hand * _turnRad / 2));

    private Direction Outward(Direction along) => _hand > 0 ? along.TurnedRight : along.TurnedLeft;

    private List<PathSegment> End(PathSpot onTail, PathSpot onHead)
    {
        (Tail.To, Head.From) = (onTail, onHead);
        Point2D from = Tail.At(onTail);
        Point2D to = Head.At(onHead);
        return from.DistanceMm(to) <= MeetMm ? [] : [PathSegment.FromLine(new LineSegment(from, to))];
    }

    // The crossing of the two lines that is nearest to the corner of the seam.
    private bool TryCross(out PathSpot onTail, out PathSpot onHead, out Point2D point)
    {
        // At a corner that points into the piece an edge may be cut back beyond its other end: then nothing is left of it, which its spots will show.
        bool pointsIn = _turnRad < 0;
        int offset = 0;
        CurvePath tail = pointsIn ? Tail.Path : Tail.Tail(out offset);
        CurvePath head = pointsIn ? Head.Path : Head.Head();
        double nearest = double.PositiveInfinity;
        (onTail, onHead, point) = (default, default, default);
        foreach (PathIntersection hit in tail.IntersectionsWith(head).Points)
        {
            double away = hit.Point.DistanceMm(_seamCorner);
            if (away < nearest)
            {
                nearest = away;
                onTail = new PathSpot(hit.FirstSegment + offset, hit.FirstParameter);
                onHead = new PathSpot(hit.SecondSegment, hit.SecondParameter);
                point = hit.Point;
            }
        }

        return nearest < double.PositiveInfinity;
    }

    // Nearest to a point; where a line is drawn on from the corner, only beyond it.
    private static bool TryCross(CurvePath path, in Line line, in Point2D near, out PathSpot spot, bool isAhead = false)
    {
        double nearest = double.PositiveInfinity;
        spot = default;
        foreach (PathIntersection hit in path.IntersectionsWith(line).Points)
        {
            double away = hit.Point.DistanceMm(near);
            if (away < nearest && !(isAhead && hit.SecondParameter < -MeetMm))
            {
                nearest = away;
                spot = new PathSpot(hit.FirstSegment, hit.FirstParameter);
            }
        }

        return nearest < double.PositiveInfinity;
    }

    private static bool TryFirst(CurvePath path, CurvePath other, out PathSpot onPath, out PathSpot onOther)
    {
        IReadOnlyList<PathIntersection> hits = path.IntersectionsWith(other).Points;
        bool any = hits.Count > 0;
        onPath = any ? new PathSpot(hits[0].FirstSegment, hits[0].FirstParameter) : default;
        onOther = any ? new PathSpot(hits[0].SecondSegment, hits[0].SecondParameter) : default;
        return any;
    }
}
