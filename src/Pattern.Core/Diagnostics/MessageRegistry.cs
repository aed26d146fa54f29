using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;

namespace Pattern.Core.Diagnostics;

/// <summary>The one place where codes, severities and wordings live.</summary>
/// <remarks>A template says what is wrong, where, how much was measured and allowed, and what to do.</remarks>
internal static class MessageRegistry
{
    /// <summary>So many characters of what others wrote a message repeats at the most.</summary>
    internal const int MostRepeated = 200;

    private static readonly Dictionary<DiagnosticCode, (Severity Severity, string Template)> Messages = new()
    {
        // 00xx: what any call may refuse.
        [DiagnosticCode.ValueIsNull] = (Severity.Error, "{0} is missing. Pass a value."),
        [DiagnosticCode.QuantityOutOfRange] = (Severity.Error, "{0} is {1}; allowed is {2} to {3}. Pass a value in that range."),
        [DiagnosticCode.NumberNotFinite] = (Severity.Error, "{0} is not a finite number. Pass a real value."),
        [DiagnosticCode.CountOutOfRange] = (Severity.Error, "{0} is {1}; allowed is {2} to {3}. Pass a number in that range."),
        [DiagnosticCode.ChoiceUnknown] = (Severity.Error, "{0} is {1}, which is not one of the named choices. Use a named value."),
        [DiagnosticCode.NameEmpty] = (Severity.Error, "{0} is empty. Give it a name that a reader of the draft will understand."),
        [DiagnosticCode.NameUnusable] = (Severity.Error, "{0} is \"{1}\". Use 1 to 40 lower-case letters, digits, blanks or hyphens, beginning with a letter."),
        [DiagnosticCode.LabelUnusable] = (Severity.Error, "{0} is \"{1}\". Use 1 to 40 letters, digits, blanks or hyphens, beginning with a letter."),

        // 10xx: the text of lengths, and fractions.
        [DiagnosticCode.ClothUnitUnknown] = (Severity.Error, "{0} is {1}, which cloth is not measured in. Use inch, foot, yard, millimetre, centimetre or metre."),
        [DiagnosticCode.LengthTextEmpty] = (Severity.Error, "The text of a length is empty. Write one such as 4 5/8 in or 11.75 cm."),
        [DiagnosticCode.LengthTextTooLong] = (Severity.Error, "\"{0}\" is no length: it has {1} characters; allowed are {2}. Write one such as 4 5/8 in or 11.75 cm."),
        [DiagnosticCode.LengthNumberExpected] = (Severity.Error, "\"{0}\" is no length: a number was expected at character {1}, found {2}. Write one such as 4 5/8 in or 11.75 cm."),
        [DiagnosticCode.LengthAmbiguous] = (Severity.Error, "\"{0}\" can be read in two ways at character {1}: {2}."),
        [DiagnosticCode.LengthFractionWrong] = (Severity.Error, "\"{0}\" holds a wrong fraction at character {1}: {2}."),
        [DiagnosticCode.LengthUnitUnknown] = (Severity.Error, "\"{0}\" names an unknown unit at character {1}: {2}. Use in, cm, mm or m, or leave the unit out."),
        [DiagnosticCode.LengthTextGoesOn] = (Severity.Error, "\"{0}\" goes on after its length at character {1}: {2}. Write one number and one unit."),
        [DiagnosticCode.LengthTooLarge] = (Severity.Error, "\"{0}\" is too large at character {1}: cloth is measured up to {2}. Write a shorter length."),
        [DiagnosticCode.FractionOverflow] = (Severity.Error, "A fraction of an inch can hold {0} parts of an inch and {1} inches at most; the result needs more. Round it to the tape first."),
        [DiagnosticCode.FractionNotMetric] = (Severity.Error, "{0} is metric; a tape fraction counts parts of an inch. Use inches, or a Length."),

        // 11xx: body measurements.
        [DiagnosticCode.BodyMeasurementNotPositive] = (Severity.Error, "{0} is {1}; a body measures more than nothing. Measure again, or leave it out."),
        [DiagnosticCode.BodyMeasurementImplausible] = (Severity.Error, "{0} is {1}; human bodies measure {2} to {3}. Measure again, and look at the unit."),
        [DiagnosticCode.BodyMeasurementUnitSwapped] = (Severity.Error, "{0} is {1}; human bodies measure {2} to {3}. Did you mean {4}? Then write the unit."),
        [DiagnosticCode.BodyMeasurementUnreadable] = (Severity.Error, "{0} cannot be read. {1} Write this measurement again."),
        [DiagnosticCode.BodyMeasurementMissing] = (Severity.Error, "{0} is needed for {1}, and was not measured{2}. Take it, and add it to the body measurements."),
        [DiagnosticCode.BodyMeasurementKnown] = (Severity.Error, "{0} is a measurement that the library knows. Use that one, or another term."),

        // 12xx: tables of bodies.
        [DiagnosticCode.BodyColumnMissing] = (Severity.Error, "The table of bodies has no column \"{0}\"; its first line names {1}. Name one of these."),
        [DiagnosticCode.BodyColumnTwice] = (Severity.Error, "The table of bodies has {1} columns \"{0}\". Give each its own name."),
        [DiagnosticCode.BodyTableEmpty] = (Severity.Error, "The table of bodies has 0 lines. Its first line names the columns, each further line is a body."),
        [DiagnosticCode.BodyCellsMiscounted] = (Severity.Error, "Row {0}, line {1}, has {2} cells; the line of column names has {3}. Look for a comma too many or too few; a cell with a comma in it stands in quotes."),
        [DiagnosticCode.BodyCellWrong] = (Severity.Error, "Row {0}, line {1}, column {2} ({3}): {4} Correct this cell."),
        [DiagnosticCode.BodyQuoteOpen] = (Severity.Error, "Row {0}, line {1}, column {2} opens a quote and does not close it. Close it, or write it twice where it is part of the text."),
        [DiagnosticCode.BodyRowTooLong] = (Severity.Error, "Row {0}, line {1}, has more than {2} characters. Look whether its line ends are whole."),

        // 13xx: figures that were drawn, to be marked.
        [DiagnosticCode.MarkingTableWrong] = (Severity.Error, "The table of drawn figures begins with \"{0}\". Its first line is figure,value; each further line is a figure and what was drawn."),
        [DiagnosticCode.MarkingRowWrong] = (Severity.Error, "Row {0}, line {1}, column {2}: {3} This row is not marked, the rest is."),
        [DiagnosticCode.MarkingFigureUnknown] = (Severity.Error, "\"{0}\" is no figure of the {1}. Name a figure of its steps, an edge such as {2}, a dart, a line, or two landmarks such as {3}."),
        [DiagnosticCode.MarkingTableTooLarge] = (Severity.Error, "The table of drawn figures has more than {0} rows. Mark one sheet at a time."),

        // 14xx: what is printed in another language.
        [DiagnosticCode.PhrasePlaceUnknown] = (Severity.Error, "\"{0}\" has a place {{{1}}}, which \"{2}\" has not. Use the places of the English sentence."),
        [DiagnosticCode.LanguageUnusable] = (Severity.Error, "\"{0}\" is no tag of a language; allowed are letters, digits and hyphens. Write one like en or pt-BR."),

        // 20xx: panels and their edges.
        [DiagnosticCode.PanelNotClosed] = (Severity.Error, "Panel {0} has {1} edges; it takes 2 or more. Add edges until the last ends where the first begins."),
        [DiagnosticCode.EdgesApart] = (Severity.Error, "On panel {0} edge {1} ends {3} away from where edge {2} begins. Give both the same point."),
        [DiagnosticCode.EdgeNamedTwice] = (Severity.Error, "Panel {0} has two edges named {1}. Give one of them another name."),
        [DiagnosticCode.LineWithoutLength] = (Severity.Error, "On panel {0} {1} is {2} long; it needs a length. Give it two different points, or leave it out."),
        [DiagnosticCode.OutlineWouldCross] = (Severity.Error, "The outline of panel {0} would cross itself, first at {1}, on edges {2} and {3}. Take a smaller amount or another place."),
        [DiagnosticCode.EdgeNotOnPanel] = (Severity.Error, "Panel {0} has no edge {1}; it has {2}. Ask for one of these."),
        [DiagnosticCode.PlaceOffEdge] = (Severity.Error, "{0} along edge {1} of panel {2} lies off the edge, whose sewn length is {3}. Choose a place between its ends."),
        [DiagnosticCode.NotchMissing] = (Severity.Error, "There is no notch {0} on edge {1} of panel {2}; it has {3}. Ask for one of these, counted from 1."),
        [DiagnosticCode.NoSuchNeighbour] = (Severity.Error, "On panel {0} edge {1} begins at {2} and ends at {3}, so {4} does not say which of its ends is meant. Name the one or the other; where both are the same, say it from the start of the edge."),
        [DiagnosticCode.PanelNotRigid] = (Severity.Error, "Panel {0} cannot be stretched or scaled. Move, turn or mirror it; to change its size, draft again."),
        [DiagnosticCode.PanelMissing] = (Severity.Error, "There is no panel {0} among {1}. Ask for one of these."),
        [DiagnosticCode.ChecksFailed] = (Severity.Error, "{0} of {1} checks failed: {2}. Look at the drawing and change the measurements or options; do not cut it."),
        [DiagnosticCode.StripWithoutRoom] = (Severity.Error, "Panel {0} has no room beside its edge {1} for a strip {2} deep: the edges on either side have {3} free of darts and bends. Make it less deep."),

        // 21xx: darts, cuts and what is closed flat.
        [DiagnosticCode.DartNotOnEdge] = (Severity.Error, "There is no {0} on panel {1}; that edge has {2} darts. Ask for one of these, counted from 1."),
        [DiagnosticCode.ApexOutsidePanel] = (Severity.Error, "The apex {0} of a dart on edge {1} lies outside panel {2}. Make the dart shorter, or swing it less."),
        [DiagnosticCode.DartWiderThanEdge] = (Severity.Error, "Dart intake {0} is wider than the stretch of edge {1} on panel {2}, which has room for {3} there. Reduce the intake or split the dart."),
        [DiagnosticCode.DartWiderThanStretch] = (Severity.Error, "The dart with its apex at {0} is {1} wide, too wide for the seam line that it is folded onto. Reduce its intake, or press it the other way."),
        [DiagnosticCode.DartNotFlat] = (Severity.Error, "{0} of panel {1} ends inside the panel, {2} away from the nearest edge, so the panel cannot be closed flat. Move the dart to another edge, or close the edge alone."),
        [DiagnosticCode.DartsApart] = (Severity.Error, "{0} and {1} of panel {2} have apexes {3} apart, so they cannot be merged. Bring their apexes together first."),
        [DiagnosticCode.TuckTooLong] = (Severity.Error, "{0} of panel {1} was to be stitched over {2}; its legs are {3} long. Stitch less, or keep the dart."),
        [DiagnosticCode.TransferOntoItself] = (Severity.Error, "{0} of panel {1} already stands {2} along its edge. Choose another place."),
        [DiagnosticCode.CutCrossesDart] = (Severity.Error, "A cut from {0} to {1} on panel {2} would cross {3}. Choose another place, or move that dart first."),
        [DiagnosticCode.CutLeavesPanel] = (Severity.Error, "A cut from {0} to {1} would leave panel {2} at {3}, at edge {4}. Choose two places between which a straight line stays on the panel."),
        [DiagnosticCode.CutEndsOnOwnEdge] = (Severity.Error, "A cut that parts panel {0} begins and ends on edge {1}. End it on another edge."),
        [DiagnosticCode.KeptEdgeCut] = (Severity.Error, "Edge {0} of panel {1} lies on both sides of the cut, so it cannot stay as a whole. Keep one of these: {2}."),
        [DiagnosticCode.ApexTooNear] = (Severity.Error, "The apex {0} of {1} on panel {2} would stand {3} from the edge end of a leg; the legs need more than {4} to reach across the intake. Move it farther into the panel, or take in less."),

        // 22xx: seams.
        [DiagnosticCode.SeamOntoItself] = (Severity.Error, "Edge {0} is sewn to itself. Name the edge that it is sewn to."),
        [DiagnosticCode.SeamEdgeMissing] = (Severity.Error, "There is no edge {0} for the seam {1} on the panels {2}. Pass the panel that carries it, or say its new name in the seam plan."),
        [DiagnosticCode.SeamMarkMissing] = (Severity.Error, "The seam {0} runs between marks that its edges do not have in that order. Look at the notches and the length of both edges."),
        [DiagnosticCode.SeamEndFixed] = (Severity.Error, "The seam {0} ends at a fixed place on edge {1} of panel {2}, and would have to become {3} longer there. Mark that place with a notch, or let the other edge give way."),
        [DiagnosticCode.NotchesUnpaired] = (Severity.Error, "The seam {0} has {1} notches on one edge and {2} on the other. Add the missing notches, or take off those that have no twin."),
        [DiagnosticCode.LinesNotJoined] = (Severity.Error, "The lines {0} and {1} do not meet at one end of a seam of the plan. Name edges that lie next to both edges of a seam."),
        [DiagnosticCode.EdgesNotAlike] = (Severity.Error, "The edges {0} and {1} do not lie on each other: they are {2} apart, allowed is {3}, and neither may have a dart. True them to one length and shape first."),

        // 23xx: truing.
        [DiagnosticCode.WaistNotTrued] = (Severity.Error, "No waistline on panel {0} closes to {1} and meets a side seam of {2}. Take in less with darts: ask for less intake or more side shaping, give more waist ease or less hip ease, or make the darts longer."),
        [DiagnosticCode.TruingLengthImpossible] = (Severity.Error, "Edge {0} of panel {1} cannot be trued to {2}: moving its end as allowed leads to {3} at best. Ask for another length, or let the end move another way."),
        [DiagnosticCode.TruingTakesTooMuch] = (Severity.Error, "Truing would take {0} off the {1} of edge {2} on panel {3}, whose last stretch there is {4} long. Let the other edge of the seam give way, or hold another mark."),
        [DiagnosticCode.DartOffTruedLine] = (Severity.Error, "The trued line of edge {0} on panel {1} does not meet dart {2} in its place. Blend the edge instead of redrawing it in one sweep, or move the dart."),
        [DiagnosticCode.ConditionsContradict] = (Severity.Error, "These conditions contradict each other: {0}. At its limit stands: {1}. Leave one of them out, or allow more room."),
        [DiagnosticCode.ConditionUnknown] = (Severity.Error, "No condition named \"{0}\" asks for a length; those that do are {1}. Ask for one of these."),
        [DiagnosticCode.MoveNotOfItsKind] = (Severity.Error, "The {0} cannot be told {1}. Only corners and darts move along a line, only corners along a curve, and only a bend keeps its directions."),
        [DiagnosticCode.ConstructionNotMet] = (Severity.Error, "The {0} cannot be drawn as asked: {1}. At its limit stands: {2}. Ask for another measure, or allow more room."),
        [DiagnosticCode.DartMissesSweep] = (Severity.Error, "A dart does not meet edge {0} on its way. Place it between the ends of the edge, or make it narrower."),
        [DiagnosticCode.SweepTakesWhole] = (Severity.Error, "The {0} is drawn in one sweep, so the {1} has no say in it. Let only one of them move."),

        // 30xx: points, lines and curves.
        [DiagnosticCode.DirectionUndefined] = (Severity.Error, "{0} is a single point and has no direction there. Pass something with a length."),
        [DiagnosticCode.ParameterOutOfRange] = (Severity.Error, "{0} is {1}; a curve parameter runs from 0 to 1. Pass a number in that range."),
        [DiagnosticCode.ScaleNotPositive] = (Severity.Error, "{0} is {1}; a scale factor must be greater than 0. Mirror over a line to turn a shape over."),
        [DiagnosticCode.EndsCoincide] = (Severity.Error, "The curve would begin and end at the same point. Move one end, or draw it in two curves."),
        [DiagnosticCode.SweepTooLarge] = (Severity.Error, "{0} is {1}; an arc goes round at most once, 360 degrees either way. Pass a smaller angle."),
        [DiagnosticCode.ArcIsStraight] = (Severity.Error, "The points of the arc lie on one straight line, or two of them are the same. Draw a line, or move a point."),
        [DiagnosticCode.LengthTooShort] = (Severity.Error, "The curve is to be {0} long, but from end to end with these directions it is at least {1}. Ask for a longer curve, or move the ends closer."),
        [DiagnosticCode.LengthTooLong] = (Severity.Error, "The curve is to be {0} long, but beyond {1} it would cross itself or double back. Ask for a shorter curve, or turn the directions farther apart."),
        [DiagnosticCode.CurvatureUnbounded] = (Severity.Error, "The curve has a cusp at t = {0}, {1}: its curvature has no bound there. Move a control point."),
        [DiagnosticCode.PointOffLine] = (Severity.Error, "{0} lies {1} off the line, allowed is {2}. Take its foot on the line first."),
        [DiagnosticCode.PointsRepeat] = (Severity.Error, "Point {0} is the same as the one before, {1}. Leave one of them out."),

        // 31xx: paths.
        [DiagnosticCode.PathEmpty] = (Severity.Error, "The path has no segments. Pass at least one."),
        [DiagnosticCode.PathOpen] = (Severity.Error, "The path is open, so that nothing is inside or outside it. Close it first."),
        [DiagnosticCode.PathClosed] = (Severity.Error, "The path is closed and cannot be joined to anything. Go on from an open path."),
        [DiagnosticCode.SegmentsDoNotMeet] = (Severity.Error, "Segment {0} begins at {1}, but the one before ends at {2}, {3} away. Move it there, or put a line between."),
        [DiagnosticCode.SegmentKindWrong] = (Severity.Error, "The segment is of kind {0}, not {1}. Look at its Kind first."),
        [DiagnosticCode.PartEmpty] = (Severity.Error, "The part from {0} to {1} has no length. Pass an end that lies beyond the beginning."),
        [DiagnosticCode.FilletDoesNotFit] = (Severity.Error, "A fillet of radius {0} does not fit at {1}. Pass a smaller radius."),
        [DiagnosticCode.ToleranceNotPositive] = (Severity.Error, "{0} is {1}; a tolerance must be greater than 0. Pass a larger one."),
        [DiagnosticCode.ToleranceTooFine] = (Severity.Error, "{0} is {1}; this curve would need about {2} chords, and at most {3} are made. Pass a larger one."),
        [DiagnosticCode.BufferTooSmall] = (Severity.Error, "{0} has room for {1}, but {2} are needed. Pass a larger buffer."),

        // 32xx: lines beside lines.
        [DiagnosticCode.OffsetOfNothing] = (Severity.Error, "The path has no length, so that there is nothing beside it. Pass a path with a length."),
        [DiagnosticCode.OffsetVanishes] = (Severity.Error, "Nothing is left of the path when it is offset by {0}. Use a narrower offset."),
        [DiagnosticCode.OffsetUnjoined] = (Severity.Error, "The offset by {0} does not join up near {1}. Use another width, or a coarser tolerance than {2}."),
        [DiagnosticCode.OffsetTooFine] = (Severity.Error, "The offset by {0} cannot be held to {1} for a path that reaches {2} from the origin; allowed is {3}. Look at its coordinates, move it nearer, or pass a coarser tolerance."),

        // 40xx: the drafting sheet.
        [DiagnosticCode.LandmarkNotDrawn] = (Severity.Error, "No landmark {0} was drawn. Look at the sheet's landmarks for those that were."),
        [DiagnosticCode.LandmarkMarkedTwice] = (Severity.Error, "{0} is marked already, at {1}. Give the new landmark another name."),
        [DiagnosticCode.LineNotDrawn] = (Severity.Error, "No line {0} was drawn on this sheet. Look at the sheet's lines for those that were."),
        [DiagnosticCode.LineDrawnTwice] = (Severity.Error, "The {0} is drawn already, from {1} to {2}. Give the new line another name."),
        [DiagnosticCode.NoStepYet] = (Severity.Error, "There is no step to give a reason for. Draw first, then say why."),
        [DiagnosticCode.NoteWordsWrong] = (Severity.Error, "\"{0}\" needs a place {{0}}, {{1}} and so on for each of its {1} words, and no other braces. Write the sentence with these places."),
        [DiagnosticCode.DistanceNegative] = (Severity.Error, "{0} cannot be measured off from {1}; allowed is 0 or more. Measure the other way."),
        [DiagnosticCode.PointsCoincide] = (Severity.Error, "{0} and {1} lie at one place, so no line leads from one to the other. Move one of them."),
        [DiagnosticCode.SideUndecided] = (Severity.Error, "\"{0}\" does not tell which way is meant at {1}: both lie as far to that side. Say another side."),
        [DiagnosticCode.WayUndecided] = (Severity.Error, "From {0} the {1} runs both ways. Name a landmark on it to measure toward."),
        [DiagnosticCode.LineNotMet] = (Severity.Error, "The {0} is not met from {1}. Measure less, or draw the line farther."),
        [DiagnosticCode.DistanceOffLine] = (Severity.Error, "{0} along the {1} from {2} lies beyond its end; {3} is left. Measure less, or go on along the line first."),
        [DiagnosticCode.LandmarkOffLine] = (Severity.Error, "{0} lies {1} off the {2}. Mark it on the line."),
        [DiagnosticCode.LandmarkNoEnd] = (Severity.Error, "{0} is no end of the {1}, which runs from {2} to {3}. Go on from one of these."),
        [DiagnosticCode.CurveEnds] = (Severity.Error, "The {0} does not go on from {1} for {2}: an arc goes round once at most, and a line without length leads nowhere. Go on less far."),
        [DiagnosticCode.CompassDoesNotReach] = (Severity.Error, "{0} and {1} lie {2} apart; with these two distances they may lie {3} to {4} apart. Change a distance."),
        [DiagnosticCode.LinesDoNotCross] = (Severity.Error, "The {0} and the {1} do not cross; their ends are {2} away. Go on along one of them first."),
        [DiagnosticCode.CrossingUndecided] = (Severity.Error, "The {0} and the {1} cross {2} times. Say which side is meant."),
        [DiagnosticCode.HipCurveLevel] = (Severity.Error, "{0} and {1} lie at one level, and a hip curve rises or falls. Move one of them up or down."),
        [DiagnosticCode.MirrorNotStraight] = (Severity.Error, "The {0} is not straight, so nothing can be mirrored over it. Join two landmarks and mirror over that line."),
        [DiagnosticCode.DartWithoutSize] = (Severity.Error, "A dart at {0} has an intake or a length of {1}; allowed is greater than 0. Leave the dart out, or make it larger."),
        [DiagnosticCode.DartOffLine] = (Severity.Error, "Half the intake of the dart at {0}, {1}, reaches beyond the {2}, which leaves {3} on that side. Make the dart narrower, or move it."),
        [DiagnosticCode.DartOnOtherLine] = (Severity.Error, "The dart at {0} stands on the {1}, not on the {2}. Name the darts of that line."),
        [DiagnosticCode.LineNotNext] = (Severity.Error, "Tracing {0} has come to {1}; the {2} ends {3} away from there. Name the lines in order around the panel, head to tail."),
        [DiagnosticCode.OutlineNotClosed] = (Severity.Error, "Tracing {0} ends in {1}, {2} away from {3}, where it began. Trace on to its start."),

        // 41xx: methods, settings and blocks.
        [DiagnosticCode.SettingUnknown] = (Severity.Error, "The method {0} has no setting {1}; it has {2}. Use one of these."),
        [DiagnosticCode.SettingNamedTwice] = (Severity.Error, "The method {0} has two settings named {1}. Give one of them another name."),
        [DiagnosticCode.SettingChoiceUnknown] = (Severity.Error, "{0} is \"{1}\"; allowed is {2}. Choose one of these."),
        [DiagnosticCode.SettingNotGiven] = (Severity.Error, "The setting {0} of the method {1} has no value. Give it one, or let the method ask whether it is given."),
        [DiagnosticCode.DraftWithoutPanels] = (Severity.Error, "The method {0} ended without a panel. Add at least one to the draft."),
        [DiagnosticCode.PanelDraftedTwice] = (Severity.Error, "The method {0} adds the panel {1} twice. Give one of them another name."),
        [DiagnosticCode.DraftDone] = (Severity.Error, "The draft of the {0} is done, and nothing can be added to it. Draft again, and add it while the method drafts."),
        [DiagnosticCode.MethodBroke] = (Severity.Error, "The draft broke off with {0}: {1} Look at the method: a body that it cannot draft it should refuse with a reason."),
        [DiagnosticCode.MethodUnknown] = (Severity.Error, "The method {0} is not known; known are: {1}. Pass a catalogue that has it."),
        [DiagnosticCode.MethodNamedTwice] = (Severity.Error, "The catalogue has a {0} already. Give one of them another name."),
        [DiagnosticCode.AlternativeUnknown] = (Severity.Error, "The {0} has no alternative {1}; it has: {2}. Ask for one of these."),
        [DiagnosticCode.DesignRefused] = (Severity.Error, "The design {0} cannot be made of the {1}. {2} The guide of designs says what goes with what."),
        [DiagnosticCode.NotThisGarment] = (Severity.Error, "The {0} is no {1} block that was drafted here, so it has no pieces of one. Draft a {1} block first; one that was read from a file is drafted again from its document."),
        [DiagnosticCode.MethodOther] = (Severity.Error, "The builder drafts by {0}, not by {1}. Pass one of that method, or go on with the builder that it is."),
        [DiagnosticCode.DesignUnknown] = (Severity.Error, "The design {0} is not known. Read the file with a catalogue that has it, or draft without designs."),
        [DiagnosticCode.MethodDeclines] = (Severity.Error, "The {0} declines this body: {1} Measured {2}, allowed {3}. Change a setting, or take another method."),
        [DiagnosticCode.FigureUnknown] = (Severity.Error, "The {0} has no {1} named \"{2}\"; it has: {3}. Name one of these; a block that was read from a file keeps no steps, so draft it again."),

        // 42xx: skirts.
        [DiagnosticCode.HipLevelsCrossed] = (Severity.Error, "The upper hip line lies at {0} and the lower hip line at {1} below the waist; the lower must lie at least 1 mm below the upper. Change the levels."),
        [DiagnosticCode.SkirtTooShort] = (Severity.Error, "The skirt is {0} long and ends above its lowest level at {1}; allowed is {2} or more. Make it longer, or raise the levels."),
        [DiagnosticCode.PanelTooNarrow] = (Severity.Error, "Panel {0} would be {1} wide at the hip; allowed is {2} or more. Look at the measurements and at how much wider the shaping table makes the back."),
        [DiagnosticCode.DartLengthImpossible] = (Severity.Error, "A dart on panel {0} is {1} long; allowed is {2} to {3}, the lower hip line. Change the dart length or the shortening."),
        [DiagnosticCode.DartOffWaistline] = (Severity.Error, "A dart on panel {0} reaches {1} from the centre, beyond the end of the waistline at {2}. Use fewer or narrower darts."),
        [DiagnosticCode.DartsTurnTooFar] = (Severity.Error, "The darts of panel {0} take in {1} and turn its waistline by {2}; allowed is {3}, a quarter of a circle, which these lengths reach at {4}. Let the darts take in less, by more side shaping, more waist ease or less hip ease, or make them longer."),
        [DiagnosticCode.WaistWiderThanHip] = (Severity.Error, "The waistline of panel {0} is {1} wide with {2} of darts open, where the hip, less what the centre comes in, has {3}; allowed is {4}, or the side seam would lean out more than 45 degrees. Let darts and centre take in less, or give less waist ease or more hip ease."),
        [DiagnosticCode.WaistAtHip] = (Severity.Error, "{0} lies {1} below the waist level; allowed is {2}, 10 mm above the upper hip line at {3}. Lower it less, or lower the hip lines."),
        [DiagnosticCode.HemTooSteep] = (Severity.Error, "The hem of panel {0} would come in by {1} on the {2} from hip line to hem; allowed is half of that, {3}. Bring it in less, or make the skirt longer."),
        [DiagnosticCode.HemTooNarrow] = (Severity.Error, "The hem of panel {0} would be {1} wide; allowed is {2} or more. Bring side or centre back in less."),

        // 44xx: sleeves and the armholes that they are set into.
        [DiagnosticCode.ArmholeTextWrong] = (Severity.Error, "The text of an armhole has {1} in line {0}; expected was {2}. Take the text from a pattern file, or say the armhole by its panels."),
        [DiagnosticCode.ArmholeBetweenOthers] = (Severity.Error, "The armhole of panel {0} lies between the edges {1} and {2}; one of them has to be its side or its shoulder. Name it so, or give the line from the side seam to the shoulder."),
        [DiagnosticCode.ArmholeOfOtherPanel] = (Severity.Error, "The armhole of panel {0} measures {1}; that of this sleeve measures {2} in front and {3} behind. Take the armhole anew, from this panel."),
        [DiagnosticCode.ArmholeMissing] = (Severity.Error, "The {0} needs an armhole, and has none. Begin with SleeveBlock.For and an armhole."),

        // 50xx: shaping laws and the figures of shaping tables.
        [DiagnosticCode.ShapingLawUnknown] = (Severity.Error, "The shaping law \"{0}\" is known here by its name only. Pass the law itself when drafting again, or use a table of rows."),
        [DiagnosticCode.ShapingTableEmpty] = (Severity.Error, "The shaping table \"{0}\" has no rows. Add at least one."),
        [DiagnosticCode.ShapingOutsideTable] = (Severity.Error, "The difference between hip and waist is {0}; the shaping table \"{1}\" covers {2} to {3}. Add a row, or let the table clamp what lies outside."),
        [DiagnosticCode.ShapingFigureUnreadable] = (Severity.Error, "The shaping table cannot be read at {0}. {1} Correct this figure."),
        [DiagnosticCode.ShapingIntakeNegative] = (Severity.Error, "The shaping table has a negative dart intake at {0}: {1}. Write 0 where there is no dart."),
        [DiagnosticCode.ShapingFigureTooLarge] = (Severity.Error, "The shaping table has {1} at {0}; allowed is up to {2}, either sign. Look at its unit."),
        [DiagnosticCode.ShapingDifferenceOutOfOrder] = (Severity.Error, "The shaping table is out of order at {0}: the difference {1} follows {2}. Sort the rows by difference, the smallest first."),
        [DiagnosticCode.ShapingDifferenceTwice] = (Severity.Error, "The shaping table has a difference twice at {0}: {1} follows {2}. Remove one of the two rows."),
        [DiagnosticCode.ShapingNameBroken] = (Severity.Error, "{0} has more than one line. Give the table a name on one line."),

        // 51xx: the text of shaping tables.
        [DiagnosticCode.ShapingDirectiveUnknown] = (Severity.Error, "The shaping table has an unknown directive on line {0}: {1}. Use name, unit, lookup or outside; start a remark with ##."),
        [DiagnosticCode.ShapingDirectiveWrong] = (Severity.Error, "The shaping table has a wrong directive on line {0}: {1} is \"{2}\". Write {3}."),
        [DiagnosticCode.ShapingDirectiveTwice] = (Severity.Error, "The shaping table has a directive for the second time on line {0}: {1}. Remove one of the two."),
        [DiagnosticCode.ShapingDirectiveLate] = (Severity.Error, "The shaping table has a directive below its column names on line {0}: {1}. Move it above them."),
        [DiagnosticCode.ShapingColumnUnknown] = (Severity.Error, "The shaping table has an unknown column at {0}. Write the columns {1}, in any order, parted by commas."),
        [DiagnosticCode.ShapingColumnTwice] = (Severity.Error, "The shaping table has a column for the second time at {0}. Remove one of the two."),
        [DiagnosticCode.ShapingColumnMissing] = (Severity.Error, "The shaping table lacks a column on line {0}: {1}. Write the columns {2}, in any order, parted by commas."),
        [DiagnosticCode.ShapingCellsMiscounted] = (Severity.Error, "The shaping table has {1} figures on line {0}; its columns are {2}. Write one figure per column."),
        [DiagnosticCode.ShapingUnitMissing] = (Severity.Error, "The shaping table has figures on line {0} and has not said their unit. Write # unit: in, or # unit: cm, above the column names."),
        [DiagnosticCode.ShapingQuoteOpen] = (Severity.Error, "The shaping table opens a quote on line {0}, column {1}, and does not close it. Close it on the same line."),
        [DiagnosticCode.ShapingTableTooLarge] = (Severity.Error, "The shaping table has {0} {1}; allowed are {2}. Look whether it is a shaping table."),

        // 60xx: pieces and their lines.
        [DiagnosticCode.AllowanceOutOfRange] = (Severity.Error, "The seam allowance on {0} of panel {1} is {2}; allowed is {3} to {4}. Look at its sign and its unit."),
        [DiagnosticCode.SeamLineCrosses] = (Severity.Error, "The seam line of panel {0} crosses or touches itself at {1}, at edge {2}, so no cut line goes around it. Look at the panel."),
        [DiagnosticCode.EdgeVanishes] = (Severity.Error, "Nothing is left of edge {0} on panel {1} at a seam allowance of {2}: the cut lines beside it, or the legs of its darts drawn on, meet before it begins. With all allowances narrowed alike it could have {3}."),
        [DiagnosticCode.CutLineCrosses] = (Severity.Error, "The cut line of panel {0} would cross itself at {1}, at edge {2}, whose seam allowance is {3}. With all allowances narrowed alike it could have {4}."),
        [DiagnosticCode.CutLineTooNear] = (Severity.Error, "Beside a dart the cut line of panel {0} would come within {1} of edge {2} at {3}; {4} are needed there. Move the dart that is nearest to edge {2} away from it, or press it the other way. With all allowances narrowed alike {5} would be needed there, and be kept."),
        [DiagnosticCode.CornerBetweenStrangers] = (Severity.Error, "Edges {0} and {1} of panel {2} do not meet, so they have no corner. Name two edges that follow one another."),
        [DiagnosticCode.FoldNotStraight] = (Severity.Error, "Edge {0} of panel {1} cannot lie on the fold: it is {2} off a straight line, allowed is {3}, or a dart stands on it. Cut two and sew a seam there."),
        [DiagnosticCode.NothingToUnfold] = (Severity.Error, "Piece {0} has no edge on the fold, so it cannot be unfolded. Say which edge lies on the fold first."),
        [DiagnosticCode.TextNotPrintable] = (Severity.Error, "{0} has a character at {1} that cannot be printed on a piece: {2}. Leave it out, and use one call for each line."),
        [DiagnosticCode.TextTooLong] = (Severity.Error, "{0} has {1} characters; a line on a piece holds {2}. Write it shorter, or in two lines."),
        [DiagnosticCode.FacingWithoutRoom] = (Severity.Error, "The {0} of {1} has no room for a facing {2} wide. Make it narrower, and face an edge without darts between two others."),

        // 61xx: sets of pieces, and cloth.
        [DiagnosticCode.NoPieces] = (Severity.Error, "There are 0 pieces to draw; a drawing or file holds 1 or more. Pass the pieces."),
        [DiagnosticCode.PieceNamedTwice] = (Severity.Error, "Two pieces of the set are named {0}. Give one of them another name."),
        [DiagnosticCode.PieceNotInSet] = (Severity.Error, "The set has no piece {0}; it has {1}. Name one of these."),
        [DiagnosticCode.PieceWiderThanCloth] = (Severity.Error, "Piece {0} is {1} wide across the grain; the cloth has {2}. Use wider cloth, or part the piece with a seam."),

        // 62xx: sizes and grading.
        [DiagnosticCode.SizeRowWrong] = (Severity.Error, "Size table {0} was not read: {1} Correct the row; a run with a size missing would be graded wrongly."),
        [DiagnosticCode.SizeRowWithoutName] = (Severity.Error, "Size table {0}, row {1}, line {2}, has no name for its size. Fill the cell, and name its column with NamedBy."),
        [DiagnosticCode.SizeTableTooLong] = (Severity.Error, "Size table {0} has more than {1} sizes. Look whether it is a table of bodies."),
        [DiagnosticCode.SizeTableTooShort] = (Severity.Error, "Size table {0} would have {1} sizes; a table has 2 or more. Add the sizes."),
        [DiagnosticCode.SizeWithoutName] = (Severity.Error, "Body {1} of size table {0} has no name. Name each body for its size."),
        [DiagnosticCode.SizeTwice] = (Severity.Error, "Size table {0} has two sizes named \"{1}\". Give each its own name."),
        [DiagnosticCode.SizeMeasuredOtherwise] = (Severity.Error, "Size table {0}: size {1} has {2} measurements, size {3} has {4}, and both have to be the same. Measure all sizes alike."),
        [DiagnosticCode.SizeUnknown] = (Severity.Error, "Size table {0} has no size \"{1}\"; it has {2}. Name one of these."),
        [DiagnosticCode.SizeMeasurementMissing] = (Severity.Error, "Size table {0} has no {1}; it has {2}. Name one of these, or add it with With."),
        [DiagnosticCode.SizesDoNotGrow] = (Severity.Error, "Size table {0}: {1} does not grow from size {2} with {3} to size {4} with {5}. Name a measurement that grows from each size to the next."),
        [DiagnosticCode.SizeNothingShared] = (Severity.Error, "The body has none of the measurements of size table {0}: {1}. Measure at least one of them."),
        [DiagnosticCode.SizeRefused] = (Severity.Error, "Size {0} of table {1} cannot be drafted, and a run has all its sizes or none: {2} Leave the size out with Between, or change the draft."),
        [DiagnosticCode.SizesMadeOtherwise] = (Severity.Error, "Size {0} has {1} where size {2} has {3}; both have to be made alike to be graded. Grade the sizes on either side apart, or settle the darts."),
        [DiagnosticCode.StackPlaceMissing] = (Severity.Error, "Panel {0} has no place {1}; it has {2}. Name a place that every panel has."),
        [DiagnosticCode.GradePanelUnknown] = (Severity.Error, "The rules grade no panel {0}; they grade {1}. Name the panel as one of these."),
        [DiagnosticCode.GradePanelMirrored] = (Severity.Error, "Panel {0} runs the other way round than that of the rules. Mirror it with Transformed, grade it, and mirror it back."),
        [DiagnosticCode.SizeNameTooLong] = (Severity.Error, "Body {1} of size table {0} has a name of {2} characters; the name of a size has {3} at most. Shorten it."),

        // 70xx: drawings and files.
        [DiagnosticCode.LayerTwice] = (Severity.Error, "The drawing has two layers named {0}. Put their marks into one, or give them different names."),
        [DiagnosticCode.FileNotWritten] = (Severity.Error, "{0} was not written, and what stood there is unchanged: {1} Look at the folder, its rights and the free space."),
        [DiagnosticCode.FileNameUnusable] = (Severity.Error, "\"{0}\" cannot be the name of a file in a folder. Use a plain name such as skirt.svg."),
        [DiagnosticCode.FilePathUnusable] = (Severity.Error, "{0} is \"{1}\", which no file can be written to: {2}. Use a plain path such as out/skirt.svg."),
        [DiagnosticCode.FileTwice] = (Severity.Error, "The file {0} was added already. Give each file its own name."),
        [DiagnosticCode.FolderInTheWay] = (Severity.Error, "{0} was not written: a folder of that name is there. Give the file another name."),

        // 71xx: paper.
        [DiagnosticCode.PaperUnknown] = (Severity.Error, "No paper is called \"{0}\". Use one of {1}, or make one from its width and height."),
        [DiagnosticCode.SheetTooSmall] = (Severity.Error, "A sheet of {0} with margins of {1} leaves {2} by {3} to draw on; allowed is {4} or more each way. Use larger paper or narrower margins."),
        [DiagnosticCode.OverlapTooWide] = (Severity.Error, "The overlap is {0}; allowed is up to {1}, half of what a sheet of {2} can draw. Use a narrower overlap, or larger paper."),
        [DiagnosticCode.TooManySheets] = (Severity.Error, "The drawing would need {0} sheets of {1}; allowed are {2}. Use larger paper, or look at the size of the drawing."),
        [DiagnosticCode.RollTooNarrow] = (Severity.Error, "The drawing is {0} wide and {1} high; a roll of {2} takes it neither upright nor turned. Use a wider roll, or tile the drawing."),
        [DiagnosticCode.PageSizeImpossible] = (Severity.Error, "A page would be {0} by {1}; in this format pages measure {2} to {3} each way. Tile the drawing on sheets, or draw fewer pieces at a time."),
        [DiagnosticCode.PaperTooNarrow] = (Severity.Error, "{0} is {1} across; a picture with its words needs {2}. Take A5 or larger paper."),
        [DiagnosticCode.ReducedTooLarge] = (Severity.Error, "At {0} the drawing and its heading take {1} by {2}, more than {3} holds within margins of {4}. Take a smaller scale or larger paper."),

        // 72xx: DXF.
        [DiagnosticCode.DxfUnitUnknown] = (Severity.Error, "A DXF file cannot be written in {0}. Use Millimeter or Inch."),
        [DiagnosticCode.DxfPieceTwice] = (Severity.Error, "There are two pieces {0} of size {1} cut of {2}; a DXF file holds each once. Leave one out, or put the size on their labels."),

        // 73xx: JSON.
        [DiagnosticCode.JsonMalformed] = (Severity.Error, "This is not JSON: {0} there is {1}; expected is {2}. Look whether the file is whole and unchanged."),
        [DiagnosticCode.JsonTooLarge] = (Severity.Error, "This is too large for a pattern: {0} there is {1}; allowed is {2}. Look whether it is a pattern file."),
        [DiagnosticCode.JsonFormatUnknown] = (Severity.Error, "This is a file of another format: {0} there is {1}; allowed is {2}. Read it with what wrote it."),
        [DiagnosticCode.JsonVersionUnknown] = (Severity.Error, "This version of the format is not known: {0} there is {1}; allowed is {2}. Update the library, or write the file anew with this one."),
        [DiagnosticCode.JsonPropertyMissing] = (Severity.Error, "A property is missing: {0} there is {1}; needed is {2}. Add it; where there is nothing to say, it is null or an empty list."),
        [DiagnosticCode.JsonPropertyUnknown] = (Severity.Error, "A property is not known: {0} there is {1}; allowed is {2}. Look at its spelling, or leave it out."),
        [DiagnosticCode.JsonSaidTwice] = (Severity.Error, "Something is said twice: {0} there is {1}; allowed is {2}. Leave one out."),
        [DiagnosticCode.JsonValueWrong] = (Severity.Error, "A value cannot be used: {0} there is {1}; allowed is {2}. Look at its type, its unit and its range."),
        [DiagnosticCode.JsonContentRefused] = (Severity.Error, "This makes no pattern: {0} there is {1}. {2} Nothing of the file was taken over."),
        [DiagnosticCode.JsonDrawnDiffers] = (Severity.Error, "The drawn lines do not belong to the piece: {0} there is {1}; drawn from panel and allowances it is {2}. Write the file anew after changing a piece."),
        [DiagnosticCode.JsonNotWritable] = (Severity.Error, "A JSON file cannot hold {0} of {1}; allowed is {2}. Change it before writing."),
        [DiagnosticCode.DraftDiffers] = (Severity.Error, "Drafted anew, {0} differs from the file by {1}; allowed is {2}. Work with the panels of the file, or take what the builder drafts now and make the pieces anew."),
        [DiagnosticCode.JsonTruedDiffers] = (Severity.Error, "A point or line as trued does not belong to the draft and its panels: {0} there is {1}; by those it is {2}. Write the file anew after changing a panel."),

        // 80xx: cloth layout.
        [DiagnosticCode.LayOutlineCrosses] = (Severity.Error, "The outline of piece {0} meets itself, or turns back on itself, at the side that begins at {1}. Pass the corners in order around the piece."),
        [DiagnosticCode.LayOutlineTooSmall] = (Severity.Error, "The outline of piece {0} covers less than {1}. Pass an outline that cloth can be cut to, or another unit."),
        [DiagnosticCode.LayOutlineTooFar] = (Severity.Error, "A corner of piece {0} lies more than {1} from its origin. Move the outline nearer, or pass another unit."),
        [DiagnosticCode.LayNothing] = (Severity.Error, "No piece of the set is cut from {0}. Say how often each is cut from it, or lay another cloth."),
        [DiagnosticCode.LayFoldOffGrain] = (Severity.Error, "Piece {0} cannot lie on the fold of the cloth: its fold does not run along its grain, or it reaches across it. Lay it on open cloth, or turn its grain."),
        [DiagnosticCode.LayTimeNegative] = (Severity.Error, "{0} is negative. Pass a time of zero or more, or null for no limit."),
        [DiagnosticCode.LayTableTooLarge] = (Severity.Error, "The table of outlines has {0} characters; allowed is up to {1}. Lay fewer pieces at a time."),
        [DiagnosticCode.LayTableWrong] = (Severity.Error, "Line {0}, {1}: found \"{2}\", expected {3}. Correct the table of outlines."),
    };

