using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>Notches, dart marks and drill holes of a piece.</summary>
internal sealed class PieceMarks
{
    // A notch is cut 3 to 5 mm into the allowance (Kwantlen Polytechnic University, "Stitched", Patterns) and stays under it.
    private const double NotchMm = 4;
    private const double ShareOfAllowance = 0.6;

    // Common practice, no source: a quarter inch between the cuts of a double notch.
    private const double BetweenCutsMm = 6.35;

    // Common practice, no source: half an inch short of the apex, so that the stitching covers the hole.
    private const double ShortOfApexMm = 12.7;

    private readonly Panel _panel;
    private readonly CutLine _cut;
    private readonly double _hand;

    internal PieceMarks(Panel panel, CutLine cut, double hand)
    {
        _panel = panel;
        _cut = cut;
        _hand = hand;
    }

    internal PieceDart[] Darts() =>
    [
        .. _cut.Edges.SelectMany(edge => edge.Edge.Darts.Select((dart, k) => Mark(dart, edge.Caps[k]))),
        .. _panel.InsideDarts.Select(Mark),
    ];

    internal PieceNotch[] Notches()
    {
        var notches = new List<PieceNotch>();
        int count = _cut.Edges.Length;
        for (int i = 0; i < count; i++)
        {
            EdgeCut edge = _cut.Edges[i];
            EdgeCut before = _cut.Edges[(i + count - 1) % count];
            EdgeCut after = _cut.Edges[(i + 1) % count];
            AddHemFold(notches, i, before, edge.Edge.Start, EdgeFold.At(before.Edge, isEnd: true).Direction, 0);
            notches.AddRange(_panel.Notches.Where(n => n.Edge == edge.Edge.Name).OrderBy(n => n.FromStartMm).Select(n => Match(n, edge)));
            foreach (Dart dart in edge.Edge.Darts)
            {
                double at = edge.Edge.SewnPositionMm(dart.Number - 1);
                notches.Add(OnLeg(edge, dart, dart.StartLeg, at));
                notches.Add(OnLeg(edge, dart, dart.EndLeg, at));
            }

            if (edge.IsOnFold)
            {
                notches.Add(AtFoldEnd(edge, edge.First.At(edge.First.From), edge.Edge.Start, 0));
                notches.Add(AtFoldEnd(edge, edge.Last.At(edge.Last.To), edge.Edge.End, edge.Edge.SewnLengthMm()));
            }

            AddHemFold(notches, i, after, edge.Edge.End, EdgeFold.At(after.Edge, isEnd: false).Direction.Reversed, edge.Edge.SewnLengthMm());
        }

        return [.. notches];
    }

    private static PieceDart Mark(Dart dart, CurvePath cutCap)
    {
        Point2D middle = dart.MiddleOfIntake;
        double hole = Math.Min(ShortOfApexMm, dart.LengthMm / 2);
        double stitched = dart.IsTuck ? dart.Shape.TuckMm / dart.LegLengthMm(Toward.Start) : 1;
        Point2D[] holes = dart.IsTuck ? [] : [dart.Apex + dart.Apex.DirectionTo(middle).TimesMm(hole)];
        Point2D tip = cutCap.SegmentsRaw[(cutCap.SegmentsRaw.Length / 2) - 1].End;
        LineSegment[] legs =
        [
            new(dart.StartLeg, dart.StartLeg + ((dart.Apex - dart.StartLeg) * stitched)),
            new(dart.EndLeg, dart.EndLeg + ((dart.Apex - dart.EndLeg) * stitched)),
        ];
        return new PieceDart(dart.Name, legs, new LineSegment(dart.Apex, tip), holes, dart.Cap, cutCap, dart.PressArrow);
    }

    private static PieceDart Mark(InsideDart dart)
    {
        double length = dart.FirstApex.DistanceMm(dart.SecondApex);
        Vector2D hole = dart.FirstApex.DirectionTo(dart.SecondApex).TimesMm(Math.Min(ShortOfApexMm, length / 4));
        LineSegment[] legs =
        [
            new(dart.Right, dart.FirstApex), new(dart.Left, dart.FirstApex),
            new(dart.Right, dart.SecondApex), new(dart.Left, dart.SecondApex),
        ];
        return new PieceDart(null, legs, new LineSegment(dart.FirstApex, dart.SecondApex), [dart.FirstApex + hole, dart.SecondApex - hole], null, null, null);
    }

