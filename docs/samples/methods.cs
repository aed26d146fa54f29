#:project methods/Pattern.Core.Samples.Methods.csproj
#:property PublishAot=false

// Drafts by a method of somebody else, each a class in the folder methods, and writes what any block has: the drawing, the steps, the proof; and the steps as pictures.
//
//   dotnet run docs/samples/methods.cs
//   dotnet run docs/samples/methods.cs -- --method "tailored skirt" --waist "68 cm" --hip "94 cm" --unit cm --out out/methods
//
// Without --method it drafts by every one. Exit code 0: drafted, and every check passed. 1: not written, and the message says why. 2: drawn, but a check failed.

using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Samples.Methods;
using UnitsNet.Units;

const string usage = """--method "tailored skirt"  --waist "68 cm"  --hip "94 cm"  --unit in|cm  --out DIR""";
string[] known = ["--method", "--waist", "--hip", "--unit", "--out"];

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

    LengthUnit unit = asked.GetValueOrDefault("--unit", "cm") switch
    {
        "in" => LengthUnit.Inch,
        "cm" => LengthUnit.Centimeter,
        string other => throw new FormatException($"\"{other}\" is no unit of this command. Use in or cm."),
    };
    TapeStep tape = unit == LengthUnit.Inch ? TapeStep.Eighth : TapeStep.HalfMillimeter;
    BodyMeasurements body = BodyMeasurements.In(unit)
        .With(BodyMeasurement.WaistGirth, asked.GetValueOrDefault("--waist", "68 cm"))
        .With(BodyMeasurement.HipGirth, asked.GetValueOrDefault("--hip", "94 cm"));
    IReadOnlyList<DraftingMethod> methods = asked.TryGetValue("--method", out string? name) ? [TaughtMethods.Catalogue.Find(name)] : TaughtMethods.All;

    OutputFolder files = OutputFolder.At(asked.GetValueOrDefault("--out", "out/methods"));
    bool passed = true;
    foreach (DraftingMethod method in methods)
    {
        Block block = method.For(body).Draft();
        string file = method.Name.Replace(' ', '-');
        files = files
            .With(file + ".svg", block.Draw(new DrawingOptions { Tape = tape }).ToSvg())
            .With(file + "-steps.svg", StepPictures.Of(block).ToSvg())
            .With(file + "-steps.txt", block.ToStepsText(tape))
            .With(file + "-report.csv", block.Report.ToCsv());
        Console.WriteLine(block.Title + ": " + block.Report.Verdict());
        foreach (Finding advice in block.Report.Advice)
        {
            Console.WriteLine("  " + advice);
        }

        passed &= block.Report.Passed;
    }

    Console.WriteLine("Written: " + string.Join(", ", files.Save()));
    return passed ? 0 : 2;
}
catch (Exception e) when (e is FormatException or ArgumentException or ConstructionException or IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine(e.Message.Split(" (Parameter '")[0]);
    return 1;
}
