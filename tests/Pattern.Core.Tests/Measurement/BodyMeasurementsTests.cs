using System;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Measurement;

public class BodyMeasurementsTests
{
    private static readonly BodyMeasurements Rosalind = BodyMeasurements.In(LengthUnit.Inch).Named("Rosalind")
        .With(BodyMeasurement.HipGirth, "39 3/4")
        .With(BodyMeasurement.WaistGirth, "29 1/2");

    [Fact]
    public void With_BareNumber_IsReadInTheUnitOfTheBody()
    {
        Assert.Equal(29.5, Rosalind[BodyMeasurement.WaistGirth].Inches, 12);
        Assert.Equal(74.9, BodyMeasurements.In(LengthUnit.Centimeter).With(BodyMeasurement.WaistGirth, "74.9")[BodyMeasurement.WaistGirth].Centimeters, 12);
    }

    [Fact]
    public void Enumeration_InWhateverOrderItWasTaken_IsInTheOrderOfAll()
    {
        Assert.Equal([BodyMeasurement.WaistGirth, BodyMeasurement.HipGirth], Rosalind.Select(entry => entry.Key));
        Assert.Equal("Rosalind: waist girth 29 1/2 in, hip girth 39 3/4 in", Rosalind.ToString());
    }

    [Fact]
    public void With_KnownKey_ReplacesAndLeavesTheOriginal()
    {
        BodyMeasurements laced = Rosalind.With(BodyMeasurement.WaistGirth, Length.FromInches(27));

        Assert.Equal(27, laced[BodyMeasurement.WaistGirth].Inches, 12);
        Assert.Equal(29.5, Rosalind[BodyMeasurement.WaistGirth].Inches, 12);
        Assert.Equal(2, laced.Count);
    }

    [Fact]
    public void Require_WhatWasNotTaken_SaysWhichAndWhatFor()
    {
        var error = Assert.Throws<ConstructionException>(() => Rosalind.Require(BodyMeasurement.WaistToHip, "the hip line"));

        Assert.Equal(DiagnosticCode.BodyMeasurementMissing, error.Code);
        Assert.Contains("waist to hip is needed for the hip line, and was not measured on Rosalind", error.Message);
        Assert.False(Rosalind.TryFind(BodyMeasurement.WaistToHip, out _));
        Assert.False(Rosalind.Without(BodyMeasurement.HipGirth).TryFind(BodyMeasurement.HipGirth, out _));
    }

    [Theory]
    [InlineData(LengthUnit.Inch, "74", "74 cm")]
    [InlineData(LengthUnit.Centimeter, "29.5", "29.5 in")]
    [InlineData(LengthUnit.Centimeter, "750", "750 mm")]
    [InlineData(LengthUnit.Millimeter, "75", "75 cm")]
    public void With_WaistInAnotherUnit_SuggestsIt(LengthUnit unit, string text, string suggested)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => BodyMeasurements.In(unit).With(BodyMeasurement.WaistGirth, text));

        Assert.Contains("PC1103: waist girth is ", error.Message);
        Assert.Contains("Did you mean " + suggested + "?", error.Message);
    }

    [Theory]
    [InlineData("3 in")]
    [InlineData("5 m")]
    [InlineData("0")]
    [InlineData("-29")]
    public void With_AbsurdWaist_IsRefused(string text)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Rosalind.With(BodyMeasurement.WaistGirth, text));

        Assert.Contains("waist girth is ", error.Message);
        Assert.DoesNotContain("Did you mean", error.Message);
    }

    [Fact]
    public void With_UnreadableText_NamesTheMeasurementAndTheCharacter()
    {
        var error = Assert.Throws<FormatException>(() => Rosalind.With(BodyMeasurement.WaistGirth, "29,5"));

        Assert.Contains("waist girth", error.Message);
        Assert.Contains("\"29,5\" can be read in two ways at character 3", error.Message);
    }
}
