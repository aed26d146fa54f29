namespace Pattern.Core.Diagnostics;

/// <summary>Names every message of the library. The number never changes once it is published.</summary>
/// <remarks>A hundred numbers are a family, and each family counts from its first without a hole. Printed as <c>PC1001</c>. The families:
/// <list type="bullet">
/// <item><description>00xx: what any call may refuse</description></item>
/// <item><description>10xx: the text of lengths, and fractions</description></item>
/// <item><description>11xx: body measurements</description></item>
/// <item><description>12xx: tables of bodies</description></item>
/// <item><description>13xx: figures that were drawn, to be marked</description></item>
/// <item><description>14xx: what is printed in another language</description></item>
/// <item><description>20xx: panels and their edges</description></item>
/// <item><description>21xx: darts, cuts and what is closed flat</description></item>
/// <item><description>22xx: seams</description></item>
/// <item><description>23xx: truing</description></item>
/// <item><description>30xx: points, lines and curves</description></item>
/// <item><description>31xx: paths</description></item>
/// <item><description>32xx: lines beside lines</description></item>
/// <item><description>40xx: the drafting sheet</description></item>
/// <item><description>41xx: methods, settings and blocks</description></item>
/// <item><description>42xx: skirts</description></item>
/// <item><description>44xx: sleeves and the armholes that they are set into</description></item>
/// <item><description>50xx: shaping laws and the figures of shaping tables</description></item>
/// <item><description>51xx: the text of shaping tables</description></item>
/// <item><description>60xx: pieces and their lines</description></item>
/// <item><description>61xx: sets of pieces, and cloth</description></item>
/// <item><description>62xx: sizes and grading</description></item>
/// <item><description>70xx: drawings and files</description></item>
/// <item><description>71xx: paper</description></item>
/// <item><description>72xx: DXF</description></item>
/// <item><description>73xx: JSON</description></item>
/// <item><description>80xx: cloth layout</description></item>
/// </list></remarks>
public enum DiagnosticCode
{
    // 00xx: what any call may refuse.

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

    /// <summary>A name that may not be empty or blank was.</summary>
    NameEmpty = 6,

    /// <summary>A name has no characters, too many, or some that a file or a drawing cannot carry.</summary>
    NameUnusable = 7,

    /// <summary>A label has no characters, too many, or some that a file or a drawing cannot carry.</summary>
    LabelUnusable = 8,

    // 10xx: the text of lengths, and fractions.

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

    /// <summary>A fraction of an inch has no room left: too fine, or too large.</summary>
    FractionOverflow = 1010,

    /// <summary>A fraction of an inch was asked for in metric.</summary>
    FractionNotMetric = 1011,

    // 11xx: body measurements.

    /// <summary>A body measurement is zero or less.</summary>
    BodyMeasurementNotPositive = 1101,

    /// <summary>A body measurement lies outside what human bodies measure.</summary>
    BodyMeasurementImplausible = 1102,

    /// <summary>A body measurement lies outside what human bodies measure, and would not in another unit.</summary>
    BodyMeasurementUnitSwapped = 1103,

    /// <summary>The text of a body measurement cannot be read.</summary>
    BodyMeasurementUnreadable = 1104,

    /// <summary>A body measurement that is needed was not taken.</summary>
    BodyMeasurementMissing = 1105,

    /// <summary>A body measurement of one's own has the term of a known one.</summary>
    BodyMeasurementKnown = 1106,

    // 12xx: tables of bodies.

    /// <summary>A table of bodies lacks a column that was asked for.</summary>
    BodyColumnMissing = 1201,

    /// <summary>A table of bodies has two columns of the name that was asked for.</summary>
    BodyColumnTwice = 1202,

    /// <summary>A table of bodies has no line of column names.</summary>
    BodyTableEmpty = 1203,

    /// <summary>A row of a table of bodies has more or fewer cells than its line of column names.</summary>
    BodyCellsMiscounted = 1204,

    /// <summary>A cell of a table of bodies is no measurement of a body.</summary>
    BodyCellWrong = 1205,

