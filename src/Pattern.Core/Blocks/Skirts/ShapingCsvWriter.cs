using System.Globalization;
using System.Text;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>Writes a shaping table as comma-separated text.</summary>
internal static class ShapingCsvWriter
{
    internal static string Write(TabulatedShaping table)
    {
        var text = new StringBuilder();
        text.Append("# name: ").Append(table.Name).Append('\n');
        text.Append("# unit: ").Append(ShapingCsvWords.Of(table.Unit)).Append('\n');
        text.Append("# lookup: ").Append(ShapingCsvWords.Of(table.Lookup)).Append('\n');
        text.Append("# outside: ").Append(ShapingCsvWords.Of(table.OutsideRule)).Append('\n');
        text.Append(string.Join(",", ShapingColumns.Names)).Append('\n');
        foreach (ShapingRow row in table.Rows)
        {
            double[] figuresMm = row.ToMm();
            for (int i = 0; i < figuresMm.Length; i++)
            {
                text.Append(i == 0 ? string.Empty : ",").Append(Figure(figuresMm[i], table.Unit));
            }

            text.Append('\n');
        }

        return text.ToString();
    }

    // The plainest text that reads back to the same double; millimetres with their unit always do.
    private static string Figure(double lengthMm, LengthUnit unit)
    {
        string plain = unit == LengthUnit.Inch && Tape.IsOnMark(lengthMm, TapeStep.SixtyFourth)
            ? TapeText.Number(lengthMm, TapeStep.SixtyFourth, TapeStyle.Plain)
            : Decimal(Length.FromMillimeters(lengthMm).As(unit));
        return IsSame(plain, unit, lengthMm) ? plain : Decimal(lengthMm) + " mm";
    }

    private static bool IsSame(string text, LengthUnit unit, double lengthMm)
    {
        TapeReading reading = TapeReader.Read(text, unit);
        return reading.IsLength && reading.Millimetres == lengthMm;
    }

    // Never an exponent: figures are small, and decimal holds 28 places.
    private static string Decimal(double number)
    {
        string shortest = number.ToString("R", CultureInfo.InvariantCulture);
        return shortest.IndexOf('E') < 0 ? shortest : number.ToString("0.#############################", CultureInfo.InvariantCulture);
    }
}
