using System;
using System.Globalization;
using System.Text;

namespace Pattern.Core.Measurement;

/// <summary>The working of a length as text.</summary>
internal static class WorkedText
{
    /// <summary>What stands where the reader writes a figure.</summary>
    internal const string Blank = "______";

    private const string Rounded = "~";

    // No reader follows more; deeper parts are printed by their value, so that no working can exhaust the stack.
    private const int DeepestWorking = 100;

    // As many parts at most: a working that is used twice in the next, and that twice again, would double with each step.
    private const int MostParts = 200;

    private const int FactorParts = 64;
    private const int FactorDecimals = 6;
    private const string FactorFormat = "0.######";

    private enum Binding
    {
        Limit,
        Sum,
        Part,
    }

    internal static string Describe(WorkedLength length, TapeStep step, TapeStyle style) => Describe(length, step, style, null, out _);

    /// <summary>The working, its figures at the step; where that would print a sum that is false or round what a mark of the tape shows, at the next finer mark at
    /// which it does not; where there is none, the result alone.</summary>
    /// <param name="length">The length.</param>
    /// <param name="step">The tape and its finest mark.</param>
    /// <param name="style">Plain or typographic.</param>
    /// <param name="figures">What the text has printed under its name: those figures stay as they are; null where nothing is.</param>
    /// <param name="shown">The mark that the result stands on.</param>
    internal static string Describe(WorkedLength length, TapeStep step, TapeStyle style, NamedFigures? figures, out TapeStep shown)
    {
        if (figures is { LeavesBlank: true })
        {
            return WithBlank(length, step, style, figures, out shown);
        }

        if (figures is not null && figures.TryFind(length, out shown))
        {
            return NameAndFigure(length, shown, figures.Book);
        }

        TapeStep mark = StepOf(length, step, figures, out bool addsUp);
        shown = Coarser(length.ValueMm, step, mark);
        var writer = new Writer(step, mark, style, figures);
        if (length.First is null)
        {
            writer.WriteLeaf(length);
        }
        else
        {
            if (addsUp)
            {
                writer.WriteWorking(length, 0);
                writer.Text.Append(" = ");
            }
            else if (figures is not null)
            {
                // A reader of a whole sheet gets the working all the same, and is told that its result is no mark of the tape, or that its printed parts are too coarse for it.
                writer.WriteWorking(length, 0);
                string working = writer.Text.ToString();
                string sentence = new Sum(mark, figures).Rounds(length) ? "{working}, rounded: {figure}" : "{working}, from unrounded figures: {figure}";
                writer.Text.Clear().Append(figures.Book.Say(sentence, ("working", working), ("figure", writer.FigureOf(length.ValueMm))));
                return writer.Text.Append(TapeText.UnitSuffix(shown, style)).ToString();
            }

            writer.Text.Append(writer.FigureOf(length.ValueMm));
        }

        return writer.Text.Append(TapeText.UnitSuffix(shown, style)).ToString();
    }

    // Exact figures first; else the first mark at which rounded ones add up and none is rounded away to nothing. What was measured is read as finely as a hand can, and so is, on a whole
    // sheet, what adds up at no mark: others are worked out from it.
    private static TapeStep StepOf(WorkedLength length, TapeStep step, NamedFigures? figures, out bool addsUp)
    {
        TapeStep? rounded = null;
        TapeStep finest = step;
        for (TapeStep? finer = step; finer is { } candidate; finer = Finer(candidate))
        {
            finest = candidate;
            var sum = new Sum(candidate, figures);
            if (sum.AddsUp(length))
            {
                if (sum.IsExact)
                {
                    addsUp = true;
                    return candidate;
                }

                rounded = rounded is null || length.Operation == WorkedOperation.Drawn ? candidate : rounded;
            }
        }

        addsUp = rounded is not null;
        return rounded ?? (figures is null ? step : finest);
    }

    // No further than what a hand can lay off: 1/32 in or half a millimetre.
    private static TapeStep? Finer(TapeStep step) => step.IsMetric
        ? step.Parts == 1 ? TapeStep.HalfMillimeter : null
        : step.Parts switch { 2 => TapeStep.Quarter, 4 => TapeStep.Eighth, 8 => TapeStep.Sixteenth, 16 => TapeStep.ThirtySecond, _ => null };

    internal static string WithName(WorkedLength length, TapeStep step, TapeStyle style)
        => length.First is null || length.Name is null ? Describe(length, step, style) : length.Name + ": " + Describe(length, step, style);

    /// <summary>Name and value without the working: <c>box width 20 3/8 in</c>.</summary>
    internal static string NameAndFigure(WorkedLength length, TapeStep step) => NameAndFigure(length, step, Phrasebook.English);

