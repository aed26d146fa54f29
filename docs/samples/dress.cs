#:project ../../src/Pattern.Core.Pdf/Pattern.Core.Pdf.csproj
#:property PublishAot=false

// Drafts a gown from bust and waist, with every other measurement taken where it is given and assumed where it is not: bodice, skirt and sleeve, joined at the waist. Proves it, makes its
// pieces and prints them at full size.
//
//   dotnet run docs/samples/dress.cs
//   dotnet run docs/samples/dress.cs -- --bust "88 cm" --waist "68 cm" --hip "94 cm" --length "60 cm" --out out
//   dotnet run docs/samples/dress.cs -- --bust 88 --waist 68 --back-waist 41 --shoulder 12.5 --unit cm --out out
//
// Exit code 0: drafted, and every check passed. 1: nothing was written, and the message says why. 2: drawn, but a check failed: do not cut.
// Advice, which names every measurement that was assumed, changes no exit code.

using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Patterns;
using Pattern.Core.Pdf;
using Pattern.Core.Pieces;
using UnitsNet.Units;

const string usage = """
    --bust "34 1/2 in"  --waist "27 in"  [--hip "37 in"]  [--length "24 in"]
    [--back-waist ..]  [--shoulder ..]  [--back-width ..]  [--neck ..]  [--upper-arm ..]  [--stature ..]
    [--front-length ..]  [--scye-depth ..]  [--bust-ease ..]  [--waist-ease ..]  [--skirt-ease ..]  [--cap-ease ..]
    [--unit in|cm]  [--out DIR]
    What is not given of the body is assumed, and the report says so.
    """;

(string Option, BodyMeasurement Measurement)[] measurements =
[
    ("--bust", BodyMeasurement.BustGirth),
    ("--waist", BodyMeasurement.WaistGirth),
    ("--hip", BodyMeasurement.HipGirth),
    ("--back-waist", BodyMeasurement.BackNeckPointToWaist),
    ("--shoulder", BodyMeasurement.ShoulderLength),
    ("--back-width", BodyMeasurement.AcrossBackWidth),
    ("--neck", BodyMeasurement.NeckBaseGirth),
    ("--upper-arm", BodyMeasurement.UpperArmGirth),
    ("--stature", BodyMeasurement.Stature),
    ("--front-length", BodyMeasurement.SideNeckPointToWaist),
    ("--scye-depth", BodyMeasurement.ScyeDepthLength),
];
string[] known = [.. measurements.Select(one => one.Option), "--length", "--bust-ease", "--waist-ease", "--skirt-ease", "--cap-ease", "--unit", "--out"];

try
{
    Dictionary<string, string> asked = ReadArguments();
    LengthUnit unit = asked.GetValueOrDefault("--unit", "in") switch
    {
        "in" => LengthUnit.Inch,
        "cm" => LengthUnit.Centimeter,
        string other => throw new FormatException($"\"{other}\" is no unit of this command. Use in or cm."),
    };
    TapeStep tape = TapeStep.For(unit);
    BodyMeasurements body = ReadBody(asked, unit);
    BodiceBlock bodice = DescribeBodice(asked, unit, body).Draft();
    GownBlock gown = DescribeGown(asked, unit, body).Draft();
    SheathBlock? sheath = DraftSheath(asked, unit, body);
    SleeveBlock sleeve = gown.Sleeve!;
    PieceLabel label = PieceLabel.For("Gown");
    PieceSet pieces = GownPattern.From(gown, new GownPatternOptions { Bodice = new BodicePatternOptions { Label = body.Name is { } name ? label.ForWhom(name) : label } });
    Drawing sheet = pieces.Draw(new PieceDrawingOptions { Tape = tape });
    string steps = gown.ToStepsText(tape) + Environment.NewLine + gown.Skirt.ToStepsText(tape) + Environment.NewLine + sleeve.ToStepsText(tape);

    // All are complete before the first is written.
    OutputFolder folder = OutputFolder.At(asked.GetValueOrDefault("--out", "out"))
        .With("bodice.svg", bodice.Draw().ToSvg())
        .With("sleeve.svg", sleeve.Draw().ToSvg())
        .With("dress.svg", gown.Draw().ToSvg())
        .With("pieces.svg", sheet.ToSvg())
        .With("dress-a4.pdf", sheet.ToPdf(SheetLayout.TiledOn(PaperSize.Find("A4"))))
        .With("report.csv", gown.Report.ToCsv())
        .With("seams.csv", gown.SeamsToCsv())
        .With("steps.txt", steps);
    IReadOnlyList<string> files = (sheath is null ? folder : folder.With("sheath.svg", sheath.Draw().ToSvg())).Save();

    Console.Write(steps);
    Console.WriteLine();
    Console.WriteLine("To cut: " + string.Join("; ", pieces.CutList));
    Console.WriteLine("Pieces: " + pieces.Report.Verdict());
    Console.WriteLine("Written: " + string.Join(", ", files));
    return bodice.Report.Passed && sheath?.Report.Passed != false && gown.Report.Passed && sleeve.Report.Passed && pieces.Report.Passed ? 0 : 2;
}
catch (Exception e) when (e is FormatException or ArgumentException or ConstructionException or IOException or UnauthorizedAccessException)
{
    // Without the name of the method's parameter, which says nothing to who typed a measurement.
    Console.Error.WriteLine(e.Message.Split(" (Parameter '")[0]);
    return 1;
}

