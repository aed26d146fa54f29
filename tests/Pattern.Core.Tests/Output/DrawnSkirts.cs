using System;
using System.Collections.Concurrent;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Output;

/// <summary>Skirts that a drawing has to cope with: the plain one, and those that leave little room for names.</summary>
internal static class DrawnSkirts
{
    private static readonly Dictionary<string, SkirtBlockBuilder> Builders = new(StringComparer.Ordinal)
    {
        ["default"] = Inches("32", "40"),
        ["fitted"] = Inches("29 1/2", "39 3/4").Fitted(SkirtFit.Usual).WithLength(Tape.Inches("26")),
        ["level"] = Inches("32", "40").WithWaistline(Waistline.Level),
        ["fitted level"] = Inches("29 1/2", "39 3/4").Fitted(SkirtFit.Usual).WithWaistline(Waistline.Level),
        ["waist larger than hip"] = Inches("44", "42"),
        ["two darts"] = Inches("33", "52"),
        ["four darts"] = Inches("33", "52").WithFrontDarts(new DartPlan { Count = 4 }).WithBackDarts(new DartPlan { Count = 4 }),
        ["long"] = Inches("27", "37").WithLength(Tape.Inches("40")),
        ["tiny"] = SkirtBlock.For(Bodies.Millimetres(400, 500)).WithLength(Tape.Centimeters("27")),
        ["huge"] = SkirtBlock.For(Bodies.Millimetres(1800, 2000)),
        ["child"] = SkirtBlock.For(BodyMeasurements.In(LengthUnit.Centimeter).Named("Moth").With(BodyMeasurement.WaistGirth, "54").With(BodyMeasurement.HipGirth, "62"))
            .WithLength(Tape.Centimeters("32"))
            .WithLevels(new SkirtLevels { Yoke = Length.FromCentimeters(8), UpperHip = Length.FromCentimeters(12), LowerHip = Length.FromCentimeters(15) })
            .WithFrontDarts(new DartPlan { Length = Length.FromCentimeters(8) })
            .WithBackDarts(new DartPlan { Length = Length.FromCentimeters(9) }),
        ["long name"] = SkirtBlock.For(Bodies.Example.Named(string.Join(" ", Enumerable.Repeat("Maria-Theodolinda", 12)))),
    };

    internal static TheoryData<string> Names => new(Builders.Keys);

    internal static IEnumerable<string> All => Builders.Keys;

    private static readonly ConcurrentDictionary<string, Lazy<Drawing>> Sheets = new(StringComparer.Ordinal);

    internal static SkirtBlock Draft(string name) => Builders[name].Draft();

    /// <summary>The sheet of a skirt, drawn once: it is immutable, and many tests look at it.</summary>
    internal static Drawing Drawn(string name) => Sheets.GetOrAdd(name, _ => new Lazy<Drawing>(() => Draft(name).Draw())).Value;

    internal static Drawing Failed()
    {
        SkirtBlock block = Draft("default");
        var failure = new Finding("closed waist", "front", FindingKind.Length, FindingRelation.Equal, 203.4, 203.2, 0.01);
        return new BlockSheet(block, new CheckReport([.. block.Report.Findings, failure]), new DrawingOptions()).Draw();
    }

    internal static IEnumerable<TMark> Marks<TMark>(this Drawing drawing)
        where TMark : DrawingMark
        => drawing.Layers.SelectMany(layer => layer.Marks).OfType<TMark>();

    internal static IEnumerable<TMark> Marks<TMark>(this Drawing drawing, LayerName name)
        where TMark : DrawingMark
        => drawing.TryFindLayer(name, out DrawingLayer? layer) ? layer!.Marks.OfType<TMark>() : [];

    internal static SkirtBlockBuilder Inches(string waist, string hip) => SkirtBlock.For(Bodies.Inches(waist, hip).Named("Rosalind"));
}
