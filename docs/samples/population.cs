#:project methods/Pattern.Core.Samples.Methods.csproj
#:property PublishAot=false

// Tries a drafting method on a table of bodies: how many pass, get advice or are refused, and why, before a class is taught it.
//
//   dotnet run docs/samples/population.cs
//   dotnet run docs/samples/population.cs -- --bodies bodies.csv --waist-column waist --hip-column hip --unit cm --out out/population
//
// Without arguments it takes the cast of our theatre. Writes results.csv, a line for each body as it is drafted, and population.html with counts, reasons and pictures.
// With --tape each body is drafted once more off a tape, every distance to its nearest mark, and the last lines but one say what that does, usually and at worst.
// A cell may carry its own unit; --unit says what plain numbers are in.
//
// Exit code 0: the table was read, whatever came of its bodies. 1: it could not be read, or the command was wrong; the message says why.

using System;
using System.Collections.Concurrent;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Samples.Methods;
using Pattern.Core.Sizing;
using UnitsNet;
using UnitsNet.Units;

const string usage = """
    --bodies FILE.csv  --waist-column NAME  --hip-column NAME
    [--name-column NAME]  [--unit mm|cm|in]  [--method NAME]  [--ease "2.5 cm"]  [--tape 1/8|1/16|1mm|...]  [--out DIR]
    """;
string[] known = ["--bodies", "--waist-column", "--hip-column", "--name-column", "--unit", "--method", "--ease", "--tape", "--out"];

// An invented cast.
const string cast = """
    name,waist,hip
    Rosalind,29 1/2 in,39 3/4 in
    Titania,26 in,36 1/2 in
    Quince,41 in,42 in
    Hippolyta,33 1/4 in,44 in
    Snug,45 1/2 in,44 in
    Moth,24 in,33 in
    Bottom,"102,5",110 cm
    """;

try
{
    Dictionary<string, string> asked = ReadArguments();
    LengthUnit unit = asked.GetValueOrDefault("--unit", "mm") switch
    {
        "mm" => LengthUnit.Millimeter,
        "cm" => LengthUnit.Centimeter,
        "in" => LengthUnit.Inch,
        string other => throw new FormatException($"\"{other}\" is no unit of this command. Use mm, cm or in."),
    };
    bool isCast = !asked.ContainsKey("--bodies");
    BodyColumns columns = Columns(asked, unit, isCast);
    DraftingMethod method = Methods().Find(asked.GetValueOrDefault("--method", BuiltInMethods.Skirt.Name));
    Func<BodyMeasurements, Block> draft = Draft(asked, method, unit);
    string folder = asked.GetValueOrDefault("--out", "out/population");

    TextReader Open() => isCast ? new StringReader(cast) : new StreamReader(asked["--bodies"]);
    TapeStep? tape = ReadTape(asked);
    using TextReader text = Open();
    IEnumerable<BodyRow> rows = columns.Read(text);

    // Written as it goes, so that a table of any length takes no more room than one body; under its own name only once it is whole.
    Directory.CreateDirectory(folder);
    string results = Path.Combine(folder, "results.csv");
    TrialSummary summary;
    using (var table = new StreamWriter(results + ".part") { NewLine = "\n" })
    {
        table.WriteLine("row,outcome,code,advice,closed_waist_mm,target_mm,milliseconds");
        // On all cores; the time of each body waits here until its row is written.
        var times = new ConcurrentDictionary<BodyMeasurements, double>();
        Block Timed(BodyMeasurements body)
        {
            var watch = Stopwatch.StartNew();
            try
            {
                return draft(body);
            }
            finally
            {
                times[body] = watch.Elapsed.TotalMilliseconds;
            }
        }

        summary = TrialSummary.Of(Batch.Draft(rows, Timed).Select(trial => Written(trial, times, table)));
    }

    File.Move(results + ".part", results, overwrite: true);
    string whom = isCast ? "the cast of our theatre" : Path.GetFileName(asked["--bodies"]);
    File.WriteAllText(Path.Combine(folder, "population.html"), summary.ToHtml($"{method.Name}, tried on {whom}", TapeStep.For(unit)));

    foreach (TrialReason reason in summary.Reasons)
    {
        Console.WriteLine($"{reason.Outcome}: {reason}. Row {reason.FirstRow}: {reason.Example}");
    }

    foreach (TrialReason advice in summary.Advice)
    {
        Console.WriteLine($"Advice: {advice}. Row {advice.FirstRow}: {advice.Example}");
    }

    if (tape is { } marks)
    {
        using TextReader again = Open();
        Console.WriteLine(TapeEffects.Of(columns.Read(again).Select(row => Trial.Of(row, draft)), marks));
    }

    Console.WriteLine($"Written: {results}, {Path.Combine(folder, "population.html")}");
    Console.WriteLine(summary);
    return 0;
}
catch (Exception e) when (e is FormatException or ArgumentException or ConstructionException or IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine(e.Message.Split(" (Parameter '")[0]);
    return 1;
}