BodyMeasurements ReadBody(Dictionary<string, string> asked, LengthUnit unit)
{
    // Viola is one of the cast of our theatre; her measurements serve where none are given.
    bool isForViola = !measurements.Any(one => asked.ContainsKey(one.Option));
    var body = BodyMeasurements.In(unit);
    body = isForViola
        ? body.Named("Viola").With(BodyMeasurement.BustGirth, "34 1/2 in").With(BodyMeasurement.WaistGirth, "27 in").With(BodyMeasurement.HipGirth, "37 in")
            .With(BodyMeasurement.BackNeckPointToWaist, "16 in").With(BodyMeasurement.ShoulderLength, "4 7/8 in")
        : body;
    return measurements.Where(one => asked.ContainsKey(one.Option)).Aggregate(body, (all, one) => all.With(one.Measurement, asked[one.Option]));
}

BodiceBlockBuilder DescribeBodice(Dictionary<string, string> asked, LengthUnit unit, BodyMeasurements body)
{
    BodiceBlockBuilder bodice = BodiceBlock.For(body);
    bodice = asked.TryGetValue("--bust-ease", out string? bust) ? bodice.WithBustEase(Tape.Parse(bust, unit)) : bodice;
    return asked.TryGetValue("--waist-ease", out string? waist) ? bodice.WithWaistEase(Tape.Parse(waist, unit)) : bodice;
}

GownBlockBuilder DescribeGown(Dictionary<string, string> asked, LengthUnit unit, BodyMeasurements body)
{
    GownBlockBuilder gown = GownBlock.For(body);
    gown = asked.TryGetValue("--bust-ease", out string? bust) ? gown.WithBustEase(Tape.Parse(bust, unit)) : gown;
    gown = asked.TryGetValue("--waist-ease", out string? waist) ? gown.WithWaistEase(Tape.Parse(waist, unit)) : gown;
    gown = asked.TryGetValue("--skirt-ease", out string? hip) ? gown.WithSkirtEase(Tape.Parse(hip, unit)) : gown;
    gown = asked.TryGetValue("--cap-ease", out string? cap) ? gown.WithCapEase(Tape.Parse(cap, unit)) : gown;
    return asked.TryGetValue("--length", out string? length) ? gown.WithSkirtLength(Tape.Parse(length, unit)) : gown;
}

// Not everybody can be drafted one: a waist far smaller than the bust wants seams down the front.
SheathBlock? DraftSheath(Dictionary<string, string> asked, LengthUnit unit, BodyMeasurements body)
{
    SheathBlockBuilder sheath = SheathBlock.For(body);
    sheath = asked.TryGetValue("--bust-ease", out string? bust) ? sheath.WithBustEase(Tape.Parse(bust, unit)) : sheath;
    sheath = asked.TryGetValue("--waist-ease", out string? waist) ? sheath.WithWaistEase(Tape.Parse(waist, unit)) : sheath;
    sheath = asked.TryGetValue("--skirt-ease", out string? hip) ? sheath.WithSkirtEase(Tape.Parse(hip, unit)) : sheath;
    sheath = asked.TryGetValue("--cap-ease", out string? cap) ? sheath.WithCapEase(Tape.Parse(cap, unit)) : sheath;
    sheath = asked.TryGetValue("--length", out string? length) ? sheath.WithSkirtLength(Tape.Parse(length, unit)) : sheath;
    try
    {
        return sheath.Draft();
    }
    catch (ConstructionException refusal) when (refusal.Code == DiagnosticCode.MethodDeclines)
    {
        Console.WriteLine("No sheath: " + refusal.Message);
        return null;
    }
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