    private PieceNotch Match(Notch notch, EdgeCut edge)
    {
        double sewn = edge.Edge.SewnLengthMm();
        var cuts = new LineSegment[notch.Count];
        for (int i = 0; i < cuts.Length; i++)
        {
            double at = notch.FromStartMm + ((i - ((cuts.Length - 1) / 2.0)) * BetweenCutsMm);
            cuts[i] = CutAt(edge, Math.Max(0, Math.Min(sewn, at)));
        }

        return new PieceNotch(NotchKind.Match, notch.Edge, notch.FromStartMm, notch.Position, cuts);
    }

    // From the cut line square to the seam line, towards its point at a distance along the sewn edge.
    private LineSegment CutAt(EdgeCut edge, double sewnMm)
    {
        CurvePath stretch = edge.Edge.Stretches[edge.Edge.LocateSewn(sewnMm, out double within)];
        int index = stretch.Locate(Math.Min(within, stretch.LengthMm), out double t);
        Point2D onSeam = stretch.SegmentsRaw[index].PointAtRaw(t);
        Direction along = stretch.SegmentsRaw[index].DirectionAtRaw(t);
        return Inward(OnCutLine(onSeam, _hand > 0 ? along.TurnedRight : along.TurnedLeft), onSeam, edge.AllowanceMm);
    }

    private PieceNotch OnLeg(EdgeCut edge, Dart dart, Point2D leg, double sewnMm)
        => new(NotchKind.DartLeg, edge.Edge.Name, sewnMm, leg, [Inward(OnCutLine(leg, dart.Apex.DirectionTo(leg)), leg, edge.AllowanceMm)]);

    private static PieceNotch AtFoldEnd(EdgeCut edge, in Point2D onCut, in Point2D onSeam, double sewnMm)
        => new(NotchKind.Fold, edge.Edge.Name, sewnMm, onSeam, [Inward(onCut, onSeam, onCut.DistanceMm(onSeam))]);

    // Common practice, no source: a single cut on the edge beside a hem, where the line of its fold, drawn on straight, meets the cut line of that edge. Where
    // the corner points into the piece, or the point of the allowance is cut off before the line meets it, there is no such place.
    private void AddHemFold(List<PieceNotch> notches, int index, EdgeCut hem, in Point2D corner, Direction outward, double sewnMm)
    {
        EdgeCut edge = _cut.Edges[index];
        bool isFolded = hem.Edge.Role == EdgeRole.Hem && hem.AllowanceMm > 0;
        if (!isFolded || edge.Edge.Role == EdgeRole.Hem || edge.IsOnFold)
        {
            return;
        }

        Direction along = sewnMm == 0 ? edge.Edge.Stretches[0].StartDirection : edge.Edge.Stretches[edge.Edge.Stretches.Count - 1].EndDirection;
        if ((_hand > 0 ? along.TurnedRight : along.TurnedLeft).Dot(outward.TimesMm(1)) > 0 && TryOnLine(_cut.Lines[index], corner, outward, out Point2D onCut))
        {
            notches.Add(new PieceNotch(NotchKind.Hem, edge.Edge.Name, sewnMm, corner, [Inward(onCut, corner, edge.AllowanceMm)]));
        }
    }

    private static LineSegment Inward(in Point2D onCut, in Point2D onSeam, double allowanceMm)
    {
        double away = onCut.DistanceMm(onSeam);
        double depth = Math.Min(NotchMm, ShareOfAllowance * Math.Min(allowanceMm, away));
        return away <= CheckList.ToleranceMm ? new LineSegment(onCut, onCut) : new LineSegment(onCut, onCut + ((onSeam - onCut) * (depth / away)));
    }

    private Point2D OnCutLine(in Point2D onSeam, in Direction outward) => TryOnLine(_cut.Outline, onSeam, outward, out Point2D point) ? point : onSeam;

    // The first point of a line that is met from the seam line outwards.
    private static bool TryOnLine(CurvePath line, in Point2D onSeam, in Direction outward, out Point2D point)
    {
        const double onLineMm = 1e-6;
        double nearest = double.PositiveInfinity;
        point = default;
        foreach (PathIntersection hit in line.IntersectionsWith(Line.From(onSeam, outward)).Points)
        {
            if (hit.SecondParameter > -onLineMm && hit.SecondParameter < nearest)
            {
                nearest = hit.SecondParameter;
                point = hit.Point;
            }
        }

        return nearest < double.PositiveInfinity;
    }
}
