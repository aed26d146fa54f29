using System;
using Pattern.Core.Diagnostics;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Measurement;

/// <summary>Refuses what no human body measures, and says which unit was probably meant.</summary>
internal static class Plausibility
{
    private static readonly LengthUnit[] UnitsOfTapes = [LengthUnit.Centimeter, LengthUnit.Inch, LengthUnit.Millimeter];

    internal static void Check(BodyMeasurement key, Length value, double valueMm, string parameter)
    {
        if (Fault(key, value, valueMm) is { } fault)
        {
            throw new ArgumentOutOfRangeException(parameter, MessageRegistry.Format(fault.Code, fault.Facts));
        }
    }

    /// <summary>What is wrong with a measurement, or null where a body may measure that.</summary>
    internal static (DiagnosticCode Code, object[] Facts)? Fault(BodyMeasurement key, Length value, double valueMm)
    {
        if (key.IsPlausible(valueMm))
        {
            return null;
        }

        if (valueMm <= 0.0)
        {
            return (DiagnosticCode.BodyMeasurementNotPositive, [key.Term, value]);
        }

        double number = (double)value.Value;
        foreach (LengthUnit unit in UnitsOfTapes)
        {
            if (unit != value.Unit && key.IsPlausible(Length.From(number, unit).Millimeters))
            {
                return (DiagnosticCode.BodyMeasurementUnitSwapped, [key.Term, value, key.LeastPlausible, key.MostPlausible, Written(number, unit)]);
            }
        }

        return (DiagnosticCode.BodyMeasurementImplausible, [key.Term, value, key.LeastPlausible, key.MostPlausible]);
    }

    private static string Written(double number, LengthUnit unit)
        => FormattableString.Invariant($"{number:0.###} {unit switch { LengthUnit.Inch => "in", LengthUnit.Centimeter => "cm", _ => "mm" }}");
}
