using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Blocks;

/// <summary>Real and hostile bodies, and the options to draft them with.</summary>
internal static class Bodies
{
    /// <summary>The body of the trade's check values: waist 32 in, hip 40 in.</summary>
    internal static BodyMeasurements Example { get; } = Inches("32", "40");

    internal static IReadOnlyList<BodyMeasurements> Ansur { get; } =
        [.. File.ReadLines(Path.Combine("Data", "Blocks", "ansur2-women-girths.csv")).Skip(1).Select(line =>
        {
            string[] cells = line.Split(',');
            return Millimetres(double.Parse(cells[1], CultureInfo.InvariantCulture), double.Parse(cells[2], CultureInfo.InvariantCulture));
        })];

    internal static BodyMeasurements Inches(string waist, string hip) => BodyMeasurements.In(LengthUnit.Inch)
        .With(BodyMeasurement.WaistGirth, waist)
        .With(BodyMeasurement.HipGirth, hip);

    internal static BodyMeasurements Millimetres(double waist, double hip) => BodyMeasurements.In(LengthUnit.Millimeter)
        .With(BodyMeasurement.WaistGirth, Length.FromMillimeters(waist))
        .With(BodyMeasurement.HipGirth, Length.FromMillimeters(hip));

    /// <summary>A quarter real women, the rest anywhere that the library takes for a human body, waist larger than hip included.</summary>
    internal static Gen<BodyMeasurements> Any { get; } = Gen.Frequency(
        (1, Gen.Elements(Ansur.AsEnumerable())),
        (2, from hip in Range(560, 1950) from difference in Range(-150, 350) select Millimetres(System.Math.Clamp(hip - difference, 410, 1790), hip)),
        (1, from hip in Range(510, 1990) from waist in Range(System.Math.Max(400, hip - 380), System.Math.Min(1800, hip + 180)) select Millimetres(waist, hip)));

    /// <summary>Options within what a maker would ask for.</summary>
    internal static Gen<SkirtAsked> Options { get; } =
        from hipEase in Range(0, 120)
        from waistEase in Range(0, 40)
        from length in Range(320, 1100)
        from sideLift in Range(0, 25)
        from backLift in Range(-25, 15)
        from waistline in Gen.Elements(Waistline.Shaped, Waistline.Level)
        from largestDart in Range(15, 60)
        from sideHem in Gen.Elements(0.0, 10, 25.4)
        from backHem in Gen.Elements(0.0, 25.4)
        from backWaist in Gen.Elements(0.0, 12.7)
        select new SkirtAsked(hipEase, waistEase, length, sideLift, backLift, waistline, largestDart, sideHem, backHem, backWaist);

    internal static Gen<double> Range(double least, double most) => Gen.Choose(0, 1_000_000).Select(i => least + ((most - least) * i / 1_000_000));
}

/// <summary>Millimetres throughout.</summary>
public sealed record SkirtAsked(
    double HipEase, double WaistEase, double SkirtLength, double SideLift, double BackLift, Waistline Waistline, double LargestDart, double SideHem, double BackHem, double BackWaist)
{
    internal SkirtBlockBuilder Apply(SkirtBlockBuilder builder, double scale = 1) => builder
        .WithHipEase(Length.FromMillimeters(HipEase * scale))
        .WithWaistEase(Length.FromMillimeters(WaistEase * scale))
        .WithLength(Length.FromMillimeters(SkirtLength * scale))
        .WithSideLift(Length.FromMillimeters(SideLift * scale))
        .WithCentreBackLift(Length.FromMillimeters(BackLift * scale))
        .WithWaistline(Waistline)
        .WithLargestDart(Length.FromMillimeters(LargestDart * scale))
        .WithSmallestDart(Length.FromInches(0.375 * scale))
        .WithLargestSideShaping(Length.FromInches(1.5 * scale))
        .WithLevels(new SkirtLevels { Yoke = Length.FromInches(5 * scale), UpperHip = Length.FromInches(8 * scale), LowerHip = Length.FromInches(10 * scale) })
        .WithFrontDarts(new DartPlan { Length = Length.FromInches(5 * scale), Shortening = Length.FromInches(0.75 * scale) })
        .WithBackDarts(new DartPlan { Length = Length.FromInches(6 * scale), Shortening = Length.FromInches(0.75 * scale) })
        .Fitted(new SkirtFit
        {
            SideHem = Length.FromMillimeters(SideHem * scale),
            CentreBackHem = Length.FromMillimeters(BackHem * scale),
            CentreBackWaist = Length.FromMillimeters(BackWaist * scale),
        });
}
