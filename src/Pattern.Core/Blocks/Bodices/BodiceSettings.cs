using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>What the user of the bodice method may choose. The methods of <see cref="BodiceBlockBuilder"/> give the reason of each.</summary>
internal static class BodiceSettings
{
    internal const string Dart = "dart";
    internal const string Ease = "ease";

    internal static readonly MethodSetting<Length> BustEase = MethodSetting
        .OfLength("bust ease", Tape.Inches("3"), Length.Zero, Tape.Inches("12")).InMetric(Length.FromCentimeters(7.5)).Printed();

    internal static readonly MethodSetting<Length> WaistEase = MethodSetting
        .OfLength("waist ease", Tape.Inches("1"), Tape.Inches("-1"), Tape.Inches("12")).InMetric(Length.FromCentimeters(2.5)).Printed();

    internal static readonly MethodSetting<Length> ScyeEase = MethodSetting
        .OfLength("armhole lowered by", Tape.Inches("3/8"), Tape.Inches("-1"), Tape.Inches("4")).InMetric(Length.FromCentimeters(1));

    internal static readonly MethodSetting<Angle> ShoulderSlope = MethodSetting
        .OfAngle("shoulder slope", Angle.FromDegrees(18.5), Angle.FromDegrees(5), Angle.FromDegrees(35));

    internal static readonly MethodSetting<string> BackShoulder = MethodSetting.OfChoice("back shoulder", Dart, Dart, Ease);

    internal static readonly MethodSetting<Length> FrontWider = MethodSetting
        .OfLength("front wider than back", Tape.Inches("3/8"), Tape.Inches("-2"), Tape.Inches("3")).InMetric(Length.FromCentimeters(1));

    internal static readonly MethodSetting<Length> BustDartStandsOff = MethodSetting
        .OfLength("bust dart stands off", null, Length.Zero, Tape.Inches("3"));

    internal static readonly MethodSetting<Length> WaistDartStandsOff = MethodSetting
        .OfLength("waist dart stands off", null, Length.Zero, Tape.Inches("3"));

    internal static readonly MethodSetting[] All = [BustEase, WaistEase, ScyeEase, ShoulderSlope, BackShoulder, FrontWider, BustDartStandsOff, WaistDartStandsOff];
}
