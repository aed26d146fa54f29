#:project ../../src/Pattern.Core.Pdf/Pattern.Core.Pdf.csproj
#:property PublishAot=false

// Makes designs of a bodice block: drafts the block, turns its darts as a designer does, proves the result, and prints it at full size.
//
//   dotnet run docs/samples/bodice-designs.cs
//   dotnet run docs/samples/bodice-designs.cs -- --design list
//   dotnet run docs/samples/bodice-designs.cs -- --design shoulder --bust "36 in" --waist "28 in" --back-waist "16 in" --out out
//   dotnet run docs/samples/bodice-designs.cs -- --design shoulder --bust 88 --waist 68 --unit cm --out out
//
// Without a design, each is made for one of the cast of our theatre, in a folder of its name, and all are drawn on one contact sheet.
//
// Exit code 0: made, and every check passed. 1: nothing was written, and the message says why. 2: drawn, but a check failed: do not cut.
// Advice changes no exit code.

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
using Pattern.Core.Pdf;
using Pattern.Core.Pieces;
using Pattern.Core.Styling;
using UnitsNet;
using UnitsNet.Units;

const string usage = """
    --design NAME|list  --bust "36 in"  --waist "28 in"  [--back-waist "16 in"]  [--unit in|cm]  [--out DIR]
    """;
string[] known = ["--design", "--bust", "--waist", "--back-waist", "--unit", "--out"];

(string Name, Func<Block, Block> Make)[] designs =
[
    ("block", block => block),
    ("shoulder", block => block.BustDartTo(BustDartPlace.Shoulder)),
    ("neckline", block => block.BustDartTo(BustDartPlace.Neckline)),
    ("armhole", block => block.BustDartTo(BustDartPlace.Armhole)),
    ("low-on-the-side", block => block.BustDartTo(BustDartPlace.Side, along: Ratio.FromPercent(80))),
    ("waist", block => block.BustDartTo(BustDartPlace.Waist)),
    ("centre-front", block => block.BustDartTo(BustDartPlace.CentreFront)),
    ("half-to-the-shoulder", block => block.BustDartTo(BustDartPlace.Shoulder, share: Ratio.FromPercent(50))),
    ("all-at-the-side", block => block.WaistDartTo(BustDartPlace.Side)),
    ("split", block => block.BustDartSplit()),
    ("back-neckline", block => block.ShoulderDartTo(ShoulderDartPlace.Neckline)),
    ("back-armhole", block => block.ShoulderDartTo(ShoulderDartPlace.Armhole)),
    ("back-eased", block => block.ShoulderDartEased()),
    ("princess", block => block.Princess()),
    ("princess-from-the-armhole", block => block.Princess(PrincessFrom.Armhole)),
];

try
{
    Dictionary<string, string> asked = ReadArguments();
    string? name = asked.GetValueOrDefault("--design");
    if (name == "list")
    {
        Console.WriteLine(string.Join(Environment.NewLine, designs.Select(design => design.Name)));
        return 0;
    }

    Block block = Draft(asked);
    string folder = asked.GetValueOrDefault("--out", "out");
    if (name is not null)
    {
        Func<Block, Block> make = Array.Find(designs, design => design.Name == name).Make
            ?? throw new FormatException($"\"{name}\" is no design of this command. Use one of {string.Join(", ", designs.Select(design => design.Name))}, or list.");
        return Save(name, make(block), folder) ? 0 : 2;
    }

    (string Name, Block Block)[] made = [.. designs.Select(design => (design.Name, design.Make(block)))];
    bool passed = true;
    foreach ((string one, Block bodice) in made)
    {
        passed &= Save(one, bodice, Path.Combine(folder, one));
    }

    Console.WriteLine("Written: " + string.Join(", ", OutputFolder.At(folder).With("contact-sheet.svg", ContactSheet(made).ToSvg()).Save()));
    return passed ? 0 : 2;
}
catch (Exception e) when (e is FormatException or ArgumentException or ConstructionException or IOException or UnauthorizedAccessException)
{
    // Without the name of the method's parameter, which says nothing to who typed a measurement.
    Console.Error.WriteLine(e.Message.Split(" (Parameter '")[0]);
    return 1;
}

Block Draft(Dictionary<string, string> asked)
{
    LengthUnit unit = asked.GetValueOrDefault("--unit", "in") switch
    {
        "in" => LengthUnit.Inch,
        "cm" => LengthUnit.Centimeter,
        string other => throw new FormatException($"\"{other}\" is no unit of this command. Use in or cm."),
    };

    // Viola is one of the cast; her measurements serve where none are given.
    bool isForViola = !asked.ContainsKey("--bust") && !asked.ContainsKey("--waist");
    var body = BodyMeasurements.In(unit);
    body = isForViola
        ? body.Named("Viola").With(BodyMeasurement.BustGirth, "34 1/2 in").With(BodyMeasurement.WaistGirth, "27 in").With(BodyMeasurement.BackNeckPointToWaist, "16 in")
        : body;
    foreach ((string option, BodyMeasurement measurement) in new[]
        { ("--bust", BodyMeasurement.BustGirth), ("--waist", BodyMeasurement.WaistGirth), ("--back-waist", BodyMeasurement.BackNeckPointToWaist) })
    {
        body = asked.TryGetValue(option, out string? given) ? body.With(measurement, given) : body;
    }

    return BodiceBlock.For(body).Draft();
}

