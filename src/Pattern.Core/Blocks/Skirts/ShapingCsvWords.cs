using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>The words that a shaping table in text uses for its choices.</summary>
internal static class ShapingCsvWords
{
    internal static string Of(LengthUnit unit) => unit switch
    {
        LengthUnit.Inch => "in",
        LengthUnit.Foot => "ft",
        LengthUnit.Yard => "yd",
        LengthUnit.Millimeter => "mm",
        LengthUnit.Centimeter => "cm",
        _ => "m",
    };

    internal static string Of(ShapingLookup lookup) => lookup switch
    {
        ShapingLookup.AtOrAbove => "at-or-above",
        ShapingLookup.Interpolated => "interpolated",
        _ => "nearest",
    };

    internal static string Of(ShapingOutside outside) => outside == ShapingOutside.Clamp ? "clamp" : "refuse";

    internal static LengthUnit? Unit(string word) => word switch
    {
        "in" => LengthUnit.Inch,
        "ft" => LengthUnit.Foot,
        "yd" => LengthUnit.Yard,
        "mm" => LengthUnit.Millimeter,
        "cm" => LengthUnit.Centimeter,
        "m" => LengthUnit.Meter,
        _ => null,
    };

    internal static ShapingLookup? Lookup(string word) => word switch
    {
        "nearest" => ShapingLookup.Nearest,
        "at-or-above" => ShapingLookup.AtOrAbove,
        "interpolated" => ShapingLookup.Interpolated,
        _ => null,
    };

    internal static ShapingOutside? Outside(string word) => word switch
    {
        "refuse" => ShapingOutside.Refuse,
        "clamp" => ShapingOutside.Clamp,
        _ => null,
    };
}
