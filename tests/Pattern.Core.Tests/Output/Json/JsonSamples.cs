using System;
using System.Collections.Generic;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Pieces;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Output;

/// <summary>Documents that hold everything a document can hold.</summary>
internal static class JsonSamples
{
    private static readonly BodyMeasurements Rosalind = BodyMeasurements.In(LengthUnit.Inch).Named("Rosalind \"Ros\" \\ Zoë 李 😀 \t")
        .With(BodyMeasurement.WaistGirth, "29 1/2")
        .With(BodyMeasurement.HipGirth, "101.0 cm")
        .With(BodyMeasurement.Stature, Length.FromFeet(5.5))
        .With(BodyMeasurement.Define("head girth", MeasurementKind.Girth, Length.FromMillimeters(300), Length.FromMillimeters(800)), "22 1/3");

    internal static SkirtBlock Block { get; } = SkirtBlock.For(Rosalind)
        .ShapedBy(ShapingTable.In(LengthUnit.Inch).Named("wardrobe room")
            .Row(difference: "8", backWider: "1/2", frontDart: "1", backDart: "1 1/4", frontDrop: "1")
            .Row(difference: "12", backWider: "5/8", frontDart: "1 1/4", backDart: "1 1/2", frontDrop: "1 1/4")
            .ReadBy(ShapingLookup.Interpolated)
            .Outside(ShapingOutside.Clamp))
        .WithFrontDarts(new DartPlan { Count = 2, Length = Length.FromInches(4) })
        .WithBackDarts(new DartPlan { Intake = Length.FromInches(1.5) })
        .WithCentreFrontDrop(Length.FromInches(0.5))
        .Fitted(SkirtFit.Usual)
        .Draft();

    /// <summary>A panel with an arc, an inside dart, a tuck, a notch and a landmark.</summary>
    internal static Panel Rich { get; } = MakeRich();

    internal static PatternDocument Plain { get; } = PatternDocument.Of(SamplePieces.Skirt, SkirtPattern.From(SamplePieces.Skirt));

    internal static PatternDocument Full { get; } = PatternDocument.Of(Block, MakePieces());

    internal static MethodSetting<Length> Width { get; } = MethodSetting.OfLength("width", Length.FromMillimeters(120.5), Length.Zero, Length.FromMillimeters(500)).Printed();

    internal static MethodSetting<Length> Depth { get; } = MethodSetting.OfLength("depth", null, Length.FromMillimeters(10), Length.FromMillimeters(500));

    /// <summary>A method with a setting of every kind, and lines of every role; its panels are those of <see cref="Block"/>.</summary>
    internal static DraftingMethod Sample { get; } = DraftingMethod.Of(
        "sample",
        "7 b",
        DraftSample,
        Width,
        Depth,
        MethodSetting.OfAngle("slope", Angle.FromDegrees(7), Angle.Zero, Angle.FromDegrees(45)),
        MethodSetting.OfCount("pleats", 3, 0, 12),
        MethodSetting.OfChoice("closing", "zip", "zip", "ties"),
        MethodSetting.OfShare("fullness", Ratio.FromDecimalFractions(1.0 / 3), Ratio.Zero, Ratio.FromPercent(100)),
        MethodSetting.OfText("notes", "first\n\nthird \"quoted\" \u00fc\r"));

    /// <summary>A design that a file can name.</summary>
    internal static BlockDesign Patched { get; } = BlockDesign.Of(
        "patched", "1", _ => { }, MethodSetting.OfLength("size", Length.FromMillimeters(50), Length.FromMillimeters(10), Length.FromMillimeters(90)));

    internal static MethodCatalogue Methods { get; } = MethodCatalogue.BuiltIn.With(Sample).With(Patched);

    /// <summary>One block and one piece with everything.</summary>
    internal static PatternDocument Small { get; } = WithDesign(PatternDocument.Of(Sample.For(Rosalind).Draft(), PieceSet.Of(MakeSmall())));

    /// <summary>The names of properties that may be null.</summary>
    internal static IReadOnlyCollection<string> Nullable { get; } =
        ["name", "defined", "value", "second", "easeSpan", "stitched", "fold", "label", "wearer", "size", "date", "tape", "foldLine"];

    // A design of the library's kind would take the lines of the draft away, which are wanted here.
    private static PatternDocument WithDesign(PatternDocument document) => PatternDocument.FromJson(
        JsonPlaces.Replaced(
            document.ToJson(),
            "/designs",
            "[{\"name\": \"patched\", \"version\": \"1\", \"settings\": [{\"name\": \"size\", \"kind\": \"length\", \"value\": 33.25, \"printed\": true}], \"promisedAnew\": [\"hem\"]}]"),
        Methods);

