#:project ../../src/Pattern.Core.Pdf/Pattern.Core.Pdf.csproj
#:property PublishAot=false

// Makes the handouts of a class: for each person of a cast list a folder with step sheet, block, pieces and the pieces as a PDF on A4, and a summary page for the teacher.
//
//   dotnet run docs/samples/class-handouts.cs
//   dotnet run docs/samples/class-handouts.cs -- --cast cast.csv --table table.csv --unit cm --out out/class
//
// Without arguments it takes the cast of our theatre. The columns of a cast list are name, waist, hip and length, and more measurements by their terms, such as waist to hip. A cell may
// carry its own unit; --unit says what plain numbers are in, those of a shaping table that does not say its own included. A row that is no body, or whose skirt is refused, is listed in problems.csv and on the summary page, and never stops the rest.
//
// Exit code 0: at least one person was served. 1: nobody was, or the command was wrong; the message says why.

using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Net;
using System.Text;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pdf;
using Pattern.Core.Pieces;
using Pattern.Core.Sizing;
using UnitsNet;
using UnitsNet.Units;

const string usage = "--cast FILE.csv  [--table FILE.csv]  [--unit in|cm]  [--out DIR]";
string[] known = ["--cast", "--table", "--unit", "--out"];

// An invented cast.
const string cast = """
    name,waist,hip,length
    Rosalind,29 1/2 in,39 3/4 in,26 in
    Titania,26 in,36 1/2 in,28 in
    Quince,41 in,42 in,25 in
    Hippolyta,33 1/4 in,44 in,27 1/2 in
    Snug,45 1/2 in,44 in,24 in
    Moth,24 in,33 in,22 in
    Bottom,"102,5",110 cm,60 cm
    """;

try
{
    Dictionary<string, string> asked = ReadArguments();
    LengthUnit unit = asked.GetValueOrDefault("--unit", "in") switch
    {
        "in" => LengthUnit.Inch,
        "cm" => LengthUnit.Centimeter,
        string other => throw new FormatException($"\"{other}\" is no unit of this command. Use in or cm."),
    };
    bool isOurs = !asked.ContainsKey("--cast");
    string text = isOurs ? cast : File.ReadAllText(asked["--cast"]);
    ShapingTable? table = asked.TryGetValue("--table", out string? path)
        ? ShapingTable.FromCsv(File.ReadAllText(path), new ShapingCsvOptions { Unit = unit })
        : null;
    string folder = asked.GetValueOrDefault("--out", "out/class");

    // The length of a skirt is measured on the person, but is no measurement that the library has a term for.
    BodyMeasurement length = BodyMeasurement.Define("skirt length", MeasurementKind.Length, Length.FromCentimeters(20), Length.FromCentimeters(150));
    BodyRow[] rows = [.. Columns(text, length, unit).Read(new StringReader(text))];

    var handouts = new List<Handout>();
    foreach (BodyRow row in rows)
    {
        Trial trial = Trial.Of(row, body => Draft(body, length, table));
        Handout handout = Serve(trial, folder, unit);
        handouts.Add(handout);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{handouts.Count} of {rows.Length}: {handout.Whom}, {handout.Said}"));
    }

    int served = handouts.Count(handout => handout.Folder is not null);
    TrialSummary summary = TrialSummary.Of(handouts.Select(handout => handout.Trial));
    IReadOnlyList<string> files = OutputFolder.At(folder)
        .With("summary.html", Page(isOurs ? "The cast of our theatre" : Path.GetFileName(asked["--cast"]), summary, handouts, TapeStep.For(unit)))
        .With("problems.csv", Problems(handouts))
        .Save();

    Console.WriteLine("Written: " + string.Join(", ", files));
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{served} of {rows.Length} served; {summary}"));
    return served > 0 ? 0 : 1;
}
catch (Exception e) when (e is FormatException or ArgumentException or ConstructionException or IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine(e.Message.Split(" (Parameter '")[0]);
    return 1;
}

// The four columns that every list has, and whatever else its first line names by a term.
static BodyColumns Columns(string text, BodyMeasurement length, LengthUnit unit)
{
    BodyColumns columns = BodyColumns.In(unit)
        .With(BodyMeasurement.WaistGirth, "waist")
        .With(BodyMeasurement.HipGirth, "hip")
        .With(length, "length")
        .NamedBy("name");
    string header = text.TrimStart('\uFEFF', '\r', '\n').Split('\n')[0];
    foreach (string column in header.Split(',').Select(cell => cell.Trim().Trim('"')))
    {
        if (BodyMeasurement.TryFind(column, out BodyMeasurement? measurement))
        {
            columns = columns.With(measurement, column);
        }
    }

    return columns;
}

static SkirtBlock Draft(BodyMeasurements body, BodyMeasurement length, ShapingTable? table)
{
    SkirtBlockBuilder skirt = SkirtBlock.For(body.Without(length)).WithLength(body[length]);
    return (table is null ? skirt : skirt.ShapedBy(table)).Draft();
}

