using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using static Pattern.Core.Tests.Panels.SamplePanels;

namespace Pattern.Core.Tests.Panels;

public class EaseDistributionTests
{
    private static readonly Arbitrary<EaseDistribution> Any =
        (from shorter in Bodies.Range(50, 900)
         from ease in Gen.OneOf(Gen.Constant(0.0), Bodies.Range(0, 40), Bodies.Range(0, 900))
         from a in Bodies.Range(0, 1)
         from b in Bodies.Range(0, 1)
         where Math.Abs(a - b) > 0.01
         select EaseDistribution.Between(Mm(shorter), Mm(shorter + ease), Mm(shorter * Math.Min(a, b)), Mm(shorter * Math.Max(a, b)))).ToArbitrary();

    // By hand: 10 mm of ease over the 60 mm between 30 and 90; half way there, half of it.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(30, 30)]
    [InlineData(60, 65)]
    [InlineData(90, 100)]
    [InlineData(120, 130)]
    public void OnLonger_EaseBetweenTwoPlaces_SitsThereOnly(double onShorter, double onLonger)
    {
        EaseDistribution ease = EaseDistribution.Between(Mm(120), Mm(130), Mm(30), Mm(90));

        Assert.Equal(onLonger, ease.OnLonger(Mm(onShorter)).Millimeters, 1e-9);
        Assert.Equal(onShorter, ease.OnShorter(Mm(onLonger)).Millimeters, 1e-9);
    }

    // By hand: gathering 300 mm onto 200 mm puts one and a half times as much everywhere.
    [Fact]
    public void OnLonger_Evenly_IsInProportion()
    {
        EaseDistribution gathers = EaseDistribution.Evenly(Mm(200), Mm(300));

        Assert.Equal([0, 75, 150, 300], new[] { 0, 50, 100, 200 }.Select(d => gathers.OnLonger(Mm(d)).Millimeters), SeamWalkTests.Near);
    }

    [Property]
    public Property OnLonger_AnyDistribution_HitsBothEndsExactly() => Prop.ForAll(Any, e =>
        e.OnLonger(Length.Zero).Millimeters == 0 && e.OnLonger(e.ShorterLength).Millimeters == e.LongerLength.Millimeters
        && e.OnShorter(Length.Zero).Millimeters == 0 && e.OnShorter(e.LongerLength).Millimeters == e.ShorterLength.Millimeters);

    [Property]
    public Property OnLonger_AnyDistribution_NeverGoesBackNorSkipsCloth() => Prop.ForAll(Any, e =>
    {
        double[] on = [.. Enumerable.Range(0, 201).Select(i => e.OnLonger(e.ShorterLength * (i / 200.0)).Millimeters)];
        double step = e.ShorterLength.Millimeters / 200;
        return Enumerable.Range(1, 200).All(i => on[i] - on[i - 1] >= step - 1e-9);
    });

    [Property]
    public Property OnShorter_OfOnLonger_IsTheSamePlace() => Prop.ForAll(Any, e =>
        Enumerable.Range(0, 51).All(i =>
        {
            Length place = e.ShorterLength * (i / 50.0);
            return Math.Abs((e.OnShorter(e.OnLonger(place)) - place).Millimeters) < 1e-8;
        }));

    [Fact]
    public void Between_LengthsTheWrongWayRound_IsTheCallersMistake()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => EaseDistribution.Evenly(Mm(130), Mm(120)));
        Assert.Throws<ArgumentOutOfRangeException>(() => EaseDistribution.Evenly(Mm(0), Mm(120)));
        Assert.Throws<ArgumentOutOfRangeException>(() => EaseDistribution.Between(Mm(120), Mm(130), Mm(90), Mm(30)));
        Assert.Throws<ArgumentOutOfRangeException>(() => EaseDistribution.Between(Mm(120), Mm(130), Mm(90), Mm(121)));
        Assert.Throws<ArgumentOutOfRangeException>(() => EaseDistribution.Evenly(Mm(120), Mm(130)).OnLonger(Mm(121)));
    }
}
