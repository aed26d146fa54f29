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
