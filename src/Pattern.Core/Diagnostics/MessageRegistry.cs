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
        [DiagnosticCode.CurvatureUnbounded] = (Severity.Error, "The curve has a cusp at t = {0}, {1}: its curvature has no bound there. Move a control point."),
        [DiagnosticCode.ToleranceNotPositive] = (Severity.Error, "{0} is {1}; a tolerance must be greater than 0. Pass a larger one."),
        [DiagnosticCode.ToleranceTooFine] = (Severity.Error, "{0} is {1}; this curve would need about {2} chords, and at most {3} are made. Pass a larger one."),
        [DiagnosticCode.BufferTooSmall] = (Severity.Error, "{0} has room for {1}, but {2} are needed. Pass a larger buffer."),
        [DiagnosticCode.LengthTooShort] = (Severity.Error, "The curve is to be {0} long, but from end to end with these directions it is at least {1}. Ask for a longer curve, or move the ends closer."),
        [DiagnosticCode.LengthTooLong] = (Severity.Error, "The curve is to be {0} long, but beyond {1} it would make a loop or a cusp. Ask for a shorter curve, or turn the directions farther apart."),
        [DiagnosticCode.TangentsDoNotMeet] = (Severity.Error, "The tangents at {0} and {1} do not meet ahead of both ends. Join the paths with a smooth curve instead."),
        [DiagnosticCode.FilletDoesNotFit] = (Severity.Error, "A fillet of radius {0} does not fit at {1}. Pass a smaller radius."),
        [DiagnosticCode.PointOffLine] = (Severity.Error, "{0} lies {1} off the line, allowed is {2}. Take its foot on the line first."),
        [DiagnosticCode.PointsRepeat] = (Severity.Error, "Point {0} is the same as the one before, {1}. Leave one of them out."),
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
