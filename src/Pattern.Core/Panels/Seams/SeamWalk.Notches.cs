using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <content>Which places of the two edges meet, and where notches would help the maker.</content>
public sealed partial class SeamWalk
{
    /// <summary>How the ease of one stretch is distributed, as the seam asks and with the lengths found.</summary>
    /// <param name="stretch">The stretch, from 0 in the order of <see cref="Stretches"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such stretch.</exception>
    [Pure]
    public EaseDistribution Distribution(int stretch) => DistributionRaw(Guard.InRange(stretch, 0, _stretches.Length - 1, nameof(stretch)));

    /// <summary>The place on the second edge that meets a place on the first.</summary>
    /// <param name="onFirst">Along the sewn first edge from its own start, within the part that is sewn.</param>
    /// <returns>Along the sewn second edge from its own start.</returns>
    /// <exception cref="ConstructionException">The place lies off the part that is sewn.</exception>
    [Pure]
    public Length MatchOnSecond(Length onFirst)
        => Length.FromMillimeters(_second.OnEdgeMm(MatchMm(Checked(_first, onFirst, nameof(onFirst)), _firstAtMm, _secondAtMm, fromFirst: true)));

    /// <summary>The place on the first edge that meets a place on the second.</summary>
    /// <param name="onSecond">Along the sewn second edge from its own start, within the part that is sewn.</param>
    /// <returns>Along the sewn first edge from its own start.</returns>
    /// <exception cref="ConstructionException">The place lies off the part that is sewn.</exception>
    [Pure]
    public Length MatchOnFirst(Length onSecond)
        => Length.FromMillimeters(_first.OnEdgeMm(MatchMm(Checked(_second, onSecond, nameof(onSecond)), _secondAtMm, _firstAtMm, fromFirst: false)));

    /// <summary>Proposes notches at equal distances along the first edge, ends not counted.</summary>
    /// <param name="distance">From one notch to the next, 1 mm or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is less than 1 mm or not finite.</exception>
    [Pure]
    public IReadOnlyList<NotchPair> ProposeNotchesEvery(Length distance)
    {
        double stepMm = Guard.Millimetres(distance, 1, 1e6, nameof(distance));
        int count = (int)Math.Ceiling((_first.LengthMm / stepMm) - 1e-9) - 1;
        return [.. Enumerable.Range(1, Math.Max(0, count)).Select(i => PairAtFirst(i * stepMm))];
    }

    /// <summary>Proposes notches at parts of the first edge.</summary>
    /// <param name="shares">Parts of the sewn length that lie before each notch, between 0 and 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A part is not between 0 and 100 %.</exception>
    [Pure]
    public IReadOnlyList<NotchPair> ProposeNotchesAt(params Ratio[] shares)
        => [.. Guard.NotNull(shares, nameof(shares)).Select(share => PairAtFirst(_first.LengthMm * Share(share, nameof(shares))))];

    /// <summary>Proposes a notch wherever the first edge crosses a level of the draft, such as the hip line.</summary>
    /// <param name="level">Height on the sheet.</param>
    /// <returns>One pair for each crossing; none where the edge does not reach the level.</returns>
    [Pure]
    public IReadOnlyList<NotchPair> ProposeNotchesAtLevel(Length level)
    {
        double yMm = Guard.Millimetres(level, nameof(level));
        var along = new List<double>();
        double beforeMm = 0;
        foreach (CurvePath stretch in _first.Edge.StretchesRaw)
        {
            foreach (PathIntersection crossing in stretch.IntersectionsWith(Line.Horizontal(new Point2D(0, yMm))).Points)
            {
                double withinMm = stretch.LengthsMm[crossing.FirstSegment] + stretch.SegmentsRaw[crossing.FirstSegment].SubSegmentLengthMm(crossing.FirstParameter);
                along.Add(_first.AlongMm(beforeMm + withinMm));
            }

            beforeMm += stretch.LengthMm;
        }

        return PairsAt(along, onFirst: true);
    }

    /// <summary>Proposes a notch across from every dart of either edge: where its closed legs meet the seam.</summary>
    [Pure]
    public IReadOnlyList<NotchPair> ProposeNotchesAtDartLegs()
    {
        var pairs = new List<NotchPair>();
        pairs.AddRange(PairsAt(_first.Edge.Darts.Select((_, i) => _first.AlongMm(_first.Edge.SewnPositionMm(i))), onFirst: true));
        pairs.AddRange(PairsAt(_second.Edge.Darts.Select((_, i) => _second.AlongMm(_second.Edge.SewnPositionMm(i))), onFirst: false));
        return [.. pairs.OrderBy(p => p.OnFirstMm)];
    }

