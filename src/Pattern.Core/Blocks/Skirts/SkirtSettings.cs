using System;
using System.Linq;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>Every setting of a skirt block: its name in files, its usual value, what is allowed, and where <see cref="SkirtOptions"/> keeps it.</summary>
/// <remarks>The builder's methods document each.</remarks>
internal static class SkirtSettings
{
    internal const string Shaped = "shaped";
    internal const string Level = "level";
    internal const string LoweredBack = "lowered back";
    internal const string ProportionalLaw = "proportional law";

    private const string UpperHip = "upper hip";
    private const string Yoke = "yoke";

    private static readonly string[] WaistlineWords = [Shaped, Level, LoweredBack];

    private static readonly SkirtOptions Usual = SkirtOptions.Default;

    private static readonly (MethodSetting Setting, Func<SkirtOptions, SettingValue> Get, Func<SkirtOptions, SettingValue, SkirtOptions> Set)[] Entries =
    [
        OfText("shaping", o => Words(o.Table), (o, text) => o with { Table = TableOf(text) }, RefuseUnreadable),
        OfLength("waist ease", -2, 8, o => o.WaistEaseMm, (o, mm) => o with { WaistEaseMm = mm!.Value }, isPrinted: true),
        OfLength("hip ease", -4, 20, o => o.HipEaseMm, (o, mm) => o with { HipEaseMm = mm!.Value }, isPrinted: true),
        OfLength("length", 1, 60, o => o.LengthMm, (o, mm) => o with { LengthMm = mm!.Value }, isPrinted: true),
        OfChoice("waistline", o => WaistlineWords[(int)o.Waistline], (o, word) => o with { Waistline = (Waistline)Array.IndexOf(WaistlineWords, word) }, WaistlineWords),
        OfMm("yoke depth", 10, 1000, o => o.Levels.GivenYokeMm, (o, mm) => mm is null ? o : o with { Levels = o.Levels with { Yoke = Mm(mm) } }),
        OfMm("upper hip depth", 10, 1000, o => o.Levels.GivenUpperHipMm, (o, mm) => mm is null ? o : o with { Levels = o.Levels with { UpperHip = Mm(mm) } }),
        OfMm("lower hip depth", 10, 1000, o => o.Levels.GivenLowerHipMm, (o, mm) => mm is null ? o : o with { Levels = o.Levels with { LowerHip = Mm(mm) } }),
        OfLength("side lift", 0, 3, o => o.SideLiftMm, (o, mm) => o with { SideLiftMm = mm }),
        OfLength("centre back lift", -2, 3, o => o.CentreBackLiftMm, (o, mm) => o with { CentreBackLiftMm = mm }),
        OfLength("centre front drop", -2, 4, o => o.CentreFrontDropMm, (o, mm) => o with { CentreFrontDropMm = mm }),
        .. OfDarts("front", o => o.FrontDarts, (o, darts) => o with { FrontDarts = darts }),
        .. OfDarts("back", o => o.BackDarts, (o, darts) => o with { BackDarts = darts }),
        OfLength("largest dart", 0.25, 4, o => o.LargestDartMm, (o, mm) => o with { LargestDartMm = mm!.Value }),
        OfLength("smallest dart", 0, 2, o => o.SmallestDartMm, (o, mm) => o with { SmallestDartMm = mm!.Value }),
        OfLength("largest side shaping", 0, 6, o => o.LargestSideShapingMm, (o, mm) => o with { LargestSideShapingMm = mm!.Value }),
        OfMm("side hem in", 0, 150, o => o.Fit.SideHemMm, (o, mm) => o with { Fit = o.Fit with { SideHem = Mm(mm) } }),
        OfMm("centre back hem in", 0, 150, o => o.Fit.CentreBackHemMm, (o, mm) => o with { Fit = o.Fit with { CentreBackHem = Mm(mm) } }),
        (MethodSetting.OfChoice("centre back blend", UpperHip, UpperHip, Yoke).Unprinted(),
            o => SettingValue.Of("centre back blend", SettingKind.Choice, o.Fit.CentreBackBlend == CentreBackBlend.Yoke ? Yoke : UpperHip),
            (o, value) => o with { Fit = o.Fit with { CentreBackBlend = value.Text == Yoke ? CentreBackBlend.Yoke : CentreBackBlend.UpperHip } }),
        OfMm("centre back waist in", 0, 150, o => o.Fit.CentreBackWaistMm, (o, mm) => o with { Fit = o.Fit with { CentreBackWaist = Mm(mm) } }),
    ];

    internal static MethodSetting[] All { get; } = Array.ConvertAll(Entries, entry => entry.Setting);

    internal static MethodSetting<string> Waistline { get; } = (MethodSetting<string>)All.Single(setting => setting.Name == "waistline");

