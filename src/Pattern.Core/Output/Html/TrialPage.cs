using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using Pattern.Core.Measurement;
using Pattern.Core.Sizing;

namespace Pattern.Core.Output;

/// <summary>Writes what a method does to many bodies as one HTML page.</summary>
internal sealed class TrialPage(TrialSummary summary, string title, TapeStep tape)
{
    private const string Style = """
        :root { color-scheme: light; }
        body { margin: 0 auto; max-width: 60rem; padding: 1rem; background: #fff; color: #000; font: 1rem/1.45 Inter, Helvetica, Arial, "Liberation Sans", sans-serif; }
        h1 { font-size: 1.6rem; line-height: 1.2; margin: 0 0 .5rem; overflow-wrap: anywhere; }
        h2 { font-size: 1.2rem; margin: 2rem 0 .5rem; break-after: avoid; }
        table { border-collapse: collapse; width: 100%; }
        th, td { border-bottom: 1px solid #000; padding: .35rem .5rem .35rem 0; text-align: left; vertical-align: top; overflow-wrap: anywhere; }
        th.n, td.n { text-align: right; padding-right: 1rem; white-space: nowrap; font-variant-numeric: tabular-nums; }
        td small { display: block; }
        .pictures { display: grid; grid-template-columns: repeat(auto-fill, minmax(15rem, 1fr)); gap: 1rem; }
        figure { margin: 0; border: 1px solid #000; padding: .75rem; break-inside: avoid; }
        figure svg { display: block; width: 100%; height: auto; max-height: 16rem; }
        figcaption { margin-top: .5rem; font-size: .9rem; overflow-wrap: anywhere; }
        @media print { body { max-width: none; padding: 0; font-size: 10pt; } tr { break-inside: avoid; } .pictures { grid-template-columns: repeat(3, 1fr); } }
        """;

    private static readonly (TrialOutcome Outcome, string Words)[] Outcomes =
    [
        (TrialOutcome.Passed, "passed: drafted, every check holds"),
        (TrialOutcome.Failed, "failed: drafted, but a check does not hold"),
        (TrialOutcome.Refused, "refused: the method declines this body"),
        (TrialOutcome.BadRow, "bad row: no body"),
    ];

    private readonly StringBuilder _text = new(16 * 1024);

    internal string Write()
    {
        _text.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>").Escaped(title)
            .Append("</title>\n<style>\n").Append(Style.Replace("\r\n", "\n")).Append("\n</style>\n</head>\n<body>\n<main>\n<h1>").Escaped(title).Append("</h1>\n<p>").Escaped(summary.ToString()).Append(".</p>\n");
        WriteCounts();
        WriteReasons("Why bodies did not pass", "Reason", summary.Reasons);
        WriteReasons("Advice", "What a cutter would look twice at", summary.Advice);
        WriteExtremes();
        _text.Append("<p>The pictures are small: never cut from them. The checks prove the geometry; only a toile proves the fit.</p>\n</main>\n</body>\n</html>\n");
        return _text.ToString();
    }

    private void WriteCounts()
    {
        _text.Append("<h2>Counts</h2>\n<table>\n<thead><tr><th scope=\"col\">Outcome</th><th scope=\"col\" class=\"n\">Bodies</th><th scope=\"col\" class=\"n\">Share</th></tr></thead>\n<tbody>\n");
        foreach ((TrialOutcome outcome, string words) in Outcomes)
        {
            _text.Append("<tr><td>").Escaped(words);
            WriteCount(summary.Count(outcome));
        }

        _text.Append("<tr><td>drafted with advice");
        WriteCount(summary.AdvisedCount);
        _text.Append("</tbody>\n</table>\n");
    }

    private void WriteCount(int count)
    {
        double share = summary.Total == 0 ? 0 : 100.0 * count / summary.Total;
        _text.Append("</td><td class=\"n\">").Append(Figure(count)).Append("</td><td class=\"n\">").Append(share.ToString("0.0", CultureInfo.InvariantCulture)).Append(" %</td></tr>\n");
    }

    private void WriteReasons(string heading, string column, IReadOnlyList<TrialReason> reasons)
    {
        if (reasons.Count == 0)
        {
            return;
        }

        _text.Append("<h2>").Escaped(heading).Append("</h2>\n<table>\n<thead><tr><th scope=\"col\">").Escaped(column)
            .Append("</th><th scope=\"col\" class=\"n\">Bodies</th><th scope=\"col\" class=\"n\">First row</th></tr></thead>\n<tbody>\n");
        foreach (TrialReason reason in reasons)
        {
            _text.Append("<tr><td>").Escaped(reason.What).Append("<small>").Escaped(reason.Example).Append("</small></td><td class=\"n\">").Append(Figure(reason.Count))
                .Append("</td><td class=\"n\">").Append(Figure(reason.FirstRow)).Append("</td></tr>\n");
        }

        _text.Append("</tbody>\n</table>\n");
    }

    private void WriteExtremes()
    {
        if (summary.Extremes.Count == 0)
        {
            return;
        }

        // One scale for all, so that they can be compared by eye.
        Dictionary<Trial, SmallPicture> pictures = summary.Extremes.SelectMany(extreme => new[] { extreme.Least, extreme.Most }).Distinct().ToDictionary(trial => trial, trial => SmallPicture.Of(trial.Block!));
        double widthMm = pictures.Values.Max(picture => picture.WidthMm);
        double heightMm = pictures.Values.Max(picture => picture.HeightMm);
        _text.Append("<h2>The bodies at the ends</h2>\n<p>All at one scale.</p>\n<div class=\"pictures\">\n");
        foreach (TrialExtreme extreme in summary.Extremes)
        {
            WriteExtreme("least", extreme.What, extreme.LeastMm, extreme.Least);
            WriteExtreme("most", extreme.What, extreme.MostMm, extreme.Most);
        }

        _text.Append("</div>\n");

        void WriteExtreme(string end, string what, double valueMm, Trial trial)
        {
            string caption = $"{Upper(end)} {what}: {TapeText.WithUnit(valueMm, tape, TapeStyle.Plain)}. Row {Figure(trial.Row.Number)}, {Body(trial)}; {(trial.Outcome == TrialOutcome.Passed ? "passed" : "failed")}.";
            _text.Append("<figure>\n");
            pictures[trial].WriteTo(_text, trial.Block!.Title + ", row " + Figure(trial.Row.Number), widthMm, heightMm);
            _text.Append("<figcaption>").Escaped(caption).Append("</figcaption>\n</figure>\n");
        }
    }

    private string Body(Trial trial)
    {
        BodyMeasurements body = trial.Block!.Body;
        return (body.Name is { } name ? name + ", " : string.Empty) + body.Describe(tape);
    }

    private static string Upper(string word) => char.ToUpperInvariant(word[0]) + word.Substring(1);

    private static string Figure(int count) => count.ToString(CultureInfo.InvariantCulture);
}
