using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Measurement;

public class BodyMeasurementTests
{
    // ANSUR II columns and the key of the same part of the body. See Data/Measurement/README.md for the source.
    private static readonly Dictionary<string, BodyMeasurement> Columns = new()
    {
        ["waistcircumference"] = BodyMeasurement.WaistGirth,
        ["buttockcircumference"] = BodyMeasurement.HipGirth,
        ["chestcircumference"] = BodyMeasurement.BustGirth,
        ["neckcircumference"] = BodyMeasurement.NeckGirth,
        ["neckcircumferencebase"] = BodyMeasurement.NeckBaseGirth,
        ["bicepscircumferenceflexed"] = BodyMeasurement.UpperArmGirth,
        ["wristcircumference"] = BodyMeasurement.WristGirth,
        ["handcircumference"] = BodyMeasurement.HandGirth,
        ["thighcircumference"] = BodyMeasurement.ThighGirth,
        ["calfcircumference"] = BodyMeasurement.CalfGirth,
        ["anklecircumference"] = BodyMeasurement.AnkleGirth,
        ["shoulderlength"] = BodyMeasurement.ShoulderLength,
        ["crotchlengthomphalion"] = BodyMeasurement.TotalCrotchLength,
        ["waistbacklength"] = BodyMeasurement.BackNeckPointToWaist,
        ["sleevelengthspinewrist"] = BodyMeasurement.BackNeckPointToWristLength,
        ["acromionradialelength"] = BodyMeasurement.UpperArmLength,
        ["interscyei"] = BodyMeasurement.AcrossBackWidth,
        ["crotchheight"] = BodyMeasurement.InsideLegHeight,
        ["kneeheightmidpatella"] = BodyMeasurement.KneeHeight,
        ["buttockheight"] = BodyMeasurement.HipHeight,
        ["iliocristaleheight"] = BodyMeasurement.WaistHeight,
        ["stature"] = BodyMeasurement.Stature,
    };

    [Fact]
    public void IsPlausible_EveryWomanOfAnsur_IsBelieved()
    {
        string[] lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Data", "Measurement", "ansur2-women.csv"));
        string[] names = lines[0].Split(',');
        int count = 0;
        foreach (string line in lines.Skip(1))
        {
            BodyMeasurements body = BodyMeasurements.In(LengthUnit.Millimeter);
            string[] cells = line.Split(',');
            for (int i = 0; i < cells.Length; i++)
            {
                if (Columns.TryGetValue(names[i], out BodyMeasurement? key))
                {
                    body = body.With(key, cells[i]);
                    Assert.Equal(double.Parse(cells[i], CultureInfo.InvariantCulture), body[key].Millimeters, 1e-9);
                }
            }

            // Waist to hip as derived from heights; the source's README tells how.
            double Height(string name) => double.Parse(cells[Array.IndexOf(names, name)], CultureInfo.InvariantCulture);
            double waistToHip = (Height("tenthribheight") + Height("iliocristaleheight")) / 2 - Height("buttockheight");
            body = body.With(BodyMeasurement.WaistToHip, Length.FromMillimeters(waistToHip));

            Assert.Equal(Columns.Count + 1, body.Count);
            count++;
        }

        Assert.Equal(1986, count);
    }

    // EN 13402-3 and size charts for children start at about this body (from memory: 80 cm tall, waist 48 cm, hip 49.5 to 51 cm); the largest adults on record
    // for wheelchairs and hospital gowns go to a hip of about 2 m (from memory).
    [Theory]
    [InlineData("waist girth", 480)]
    [InlineData("hip girth", 510)]
    [InlineData("bust girth", 490)]
    [InlineData("waist girth", 1700)]
    [InlineData("hip girth", 1900)]
    [InlineData("stature", 800)]
    [InlineData("stature", 2300)]
    public void IsPlausible_SmallChildAndLargestAdult_AreBelieved(string term, double millimetres)
    {
        Assert.True(BodyMeasurement.TryFind(term, out BodyMeasurement? key));
        Assert.True(key.IsPlausible(millimetres));
    }

