using System;
using System.Collections.Generic;
using Pattern.Core.Blocks;
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

    /// <summary>One block and one piece with everything.</summary>
    internal static PatternDocument Small { get; } = PatternDocument.Of(Block, PieceSet.Of(MakeSmall()));

    /// <summary>The names of properties that may be null.</summary>
    internal static IReadOnlyCollection<string> Nullable { get; } =
    [
        "name", "defined", "law", "table", "yoke", "upperHip", "lowerHip", "sideLift", "centreBackLift", "shortening", "centreFrontDrop", "count", "intake", "length", "stitched", "fold", "label", "wearer", "size", "date", "foldLine",
    ];

    private static PatternPiece MakeSmall() => MakeRichPiece()
        .CutOnFold(EdgeName.Centre)
        .Unfolded()
        .WithAllowance(EdgeName.Of("other side"), Length.FromMillimeters(20))
        .Cut(1, ClothName.Main)
        .Cut(2, ClothName.Of("felt"))
        .WithLabel(PieceLabel.For("Cape").ForWhom("Puck").WithSize("S").WithNote("one").Dated(new DateTime(2026, 3, 14)));

    private static PatternPiece MakeRichPiece() => SamplePieces.WithTradeAllowances(Rich)
        .WithName(PanelName.Of("rich"))
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
}
