using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>What an edge across darts is trued to.</summary>
/// <param name="Panel">For messages.</param>
/// <param name="Start">Where the edge begins, on the centre line.</param>
/// <param name="Leaving">The direction of the edge there: square to the centre line, out to the side.</param>
/// <param name="SideFoot">Where the straight side seam below ends and its hip curve up to the edge begins.</param>
/// <param name="FirstGuess">Where the edge ended on the hand draft, on the side seam.</param>
/// <param name="ClosedLengthMm">How long the edge has to be with its darts closed.</param>
/// <param name="SideLengthMm">How long the hip curve of the side seam has to be.</param>
internal readonly record struct WaistTarget(
    string Panel, Point2D Start, Direction Leaving, Point2D SideFoot, Point2D FirstGuess, double ClosedLengthMm, double SideLengthMm);

/// <summary>Trues an edge across any number of darts, exactly.</summary>
/// <remarks>
/// <para>The sewn edge is drawn first, darts closed: one cubic from the centre to the side, the fairest between its two end directions, so it has
/// no corner at a dart by construction. It is split at the darts, whose middle lines are upright once open, and everything
/// beyond a dart is turned open about the apex, the last dart first. That gives the open edge, the apexes and the side point.</para>
/// <para>Three unknowns, the closed side point and the direction there, meet three conditions: the closed edge has its length, the side
/// seam has its length, and the open edge is square to the side seam. Moving the side point along the edge changes the first by as much, moving it
/// square to the edge the second, turning the end the third; moving along also leans the side seam, by two parts in its height. That is a good first Jacobian, and
/// Broyden's method needs about six drawings to reach a nanometre.</para>
/// </remarks>
internal sealed class WaistTruing
{
    private const double ToleranceMm = 1e-9;
    private const double ToleranceRad = 1e-12;
    private const int MostDrawings = 200;

    // A step may make things worse on the way round a bend, but not by much.
    private const double WorseAtMost = 4;

    private readonly WaistTarget _target;
    private readonly DartWedge[] _wedges;

    // +1 where the side lies to the right of the centre when one stands at the hem and looks up; -1 where it lies to the left.
    private readonly double _hand;
    private readonly Direction[] _open;
    private readonly int _mostDrawings;

    // The last drawing: where the darts split the closed edge, their apexes before any dart is opened.
    private readonly double[] _splits;
    private readonly Point2D[] _apexes;
    private CubicBezier _closed;
    private CubicBezier _side;
    private double _closedLengthMm;

    private WaistTruing(in WaistTarget target, DartWedge[] wedges, int mostDrawings)
    {
        _mostDrawings = mostDrawings;
        _target = target;
        _wedges = wedges;
        _hand = target.Leaving.X >= 0 ? 1 : -1;
        _open = new Direction[wedges.Length];
        _splits = new double[wedges.Length];
        _apexes = new Point2D[wedges.Length];
        double all = 0;
        for (int i = 0; i < wedges.Length; i++)
        {
            _open[i] = Direction.FromRadians(-_hand * wedges[i].AngleRad);
            all += wedges[i].AngleRad;
        }

        AllAnglesRad = all;
    }

    /// <summary>The edge with its darts closed, one curve.</summary>
    internal CubicBezier Closed => _closed;

    /// <summary>The hip curve of the side seam, from its foot up to the trued edge.</summary>
    internal CubicBezier Side => _side;

    /// <summary>How often the edge was drawn until it was right.</summary>
    internal int Drawings { get; private set; }

    private double AllAnglesRad { get; }

    /// <summary>Finds the edge that meets the target.</summary>
    /// <exception cref="ConstructionException">No such edge: the darts leave no room, or no curve meets the lengths.</exception>
    internal static WaistTruing Solve(in WaistTarget target, DartWedge[] wedges, int mostDrawings = MostDrawings)
    {
        var truing = new WaistTruing(target, wedges, mostDrawings);
        truing.Solve();
        return truing;
    }

    /// <summary>The trued edge, opened again at its darts.</summary>
    internal PanelEdge ToEdge(EdgeName name, EdgeRole role)
    {
        int count = _wedges.Length;
        var stretches = new CurvePath[count + 1];
        var darts = new DartShape[count];
        Transform2D opening = Transform2D.Identity;
        double from = 0;
        for (int i = 0; i <= count; i++)
        {
            double to = i < count ? _splits[i] : 1;
            stretches[i] = CurvePath.FromCubic(_closed.SubCurveRaw(from, to).Transformed(opening));
            from = to;
            if (i == count)
            {
                break;
            }

            Point2D onEdge = _closed.PointAtRaw(to);
            Transform2D beyond = Transform2D.RotationRaw(_apexes[i], _open[i]).Then(opening);
            darts[i] = new DartShape(opening.Apply(_apexes[i]), opening.Apply(onEdge), beyond.Apply(onEdge), Toward.Centre);
            opening = beyond;
        }

        return new PanelEdge(name, role, stretches, darts);
    }

