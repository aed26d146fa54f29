using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Blocks;

/// <summary>Real and hostile bodies to draft bodices for.</summary>
internal static class BodiceBodies
{
    // The interscye of the survey reads more than a width across the back; see the README of the data.
    private const double InterscyeReadsMoreMm = 15;

    /// <summary>The body of a handbook (from memory: W. Aldrich, Metric Pattern Cutting for Women's Wear), bust and waist alone.</summary>
    internal static BodyMeasurements Handbook { get; } = Centimetres(88, 68).With(BodyMeasurement.Stature, Length.FromCentimeters(164));

    internal static IReadOnlyList<BodyMeasurements> Ansur { get; } =
        [.. File.ReadLines(Path.Combine("Data", "Blocks", "ansur2-women-bodices.csv")).Skip(1).Select(line =>
        {
            double[] mm = [.. line.Split(',').Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))];
            return BodyMeasurements.In(LengthUnit.Millimeter)
                .With(BodyMeasurement.Stature, Mm(mm[1]))
                .With(BodyMeasurement.BustGirth, Mm(mm[2]))
                .With(BodyMeasurement.WaistGirth, Mm(mm[3]))
                .With(BodyMeasurement.HipGirth, Mm(mm[4]))
                .With(BodyMeasurement.BackNeckPointToWaist, Mm(mm[5]))
                .With(BodyMeasurement.ShoulderLength, Mm(mm[6]))
                .With(BodyMeasurement.AcrossBackWidth, Mm(mm[7] - InterscyeReadsMoreMm))
                .With(BodyMeasurement.NeckBaseGirth, Mm(mm[8]))
                .With(BodyMeasurement.UpperArmGirth, Mm(mm[9]))
                .With(BodyMeasurement.WristGirth, Mm(mm[10]));
        })];

    /// <summary>A third real women; a third bust and waist alone; a third with any of the other measurements, each anywhere around what fits.</summary>
    internal static Gen<BodyMeasurements> Any { get; } = Gen.Frequency(
        (1, Gen.Elements(Ansur.AsEnumerable())),
        (1, Bare),
        (1, from body in Bare
            from back in Maybe(BodyMeasurement.BackNeckPointToWaist, 330, 520)
            from scye in Maybe(BodyMeasurement.ScyeDepthLength, 150, 300)
            from across in Maybe(BodyMeasurement.AcrossBackWidth, 250, 500)
            from front in Maybe(BodyMeasurement.AcrossFrontWidth, 240, 480)
            from shoulder in Maybe(BodyMeasurement.ShoulderLength, 70, 190)
            from neck in Maybe(BodyMeasurement.NeckBaseGirth, 280, 480)
            from length in Maybe(BodyMeasurement.SideNeckPointToWaist, 330, 600)
            from apart in Maybe(BodyMeasurement.BustPointToBustPointWidth, 130, 320)
            from depth in Maybe(BodyMeasurement.SideNeckPointToBustPoint, 180, 380)
            select new[] { back, scye, across, front, shoulder, neck, length, apart, depth }.OfType<(BodyMeasurement Key, double Mm)>()
                .Aggregate(body, (all, one) => all.With(one.Key, Mm(one.Mm)))));

    private static Gen<BodyMeasurements> Bare =>
        from bust in Bodies.Range(620, 1500)
        from less in Bodies.Range(-120, 300)
        select Centimetres(bust / 10, System.Math.Max(41, (bust - less) / 10));

    internal static BodyMeasurements Centimetres(double bust, double waist) => BodyMeasurements.In(LengthUnit.Centimeter)
        .With(BodyMeasurement.BustGirth, Length.FromCentimeters(bust))
        .With(BodyMeasurement.WaistGirth, Length.FromCentimeters(waist));

    private static Gen<(BodyMeasurement Key, double Mm)?> Maybe(BodyMeasurement key, double least, double most) => Gen.Frequency(
        (1, Gen.Constant<(BodyMeasurement Key, double Mm)?>(null)),
        (1, Bodies.Range(least, most).Select(mm => ((BodyMeasurement Key, double Mm)?)(key, mm))));

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
