using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using FsCheck.Fluent;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Sizing;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Sizing;

public class SizeTableTests
{
    private static readonly BodyColumns Columns = BodyColumns.In(LengthUnit.Centimeter)
        .With(BodyMeasurement.BustGirth, "bust_cm").With(BodyMeasurement.WaistGirth, "waist_cm").With(BodyMeasurement.HipGirth, "hip_cm").NamedBy("class");

    // EN 13402-3 with the limits of its classes; source in Data/Sizing.
    private static readonly string Standard = File.ReadAllText(Path.Combine("Data", "Sizing", "en13402-3-women.csv"));

    private static IEnumerable<(string Name, double[] Figures)> StandardRows => Standard.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1)
        .Select(line => line.Trim().Split(',')).Select(cells => (cells[0], cells.Skip(1).Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray()));

    private static Length Cm(double value) => Length.FromCentimeters(value);

    private static BodyMeasurements Body(double bust, double waist, double hip) => BodyMeasurements.In(LengthUnit.Centimeter)
        .With(BodyMeasurement.BustGirth, Cm(bust)).With(BodyMeasurement.WaistGirth, Cm(waist)).With(BodyMeasurement.HipGirth, Cm(hip));

    [Fact]
    public void En13402Women_IsTheStandardsTable_AndSaysItsSource()
    {
        (string Name, double[] Figures)[] rows = [.. StandardRows];

        Assert.Equal(12, rows.Length);
        Assert.Equal(rows.Select(row => row.Name), SizeTable.En13402Women.Sizes.Select(size => size.Name));
        foreach ((string name, double[] figures) in rows)
        {
            BodyMeasurements body = SizeTable.En13402Women.Find(name).Body;
            Assert.Equal([figures[0], figures[3], figures[6]], new[] { BodyMeasurement.BustGirth, BodyMeasurement.WaistGirth, BodyMeasurement.HipGirth }.Select(key => body[key].Centimeters));
        }

        Assert.Contains("EN 13402-3", SizeTable.En13402Women.SourceOf(BodyMeasurement.HipGirth));
        Assert.Contains("secondary", SizeTable.En13402Women.SourceOf(BodyMeasurement.HipGirth));
    }

    [Fact]
    public void Read_TheStandardsFile_IsTheShippedTable()
        => Assert.Equal(
            SizeTable.En13402Women.Sizes.Select(size => size.ToString()),
            SizeTable.Read("mine", "EN 13402-3", Columns, new StringReader(Standard)).Sizes.Select(size => size.ToString()));

    // Each class has the bodies between its limits; just inside them, since the standard leaves open to whom a limit itself belongs.
    [Fact]
    public void FindNearest_ByOneGirth_IsTheClassWithinWhoseLimitsItLies()
    {
        foreach ((string name, double[] figures) in StandardRows)
        {
            foreach (double bust in new[] { figures[1] + 0.01, figures[0], figures[2] - 0.01 })
            {
                SizeMatch match = SizeTable.En13402Women.FindNearest(Body(bust, 70, 95), BodyMeasurement.BustGirth);
                Assert.Equal(name, match.Size.Name);
                Assert.False(match.IsBeyondTable);
                Assert.Equal(bust - figures[0], match.Differences.Single(one => one.Measurement == BodyMeasurement.BustGirth).Off.Centimeters, 1e-9);
            }

            Assert.Equal(name, SizeTable.En13402Women.FindNearest(Body(80, figures[5] - 0.01, 95), BodyMeasurement.WaistGirth).Size.Name);
        }
    }

    [Theory]
    [InlineData(73.9, true)]
    [InlineData(74.1, false)]
    [InlineData(130.9, false)]
    [InlineData(131.1, true)]
    public void FindNearest_BeyondTheLimitsOfTheTable_SaysSo(double bust, bool isBeyond)
        => Assert.Equal(isBeyond, SizeTable.En13402Women.FindNearest(Body(bust, 70, 95), BodyMeasurement.BustGirth).IsBeyondTable);

    // By hand, in the order waist, bust, hip: class 4 is off by 1, 0, 0, class 3 by 3, 4, 4.
    [Fact]
    public void FindNearest_ByAll_HasTheLeastSquares()
    {
        SizeMatch match = SizeTable.En13402Women.FindNearest(Body(88, 71, 96));

        Assert.Equal("4", match.Size.Name);
        Assert.Equal([-1, 0, 0], match.Differences.Select(one => Math.Round(one.Off.Centimeters, 9)));
    }

    [Fact]
    public void FindNearest_HalfWay_IsTheLargerSize()
        => Assert.Equal("4", SizeTable.En13402Women.FindNearest(Body(86, 70, 94)).Size.Name);

    [Fact]
    public void BodyAt_BetweenTwoClasses_LiesInTheSamePartOfEachStep()
    {
        // Half way from class 8 (104, 88, 112) to class 9 (110, 94, 117).
        BodyMeasurements between = SizeTable.En13402Women.BodyAt(BodyMeasurement.BustGirth, Cm(107));

        Assert.Equal([107, 91, 114.5], new[] { BodyMeasurement.BustGirth, BodyMeasurement.WaistGirth, BodyMeasurement.HipGirth }.Select(key => Math.Round(between[key].Centimeters, 9)));
        Assert.Equal(132, SizeTable.En13402Women.BodyAt(BodyMeasurement.BustGirth, Cm(128))[BodyMeasurement.HipGirth].Centimeters, 1e-9);
        Assert.Equal(84, SizeTable.En13402Women.BodyAt(BodyMeasurement.BustGirth, Cm(76))[BodyMeasurement.HipGirth].Centimeters, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => SizeTable.En13402Women.BodyAt(BodyMeasurement.BustGirth, Cm(75.9)));
    }

    /// <summary>Whatever the girth, no measurement leaves its two classes, and a larger girth never gives a smaller measurement.</summary>
    [Property]
    public FsCheck.Property BodyAt_AnyGirth_GrowsWithIt()
        => Prop.ForAll(Gen.Choose(7600, 12800).Two().ToArbitrary(), pair =>
        {
            BodyMeasurements[] bodies = [.. new[] { Math.Min(pair.Item1, pair.Item2), Math.Max(pair.Item1, pair.Item2) }.Select(bust => SizeTable.En13402Women.BodyAt(BodyMeasurement.BustGirth, Cm(bust / 100.0)))];
            return SizeTable.En13402Women.Measurements.All(key => bodies[0][key] <= bodies[1][key] + Length.FromMillimeters(1e-9));
        });

    [Fact]
    public void With_AddsWhatTheTableLacks_AndSaysWhereItComesFrom()
    {
        // 20.6 at bust 88 and 0.3 for each 4 cm of bust: from memory.
        SizeTable table = SizeTable.En13402Women.With(BodyMeasurement.WaistToHip, "from memory", body => Cm(20.6) + ((body[BodyMeasurement.BustGirth] - Cm(88)) * (0.3 / 4)));

        Assert.Equal([20.3, 20.6, 20.9], table.Between("3", "5").Sizes.Select(size => Math.Round(size.Body[BodyMeasurement.WaistToHip].Centimeters, 9)));
        Assert.Equal("from memory", table.SourceOf(BodyMeasurement.WaistToHip));
        Assert.Contains("EN 13402-3", table.SourceOf(BodyMeasurement.BustGirth));
    }

    [Theory]
    [InlineData("class,bust_cm,waist_cm,hip_cm\n1,76,60,84\n2,80,sixty-four,88\n", "PC6201", "Row 2, line 3, column 3 (waist_cm)")]
    [InlineData("class,bust_cm,waist_cm,hip_cm\n1,76,60,84\n2,80,64\n", "PC6201", "Row 2, line 3")]
    [InlineData("class,bust_cm,waist_cm,hip_cm\n1,76,60,84\n,80,64,88\n", "PC6202", "row 2, line 3")]
    [InlineData("class,bust_cm,waist_cm,hip_cm\n1,76,60,84\n", "PC6204", "1 sizes")]
    [InlineData("class,bust_cm,waist_cm,hip_cm\n1,76,60,84\n1,80,64,88\n", "PC6206", "\"1\"")]
    [InlineData("class,bust_cm,waist_cm\n1,76,60\n", "PC1201", "hip_cm")]
    public void Read_WhatIsNoTable_IsToldWithItsPlace(string text, string code, string place)
    {
        string message = Assert.Throws<FormatException>(() => SizeTable.Read("mine", "mine", Columns, new StringReader(text))).Message;

        Assert.StartsWith(code, message);
        Assert.Contains(place, message);
    }

    [Fact]
    public void Read_ATableOfBodies_StopsSoon()
    {
        string text = "class,bust_cm,waist_cm,hip_cm\n" + string.Concat(Enumerable.Range(1, 5_000).Select(i => FormattableString.Invariant($"{i},76,60,84\n")));
        Assert.StartsWith("PC6203", Assert.Throws<FormatException>(() => SizeTable.Read("mine", "mine", Columns, new StringReader(text))).Message);
    }

    [Fact]
    public void Of_BodiesMeasuredOtherwise_AreRefused()
    {
        BodyMeasurements first = Body(76, 60, 84).Named("1");
        Assert.StartsWith("PC6207", Assert.Throws<ArgumentException>(() => SizeTable.Of("mine", "mine", [first, Body(80, 64, 88).Without(BodyMeasurement.HipGirth).Named("2")])).Message);
        Assert.StartsWith("PC6205", Assert.Throws<ArgumentException>(() => SizeTable.Of("mine", "mine", [first, Body(80, 64, 88)])).Message);
    }

    [Fact]
    public void Questions_ThatATableCannotAnswer_AreRefused()
    {
        SizeTable table = SizeTable.En13402Women;
        Assert.Equal(DiagnosticCode.SizeUnknown, Assert.Throws<ConstructionException>(() => table.Find("13")).Code);
        Assert.Equal(DiagnosticCode.SizeMeasurementMissing, Assert.Throws<ConstructionException>(() => table.SourceOf(BodyMeasurement.Stature)).Code);
        Assert.Equal(DiagnosticCode.SizeNothingShared, Assert.Throws<ConstructionException>(() => table.FindNearest(BodyMeasurements.In(LengthUnit.Inch))).Code);
        Assert.Equal(DiagnosticCode.BodyMeasurementMissing, Assert.Throws<ConstructionException>(() => table.FindNearest(Body(80, 64, 88).Without(BodyMeasurement.HipGirth), BodyMeasurement.HipGirth)).Code);
        SizeTable level = table.With(BodyMeasurement.WaistToHip, "derived", _ => Cm(20));
        Assert.Equal(DiagnosticCode.SizesDoNotGrow, Assert.Throws<ConstructionException>(() => level.BodyAt(BodyMeasurement.WaistToHip, Cm(20))).Code);
        Assert.Throws<ArgumentException>(() => table.Between("4", "3"));
    }

    // Sizes written down in any order: a body between the least and the largest lies within the table.
    [Theory]
    [InlineData(104, false)]
    [InlineData(98, false)]
    [InlineData(93, false)]
    [InlineData(90, true)]
    [InlineData(108, true)]
    public void FindNearest_OfSizesInAnyOrder_IsBeyondOnlyBeyondTheirEnds(double hip, bool isBeyond)
    {
        static BodyMeasurements Size(string name, double waist, double hip) => Bodies.Millimetres(waist * 10, hip * 10).Named(name);
        SizeTable table = SizeTable.Of("mixed", "invented", [Size("S", 68, 94), Size("L", 78, 104), Size("M", 72, 98)]);

        Assert.Equal(isBeyond, table.FindNearest(Bodies.Millimetres(750, hip * 10), BodyMeasurement.HipGirth).IsBeyondTable);
    }

    [Fact]
    public void Of_ANameLongerThanAnyLabel_IsRefused()
    {
        BodyMeasurements[] bodies = [Bodies.Example.Named("S"), Bodies.Example.Named(new string('x', 41))];

        Assert.Contains("40", Assert.ThrowsAny<ArgumentException>(() => SizeTable.Of("names", "invented", bodies)).Message, StringComparison.Ordinal);
    }
}