    /// <summary>Returns the panels with notches added where pairs were proposed.</summary>
    /// <param name="pairs">Where the notches go.</param>
    /// <param name="firstCount">How many cuts make a mark on the first panel, 1 to 3. Common practice: two for a back.</param>
    /// <param name="secondCount">How many cuts make a mark on the second panel, 1 to 3. Common practice: one for a front.</param>
    /// <returns>The first panel and the second; one panel where both edges are on it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A count is not 1 to 3.</exception>
    [Pure]
    public IReadOnlyList<Panel> WithNotches(IEnumerable<NotchPair> pairs, int firstCount = 1, int secondCount = 1)
    {
        NotchPair[] all = [.. Guard.NotNull(pairs, nameof(pairs))];
        Guard.InRange(firstCount, 1, 3, nameof(firstCount));
        Guard.InRange(secondCount, 1, 3, nameof(secondCount));
        Notch[] first = [.. all.Select(p => new Notch(_first.Edge.Name, p.FirstPosition, p.OnFirstMm, firstCount))];
        Notch[] second = [.. all.Select(p => new Notch(_second.Edge.Name, p.SecondPosition, p.OnSecondMm, secondCount))];
        return _first.Panel.Name == _second.Panel.Name
            ? [_first.Panel.WithMoreNotches([.. first, .. second])]
            : [_first.Panel.WithMoreNotches(first), _second.Panel.WithMoreNotches(second)];
    }

    internal EaseDistribution DistributionRaw(int stretch)
    {
        WalkedStretch s = _stretches[stretch];
        bool firstIsShorter = s.FirstMm <= s.SecondMm;
        double shorter = Math.Min(s.FirstMm, s.SecondMm);
        double longer = Math.Max(s.FirstMm, s.SecondMm);
        (bool onFirst, double from, double to) = EaseBase;
        double begin = (onFirst ? _firstAtMm : _secondAtMm)[stretch];
        double length = onFirst ? s.FirstMm : s.SecondMm;
        from = Math.Max(0, from - begin);
        to = Math.Min(length, to - begin);
        if (onFirst != firstIsShorter)
        {
            // Said on the longer edge: up to where the ease begins the edges run evenly, so only the end moves.
            to -= longer - shorter;
        }

        to = Math.Min(to, shorter);
        return to - from > 1e-9 * shorter ? new EaseDistribution(shorter, longer, from, to) : new EaseDistribution(shorter, longer, 0, shorter);
    }

    private static double Share(Ratio share, string parameter)
    {
        double value = share.DecimalFractions;
        return value > 0 && value < 1
            ? value
            : throw new ArgumentOutOfRangeException(parameter, MessageRegistry.Format(DiagnosticCode.QuantityOutOfRange, parameter, share, "0 %", "100 %"));
    }

    private double Checked(WalkSide side, Length onEdge, string parameter)
    {
        double onEdgeMm = Guard.Millimetres(onEdge, parameter);
        double alongMm = side.AlongMm(onEdgeMm);
        return alongMm >= -GeometryTolerance.JoinMm && alongMm <= side.LengthMm + GeometryTolerance.JoinMm
            ? Raw.Clamp(alongMm, 0, side.LengthMm)
            : throw PanelErrors.OffEdge(side.Panel.Name, side.Edge.Name, onEdgeMm, side.Edge.SewnLengthMm(), "matching places of a seam");
    }

    private double MatchMm(double alongMm, double[] own, double[] other, bool fromFirst)
    {
        int stretch = 0;
        while (stretch < _stretches.Length - 1 && alongMm > own[stretch + 1])
        {
            stretch++;
        }

        WalkedStretch s = _stretches[stretch];
        double within = alongMm - own[stretch];
        EaseDistribution distribution = DistributionRaw(stretch);
        bool fromShorter = fromFirst == (s.FirstMm <= s.SecondMm);
        return other[stretch] + (fromShorter ? distribution.OnLongerMm(within) : distribution.OnShorterMm(within));
    }

    private NotchPair PairAtFirst(double alongMm) => Pair(alongMm, MatchMm(alongMm, _firstAtMm, _secondAtMm, fromFirst: true));

    private NotchPair[] PairsAt(IEnumerable<double> along, bool onFirst)
    {
        double lengthMm = (onFirst ? _first : _second).LengthMm;
        return
        [
            .. along.Where(d => d > GeometryTolerance.JoinMm && d < lengthMm - GeometryTolerance.JoinMm).OrderBy(d => d)
                .Select(d => onFirst ? PairAtFirst(d) : Pair(MatchMm(d, _secondAtMm, _firstAtMm, fromFirst: false), d)),
        ];
    }

    private NotchPair Pair(double firstMm, double secondMm)
        => new(_first.OnEdgeMm(firstMm), _first.PointAtMm(firstMm), _second.OnEdgeMm(secondMm), _second.PointAtMm(secondMm));
}
