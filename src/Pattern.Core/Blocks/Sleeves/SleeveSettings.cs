using System;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>Every setting of a sleeve: its name in files, its usual value, what is allowed, and where <see cref="SleeveOptions"/> keeps it.</summary>
/// <remarks>The builder's methods document each.</remarks>
internal static class SleeveSettings
{
    internal const double MostWidthEaseMm = 300;
    internal const double MostCapEaseMm = 100;
    internal const double LeastLengthMm = 50;
    internal const double MostLengthMm = 1000;
    internal const double MostWristEaseMm = 600;
    internal const double LeastElbowMm = 2;
    internal const double MostElbowMm = 60;

    private static readonly string[] Fits = ["close", "easy"];
    private static readonly string[] Lengths = ["long", "three-quarter", "short"];
    private static readonly string[] Elbows = ["straight", "eased", "dart", "two pieces"];

    private static readonly (MethodSetting Setting, Func<SleeveOptions, SettingValue> Get, Func<SleeveOptions, SettingValue, SleeveOptions> Set)[] Entries =
    [
        (MethodSetting.OfText("armhole", ArmholeText.None, text => ArmholeText.Read(text)),
            o => SettingValue.Of("armhole", SettingKind.Text, ArmholeText.Write(o.Armhole)),
            (o, value) => o with { Armhole = ArmholeText.Read(value.Text!) }),
        OfChoice("fit", Fits, o => (int)o.Fit, (o, i) => o with { Fit = (SleeveFit)i }),
        OfChoice("length", Lengths, o => (int)o.Length, (o, i) => o with { Length = (SleeveLength)i }),
        OfLength("sleeve length", LeastLengthMm, MostLengthMm, o => o.LengthMm, (o, mm) => o with { LengthMm = mm }),
        OfLength("upper arm ease", 0, MostWidthEaseMm, o => o.WidthEaseMm, (o, mm) => o with { WidthEaseMm = mm }),
        OfLength("cap ease", 0, MostCapEaseMm, o => o.CapEaseMm, (o, mm) => o with { CapEaseMm = mm }),
        (MethodSetting.OfShare("front share of cap ease", Ratio.FromDecimalFractions(SleeveOptions.Usual.FrontShare), Ratio.Zero, Ratio.FromDecimalFractions(1)),
            o => SettingValue.Of("front share of cap ease", SettingKind.Share, o.FrontShare),
            (o, value) => o with { FrontShare = value.Raw }),
        OfLength("cap height", 10, MostLengthMm, o => o.CapHeightMm, (o, mm) => o with { CapHeightMm = mm }),
        OfLength("wrist ease", 0, MostWristEaseMm, o => o.WristEaseMm, (o, mm) => o with { WristEaseMm = mm }),
        OfChoice("elbow", Elbows, o => (int)o.Elbow, (o, i) => o with { Elbow = (ElbowShaping)i }),
        OfLength("elbow shaping", LeastElbowMm, MostElbowMm, o => o.ElbowMm, (o, mm) => o with { ElbowMm = mm }),
    ];

    internal static MethodSetting[] All { get; } = Array.ConvertAll(Entries, entry => entry.Setting);

    internal static SettingValue ValueOf(SleeveOptions options, int index) => Entries[index].Get(options);

    internal static SleeveOptions OptionsOf(IMethodValues values)
    {
        if (values is SleeveOptions typed)
        {
            return typed;
        }

        SleeveOptions options = SleeveOptions.Usual;
        for (int i = 0; i < Entries.Length; i++)
        {
            options = Entries[i].Set(options, values.At(i));
        }

        return options;
    }

    private static (MethodSetting, Func<SleeveOptions, SettingValue>, Func<SleeveOptions, SettingValue, SleeveOptions>) OfLength(
        string name, double leastMm, double mostMm, Func<SleeveOptions, double?> get, Func<SleeveOptions, double?, SleeveOptions> set)
        => (MethodSetting.OfLength(name, null, UnitsNet.Length.FromMillimeters(leastMm), UnitsNet.Length.FromMillimeters(mostMm)),
            o => SettingValue.Of(name, SettingKind.Length, get(o)),
            (o, value) => set(o, value.RawOrNull));

    private static (MethodSetting, Func<SleeveOptions, SettingValue>, Func<SleeveOptions, SettingValue, SleeveOptions>) OfChoice(
        string name, string[] words, Func<SleeveOptions, int> get, Func<SleeveOptions, int, SleeveOptions> set)
        => (MethodSetting.OfChoice(name, words[0], words), o => SettingValue.Of(name, SettingKind.Choice, words[get(o)]), (o, value) => set(o, Array.IndexOf(words, value.Text)));
}
