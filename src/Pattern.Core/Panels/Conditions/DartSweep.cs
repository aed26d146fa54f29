using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>An edge drawn in one sweep across its darts: drawn closed as one curve, split at the darts, and opened.</summary>
/// <remarks>So it has no corner at a dart by construction. The darts' middle lines are upright once open; everything beyond a dart is turned open about its apex,
/// the last dart first. One object serves any number of drawings of the same darts, as truing needs them.</remarks>
internal sealed class DartSweep
{
    private readonly DartWedge[] _wedges;

    // +1 where the edge runs to the right, -1 where it runs to the left.
    private readonly double _hand;
    private readonly Direction[] _open;
    private readonly double[] _splits;
    private readonly Point2D[] _apexes;
    private CubicBezier _closed;

    internal DartSweep(DartWedge[] wedges, double hand)
    {
        _wedges = wedges;
        _hand = hand;
        int count = wedges.Length;
        _open = count == 0 ? [] : new Direction[count];
        _splits = count == 0 ? [] : new double[count];
        _apexes = count == 0 ? [] : new Point2D[count];
        for (int i = 0; i < count; i++)
        {
            _open[i] = Direction.FromRadians(-hand * wedges[i].AngleRad);
            AllAnglesRad += wedges[i].AngleRad;
        }
    }

    /// <summary>How far the end of the edge turns when all darts open.</summary>
    internal double AllAnglesRad { get; }

    /// <summary>The edge with its darts closed, as drawn last.</summary>
    internal ref readonly CubicBezier Closed => ref _closed;

    /// <summary>Where the edge ends with its darts open.</summary>
    internal Point2D OpenEnd { get; private set; }

    /// <summary>Draws the edge from its closed curve; false where a dart's leg misses it.</summary>
    internal bool TryDraw(in CubicBezier closed)
    {
        _closed = closed;
        Transform2D opening = Transform2D.Identity;
        for (int i = 0; i < _wedges.Length; i++)
        {
            // A dart's middle line is upright with the darts before it open, so its first leg meets the closed edge where a line that opening makes upright
            // crosses it.
            DartWedge wedge = _wedges[i];
            double half = _hand * wedge.IntakeMm / 2;
            Transform2D closing = opening.Inverted();
            Line leg = Line.Vertical(new Point2D(wedge.MiddleXMm - half, 0)).Transformed(closing);
            double t = NextCrossing(leg, i == 0 ? 0 : _splits[i - 1]);
            if (double.IsNaN(t))
            {
                return false;
            }

            Point2D onEdge = opening.Apply(_closed.PointAtRaw(t));
            _splits[i] = t;
            _apexes[i] = closing.Apply(new Point2D(onEdge.XMm + half, onEdge.YMm - wedge.LengthMm));
            opening = Transform2D.RotationRaw(_apexes[i], _open[i]).Then(opening);
        }

        OpenEnd = opening.Apply(_closed.End);
        return Guard.IsFinite(OpenEnd.XMm) && Guard.IsFinite(OpenEnd.YMm);
    }

    /// <summary>The edge as drawn last, open at its darts.</summary>
    internal PanelEdge ToEdge(EdgeName name, EdgeRole role)
    {
        int count = _wedges.Length;
        var stretches = new CurvePath[count + 1];
        var darts = count == 0 ? [] : new DartShape[count];
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
            darts[i] = new DartShape(opening.Apply(_apexes[i]), opening.Apply(onEdge), beyond.Apply(onEdge), Toward.Start);
            opening = beyond;
        }

        return new PanelEdge(name, role, stretches, darts);
    }

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
}
