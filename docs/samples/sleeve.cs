#:project ../../src/Pattern.Core/Pattern.Core.csproj
#:property PublishAot=false

// Drafts a sleeve for the armhole of a bodice, and draws it beside a look at what a cutter looks at: the head closed under the arm, laid over the armhole.
//
//   dotnet run docs/samples/sleeve.cs
//   dotnet run docs/samples/sleeve.cs -- --upper-arm "28.4 cm" --wrist "16 cm" --arm "58.5 cm" --fit close --length long --elbow dart --out out/sleeve
//
// Exit code 0: drafted, and every check passed. 1: not written, and the message says why. 2: drawn, but a check failed.

using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using UnitsNet;
using UnitsNet.Units;

const string usage = """
    [--bust "88 cm"]  [--waist "68 cm"]  [--upper-arm "28.4 cm"]  [--wrist "16 cm"]  [--arm "58.5 cm"]  [--stature "164 cm"]  [--unit in|cm]
    [--fit close|easy]  [--length long|three-quarter|short]  [--elbow straight|eased|dart|two]  [--cap-ease "2.5 cm"]  [--out DIR]
    """;
string[] known = ["--bust", "--waist", "--upper-arm", "--wrist", "--arm", "--stature", "--unit", "--fit", "--length", "--elbow", "--cap-ease", "--out"];

try
{
    var asked = new Dictionary<string, string>();
    for (int i = 0; i < args.Length; i += 2)
    {
        if (!known.Contains(args[i]) || i + 1 == args.Length || !asked.TryAdd(args[i], args[i + 1]))
        {
            throw new FormatException($"\"{args[i]}\" is unknown, has no value, or is given twice. Use:{Environment.NewLine}{usage}");
        }
    }

    LengthUnit unit = Choice("--unit", "cm", ("in", LengthUnit.Inch), ("cm", LengthUnit.Centimeter));
    SleeveBlock sleeve = Describe(unit).Draft();
    TapeStep tape = TapeStep.For(unit);
    PieceSet pieces = SleevePattern.From(sleeve);
    OutputFolder files = OutputFolder.At(asked.GetValueOrDefault("--out", "out/sleeve"));
    files = sleeve.Panels.Count > 1 ? files : files.With("head-and-armhole.svg", HeadAndArmhole(sleeve).ToSvg());
    files = files
        .With("sleeve.svg", sleeve.Draw().ToSvg())
        .With("sleeve-pieces.svg", pieces.Draw(new PieceDrawingOptions { Tape = tape }).ToSvg())
        .With("sleeve.dxf", pieces.Pieces.ToDxf())
        .With("steps.txt", sleeve.ToStepsText(tape))
        .With("report.csv", sleeve.Report.ToCsv())
        .With("sleeve.json", PatternDocument.Of(sleeve, pieces).ToJson());
    IReadOnlyList<string> written = files.Save();

    Console.WriteLine(sleeve);
    foreach (Finding advice in sleeve.Report.Advice)
    {
        Console.WriteLine("  " + advice);
    }

    Console.WriteLine("Written: " + string.Join(", ", written));
    return sleeve.Report.Passed && pieces.Report.Passed ? 0 : 2;

    SleeveBlockBuilder Describe(LengthUnit of)
    {
        // Viola is one of the cast of our theatre; what is not given is hers.
        BodyMeasurements body = BodyMeasurements.In(of).Named("Viola")
            .With(BodyMeasurement.BustGirth, asked.GetValueOrDefault("--bust", "88 cm"))
            .With(BodyMeasurement.WaistGirth, asked.GetValueOrDefault("--waist", "68 cm"));
        bool isViola = !asked.ContainsKey("--bust");
        body = Measured(body, BodyMeasurement.UpperArmGirth, "--upper-arm", isViola ? "28.4 cm" : null);
        body = Measured(body, BodyMeasurement.WristGirth, "--wrist", isViola ? "16 cm" : null);
        body = Measured(body, BodyMeasurement.OuterArmLength, "--arm", isViola ? "58.5 cm" : null);
        body = Measured(body, BodyMeasurement.Stature, "--stature", null);
        SleeveBlockBuilder builder = SleeveBlock.For(BodiceBlock.For(body).Draft())
            .WithFit(Choice("--fit", "close", ("close", SleeveFit.Close), ("easy", SleeveFit.Easy)))
            .WithLength(Choice("--length", "long", ("long", SleeveLength.Long), ("three-quarter", SleeveLength.ThreeQuarter), ("short", SleeveLength.Short)));
        builder = asked.TryGetValue("--cap-ease", out string? ease) ? builder.WithCapEase(Tape.Parse(ease, of)) : builder;
        return asked.GetValueOrDefault("--elbow", "straight") switch
        {
            "straight" => builder,
            "eased" => builder.WithElbowEase(),
            "dart" => builder.WithElbowDart(),
            "two" => builder.InTwoPieces(),
            string other => throw new FormatException($"\"{other}\" is no shaping of the elbow. Use straight, eased, dart or two."),
        };
    }

    BodyMeasurements Measured(BodyMeasurements body, BodyMeasurement key, string name, string? usual)
        => (asked.GetValueOrDefault(name) ?? usual) is { } text ? body.With(key, text) : body;

    T Choice<T>(string name, string usual, params (string Word, T Value)[] choices)
    {
        string word = asked.GetValueOrDefault(name, usual);
        return choices.Any(choice => choice.Word == word)
            ? choices.First(choice => choice.Word == word).Value
            : throw new FormatException($"\"{word}\" is nothing to choose for {name}. Use {string.Join(", ", choices.Select(choice => choice.Word))}.");
    }
}
catch (Exception e) when (e is FormatException or ArgumentException or ConstructionException or IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine(e.Message.Split(" (Parameter '")[0]);
    return 1;
}

