using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>What a shaping table is asked for: the body, and the ease that the block is to have, each with its working.</summary>
/// <remarks>A table of rows looks at the <see cref="Difference"/> only; a law may look at everything.</remarks>
public sealed class ShapingQuery
{
    // Beyond any body: a query only keeps nonsense out, plausible bodies are the business of the body measurements.
    private const double LeastGirthMm = 0.001;
    private const double MostGirthMm = 10_000.0;
    private const double MostEaseMm = 5_000.0;

    private static readonly WorkedLength NoHipEase = WorkedLength.GivenMm("hip ease", 0.0);
    private static readonly WorkedLength NoWaistEase = WorkedLength.GivenMm("waist ease", 0.0);

    internal ShapingQuery(WorkedLength waistGirth, WorkedLength hipGirth, WorkedLength waistEase, WorkedLength hipEase, LengthUnit unit)
    {
        WaistGirth = waistGirth;
        HipGirth = hipGirth;
        WaistEase = waistEase;
        HipEase = hipEase;
        Unit = unit;
        Difference = (hipGirth - waistGirth).Named("waist-hip difference");
    }

    /// <summary>Around the waist of the body.</summary>
    public WorkedLength WaistGirth { get; }

    /// <summary>Around the hip of the body.</summary>
    public WorkedLength HipGirth { get; }

    /// <summary>What the block measures more than the body around the waist, in all.</summary>
    /// <value>None, unless asked for.</value>
    public WorkedLength WaistEase { get; }

    /// <summary>What the block measures more than the body around the hip, in all.</summary>
    /// <value>None, unless asked for.</value>
    public WorkedLength HipEase { get; }

    /// <summary>Hip girth less waist girth, of the body alone: what the rows of a table are keyed by. Negative where the waist is larger.</summary>
    public WorkedLength Difference { get; }

    /// <summary>What the body was measured in: a law chooses round figures on that tape.</summary>
    public LengthUnit Unit { get; }

    /// <summary>Asks for a body, without any ease.</summary>
    /// <param name="waistGirth">Around the waist; more than nothing, up to 10 m.</param>
    /// <param name="hipGirth">Around the hip; more than nothing, up to 10 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A girth is out of range.</exception>
    [Pure]
    public static ShapingQuery For(Length waistGirth, Length hipGirth) => new(
        WorkedLength.MeasuredMm("waist girth", Guard.Millimetres(waistGirth, LeastGirthMm, MostGirthMm, nameof(waistGirth))),
        WorkedLength.MeasuredMm("hip girth", Guard.Millimetres(hipGirth, LeastGirthMm, MostGirthMm, nameof(hipGirth))),
        NoWaistEase,
        NoHipEase,
        Tape.KnownUnit(waistGirth.Unit, nameof(waistGirth)));

    /// <summary>The same body with this ease around the whole hip.</summary>
    /// <param name="ease">Negative for cloth that stretches.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ease is larger than 5 m.</exception>
    [Pure]
    public ShapingQuery WithHipEase(Length ease)
        => new(WaistGirth, HipGirth, WaistEase, WorkedLength.GivenMm("hip ease", Guard.Millimetres(ease, -MostEaseMm, MostEaseMm, nameof(ease))), Unit);

    /// <summary>The same body with this ease around the whole waist.</summary>
    /// <param name="ease">Negative for cloth that stretches.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ease is larger than 5 m.</exception>
    [Pure]
    public ShapingQuery WithWaistEase(Length ease)
        => new(WaistGirth, HipGirth, WorkedLength.GivenMm("waist ease", Guard.Millimetres(ease, -MostEaseMm, MostEaseMm, nameof(ease))), HipEase, Unit);

    /// <summary>Hip less waist.</summary>
    public override string ToString()
        => "shaping for " + Difference;
}
