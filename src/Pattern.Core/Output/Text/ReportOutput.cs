using System;
using System.Diagnostics.Contracts;
using System.Globalization;
using System.IO;
using System.Text;
using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>Check reports as tables.</summary>
public static class ReportOutput
{
    private const string Columns = "check,panel,measured_mm,target_mm,tolerance_mm,ok";

    /// <summary>The report as comma-separated values (RFC 4180, but lines end in a line feed alone).</summary>
    /// <remarks>
    /// <para>Columns: <c>check,panel,measured_mm,target_mm,tolerance_mm,ok</c>. A check is named by its words joined with <c>_</c>. Lengths are in millimetres; where the
    /// name ends in <c>_deg</c> the three figures are degrees, where it ends in <c>_count</c> they are numbers of things. Six decimals, <c>ok</c> is <c>true</c>, <c>false</c> or <c>advice</c>.</para>
    /// <para>Most checks hold where measured is within tolerance of target; where <see cref="Finding.Relation"/> is at least or at most, only that side counts.</para>
    /// </remarks>
    [Pure]
    public static string ToCsv(this CheckReport report)
    {
        Guard.NotNull(report, nameof(report));
        var text = new StringBuilder(Columns).Append('\n');
        foreach (Finding finding in report.Findings)
        {
            double scale = finding.Kind == FindingKind.Angle ? 180 / Math.PI : 1;
            Field(text, finding.Code).Append(',');
            Field(text, finding.Place).Append(',');
            Number(text, finding.RawMeasured * scale).Append(',');
            Number(text, finding.RawTarget * scale).Append(',');
            Number(text, finding.RawTolerance * scale).Append(',');
            text.Append(finding.Verdict switch { FindingVerdict.Passed => "true", FindingVerdict.Failed => "false", _ => "advice" }).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Writes the report to a file as comma-separated values, as a whole or not at all.</summary>
    /// <param name="report">The report.</param>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void SaveCsv(this CheckReport report, string path)
    {
        Guard.Name(path, nameof(path));
        WholeFiles.Write(path, report.ToCsv());
    }

    private static StringBuilder Field(StringBuilder text, string words)
        => words.IndexOfAny([',', '"', '\n', '\r']) < 0 ? text.Append(words) : text.Append('"').Append(words.Replace("\"", "\"\"")).Append('"');

    // The F format writes a minus before a zero that a small negative was rounded to.
    private static StringBuilder Number(StringBuilder text, double value)
    {
        string figure = value.ToString("F6", CultureInfo.InvariantCulture);
        return text.Append(figure == "-0.000000" ? "0.000000" : figure);
    }
}