// The head with its underarm seams laid on each other, one line from the crown round under the arm to the crown; and the armhole, seen from the sleeve, its side seam at the same place.
static Drawing HeadAndArmhole(SleeveBlock sleeve)
{
    Panel panel = sleeve.FindPanel(SleeveBlock.SleevePanel);
    PanelEdge head = panel.FindEdge(EdgeName.SleeveHead);
    head.Stretches[0].SplitAt(panel.Notches.First(notch => notch.Edge == EdgeName.SleeveHead && notch.Count == 1).DistanceFromStart, out CurvePath back, out CurvePath front);
    Direction frontSeam = panel.FindEdge(EdgeName.FrontUnderarm).Stretches[0].StartDirection;
    Direction backSeam = panel.FindEdge(EdgeName.BackUnderarm).Stretches[^1].EndDirection.Reversed;
    CurvePath closed = front
        .Transformed(Transform2D.Translation(head.Start - head.End))
        .Transformed(Transform2D.Rotation(head.Start, backSeam.Angle - frontSeam.Angle))
        .Then(back)
        .Transformed(Transform2D.Rotation(head.Start, Direction.Down.Angle - backSeam.Angle));
    Transform2D turned = Transform2D.Mirror(Line.Vertical(Point2D.Origin));
    CurvePath armhole = Placed(sleeve.Armhole.Front).Reversed().Then(Placed(sleeve.Armhole.Back));
    CurvePath Placed(CurvePath line) => line.Transformed(Transform2D.Translation(Point2D.Origin - line.Start)).Transformed(turned);

    BoundingBox box = closed.Bounds.Union(armhole.Bounds);
    Length room = Length.FromMillimeters(15);
    BoundingBox sheet = BoundingBox.Around(Point2D.At(box.Left - room, box.Top + room), Point2D.At(box.Right + room, box.Bottom - (2 * room)));
    return Drawing.Of(
        "Sleeve head and armhole",
        "The head of a sleeve closed under the arm, over the armhole that it is sewn into.",
        sheet,
        [
            DrawingLayer.Of(
                LayerName.Of("lines"),
                [
                    PathMark.Of(closed, LineRole.Seam),
                    PathMark.Of(armhole, LineRole.Stitching),
                    PointMark.Of(Point2D.Origin, Length.FromMillimeters(2), Ink.Strong),
                    Words("underarm", Point2D.At(Length.Zero, -room)),
                    Words("head", closed.PointAtLength(closed.Length * 0.15)),
                    Words("armhole", armhole.PointAtLength(armhole.Length * 0.06)),
                ]),
        ]);
}

static TextMark Words(string text, Point2D at)
    => TextMark.Of(text, at + Vector2D.FromMillimeters(3, -4), Length.FromMillimeters(6), Angle.Zero, TextAlignment.Start, TextWeight.Regular, Ink.Strong);
