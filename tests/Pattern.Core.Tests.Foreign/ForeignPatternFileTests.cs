using System;
using System.Collections.Generic;
using System.Linq;
using System.Text;
using System.Text.RegularExpressions;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Pdf;
using Pattern.Core.Pieces;
using Pattern.Core.Samples.Methods;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Foreign;

/// <summary>Pattern files of methods that the library does not bring: read by who has the method, and by who has not.</summary>
public class ForeignPatternFileTests
{
    private static readonly MethodCatalogue Catalogue = TaughtMethods.Catalogue.With(new HalfApron()).With(CircleSkirt.Method);

    // Two bodies, off either tape; settings as usual and not.
    public static TheoryData<string, LengthUnit> Methods
    {
        get
        {
            var data = new TheoryData<string, LengthUnit>();
            foreach (string method in TaughtMethods.All.Select(method => method.Name).Append("half apron").Append("full circle"))
            {
                data.Add(method, LengthUnit.Inch);
                data.Add(method, LengthUnit.Centimeter);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void FromJson_WithItsMethod_IsTheSameBlockToTheLastBit(string method, LengthUnit unit)
    {
        Block block = Draft(method, unit);
        string json = PatternDocument.Of(block, Pieces(block)).ToJson();

        PatternDocument read = PatternDocument.FromJson(json, Catalogue);

        Assert.Equal(json, read.ToJson());
        Block again = read.DraftBlock();
        Assert.Equal(json, PatternDocument.Of(again, read.Pieces).ToJson());
        Assert.Equal(Numbers(block), Numbers(read.Block));
        Assert.Equal(Numbers(block), Numbers(again));
        Assert.Equal(block.Report.ToString(), again.Report.ToString());
        Assert.Equal(block.ToStepsText(), again.ToStepsText());
        Assert.Contains("Draft it again", Assert.Single(read.Block.Report.Advice).Advice!.Remedy);
        Assert.Equal(block.Method.Readings.Select(Said), read.Block.Method.Readings.Select(Said));
        Assert.Equal(again.Report.ToString(), read.Block.ToBuilder().Draft().Report.ToString());
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void FromJson_WithoutItsMethod_StillMeasuresAndSaysWhatWasNotChecked(string method, LengthUnit unit)
    {
        Block block = Draft(method, unit);
        string json = PatternDocument.Of(block, Pieces(block)).ToJson();

        PatternDocument read = PatternDocument.FromJson(json);

        Assert.Equal(json, read.ToJson());
        Assert.Equal(Numbers(block), Numbers(read.Block));
        Assert.Equal(block.Title, read.Block.Title);
        Assert.Equal((block.Method.Name, block.Method.Version), (read.Block.Method.Name, read.Block.Method.Version));
        Assert.Equal(block.Method.Settings.Select(setting => setting.ToString()), read.Block.Method.Settings.Select(setting => setting.ToString()));
        Assert.Equal(block.Method.PrintedSettings.Select(setting => setting.ToString()), read.Block.Method.PrintedSettings.Select(setting => setting.ToString()));
        Assert.Equal(block.Remarks, read.Block.Remarks);
        Assert.All(block.Panels.Zip(read.Block.Panels), pair => Assert.All(pair.First.Edges, edge => Assert.Equal(edge.SewnLength, pair.Second.FindEdge(edge.Name).SewnLength)));

        // The seams are measured as on the block itself, and one piece of advice says that nothing else was.
        Assert.True(read.Block.Report.Passed);
        Assert.Equal(
            block.Seams.Check([.. block.Panels]).Findings.Select(finding => finding.ToString()),
            read.Block.Report.Findings.Where(finding => finding.Advice is null).Select(finding => finding.ToString()));
        Finding advice = Assert.Single(read.Block.Report.Advice);
        Assert.Contains($"{method} {block.Method.Version} is not known here", advice.Advice!.Reason);
        Assert.Contains("catalogue", advice.Advice.Remedy);
        Assert.Equal(DiagnosticCode.MethodUnknown, Assert.Throws<ConstructionException>(() => read.Block.ToBuilder()).Code);
        Assert.Equal(DiagnosticCode.MethodUnknown, Assert.Throws<ConstructionException>(() => read.DraftBlock()).Code);
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void FromJson_WithoutItsMethod_StillDrawsAndPrints(string method, LengthUnit unit)
    {
        Block block = Draft(method, unit);

        PatternDocument read = PatternDocument.FromJson(PatternDocument.Of(block, Pieces(block)).ToJson());

        Assert.Equal(Sewn(block), Sewn(read.Block));
        Assert.NotEmpty(Sewn(block));
        string[] words = [.. Words(read.Block.Draw())];
        Assert.Contains($"were not run: {method} {block.Method.Version} is not known here", string.Join(' ', words));
        Assert.All(block.Trued.Landmarks, landmark => Assert.Contains(landmark.Name.Text, words));
        Assert.All(block.Method.PrintedSettings, setting => Assert.Contains(words, word => word.Contains(setting.Name, StringComparison.Ordinal)));
        Assert.Equal("%PDF-", Encoding.ASCII.GetString(read.Block.Draw().ToPdf(SheetLayout.TiledOn(PaperSize.A4)), 0, 5));
        Assert.Equal(Pieces(block).Pieces.ToDxf(), read.Pieces.Pieces.ToDxf());
        Assert.Equal(Pieces(block).Draw().ToSvg(), read.Pieces.Draw().ToSvg());
        Assert.StartsWith(block.Title, read.Block.ToStepsText());
        Assert.Contains("is not known here", read.Block.ToStepsText());
    }

    // A panel that is changed afterwards is measured again, as that of any block, and kept.
    [Fact]
    public void Block_OfAnUnknownMethod_IsChangedAndKept()
    {
        Block read = PatternDocument.FromJson(PatternDocument.Of(Draft("full circle", LengthUnit.Inch)).ToJson()).Block;
        Panel longer = read.FindPanel(PanelName.Front).TakeInDart(EdgeName.SideSeam.Middle, Tape.Inches("1/2"), Tape.Inches("3"));

        Block changed = read.WithPanel(longer);

        Assert.Contains(changed.Report.Failures, failure => failure.Check.StartsWith("side seam", StringComparison.Ordinal));
        Block again = PatternDocument.FromJson(PatternDocument.Of(changed).ToJson()).Block;
        Assert.Equal(Numbers(changed), Numbers(again));
        Assert.Equal(changed.Report.ToString(), again.Report.ToString());
    }

    // 15 in are 381 mm by the definition of the inch.
    [Fact]
    public void ToJson_OfAForeignMethod_NamesItsSettings()
    {
        string json = PatternDocument.Of(Draft("half apron", LengthUnit.Centimeter)).ToJson();

        Assert.Matches("\"name\": \"depth\",\\s+\"kind\": \"length\",\\s+\"value\": 381,\\s+\"printed\": true", json);
        Assert.Matches("\"name\": \"ties\",\\s+\"kind\": \"choice\",\\s+\"value\": \"short\"", json);
        Assert.DoesNotContain("skirt", json, StringComparison.OrdinalIgnoreCase);
    }

    private static Block Draft(string method, LengthUnit unit)
    {
        BodyMeasurements body = BodyMeasurements.In(unit).Named("Moth")
            .With(BodyMeasurement.WaistGirth, Length.FromInches(30 + (1 / 3.0)))
            .With(BodyMeasurement.HipGirth, Length.FromInches(40));
        BlockBuilder builder = Catalogue.Find(method).For(body);
        return unit == LengthUnit.Inch ? builder.Draft()
            : method == "half apron" ? builder.With(HalfApron.Depth, Tape.Inches("15")).With(HalfApron.Ties, "short").Draft()
            : method == "full circle" ? builder.With(CircleSkirt.HemDepth, Length.FromMillimeters(500 / 3.0)).Draft()
            : builder.Draft();
    }

    private static string Said(KeyValuePair<string, TableReading> reading) => reading.Key + ": " + string.Join(", ", reading.Value.Figures.Select(figure => figure.Name + " " + figure.Value));

    // A panel with a centre is cut on the fold there; a gore has none.
    private static PieceSet Pieces(Block block) => PieceSet.Of([.. block.Panels.Select(panel =>
    {
        PatternPiece piece = PatternPiece.From(panel).WithAllowance(Tape.Inches("1/2")).Cut(1, ClothName.Main).WithTape(TapeStep.Sixteenth);
        return panel.Edges.Any(edge => edge.Name == EdgeName.Centre) ? piece.CutOnFold(EdgeName.Centre) : piece;
    })]);

    // Every coordinate of points, lines and seam lines, by its bits.
    private static IEnumerable<long> Numbers(Block block) => new[]
    {
        block.Drafted.Landmarks.Concat(block.Trued.Landmarks).SelectMany(landmark => new[] { landmark.Position.X.Millimeters, landmark.Position.Y.Millimeters }),
        block.Drafted.Lines.Concat(block.Trued.Lines).SelectMany(line => Places(line.Path)),
        block.Panels.SelectMany(panel => panel.Edges).SelectMany(edge => edge.Stretches).SelectMany(Places),
        block.Panels.SelectMany(panel => panel.Landmarks).SelectMany(landmark => new[] { landmark.Position.X.Millimeters, landmark.Position.Y.Millimeters }),
    }.SelectMany(numbers => numbers).Select(BitConverter.DoubleToInt64Bits);

    private static IEnumerable<double> Places(Geometry.CurvePath path) => path.Segments.SelectMany(segment => new[]
    {
        segment.Start.X.Millimeters, segment.Start.Y.Millimeters, segment.End.X.Millimeters, segment.End.Y.Millimeters, segment.Length.Millimeters,
    });

    // What the drawing says of panels, lines without their places on the sheet: notes of another length move it.
    private static string[] Sewn(Block block) => [.. Regex.Matches(block.Draw().ToSvg(), "<path data-panel=[^>]*>").Select(match => Relative(match.Value))];

    private static string Relative(string path)
    {
        string place = Regex.Match(path, " d=\"M([-0-9.]+) ([-0-9.]+)").Value;
        double[] start = Numbers(place);
        return Regex.Replace(path, "([-0-9.]+) ([-0-9.]+)(?=[LC\"Z ])", match =>
        {
            double[] at = Numbers(match.Value);
            return FormattableString.Invariant($"{Math.Round(at[0] - start[0], 3) + 0.0} {Math.Round(at[1] - start[1], 3) + 0.0}");
        });
    }

    private static double[] Numbers(string text)
        => [.. Regex.Matches(text, "-?[0-9]+(\\.[0-9]+)?").Select(match => double.Parse(match.Value, System.Globalization.CultureInfo.InvariantCulture))];

    private static IEnumerable<string> Words(Drawing drawing) => drawing.Layers.SelectMany(layer => layer.Marks).OfType<TextMark>().Select(mark => mark.Text);
}
