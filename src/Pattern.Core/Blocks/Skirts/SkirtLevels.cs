using System;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>How far below the waist level the three help lines of a skirt lie, measured straight down.</summary>
/// <remarks>Common practice, no source. Between the upper and the lower hip line the side seam runs straight, so wherever the fullest point really
/// is there is no corner.</remarks>
public sealed record SkirtLevels
{
    /// <summary>Pockets and yokes hang here.</summary>
    /// <value>Default 5 in (127 mm).</value>
    public Length Yoke
    {
        get => Length.FromMillimeters(YokeMm);
        init => YokeMm = Checked(value, nameof(Yoke));
    }

    /// <summary>Where the hip curve of the side seam begins.</summary>
    /// <value>Default 8 in (203.2 mm): about the depth of the fullest point, whose median among 1,986 women of ANSUR II is 193 mm.</value>
    public Length UpperHip
    {
        get => Length.FromMillimeters(UpperHipMm);
        init => UpperHipMm = Checked(value, nameof(UpperHip));
    }

    /// <summary>The hip line: where the hip girth is laid off and the side seams carry their notch.</summary>
    /// <value>Default 10 in (254 mm): below the fullest point of nearly every body, 99 % of ANSUR II women being at 237 mm or above.</value>
    public Length LowerHip
    {
        get => Length.FromMillimeters(LowerHipMm);
        init => LowerHipMm = Checked(value, nameof(LowerHip));
    }

    internal double YokeMm { get; private init; } = 5 * 25.4;

    internal double UpperHipMm { get; private init; } = 8 * 25.4;

    internal double LowerHipMm { get; private init; } = 10 * 25.4;

    /// <summary>All three in millimetres, whatever the culture.</summary>
    public override string ToString()
        => FormattableString.Invariant($"yoke {YokeMm:0.##} mm, upper hip {UpperHipMm:0.##} mm, lower hip {LowerHipMm:0.##} mm");

    private static double Checked(Length value, string parameter) => Guard.Millimetres(value, 10, 1000, parameter);
}
