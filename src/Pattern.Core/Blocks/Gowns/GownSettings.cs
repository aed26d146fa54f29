using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>What the user of the gown method may choose: all of a bodice, and of the skirt and sleeve below it. The methods of <see cref="GownBlockBuilder"/> give the reason of each.</summary>
internal static class GownSettings
{
    internal const string SetIn = "set in";
    internal const string None = "none";

    internal static readonly MethodSetting<Length> SkirtEase = MethodSetting
        .OfLength("skirt ease", Tape.Inches("1"), Tape.Inches("-4"), Tape.Inches("20")).InMetric(Length.FromCentimeters(2.5)).Printed();

    internal static readonly MethodSetting<Length> SkirtLength = MethodSetting
        .OfLength("skirt length", Tape.Inches("24"), Tape.Inches("10"), Tape.Inches("60")).InMetric(Length.FromCentimeters(60)).Printed();

    internal static readonly MethodSetting<string> Sleeves = MethodSetting.OfChoice("sleeves", SetIn, SetIn, None);

    internal static readonly MethodSetting<Length> CapEase = MethodSetting
        .OfLength("cap ease", null, Length.Zero, Tape.Inches("3"));

    internal static readonly MethodSetting[] All = [.. BodiceSettings.All, SkirtEase, SkirtLength, Sleeves, CapEase];
}