    internal static string NameAndFigure(WorkedLength length, TapeStep step, Phrasebook book)
        => book.Say(length.Name ?? string.Empty) + " " + Figure(length.ValueMm, step) + TapeText.UnitSuffix(step, TapeStyle.Plain);

    /// <summary>A figure without its unit, marked where the step cannot show it exactly.</summary>
    internal static string Figure(double valueMm, TapeStep step, TapeStyle style = TapeStyle.Plain)
        => (Tape.IsOnMark(valueMm, step) ? string.Empty : Rounded) + TapeText.Said(valueMm, step, style);

    // Where the tape's own mark shows a figure exactly, no finer one is printed: 104.0 beside 53.25.
    private static TapeStep Coarser(double valueMm, TapeStep step, TapeStep mark) => Tape.IsOnMark(valueMm, step) ? step : mark;

    private static string WithBlank(WorkedLength length, TapeStep step, TapeStyle style, NamedFigures figures, out TapeStep shown)
    {
        bool isKnown = figures.TryFind(length, out _);
        shown = step;
        var writer = new Writer(step, step, style, figures);
        if (length.First is null || isKnown)
        {
            writer.WriteLeaf(length);
            if (length.Name is not null)
            {
                writer.Text.Append(' ').Append(Blank);
            }
        }
        else
        {
            writer.WriteWorking(length, 0);
            writer.Text.Append(" = ").Append(Blank);
        }

        return writer.Text.Append(TapeText.UnitSuffix(step, style)).ToString();
    }

    /// <summary>How a length is worked out, in words, without its result.</summary>
    internal static string Formula(WorkedLength length, TapeStep step, NamedFigures figures)
    {
        var writer = new Writer(step, step, TapeStyle.Plain, figures);
        writer.WriteWorking(length, 0);
        return writer.Text.ToString();
    }

    private static TapeStep MarkOf(WorkedLength length, TapeStep step, NamedFigures? figures)
        => figures is not null && figures.TryFind(length, out TapeStep mark) ? mark : step;

    private static bool IsFraction(double factor)
    {
        double marks = factor * FactorParts;
        return marks >= 0.0 && marks < 1e9 && marks == Math.Floor(marks);
    }

    // As it is printed.
    private static Fraction FactorOf(double factor)
        => IsFraction(factor) ? Fraction.Of(factor * FactorParts, FactorParts) : Fraction.Of(Math.Round(factor, FactorDecimals), 1);

    private static Binding BindingOf(WorkedLength length) => length switch
    {
        { First: null } or { Name: not null } => Binding.Part,
        { Operation: WorkedOperation.Sum or WorkedOperation.Difference } => Binding.Sum,
        { Operation: WorkedOperation.AtMost or WorkedOperation.AtLeast } => Binding.Limit,
        _ => Binding.Part,
    };

    /// <summary>Which operands are worked out and which are printed by their value: for whoever walks a working from left to right.</summary>
    private abstract class Walk
    {
        private int _parts;

        protected bool GoesInto(WorkedLength operand, int depth)
            => operand.First is not null && operand.Name is null && depth < DeepestWorking && _parts < MostParts && ++_parts > 0;
    }

    private sealed class Writer(TapeStep step, TapeStep mark, TapeStyle style, NamedFigures? figures) : Walk
    {
        internal StringBuilder Text { get; } = new();

        private Phrasebook Book => figures?.Book ?? Phrasebook.English;

        internal string FigureOf(double valueMm) => Figure(valueMm, Coarser(valueMm, step, mark), style);

        internal void WriteLeaf(WorkedLength length, bool isPart = false)
        {
            if (figures is { LeavesBlank: true })
            {
                // What has no name is a constant of the method where it stands in a working, and a figure to find where it stands alone.
                Text.Append(length.Name is { } name ? Book.Say(name) : isPart && length.Operation == WorkedOperation.Given ? FigureOf(length.ValueMm) : Blank);
                return;
            }

            if (length.Name is { } known)
            {
                Text.Append(Book.Say(known)).Append(' ');
            }

            Text.Append(Figure(length.ValueMm, MarkOf(length, Coarser(length.ValueMm, step, mark), figures), style));
        }

