using System.Collections.Generic;
using System.Collections.ObjectModel;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>The line beside a path at a width: what <see cref="CurvePath.Offset(Length, OffsetJoin)"/> makes.</summary>
public sealed class PathOffset
{
    private readonly double _achievedErrorMm;

    internal PathOffset(List<CurvePath> paths, double achievedErrorMm)
    {
        Paths = new ReadOnlyCollection<CurvePath>(paths);
        _achievedErrorMm = achievedErrorMm;
    }

    /// <summary>What remains, running as the path does. One path as a rule; more where the offset falls apart, or with
    /// <see cref="OffsetJoin.Open"/> one for each stretch between corners. The longest first, or in order with <see cref="OffsetJoin.Open"/>.</summary>
    public IReadOnlyList<CurvePath> Paths { get; }

    /// <summary>How far the curves were found to be from the true parallel curve, at the most, at eleven points on each; at most the tolerance.</summary>
    internal Length AchievedError => Length.FromMillimeters(_achievedErrorMm);

    /// <summary>How many paths it came to.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"offset of {Paths.Count} paths");
}
