using System;
using UnitsNet;

namespace Pattern.Core.Layout;

/// <summary>How far the search for a lay has come.</summary>
public readonly struct LayProgress : IEquatable<LayProgress>
{
    private readonly double _lengthMm;
    private readonly double _boundMm;
    private readonly double _efficiency;

    internal LayProgress(double lengthMm, double boundMm, double efficiency, int moves)
    {
        _lengthMm = lengthMm;
        _boundMm = boundMm;
        _efficiency = efficiency;
        Moves = moves;
    }

    /// <summary>The shortest length of cloth so far.</summary>
    public Length Length => Length.FromMillimeters(_lengthMm);

    /// <summary>No lay is shorter than this.</summary>
    public Length LowerBound => Length.FromMillimeters(_boundMm);

    /// <summary>The part of the cloth that the pieces cover.</summary>
    public Ratio Efficiency => Ratio.FromDecimalFractions(_efficiency);

    /// <summary>How often a piece was moved so far.</summary>
    public int Moves { get; }

    /// <inheritdoc/>
    public bool Equals(LayProgress other)
        => _lengthMm.Equals(other._lengthMm) && _boundMm.Equals(other._boundMm) && _efficiency.Equals(other._efficiency) && Moves == other.Moves;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is LayProgress other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((_lengthMm.GetHashCode() * 397) ^ Moves);

    /// <summary>As in "1234.5 mm of cloth, 83.1 % covered, after 1200 moves".</summary>
    public override string ToString() => FormattableString.Invariant($"{_lengthMm:0.0} mm of cloth, {100 * _efficiency:0.0} % covered, after {Moves} moves");

    /// <summary>Whether two are equal.</summary>
    public static bool operator ==(LayProgress left, LayProgress right) => left.Equals(right);

    /// <summary>Whether two differ.</summary>
    public static bool operator !=(LayProgress left, LayProgress right) => !left.Equals(right);
}
