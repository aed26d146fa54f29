using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Sizing;

/// <summary>A method tried on one body: what came of it, and why. Immutable.</summary>
/// <example><code>
/// Trial trial = Trial.Of(BodyRow.Of(1, body), body => SkirtBlock.For(body).WithLength(Tape.Inches("26")).Draft());
/// Console.WriteLine(trial.Outcome);
/// </code></example>
public sealed class Trial
{
    private Trial(BodyRow row, TrialOutcome outcome, Block? block, DiagnosticCode? code, string? reason)
    {
        Row = row;
        Outcome = outcome;
        Block = block;
        Code = code;
        Reason = reason;
    }

    /// <summary>The body, or the row that is none.</summary>
    public BodyRow Row { get; }

    /// <summary>What came of it.</summary>
    public TrialOutcome Outcome { get; }

    /// <summary>The block, where one was drafted, passed or failed; else null.</summary>
    public Block? Block { get; }

    /// <summary>Why it did not pass; null where it did.</summary>
    public DiagnosticCode? Code { get; }

    /// <summary>Why, in words; null where it passed.</summary>
    public string? Reason { get; }

    /// <summary>Tries a method, every setting as usual.</summary>
    /// <inheritdoc cref="Of(BodyRow, Func{BodyMeasurements, Block})"/>
    /// <param name="row">The body.</param>
    /// <param name="method">The method.</param>
    [Pure]
    public static Trial Of(BodyRow row, DraftingMethod method)
    {
        Guard.NotNull(method, nameof(method));
        return Of(row, body => method.For(body).Draft());
    }

    /// <summary>Tries a draft.</summary>
    /// <remarks>Whatever the draft throws becomes the outcome: one body never stops the rest. Only what is no fault of a draft comes through: the end of memory, and a caller who cancels.</remarks>
    /// <param name="row">The body; for a row that is none the draft is not asked.</param>
    /// <param name="draft">Drafts a block for a body.</param>
    [Pure]
    public static Trial Of(BodyRow row, Func<BodyMeasurements, Block> draft)
    {
        Guard.NotNull(draft, nameof(draft));
        if (Guard.NotNull(row, nameof(row)).Body is not { } body)
        {
            return new Trial(row, TrialOutcome.BadRow, null, row.Code, row.Problem);
        }

        try
        {
            if (draft(body) is not { } block)
            {
                return new Trial(row, TrialOutcome.Failed, null, DiagnosticCode.MethodBroke, MessageRegistry.Format(DiagnosticCode.MethodBroke, "nothing to show", "it returned no block."));
            }

            return block.Report.Passed
                ? new Trial(row, TrialOutcome.Passed, block, null, null)
                : new Trial(row, TrialOutcome.Failed, block, DiagnosticCode.ChecksFailed, block.Report.Verdict());
        }
        catch (ConstructionException refusal)
        {
            return new Trial(row, TrialOutcome.Refused, null, refusal.Code, refusal.Message);
        }
        catch (Exception broke) when (broke is not (OutOfMemoryException or OperationCanceledException))
        {
            return new Trial(row, TrialOutcome.Failed, null, DiagnosticCode.MethodBroke, MessageRegistry.Format(DiagnosticCode.MethodBroke, broke.GetType().Name, broke.Message));
        }
    }

    /// <summary>Row, outcome and reason.</summary>
    public override string ToString() => Row + ": " + Outcome + (Reason is null ? string.Empty : ", " + Reason);
}
