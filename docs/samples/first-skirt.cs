#:project ../../src/Pattern.Core.Pdf/Pattern.Core.Pdf.csproj
#:property PublishAot=false

// Drafts a skirt block, proves it, makes pieces of it that can be cut, and prints them at full size.
//
//   dotnet run docs/samples/first-skirt.cs
//   dotnet run docs/samples/first-skirt.cs -- --waist "29 1/2 in" --hip "39 3/4 in" --length "26 in" --paper letter --allowance "5/8 in" --out out
//   dotnet run docs/samples/first-skirt.cs -- --waist "29 1/2 in" --hip "39 3/4 in" --fitted --waistline level --darts 1,2
//
// Exit code 0: drafted, and every check passed. 1: nothing was written, and the message says why. 2: drawn, but a check failed: do not cut.
// Advice, which is printed apart from the checks, changes no exit code.

using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pdf;
using Pattern.Core.Pieces;
using UnitsNet;
using UnitsNet.Units;

const string usage = """
    --waist "29 1/2 in"  --hip "39 3/4 in"  --length "26 in"
    [--ease "1 in"]  [--waist-ease "0 in"]  [--table FILE.csv]  [--unit in|cm]
    [--waist-to-hip "8 in"]  [--fitted]  [--waistline shaped|level]  [--darts FRONT,BACK]
    [--allowance "1/2 in"]  [--paper a4|letter|...]  [--out DIR]
    With --unit cm, what is not given is the custom of that tape: length 66 cm, ease 2.5 cm, allowance 1.2 cm,
    and --fitted brings side hem and centre back hem in by 2.5 cm and the centre back waist by 1.2 cm.
    """;
string[] known = ["--waist", "--hip", "--length", "--ease", "--waist-ease", "--table", "--unit", "--waist-to-hip", "--waistline", "--darts", "--allowance", "--paper", "--out"];

try
{
    Dictionary<string, string> asked = ReadArguments();
    LengthUnit unit = ReadUnit(asked);
    TapeStep tape = TapeStep.For(unit);
    PaperSize paper = PaperSize.Find(asked.GetValueOrDefault("--paper", "A4"));
    SkirtBlock block = Describe(asked, unit).Draft();
    PieceSet pieces = MakePieces(asked, unit, block);
    Drawing sheet = pieces.Draw(new PieceDrawingOptions { Tape = tape });
    string steps = block.ToStepsText(tape);

    // All are complete before the first is written.
    IReadOnlyList<string> files = OutputFolder.At(asked.GetValueOrDefault("--out", "out"))
        .With("skirt.svg", block.Draw().ToSvg())
        .With("skirt-pieces.svg", sheet.ToSvg())
        .With($"skirt-{paper.Name.ToLowerInvariant().Replace(' ', '-')}.pdf", sheet.ToPdf(SheetLayout.TiledOn(paper)))
        .With("skirt-roll.pdf", sheet.ToPdf(SheetLayout.OnRoll(Tape.Inches("36"))))
        .With("skirt.dxf", pieces.Pieces.ToDxf())
        .With("skirt.json", PatternDocument.Of(block, pieces).ToJson())
        .With("steps.txt", steps)
        .With("report.csv", block.Report.ToCsv())
        .Save();

    Console.Write(steps);
    Console.WriteLine();
    Console.WriteLine("To cut: " + string.Join("; ", pieces.CutList));
    Console.WriteLine("Pieces: " + pieces.Report.Verdict());
    foreach (Finding advice in pieces.Report.Advice)
    {
        Console.WriteLine("Pieces: " + advice);
    }

    Console.WriteLine("Written: " + string.Join(", ", files));
    return block.Report.Passed && pieces.Report.Passed ? 0 : 2;
}
catch (Exception e) when (e is FormatException or ArgumentException or ConstructionException or IOException or UnauthorizedAccessException)
{
    // Without the name of the method's parameter, which says nothing to who typed a measurement.
    Console.Error.WriteLine(e.Message.Split(" (Parameter '")[0]);
    return 1;
}