// A block whose checks fail is drawn, and says on every sheet that it must not be cut; it is not given to a class.
static Handout Serve(Trial trial, string folder, LengthUnit unit)
{
    string whom = trial.Block?.Body.Name ?? trial.Row.Body?.Name ?? string.Create(CultureInfo.InvariantCulture, $"row {trial.Row.Number}");
    if (trial.Outcome != TrialOutcome.Passed || trial.Block is not SkirtBlock block)
    {
        return new Handout(trial, whom, null, null, trial.Reason ?? "not drafted");
    }

    try
    {
        TapeStep tape = TapeStep.For(unit);
        PieceLabel label = PieceLabel.For("Skirt").WithMeasurements(
            BodyMeasurements.In(unit).With(BodyMeasurement.WaistGirth, block.Body[BodyMeasurement.WaistGirth]).With(BodyMeasurement.HipGirth, block.Body[BodyMeasurement.HipGirth]), tape);
        PieceSet pieces = SkirtPattern.From(block, new SkirtPatternOptions { Label = block.Body.Name is { } name ? label.ForWhom(name) : label });
        if (!pieces.Report.Passed)
        {
            return new Handout(trial, whom, null, pieces, pieces.Report.Verdict());
        }

        string own = FolderName(trial.Row.Number, whom);
        Drawing sheet = pieces.Draw(new PieceDrawingOptions { Tape = tape });
        StepSheet steps = StepSheet.Of(block, tape);
        OutputFolder.At(Path.Combine(folder, own))
            .With("step-sheet.html", steps.WithReasons().ToHtml())
            .With("exercise.html", steps.AsExercise().ToHtml())
            .With("skirt.svg", block.Draw(new DrawingOptions { Tape = tape }).ToSvg())
            .With("skirt-pieces.svg", sheet.ToSvg())
            .With("skirt-a4.pdf", sheet.ToPdf(SheetLayout.TiledOn(PaperSize.Find("A4"))))
            .Save();
        return new Handout(trial, whom, own, pieces, block.Report.Advice.Any() ? "drafted, with advice" : "drafted");
    }
    catch (Exception e) when (e is ConstructionException or ArgumentException or IOException)
    {
        return new Handout(trial, whom, null, null, e.Message.Split(" (Parameter '")[0]);
    }
}

// A name may hold anything; a folder takes letters and digits, and the number of the row keeps two of one name apart.
static string FolderName(int row, string whom)
{
    string plain = new([.. whom.Where(c => char.IsAsciiLetterOrDigit(c) || c is '-' or ' ').Take(40)]);
    return string.Create(CultureInfo.InvariantCulture, $"{row:000}-{plain.Trim().Replace(' ', '-')}").TrimEnd('-');
}

static string Problems(IEnumerable<Handout> handouts)
{
    var text = new StringBuilder("row,column,reason\n");
    foreach (Handout handout in handouts.Where(handout => handout.Folder is null))
    {
        text.Append(CultureInfo.InvariantCulture, $"{handout.Trial.Row.Number},{Cell(handout.Trial.Row.Column ?? string.Empty)},{Cell(handout.Said)}\n");
    }

    return text.ToString();
}

static string Cell(string words) => words.IndexOfAny([',', '"', '\n', '\r']) < 0 ? words : "\"" + words.Replace("\"", "\"\"") + "\"";

// The counts, and each person with every check, piece of advice and refusal.
static string Page(string title, TrialSummary summary, IReadOnlyList<Handout> handouts, TapeStep tape)
{
    var people = new StringBuilder("<h2>Each person</h2>\n");
    foreach (Handout handout in handouts)
    {
        people.Append(CultureInfo.InvariantCulture, $"<h3>Row {handout.Trial.Row.Number}: <bdi>{Escaped(handout.Whom)}</bdi></h3>\n");
        people.Append(handout.Folder is { } own
            ? $"<p>{Escaped(handout.Trial.Block!.Body.Describe(tape))}. <a href=\"{own}/step-sheet.html\">step sheet</a>, <a href=\"{own}/exercise.html\">exercise</a>, "
                + $"<a href=\"{own}/skirt.svg\">block</a>, <a href=\"{own}/skirt-pieces.svg\">pieces</a>, <a href=\"{own}/skirt-a4.pdf\">pieces on A4</a></p>\n"
            : $"<p><strong>Not served.</strong> {Escaped(handout.Said)}</p>\n");
        if (handout.Trial.Block is { } block)
        {
            people.Append($"<p>Block: {Escaped(block.Report.Verdict())}{(handout.Pieces is { } made ? " Pieces: " + Escaped(made.Report.Verdict()) : string.Empty)}</p>\n");
            IEnumerable<Finding> said = block.Report.Failures.Concat(block.Report.Advice).Concat(handout.Pieces?.Report.Failures ?? []).Concat(handout.Pieces?.Report.Advice ?? []);
            people.Append(string.Concat(said.Select(finding => $"<p>{Escaped(finding.ToString())}</p>\n")));
        }
    }

    return summary.ToHtml("Handouts: " + title, tape).Replace("</main>", people + "</main>", StringComparison.Ordinal);
}

static string Escaped(string words) => WebUtility.HtmlEncode(words);

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

/// <summary>What one person got: a folder, or why there is none.</summary>
internal sealed record Handout(Trial Trial, string Whom, string? Folder, PieceSet? Pieces, string Said);
