#:project ../../src/Pattern.Core.Pdf/Pattern.Core.Pdf.csproj
#:property PublishAot=false

// Makes designs of a skirt block: drafts the block, changes it as a designer does, proves the result, and prints it at full size.
//
//   dotnet run docs/samples/skirt-designs.cs
//   dotnet run docs/samples/skirt-designs.cs -- --design list
//   dotnet run docs/samples/skirt-designs.cs -- --design a-line --waist "29 1/2 in" --hip "39 3/4 in" --length "26 in" --out out
//   dotnet run docs/samples/skirt-designs.cs -- --design a-line --waist 68 --hip 94 --length 60 --unit cm --out out
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
    --design NAME|list  --waist "29 1/2 in"  --hip "39 3/4 in"  --length "26 in"  [--unit in|cm]  [--out DIR]
    """;
string[] known = ["--design", "--waist", "--hip", "--length", "--unit", "--out"];

(string Name, Func<Block, Block> Make)[] designs =
[
    ("a-line", block => block.ALine()),
    ("flared", block => block.Flared()),
    ("pencil", block => block.Pencil()),
    ("gored-6", block => block.Gores(6)),
    ("unequal-gores", block => block.UnequalGores()),
    ("godets", block => block.Gores(6, flare: Length.Zero).Godets()),
    ("yoke", block => block.HipYoke()),
    ("knife-pleats", block => block.KnifePleats()),
    ("box-pleats", block => block.BoxPleats()),
    ("inverted-pleats", block => block.InvertedPleats()),
    ("front-pleats", block => block.BoxPleats(part: PleatedPart.Front)),
    ("pleats-from-yoke", block => block.HipYoke().KnifePleats()),
    ("tiers", block => block.Tiers()),
    ("half-circle", block => block.HalfCircle()),
    ("full-circle", block => block.FullCircle()),
    ("wrap", block => block.Wrap()),
    ("a-line-with-yoke", block => block.ALine().HipYoke()),
    ("lowered-waist", block => block.LoweredWaist()),
    ("contour-band", block => block.ContourBand()),
    ("faced-waist", block => block.FacedWaist()),
    ("pencil-with-contour-band", block => block.Pencil().ContourBand()),
    ("seam-pockets", block => block.ALine().SeamPockets()),
    ("slanted-pockets", block => block.SlantedPockets()),
    ("side-zip", block => block.Zip(ZipPlace.Side)),
    ("lined", block => block.ALine().Lined()),
    ("pencil-with-contour-band-and-lining", block => block.Pencil().ContourBand().SeamPockets().Zip().Lined()),
    ("gathered-yoke", block => block.HipYoke(fullness: Ratio.FromPercent(175))),
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

    SkirtBlock block = Draft(asked);
    string folder = asked.GetValueOrDefault("--out", "out");
    if (name is not null)
    {
        Func<Block, Block> make = Array.Find(designs, design => design.Name == name).Make
            ?? throw new FormatException($"\"{name}\" is no design of this command. Use one of {string.Join(", ", designs.Select(design => design.Name))}, or list.");
        return Save(name, make(block), folder) ? 0 : 2;
    }

    // Not every design can be made for every body. What is refused keeps its place on the sheet, with its reason.
    (string Name, Block? Block, string Refusal)[] made = [.. designs.Select(design => Make(design.Name, design.Make, block))];
    bool passed = true;
    foreach ((string one, Block? skirt, string refusal) in made)
    {
        if (skirt is not null)
        {
            passed &= Save(one, skirt, Path.Combine(folder, one));
        }
        else
        {
            Console.Error.WriteLine($"{one}: {refusal}");
        }
    }

    Console.WriteLine("Written: " + string.Join(", ", OutputFolder.At(folder).With("contact-sheet.svg", ContactSheet(made).ToSvg()).Save()));
    return made.Any(one => one.Block is null) ? 1 : passed ? 0 : 2;
}
catch (Exception e) when (e is FormatException or ArgumentException or ConstructionException or IOException or UnauthorizedAccessException)
{
    // Without the name of the method's parameter, which says nothing to who typed a measurement.
    Console.Error.WriteLine(e.Message.Split(" (Parameter '")[0]);
    return 1;
}

SkirtBlock Draft(Dictionary<string, string> asked)
{
    LengthUnit unit = asked.GetValueOrDefault("--unit", "in") switch
    {
        "in" => LengthUnit.Inch,
        "cm" => LengthUnit.Centimeter,
        string other => throw new FormatException($"\"{other}\" is no unit of this command. Use in or cm."),
    };

    // Rosalind is one of the cast; her measurements serve where none are given.
    bool isForRosalind = !asked.ContainsKey("--waist") && !asked.ContainsKey("--hip");
    var body = BodyMeasurements.In(unit);
    body = isForRosalind
        ? body.Named("Rosalind").With(BodyMeasurement.WaistGirth, "29 1/2 in").With(BodyMeasurement.HipGirth, "39 3/4 in")
        : body;
    body = asked.TryGetValue("--waist", out string? waist) ? body.With(BodyMeasurement.WaistGirth, waist) : body;
    body = asked.TryGetValue("--hip", out string? hip) ? body.With(BodyMeasurement.HipGirth, hip) : body;
    return SkirtBlock.For(body).WithLength(Tape.Parse(asked.GetValueOrDefault("--length", "26 in"), unit)).Draft();
}

bool Save(string name, Block skirt, string folder)
{
    TapeStep tape = TapeStep.For(skirt.Body.Unit);
    PieceLabel label = PieceLabel.For(TitleOf(name)).WithMeasurements(skirt.Body, tape);
    PieceSet pieces = SkirtPattern.From(skirt, new SkirtPatternOptions { Label = skirt.Body.Name is { } wearer ? label.ForWhom(wearer) : label });
    Drawing sheet = pieces.Draw(new PieceDrawingOptions { Tape = tape });

    // All are complete before the first is written.
    IReadOnlyList<string> files = OutputFolder.At(folder)
        .With("design.svg", skirt.Draw().ToSvg())
        .With("pieces.svg", sheet.ToSvg())
        .With("design-a4.pdf", sheet.ToPdf(SheetLayout.TiledOn(PaperSize.Find("A4"))))
        .With("seams.csv", skirt.SeamsToCsv())
        .With("report.csv", skirt.Report.ToCsv())
        .With("steps.txt", skirt.ToStepsText(tape))
        .Save();
    Console.WriteLine($"{skirt.Title}: {skirt.Report.Verdict()} Pieces: {pieces.Report.Verdict()}");
    Console.WriteLine("To cut: " + string.Join("; ", pieces.CutList));
    foreach (Finding finding in skirt.Report.Failures.Concat(pieces.Report.Failures).Concat(skirt.Report.Advice).Concat(pieces.Report.Advice))
    {
        Console.WriteLine(finding);
    }

    Console.WriteLine("Written: " + string.Join(", ", files));
    return skirt.Report.Passed && pieces.Report.Passed;
}

// "a-line" becomes "A-line", "front-pleats" "Front pleats".
static string TitleOf(string name) => (char.ToUpperInvariant(name[0]) + name[1..].Replace('-', ' ')).Replace("A line", "A-line");

static (string Name, Block? Block, string Refusal) Make(string name, Func<Block, Block> make, Block block)
{
    try
    {
        return (name, make(block), string.Empty);
    }
    catch (ConstructionException refusal)
    {
        return (name, null, refusal.Message);
    }
}

static PathMark[] MarksOf(Block? block)
    => block is null ? [] : [.. block.Draw().Layers.SelectMany(layer => layer.Marks).OfType<PathMark>().Where(mark => mark.Facts is not null || mark.Role == LineRole.Fold)];

// A text in lines of so many characters at most, where it has blanks to break at.
static IEnumerable<string> Lines(string text, int most)
{
    string line = string.Empty;
    foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
    {
        if (line.Length > 0 && line.Length + word.Length >= most)
        {
            yield return line;
            line = string.Empty;
        }

        line += line.Length == 0 ? word : " " + word;
    }

    if (line.Length > 0)
    {
        yield return line;
    }
}

// Every design at a tenth of its size, five in a row, each with its name beneath.
static Drawing ContactSheet((string Name, Block? Block, string Refusal)[] made)
{
    const int inRow = 5;
    const double scale = 0.1;
    var all = made.Select(one => (one.Name, one.Refusal, Marks: MarksOf(one.Block))).Select(one => (
        one.Name, one.Refusal, one.Marks, Box: one.Marks.Length == 0 ? BoundingBox.Around(Point2D.Origin, Point2D.FromMillimeters(400, 100)) : one.Marks.Select(mark => mark.Bounds).Aggregate((box, other) => box.Union(other)))).ToArray();
    Length cell = (all.Max(one => one.Box.Width) * scale) + Length.FromMillimeters(15);
    Length below = Length.Zero;
    var lines = new List<DrawingMark>();
    var names = new List<DrawingMark>();
    foreach ((string Name, string Refusal, PathMark[] Marks, BoundingBox Box)[] row in all.Chunk(inRow))
    {
        below -= (row.Max(one => one.Box.Height) * scale) + Length.FromMillimeters(30);
        for (int i = 0; i < row.Length; i++)
        {
            Point2D corner = Point2D.At(cell * i, below);
            Transform2D place = Transform2D.Translation(Point2D.Origin - Point2D.At(row[i].Box.Left, row[i].Box.Bottom))
                .Then(Transform2D.Scaling(Point2D.Origin, Ratio.FromDecimalFractions(scale)))
                .Then(Transform2D.Translation(corner - Point2D.Origin));
            lines.AddRange(row[i].Marks.Select(mark => PathMark.Of(mark.Path.Transformed(place), mark.Role)));
            foreach ((string line, int down) in Lines(row[i].Refusal, 36).Select((line, number) => (line, number)))
            {
                names.Add(TextMark.Of(line, corner - Vector2D.Of(Length.Zero, Length.FromMillimeters((5 * down) - 40)), Length.FromMillimeters(3.5), Angle.Zero, TextAlignment.Start, TextWeight.Regular, Ink.Strong));
            }

            names.Add(TextMark.Of(TitleOf(row[i].Name), corner - Vector2D.Of(Length.Zero, Length.FromMillimeters(12)), Length.FromMillimeters(7), Angle.Zero, TextAlignment.Start, TextWeight.Regular, Ink.Strong));
        }
    }

    Vector2D margin = Vector2D.Of(Length.FromMillimeters(15), Length.FromMillimeters(15));
    BoundingBox sheet = lines.Concat(names).Select(mark => mark.Bounds).Aggregate((one, other) => one.Union(other));
    return Drawing.Of(
        "Designs of a skirt",
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