    private void Solve()
    {
        // In the closed frame the hand draft's side point turns about apexes that are not known yet; a point at the right
        // distance and height is near enough.
        Vector2D reach = _target.FirstGuess - _target.Start;
        double across = Math.Max(_target.ClosedLengthMm * 0.98, 1);
        double rise = reach.YMm + (across * Math.Tan(Math.Min(AllAnglesRad, 1) / 2));
        var x = new Vector3(_target.Start.XMm + (_hand * across), _target.Start.YMm + rise, 0);
        CubicBezier firstSide = HipCurves.Vertical(_target.SideFoot, _target.FirstGuess);
        x = new Vector3(x.A, x.B, SquareTo(firstSide).AngleRad + (_hand * AllAnglesRad));

        // Unknowns along the edge, square to it and around: the frame in which the Jacobian is known but for small terms.
        double c = Math.Cos(x.C);
        double s = Math.Sin(x.C);
        Vector3 residual = Draw(x);
        RefuseMissed(residual);
        var start = Matrix3.InverseOfCorner(_hand * 2 * Scale / (_target.FirstGuess.YMm - _target.SideFoot.YMm));
        Matrix3 inverse = start;
        while (!IsSolved(residual))
        {
            Vector3 move = -(inverse * residual);
            Vector3 next = Moved(x, move, c, s);
            Vector3 nextResidual = Draw(next);
            if (!(nextResidual.Norm <= WorseAtMost * residual.Norm))
            {
                // The secants have led astray: a shorter step along the first estimate, and the secants anew.
                move = 0.25 * -(start * residual);
                next = Moved(x, move, c, s);
                nextResidual = Draw(next);
                inverse = start;
            }

            RefuseMissed(nextResidual);

            inverse = inverse.Broyden(move, nextResidual - residual);
            x = next;
            residual = nextResidual;
        }
    }

    private void RefuseMissed(in Vector3 residual)
    {
        if (Drawings >= _mostDrawings || !residual.IsFinite)
        {
            throw new ConstructionException(
                DiagnosticCode.WaistNotTrued, _target.Panel, Length(_target.ClosedLengthMm), Length(_target.SideLengthMm))
            {
                Step = "truing the waistline",
                Landmark = _target.Panel,
                Measured = Length(_closedLengthMm),
                Allowed = Length(_target.ClosedLengthMm),
            };
        }
    }

    private Vector3 Moved(in Vector3 x, in Vector3 move, double cosine, double sine) => new(
        x.A + (cosine * move.A) - (sine * _hand * move.B),
        x.B + (sine * move.A) + (cosine * _hand * move.B),
        x.C + (move.C / Scale));

    // Radians are weighed with the width of the edge, so that all three residuals are millimetres.
    private double Scale => _target.ClosedLengthMm;

    private bool IsSolved(in Vector3 r)
        => Math.Abs(r.A) <= ToleranceMm && Math.Abs(r.B) <= ToleranceMm && Math.Abs(r.C) <= Math.Max(ToleranceRad * Scale, ToleranceMm);

    private Vector3 Draw(in Vector3 x)
    {
        Drawings++;
        SearchWork.Step();
        var closedEnd = new Point2D(x.A, x.B);
        if (!IsApart(closedEnd, _target.Start) || !Guard.IsFinite(x.C))
        {
            return Missed;
        }

        Direction arriving = Direction.FromRadians(x.C);
        _closed = CubicBezier.InOneSweep(_target.Start, _target.Leaving, closedEnd, arriving);
        double lengthMm = _closed.LengthMm();
        _closedLengthMm = lengthMm;

        // Opens what lies beyond the darts seen so far. A dart's middle line is upright with the darts before it open, so its centre leg
        // meets the closed edge where a line that opening makes upright crosses it.
        Transform2D opening = Transform2D.Identity;
        for (int i = 0; i < _wedges.Length; i++)
        {
            DartWedge wedge = _wedges[i];
            double half = _hand * wedge.IntakeMm / 2;
            Transform2D closing = opening.Inverted();
            Line leg = Line.Vertical(new Point2D(wedge.MiddleXMm - half, 0)).Transformed(closing);
            double t = NextCrossing(leg, i == 0 ? 0 : _splits[i - 1]);
            if (double.IsNaN(t))
            {
                // A dart's leg misses the edge altogether.
                return Missed;
            }

            Point2D onEdge = opening.Apply(_closed.PointAtRaw(t));
            _splits[i] = t;
            _apexes[i] = closing.Apply(new Point2D(onEdge.XMm + half, onEdge.YMm - wedge.LengthMm));
            opening = Transform2D.RotationRaw(_apexes[i], _open[i]).Then(opening);
        }

        Point2D openEnd = opening.Apply(closedEnd);
        if (!IsApart(openEnd, _target.SideFoot))
        {
            return Missed;
        }

        _side = HipCurves.Vertical(_target.SideFoot, openEnd);
        Direction openArriving = Direction.FromRadians(x.C - (_hand * AllAnglesRad));
        return new Vector3(
            lengthMm - _target.ClosedLengthMm,
            _side.LengthMm() - _target.SideLengthMm,
            SquareTo(_side).TurnRadTo(openArriving) * Scale);
    }

    private static Vector3 Missed => new(double.NaN, double.NaN, double.NaN);

    private static bool IsApart(in Point2D a, in Point2D b) => a.DistanceMm(b) is > 0 and <= double.MaxValue;

    private double NextCrossing(in Line line, double after)
    {
        CurveIntersections hits = _closed.IntersectionsWith(line);
        double next = double.NaN;
        for (int i = 0; i < hits.Count; i++)
        {
            double t = hits.FirstRaw(i);
            if (t >= after && !(t >= next))
            {
                next = t;
            }
        }

        return next;
    }

    /// <summary>The direction of an edge that leaves the panel at the top of a side seam, square to it.</summary>
    private Direction SquareTo(in CubicBezier side) => _hand > 0 ? side.EndDirection.TurnedRight : side.EndDirection.TurnedLeft;

    private static UnitsNet.Length Length(double millimetres) => UnitsNet.Length.FromMillimeters(millimetres);
}