    /// <summary>A row of a table of bodies opens a quote and does not close it.</summary>
    BodyQuoteOpen = 1206,

    /// <summary>A row of a table of bodies is longer than any row.</summary>
    BodyRowTooLong = 1207,

    // 13xx: figures that were drawn, to be marked.

    /// <summary>A table of drawn figures has no line, or not the two columns that it needs.</summary>
    MarkingTableWrong = 1301,

    /// <summary>A row of a table of drawn figures cannot be read.</summary>
    MarkingRowWrong = 1302,

    /// <summary>A figure to be marked is none of the block's.</summary>
    MarkingFigureUnknown = 1303,

    /// <summary>A table of drawn figures has more rows than are marked.</summary>
    MarkingTableTooLarge = 1304,

    // 14xx: what is printed in another language.

    /// <summary>A sentence in another language has a place that the English one has not.</summary>
    PhrasePlaceUnknown = 1401,

    /// <summary>The tag of a language has characters that no tag has.</summary>
    LanguageUnusable = 1402,

    // 20xx: panels and their edges.

    /// <summary>A panel has too few edges to close.</summary>
    PanelNotClosed = 2001,

    /// <summary>Two edges that should meet do not.</summary>
    EdgesApart = 2002,

    /// <summary>Two edges of a panel have the same name.</summary>
    EdgeNamedTwice = 2003,

    /// <summary>An edge, or the grainline of a panel, begins where it ends.</summary>
    LineWithoutLength = 2004,

    /// <summary>The outline of a panel would cross itself.</summary>
    OutlineWouldCross = 2005,

    /// <summary>A panel was asked for an edge that it does not have.</summary>
    EdgeNotOnPanel = 2006,

    /// <summary>A place lies beyond the ends of its edge.</summary>
    PlaceOffEdge = 2007,

    /// <summary>An edge has no notch of that number.</summary>
    NotchMissing = 2008,

    /// <summary>An edge that is to say a way along another one does not meet it, or meets it at both ends.</summary>
    NoSuchNeighbour = 2009,

    /// <summary>A panel was to be scaled or stretched; panels only move, turn and mirror.</summary>
    PanelNotRigid = 2010,

    /// <summary>A panel that was asked for is not among those at hand.</summary>
    PanelMissing = 2011,

    /// <summary>Checks of a drawn block failed.</summary>
    ChecksFailed = 2012,

    /// <summary>An edge was to be moved in, or to have a strip beside it, where there is no room for that.</summary>
    StripWithoutRoom = 2013,

    // 21xx: darts, cuts and what is closed flat.

    /// <summary>A panel was asked for a dart that it does not have.</summary>
    DartNotOnEdge = 2101,

    /// <summary>The apex of a dart would lie outside the panel.</summary>
    ApexOutsidePanel = 2102,

    /// <summary>The intake of a dart is wider than the seam line it is taken out of.</summary>
    DartWiderThanEdge = 2103,

    /// <summary>A dart is wider than the stretch of seam line that it is folded onto.</summary>
    DartWiderThanStretch = 2104,

    /// <summary>A panel cannot be closed flat: the dart ends inside it.</summary>
    DartNotFlat = 2105,

    /// <summary>Darts that do not share an apex cannot be merged.</summary>
    DartsApart = 2106,

    /// <summary>A tuck was to be stitched as far as the dart, or farther.</summary>
    TuckTooLong = 2107,

    /// <summary>A dart was to be moved onto its own place.</summary>
    TransferOntoItself = 2108,

    /// <summary>A cut or a leg would cross a dart.</summary>
    CutCrossesDart = 2109,

    /// <summary>A cut would leave the panel on its way.</summary>
    CutLeavesPanel = 2110,

    /// <summary>A cut that parts a panel begins and ends on the same edge.</summary>
    CutEndsOnOwnEdge = 2111,

    /// <summary>The edge that was to stay where it is lies on both sides of a cut.</summary>
    KeptEdgeCut = 2112,

    /// <summary>An apex would be moved so near to the edge that legs of one length cannot reach across the intake.</summary>
    ApexTooNear = 2113,

