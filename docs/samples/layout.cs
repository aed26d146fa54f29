#:project ../../src/Pattern.Core.Layout/Pattern.Core.Layout.csproj
#:property PublishAot=false

// Lays pieces on cloth: outlines from a file, or the skirt pieces of one of our theatre's cast.
//
//   dotnet run docs/samples/layout.cs
//   dotnet run docs/samples/layout.cs -- --pieces FILE.csv --width 40 --rotations "0 180" --seconds 10 --out out
//
// The file has a line of column names, piece,quantity,vertex,x,y, and a line for each corner. What is printed and written is in the file's own unit, whatever that is.
// Exit code 0: laid. 1: nothing was written, and the message says why.

using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Layout;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Patterns;
using UnitsNet;
using UnitsNet.Units;

const string usage = """
    --pieces FILE.csv  --width W  [--rotations "0 180"]  [--seconds 10]  [--seed 0]  [--out DIR]
    """;
string[] known = ["--pieces", "--width", "--rotations", "--seconds", "--seed", "--out"];

// A file's own unit is read as centimetres, which is what it is for cloth; the figures are the same in any.
const LengthUnit unit = LengthUnit.Centimeter;

try
{
    Dictionary<string, string> asked = ReadArguments();
    var progress = new ProgressLines();
    ClothLay lay = asked.ContainsKey("--pieces") ? LayFile(asked, progress) : LaySkirt(asked, progress);

    // All are complete before the first is written.
    IReadOnlyList<string> files = OutputFolder.At(asked.GetValueOrDefault("--out", "out"))
        .With("layout.csv", lay.ToCsv(unit))
        .With("layout.svg", lay.Draw().ToSvg())
        .Save();

    Console.WriteLine("Written: " + string.Join(", ", files));
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"No lay is shorter than {lay.LowerBound.As(unit):0.###}"));
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Length {lay.Length.As(unit):0.000}, efficiency {lay.Efficiency.Percent:0.00} %"));
    return 0;
}
catch (Exception e) when (e is FormatException or ArgumentException or ConstructionException or IOException or UnauthorizedAccessException)
{
    // Without the name of the method's parameter, which says nothing to who typed a command.
    Console.Error.WriteLine(e.Message.Split(" (Parameter '")[0]);
    return 1;
}

ClothLay LayFile(Dictionary<string, string> asked, IProgress<LayProgress> progress)
{
    if (!asked.TryGetValue("--width", out string? width))
    {
        throw new FormatException($"--pieces needs --width, the width of the cloth in the unit of the file. Use:{Environment.NewLine}{usage}");
    }

    string[] turns = asked.GetValueOrDefault("--rotations", "0 180").Split(' ', StringSplitOptions.RemoveEmptyEntries);
    Cloth cloth = Cloth.Wide(Length.From(Number("--width", width, 1, 1000), unit))
        .WithTurns([.. turns.Select(turn => Angle.FromDegrees(Number("--rotations", turn, -360, 360)))]);
    return LayPiece.FromCsv(File.ReadAllText(asked["--pieces"]), unit).LayOn(cloth, Effort(asked, "10"), progress);
}

ClothLay LaySkirt(Dictionary<string, string> asked, IProgress<LayProgress> progress)
{
    if (asked.ContainsKey("--rotations") || asked.ContainsKey("--width"))
    {
        throw new FormatException($"--width and --rotations go with --pieces FILE.csv. Use:{Environment.NewLine}{usage}");
    }

    // Rosalind is one of the cast of our theatre; her skirt is cut from velvet, whose pile runs one way.
    BodyMeasurements body = BodyMeasurements.In(LengthUnit.Inch).Named("Rosalind").With(BodyMeasurement.WaistGirth, "29 1/2 in").With(BodyMeasurement.HipGirth, "39 3/4 in");
    Cloth velvet = Cloth.Wide(Length.FromCentimeters(140)).WithSelvedge(Length.FromMillimeters(10)).Napped();
    return SkirtPattern.From(SkirtBlock.For(body).Draft()).LayOn(velvet, effort: Effort(asked, null), progress: progress);
}

static LayEffort Effort(Dictionary<string, string> asked, string? usualSeconds)
{
    int seed = (int)Number("--seed", asked.GetValueOrDefault("--seed", "0"), 0, 1_000_000);

    // Where nobody asks for a time, the number of moves ends the search, and every run draws the same lay.
    return asked.GetValueOrDefault("--seconds", usualSeconds!) is { } seconds
        ? new LayEffort { MostMoves = 1_000_000_000, TimeLimit = TimeSpan.FromSeconds(Number("--seconds", seconds, 0, 86_400)), Seed = seed }
        : new LayEffort { MostMoves = 2000, Seed = seed };
}

static double Number(string option, string text, double least, double most)
    => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && value >= least && value <= most
        ? value
        : throw new FormatException(string.Create(CultureInfo.InvariantCulture, $"{option} is \"{text}\"; allowed is a number from {least} to {most}, with a decimal point."));

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

/// <summary>Writes each shorter lay at once, beside the results.</summary>
internal sealed class ProgressLines : IProgress<LayProgress>
{
    public void Report(LayProgress value)
        => Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{value.Length.Centimeters:0.000} after {value.Moves} moves, {value.Efficiency.Percent:0.0} % covered"));
}
