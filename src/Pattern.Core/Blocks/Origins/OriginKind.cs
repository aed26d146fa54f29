namespace Pattern.Core.Blocks;

/// <summary>What stands in the chain from something finished back to what it was made of.</summary>
public enum OriginKind
{
    /// <summary>A body measurement; an end.</summary>
    Measurement,

    /// <summary>A setting of the method or of a design; an end.</summary>
    Setting,

    /// <summary>A figure that stands in a table; an end.</summary>
    TableEntry,

    /// <summary>A figure of the method itself, or a place that it chose on the paper; an end.</summary>
    Constant,

    /// <summary>A length that was worked out.</summary>
    Working,

    /// <summary>A length that was taken from the draft with the tape.</summary>
    Taken,

    /// <summary>A landmark as drawn by hand.</summary>
    Landmark,

    /// <summary>A line as drawn by hand.</summary>
    Line,

    /// <summary>A dart as drawn by hand.</summary>
    Dart,

    /// <summary>An edge of a finished panel.</summary>
    Edge,

    /// <summary>What truing or a design changed after the hand draft.</summary>
    Change,
}
