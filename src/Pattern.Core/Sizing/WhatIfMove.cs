using System;
using UnitsNet;

namespace Pattern.Core.Sizing;

/// <summary>How one finished dimension moves with one change. Immutable.</summary>
public sealed class WhatIfMove
{
    internal WhatIfMove(string dimension, WhatIfChange change, double? moreMm, double? lessMm)
    {
        Dimension = dimension;
        Change = change;
        MoreMm = moreMm;
        LessMm = lessMm;
    }

    /// <summary>The dimension, such as <c>back waist</c>.</summary>
    public string Dimension { get; }

    /// <summary>What was changed.</summary>
    public WhatIfChange Change { get; }

    /// <summary>How much longer it is with more of it; negative where shorter, null where the draft was refused or has no such dimension any more.</summary>
    public Length? More => ToLength(MoreMm);

    /// <summary>How much longer it is with less of it; negative where shorter, null where the draft was refused, has no such dimension any more, or there is no less.</summary>
    public Length? Less => ToLength(LessMm);

    /// <summary>The larger of both moves, without its sign; zero where neither could be drafted.</summary>
    public Length Most => Length.FromMillimeters(MostMm);

    internal double? MoreMm { get; }

    internal double? LessMm { get; }

    internal double MostMm => Math.Max(Math.Abs(MoreMm ?? 0), Math.Abs(LessMm ?? 0));

    /// <summary>Dimension, change and moves in millimetres.</summary>
    public override string ToString() => FormattableString.Invariant($"{Dimension}, {Change}: {MoreMm:+0.00;-0.00;0} mm with more, {LessMm:+0.00;-0.00;0} mm with less");

    private static Length? ToLength(double? mm) => mm is { } known ? Length.FromMillimeters(known) : null;
}
