using System;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Output;

/// <summary>How pattern pieces are written as DXF, and what the file says about itself.</summary>
public sealed record DxfOptions
{
    /// <summary>The unit of every coordinate.</summary>
    /// <value>Millimetres or inches, which the standard calls metric and English; default millimetres.</value>
    public LengthUnit Unit { get; init; } = LengthUnit.Millimeter;

    /// <summary>The largest distance between a curve and the straight lines that stand for it: a bound that holds, not an estimate.</summary>
    /// <value>0.001 mm to 5 mm; default 0.02 mm.</value>
    public Length Tolerance { get; init; } = Length.FromMillimeters(DxfUnits.UsualToleranceMm);

    /// <summary>Who made the pattern.</summary>
    /// <value>Up to 60 printable characters; default none, and no author is written.</value>
    public string? Author { get; init; }

    /// <summary>The garment that the pieces belong to.</summary>
    /// <value>Up to 60 printable characters; default the garment on the label of the first piece that has one, else the name of the first piece.</value>
    public string? StyleName { get; init; }

    /// <summary>The size that the other sizes were made from.</summary>
    /// <value>Up to 60 printable characters; default the size of the first piece.</value>
    public string? SampleSize { get; init; }

    /// <summary>Day and time of making. The library has no clock.</summary>
    /// <value>Default none, and neither date nor time is written: the same pieces give the same bytes on any day.</value>
    public DateTime? Created { get; init; }

    /// <summary>Unit and tolerance.</summary>
    public override string ToString() => FormattableString.Invariant($"{Unit}, curves within {Tolerance.Millimeters} mm");
}
