using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>What holds for a shaping table read from text where the text itself does not say.</summary>
public sealed record ShapingCsvOptions
{
    /// <summary>The defaults.</summary>
    public static ShapingCsvOptions Default { get; } = new();

    /// <summary>What numbers without a unit are in, where the text has no <c># unit:</c>.</summary>
    /// <value>None: a text that does not say its unit is refused, because a table of centimetres read as inches still looks like a table.</value>
    public LengthUnit? Unit { get; init; }

    /// <summary>Which row serves, where the text has no <c># lookup:</c>.</summary>
    /// <value><see cref="ShapingLookup.Nearest"/>.</value>
    public ShapingLookup Lookup { get; init; } = ShapingLookup.Nearest;

    /// <summary>What happens outside the table, where the text has no <c># outside:</c>.</summary>
    /// <value><see cref="ShapingOutside.Refuse"/>.</value>
    public ShapingOutside Outside { get; init; } = ShapingOutside.Refuse;

    /// <summary>What the table is called, where the text has no <c># name:</c>.</summary>
    /// <value><c>shaping table</c>.</value>
    public string Name { get; init; } = TabulatedShaping.DefaultName;
}
