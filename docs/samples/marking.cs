#:project ../../src/Pattern.Core/Pattern.Core.csproj
#:property PublishAot=false

// Marks a student's drawing of a skirt block: which of its figures are within the rounding of the tape, and which step the others come from.
//
//   dotnet run docs/samples/marking.cs
//   dotnet run docs/samples/marking.cs -- --waist "29 1/2 in" --hip "39 3/4 in" --figures drawn.csv --tape 1/8 --out out/marking
//
// The table has the columns figure and value: box width,20 3/8. Without arguments it marks the drawing of an invented student.
//
// Exit code 0: the table was read, whatever the marks. 1: it could not be read, or the command was wrong; the message says why.

using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using UnitsNet.Units;

const string usage = """--waist "29 1/2 in"  --hip "39 3/4 in"  [--length "24 in"]  --figures FILE.csv  [--tape 1/8|1/16|1mm|...]  [--out DIR]""";
string[] known = ["--waist", "--hip", "--length", "--figures", "--tape", "--out"];

// An invented drawing: the box is half an inch too wide, and one word is mistyped.
const string drawn = """
    figure,value
    box width,20 7/8
    back hip width,10 3/4
    CB waist level to CB hem,24
    back waist,7 3/8
    front waist dart 1,1 1/4
    bakc hem,10 1/2
    """;

try
{
    Dictionary<string, string> asked = ReadArguments();
    TapeStep tape = asked.GetValueOrDefault("--tape", "1/8") switch
    {
        "1/2" => TapeStep.Half,
        "1/4" => TapeStep.Quarter,
        "1/8" => TapeStep.Eighth,
        "1/16" => TapeStep.Sixteenth,
        "1/32" => TapeStep.ThirtySecond,
        "1/64" => TapeStep.SixtyFourth,
        "1mm" => TapeStep.Millimeter,
        "0.5mm" => TapeStep.HalfMillimeter,
        string other => throw new FormatException($"\"{other}\" is no tape of this command. Use 1/2, 1/4, 1/8, 1/16, 1/32, 1/64, 1mm or 0.5mm."),
    };
    LengthUnit unit = tape.Unit;
    bool isOurs = !asked.ContainsKey("--figures");
    if (!isOurs && !(asked.ContainsKey("--waist") && asked.ContainsKey("--hip")))
    {
        throw new FormatException($"A drawing of your own needs its body. Use:{Environment.NewLine}{usage}");
    }

    BodyMeasurements body = BodyMeasurements.In(unit)
        .With(BodyMeasurement.WaistGirth, asked.GetValueOrDefault("--waist", "29 1/2 in"))
        .With(BodyMeasurement.HipGirth, asked.GetValueOrDefault("--hip", "39 3/4 in"));
    SkirtBlockBuilder skirt = SkirtBlock.For(body);
    SkirtBlock block = (asked.TryGetValue("--length", out string? length) ? skirt.WithLength(Tape.Parse(length, unit)) : skirt).Draft();

    using TextReader table = isOurs ? new StringReader(drawn) : new StreamReader(asked["--figures"]);
    Marking marking = Marking.Read(block, tape, table);
    IReadOnlyList<string> files = OutputFolder.At(asked.GetValueOrDefault("--out", "out/marking"))
        .With("marking.html", marking.ToHtml())
        .With("marking.csv", marking.ToCsv())
        .Save();

    Console.Write(marking);
    Console.WriteLine("Written: " + string.Join(", ", files));
    return 0;
}
catch (Exception e) when (e is FormatException or ArgumentException or ConstructionException or IOException or UnauthorizedAccessException)
{
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