    // 22xx: seams.

    /// <summary>An edge was to be sewn to itself.</summary>
    SeamOntoItself = 2201,

    /// <summary>A seam names an edge that none of the panels has.</summary>
    SeamEdgeMissing = 2202,

    /// <summary>A seam runs between marks that an edge does not have, or that stand the wrong way round.</summary>
    SeamMarkMissing = 2203,

    /// <summary>A seam over a part of an edge would have to end elsewhere, and nothing marks that end.</summary>
    SeamEndFixed = 2204,

    /// <summary>The two edges of a seam have different numbers of notches.</summary>
    NotchesUnpaired = 2205,

    /// <summary>Lines that are to be trued as one do not meet at a seam.</summary>
    LinesNotJoined = 2206,

    /// <summary>Two edges that were to be laid on each other differ in length or shape.</summary>
    EdgesNotAlike = 2207,

    // 23xx: truing.

    /// <summary>No line meets the length that a darted edge has to close to.</summary>
    WaistNotTrued = 2301,

    /// <summary>No edge has the length that truing asks for.</summary>
    TruingLengthImpossible = 2302,

    /// <summary>An edge is too short for what truing would take off its end.</summary>
    TruingTakesTooMuch = 2303,

    /// <summary>A trued line does not meet a dart that stood on it, or meets two in the wrong order.</summary>
    DartOffTruedLine = 2304,

    /// <summary>Truing was asked for conditions that contradict each other within the limits.</summary>
    ConditionsContradict = 2305,

    /// <summary>A plan has no condition of that name that asks for a length.</summary>
    ConditionUnknown = 2306,

    /// <summary>Something cannot move in that way.</summary>
    MoveNotOfItsKind = 2307,

    /// <summary>A construction does not measure as it has to, within its limits.</summary>
    ConstructionNotMet = 2308,

    /// <summary>A dart does not meet the edge that is swept across it.</summary>
    DartMissesSweep = 2309,

    /// <summary>An edge that is drawn in one sweep was to be bent by something else too.</summary>
    SweepTakesWhole = 2310,

    // 30xx: points, lines and curves.

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

    /// <summary>The points of an arc lie on one straight line.</summary>
    ArcIsStraight = 3006,

    /// <summary>A length that no curve through these ends can have.</summary>
    LengthTooShort = 3007,

    /// <summary>A length that only a curve that crosses itself or doubles back would have.</summary>
    LengthTooLong = 3008,

    /// <summary>A curve stands still and turns back: its curvature has no bound.</summary>
    CurvatureUnbounded = 3009,

    /// <summary>A point does not lie where it must.</summary>
    PointOffLine = 3010,

    /// <summary>Two points that follow one another are the same.</summary>
    PointsRepeat = 3011,

    // 31xx: paths.

    /// <summary>A path without segments.</summary>
    PathEmpty = 3101,

    /// <summary>An open path has no inside.</summary>
    PathOpen = 3102,

    /// <summary>A closed path has no end to go on from.</summary>
    PathClosed = 3103,

    /// <summary>A segment does not begin where the one before ends.</summary>
    SegmentsDoNotMeet = 3104,

    /// <summary>A segment is of another kind.</summary>
    SegmentKindWrong = 3105,

    /// <summary>A part of a path ends before it begins.</summary>
    PartEmpty = 3106,

    /// <summary>A fillet does not fit between its neighbours.</summary>
    FilletDoesNotFit = 3107,

    /// <summary>A tolerance is not greater than zero.</summary>
    ToleranceNotPositive = 3108,

    /// <summary>A tolerance is so fine that a curve would need too many chords.</summary>
    ToleranceTooFine = 3109,

    /// <summary>A caller's buffer has too little room.</summary>
    BufferTooSmall = 3110,

    // 32xx: lines beside lines.

    /// <summary>A path has no length, so that there is nothing beside it.</summary>
    OffsetOfNothing = 3201,

    /// <summary>A path was offset so far that nothing is left.</summary>
    OffsetVanishes = 3202,

