using System;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>How a line that runs over seams is to be trued. What is not said keeps the default that its property documents.</summary>
public sealed record LineTruing
{
    /// <summary>Smooth over every seam, each panel taking half.</summary>
    public static LineTruing Default { get; } = new();

    /// <summary>The angle that the two parts of the line enclose at the seam, measured through the cloth of both panels.</summary>
    /// <value>Default 180 degrees: no corner.</value>
    public Angle JoinedAngle
    {
        get => Angle.FromRadians(JoinedAngleRad);
        init
        {
            double degrees = Guard.Finite(value.Degrees, nameof(JoinedAngle));
            JoinedAngleRad = degrees is > 10 and < 350
                ? value.Radians
                : throw new ArgumentOutOfRangeException(
                    nameof(JoinedAngle),
                    MessageRegistry.Format(DiagnosticCode.QuantityOutOfRange, nameof(JoinedAngle), value, Angle.FromDegrees(10), Angle.FromDegrees(350)));
        }
    }

    /// <summary>How much of the turn the panel earlier in the line takes; the later one takes the rest.</summary>
    /// <value>Default one half.</value>
    public Ratio ShareOfFirst
    {
        get => Ratio.FromDecimalFractions(ShareOfFirstRaw);
        init => ShareOfFirstRaw = Guard.Share(value, nameof(ShareOfFirst));
    }

    internal double JoinedAngleRad { get; private init; } = Math.PI;

    internal double ShareOfFirstRaw { get; private init; } = 0.5;

    /// <summary>What is asked for in one line, whatever the culture.</summary>
    public override string ToString() => FormattableString.Invariant($"joined at {JoinedAngleRad * 180 / Math.PI:0.##} degrees, first takes {ShareOfFirstRaw * 100:0.##} %");
}
