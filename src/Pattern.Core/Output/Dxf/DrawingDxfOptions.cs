using System;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Output;

/// <summary>How a drawing is written as DXF.</summary>
public sealed record DrawingDxfOptions
{
    /// <summary>The unit of every coordinate.</summary>
    /// <value>Millimetres or inches; default millimetres.</value>
    public LengthUnit Unit { get; init; } = LengthUnit.Millimeter;

    /// <summary>The largest distance between a curve and the straight lines that stand for it: a bound that holds, not an estimate.</summary>
    /// <value>0.001 mm to 5 mm; default 0.02 mm.</value>
    public Length Tolerance { get; init; } = Length.FromMillimeters(DxfUnits.UsualToleranceMm);

    /// <summary>Unit and tolerance.</summary>
    public override string ToString() => FormattableString.Invariant($"{Unit}, curves within {Tolerance.Millimeters} mm");
}
