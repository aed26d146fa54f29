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

    /// <summary>Nothing moves there, so there is no direction.</summary>
    DirectionUndefined = 3001,

    /// <summary>A curve parameter lies outside 0 to 1.</summary>
    ParameterOutOfRange = 3002,

    /// <summary>A scale factor is not greater than zero.</summary>
    ScaleNotPositive = 3003,

    /// <summary>Both ends of a curve are the same point.</summary>
    EndsCoincide = 3004,

    /// <summary>An arc goes round more than once.</summary>
    SweepTooLarge = 3005,

    /// <summary>A path without segments.</summary>
    PathEmpty = 3006,

    /// <summary>A segment does not begin where the one before ends.</summary>
    SegmentsDoNotMeet = 3007,

    /// <summary>A closed path has no end to go on from.</summary>
    PathClosed = 3008,

    /// <summary>A part of a path ends before it begins.</summary>
    PartEmpty = 3009,

    /// <summary>A segment is of another kind.</summary>
    SegmentKindWrong = 3010,

    /// <summary>A curve stands still and turns back: its curvature has no bound.</summary>
    CurvatureUnbounded = 3011,

    /// <summary>A tolerance is not greater than zero.</summary>
    ToleranceNotPositive = 3012,

    /// <summary>A tolerance is so fine that a curve would need too many chords.</summary>
    ToleranceTooFine = 3013,

    /// <summary>A caller's buffer has too little room.</summary>
    BufferTooSmall = 3014,

    /// <summary>A length that no curve through these ends can have.</summary>
    LengthTooShort = 3015,

    /// <summary>A length that only a curve with a loop or a cusp would have.</summary>
    LengthTooLong = 3016,

    /// <summary>Two tangents do not meet ahead of both ends.</summary>
    TangentsDoNotMeet = 3017,

    /// <summary>A fillet does not fit between its neighbours.</summary>
    FilletDoesNotFit = 3018,

    /// <summary>A point does not lie where it must.</summary>
    PointOffLine = 3019,

    /// <summary>Two points that follow one another are the same.</summary>
    PointsRepeat = 3020,
}
