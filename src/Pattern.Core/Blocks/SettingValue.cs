using System;
using System.Globalization;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>One setting of a method or a design with the value that a block was made with.</summary>
public sealed class SettingValue
{
    private readonly double _number;

    private SettingValue(string name, SettingKind kind, bool isGiven, double number, string? text)
    {
        Name = name;
        Kind = kind;
        IsGiven = isGiven;
        _number = number;
        Text = text;
    }

    /// <summary>What the setting is called.</summary>
    public string Name { get; }

    /// <summary>What it is said in.</summary>
    public SettingKind Kind { get; }

    /// <summary>Whether there is a value; where there is none, the method decides.</summary>
    public bool IsGiven { get; }

    /// <summary>The value of a choice or a text; null for others.</summary>
    public string? Text { get; }

    /// <summary>The value as a <see cref="Length"/>, an <see cref="Angle"/>, a <see cref="Ratio"/> or, for a number, a <see cref="Scalar"/>; null for words and where no value is given.</summary>
    public IQuantity? Quantity => !IsGiven ? null : Kind switch
    {
        SettingKind.Length => Length.FromMillimeters(_number),
        SettingKind.Angle => Angle.FromRadians(_number),
        SettingKind.Count => Scalar.FromAmount(_number),
        SettingKind.Share => Ratio.FromDecimalFractions(_number),
        _ => null,
    };

    /// <summary>Millimetres, radians, a fraction or a number.</summary>
    internal double Raw => _number;

    internal double? RawOrNull => IsGiven ? _number : null;

    /// <summary>The value in words, lengths read off a tape.</summary>
    /// <param name="step">The tape and its finest mark; a length that it cannot show exactly carries a <c>~</c>.</param>
    public string Describe(TapeStep step) => Describe(step, Phrasebook.English);

    /// <summary>Name and value, read in sixteenths of an inch.</summary>
    public override string ToString() => Name + " " + Describe(TapeStep.Sixteenth);

    /// <summary>The value in another language.</summary>
    internal string Describe(TapeStep step, Phrasebook book) => !IsGiven ? book.Say("as needed") : Kind switch
    {
        SettingKind.Length => WorkedLength.GivenMm(null, _number).Describe(step),
        SettingKind.Angle => book.Say("{angle} degrees", ("angle", (_number * 180 / Math.PI).ToString("0.##", CultureInfo.InvariantCulture))),
        SettingKind.Count => _number.ToString("0", CultureInfo.InvariantCulture),
        SettingKind.Share => (_number * 100).ToString("0.##", CultureInfo.InvariantCulture) + " %",
        _ => book.Say(Text!),
    };

    internal static SettingValue Of(string name, SettingKind kind, double? number) => new(name, kind, number.HasValue, number ?? 0, null);

    internal static SettingValue Of(string name, SettingKind kind, string? text) => new(name, kind, text is not null, 0, text);

    internal bool IsSameAs(SettingValue other) => IsGiven == other.IsGiven && _number == other._number && Text == other.Text;
}