        // The working of a length, its own name left out.
        internal void WriteWorking(WorkedLength length, int depth)
        {
            switch (length.Operation)
            {
                case WorkedOperation.Sum:
                    WriteOperand(length.First!, Binding.Sum, depth);
                    Text.Append(" + ");
                    WriteOperand(length.Second!, Binding.Sum, depth);
                    break;
                case WorkedOperation.Difference:
                    WriteOperand(length.First!, Binding.Sum, depth);
                    Text.Append(style == TapeStyle.Plain ? " - " : " " + TapeText.Minus + " ");
                    WriteOperand(length.Second!, Binding.Part, depth);
                    break;
                case WorkedOperation.Product:
                    WriteFactor(length.Factor);
                    Text.Append(" \u00D7 ");
                    WriteOperand(length.First!, Binding.Part, depth);
                    break;
                case WorkedOperation.Quotient:
                    string part = Fraction.Of(1m, (decimal)length.Factor).ToString(style);
                    Text.Append(Book.Say("{part} of {length}", ("part", part), ("length", OperandOf(length.First!, Binding.Part, depth))));
                    break;
                case WorkedOperation.AtMost:
                case WorkedOperation.AtLeast:
                    string limited = OperandOf(length.First!, Binding.Limit, depth);
                    string limit = OperandOf(length.Second!, Binding.Sum, depth);
                    Text.Append(Book.Say(length.Operation == WorkedOperation.AtMost ? "{length}, at most {limit}" : "{length}, at least {limit}", ("length", limited), ("limit", limit)));
                    break;
                default:
                    WriteLeaf(length);
                    break;
            }
        }

        // Taken out of the text again, for a language that puts it elsewhere.
        private string OperandOf(WorkedLength operand, Binding least, int depth)
        {
            int from = Text.Length;
            WriteOperand(operand, least, depth);
            string words = Text.ToString(from, Text.Length - from);
            Text.Length = from;
            return words;
        }

        private void WriteOperand(WorkedLength operand, Binding least, int depth)
        {
            if (!GoesInto(operand, depth))
            {
                WriteLeaf(operand, isPart: true);
                return;
            }

            bool bracketed = BindingOf(operand) < least;
            Text.Append(bracketed ? "(" : string.Empty);
            WriteWorking(operand, depth + 1);
            Text.Append(bracketed ? ")" : string.Empty);
        }

        // Halves to sixty-fourths as a cutter says them: 1 1/2; anything else as a decimal number.
        private void WriteFactor(double factor)
            => Text.Append(IsFraction(factor) ? FactorOf(factor).ToString(style) : factor.ToString(FactorFormat, CultureInfo.InvariantCulture));
    }

    /// <summary>The working as a reader would check it: from the figures that are printed, not from those behind them.</summary>
    private sealed class Sum(TapeStep step, NamedFigures? figures) : Walk
    {
        private bool _losesOne;

        internal bool IsExact { get; private set; } = true;

        internal bool AddsUp(WorkedLength length)
        {
            Fraction printed = Printed(length.ValueMm, step);
            Fraction worked = length.First is null ? printed : Worked(length, 0);
            return !_losesOne && printed.IsKnown && worked.Equals(printed);
        }

        /// <summary>Whether the printed result is the mark nearest to what its printed figures make.</summary>
        internal bool Rounds(WorkedLength length)
        {
            Fraction printed = Printed(length.ValueMm, step);
            Fraction off = Worked(length, 0) - printed;
            return !_losesOne && off.IsKnown && (off.Numerator < 0 ? -off : off).CompareTo(Fraction.Of(1m, 2 * step.Parts)) <= 0;
        }

        // In the unit of the tape: its figures may stand on different marks.
        private Fraction Printed(double valueMm, TapeStep mark)
        {
            double marks = Tape.MarksOf(valueMm, mark, TapeRounding.Nearest);
            bool isOnMark = Tape.IsOnMark(valueMm, mark);
            IsExact &= isOnMark;
            _losesOne |= marks == 0 && !isOnMark;
            return Fraction.Of(marks, mark.Parts);
        }

        private Fraction Worked(WorkedLength length, int depth) => length.Operation switch
        {
            WorkedOperation.Sum => Operand(length.First!, depth) + Operand(length.Second!, depth),
            WorkedOperation.Difference => Operand(length.First!, depth) - Operand(length.Second!, depth),
            WorkedOperation.Product => FactorOf(length.Factor) * Operand(length.First!, depth),
            WorkedOperation.Quotient => Operand(length.First!, depth) / (int)length.Factor,
            WorkedOperation.AtMost => Limited(Operand(length.First!, depth), Operand(length.Second!, depth), -1),
            WorkedOperation.AtLeast => Limited(Operand(length.First!, depth), Operand(length.Second!, depth), 1),
            _ => Printed(length.ValueMm, MarkOf(length, step, figures)),
        };

        private Fraction Operand(WorkedLength operand, int depth) => GoesInto(operand, depth) ? Worked(operand, depth + 1) : Printed(operand.ValueMm, MarkOf(operand, step, figures));

        private static Fraction Limited(Fraction value, Fraction limit, int side)
            => !value.IsKnown || !limit.IsKnown ? Fraction.Unknown : Math.Sign(value.CompareTo(limit)) == side ? value : limit;
    }
}
