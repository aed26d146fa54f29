using System;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>How one half of a <see cref="CapCurve"/> bends between its underarm point and the crown. Immutable.</summary>
/// <remarks>The two shares are the lengths of the curve's handles in parts of the half's width: a larger one makes that end fuller, and sets in later towards the other.</remarks>
public sealed class CapBend
{
    /// <summary>States a bend.</summary>
    /// <param name="crown">How full the crown is, 10 % to 90 % of the width of the half.</param>
    /// <param name="underarm">How far the hollow at the underarm reaches, 10 % to 90 % of the width of the half.</param>
    /// <param name="rise">How steeply the curve leaves the underarm point, from level: 0 to 75 degrees. Level by default, so that it meets the armhole without a corner.</param>
    public CapBend(Ratio crown, Ratio underarm, Angle rise = default)
    {
        CrownShare = Share(crown, nameof(crown));
        UnderarmShare = Share(underarm, nameof(underarm));
        RiseRad = rise.Radians;
        if (!(RiseRad >= 0 && rise.Degrees <= 75))
        {
            throw new ArgumentOutOfRangeException(nameof(rise), MessageRegistry.Format(DiagnosticCode.QuantityOutOfRange, nameof(rise), rise, Angle.Zero, Angle.FromDegrees(75)));
        }
    }

    /// <summary>The usual front half: well hollowed out.</summary>
    /// <value>56 % and 52 %: within 1.2 mm of the three points of a handbook's front cap, 17 mm out, 1 mm out and 13 mm in at its quarters.</value>
    public static CapBend Front { get; } = new(Ratio.FromPercent(56), Ratio.FromPercent(52));

    /// <summary>The usual back half: fuller, and hardly hollow.</summary>
    /// <value>48 % and 36 %: within 0.3 mm of the three points of a handbook's back cap, 15 mm out, 6 mm out and 7 mm in at its quarters.</value>
    public static CapBend Back { get; } = new(Ratio.FromPercent(48), Ratio.FromPercent(36));

    /// <summary>How full the crown is, in parts of the width of the half.</summary>
    public Ratio Crown => Ratio.FromDecimalFractions(CrownShare);

    /// <summary>How far the hollow at the underarm reaches, in parts of the width of the half.</summary>
    public Ratio Underarm => Ratio.FromDecimalFractions(UnderarmShare);

    /// <summary>How steeply the curve leaves the underarm point, from level.</summary>
    public Angle Rise => Angle.FromRadians(RiseRad);

    internal double CrownShare { get; }

    internal double UnderarmShare { get; }

    internal double RiseRad { get; }

    private static double Share(Ratio value, string parameter)
    {
        double share = value.DecimalFractions;
        return share is >= 0.1 and <= 0.9
            ? share
            : throw new ArgumentOutOfRangeException(parameter, MessageRegistry.Format(DiagnosticCode.QuantityOutOfRange, parameter, value, Ratio.FromPercent(10), Ratio.FromPercent(90)));
    }

    /// <summary>The three figures.</summary>
    public override string ToString()
        => FormattableString.Invariant($"crown {100 * CrownShare:0.##} %, underarm {100 * UnderarmShare:0.##} %, rise {Rise.Degrees:0.##} degrees");
}
