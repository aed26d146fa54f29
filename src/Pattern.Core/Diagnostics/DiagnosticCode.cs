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

    /// <summary>No line meets the length that a darted edge has to close to.</summary>
    WaistNotTrued = 2003,

    /// <summary>A dart is wider than the stretch of seam line that it is folded onto.</summary>
    DartWiderThanStretch = 2004,

    /// <summary>A unit that cloth is not measured in.</summary>
    ClothUnitUnknown = 1001,

    /// <summary>The text of a length is empty or blank.</summary>
    LengthTextEmpty = 1002,

    /// <summary>The text of a length is longer than any length needs.</summary>
    LengthTextTooLong = 1003,

    /// <summary>A number was expected in the text of a length, and something else stands there.</summary>
    LengthNumberExpected = 1004,

    /// <summary>The text of a length can be read in two ways.</summary>
    LengthAmbiguous = 1005,

    /// <summary>The fraction in the text of a length is none: nothing below the stroke, or as large as one after a whole number.</summary>
    LengthFractionWrong = 1006,

    /// <summary>The text of a length names a unit that is not known.</summary>
    LengthUnitUnknown = 1007,

    /// <summary>The text of a length goes on after its unit, or names a second one.</summary>
    LengthTextGoesOn = 1008,

    /// <summary>The text of a length is a number too large for cloth.</summary>
    LengthTooLarge = 1009,

    /// <summary>A body measurement is zero or less.</summary>
    BodyMeasurementNotPositive = 1020,

    /// <summary>A body measurement lies outside what human bodies measure.</summary>
    BodyMeasurementImplausible = 1021,

    /// <summary>A body measurement lies outside what human bodies measure, and would not in another unit.</summary>
    BodyMeasurementUnitSwapped = 1022,

    /// <summary>The text of a body measurement cannot be read.</summary>
    BodyMeasurementUnreadable = 1023,

    /// <summary>A body measurement that is needed was not taken.</summary>
    BodyMeasurementMissing = 1024,

    /// <summary>A name that may not be empty or blank was.</summary>
    NameEmpty = 1025,

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

    /// <summary>The hip levels of a skirt are in the wrong order or on top of each other.</summary>
    HipLevelsCrossed = 4001,

    /// <summary>A skirt ends above its lower hip line or its yoke line.</summary>
    SkirtTooShort = 4002,

    /// <summary>A panel has no room at the hip.</summary>
    PanelTooNarrow = 4003,

    /// <summary>A dart is too short to sew or reaches past the hip line.</summary>
    DartLengthImpossible = 4004,

    /// <summary>A dart stands beyond the end of its waistline.</summary>
    DartOffWaistline = 4005,

    /// <summary>An open path has no inside.</summary>
    PathOpen = 3500,

    /// <summary>A path has no length, so that there is nothing beside it.</summary>
    OffsetOfNothing = 3501,

    /// <summary>A path was offset so far that nothing is left.</summary>
    OffsetVanishes = 3502,

    /// <summary>The pieces of an offset could not be joined.</summary>
    OffsetUnjoined = 3503,
}
