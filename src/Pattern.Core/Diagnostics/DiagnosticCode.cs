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
}
