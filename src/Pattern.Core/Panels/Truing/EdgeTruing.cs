using System;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>How an edge is to be trued across its darts. What is not said keeps the default that its property documents.</summary>
public sealed record EdgeTruing
{
    /// <summary>One sweep with ends and end directions kept.</summary>
    public static EdgeTruing Default { get; } = new();

    /// <summary>How the line is drawn again.</summary>
    /// <value>Default <see cref="TruedLine.OneSweep"/>.</value>
    public TruedLine Line
    {
        get;
        init => field = (TruedLine)Guard.Choice((int)value, 2, nameof(Line));
    }

    /// <summary>Which way the edge leaves its start.</summary>
    /// <value>Default <see cref="EndDirection.Kept"/>.</value>
    public EndDirection Start
    {
        get;
        init => field = (EndDirection)Guard.Choice((int)value, 2, nameof(Start));
    }

    /// <summary>Which way the edge arrives at its end.</summary>
    /// <value>Default <see cref="EndDirection.Kept"/>.</value>
    public EndDirection End
    {
        get;
        init => field = (EndDirection)Guard.Choice((int)value, 2, nameof(End));
    }

    /// <summary>How long the edge has to be with its darts closed; null for as long as it comes out.</summary>
    /// <value>Default null: both ends stay where they are.</value>
    public Length? ClosedLength
    {
        get => ClosedLengthMm is { } value ? Length.FromMillimeters(value) : null;
        init => ClosedLengthMm = value is { } length ? Guard.Millimetres(length, 1, 100_000, nameof(ClosedLength)) : null;
    }

    /// <summary>Which end moves to give the edge its length.</summary>
    /// <value>Default <see cref="EdgeEnd.End"/>.</value>
    public EdgeEnd MovingEnd
    {
        get;
        init => field = (EdgeEnd)Guard.Choice((int)value, 2, nameof(MovingEnd));
    }
    = EdgeEnd.End;

    /// <summary>How that end may move.</summary>
    /// <value>Default <see cref="EndMove.AlongNeighbour"/>.</value>
    public EndMove Move
    {
        get;
        init => field = (EndMove)Guard.Choice((int)value, 2, nameof(Move));
    }

    internal double? ClosedLengthMm { get; private init; }

    /// <summary>What is asked for in one line, millimetres, whatever the culture.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Line}, start {Start}, end {End}, closed length {ClosedLengthMm?.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture) ?? "as it comes"}, {MovingEnd} moves {Move}");
}
