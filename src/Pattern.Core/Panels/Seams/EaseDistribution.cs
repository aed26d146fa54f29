using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>Where the ease of a longer edge sits along the shorter edge that it is sewn to.</summary>
/// <remarks>Says for every distance along one edge which distance along the other it meets. The ends meet exactly, and the one never
/// goes back while the other goes on.</remarks>
/// <example><code>
/// // Ease a 130 mm back shoulder onto a 120 mm front one, all of it between 30 mm and 90 mm from the neck.
/// Length front = Length.FromMillimeters(120);
/// Length back = Length.FromMillimeters(130);
/// EaseDistribution ease = EaseDistribution.Between(front, back, Length.FromMillimeters(30), Length.FromMillimeters(90));
/// Length onBack = ease.OnLonger(Length.FromMillimeters(60)); // 65 mm
/// </code></example>
public sealed class EaseDistribution
{
    private readonly double _shorterMm;
    private readonly double _longerMm;
    private readonly double _fromMm;
    private readonly double _toMm;

    internal EaseDistribution(double shorterMm, double longerMm, double fromMm, double toMm)
    {
        _shorterMm = shorterMm;
        _longerMm = longerMm;
        _fromMm = fromMm;
        _toMm = toMm;
    }

    /// <summary>How long the shorter edge is.</summary>
    public Length ShorterLength => Length.FromMillimeters(_shorterMm);

    /// <summary>How long the longer edge is.</summary>
    public Length LongerLength => Length.FromMillimeters(_longerMm);

    /// <summary>How much longer the longer edge is.</summary>
    public Length Ease => Length.FromMillimeters(EaseMm);

    /// <summary>Where the ease begins, along the shorter edge from its start. Before it the edges meet without ease.</summary>
    public Length From => Length.FromMillimeters(_fromMm);

    /// <summary>Where the ease ends, along the shorter edge from its start. Beyond it the edges meet without ease.</summary>
    public Length To => Length.FromMillimeters(_toMm);

    internal double EaseMm => _longerMm - _shorterMm;

    /// <summary>The ease sits evenly along the whole edge.</summary>
    /// <param name="shorter">The length of the shorter edge, more than zero.</param>
    /// <param name="longer">The length of the longer edge, not less than that.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is not what it has to be.</exception>
    [Pure]
    public static EaseDistribution Evenly(Length shorter, Length longer) => Between(shorter, longer, Length.Zero, shorter);

    /// <summary>The ease sits evenly between two places; before and beyond them the edges meet without ease.</summary>
    /// <param name="shorter">The length of the shorter edge, more than zero.</param>
    /// <param name="longer">The length of the longer edge, not less than that.</param>
    /// <param name="from">Where the ease begins, along the shorter edge from its start.</param>
    /// <param name="to">Where it ends, beyond that, at most the length of the shorter edge.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is not what it has to be.</exception>
    [Pure]
    public static EaseDistribution Between(Length shorter, Length longer, Length from, Length to)
    {
        double shorterMm = Guard.Millimetres(shorter, LeastMm, MostMm, nameof(shorter));
        double fromMm = Guard.Millimetres(from, 0, shorterMm - LeastMm, nameof(from));
        return new EaseDistribution(
            shorterMm,
            Guard.Millimetres(longer, shorterMm, MostMm, nameof(longer)),
            fromMm,
            Guard.Millimetres(to, fromMm + LeastMm, shorterMm, nameof(to)));
    }

    /// <summary>The distance along the longer edge that meets a distance along the shorter one.</summary>
    /// <param name="onShorter">From the start of the shorter edge; from zero to its length, both included.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is off the edge.</exception>
    [Pure]
    public Length OnLonger(Length onShorter) => Length.FromMillimeters(OnLongerMm(Guard.Millimetres(onShorter, 0, _shorterMm, nameof(onShorter))));

    /// <summary>The distance along the shorter edge that meets a distance along the longer one.</summary>
    /// <param name="onLonger">From the start of the longer edge; from zero to its length, both included.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is off the edge.</exception>
    [Pure]
    public Length OnShorter(Length onLonger) => Length.FromMillimeters(OnShorterMm(Guard.Millimetres(onLonger, 0, _longerMm, nameof(onLonger))));

    // Counted from the nearer end, so that both ends meet exactly.
    internal double OnLongerMm(double d) => d <= _fromMm
        ? d
        : d >= _toMm
            ? _longerMm - (_shorterMm - d)
            : _fromMm + ((d - _fromMm) * (_toMm - _fromMm + EaseMm) / (_toMm - _fromMm));

    internal double OnShorterMm(double d) => d <= _fromMm
        ? d
        : d >= _toMm + EaseMm
            ? _shorterMm - (_longerMm - d)
            : _fromMm + ((d - _fromMm) * (_toMm - _fromMm) / (_toMm - _fromMm + EaseMm));

    private const double LeastMm = 1e-6;

    private const double MostMm = 1e6;

    /// <summary>The ease, and where it lies.</summary>
    public override string ToString()
        => FormattableString.Invariant($"{EaseMm:0.##} mm of ease from {_fromMm:0.##} to {_toMm:0.##} mm");
}
