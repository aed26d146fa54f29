using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <content>Length along the curve, and back from length to parameter.</content>
public readonly partial struct CubicBezier
{
    /// <summary>The arc length of the whole curve, to within <see cref="GeometryTolerance.Default"/>.</summary>
    public Length Length => Length.FromMillimeters(LengthMm());

    /// <summary>The arc length between two parameters; negative where the first is the larger.</summary>
    /// <param name="from">From 0 to 1.</param>
    /// <param name="to">From 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A parameter is outside 0 to 1.</exception>
    [Pure]
    internal Length LengthBetween(double from, double to) => LengthBetween(from, to, GeometryTolerance.Default);

    /// <summary>The arc length between two parameters; negative where the first is the larger.</summary>
    /// <param name="from">From 0 to 1.</param>
    /// <param name="to">From 0 to 1.</param>
    /// <param name="tolerance">The largest error, for curves up to a metre; see <see cref="GeometryTolerance.Default"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A parameter is outside 0 to 1, or the tolerance is not greater than zero.</exception>
    [Pure]
    internal Length LengthBetween(double from, double to, Length tolerance)
    {
        CheckParameter(from);
        CheckParameter(to);
        return Length.FromMillimeters(LengthMm(from, to, GeometryTolerance.CheckedMm(tolerance, nameof(tolerance))));
    }

    /// <summary>The parameter at a distance along the curve from its start.</summary>
    /// <param name="distance">Along the curve.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative or beyond the end.</exception>
    [Pure]
    internal double ParameterAtLength(Length distance) => ParameterAtLength(distance, BeyondEnds.Refuse);

    /// <summary>The parameter at a distance along the curve from its start.</summary>
    /// <param name="distance">Along the curve.</param>
    /// <param name="beyond">What happens to a negative distance or one beyond the end.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative or beyond the end, and that is refused.</exception>
    [Pure]
    internal double ParameterAtLength(Length distance, BeyondEnds beyond)
        => ParameterAtLength(distance, beyond, GeometryTolerance.Default);

    /// <summary>The parameter at a distance along the curve from its start.</summary>
    /// <param name="distance">Along the curve.</param>
    /// <param name="beyond">What happens to a negative distance or one beyond the end.</param>
    /// <param name="tolerance">The largest error in length, for curves up to a metre; see <see cref="GeometryTolerance.Default"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative or beyond the end, and that is refused; or the tolerance is not
    /// greater than zero.</exception>
    [Pure]
    internal double ParameterAtLength(Length distance, BeyondEnds beyond, Length tolerance)
    {
        double distanceMm = Guard.Millimetres(distance, nameof(distance));
        double t = ParameterAtLengthMm(distanceMm, GeometryTolerance.CheckedMm(tolerance, nameof(tolerance)));
        if (beyond == BeyondEnds.Refuse && (distanceMm < 0 || t == 1))
        {
            double lengthMm = LengthMm();
            double slackMm = GeometryTolerance.SlackMm(lengthMm);
            _ = Guard.Millimetres(distance, -slackMm, lengthMm + slackMm, nameof(distance));
        }

        return t;
    }

    /// <summary>The point at a distance along the curve from its start.</summary>
    /// <param name="distance">Along the curve.</param>
    /// <param name="beyond">What happens to a negative distance or one beyond the end.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative or beyond the end, and that is refused.</exception>
    [Pure]
    public Point2D PointAtLength(Length distance, BeyondEnds beyond = BeyondEnds.Refuse) => PointAtRaw(ParameterAtLength(distance, beyond));

    internal double LengthMm() => new ArcLength(this, GeometryTolerance.DefaultMm).BetweenMm(0, 1);

    internal double LengthMm(double toleranceMm) => new ArcLength(this, toleranceMm).BetweenMm(0, 1);

    /// <summary>Length between two parameters; negative where the first is the larger.</summary>
    internal double LengthMm(double t0, double t1) => LengthMm(t0, t1, GeometryTolerance.DefaultMm);

    internal double LengthMm(double t0, double t1, double toleranceMm)
    {
        var measure = new ArcLength(this, toleranceMm);
        return t0 <= t1 ? measure.BetweenMm(t0, t1) : -measure.BetweenMm(t1, t0);
    }

    /// <summary>The parameter at a length from the start; 0 below zero and 1 beyond the end.</summary>
    internal double ParameterAtLengthMm(double lengthMm) => new ArcLength(this, GeometryTolerance.DefaultMm).ParameterAtMm(lengthMm);

    internal double ParameterAtLengthMm(double lengthMm, double toleranceMm) => new ArcLength(this, toleranceMm).ParameterAtMm(lengthMm);
}