    /// <summary>The pieces of an offset could not be joined.</summary>
    OffsetUnjoined = 3203,

    /// <summary>A path lies so far out that numbers there are too coarse for the tolerance of an offset.</summary>
    OffsetTooFine = 3204,

    // 40xx: the drafting sheet.

    /// <summary>A draft was asked for a landmark that was not drawn.</summary>
    LandmarkNotDrawn = 4001,

    /// <summary>A landmark was marked under a name that is taken.</summary>
    LandmarkMarkedTwice = 4002,

    /// <summary>A sheet was asked for a line that was not drawn on it.</summary>
    LineNotDrawn = 4003,

    /// <summary>A line was drawn under a name that is taken.</summary>
    LineDrawnTwice = 4004,

    /// <summary>A reason was given before any step.</summary>
    NoStepYet = 4005,

    /// <summary>The places in a sentence are not those of its words.</summary>
    NoteWordsWrong = 4006,

    /// <summary>A distance to measure off is negative.</summary>
    DistanceNegative = 4007,

    /// <summary>Two landmarks that should lie apart lie at one place.</summary>
    PointsCoincide = 4008,

    /// <summary>A side does not tell two places apart.</summary>
    SideUndecided = 4009,

    /// <summary>A landmark inside a line does not say which way to measure along it.</summary>
    WayUndecided = 4010,

    /// <summary>What was measured off does not meet its line.</summary>
    LineNotMet = 4011,

    /// <summary>A distance is longer than what is left of its line.</summary>
    DistanceOffLine = 4012,

    /// <summary>A landmark does not lie on its line.</summary>
    LandmarkOffLine = 4013,

    /// <summary>A landmark is no end of the line that is to go on.</summary>
    LandmarkNoEnd = 4014,

    /// <summary>A line does not go on as far as was asked.</summary>
    CurveEnds = 4015,

    /// <summary>Two circles of a compass do not cross.</summary>
    CompassDoesNotReach = 4016,

    /// <summary>Two lines do not cross.</summary>
    LinesDoNotCross = 4017,

    /// <summary>Two lines cross more than once.</summary>
    CrossingUndecided = 4018,

    /// <summary>A hip curve would begin and end at one level.</summary>
    HipCurveLevel = 4019,

    /// <summary>A mirror line is not straight.</summary>
    MirrorNotStraight = 4020,

    /// <summary>A dart has no intake or no length.</summary>
    DartWithoutSize = 4021,

    /// <summary>Half the intake of a dart lies beyond the end of its line.</summary>
    DartOffLine = 4022,

    /// <summary>A dart stands on another line.</summary>
    DartOnOtherLine = 4023,

    /// <summary>A line does not begin where the outline has come to.</summary>
    LineNotNext = 4024,

    /// <summary>A traced outline does not come back to its start.</summary>
    OutlineNotClosed = 4025,

    // 41xx: methods, settings and blocks.

    /// <summary>A method was asked for a setting that it does not have.</summary>
    SettingUnknown = 4101,

    /// <summary>A method has two settings of one name.</summary>
    SettingNamedTwice = 4102,

    /// <summary>A choice is none of its words.</summary>
    SettingChoiceUnknown = 4103,

    /// <summary>A method needs a setting that nobody gave a value.</summary>
    SettingNotGiven = 4104,

    /// <summary>A method ended without a panel.</summary>
    DraftWithoutPanels = 4105,

    /// <summary>A method added two panels of one name.</summary>
    PanelDraftedTwice = 4106,

    /// <summary>Something was added to a draft after its method was done.</summary>
    DraftDone = 4107,

    /// <summary>A method stopped with an exception that is no refusal.</summary>
    MethodBroke = 4108,

    /// <summary>No method of that name is known.</summary>
    MethodUnknown = 4109,

    /// <summary>A catalogue has a method or a design of that name already.</summary>
    MethodNamedTwice = 4110,

    /// <summary>A block has no alternative of that name.</summary>
    AlternativeUnknown = 4111,

    /// <summary>A design cannot be made of this block.</summary>
    DesignRefused = 4112,

