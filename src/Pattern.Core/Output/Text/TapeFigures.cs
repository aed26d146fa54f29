using System.Collections.Generic;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>Lengths as figures of one tape: on its usual mark where they lie on one, else on a finer mark, else the nearest usual one and marked as rounded.</summary>
internal sealed class TapeFigures
{
    private static readonly TapeStep[] Inches = [TapeStep.Half, TapeStep.Quarter, TapeStep.Eighth, TapeStep.Sixteenth, TapeStep.ThirtySecond, TapeStep.SixtyFourth];
    private static readonly TapeStep[] Metric = [TapeStep.Millimeter, TapeStep.HalfMillimeter, TapeStep.TenthMillimeter, TapeStep.HundredthMillimeter];

    private const string Rounded = "~";

    private readonly List<TapeStep> _steps = [];
    private readonly TapeStyle _style;

    internal TapeFigures(TapeStep usual, TapeStyle style)
    {
        _style = style;
        _steps.Add(usual);
        foreach (TapeStep step in usual.IsMetric ? Metric : Inches)
        {
            if (step.Parts > usual.Parts)
            {
                _steps.Add(step);
            }
        }
    }

    internal TapeStep Usual => _steps[0];

    /// <summary>A length that follows from others: on a usual mark, or marked as rounded to it.</summary>
    internal string Near(double lengthMm) => (Tape.IsOnMark(lengthMm, Usual) ? string.Empty : Rounded) + TapeText.Said(lengthMm, Usual, _style) + TapeText.UnitSuffix(Usual, _style);

    /// <summary>A length that somebody measured or chose: never rounded where any mark of the tape shows it.</summary>
    internal string Of(double lengthMm)
    {
        foreach (TapeStep step in _steps)
        {
            if (Tape.IsOnMark(lengthMm, step))
            {
                return TapeText.WithUnit(lengthMm, step, _style);
            }
        }

        return Near(lengthMm);
    }
}
