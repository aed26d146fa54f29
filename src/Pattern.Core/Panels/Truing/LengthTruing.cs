using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>How the edges of a seam are to be made equally long, but for the ease asked for. What is not said keeps the default that its property documents.</summary>
public sealed record LengthTruing
{
    private readonly int[]? _stretches;

    /// <summary>Every stretch, held together at the start of the seam, both edges sharing the difference.</summary>
    public static LengthTruing Default { get; } = new();

    /// <summary>Which edge gives way.</summary>
    /// <value>Default <see cref="SeamSide.Both"/>.</value>
    public SeamSide Gives
    {
        get;
        init => field = (SeamSide)Guard.Choice((int)value, 3, nameof(Gives));
    }

    /// <summary>How much of the difference the first edge takes where both give way.</summary>
    /// <value>Default one half.</value>
    public Ratio ShareOfFirst
    {
        get => Ratio.FromDecimalFractions(ShareOfFirstRaw);
        init => ShareOfFirstRaw = Guard.Share(value, nameof(ShareOfFirst));
    }

    /// <summary>The mark at which the edges are held together: an end of the seam, or a notch counted along the first edge. Marks on either side of it move
    /// along their edge: notches slide, ends go on straight or are cut back.</summary>
    /// <value>Default the start of the seam.</value>
    public SeamMark Held { get; init; }

    /// <summary>The stretches to be made equal, counted from 1 in the order of the first edge; null for all. The others keep their lengths.</summary>
    /// <value>Default null.</value>
    public IReadOnlyList<int>? Stretches
    {
        get => _stretches;
        init => _stretches = value is null ? null : [.. value.Select(n => Guard.InRange(n, 1, 99, nameof(Stretches)))];
    }

    internal double ShareOfFirstRaw { get; private init; } = 0.5;

    internal double FirstTakes => Gives switch { SeamSide.First => 1, SeamSide.Second => 0, _ => ShareOfFirstRaw };

    /// <summary>Whether both ask for the same.</summary>
    public bool Equals(LengthTruing? other)
        => other is not null && Gives == other.Gives && ShareOfFirstRaw == other.ShareOfFirstRaw && Held == other.Held
            && (_stretches is null ? other._stretches is null : other._stretches is not null && _stretches.SequenceEqual(other._stretches));

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked(((((int)Gives * 397) ^ ShareOfFirstRaw.GetHashCode()) * 397) ^ Held.GetHashCode());

    /// <summary>What is asked for in one line, whatever the culture.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Gives} gives, first takes {FirstTakes * 100:0.##} %, held at {Held}, stretches {(_stretches is null ? "all" : string.Join(" ", _stretches))}");

    internal bool Includes(int stretch) => _stretches is null || _stretches.Contains(stretch + 1);
}