    internal static SettingValue ValueOf(SkirtOptions options, int index) => Entries[index].Get(options);

    internal static SkirtOptions OptionsOf(IMethodValues values)
    {
        if (values is SkirtOptions typed)
        {
            return typed;
        }

        SkirtOptions options = Usual;
        for (int i = 0; i < Entries.Length; i++)
        {
            options = Entries[i].Set(options, values.At(i));
        }

        return options;
    }

    private static (MethodSetting, Func<SkirtOptions, SettingValue>, Func<SkirtOptions, SettingValue, SkirtOptions>) OfLength(
        string name, double leastInches, double mostInches, Func<SkirtOptions, double?> get, Func<SkirtOptions, double?, SkirtOptions> set, bool isPrinted = false)
        => OfMm(name, leastInches * 25.4, mostInches * 25.4, get, set, isPrinted);

    private static (MethodSetting, Func<SkirtOptions, SettingValue>, Func<SkirtOptions, SettingValue, SkirtOptions>) OfMm(
        string name, double leastMm, double mostMm, Func<SkirtOptions, double?> get, Func<SkirtOptions, double?, SkirtOptions> set, bool isPrinted = false)
    {
        MethodSetting<Length> setting = MethodSetting.OfLength(name, MmOrNull(get(Usual)), Length.FromMillimeters(leastMm), Length.FromMillimeters(mostMm));
        setting = get(SkirtOptions.Metric) is { } metricMm ? setting.InMetric(Length.FromMillimeters(metricMm)) : setting;
        return (isPrinted ? setting.Printed() : setting, o => SettingValue.Of(name, SettingKind.Length, get(o)), (o, value) => set(o, value.RawOrNull));
    }

    private static (MethodSetting, Func<SkirtOptions, SettingValue>, Func<SkirtOptions, SettingValue, SkirtOptions>) OfText(
        string name, Func<SkirtOptions, string> get, Func<SkirtOptions, string, SkirtOptions> set, Action<string> check)
        => (MethodSetting.OfText(name, get(Usual), check), o => SettingValue.Of(name, SettingKind.Text, get(o)), (o, value) => set(o, value.Text!));

    private static (MethodSetting, Func<SkirtOptions, SettingValue>, Func<SkirtOptions, SettingValue, SkirtOptions>) OfChoice(
        string name, Func<SkirtOptions, string> get, Func<SkirtOptions, string, SkirtOptions> set, params string[] choices)
        => (MethodSetting.OfChoice(name, get(Usual), choices), o => SettingValue.Of(name, SettingKind.Choice, get(o)), (o, value) => set(o, value.Text!));

    private static (MethodSetting, Func<SkirtOptions, SettingValue>, Func<SkirtOptions, SettingValue, SkirtOptions>)[] OfDarts(
        string panel, Func<SkirtOptions, DartPlan> get, Func<SkirtOptions, DartPlan, SkirtOptions> set)
    {
        string count = panel + " dart count";
        return
        [
            (MethodSetting.OfCount(count, null, 0, DartPlan.MostDarts),
                o => SettingValue.Of(count, SettingKind.Count, get(o).Count),
                (o, value) => set(o, get(o) with { Count = value.IsGiven ? (int)value.Raw : null })),
            OfMm(panel + " dart intake", 0, 500, o => get(o).IntakeMm, (o, mm) => set(o, get(o) with { Intake = MmOrNull(mm) })),
            OfMm(panel + " dart length", 10, 500, o => get(o).LengthMm, (o, mm) => set(o, get(o) with { Length = MmOrNull(mm) })),
            OfMm(panel + " dart shortening", 0, 100, o => get(o).GivenShorteningMm, (o, mm) => mm is null ? o : set(o, get(o) with { Shortening = Mm(mm) })),
        ];
    }

    private static Length Mm(double? mm) => Length.FromMillimeters(mm!.Value);

    private static Length? MmOrNull(double? mm) => mm is { } given ? Length.FromMillimeters(given) : null;

    // The library's law by its name, a table by its rows, and a law of somebody else by its name, which cannot be read back.
    private static string Words(ShapingTable table) => table is TabulatedShaping rows ? rows.ToCsv() : table.Name;

    private static ShapingTable TableOf(string words) => words == ProportionalLaw
        ? ShapingTable.Proportional
        : IsTable(words)
            ? ShapingTable.FromCsv(words)
            : throw new ConstructionException(DiagnosticCode.ShapingLawUnknown, words);

    private static bool IsTable(string words) => words.IndexOf('\n') >= 0;

    private static void RefuseUnreadable(string words)
    {
        if (IsTable(words))
        {
            _ = ShapingTable.FromCsv(words);
        }
    }
}