bool Save(string name, Block bodice, string folder)
{
    TapeStep tape = TapeStep.For(bodice.Body.Unit);
    PieceLabel label = PieceLabel.For(TitleOf(name)).WithMeasurements(bodice.Body, tape);
    PieceSet pieces = BodicePattern.From(bodice, new BodicePatternOptions { Label = bodice.Body.Name is { } wearer ? label.ForWhom(wearer) : label });
    Drawing sheet = pieces.Draw(new PieceDrawingOptions { Tape = tape });

    // All are complete before the first is written.
    IReadOnlyList<string> files = OutputFolder.At(folder)
        .With("design.svg", bodice.Draw().ToSvg())
        .With("pieces.svg", sheet.ToSvg())
        .With("design-a4.pdf", sheet.ToPdf(SheetLayout.TiledOn(PaperSize.Find("A4"))))
        .With("seams.csv", bodice.SeamsToCsv())
        .With("report.csv", bodice.Report.ToCsv())
        .With("steps.txt", bodice.ToStepsText(tape))
        .Save();
    Console.WriteLine($"{bodice.Title}: {bodice.Report.Verdict()} Pieces: {pieces.Report.Verdict()}");
    Console.WriteLine("To cut: " + string.Join("; ", pieces.CutList));
    foreach (Finding finding in bodice.Report.Failures.Concat(pieces.Report.Failures).Concat(bodice.Report.Advice).Concat(pieces.Report.Advice))
    {
        Console.WriteLine(finding);
    }

    Console.WriteLine("Written: " + string.Join(", ", files));
    return bodice.Report.Passed && pieces.Report.Passed;
}

// "centre-front" becomes "Centre front".
static string TitleOf(string name) => char.ToUpperInvariant(name[0]) + name[1..].Replace('-', ' ');

// Every design at about a seventh of its size, four in a row, each with its name beneath.
static Drawing ContactSheet((string Name, Block Block)[] made)
{
    const int inRow = 4;
    const double scale = 0.15;
    var all = made.Select(one => (one.Name, Marks: one.Block.Draw().Layers.SelectMany(layer => layer.Marks).OfType<PathMark>().Where(mark => mark.Facts is not null || mark.Role == LineRole.Fold).ToArray()))
        .Select(one => (one.Name, one.Marks, Box: one.Marks.Select(mark => mark.Bounds).Aggregate((box, other) => box.Union(other)))).ToArray();
    Length cell = (all.Max(one => one.Box.Width) * scale) + Length.FromMillimeters(15);
    Length below = Length.Zero;
    var lines = new List<DrawingMark>();
    var names = new List<DrawingMark>();
    foreach ((string Name, PathMark[] Marks, BoundingBox Box)[] row in all.Chunk(inRow))
    {
        below -= (row.Max(one => one.Box.Height) * scale) + Length.FromMillimeters(30);
        for (int i = 0; i < row.Length; i++)
        {
            Point2D corner = Point2D.At(cell * i, below);
            Transform2D place = Transform2D.Translation(Point2D.Origin - Point2D.At(row[i].Box.Left, row[i].Box.Bottom))
                .Then(Transform2D.Scaling(Point2D.Origin, Ratio.FromDecimalFractions(scale)))
                .Then(Transform2D.Translation(corner - Point2D.Origin));
            lines.AddRange(row[i].Marks.Select(mark => PathMark.Of(mark.Path.Transformed(place), mark.Role)));
            names.Add(TextMark.Of(TitleOf(row[i].Name), corner - Vector2D.Of(Length.Zero, Length.FromMillimeters(12)), Length.FromMillimeters(7), Angle.Zero, TextAlignment.Start, TextWeight.Regular, Ink.Strong));
        }
    }

    Vector2D margin = Vector2D.Of(Length.FromMillimeters(15), Length.FromMillimeters(15));
    BoundingBox sheet = lines.Concat(names).Select(mark => mark.Bounds).Aggregate((one, other) => one.Union(other));
    return Drawing.Of(
        "Designs of a bodice",
        "Contact sheet of all designs, not at full size.",
        BoundingBox.Around(sheet.LowerLeft - margin, sheet.UpperRight + margin),
        [DrawingLayer.Of(LayerName.SeamLines, [.. lines]), DrawingLayer.Of(LayerName.Names, [.. names])]);
}

Dictionary<string, string> ReadArguments()
{
    var asked = new Dictionary<string, string>();
    for (int i = 0; i < args.Length; i += 2)
    {
        if (!known.Contains(args[i]) || i + 1 == args.Length || !asked.TryAdd(args[i], args[i + 1]))
        {
            throw new FormatException($"\"{args[i]}\" is unknown, has no value, or is given twice. Use:{Environment.NewLine}{usage}");
        }
    }

    return asked;
}