SkirtBlockBuilder Describe(Dictionary<string, string> asked, LengthUnit unit)
{
    // Rosalind is one of the cast of our theatre; her measurements serve where none are given.
    bool isForRosalind = !asked.ContainsKey("--waist") && !asked.ContainsKey("--hip");
    var body = BodyMeasurements.In(unit);
    body = isForRosalind
        ? body.Named("Rosalind").With(BodyMeasurement.WaistGirth, "29 1/2 in").With(BodyMeasurement.HipGirth, "39 3/4 in")
        : body;
    body = asked.TryGetValue("--waist", out string? waist) ? body.With(BodyMeasurement.WaistGirth, waist) : body;
    body = asked.TryGetValue("--hip", out string? hip) ? body.With(BodyMeasurement.HipGirth, hip) : body;
    body = asked.TryGetValue("--waist-to-hip", out string? depth) ? body.With(BodyMeasurement.WaistToHip, depth) : body;

    SkirtBlockBuilder skirt = SkirtBlock.For(body)
        .WithLength(LengthOf(asked, unit, "--length", "26 in", "66 cm"))
        .WithHipEase(LengthOf(asked, unit, "--ease", "1 in", "2.5 cm"))
        .WithWaistEase(LengthOf(asked, unit, "--waist-ease", "0 in", "0 cm"))
        .WithWaistline(ReadWaistline(asked));
    skirt = asked.ContainsKey("--fitted") ? skirt.Fitted() : skirt;
    skirt = ReadDarts(asked) is { } darts
        ? skirt.WithFrontDarts(new DartPlan { Count = darts.Front }).WithBackDarts(new DartPlan { Count = darts.Back })
        : skirt;

    // A table that does not name its unit is read in the one given here, and refused where none is.
    return asked.TryGetValue("--table", out string? table)
        ? skirt.ShapedBy(ShapingTable.FromCsv(File.ReadAllText(table), new ShapingCsvOptions { Unit = asked.ContainsKey("--unit") ? unit : null }))
        : skirt;
}

PieceSet MakePieces(Dictionary<string, string> asked, LengthUnit unit, SkirtBlock block)
{
    // The two girths tell whose skirt it is; a label has no room for heights.
    BodyMeasurements girths = BodyMeasurements.In(unit)
        .With(BodyMeasurement.WaistGirth, block.Body[BodyMeasurement.WaistGirth])
        .With(BodyMeasurement.HipGirth, block.Body[BodyMeasurement.HipGirth]);
    PieceLabel label = PieceLabel.For("Skirt").WithMeasurements(girths, TapeStep.For(unit));
    return SkirtPattern.From(block, new SkirtPatternOptions
    {
        SeamAllowance = LengthOf(asked, unit, "--allowance", "1/2 in", "1.2 cm"),
        Label = block.Body.Name is { } name ? label.ForWhom(name) : label,
    });
}

Dictionary<string, string> ReadArguments()
{
    var asked = new Dictionary<string, string>();
    for (int i = 0; i < args.Length; i += 2)
    {
        if (args[i] == "--fitted" && asked.TryAdd(args[i], "yes"))
        {
            // The one option without a value.
            i--;
            continue;
        }

        if (!known.Contains(args[i]) || i + 1 == args.Length || !asked.TryAdd(args[i], args[i + 1]))
        {
            throw new FormatException($"\"{args[i]}\" is unknown, has no value, or is given twice. Use:{Environment.NewLine}{usage}");
        }
    }

    return asked;
}

static LengthUnit ReadUnit(Dictionary<string, string> asked) => asked.GetValueOrDefault("--unit", "in") switch
{
    "in" => LengthUnit.Inch,
    "cm" => LengthUnit.Centimeter,
    string other => throw new FormatException($"\"{other}\" is no unit of this command. Use in or cm."),
};

// What is not given is the custom of the tape that the body was measured with.
static Length LengthOf(Dictionary<string, string> asked, LengthUnit unit, string option, string usual, string usualMetric)
    => Tape.Parse(asked.GetValueOrDefault(option, unit == LengthUnit.Centimeter ? usualMetric : usual), unit);

static Waistline ReadWaistline(Dictionary<string, string> asked) => asked.GetValueOrDefault("--waistline", "shaped") switch
{
    "shaped" => Waistline.Shaped,
    "level" => Waistline.Level,
    string other => throw new FormatException($"\"{other}\" is no waistline of this command. Use shaped or level."),
};

static (int Front, int Back)? ReadDarts(Dictionary<string, string> asked)
{
    if (!asked.TryGetValue("--darts", out string? text))
    {
        return null;
    }

    static int? Count(string part) => int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count <= DartPlan.MostDarts ? count : null;
    return text.Split(',') is [string front, string back] && Count(front) is { } inFront && Count(back) is { } behind
        ? (inFront, behind)
        : throw new FormatException($"\"{text}\" does not say how many darts. Use FRONT,BACK, each 0 to {DartPlan.MostDarts}, such as 1,2.");
}
