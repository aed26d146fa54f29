using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Globalization;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>Something that a drafting method or a design lets its user choose: its name, its usual value and what is allowed.</summary>
/// <example><code>
/// MethodSetting&lt;Length&gt; width = MethodSetting.OfLength("apron width", usual: Tape.Inches("24"), least: Tape.Inches("10"), most: Tape.Inches("60"));
/// </code></example>
public abstract class MethodSetting
{
    private const double RoundingRaw = 1e-9;

    private readonly string[] _choices;

    private protected MethodSetting(
        string name, SettingKind kind, double least, double most, string[] choices, SettingValue usual, SettingValue usualMetric, bool isPrinted, Action<string>? check)
    {
        Name = name;
        Kind = kind;
        LeastRaw = least;
        MostRaw = most;
        _choices = choices;
        Usual = usual;
        UsualMetric = usualMetric;
        IsAlwaysPrinted = isPrinted;
        Check = check;
    }

    /// <summary>What it is called on sheets and in files, in lower case words.</summary>
    public string Name { get; }

    /// <summary>What it is said in.</summary>
    public SettingKind Kind { get; }

    /// <summary>The value that it has where nobody says another; not given where the method decides.</summary>
    public SettingValue Usual { get; }

    /// <summary>The same for a body that was measured in centimetres: a round figure on that tape.</summary>
    public SettingValue UsualMetric { get; }

    /// <summary>The least value, in the quantity of <see cref="Kind"/>; null for words.</summary>
    public IQuantity? Least => SettingValue.Of(Name, Kind, LeastRaw).Quantity;

    /// <summary>The largest value, in the quantity of <see cref="Kind"/>; null for words.</summary>
    public IQuantity? Most => SettingValue.Of(Name, Kind, MostRaw).Quantity;

    /// <summary>The words to choose from; none for other kinds.</summary>
    public IReadOnlyList<string> Choices => _choices;

    /// <summary>Whether sheets print it in any case. Others are printed where they differ from what is usual.</summary>
    public bool IsAlwaysPrinted { get; }

    internal SettingValue UsualIn(LengthUnit unit) => Tape.IsMetric(unit, nameof(unit)) ? UsualMetric : Usual;

    internal double LeastRaw { get; }

    internal double MostRaw { get; }

    /// <summary>Refuses a text that cannot be used; null where any text can.</summary>
    private protected Action<string>? Check { get; }

    /// <summary>A length.</summary>
    /// <param name="name">Lower case words; letters, digits, blanks and hyphens, 1 to 40 characters.</param>
    /// <param name="usual">What it is where nobody says another; null where the method decides.</param>
    /// <param name="least">The least value.</param>
    /// <param name="most">The largest value.</param>
    /// <exception cref="ArgumentException">The name is unusable, or the usual value out of range.</exception>
    [Pure]
    public static MethodSetting<Length> OfLength(string name, Length? usual, Length least, Length most)
        => Ranged<Length>(name, SettingKind.Length, usual is { } length ? Guard.Millimetres(length, nameof(usual)) : null, Guard.Millimetres(least, nameof(least)), Guard.Millimetres(most, nameof(most)));

    /// <summary>An angle.</summary>
    /// <inheritdoc cref="OfLength"/>
    [Pure]
    public static MethodSetting<Angle> OfAngle(string name, Angle? usual, Angle least, Angle most)
        => Ranged<Angle>(name, SettingKind.Angle, usual?.Radians, least.Radians, most.Radians);

    /// <summary>A number of things.</summary>
    /// <inheritdoc cref="OfLength"/>
    [Pure]
    public static MethodSetting<int> OfCount(string name, int? usual, int least, int most) => Ranged<int>(name, SettingKind.Count, usual, least, most);

    /// <summary>A part of something, such as half of a dart.</summary>
    /// <inheritdoc cref="OfLength"/>
    [Pure]
    public static MethodSetting<Ratio> OfShare(string name, Ratio? usual, Ratio least, Ratio most)
        => Ranged<Ratio>(name, SettingKind.Share, usual?.DecimalFractions, least.DecimalFractions, most.DecimalFractions);

    /// <summary>One of a few words.</summary>
    /// <param name="name">Lower case words; letters, digits, blanks and hyphens, 1 to 40 characters.</param>
    /// <param name="usual">What it is where nobody says another: one of the choices.</param>
    /// <param name="choices">The words to choose from.</param>
    /// <exception cref="ArgumentException">The name is unusable, or the usual value is none of the choices.</exception>
    [Pure]
    public static MethodSetting<string> OfChoice(string name, string usual, params string[] choices)
    {
        string[] words = [.. Guard.NotNull(choices, nameof(choices))];
        SettingValue value = SettingValue.Of(name, SettingKind.Choice, Guard.NotNull(usual, nameof(usual)));
        var setting = new MethodSetting<string>(Guard.Identifier(name, nameof(name)), SettingKind.Choice, 0, 0, words, value, value, isPrinted: true);
        setting.RefuseWrong(setting.Usual, nameof(usual));
        return setting;
    }

