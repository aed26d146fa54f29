using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>One drawn figure, marked against the block. Immutable.</summary>
public sealed class MarkedFigure
{
    internal MarkedFigure(int row, string name, MarkVerdict verdict)
    {
        Row = row;
        Name = name;
        Verdict = verdict;
    }

    /// <summary>Its row, from 1: the first under the column names.</summary>
    public int Row { get; }

    /// <summary>What was measured on the drawing, as its row says.</summary>
    public string Name { get; }

    /// <summary>What it is worth.</summary>
    public MarkVerdict Verdict { get; }

    /// <summary>What was drawn; null where it could not be read.</summary>
    public Length? Drawn => ToLength(DrawnMm);

    /// <summary>What the block has; null where it has no such figure.</summary>
    public Length? Expected => ToLength(ExpectedMm);

    /// <summary>What a draft with every distance laid to the nearest mark of the tape has; null where it has no such figure.</summary>
    public Length? OffTape => ToLength(OffTapeMm);

    /// <summary>Drawn less expected; null where either is.</summary>
    public Length? Off => ToLength(DrawnMm - ExpectedMm);

    /// <summary>The step that the figure comes from; null where it was not marked, or no step speaks of it.</summary>
    public Step? Step { get; internal init; }

    /// <summary>The arithmetic behind it: of the figure itself, else of what its step lays off. Null where there is none.</summary>
    public WorkedLength? Working { get; internal init; }

    /// <summary>Figures of the same sheet that are wrong and that this one is drawn from: mend those first.</summary>
    public IReadOnlyList<string> FollowsFrom { get; internal init; } = [];

    /// <summary>Whether it is wrong, and is what the hand draft has before truing: the steps that true it were left out.</summary>
    public bool IsUntrued { get; internal init; }

    /// <summary>Why it was not marked, with row and column; null where it was.</summary>
    public string? Problem { get; internal init; }

    /// <summary>The code of <see cref="Problem"/>; null where it was marked.</summary>
    public DiagnosticCode? Code { get; internal init; }

    /// <summary>The column that is to blame, <c>figure</c> or <c>value</c>; null where it was marked, or the whole row is to blame.</summary>
    public string? Column { get; internal init; }

    internal double? DrawnMm { get; init; }

    internal double? ExpectedMm { get; init; }

    internal double? OffTapeMm { get; init; }

    /// <summary>The mark in words.</summary>
    /// <param name="tape">The finest mark of the tape that figures are read off; one that it cannot show exactly carries a <c>~</c>.</param>
    public string Describe(TapeStep tape)
    {
        if (Verdict == MarkVerdict.NotMarked)
        {
            return Problem!;
        }

        var text = new StringBuilder(Name).Append(": drawn ").Append(Figure(DrawnMm!.Value, tape)).Append(", ");
        if (Verdict == MarkVerdict.Right)
        {
            return text.Append("right").ToString();
        }

        text.Append("expected ").Append(Figure(ExpectedMm!.Value, tape));
        if (Verdict == MarkVerdict.WithinRounding)
        {
            return text.Append(", within the rounding").ToString();
        }

        double offMm = DrawnMm.Value - ExpectedMm.Value;
        text.Append(", ").Append(Figure(Math.Abs(offMm), tape)).Append(offMm > 0 ? " too long" : " too short").Append(": wrong");
        if (Step is { } step)
        {
            text.Append(". Step ").Append(step.Number.ToString(CultureInfo.InvariantCulture)).Append(": ").Append(step.Describe(tape));
        }

        if (Working is { Operands.Count: > 0 } working && working.Describe(tape) is var worked && text.ToString().IndexOf(worked, StringComparison.Ordinal) < 0)
        {
            text.Append(Step is null ? ". " : " ").Append("Working: ").Append(worked).Append('.');
        }

        if (IsUntrued)
        {
            text.Append(" This is the figure before truing.");
        }

        if (FollowsFrom.Count > 0)
        {
            text.Append(" Follows from ").Append(string.Join(", ", FollowsFrom)).Append(": mend that first.");
        }

        return text.ToString();
    }

    /// <summary>The mark in words, in sixteenths of an inch.</summary>
    public override string ToString() => Describe(TapeStep.Sixteenth);

    private static string Figure(double mm, TapeStep tape) => WorkedLength.DrawnMm(null, mm).Describe(tape);

    private static Length? ToLength(double? mm) => mm is { } known ? Length.FromMillimeters(known) : null;
}