static Trial Written(Trial trial, ConcurrentDictionary<BodyMeasurements, double> times, TextWriter table)
{
    double milliseconds = trial.Row.Body is { } body && times.TryRemove(body, out double took) ? took : 0;
    string outcome = trial.Outcome switch { TrialOutcome.Passed => "passed", TrialOutcome.Failed => "failed", TrialOutcome.Refused => "refused", _ => "bad-row" };
    string code = trial.Code is { } why ? $"PC{(int)why:0000}" : string.Empty;
    CheckReport? report = trial.Block?.Report;
    string advice = report is null ? string.Empty : string.Join(';', report.Advice.Select(finding => finding.Code).Distinct());
    Finding? waist = null;
    report?.TryFind("closed waist all around", "block", out waist);
    table.WriteLine(string.Join(',', trial.Row.Number, outcome, code, advice, Millimetres(waist?.Measured), Millimetres(waist?.Target), milliseconds.ToString("0.000", CultureInfo.InvariantCulture)));
    return trial;
}

static string Millimetres(IQuantity? length) => length is Length known ? known.Millimeters.ToString("0.000000", CultureInfo.InvariantCulture) : string.Empty;

static MethodCatalogue Methods() => TaughtMethods.Catalogue;

static TapeStep? ReadTape(Dictionary<string, string> asked)
{
    if (!asked.TryGetValue("--tape", out string? text))
    {
        return null;
    }

    TapeStep[] all = [TapeStep.Half, TapeStep.Quarter, TapeStep.Eighth, TapeStep.Sixteenth, TapeStep.ThirtySecond, TapeStep.SixtyFourth, TapeStep.Millimeter, TapeStep.HalfMillimeter, TapeStep.TenthMillimeter];
    string wanted = text.Replace(" ", string.Empty);
    return all.Cast<TapeStep?>().FirstOrDefault(step => step!.Value.ToString().Replace(" ", string.Empty) is { } words && (words == wanted || words == wanted + "in"))
        ?? throw new FormatException($"\"{text}\" is no tape of this command. Use one of {string.Join(", ", all)}.");
}

static BodyColumns Columns(Dictionary<string, string> asked, LengthUnit unit, bool isCast)
{
    string Column(string option, string ofCast) => isCast ? ofCast : asked.GetValueOrDefault(option) ?? throw new FormatException($"{option} is missing. Use:{Environment.NewLine}{usage}");
    BodyColumns columns = BodyColumns.In(unit)
        .With(BodyMeasurement.WaistGirth, Column("--waist-column", "waist"))
        .With(BodyMeasurement.HipGirth, Column("--hip-column", "hip"));
    string? name = isCast ? "name" : asked.GetValueOrDefault("--name-column");
    return name is null ? columns : columns.NamedBy(name);
}

static Func<BodyMeasurements, Block> Draft(Dictionary<string, string> asked, DraftingMethod method, LengthUnit unit)
{
    if (!asked.TryGetValue("--ease", out string? text))
    {
        return body => method.For(body).Draft();
    }

    var ease = method.Settings.OfType<MethodSetting<Length>>().FirstOrDefault(setting => setting.Name == "hip ease")
        ?? throw new FormatException($"The method {method.Name} takes no hip ease. Leave --ease out.");
    Length value = Tape.Parse(text, unit);

    // A value out of range is the caller's mistake and not the body's: refused here, before the first body.
    _ = method.For(BodyMeasurements.In(unit)).With(ease, value);
    return body => method.For(body).With(ease, value).Draft();
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
