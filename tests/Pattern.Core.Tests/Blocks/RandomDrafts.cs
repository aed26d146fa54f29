using System;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Blocks;

/// <summary>Drafts of random bodies with random values of every public option, each told by its number alone.</summary>
/// <remarks>Half of the options are left alone in half of the drafts; of the others some are what a maker asks for, some are anywhere that the
/// option allows, and some are exactly its least or its most.</remarks>
internal sealed class RandomDrafts
{
    private readonly Random _random;

    private RandomDrafts(int number) => _random = new Random(number);

    /// <summary>The builder of the draft with a number, the same at each call.</summary>
    internal static SkirtBlockBuilder Of(int number) => new RandomDrafts(number).Builder();

    private SkirtBlockBuilder Builder()
    {
        double mine = _random.NextDouble();
        SkirtBlockBuilder builder = SkirtBlock.For(Body());
        bool Says() => _random.NextDouble() < mine;
        builder = Says() ? builder.ShapedBy(Table()) : builder;
        builder = Says() ? builder.WithWaistEase(Length(0, 40, -50.8, 203.2)) : builder;
        builder = Says() ? builder.WithHipEase(Length(0, 120, -101.6, 508)) : builder;
        builder = Says() ? builder.WithLength(Length(320, 1100, 25.4, 1524)) : builder;
        builder = Says() ? builder.WithLevels(Levels()) : builder;
        builder = Says() ? builder.WithSideLift(Length(0, 25, 0, 76.2)) : builder;
        builder = Says() ? builder.WithCentreBackLift(Length(-25, 15, -50.8, 76.2)) : builder;
        builder = Says() ? builder.WithCentreFrontDrop(Length(0, 25, 0, 101.6)) : builder;
        builder = Says() ? builder.WithFrontDarts(Darts()) : builder;
        builder = Says() ? builder.WithBackDarts(Darts()) : builder;
        builder = Says() ? builder.WithLargestDart(Length(15, 60, 6.35, 101.6)) : builder;
        builder = Says() ? builder.WithSmallestDart(Length(0, 20, 0, 50.8)) : builder;
        builder = Says() ? builder.WithLargestSideShaping(Length(10, 60, 0, 152.4)) : builder;
        builder = Says() ? builder.Fitted(Fit()) : builder;
        return Says() ? builder.WithWaistline(Waistline.Level) : builder;
    }

    private BodyMeasurements Body()
    {
        double hip = _random.Next(4) == 0 ? Between(500, 2000) : Between(700, 1400);
        double waist = _random.Next(4) == 0 ? Between(400, 1800) : Math.Clamp(hip - Between(-100, 350), 400, 1800);
        switch (_random.Next(20))
        {
            case 0:
                hip = 500;
                break;
            case 1:
                hip = 2000;
                break;
            case 2:
                waist = Math.Clamp(hip, 400, 1800);
                break;
            default:
                break;
        }

        if (_random.Next(3) == 0)
        {
            // As read off a tape, where lengths are fractions.
            return BodyMeasurements.In(LengthUnit.Inch)
                .With(BodyMeasurement.WaistGirth, Tape.Inches(FormattableString.Invariant($"{(int)Math.Min(69, Math.Ceiling(waist / 25.4))} {_random.Next(1, 16)}/16")))
                .With(BodyMeasurement.HipGirth, Tape.Inches(FormattableString.Invariant($"{(int)Math.Min(77, Math.Ceiling(hip / 25.4))} {_random.Next(1, 16)}/16")));
        }

        return Bodies.Millimetres(waist, hip);
    }

    private ShapingTable Table()
    {
        if (_random.Next(4) == 0)
        {
            return ShapingTable.Proportional;
        }

        TabulatedShaping table = ShapingTable.In(LengthUnit.Millimeter).ReadBy((ShapingLookup)_random.Next(3)).Outside(ShapingOutside.Clamp);
        double difference = Between(-200, 100);
        for (int i = _random.Next(1, 4); i > 0; i--)
        {
            table = table.Row(new ShapingRow(
                UnitsNet.Length.FromMillimeters(difference), Length(0, 40, -200, 200), Length(0, 60, 0, 300), Length(0, 80, 0, 300), Length(0, 25, 0, 100)));
            difference += Between(1, 200);
        }

        return table;
    }

    private SkirtLevels Levels()
    {
        double upper = _random.Next(4) == 0 ? Between(10, 990) : Between(80, 220);
        return new SkirtLevels
        {
            Yoke = Length(80, 150, 10, 1000),
            UpperHip = UnitsNet.Length.FromMillimeters(upper),
            LowerHip = _random.Next(20) == 0 ? Length(200, 270, 10, 1000) : UnitsNet.Length.FromMillimeters(Math.Min(1000, upper + Millimetres(20, 80, 1, 300))),
        };
    }

    private DartPlan Darts()
    {
        var plan = new DartPlan { Shortening = Length(5, 30, 0, 100) };
        plan = _random.Next(2) == 0 ? plan with { Count = _random.Next(0, DartPlan.MostDarts + 1) } : plan;
        plan = _random.Next(2) == 0 ? plan with { Intake = Length(10, 90, 0, 500) } : plan;
        return _random.Next(2) == 0 ? plan with { Length = Length(80, 170, 10, 500) } : plan;
    }

    private SkirtFit Fit() => new()
    {
        SideHem = Length(0, 40, 0, 150),
        CentreBackHem = Length(0, 40, 0, 150),
        CentreBackWaist = Length(0, 25, 0, 150),
    };

    private Length Length(double usualLeast, double usualMost, double least, double most)
        => UnitsNet.Length.FromMillimeters(Millimetres(usualLeast, usualMost, least, most));

    private double Millimetres(double usualLeast, double usualMost, double least, double most) => _random.Next(10) switch
    {
        0 => least,
        1 => most,
        2 or 3 or 4 => Between(least, most),
        _ => Between(usualLeast, usualMost),
    };

    private double Between(double least, double most) => least + ((most - least) * _random.NextDouble());
}
