using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>What a shaping table is asked for: the body, and the ease that the block is to have.</summary>
/// <remarks>A table of rows looks at the <see cref="Difference"/> only; a law may look at everything.</remarks>
public sealed class ShapingQuery
{
    // Beyond any body: a query only keeps nonsense out, plausible bodies are the business of the body measurements.
    private const double LeastGirthMm = 0.001;
    private const double MostGirthMm = 10_000.0;
    private const double MostEaseMm = 5_000.0;

    private ShapingQuery(double waistGirthMm, double hipGirthMm, double hipEaseMm, double waistEaseMm)
    {
        WaistGirthMm = waistGirthMm;
        HipGirthMm = hipGirthMm;
        HipEaseMm = hipEaseMm;
        WaistEaseMm = waistEaseMm;
    }

    /// <summary>Around the waist of the body.</summary>
    public Length WaistGirth => Length.FromMillimeters(WaistGirthMm);

    /// <summary>Around the hip of the body.</summary>
    public Length HipGirth => Length.FromMillimeters(HipGirthMm);

    /// <summary>What the block measures more than the body around the hip.</summary>
    /// <value>None, unless asked for.</value>
    public Length HipEase => Length.FromMillimeters(HipEaseMm);

    /// <summary>What the block measures more than the body around the waist.</summary>
    /// <value>None, unless asked for.</value>
    public Length WaistEase => Length.FromMillimeters(WaistEaseMm);

    /// <summary>Hip girth less waist girth, of the body alone; negative where the waist is larger.</summary>
    public Length Difference => Length.FromMillimeters(DifferenceMm);

    internal double WaistGirthMm { get; }

    internal double HipGirthMm { get; }

    internal double HipEaseMm { get; }

    internal double WaistEaseMm { get; }

    internal double DifferenceMm => HipGirthMm - WaistGirthMm;

    /// <summary>Asks for a body, without any ease.</summary>
    /// <param name="waistGirth">Around the waist; more than nothing, up to 10 m.</param>
    /// <param name="hipGirth">Around the hip; more than nothing, up to 10 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A girth is out of range.</exception>
    [Pure]
    public static ShapingQuery For(Length waistGirth, Length hipGirth) => new(
        Guard.Millimetres(waistGirth, LeastGirthMm, MostGirthMm, nameof(waistGirth)),
        Guard.Millimetres(hipGirth, LeastGirthMm, MostGirthMm, nameof(hipGirth)),
        0.0,
        0.0);

    /// <summary>The same body with this ease around the whole hip.</summary>
    /// <param name="ease">Negative for cloth that stretches.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ease is larger than 5 m.</exception>
    [Pure]
    public ShapingQuery WithHipEase(Length ease)
        => new(WaistGirthMm, HipGirthMm, Guard.Millimetres(ease, -MostEaseMm, MostEaseMm, nameof(ease)), WaistEaseMm);

    /// <summary>The same body with this ease around the whole waist.</summary>
    /// <param name="ease">Negative for cloth that stretches.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ease is larger than 5 m.</exception>
    [Pure]
    public ShapingQuery WithWaistEase(Length ease)
        => new(WaistGirthMm, HipGirthMm, HipEaseMm, Guard.Millimetres(ease, -MostEaseMm, MostEaseMm, nameof(ease)));

    /// <summary>The trusted way in, for drafts that have checked their measurements.</summary>
    internal static ShapingQuery FromMm(double waistGirthMm, double hipGirthMm, double hipEaseMm, double waistEaseMm)
        => new(waistGirthMm, hipGirthMm, hipEaseMm, waistEaseMm);
}