    [Fact]
    public void All_HaveTermsOfTheirOwnAndARange()
    {
        Assert.Equal(BodyMeasurement.All.Count, BodyMeasurement.All.Select(key => key.Term).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(BodyMeasurement.All, key =>
        {
            Assert.True(key.LeastPlausible > Length.Zero && key.LeastPlausible < key.MostPlausible);
            Assert.True(key.MostPlausible < Length.FromMeters(3));
            Assert.EndsWith(key.Kind == MeasurementKind.Girth ? " girth" : string.Empty, key.Term);
            Assert.Equal(key.Kind == MeasurementKind.Girth, key.Term.EndsWith(" girth", StringComparison.Ordinal));
        });
    }

    // Clauses from the list of terms of ISO 8559-1:2017 (secondary sources).
    [Theory]
    [InlineData("waist girth", "5.3.10")]
    [InlineData("hip girth", "5.3.13")]
    [InlineData("bust girth", "5.3.4")]
    [InlineData("back neck point to waist", "5.4.5")]
    [InlineData("outer arm length", "5.7.8")]
    [InlineData("total crotch length", "5.4.18")]
    [InlineData("stature", "5.1.1")]
    public void Clause_OfAStandardTerm_IsThatOfTheStandard(string term, string clause)
    {
        Assert.True(BodyMeasurement.TryFind(term.ToUpperInvariant(), out BodyMeasurement? key));
        Assert.Equal(clause, key.Clause);
    }

    [Fact]
    public void Define_OwnMeasurement_IsTakenLikeAnyOther()
    {
        BodyMeasurement head = BodyMeasurement.Define("head girth", MeasurementKind.Girth, Length.FromCentimeters(35), Length.FromCentimeters(75));
        BodyMeasurement again = BodyMeasurement.Define("Head Girth", MeasurementKind.Girth, Length.FromCentimeters(35), Length.FromCentimeters(75));
        BodyMeasurement collar = BodyMeasurement.Define("collar height", MeasurementKind.Height, Length.FromCentimeters(1), Length.FromCentimeters(30));
        BodyMeasurements body = BodyMeasurements.In(LengthUnit.Inch).With(head, "22 1/2").With(collar, "2").With(BodyMeasurement.Stature, "64");

        Assert.Equal(22.5, body[again].Inches, 12);
        Assert.Equal(head, again);
        Assert.Equal(head.GetHashCode(), again.GetHashCode());
        Assert.Equal("stature 64 in, collar height 2 in, head girth 22 1/2 in", body.Describe(TapeStep.Eighth));
        Assert.Contains("Did you mean 57 cm?", Assert.Throws<ArgumentOutOfRangeException>(() => body.With(head, "57")).Message);
        Assert.DoesNotContain(head, BodyMeasurement.All);
    }

    [Fact]
    public void Define_BadCall_IsTheCallersMistake()
    {
        Length least = Length.FromCentimeters(1);
        Length most = Length.FromCentimeters(2);

        Assert.StartsWith("PC1106", Assert.Throws<ArgumentException>(() => BodyMeasurement.Define("Waist Girth", MeasurementKind.Girth, least, most)).Message);
        Assert.Throws<ArgumentException>(() => BodyMeasurement.Define(" ", MeasurementKind.Girth, least, most));
        Assert.Throws<ArgumentOutOfRangeException>(() => BodyMeasurement.Define("x", (MeasurementKind)9, least, most));
        Assert.Throws<ArgumentOutOfRangeException>(() => BodyMeasurement.Define("x", MeasurementKind.Girth, most, least));
        Assert.Throws<ArgumentOutOfRangeException>(() => BodyMeasurement.Define("x", MeasurementKind.Girth, Length.Zero, most));
        Assert.False(BodyMeasurement.TryFind("waist", out _));
    }
}