    /// <summary>Every code that has a message.</summary>
    internal static IReadOnlyCollection<DiagnosticCode> Codes => Messages.Keys;

    internal static Severity SeverityOf(DiagnosticCode code) => Messages[code].Severity;

    internal static string TemplateOf(DiagnosticCode code) => Messages[code].Template;

    /// <summary>Fills the template of a code: <c>PC0002: ...</c>.</summary>
    internal static string Format(DiagnosticCode code, params object[] facts)
    {
        object[] words = new object[facts.Length];
        for (int i = 0; i < facts.Length; i++)
        {
            words[i] = InWords(facts[i]);
        }

        Shorten(words);

        string text = string.Format(CultureInfo.InvariantCulture, Messages[code].Template, words);
        return string.Format(CultureInfo.InvariantCulture, "PC{0:0000}: {1}", (int)code, text);
    }

    /// <summary>Words of the library itself, as a fact of a message: never shortened, as texts are that somebody else may have written.</summary>
    internal static object Whole(string words) => new OwnWords(words);

    // A message repeats so much of what was passed in, and no more: texts come from files and callers, and may be as long as they like. The longest gives way first.
    private static void Shorten(object[] words)
    {
        int left = MostRepeated;
        int texts = words.Count(word => word is string);
        foreach (int i in Enumerable.Range(0, words.Length).Where(i => words[i] is string).OrderBy(i => ((string)words[i]).Length))
        {
            string text = (string)words[i];
            int most = left / texts--;
            if (text.Length > most)
            {
                text = Guard.Echo(text, most - 1);
                words[i] = text;
            }

            left -= text.Length;
        }
    }

    // Both units, so that a message can be read whatever the draft is made in.
    private static object InWords(object fact) => fact switch
    {
        Length length => string.Format(CultureInfo.InvariantCulture, "{0:0.0#} mm ({1:0.0##} in)", length.Millimeters, length.Inches),
        Angle angle => string.Format(CultureInfo.InvariantCulture, "{0:0.0##} degrees", angle.Degrees),
        _ => fact,
    };

    private sealed class OwnWords(string words)
    {
        public override string ToString() => words;
    }
}
