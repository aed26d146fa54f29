using System.Globalization;
using System.Text;

namespace Pattern.Core.Measurement;

/// <summary>The working of a length as text.</summary>
internal static class WorkedText
{
    private const string Rounded = "~";

    // No reader follows more; deeper parts are printed by their value, so that no working can exhaust the stack.
    private const int DeepestWorking = 100;

    private enum Binding
    {
        Limit,
        Sum,
        Part,
    }

    internal static string Describe(WorkedLength length, TapeStep step, TapeStyle style)
    {
        var writer = new Writer(step, style);
        if (length.First is null)
        {
            writer.WriteLeaf(length);
        }
        else
        {
            writer.WriteWorking(length, 0);
            writer.Text.Append(" = ");
            writer.WriteFigure(length.ValueMm);
        }

        return writer.Text.Append(TapeText.UnitSuffix(step, style)).ToString();
    }

    internal static string WithName(WorkedLength length, TapeStep step, TapeStyle style)
        => length.First is null || length.Name is null ? Describe(length, step, style) : length.Name + ": " + Describe(length, step, style);

    /// <summary>Name and value without the working: <c>box width 20 3/8 in</c>.</summary>
    internal static string NameAndFigure(WorkedLength length, TapeStep step)
        => length.Name + " " + Figure(length.ValueMm, step) + TapeText.UnitSuffix(step, TapeStyle.Plain);

    /// <summary>A figure without its unit, marked where the step cannot show it exactly.</summary>
    internal static string Figure(double valueMm, TapeStep step, TapeStyle style = TapeStyle.Plain)
        => (Tape.IsOnMark(valueMm, step) ? string.Empty : Rounded) + TapeText.Number(valueMm, step, style);

    private static Binding BindingOf(WorkedLength length) => length switch
    {
        { First: null } or { Name: not null } => Binding.Part,
        { Operation: WorkedOperation.Sum or WorkedOperation.Difference } => Binding.Sum,
        { Operation: WorkedOperation.AtMost or WorkedOperation.AtLeast } => Binding.Limit,
        _ => Binding.Part,
    };

    private sealed class Writer(TapeStep step, TapeStyle style)
    {
        internal StringBuilder Text { get; } = new();

        internal void WriteFigure(double valueMm) => Text.Append(Figure(valueMm, step, style));

        internal void WriteLeaf(WorkedLength length)
        {
            if (length.Name is not null)
            {
                Text.Append(length.Name).Append(' ');
            }

            WriteFigure(length.ValueMm);
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
                    Text.Append(TapeText.Mixed(1, (long)length.Factor, style)).Append(" of ");
                    WriteOperand(length.First!, Binding.Part, depth);
                    break;
                case WorkedOperation.AtMost:
                case WorkedOperation.AtLeast:
                    WriteOperand(length.First!, Binding.Limit, depth);
                    Text.Append(length.Operation == WorkedOperation.AtMost ? ", at most " : ", at least ");
                    WriteOperand(length.Second!, Binding.Sum, depth);
                    break;
                default:
                    WriteLeaf(length);
                    break;
            }
        }

        private void WriteOperand(WorkedLength operand, Binding least, int depth)
        {
            if (operand.First is null || operand.Name is not null || depth >= DeepestWorking)
            {
                WriteLeaf(operand);
                return;
            }

            bool bracketed = BindingOf(operand) < least;
            Text.Append(bracketed ? "(" : string.Empty);
            WriteWorking(operand, depth + 1);
            Text.Append(bracketed ? ")" : string.Empty);
        }

        // Halves to sixty-fourths as a cutter says them: 1 1/2; anything else as a decimal number.
        private void WriteFactor(double factor)
        {
            const int parts = 64;
            double marks = factor * parts;
            bool isFraction = marks >= 0.0 && marks < 1e9 && marks == System.Math.Floor(marks);
            Text.Append(isFraction ? TapeText.Mixed((long)marks, parts, style) : factor.ToString("0.######", CultureInfo.InvariantCulture));
        }
    }
}
