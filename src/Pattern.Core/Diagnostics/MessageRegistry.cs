using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace Pattern.Core.Diagnostics;

/// <summary>The one place where codes, severities and wordings live.</summary>
/// <remarks>A template says what is wrong, where, how much was measured and allowed, and what to do.</remarks>
internal static class MessageRegistry
{
    private static readonly Dictionary<DiagnosticCode, (Severity Severity, string Template)> Messages = new()
    {
        [DiagnosticCode.ValueIsNull] = (Severity.Error, "{0} is missing. Pass a value."),
        [DiagnosticCode.QuantityOutOfRange] = (Severity.Error, "{0} is {1}; allowed is {2} to {3}. Pass a value in that range."),
        [DiagnosticCode.NumberNotFinite] = (Severity.Error, "{0} is not a finite number. Pass a real value."),
        [DiagnosticCode.CountOutOfRange] = (Severity.Error, "{0} is {1}; allowed is {2} to {3}. Pass a number in that range."),
        [DiagnosticCode.ChoiceUnknown] = (Severity.Error, "{0} is {1}, which is not one of the named choices. Use a named value."),
        [DiagnosticCode.NameUnusable] = (Severity.Error, "{0} is \"{1}\". Use 1 to 40 lower-case letters, digits, blanks or hyphens, beginning with a letter."),
        [DiagnosticCode.LabelUnusable] = (Severity.Error, "{0} is \"{1}\". Use 1 to 40 letters, digits, blanks or hyphens, beginning with a letter."),
        [DiagnosticCode.EdgeNotOnPanel] = (Severity.Error, "Panel {0} has no edge {1}; it has {2}. Ask for one of these."),
        [DiagnosticCode.ChecksFailed] = (Severity.Error, "{0} of {1} checks failed: {2}. Look at the drawing and change the measurements or options; do not cut it."),
        [DiagnosticCode.WaistNotTrued] = (Severity.Error, "No waistline closes to {0} and meets a side seam of {1}. Use narrower or fewer darts, or less side shaping."),
        [DiagnosticCode.DartWiderThanStretch] = (Severity.Error, "The dart with its apex at {0} is wider than the seam line it folds onto. Reduce its intake, or use fewer darts."),

        [DiagnosticCode.ClothUnitUnknown] = (Severity.Error, "{0} is {1}, which cloth is not measured in. Use inch, foot, yard, millimetre, centimetre or metre."),
        [DiagnosticCode.LengthTextEmpty] = (Severity.Error, "The text of a length is empty. Write one such as 4 5/8 in or 11.75 cm."),
        [DiagnosticCode.LengthTextTooLong] = (Severity.Error, "\"{0}\" is no length: it has {1} characters; allowed are {2}. Write one such as 4 5/8 in or 11.75 cm."),
        [DiagnosticCode.LengthNumberExpected] = (Severity.Error, "\"{0}\" is no length: a number was expected at character {1}, found {2}. Write one such as 4 5/8 in or 11.75 cm."),
        [DiagnosticCode.LengthAmbiguous] = (Severity.Error, "\"{0}\" can be read in two ways at character {1}: {2}."),
        [DiagnosticCode.LengthFractionWrong] = (Severity.Error, "\"{0}\" holds a wrong fraction at character {1}: {2}."),
        [DiagnosticCode.LengthUnitUnknown] = (Severity.Error, "\"{0}\" names an unknown unit at character {1}: {2}. Use in, cm, mm or m, or leave the unit out."),
        [DiagnosticCode.LengthTextGoesOn] = (Severity.Error, "\"{0}\" goes on after its length at character {1}: {2}. Write one number and one unit."),
        [DiagnosticCode.LengthTooLarge] = (Severity.Error, "\"{0}\" is too large at character {1}: cloth is measured up to {2}. Write a shorter length."),

        [DiagnosticCode.BodyMeasurementNotPositive] = (Severity.Error, "{0} is {1}; a body measures more than nothing. Measure again, or leave it out."),
        [DiagnosticCode.BodyMeasurementImplausible] = (Severity.Error, "{0} is {1}; human bodies measure {2} to {3}. Measure again, and look at the unit."),
        [DiagnosticCode.BodyMeasurementUnitSwapped] = (Severity.Error, "{0} is {1}; human bodies measure {2} to {3}. Did you mean {4}? Then write the unit."),
        [DiagnosticCode.BodyMeasurementUnreadable] = (Severity.Error, "{0} cannot be read. {1} Write this measurement again."),
        [DiagnosticCode.BodyMeasurementMissing] = (Severity.Error, "{0} is needed for {1}, and was not measured{2}. Take it, and add it to the body measurements."),
        [DiagnosticCode.NameEmpty] = (Severity.Error, "{0} is empty. Give it a name that a reader of the draft will understand."),
        [DiagnosticCode.DirectionUndefined] = (Severity.Error, "{0} is a single point and has no direction there. Pass something with a length."),
        [DiagnosticCode.ParameterOutOfRange] = (Severity.Error, "{0} is {1}; a curve parameter runs from 0 to 1. Pass a number in that range."),
        [DiagnosticCode.ScaleNotPositive] = (Severity.Error, "{0} is {1}; a scale factor must be greater than 0. Mirror over a line to turn a shape over."),
        [DiagnosticCode.EndsCoincide] = (Severity.Error, "The curve would begin and end at the same point. Move one end, or draw it in two curves."),
        [DiagnosticCode.SweepTooLarge] = (Severity.Error, "{0} is {1}; an arc goes round at most once, 360 degrees either way. Pass a smaller angle."),
        [DiagnosticCode.PathEmpty] = (Severity.Error, "The path has no segments. Pass at least one."),
        [DiagnosticCode.SegmentsDoNotMeet] = (Severity.Error, "Segment {0} begins at {1}, but the one before ends at {2}, {3} away. Move it there, or put a line between."),
        [DiagnosticCode.PathClosed] = (Severity.Error, "The path is closed and cannot be joined to anything. Go on from an open path."),
        [DiagnosticCode.PartEmpty] = (Severity.Error, "The part from {0} to {1} has no length. Pass an end that lies beyond the beginning."),
        [DiagnosticCode.SegmentKindWrong] = (Severity.Error, "The segment is of kind {0}, not {1}. Look at its Kind first."),

        [DiagnosticCode.HipLevelsCrossed] = (Severity.Error, "The upper hip line lies at {0} and the lower hip line at {1} below the waist; the lower must lie at least 1 mm below the upper. Change the levels."),
        [DiagnosticCode.SkirtTooShort] = (Severity.Error, "The skirt is {0} long and ends above its lowest level at {1}; allowed is {2} or more. Make it longer, or raise the levels."),
        [DiagnosticCode.PanelTooNarrow] = (Severity.Error, "Panel {0} would be {1} wide at the hip; allowed is {2} or more. Look at the measurements and at how much wider the shaping table makes the back."),
        [DiagnosticCode.DartLengthImpossible] = (Severity.Error, "A dart on panel {0} is {1} long; allowed is {2} to {3}, the lower hip line. Change the dart length or the shortening."),
        [DiagnosticCode.DartOffWaistline] = (Severity.Error, "A dart on panel {0} stands beyond the end of the waistline. Use fewer or narrower darts."),
        [DiagnosticCode.PathOpen] = (Severity.Error, "The path is open, so that nothing is inside or outside it. Close it first."),
        [DiagnosticCode.OffsetOfNothing] = (Severity.Error, "The path has no length, so that there is nothing beside it. Pass a path with a length."),
        [DiagnosticCode.OffsetVanishes] = (Severity.Error, "Nothing is left of the path when it is offset by {0}. Use a narrower offset."),
        [DiagnosticCode.OffsetUnjoined] = (Severity.Error, "The offset by {0} does not join up near {1}. Use another width, or a coarser tolerance than {2}."),
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

        string text = string.Format(CultureInfo.InvariantCulture, Messages[code].Template, words);
        return string.Format(CultureInfo.InvariantCulture, "PC{0:0000}: {1}", (int)code, text);
    }

    // Both units, so that a message can be read whatever the draft is made in.
    private static object InWords(object fact) => fact switch
    {
        Length length => string.Format(CultureInfo.InvariantCulture, "{0:0.0#} mm ({1:0.0##} in)", length.Millimeters, length.Inches),
        Angle angle => string.Format(CultureInfo.InvariantCulture, "{0:0.0##} degrees", angle.Degrees),
        _ => fact,
    };
}
