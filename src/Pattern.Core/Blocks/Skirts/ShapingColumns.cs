using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>The columns of a shaping table, and what their figures may be.</summary>
internal static class ShapingColumns
{
    internal const int Difference = 0;
    internal const int FrontDart = 2;
    internal const int BackDart = 3;

    internal static readonly string[] Names = ["difference", "back_wider", "front_dart", "back_dart", "front_drop"];

    internal static string Unreadable(string place, TapeReading reading)
        => MessageRegistry.Format(DiagnosticCode.ShapingFigureUnreadable, place, MessageRegistry.Whole(reading.Message));

    /// <summary>What is wrong with a row, or null where it is right.</summary>
    /// <param name="figuresMm">Its figures in the order of <see cref="Names"/>.</param>
    /// <param name="before">The row before, or null for the first.</param>
    /// <param name="place">Says where a column of this row is.</param>
    internal static string? Fault(double[] figuresMm, ShapingRow? before, Func<int, string> place)
    {
        for (int i = 0; i < figuresMm.Length; i++)
        {
            double mostMm = i == Difference ? ShapingRow.MostDifferenceMm : ShapingRow.MostFigureMm;
            if (i is FrontDart or BackDart && figuresMm[i] < 0.0)
            {
                return MessageRegistry.Format(DiagnosticCode.ShapingIntakeNegative, place(i), Length.FromMillimeters(figuresMm[i]));
            }

            if (Math.Abs(figuresMm[i]) > mostMm)
            {
                return MessageRegistry.Format(
                    DiagnosticCode.ShapingFigureTooLarge, place(i), Length.FromMillimeters(figuresMm[i]), Length.FromMillimeters(mostMm));
            }
        }

        if (before is null || figuresMm[Difference] - before.DifferenceMm > Tape.OnTheMarkMm)
        {
            return null;
        }

        bool isTwice = Math.Abs(figuresMm[Difference] - before.DifferenceMm) <= Tape.OnTheMarkMm;
        return MessageRegistry.Format(
            isTwice ? DiagnosticCode.ShapingDifferenceTwice : DiagnosticCode.ShapingDifferenceOutOfOrder,
            place(Difference),
            Length.FromMillimeters(figuresMm[Difference]),
            before.Difference);
    }
}