    /// <summary>The pieces of one garment were asked of the block of another.</summary>
    NotThisGarment = 4113,

    /// <summary>A builder drafts by another method than the one it is made into.</summary>
    MethodOther = 4114,

    /// <summary>No design of that name and version is known.</summary>
    DesignUnknown = 4115,

    /// <summary>A method declines a body, with a reason of its own.</summary>
    MethodDeclines = 4116,

    /// <summary>A block has no figure, line or dart of a name, so nothing can be explained of it.</summary>
    FigureUnknown = 4117,

    // 42xx: skirts.

    /// <summary>The hip levels of a skirt are in the wrong order or on top of each other.</summary>
    HipLevelsCrossed = 4201,

    /// <summary>A skirt ends above its lower hip line or its yoke line.</summary>
    SkirtTooShort = 4202,

    /// <summary>A panel has no room at the hip.</summary>
    PanelTooNarrow = 4203,

    /// <summary>A dart is too short to sew or reaches past the hip line.</summary>
    DartLengthImpossible = 4204,

    /// <summary>A dart stands beyond the end of its waistline.</summary>
    DartOffWaistline = 4205,

    /// <summary>The darts of a panel turn its waistline farther than a quarter of a circle.</summary>
    DartsTurnTooFar = 4206,

    /// <summary>A waistline is so much wider than the hip that its side seam would lean out more than 45 degrees.</summary>
    WaistWiderThanHip = 4207,

    /// <summary>The centre of a waistline lies as low as the hip.</summary>
    WaistAtHip = 4208,

    /// <summary>A hem comes in so fast that its seam would lean in more than 45 degrees.</summary>
    HemTooSteep = 4209,

    /// <summary>A panel has no room at the hem.</summary>
    HemTooNarrow = 4210,

    // 44xx: sleeves and the armholes that they are set into.

    /// <summary>A text is no armhole.</summary>
    ArmholeTextWrong = 4401,

    /// <summary>The armhole of a panel lies beside neither its side seam nor its shoulder.</summary>
    ArmholeBetweenOthers = 4402,

    /// <summary>The armhole of a panel is as long as neither half of an armhole.</summary>
    ArmholeOfOtherPanel = 4403,

    /// <summary>A sleeve was to be drafted without an armhole.</summary>
    ArmholeMissing = 4404,

    // 50xx: shaping laws and the figures of shaping tables.

    /// <summary>A shaping law is known by its name only, and cannot be made from it.</summary>
    ShapingLawUnknown = 5001,

    /// <summary>A shaping table has no rows.</summary>
    ShapingTableEmpty = 5002,

    /// <summary>The difference between hip and waist lies outside a shaping table that refuses that.</summary>
    ShapingOutsideTable = 5003,

    /// <summary>A figure of a shaping table cannot be read.</summary>
    ShapingFigureUnreadable = 5004,

    /// <summary>A dart intake in a shaping table is negative.</summary>
    ShapingIntakeNegative = 5005,

    /// <summary>A figure of a shaping table is too large for any skirt.</summary>
    ShapingFigureTooLarge = 5006,

    /// <summary>The rows of a shaping table do not rise.</summary>
    ShapingDifferenceOutOfOrder = 5007,

    /// <summary>Two rows of a shaping table are for the same difference.</summary>
    ShapingDifferenceTwice = 5008,

    /// <summary>The name of a shaping table has more than one line.</summary>
    ShapingNameBroken = 5009,

    // 51xx: the text of shaping tables.

    /// <summary>A shaping table in text has a directive that is not known.</summary>
    ShapingDirectiveUnknown = 5101,

    /// <summary>A directive of a shaping table in text has a value that is not known.</summary>
    ShapingDirectiveWrong = 5102,

    /// <summary>A shaping table in text says the same thing twice.</summary>
    ShapingDirectiveTwice = 5103,

    /// <summary>A directive of a shaping table in text stands below the column names.</summary>
    ShapingDirectiveLate = 5104,

    /// <summary>A shaping table in text has a column that is not known.</summary>
    ShapingColumnUnknown = 5105,