    private static void DraftSample(BlockDraft draft)
    {
        DraftingSheet sheet = draft.Sheet;
        WorkedLength width = draft.Take(Width);
        Landmark top = sheet.Mark("top", Point2D.FromMillimeters(-0.0, 0.1 + 0.2));
        Landmark side = sheet.SquareAcross(top, Across.Right, width, "side", LineName.Of("frame", ConstructionRole.Frame));
        Landmark low = sheet.SquareDown(top, width, "low", LineName.Of("level", ConstructionRole.Level));
        sheet.Join(side, low, "guide");
        sheet.Curve(top, Direction.Right, low, Direction.Down, LineName.Of("by hand", ConstructionRole.HandDrawn));
        Landmark carried = Block.Back.Landmarks[0];
        sheet.Mark(carried.Name, Point2D.FromMillimeters(1, 2));
        draft.Trued("low", Point2D.FromMillimeters(3, -121.0 / 3));
        draft.Read("width", new SampleReading(width));
        draft.Remark("Half of the sample.");
        draft.Add(Block.Back);
        draft.Add(Block.Front);
        EdgeOf back = EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam);
        EdgeOf waist = EdgeOf.Panel(PanelName.Back, EdgeName.Waist);
        draft.Seams(SeamPlan.Of(
            Seam.Between(back, EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam)).Named("side seam", "waist to hip", "hip to hem"),
            Seam.Between(EdgeOf.Panel(PanelName.Front, EdgeName.Waist), waist)
                .WithEaseBetween(Length.FromMillimeters(12.5), SeamMark.At(Length.FromMillimeters(10)), SeamMark.End)
                .OverFirst(SeamMark.Notch(1), SeamMark.End)
                .Running(SeamRun.SameWay)
                .Reversed()));
    }

    private static PatternPiece MakeSmall() => MakeRichPiece()
        .CutOnFold(EdgeName.Centre)
        .Unfolded()
        .WithAllowance(EdgeName.Of("other side"), Length.FromMillimeters(20))
        .Cut(1, ClothName.Main)
        .Cut(2, ClothName.Of("felt"))
        .WithLabel(PieceLabel.For("Cape").ForWhom("Puck").WithSize("waist girth 74.93 cm, hip girth 101 cm, stature 167.6 cm, head girth 56.7 cm").WithNote("one").Dated(new DateTime(2026, 3, 14)));

    private static PatternPiece MakeRichPiece() => SamplePieces.WithTradeAllowances(Rich)
        .WithName(PanelName.Of("rich"))
        .WithTape(TapeStep.Sixteenth)
        .WithInternalLine("pocket", InternalLineKind.Placement, CurvePath.From(SamplePieces.At(20, 60)).LineTo(SamplePieces.At(40, 60)).LineTo(SamplePieces.At(40, 80)).Closed());

    private static PieceSet MakePieces()
    {
        PieceSet skirt = SkirtPattern.From(Block, new SkirtPatternOptions
        {
            Lining = LiningChoice.Loose,
            Label = PieceLabel.For("Act 2 skirt").ForWhom("Rosalind").WithSize("größer").WithNote("Make a toile first").WithNote("李").Dated(new DateTime(2026, 3, 14)),
        });
        PatternPiece whole = skirt.Find(PanelName.Front).WithName(PanelName.Of("whole front")).Unfolded();
        return skirt
            .With(whole.WithAllowance(EdgeName.Of("other side"), Length.FromMillimeters(20)).WithCorner(EdgeName.Waist, EdgeName.SideSeam, Corner.Blunt))
            .With(MakeRichPiece());
    }

    private static Panel MakeRich()
    {
        Point2D At(double x, double y) => SamplePieces.At(x, y);
        return Panel.Named(PanelName.Back)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.From(At(-0.0, 200)).LineTo(At(100, 200)))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(At(100, 200)).ArcThrough(At(110, 100), At(100, 0)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(100, 0)).CurveTo(At(70, -1.0 / 3), At(30, 0.1 + 0.2), At(-0.0, 0)))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(At(-0.0, 0)).LineTo(At(-0.0, 200)))
            .WithNotch(EdgeName.SideSeam, Length.FromMillimeters(70), 2)
            .WithLandmark(LandmarkName.Of("Bust point"), At(50, 1e-7))
            .Make()
            .TakeInDart(EdgeName.Waist.Middle, Length.FromMillimeters(15), Length.FromMillimeters(60))
            .TurnDartIntoTuck(EdgeName.Waist.Dart(1), Length.FromMillimeters(25))
            .TakeInInsideDart(At(30, 120), At(30, 20), Length.FromMillimeters(6), Ratio.FromDecimalFractions(0.4));
    }

    private sealed class SampleReading(WorkedLength width) : TableReading
    {
        public override IReadOnlyList<WorkedLength> Figures => [width.Half(), width.Times(1.0 / 3).Named("third of the width")];

        public override string Describe(TapeStep step) => "row 3 of the sample, in " + step;
    }
}