    /// <summary>A text.</summary>
    /// <param name="name">Lower case words; letters, digits, blanks and hyphens, 1 to 40 characters.</param>
    /// <param name="usual">What it is where nobody says another.</param>
    /// <param name="check">Throws a <see cref="FormatException"/> where a text cannot be used, such as a table that cannot be read; null where any text can.</param>
    /// <exception cref="ArgumentException">The name is unusable.</exception>
    /// <exception cref="FormatException">The usual text cannot be used.</exception>
    [Pure]
    public static MethodSetting<string> OfText(string name, string usual, Action<string>? check = null)
    {
        SettingValue value = SettingValue.Of(name, SettingKind.Text, Guard.NotNull(usual, nameof(usual)));
        var setting = new MethodSetting<string>(Guard.Identifier(name, nameof(name)), SettingKind.Text, 0, 0, [], value, value, isPrinted: false, check);
        setting.RefuseWrong(setting.Usual, nameof(usual));
        return setting;
    }

    /// <summary>Name, kind and usual value.</summary>
    public override string ToString() => FormattableString.Invariant($"{Name}, {Kind}, usually {Usual.Describe(TapeStep.Sixteenth)}");

    /// <summary>Refuses a value out of range.</summary>
    internal void RefuseWrong(SettingValue value, string parameter)
    {
        if (!value.IsGiven)
        {
            return;
        }

        if (Kind == SettingKind.Text)
        {
            Check?.Invoke(value.Text!);
            return;
        }

        bool isRight = Kind switch
        {
            SettingKind.Choice => Array.IndexOf(_choices, value.Text) >= 0,
            // Three inches are 76.2 mm, but 3 x 25.4 is a bit less: a bound said in the other unit is within it.
            _ => value.Raw >= LeastRaw - RoundingRaw && value.Raw <= MostRaw + RoundingRaw,
        };
        if (isRight)
        {
            return;
        }

        throw new ArgumentOutOfRangeException(parameter, Kind == SettingKind.Choice
            ? MessageRegistry.Format(DiagnosticCode.SettingChoiceUnknown, Name, value.Text!, string.Join(", ", _choices))
            : Kind == SettingKind.Count
                ? MessageRegistry.Format(DiagnosticCode.CountOutOfRange, Name, value.Raw.ToString(CultureInfo.InvariantCulture), LeastRaw, MostRaw)
                : MessageRegistry.Format(DiagnosticCode.QuantityOutOfRange, Name, value.Quantity!, Least!, Most!));
    }

    private static MethodSetting<T> Ranged<T>(string name, SettingKind kind, double? usual, double least, double most)
    {
        SettingValue value = SettingValue.Of(name, kind, usual);
        var setting = new MethodSetting<T>(Guard.Identifier(name, nameof(name)), kind, least, most, [], value, value, isPrinted: false);
        setting.RefuseWrong(setting.Usual, nameof(usual));
        return setting;
    }
}

/// <summary>A setting with the type that its values have: <see cref="Length"/>, <see cref="Angle"/>, <see cref="Ratio"/>, <see cref="int"/> or <see cref="string"/>.</summary>
/// <typeparam name="T">The type of its values.</typeparam>
public sealed class MethodSetting<T> : MethodSetting
{
    internal MethodSetting(
        string name, SettingKind kind, double least, double most, string[] choices, SettingValue usual, SettingValue usualMetric, bool isPrinted, Action<string>? check = null)
        : base(name, kind, least, most, choices, usual, usualMetric, isPrinted, check)
    {
    }

    /// <summary>The same setting, printed on every sheet, usual or not.</summary>
    [Pure]
    public MethodSetting<T> Printed() => new(Name, Kind, LeastRaw, MostRaw, [.. Choices], Usual, UsualMetric, isPrinted: true, Check);

    internal MethodSetting<T> Unprinted() => new(Name, Kind, LeastRaw, MostRaw, [.. Choices], Usual, UsualMetric, isPrinted: false, Check);

    /// <summary>The same setting with another usual value for bodies measured in centimetres, as a cutter with that tape would choose.</summary>
    /// <param name="usual">Within what is allowed.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not allowed.</exception>
    [Pure]
    public MethodSetting<T> InMetric(T usual) => new(Name, Kind, LeastRaw, MostRaw, [.. Choices], Usual, Value(usual), IsAlwaysPrinted, Check);

    internal SettingValue Value(T value) => value switch
    {
        Length length => Checked(SettingValue.Of(Name, Kind, Guard.Millimetres(length, Name))),
        Angle angle => Checked(SettingValue.Of(Name, Kind, Guard.Finite(angle.Radians, Name))),
        int count => Checked(SettingValue.Of(Name, Kind, count)),
        Ratio share => Checked(SettingValue.Of(Name, Kind, Guard.Finite(share.DecimalFractions, Name))),
        _ => Checked(SettingValue.Of(Name, Kind, Guard.NotNull(value as string, Name))),
    };

    private SettingValue Checked(SettingValue value)
    {
        RefuseWrong(value, Name);
        return value;
    }
}
