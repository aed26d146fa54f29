using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>The waistline of one quarter, trued: one sweep from the centre across the darts to the side, and the hip curve up to it.</summary>
/// <remarks>Three unknowns, the closed side point and the direction there, meet three conditions: the closed edge has its length, the side seam has its length, and
/// the open edge is square to the side seam. The curve is the fairest between its two end directions.</remarks>
internal sealed class SkirtWaist
{
    private const double LeastReachMm = 1;

    /// <summary>The engine's construction: the same for all quarters of all bodies.</summary>
    private static readonly Construction<SkirtWaist, SkirtWaist> Sweep = Construction
        .Of<SkirtWaist, SkirtWaist>("waistline in one sweep", (waist, unknowns) => waist.TryDraw(unknowns) ? waist : null!)
        .WithUnknown(new("side point across", false, w => w._firstEnd.XMm, w => w._firstEnd.XMm - w._roomMm, w => w._firstEnd.XMm + w._roomMm))
        .WithUnknown(new("side point up", false, w => w._firstEnd.YMm, w => w._firstEnd.YMm - w._roomMm, w => w._firstEnd.YMm + w._roomMm))
        .WithUnknown(new("direction at the side", true, w => w._firstTurn, w => w._firstTurn - MostTurn, w => w._firstTurn + MostTurn))
        .MustBe(new("closed waist", false, (w, _) => w._closedLengthMm - w._target.ClosedLengthMm))
        .MustBe(new("side seam", false, (w, _) => w.Side.LengthMm() - w._target.SideLengthMm))
        .MustBe(new("corner at the side", true, (w, _) => w._offSquareRad * LeastChange.MmPerRad))
        .BeginningWithSlopes((w, slopes) => w.GuessSlopes(slopes));

    // A right angle either way.
    private const double MostTurn = Math.PI / 2 * LeastChange.MmPerRad;

    private readonly WaistTarget _target;
    private readonly DartSweep _sweep;
    private readonly double _hand;
    private readonly Point2D _firstEnd;
    private readonly double _firstTurn;
    private readonly double _roomMm;
    private double _closedLengthMm;
    private double _offSquareRad;

    private SkirtWaist(in WaistTarget target, DartWedge[] wedges)
    {
        _target = target;
        _hand = target.Leaving.X >= 0 ? 1 : -1;
        _sweep = new DartSweep(wedges, _hand);

        // In the closed frame the hand draft's side point turns about apexes that are not known yet; a point at the right
        // distance and height is near enough.
        double across = Math.Max(target.ClosedLengthMm * 0.98, LeastReachMm);
        double rise = target.FirstGuess.YMm - target.Start.YMm + (across * Math.Tan(Math.Min(_sweep.AllAnglesRad, 1) / 2));
        _firstEnd = target.IsNear ? target.FirstGuess : new Point2D(target.Start.XMm + (_hand * across), target.Start.YMm + rise);
        CubicBezier firstSide = target.SideTo(target.FirstGuess);
        _firstTurn = (SquareTo(firstSide).AngleRad + (_hand * _sweep.AllAnglesRad)) * LeastChange.MmPerRad;
        _roomMm = across;
    }

    /// <summary>The hip curve of the side seam, from its foot up to the trued edge.</summary>
    internal CubicBezier Side { get; private set; }

    /// <summary>How often the edge was drawn until it was right.</summary>
    internal int Drawings { get; private set; }

    /// <summary>Finds the waistline that meets the target.</summary>
    /// <exception cref="ConstructionException">No such line: the darts leave no room, or no curve meets the lengths.</exception>
    internal static SkirtWaist Solve(in WaistTarget target, DartWedge[] wedges, int mostDrawings = LeastChange.UsualMostDrawings)
    {
        var waist = new SkirtWaist(target, wedges);
        LeastChangeEnd end = Sweep.Draw(waist, mostDrawings, out int drawings);
        waist.Drawings = drawings;
        return end is LeastChangeEnd.Least or LeastChangeEnd.Met or LeastChangeEnd.Unchanged
            ? waist
            : throw new ConstructionException(
                DiagnosticCode.WaistNotTrued, target.Panel, Length.FromMillimeters(target.ClosedLengthMm), Length.FromMillimeters(target.SideLengthMm))
            {
                Step = "truing the waistline",
                Landmark = target.Panel,
                Measured = Length.FromMillimeters(waist._closedLengthMm),
                Allowed = Length.FromMillimeters(target.ClosedLengthMm),
            };
    }

    /// <summary>The trued edge, open at its darts.</summary>
    internal PanelEdge ToEdge(EdgeName name, EdgeRole role) => _sweep.ToEdge(name, role);

    private bool TryDraw(in ConstructionUnknowns unknowns)
    {
        SearchWork.Step();
        var end = new Point2D(unknowns.Mm(1), unknowns.Mm(2));
        double turnRad = unknowns.Rad(3);
        if (!IsApart(end, _target.Start) || !Guard.IsFinite(turnRad))
        {
            return false;
        }

        var closed = CubicBezier.InOneSweep(_target.Start, _target.Leaving, end, Direction.FromRadians(turnRad));
        _closedLengthMm = closed.LengthMm();
        if (!_sweep.TryDraw(closed) || !IsApart(_sweep.OpenEnd, _target.SideFoot))
        {
            return false;
        }

        Side = _target.SideTo(_sweep.OpenEnd);
        _offSquareRad = SquareTo(Side).TurnRadTo(Direction.FromRadians(turnRad - (_hand * _sweep.AllAnglesRad)));
        return true;
    }

    // Moving the side point along the edge changes its length by as much, moving it square to the edge the side seam's, turning the end the corner; moving along also leans the
    // side seam, by two parts in its height.
    private void GuessSlopes(double[] slopes)
    {
        double c = Math.Cos(_firstTurn / LeastChange.MmPerRad);
        double s = Math.Sin(_firstTurn / LeastChange.MmPerRad);
        double lean = _hand * 2 * LeastChange.MmPerRad / (_target.FirstGuess.YMm - _target.SideFoot.YMm);
        (slopes[0], slopes[1], slopes[2]) = (c, s, 0);
        (slopes[3], slopes[4], slopes[5]) = (-_hand * s, _hand * c, 0);
        (slopes[6], slopes[7], slopes[8]) = (lean * c, lean * s, 1);
    }

    /// <summary>The direction of an edge that leaves the panel at the top of a side seam, square to it.</summary>
    private Direction SquareTo(in CubicBezier side) => _hand > 0 ? side.EndDirection.TurnedRight : side.EndDirection.TurnedLeft;

    private static bool IsApart(in Point2D a, in Point2D b) => a.DistanceMm(b) is > 0 and <= double.MaxValue;
}