    /// <summary>A shaping table in text has the same column twice.</summary>
    ShapingColumnTwice = 5106,

    /// <summary>A shaping table in text lacks a column.</summary>
    ShapingColumnMissing = 5107,

    /// <summary>A row of a shaping table in text has too many or too few figures.</summary>
    ShapingCellsMiscounted = 5108,

    /// <summary>A shaping table in text does not say its unit.</summary>
    ShapingUnitMissing = 5109,

    /// <summary>A quoted cell of a shaping table in text does not end.</summary>
    ShapingQuoteOpen = 5110,

    /// <summary>A shaping table has more text, more rows or a longer name than any table of the trade.</summary>
    ShapingTableTooLarge = 5111,

    // 60xx: pieces and their lines.

    /// <summary>A seam allowance is negative, or too wide for any garment.</summary>
    AllowanceOutOfRange = 6001,

    /// <summary>A seam line crosses or touches itself, so that it has no outside.</summary>
    SeamLineCrosses = 6002,

    /// <summary>A seam allowance is so wide that nothing is left of an edge.</summary>
    EdgeVanishes = 6003,

    /// <summary>A cut line would cross itself.</summary>
    CutLineCrosses = 6004,

    /// <summary>The cut line of an edge with darts comes nearer to another edge than the narrower allowance of the two.</summary>
    CutLineTooNear = 6005,

    /// <summary>A corner was asked for between edges that do not meet.</summary>
    CornerBetweenStrangers = 6006,

    /// <summary>An edge that is to lie on the fold is not straight.</summary>
    FoldNotStraight = 6007,

    /// <summary>A piece was to be unfolded that lies on no fold.</summary>
    NothingToUnfold = 6008,

    /// <summary>A text to be printed on a piece has a character that cannot be printed.</summary>
    TextNotPrintable = 6009,

    /// <summary>A text to be printed on a piece is too long for a line.</summary>
    TextTooLong = 6010,

    /// <summary>A facing finds no room on its panel.</summary>
    FacingWithoutRoom = 6011,

    // 61xx: sets of pieces, and cloth.

    /// <summary>A drawing or a file was asked for without pieces.</summary>
    NoPieces = 6101,

    /// <summary>Two pieces of a set have the same name.</summary>
    PieceNamedTwice = 6102,

    /// <summary>A set was asked for a piece that it does not have.</summary>
    PieceNotInSet = 6103,

    /// <summary>A piece is wider than the cloth that it is to be cut from.</summary>
    PieceWiderThanCloth = 6104,

    // 62xx: sizes and grading.

    /// <summary>A row of a size table is no size.</summary>
    SizeRowWrong = 6201,

    /// <summary>A row of a size table has no name for its size.</summary>
    SizeRowWithoutName = 6202,

    /// <summary>A size table has more sizes than any.</summary>
    SizeTableTooLong = 6203,

    /// <summary>A size table has fewer than two sizes.</summary>
    SizeTableTooShort = 6204,

    /// <summary>A body of a size table has no name.</summary>
    SizeWithoutName = 6205,

    /// <summary>Two sizes of a table have the same name.</summary>
    SizeTwice = 6206,

    /// <summary>A size of a table was measured otherwise than the first.</summary>
    SizeMeasuredOtherwise = 6207,

    /// <summary>A size table was asked for a size that it does not have.</summary>
    SizeUnknown = 6208,

    /// <summary>A size table was asked for a measurement that it does not have.</summary>
    SizeMeasurementMissing = 6209,

    /// <summary>A measurement does not grow from each size to the next.</summary>
    SizesDoNotGrow = 6210,

    /// <summary>A body has no measurement that a size table has.</summary>
    SizeNothingShared = 6211,

    /// <summary>A size of a run cannot be drafted.</summary>
    SizeRefused = 6212,

    /// <summary>Two sizes of a run have other panels, edges or darts.</summary>
    SizesMadeOtherwise = 6213,

    /// <summary>A panel lacks the place that sizes were to be laid on.</summary>
    StackPlaceMissing = 6214,

