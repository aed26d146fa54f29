using System.Globalization;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Sizing;

/// <summary>One reason for which bodies did not pass, or got advice, and how many. Immutable.</summary>
public sealed class TrialReason
{
    internal TrialReason(TrialOutcome outcome, DiagnosticCode? code, string what, string example, int firstRow, int count)
    {
        Outcome = outcome;
        Code = code;
        What = what;
        Example = example;
        FirstRow = firstRow;
        Count = count;
    }

    /// <summary>What came of these bodies; for advice <see cref="TrialOutcome.Passed"/>.</summary>
    public TrialOutcome Outcome { get; }

    /// <summary>The code; null for advice.</summary>
    public DiagnosticCode? Code { get; }

    /// <summary>The check and its panel for a failure or advice, else the code in words.</summary>
    public string What { get; }

    /// <summary>What was said to the first of these bodies.</summary>
    public string Example { get; }

    /// <summary>The row of the first of these bodies.</summary>
    public int FirstRow { get; }

    /// <summary>How many bodies.</summary>
    public int Count { get; }

    /// <summary>Reason and count.</summary>
    public override string ToString() => What + ": " + Count.ToString(CultureInfo.InvariantCulture);

    internal TrialReason Again() => new(Outcome, Code, What, Example, FirstRow, Count + 1);
}
