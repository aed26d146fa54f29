using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Globalization;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Sizing;

/// <summary>What a method does to many bodies: counts, reasons, and the bodies at the ends. Immutable.</summary>
/// <remarks>Made of a stream of trials in one pass. Of all blocks only those at the ends of a measurement are kept, so a million bodies take no more room than ten.</remarks>
public sealed class TrialSummary
{
    /// <summary>More reasons than any method has; what comes after is counted together.</summary>
    private const int MostReasons = 200;

    private const string Others = "any other reason";

    private readonly int[] _counts = new int[4];

    private TrialSummary(IEnumerable<Trial> trials)
    {
        var reasons = new Dictionary<string, TrialReason>(StringComparer.Ordinal);
        var advice = new Dictionary<string, TrialReason>(StringComparer.Ordinal);
        var extremes = new List<TrialExtreme>();
        foreach (Trial trial in trials)
        {
            _counts[(int)trial.Outcome]++;
            AddReasons(trial, reasons);
            if (trial.Block is not null)
            {
                AdvisedCount += AddAdvice(trial, advice) ? 1 : 0;
                AddExtremes(trial, extremes);
            }
        }

        Reasons = Ordered(reasons);
        Advice = Ordered(advice);
        Extremes = extremes.AsReadOnly();
    }

    /// <summary>How many rows there were.</summary>
    public int Total => _counts.Sum();

    /// <summary>How many blocks came with advice, passed or failed.</summary>
    public int AdvisedCount { get; }

    /// <summary>Why bodies did not pass: failed checks, refusals, rows that are none. The most frequent first; a body with two failed checks counts under both.</summary>
    public IReadOnlyList<TrialReason> Reasons { get; }

    /// <summary>What a cutter would look twice at, and for how many bodies; the most frequent first.</summary>
    public IReadOnlyList<TrialReason> Advice { get; }

    /// <summary>For each measurement the two bodies at its ends, and those of the waist-hip difference.</summary>
    public IReadOnlyList<TrialExtreme> Extremes { get; }

    /// <summary>Goes through the trials once and counts them.</summary>
    /// <param name="trials">The trials; each is made when it is asked for, where the caller makes them so.</param>
    public static TrialSummary Of(IEnumerable<Trial> trials) => new(Guard.NotNull(trials, nameof(trials)).Select(trial => Guard.NotNull(trial, nameof(trials))));

    /// <summary>How many rows came out like that.</summary>
    /// <param name="outcome">Which.</param>
    [Pure]
    public int Count(TrialOutcome outcome) => _counts[Guard.Choice((int)outcome, _counts.Length, nameof(outcome))];

    /// <summary>One line of counts.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Total} bodies: {Count(TrialOutcome.Passed)} passed, {Count(TrialOutcome.Failed)} failed, {Count(TrialOutcome.Refused)} refused, {Count(TrialOutcome.BadRow)} bad rows; {AdvisedCount} with advice");

    private static void AddReasons(Trial trial, Dictionary<string, TrialReason> reasons)
    {
        if (trial.Outcome == TrialOutcome.Passed)
        {
            return;
        }

        if (trial.Block is null)
        {
            string code = trial.Code!.Value.ToString();
            Add(reasons, trial.Outcome + " " + code, trial, trial.Code, InWords(code), trial.Reason!);
            return;
        }

        foreach (Finding failure in trial.Block.Report.Failures.GroupBy(failure => failure.Check + ", " + failure.Place).Select(group => group.First()))
        {
            Add(reasons, failure.Check + ", " + failure.Place, trial, trial.Code, failure.Check + ", " + failure.Place, failure.ToString());
        }
    }

    private static bool AddAdvice(Trial trial, Dictionary<string, TrialReason> advice)
    {
        bool any = false;
        foreach (Finding finding in trial.Block!.Report.Advice.GroupBy(finding => finding.Check + ", " + finding.Place).Select(group => group.First()))
        {
            any = true;
            Add(advice, finding.Check + ", " + finding.Place, trial, null, finding.Check + ", " + finding.Place, finding.Advice!.ToString());
        }

        return any;
    }

    private static void Add(Dictionary<string, TrialReason> reasons, string key, Trial trial, DiagnosticCode? code, string what, string example)
    {
        bool isOther = reasons.Count >= MostReasons && !reasons.ContainsKey(key);
        key = isOther ? Others : key;
        reasons[key] = reasons.TryGetValue(key, out TrialReason? known)
            ? known.Again()
            : new TrialReason(trial.Outcome, isOther ? null : code, isOther ? Others : what, example, trial.Row.Number, 1);
    }

    private static void AddExtremes(Trial trial, List<TrialExtreme> extremes)
    {
        BodyMeasurements body = trial.Block!.Body;
        foreach (KeyValuePair<BodyMeasurement, UnitsNet.Length> entry in body)
        {
            AddExtreme(extremes, entry.Key.Term, entry.Value.Millimeters, trial);
        }

        if (body.TryFindMm(BodyMeasurement.WaistGirth, out double waistMm) && body.TryFindMm(BodyMeasurement.HipGirth, out double hipMm))
        {
            AddExtreme(extremes, "waist-hip difference", hipMm - waistMm, trial);
        }
    }

    private static void AddExtreme(List<TrialExtreme> extremes, string what, double valueMm, Trial trial)
    {
        int at = extremes.FindIndex(one => one.What == what);
        if (at < 0)
        {
            extremes.Add(new TrialExtreme(what, valueMm, trial, valueMm, trial));
        }
        else
        {
            extremes[at] = extremes[at].With(valueMm, trial);
        }
    }

    // DartsTurnTooFar: darts turn too far.
    private static string InWords(string code)
    {
        var words = new System.Text.StringBuilder();
        foreach (char c in code)
        {
            words.Append(char.IsUpper(c) && words.Length > 0 ? " " : string.Empty).Append(words.Length == 0 ? c : char.ToLower(c, CultureInfo.InvariantCulture));
        }

        return words.ToString();
    }

    private static IReadOnlyList<TrialReason> Ordered(Dictionary<string, TrialReason> reasons)
        => [.. reasons.OrderByDescending(one => one.Value.Count).ThenBy(one => one.Key, StringComparer.Ordinal).Select(one => one.Value)];
}
