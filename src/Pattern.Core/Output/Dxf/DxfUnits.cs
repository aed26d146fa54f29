using System;
using Pattern.Core.Diagnostics;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Output;

/// <summary>The unit and the tolerance of a DXF file, checked.</summary>
internal readonly struct DxfUnits
{
    // A fifth of what a plotter can place: all chords of a metre of curve together are then within a hundredth of a millimetre of its length.
    internal const double UsualToleranceMm = 0.02;

    private const double FinestMm = 0.001;
    private const double CoarsestMm = 5;

    internal DxfUnits(LengthUnit unit, Length tolerance)
    {
        IsMetric = unit switch
        {
            LengthUnit.Millimeter => true,
            LengthUnit.Inch => false,
            _ => throw new ArgumentOutOfRangeException(nameof(unit), MessageRegistry.Format(DiagnosticCode.DxfUnitUnknown, unit)),
        };
        _ = Guard.Millimetres(tolerance, FinestMm, CoarsestMm, nameof(tolerance));
        Tolerance = tolerance;
    }

    internal bool IsMetric { get; }

    internal Length Tolerance { get; }

    /// <summary>The words of the standard.</summary>
    internal string Name => IsMetric ? "METRIC" : "ENGLISH";

    /// <summary>So many of the smallest steps that are written make one unit: 0.0001 mm, or 0.000001 in.</summary>
    internal int StepsPerUnit => IsMetric ? 10_000 : 1_000_000;

    internal int Decimals => IsMetric ? 4 : 6;

    /// <summary>The coordinate as a count of the smallest steps.</summary>
    internal long Steps(double mm)
        => (long)Math.Round((decimal)mm * StepsPerUnit / (IsMetric ? 1m : 25.4m), MidpointRounding.AwayFromZero);
}
