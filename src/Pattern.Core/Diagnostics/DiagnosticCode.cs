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

    /// <summary>A panel was asked for a dart that it does not have.</summary>
    DartNotOnEdge = 2005,

    /// <summary>A panel has too few edges to close.</summary>
    PanelNotClosed = 2006,

    /// <summary>Two edges that should meet do not.</summary>
    EdgesApart = 2007,

    /// <summary>Two edges of a panel have the same name.</summary>
    EdgeNamedTwice = 2008,

    /// <summary>A place lies beyond the ends of its edge.</summary>
    PlaceOffEdge = 2009,

    /// <summary>The apex of a dart would lie outside the panel.</summary>
    ApexOutsidePanel = 2010,

    /// <summary>The intake of a dart is wider than the seam line it is taken out of.</summary>
    DartWiderThanEdge = 2011,

    /// <summary>A cut or a leg would cross a dart.</summary>
    CutCrossesDart = 2012,

    /// <summary>A cut would leave the panel on its way.</summary>
    CutLeavesPanel = 2013,

    /// <summary>A dart was to be moved onto its own place.</summary>
    TransferOntoItself = 2014,

    /// <summary>A panel cannot be closed flat: the dart ends inside it.</summary>
    DartNotFlat = 2015,

    /// <summary>Darts that do not share an apex cannot be merged.</summary>
    DartsApart = 2016,

    /// <summary>The outline of a panel would cross itself.</summary>
    OutlineWouldCross = 2017,

    /// <summary>An edge was to be sewn to itself.</summary>
    SeamOntoItself = 2100,

    /// <summary>A seam names an edge that none of the panels has.</summary>
    SeamEdgeMissing = 2101,

    /// <summary>A seam runs between marks that an edge does not have, or that stand the wrong way round.</summary>
    SeamMarkMissing = 2102,

    /// <summary>The two edges of a seam have different numbers of notches.</summary>
    NotchesUnpaired = 2103,

    /// <summary>No edge has the length that truing asks for.</summary>
    TruingLengthImpossible = 2104,

    /// <summary>A trued line does not meet a dart that stood on it, or meets two in the wrong order.</summary>
    DartOffTruedLine = 2105,

    /// <summary>Lines that are to be trued as one do not meet at a seam.</summary>
    LinesNotJoined = 2106,

    /// <summary>An edge is too short for what truing would take off its end.</summary>
    TruingTakesTooMuch = 2107,

    /// <summary>A panel that was asked for is not among those at hand.</summary>
    PanelMissing = 2108,

    /// <summary>A seam over a part of an edge would have to end elsewhere, and nothing marks that end.</summary>
    SeamEndFixed = 2109,

    /// <summary>Truing was asked for conditions that contradict each other within the limits.</summary>
    ConditionsContradict = 2110,

    /// <summary>An edge has no notch of that number.</summary>
    NotchMissing = 2112,

    /// <summary>A plan has no condition of that name that asks for a length.</summary>
    ConditionUnknown = 2113,

    /// <summary>Something cannot move in that way.</summary>
    MoveNotOfItsKind = 2114,

    /// <summary>A construction does not measure as it has to, within its limits.</summary>
    ConstructionNotMet = 2115,

    /// <summary>A dart does not meet the edge that is swept across it.</summary>
    DartMissesSweep = 2116,

    /// <summary>An edge that is drawn in one sweep was to be bent by something else too.</summary>
    SweepTakesWhole = 2117,

    /// <summary>A panel was to be scaled or stretched; panels only move, turn and mirror.</summary>
    PanelNotRigid = 2018,

    /// <summary>A tuck was to be stitched as far as the dart, or farther.</summary>
    TuckTooLong = 2019,

    /// <summary>A cut that parts a panel begins and ends on the same edge.</summary>
    CutEndsOnOwnEdge = 2020,

    /// <summary>An edge, or the grainline of a panel, begins where it ends.</summary>
    LineWithoutLength = 2021,

    /// <summary>The edge that was to stay where it is lies on both sides of a cut.</summary>
    KeptEdgeCut = 2022,

    /// <summary>An edge that is to say a way along another one does not meet it, or meets it at both ends.</summary>
    NoSuchNeighbour = 2023,

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

    /// <summary>A body measurement of one's own has the term of a known one.</summary>
    BodyMeasurementKnown = 1026,

    /// <summary>A table of bodies lacks a column that was asked for.</summary>
    BodyColumnMissing = 1040,

    /// <summary>A table of bodies has two columns of the name that was asked for.</summary>
    BodyColumnTwice = 1041,

    /// <summary>A table of bodies has no line of column names.</summary>
    BodyTableEmpty = 1042,

    /// <summary>A row of a table of bodies has more or fewer cells than its line of column names.</summary>
    BodyCellsMiscounted = 1043,

    /// <summary>A cell of a table of bodies is no measurement of a body.</summary>
    BodyCellWrong = 1044,

    /// <summary>A row of a table of bodies opens a quote and does not close it.</summary>
    BodyQuoteOpen = 1045,

    /// <summary>A row of a table of bodies is longer than any row.</summary>
    BodyRowTooLong = 1046,

    /// <summary>A fraction of an inch has no room left: too fine, or too large.</summary>
    FractionOverflow = 1030,

    /// <summary>A fraction of an inch was asked for in metric.</summary>
    FractionNotMetric = 1031,

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

    /// <summary>A draft was asked for a landmark that was not drawn.</summary>
    LandmarkNotDrawn = 4006,

    /// <summary>The darts of a panel turn its waistline farther than a quarter of a circle.</summary>
    DartsTurnTooFar = 4007,

    /// <summary>A waistline is so much wider than the hip that its side seam would lean out more than 45 degrees.</summary>
    WaistWiderThanHip = 4008,

    /// <summary>The centre of a waistline lies as low as the hip.</summary>
    WaistAtHip = 4009,

    /// <summary>A sheet was asked for a line that was not drawn on it.</summary>
    LineNotDrawn = 4010,

    /// <summary>A landmark was marked under a name that is taken.</summary>
    LandmarkMarkedTwice = 4011,

    /// <summary>A line was drawn under a name that is taken.</summary>
    LineDrawnTwice = 4012,

    /// <summary>A reason was given before any step.</summary>
    NoStepYet = 4013,

    /// <summary>A hand measure was stated under a name that is taken.</summary>
    MeasureStatedTwice = 4014,

    /// <summary>The places in a sentence are not those of its words.</summary>
    NoteWordsWrong = 4015,

    /// <summary>A distance to measure off is negative.</summary>
    DistanceNegative = 4016,

    /// <summary>Two landmarks that should lie apart lie at one place.</summary>
    PointsCoincide = 4017,

    /// <summary>A side does not tell two places apart.</summary>
    SideUndecided = 4018,

    /// <summary>A landmark inside a line does not say which way to measure along it.</summary>
    WayUndecided = 4019,

    /// <summary>What was measured off does not meet its line.</summary>
    LineNotMet = 4020,

    /// <summary>A distance is longer than what is left of its line.</summary>
    DistanceOffLine = 4021,

    /// <summary>A landmark does not lie on its line.</summary>
    LandmarkOffLine = 4022,

    /// <summary>A landmark is no end of the line that is to go on.</summary>
    LandmarkNoEnd = 4023,

    /// <summary>A line does not go on as far as was asked.</summary>
    CurveEnds = 4024,

    /// <summary>Two circles of a compass do not cross.</summary>
    CompassDoesNotReach = 4025,

    /// <summary>Two lines do not cross.</summary>
    LinesDoNotCross = 4026,

    /// <summary>Two lines cross more than once.</summary>
    CrossingUndecided = 4027,

    /// <summary>A hip curve would begin and end at one level.</summary>
    HipCurveLevel = 4028,

    /// <summary>A mirror line is not straight.</summary>
    MirrorNotStraight = 4029,

    /// <summary>A dart has no intake or no length.</summary>
    DartWithoutSize = 4030,

    /// <summary>Half the intake of a dart lies beyond the end of its line.</summary>
    DartOffLine = 4031,

    /// <summary>A dart stands on another line.</summary>
    DartOnOtherLine = 4032,

    /// <summary>A line does not begin where the outline has come to.</summary>
    LineNotNext = 4033,

    /// <summary>A traced outline does not come back to its start.</summary>
    OutlineNotClosed = 4034,

    /// <summary>A hem comes in so fast that its seam would lean in more than 45 degrees.</summary>
    HemTooSteep = 4035,

    /// <summary>A panel has no room at the hem.</summary>
    HemTooNarrow = 4036,

    /// <summary>A method was asked for a setting that it does not have.</summary>
    SettingUnknown = 4100,

    /// <summary>A method has two settings of one name.</summary>
    SettingNamedTwice = 4101,

    /// <summary>A choice is none of its words.</summary>
    SettingChoiceUnknown = 4102,

    /// <summary>A method needs a setting that nobody gave a value.</summary>
    SettingNotGiven = 4103,

    /// <summary>A method ended without a panel.</summary>
    DraftWithoutPanels = 4104,

    /// <summary>A method added two panels of one name.</summary>
    PanelDraftedTwice = 4105,

    /// <summary>Something was added to a draft after its method was done.</summary>
    DraftDone = 4106,

    /// <summary>No method of that name is known.</summary>
    MethodUnknown = 4107,

    /// <summary>A catalogue has a method of that name already.</summary>
    MethodNamedTwice = 4108,

    /// <summary>A block has no alternative of that name.</summary>
    AlternativeUnknown = 4109,

    /// <summary>A method stopped with an exception that is no refusal.</summary>
    MethodBroke = 4110,

    /// <summary>A design cannot be made of this block.</summary>
    DesignRefused = 4111,

    /// <summary>The pieces of one garment were asked of the block of another.</summary>
    NotThisGarment = 4112,

    /// <summary>A shaping law is known by its name only, and cannot be made from it.</summary>
    ShapingLawUnknown = 5021,

    /// <summary>A shaping table has no rows.</summary>
    ShapingTableEmpty = 5001,

    /// <summary>The difference between hip and waist lies outside a shaping table that refuses that.</summary>
    ShapingOutsideTable = 5002,

    /// <summary>A figure of a shaping table cannot be read.</summary>
    ShapingFigureUnreadable = 5003,

    /// <summary>A dart intake in a shaping table is negative.</summary>
    ShapingIntakeNegative = 5004,

    /// <summary>A figure of a shaping table is too large for any skirt.</summary>
    ShapingFigureTooLarge = 5005,

    /// <summary>The rows of a shaping table do not rise.</summary>
    ShapingDifferenceOutOfOrder = 5006,

    /// <summary>Two rows of a shaping table are for the same difference.</summary>
    ShapingDifferenceTwice = 5007,

    /// <summary>The name of a shaping table has more than one line.</summary>
    ShapingNameBroken = 5008,

    /// <summary>A shaping table in text has a directive that is not known.</summary>
    ShapingDirectiveUnknown = 5010,

    /// <summary>A directive of a shaping table in text has a value that is not known.</summary>
    ShapingDirectiveWrong = 5011,

    /// <summary>A shaping table in text says the same thing twice.</summary>
    ShapingDirectiveTwice = 5012,

    /// <summary>A directive of a shaping table in text stands below the column names.</summary>
    ShapingDirectiveLate = 5013,

    /// <summary>A shaping table in text has a column that is not known.</summary>
    ShapingColumnUnknown = 5014,

    /// <summary>A shaping table in text has the same column twice.</summary>
    ShapingColumnTwice = 5015,

    /// <summary>A shaping table in text lacks a column.</summary>
    ShapingColumnMissing = 5016,

    /// <summary>A row of a shaping table in text has too many or too few figures.</summary>
    ShapingCellsMiscounted = 5017,

    /// <summary>A shaping table in text does not say its unit.</summary>
    ShapingUnitMissing = 5018,

    /// <summary>A quoted cell of a shaping table in text does not end.</summary>
    ShapingQuoteOpen = 5019,

    /// <summary>A shaping table has more text, more rows or a longer name than any table of the trade.</summary>
    ShapingTableTooLarge = 5020,
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

    /// <summary>A length that only a curve that crosses itself or doubles back would have.</summary>
    LengthTooLong = 3016,

    /// <summary>Two tangents do not meet ahead of both ends.</summary>
    TangentsDoNotMeet = 3017,

    /// <summary>A fillet does not fit between its neighbours.</summary>
    FilletDoesNotFit = 3018,

    /// <summary>A point does not lie where it must.</summary>
    PointOffLine = 3019,

    /// <summary>Two points that follow one another are the same.</summary>
    PointsRepeat = 3020,

    /// <summary>The points of an arc lie on one straight line.</summary>
    ArcIsStraight = 3021,
    /// <summary>A drawing has two layers of one name.</summary>
    LayerTwice = 7001,

    /// <summary>A file could not be written.</summary>
    FileNotWritten = 7002,

    /// <summary>A name that cannot be the name of a file in a folder.</summary>
    FileNameUnusable = 7003,

    /// <summary>Two files of one name.</summary>
    FileTwice = 7004,

    /// <summary>A folder has the name that a file was to have.</summary>
    FolderInTheWay = 7005,

    /// <summary>A path holds a character or a name that no file can have.</summary>
    FilePathUnusable = 7006,

    /// <summary>No paper has this name.</summary>
    PaperUnknown = 7101,

    /// <summary>Too little of a sheet is left inside its margins.</summary>
    SheetTooSmall = 7102,

    /// <summary>Sheets would overlap by more than half of what they print.</summary>
    OverlapTooWide = 7103,

    /// <summary>A drawing would need too many sheets.</summary>
    TooManySheets = 7104,

    /// <summary>A drawing fits on a roll neither upright nor turned.</summary>
    RollTooNarrow = 7105,

    /// <summary>A page would be longer or shorter than its format allows.</summary>
    PageSizeImpossible = 7106,

    /// <summary>An open path has no inside.</summary>
    PathOpen = 3500,

    /// <summary>A path has no length, so that there is nothing beside it.</summary>
    OffsetOfNothing = 3501,

    /// <summary>A path was offset so far that nothing is left.</summary>
    OffsetVanishes = 3502,

    /// <summary>The pieces of an offset could not be joined.</summary>
    OffsetUnjoined = 3503,

    /// <summary>A path lies so far out that numbers there are too coarse for the tolerance of an offset.</summary>
    OffsetTooFine = 3504,

    /// <summary>A seam allowance is negative, or too wide for any garment.</summary>
    AllowanceOutOfRange = 6001,

    /// <summary>A seam allowance is so wide that nothing is left of an edge.</summary>
    EdgeVanishes = 6002,

    /// <summary>A cut line would cross itself.</summary>
    CutLineCrosses = 6003,

    /// <summary>A corner was asked for between edges that do not meet.</summary>
    CornerBetweenStrangers = 6004,

    /// <summary>An edge that is to lie on the fold is not straight.</summary>
    FoldNotStraight = 6005,

    /// <summary>A piece was to be unfolded that lies on no fold.</summary>
    NothingToUnfold = 6006,

    /// <summary>A text to be printed on a piece has a character that cannot be printed.</summary>
    TextNotPrintable = 6007,

    /// <summary>A text to be printed on a piece is too long for a line.</summary>
    TextTooLong = 6008,

    /// <summary>A DXF file was asked for in a unit that the standard does not know.</summary>
    DxfUnitUnknown = 7200,

    /// <summary>A DXF file would hold a piece twice.</summary>
    DxfPieceTwice = 7202,

    /// <summary>A text is not JSON.</summary>
    JsonMalformed = 7300,

    /// <summary>A JSON text is larger, deeper or longer than a pattern can be.</summary>
    JsonTooLarge = 7301,

    /// <summary>A JSON text is a file of another format.</summary>
    JsonFormatUnknown = 7302,

    /// <summary>A JSON text is of a version that this library does not know.</summary>
    JsonVersionUnknown = 7303,

    /// <summary>A property that a pattern needs is missing from a JSON text.</summary>
    JsonPropertyMissing = 7304,

    /// <summary>A JSON text has a property that no pattern has.</summary>
    JsonPropertyUnknown = 7305,

    /// <summary>A JSON text says a property, an edge, a corner or a cloth twice.</summary>
    JsonSaidTwice = 7306,

    /// <summary>A value of a JSON text has another type, or lies outside its range.</summary>
    JsonValueWrong = 7307,

    /// <summary>What a JSON text says makes no body, block or piece.</summary>
    JsonContentRefused = 7308,

    /// <summary>The lines that a JSON text gives for a piece are not those that the piece draws.</summary>
    JsonDrawnDiffers = 7309,

    /// <summary>A pattern has something that a JSON file cannot hold.</summary>
    JsonNotWritable = 7310,

    /// <summary>A block drafted anew has other panels than the file that its options come from.</summary>
    DraftDiffers = 7311,

    /// <summary>A document was asked for a panel that it does not have.</summary>
    PanelNotInDocument = 7312,

    /// <summary>A seam line crosses or touches itself, so that it has no outside.</summary>
    SeamLineCrosses = 6009,

    /// <summary>Two pieces of a set have the same name.</summary>
    PieceNamedTwice = 6010,

    /// <summary>A set was asked for a piece that it does not have.</summary>
    PieceNotInSet = 6011,

    /// <summary>A piece is wider than the cloth that it is to be cut from.</summary>
    PieceWiderThanCloth = 6012,

    /// <summary>The cut line of an edge with darts comes nearer to another edge than the narrower allowance of the two.</summary>
    CutLineTooNear = 6013,

    /// <summary>A drawing or a file was asked for without pieces.</summary>
    NoPieces = 6014,
}
