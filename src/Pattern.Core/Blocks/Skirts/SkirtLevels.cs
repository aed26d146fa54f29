using System;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>How far below the waist level the three help lines of a skirt lie, measured straight down. What is left out follows the body.</summary>
/// <remarks>Common practice, no source. Where the body's <see cref="Measurement.BodyMeasurement.WaistToHip"/> is known the upper hip lies there; else, where its stature is, at an
/// eighth of it (20.5 cm for 164 cm); else at the usual figure. The lower hip lies a quarter of the upper hip's depth below it, the yoke at five eighths of it.
/// Between the upper and the lower hip line the side seam runs straight, so wherever the fullest point really is there is no corner.</remarks>
public sealed record SkirtLevels
{
    /// <summary>Pockets and yokes hang here.</summary>
    /// <value>Usually 5 in (12.5 cm).</value>
    public Length Yoke
    {
        get => Length.FromMillimeters(YokeMm);
        init => GivenYokeMm = Checked(value, nameof(Yoke));
    }

    /// <summary>Where the hip curve of the side seam begins.</summary>
    /// <value>Usually 8 in (20 cm): about the depth of the fullest point, whose median among 1,986 women of ANSUR II is 193 mm.</value>
    public Length UpperHip
    {
        get => Length.FromMillimeters(UpperHipMm);
        init => GivenUpperHipMm = Checked(value, nameof(UpperHip));
    }

    /// <summary>The hip line: where the hip girth is laid off and the side seams carry their notch.</summary>
    /// <value>Usually 10 in (25 cm): below the fullest point of nearly every body, 99 % of ANSUR II women being at 237 mm or above.</value>
    public Length LowerHip
    {
        get => Length.FromMillimeters(LowerHipMm);
        init => GivenLowerHipMm = Checked(value, nameof(LowerHip));
    }

    internal double? GivenYokeMm { get; private init; }

    internal double? GivenUpperHipMm { get; private init; }

    internal double? GivenLowerHipMm { get; private init; }

    internal double YokeMm => GivenYokeMm ?? 5 * 25.4;

    internal double UpperHipMm => GivenUpperHipMm ?? 8 * 25.4;

    internal double LowerHipMm => GivenLowerHipMm ?? 10 * 25.4;

    /// <summary>All three in millimetres, whatever the culture.</summary>
    public override string ToString()
        => FormattableString.Invariant($"yoke {YokeMm:0.##} mm, upper hip {UpperHipMm:0.##} mm, lower hip {LowerHipMm:0.##} mm");

    private static double Checked(Length value, string parameter) => Guard.Millimetres(value, 10, 1000, parameter);
}
