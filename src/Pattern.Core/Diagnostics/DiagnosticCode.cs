namespace Pattern.Core.Diagnostics;

/// <summary>Names every message of the library. The number never changes once it is published.</summary>
/// <remarks>1xxx measurements, 2xxx panels and darts, 3xxx geometry, 4xxx drafting and blocks, 5xxx shaping tables,
/// 6xxx pieces, 7xxx drawings and files. Printed as <c>PC1001</c>.</remarks>
public enum DiagnosticCode
{
    /// <summary>A value that may not be null was null.</summary>
    ValueIsNull = 1,

    /// <summary>A quantity lies outside the range that the call allows.</summary>
    QuantityOutOfRange = 2,

    /// <summary>A number is NaN or infinite.</summary>
    NumberNotFinite = 3,

    /// <summary>A whole number lies outside the range that the call allows.</summary>
    CountOutOfRange = 4,

    /// <summary>An enum value has no name.</summary>
    ChoiceUnknown = 5,

    /// <summary>A name has no characters, too many, or some that a file or a drawing cannot carry.</summary>
    NameUnusable = 6,

    /// <summary>A label has no characters, too many, or some that a file or a drawing cannot carry.</summary>
    LabelUnusable = 7,

    /// <summary>A panel was asked for an edge that it does not have.</summary>
    EdgeNotOnPanel = 2001,

    /// <summary>Checks of a drawn block failed.</summary>
    ChecksFailed = 2002,
}
