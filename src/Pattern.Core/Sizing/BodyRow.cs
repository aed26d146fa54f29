using System.Diagnostics.Contracts;
using System.Globalization;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Sizing;

/// <summary>One row of a table of bodies: a body, or why it is none. Immutable.</summary>
public sealed class BodyRow
{
    internal BodyRow(int number, int line, BodyMeasurements body)
    {
        Number = number;
        Line = line;
        Body = body;
    }

    private BodyRow(int number, int line, string? column, DiagnosticCode code, string problem)
    {
        Number = number;
        Line = line;
        Column = column;
        Code = code;
        Problem = problem;
    }

    /// <summary>Its number, from 1: the first row under the column names.</summary>
    public int Number { get; }

    /// <summary>The line of the text on which it begins, from 1.</summary>
    public int Line { get; }

    /// <summary>The body; null where the row is none.</summary>
    public BodyMeasurements? Body { get; }

    /// <summary>Why the row is no body; null where it is one.</summary>
    public DiagnosticCode? Code { get; }

    /// <summary>Why, in words, with row, line and column; null where the row is a body.</summary>
    public string? Problem { get; }

    /// <summary>The column that is to blame; null where the row is a body, or has the wrong number of cells.</summary>
    public string? Column { get; }

    /// <summary>A row for a body that comes from elsewhere.</summary>
    /// <param name="number">Its number, from 1.</param>
    /// <param name="body">The body.</param>
    [Pure]
    public static BodyRow Of(int number, BodyMeasurements body) => new(Guard.InRange(number, 1, int.MaxValue, nameof(number)), number, Guard.NotNull(body, nameof(body)));

    /// <summary>Number, and body or problem.</summary>
    public override string ToString() => Problem ?? "row " + Number.ToString(CultureInfo.InvariantCulture) + ": " + Body;

    internal static BodyRow Bad(int number, int line, string? column, DiagnosticCode code, params object[] facts) => Wrong(number, line, column, code, MessageRegistry.Format(code, facts));

    internal static BodyRow Wrong(int number, int line, string? column, DiagnosticCode code, string problem) => new(number, line, column, code, problem);
}
