#:project ../../src/Pattern.Core.Pdf/Pattern.Core.Pdf.csproj
#:property PublishAot=false

// Writes what a lesson on one skirt needs: how to take the measurements, the step sheet with its exercise and a form to fill in, and the block small, for an exercise book.
//
//   dotnet run docs/samples/step-sheets.cs
//   dotnet run docs/samples/step-sheets.cs -- --waist "32 in" --hip "40 in" --length "24 in" --paper letter --out out/lesson
//   dotnet run docs/samples/step-sheets.cs -- --unit cm --waist 81 --hip 102 --length 61 --scale 5 --out out/lesson
//
// Exit code 0: written, and every check passed. 1: nothing was written, and the message says why. 2: written, but a check failed: do not cut.

using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Pdf;
using UnitsNet.Units;

const string usage = """
    [--name WHO]  [--waist "32 in"]  [--hip "40 in"]  [--length "24 in"]
    [--unit in|cm]  [--paper a4|letter]  [--scale 2|4|5]  [--out DIR]
    """;
string[] known = ["--name", "--waist", "--hip", "--length", "--unit", "--paper", "--scale", "--out"];

try
{
    Dictionary<string, string> asked = ReadArguments();
    LengthUnit unit = asked.GetValueOrDefault("--unit", "in") switch
    {
        "in" => LengthUnit.Inch,
        "cm" => LengthUnit.Centimeter,
        string other => throw new FormatException($"\"{other}\" is no unit of this command. Use in or cm."),
    };
    Reduction scale = asked.GetValueOrDefault("--scale", "4") switch
    {
        "2" => Reduction.Half,
        "4" => Reduction.Quarter,
        "5" => Reduction.Fifth,
        string other => throw new FormatException($"\"{other}\" is no scale of this command. Use 2, 4 or 5, for 1:2, 1:4 or 1:5."),
    };
    PaperSize paper = PaperSize.Find(asked.GetValueOrDefault("--paper", "A4"));
    BodyMeasurements body = BodyMeasurements.In(unit)
        .Named(asked.GetValueOrDefault("--name", "Hippolyta"))
        .With(BodyMeasurement.WaistGirth, asked.GetValueOrDefault("--waist", "32 in"))
        .With(BodyMeasurement.HipGirth, asked.GetValueOrDefault("--hip", "40 in"));
    SkirtBlock block = SkirtBlock.For(body).WithLength(Tape.Parse(asked.GetValueOrDefault("--length", "24 in"), unit)).Draft();

    StepSheet sheet = StepSheet.Of(block).WithReasons();
    MeasuringGuide measuring = MeasuringGuide.For(block);
    OutputFolder folder = OutputFolder.At(asked.GetValueOrDefault("--out", "out/lesson"))
        .With("measuring.html", measuring.ToHtml())
        .With("measuring.pdf", measuring.ToPdf(paper))
        .With("steps.html", sheet.ToHtml())
        .With("steps.pdf", sheet.ToPdf(paper))
        .With("exercise.html", sheet.AsExercise().ToHtml())
        .With("exercise.pdf", sheet.AsExercise().ToPdf(paper))
        .With("form.html", sheet.AsForm().ToHtml())
        .With("form.pdf", sheet.AsForm().ToPdf(paper))
        .With("small.pdf", block.Draw().ToPdf(SheetLayout.ReducedOn(paper, scale)));
    IReadOnlyList<string> files = sheet.ToMarkdown().AddTo(folder, "steps.md").Save();

    Console.WriteLine($"{files.Count} files written to {folder.Path}: {string.Join(", ", folder.FileNames)}, and steps.md with its pictures.");
    Console.WriteLine(block.Report.Verdict());
    return block.Report.Passed ? 0 : 2;
}
catch (Exception e) when (e is FormatException or ArgumentException or ConstructionException or IOException or UnauthorizedAccessException)
{
    // Without the name of the method's parameter, which says nothing to who typed a measurement.
    Console.Error.WriteLine(e.Message.Split(" (Parameter '")[0]);
    return 1;
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
