using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace Pattern.Core.Diagnostics;

/// <summary>Callers' mistakes, caught at the door. Returns the raw value that the inside computes with.</summary>
internal static class Guard
{
    // A name that is refused for its length need not be repeated whole.
    private const int MostEchoed = 50;

    internal static T NotNull<T>([NotNull] T? value, string parameter)
        where T : class
        => value ?? throw new ArgumentNullException(parameter, MessageRegistry.Format(DiagnosticCode.ValueIsNull, parameter));

    /// <summary>A text that a reader will see, and so may not be empty or blank.</summary>
    internal static string Name([NotNull] string? value, string parameter)
        => string.IsNullOrWhiteSpace(NotNull(value, parameter))
            ? throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.NameEmpty, parameter), parameter)
            : value!;

    /// <summary>The beginning of a text that somebody else wrote, as a message repeats it.</summary>
    internal static string Echo(string text, int most)
        => text.Length <= most ? text : text.Substring(0, char.IsHighSurrogate(text[most - 1]) ? most - 1 : most) + "\u2026";

    /// <summary>Millimetres of a length that may be anything finite.</summary>
    internal static double Millimetres(Length value, string parameter)
    {
        double millimetres = value.Millimeters;
        return IsFinite(millimetres) ? millimetres : throw new ArgumentOutOfRangeException(parameter, MessageRegistry.Format(DiagnosticCode.NumberNotFinite, parameter));
    }

    /// <summary>Millimetres of a length within bounds, both ends allowed.</summary>
    internal static double Millimetres(Length value, double leastMm, double mostMm, string parameter)
    {
        double millimetres = Millimetres(value, parameter);
        return millimetres >= leastMm && millimetres <= mostMm
            ? millimetres
            : throw new ArgumentOutOfRangeException(
                parameter,
                MessageRegistry.Format(DiagnosticCode.QuantityOutOfRange, parameter, value, Length.FromMillimeters(leastMm), Length.FromMillimeters(mostMm)));
    }

    /// <summary>A part of a whole, 0 to 1.</summary>
    internal static double Share(Ratio value, string parameter)
    {
        double share = value.DecimalFractions;
        return share >= 0 && share <= 1
            ? share
            : throw new ArgumentOutOfRangeException(parameter, MessageRegistry.Format(DiagnosticCode.CountOutOfRange, parameter, value, "0 %", "100 %"));
    }

    internal static double Finite(double value, string parameter)
        => IsFinite(value) ? value : throw new ArgumentOutOfRangeException(parameter, MessageRegistry.Format(DiagnosticCode.NumberNotFinite, parameter));

    internal static int InRange(int value, int least, int most, string parameter)
        => value >= least && value <= most
            ? value
            : throw new ArgumentOutOfRangeException(parameter, MessageRegistry.Format(DiagnosticCode.CountOutOfRange, parameter, value, least, most));

    internal static string Identifier(string text, string parameter)
    {
        NotNull(text, parameter);
        return IsLabel(text) && text.ToLowerInvariant() == text
            ? text
            : throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.NameUnusable, parameter, Echo(text, MostEchoed)), parameter);
    }

    internal static string Label(string text, string parameter)
    {
        NotNull(text, parameter);
        return IsLabel(text) ? text : throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.LabelUnusable, parameter, Echo(text, MostEchoed)), parameter);
    }

    private static bool IsLabel(string text)
    {
        static bool IsLetter(char c) => c is (>= 'a' and <= 'z') or (>= 'A' and <= 'Z');
        bool usable = text.Length is >= 1 and <= 40 && IsLetter(text[0]);
        foreach (char c in text)
        {
            usable &= IsLetter(c) || c is (>= '0' and <= '9') or ' ' or '-';
        }

        return usable;
    }

    /// <summary>A choice of an enum whose values count up from zero.</summary>
    internal static int Choice(int value, int count, string parameter)
        => value >= 0 && value < count
            ? value
            : throw new ArgumentOutOfRangeException(parameter, MessageRegistry.Format(DiagnosticCode.ChoiceUnknown, parameter, value));

    internal static bool IsFinite(double value) => !double.IsNaN(value) && !double.IsInfinity(value);
}
