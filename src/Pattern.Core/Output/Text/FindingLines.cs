using System;
using System.Globalization;
using System.Linq;
using System.Text;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>A report in the units of its reader: the verdict, the checks, and apart from them the advice.</summary>
internal static class FindingLines
{
    internal static void Write(StringBuilder text, CheckReport report, TapeStep tape)
    {
        Heading(text, "Checks");
        text.Append(report.Verdict()).Append('\n');
        foreach (Finding finding in report.Findings.Where(finding => finding.Advice is null))
        {
            text.Append(finding.Passed ? "ok     " : "FAILED ").Append(finding.Check).Append(", ").Append(finding.Place).Append(": ")
                .Append(Figure(finding, finding.RawMeasured, tape)).Append(", target ").Append(Relation(finding)).Append(Figure(finding, finding.RawTarget, tape));
            if (finding.Failed)
            {
                text.Append(", off by ").Append(Exactly(finding, finding.RawMeasured - finding.RawTarget, tape));
            }

            text.Append('\n');
        }

        if (!report.Advice.Any())
        {
            return;
        }

        Heading(text, "Advice");
        foreach (Finding finding in report.Advice)
        {
            text.Append(finding.Check).Append(", ").Append(finding.Place).Append(": ").Append(Figure(finding, finding.RawMeasured, tape))
                .Append(", usual ").Append(Relation(finding)).Append(Figure(finding, finding.RawTarget, tape)).Append(". ").Append(finding.Advice).Append('\n');
        }
    }

    /// <summary>The finest mark that figures of a tape are read to.</summary>
    internal static TapeStep FinestOf(TapeStep tape)
    {
        TapeStep finest = tape.IsMetric ? TapeStep.HalfMillimeter : TapeStep.ThirtySecond;
        return finest.Parts < tape.Parts ? tape : finest;
    }

    /// <summary>A length as finely as a tape can be read at all.</summary>
    internal static string Fine(double lengthMm, TapeStep tape) => Fine(lengthMm, tape, Phrasebook.English);

    internal static string Fine(double lengthMm, TapeStep tape, Phrasebook book)
    {
        TapeStep finest = FinestOf(tape);
        return double.IsNaN(lengthMm) ? book.Say("not to be measured")
            : lengthMm != 0 && !Tape.IsOnMark(lengthMm, finest) && Tape.MarksOf(lengthMm, finest, TapeRounding.Nearest) == 0 ? book.Say("less than {figure}", ("figure", finest.ToString()))
            : new TapeFigures(finest, TapeStyle.Plain).Near(lengthMm);
    }

    private static string Relation(Finding finding)
        => finding.Relation switch { FindingRelation.AtLeast => "at least ", FindingRelation.AtMost => "at most ", _ => string.Empty };

    private static string Figure(Finding finding, double raw, TapeStep tape) => finding.Kind == FindingKind.Length ? Fine(raw, tape) : Exactly(finding, raw, tape);

    // A failure may be smaller than any mark.
    private static string Exactly(Finding finding, double raw, TapeStep tape)
    {
        (double scale, string unit, string format) = (finding.Kind, tape.IsMetric) switch
        {
            (FindingKind.Length, true) => (0.1, " cm", "0.000"),
            (FindingKind.Length, false) => (1 / 25.4, " in", "0.0000"),
            (FindingKind.Angle, _) => (180 / Math.PI, " degrees", "0.00"),
            _ => (1.0, string.Empty, "0"),
        };

        // Adding zero turns the minus zero that rounding may leave into zero.
        return (Math.Round(raw * scale, format.Length > 1 ? format.Length - 2 : 0) + 0.0).ToString(format, CultureInfo.InvariantCulture) + unit;
    }

    private static void Heading(StringBuilder text, string words) => text.Append('\n').Append(words).Append('\n').Append('-', words.Length).Append('\n');
}