    /// <summary>A panel was to be graded by rules that name no panel like it.</summary>
    GradePanelUnknown = 6215,

    /// <summary>A panel to be graded is mirrored against that of the rules.</summary>
    GradePanelMirrored = 6216,

    /// <summary>The name of a size is too long for a label.</summary>
    SizeNameTooLong = 6217,

    // 70xx: drawings and files.

    /// <summary>A drawing has two layers of one name.</summary>
    LayerTwice = 7001,

    /// <summary>A file could not be written.</summary>
    FileNotWritten = 7002,

    /// <summary>A name that cannot be the name of a file in a folder.</summary>
    FileNameUnusable = 7003,

    /// <summary>A path holds a character or a name that no file can have.</summary>
    FilePathUnusable = 7004,

    /// <summary>Two files of one name.</summary>
    FileTwice = 7005,

    /// <summary>A folder has the name that a file was to have.</summary>
    FolderInTheWay = 7006,

    // 71xx: paper.

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

    /// <summary>A lesson is to be printed on paper that is too narrow for a picture with its words.</summary>
    PaperTooNarrow = 7107,

    /// <summary>A drawing is larger than the paper at the small scale that was asked for.</summary>
    ReducedTooLarge = 7108,

    // 72xx: DXF.

    /// <summary>A DXF file was asked for in a unit that the standard does not know.</summary>
    DxfUnitUnknown = 7201,

    /// <summary>A DXF file would hold a piece twice.</summary>
    DxfPieceTwice = 7202,

    // 73xx: JSON.

    /// <summary>A text is not JSON.</summary>
    JsonMalformed = 7301,

    /// <summary>A JSON text is larger, deeper or longer than a pattern can be.</summary>
    JsonTooLarge = 7302,

    /// <summary>A JSON text is a file of another format.</summary>
    JsonFormatUnknown = 7303,

    /// <summary>A JSON text is of a version that this library does not know.</summary>
    JsonVersionUnknown = 7304,

    /// <summary>A property that a pattern needs is missing from a JSON text.</summary>
    JsonPropertyMissing = 7305,

    /// <summary>A JSON text has a property that no pattern has.</summary>
    JsonPropertyUnknown = 7306,

    /// <summary>A JSON text says a property, an edge, a corner or a cloth twice.</summary>
    JsonSaidTwice = 7307,

    /// <summary>A value of a JSON text has another type, or lies outside its range.</summary>
    JsonValueWrong = 7308,

    /// <summary>What a JSON text says makes no body, block or piece.</summary>
    JsonContentRefused = 7309,

    /// <summary>The lines that a JSON text gives for a piece are not those that the piece draws.</summary>
    JsonDrawnDiffers = 7310,

    /// <summary>A pattern has something that a JSON file cannot hold.</summary>
    JsonNotWritable = 7311,

    /// <summary>A block drafted anew has other panels than the file that its options come from.</summary>
    DraftDiffers = 7312,

    /// <summary>What a pattern file says of its points and lines as trued does not follow from its draft and its panels.</summary>
    JsonTruedDiffers = 7313,

    // 80xx: cloth layout.

    /// <summary>The outline of a piece to be laid meets itself.</summary>
    LayOutlineCrosses = 8001,

    /// <summary>The outline of a piece to be laid covers next to nothing.</summary>
    LayOutlineTooSmall = 8002,

    /// <summary>The outline of a piece to be laid has a corner too far from its origin.</summary>
    LayOutlineTooFar = 8003,

    /// <summary>No piece is cut from the cloth that pieces were to be laid on.</summary>
    LayNothing = 8004,

    /// <summary>A piece lies on a fold that does not run along its grain, or reaches across it.</summary>
    LayFoldOffGrain = 8005,

    /// <summary>A time limit is negative.</summary>
    LayTimeNegative = 8006,

    /// <summary>A table of outlines is longer than is read.</summary>
    LayTableTooLarge = 8007,

    /// <summary>A table of outlines cannot be read.</summary>
    LayTableWrong = 8008,
}
