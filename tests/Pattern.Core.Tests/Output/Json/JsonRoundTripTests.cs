using System;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Styling;
using Pattern.Core.Tests.Blocks;
using Pattern.Core.Tests.Measurement;
using Pattern.Core.Tests.Panels;
using Pattern.Core.Tests.Pieces;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Output;

public class JsonRoundTripTests
{
    public static TheoryData<string> Samples => new("plain", "full", "small");

    [Theory]
    [MemberData(nameof(Samples))]
    public void FromJson_OfWhatWasWritten_IsTheSameTextAndTheSameBits(string sample) => AssertExact(Of(sample));

    // System.Text.Json is the independent reader here.
    [Theory]
    [MemberData(nameof(Samples))]
    public void ToJson_ReadByAnotherReader_HasTheNumbersOfTheModel(string sample)
    {
        using JsonDocument file = JsonDocument.Parse(Of(sample).ToJson(), new JsonDocumentOptions { MaxDepth = 32 });

        double[] numbers = [.. DocumentNumbers.OfModel(Of(sample))];
        Assert.True(numbers.Length > 400);
        DocumentNumbers.AssertSameBits(numbers, DocumentNumbers.OfFile(file.RootElement));
        Assert.Equal(Of(sample).Block.Body.Name, file.RootElement.GetProperty("body").GetProperty("name").GetString());
    }

    [Fact]
    public void FromJson_OfWhatWasWritten_SaysAllThatWasSaid()
    {
        PatternDocument read = PatternDocument.FromJson(JsonSamples.Full.ToJson());

        Assert.Equal(JsonSamples.Block.Body.ToString(), read.Block.Body.ToString());
        Assert.Equal(JsonSamples.Block.Body.Select(taken => (taken.Key, taken.Value.Value, taken.Value.Unit)), read.Block.Body.Select(taken => (taken.Key, taken.Value.Value, taken.Value.Unit)));
        Block block = read.DraftBlock();
        Assert.Equal(JsonSamples.Block.Steps.Select(step => step.ToString()), block.Steps.Select(step => step.ToString()));
        Assert.Equal(JsonSamples.Block.Report.ToString(), block.Report.ToString());
        Assert.Equal(JsonSamples.Full.Pieces.CutList.Select(row => row.ToString()), read.Pieces.CutList.Select(row => row.ToString()));
        Assert.Equal(JsonSamples.Full.Pieces.Pieces.Select(piece => piece.Report.ToString()), read.Pieces.Pieces.Select(piece => piece.Report.ToString()));
        Assert.Equal(
            JsonSamples.Full.Pieces.Pieces.SelectMany(piece => piece.Label?.Lines ?? []).Select(line => line.Text),
            read.Pieces.Pieces.SelectMany(piece => piece.Label?.Lines ?? []).Select(line => line.Text));
        Assert.Equal(
            JsonSamples.Full.Pieces.Pieces.SelectMany(piece => piece.Panel.Darts).Select(dart => (dart.PressedToward, dart.StitchedLength)),
            read.Pieces.Pieces.SelectMany(piece => piece.Panel.Darts).Select(dart => (dart.PressedToward, dart.StitchedLength)));
    }

    [Fact]
    public void FromJson_OfABlockAlone_HasNoPieces()
    {
        PatternDocument read = PatternDocument.FromJson(PatternDocument.Of(SamplePieces.Skirt).ToJson());

        Assert.Empty(read.Pieces.Pieces);
        Assert.Equal(["back", "front"], read.Block.Panels.Select(panel => panel.Name.Text));
    }

    [Property(MaxTest = 60)]
    public Property FromJson_OfAnySkirt_IsExact() => Prop.ForAll(
        (from body in Bodies.Any from asked in Bodies.Options select (body, asked)).ToArbitrary(),
        sample =>
        {
            SkirtBlock block;
            PieceSet pieces;
            PatternDocument document;
            try
            {
                block = sample.asked.Apply(SkirtBlock.For(sample.body)).Draft();
            }
            catch (ConstructionException refusal) when (SkirtRefused.IsDraft(refusal))
            {
                return;
            }

            try
            {
                pieces = SkirtPattern.From(block, new SkirtPatternOptions { ZipLength = Length.FromMillimeters(100), Lining = LiningChoice.Loose });
                document = PatternDocument.Of(block, pieces);
            }
            catch (ConstructionException refusal) when (SkirtRefused.IsCut(refusal))
            {
                // A piece that cannot be drawn has nothing to write.
                return;
            }

            AssertExact(document);
            PatternDocument read = PatternDocument.FromJson(document.ToJson());
            DocumentNumbers.AssertSameBits(DocumentNumbers.Of(block), DocumentNumbers.Of(read.DraftBlock()));
        });

    [Property(MaxTest = 100)]
    public Property FromJson_OfAPieceOfAnyPanel_IsExact() => Prop.ForAll(
        (from panel in AnyPanel.Panels from allowance in Bodies.Range(0, 25) select (panel, allowance)).ToArbitrary(),
        sample =>
        {
            PatternPiece piece = PatternPiece.From(sample.panel).WithAllowance(Length.FromMillimeters(sample.allowance)).Cut(3, ClothName.Of("felt"));
            try
            {
                AssertExact(PatternDocument.Of(SamplePieces.Skirt, PieceSet.Of(piece)));
            }
            catch (ConstructionException e) when (SkirtRefused.IsCut(e))
            {
                // No cut line goes around it: nothing to write.
            }
        });

    // Numbers that are hard to write: halves of the last digit, the ends of the range, values whose shortest text has 17 digits. From IEEE 754, by their bits.
    [Theory]
    [InlineData(0x0000000000000000L, "0")]
    [InlineData(unchecked((long)0x8000000000000000L), "-0")]
    [InlineData(0x3FD3333333333334L, "0.30000000000000004")]
    [InlineData(0x0000000000000001L, "5E-324")]
    [InlineData(0x3FF0000000000001L, "1.0000000000000002")]
    [InlineData(0x4340000000000000L, "9007199254740992")]
    [InlineData(0x44B52D02C7E14AF6L, "1E+23")]
    public void Written_OfAHardNumber_IsTheShortestTextThatReadsBack(long bits, string expected)
    {
        string written = JsonWriter.Written(BitConverter.Int64BitsToDouble(bits));

        Assert.Equal(expected, written);
        Assert.True(JsonScanner.Scan(written).TryNumber(0, out double read));
        Assert.Equal(bits, BitConverter.DoubleToInt64Bits(read));
    }

    [Property(MaxTest = 2000)]
    public bool Written_OfAnyNumber_ReadsBackToTheSameBits(long bits)
    {
        double number = BitConverter.Int64BitsToDouble(bits);
        return double.IsNaN(number) || double.IsInfinity(number)
            || (JsonScanner.Scan(JsonWriter.Written(number)).TryNumber(0, out double read) && BitConverter.DoubleToInt64Bits(read) == bits);
    }

    [Theory]
    [MemberData(nameof(Cultures.Awkward), MemberType = typeof(Cultures))]
    public void ToJson_InAnyCulture_IsTheSameText(string culture)
    {
        string expected = JsonSamples.Full.ToJson();

        Cultures.Under(culture, () => Assert.Equal(expected, PatternDocument.FromJson(JsonSamples.Full.ToJson()).ToJson()));
    }

    [Fact]
    public void ToJson_OfAText_IsOfPlainLines()
    {
        string json = JsonSamples.Full.ToJson();

        Assert.StartsWith("{\n  \"format\": \"pattern-core\",\n  \"version\": 2,\n  \"unit\": \"mm\",\n  \"body\": {\n    \"name\": \"Rosalind \\\"Ros\\\" \\\\ Zoë 李 😀 \\t\",\n", json);
        Assert.EndsWith("\n}\n", json);
        Assert.DoesNotContain('\r', json);
        Assert.Contains("\"pressedToward\": \"start\"", json);
        Assert.All(json.Split('\n'), line => Assert.Equal(line.TrimEnd(), line));
    }

    [Fact]
    public void SaveJson_ThenLoadJson_IsTheSameDocument()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            string path = Path.Combine(folder, "skirt.json");
            JsonSamples.Full.SaveJson(path);
            Assert.Equal(JsonSamples.Full.ToJson(), File.ReadAllText(path));
            Assert.Equal(JsonSamples.Full.ToJson(), PatternDocument.LoadJson(path).ToJson());
            Assert.Equal([path], Directory.GetFiles(folder));
            Assert.Throws<IOException>(() => JsonSamples.Full.SaveJson(folder));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void ReadJson_WithAndWithoutAByteOrderMark_IsTheSameDocument(bool hasMark)
    {
        using var stream = new MemoryStream();
        stream.WriteByte(1);
        if (hasMark)
        {
            stream.Write(Encoding.UTF8.GetPreamble());
        }

        JsonSamples.Full.WriteJson(stream);
        stream.Position = 1;

        Assert.Equal(JsonSamples.Full.ToJson(), PatternDocument.ReadJson(stream).ToJson());
        Assert.True(stream.CanRead);
        Assert.Equal(JsonSamples.Full.ToJson(), PatternDocument.FromJson((hasMark ? "\uFEFF" : string.Empty) + JsonSamples.Full.ToJson()).ToJson());
    }

    // A hand is 4 in; no tape is marked in hands.
    [Fact]
    public void ToJson_OfAMeasurementInAnOddUnit_KeepsItsMillimetres()
    {
        BodyMeasurements body = Bodies.Example.With(BodyMeasurement.Stature, Length.From(17, LengthUnit.Hand));
        PatternDocument document = PatternDocument.Of(SkirtBlock.For(body).Draft());

        PatternDocument read = PatternDocument.FromJson(document.ToJson());

        Assert.Equal(body[BodyMeasurement.Stature].Millimeters, read.Block.Body[BodyMeasurement.Stature].Millimeters);
        Assert.Equal(document.ToJson(), read.ToJson());
    }

    [Theory]
    [InlineData(0xD800, "lind")]
    [InlineData(0xDE00, "")]
    public void ToJson_OfATextThatUtf8CannotHold_IsRefused(int half, string rest)
    {
        PatternDocument document = PatternDocument.Of(SkirtBlock.For(Bodies.Example.Named("Ros" + (char)half + rest)).Draft());

        ConstructionException refusal = Assert.Throws<ConstructionException>(() => document.ToJson());

        Assert.Equal(DiagnosticCode.JsonNotWritable, refusal.Code);
        Assert.Contains("half of a surrogate pair at character 4", refusal.Message);
    }

    [Fact]
    public void ToJson_OfATextThatIsTooLongToRead_IsRefused()
    {
        PatternDocument longest = PatternDocument.Of(SkirtBlock.For(Bodies.Example.Named(new string('x', 10_000))).Draft());
        PatternDocument longer = PatternDocument.Of(SkirtBlock.For(Bodies.Example.Named(new string('x', 10_001))).Draft());

        Assert.Equal(longest.ToJson(), PatternDocument.FromJson(longest.ToJson()).ToJson());
        Assert.Equal(DiagnosticCode.JsonNotWritable, Assert.Throws<ConstructionException>(() => longer.ToJson()).Code);
    }

    // The short edge at the bottom of the notch vanishes under 20 mm on either side of it.
    [Fact]
    public void Of_APieceThatCannotBeDrawn_IsRefused()
    {
        Panel panel = Panel.Named(PanelName.Back)
            .WithEdge(EdgeName.Waist, EdgeRole.Seam, CurvePath.From(SamplePieces.At(0, 100)).LineTo(SamplePieces.At(47.5, 60)))
            .WithEdge(EdgeName.Of("short"), EdgeRole.Seam, CurvePath.From(SamplePieces.At(47.5, 60)).LineTo(SamplePieces.At(52.5, 60)))
            .WithEdge(EdgeName.Of("over"), EdgeRole.Seam, CurvePath.From(SamplePieces.At(52.5, 60)).LineTo(SamplePieces.At(100, 100)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(SamplePieces.At(100, 100)).LineTo(SamplePieces.At(100, 0)).LineTo(SamplePieces.At(0, 0)).LineTo(SamplePieces.At(0, 100)))
            .Make();

        PieceSet pieces = PieceSet.Of(PatternPiece.From(panel).WithAllowance(Length.FromMillimeters(20)));

        Assert.Equal(DiagnosticCode.EdgeVanishes, Assert.Throws<ConstructionException>(() => PatternDocument.Of(SamplePieces.Skirt, pieces)).Code);
    }

    // Half of the settings are left to the method in half of the drafts; tables, levels, fits and darts among them.
    [Property(MaxTest = 150)]
    public Property FromJson_OfARandomDraft_KeepsEverySetting() => Prop.ForAll(Gen.Choose(0, int.MaxValue - 1).ToArbitrary(), number =>
    {
        SkirtBlockBuilder builder = RandomDrafts.Of(number);
        Block block;
        try
        {
            block = builder.Draft();
        }
        catch (ConstructionException refusal) when (SkirtRefused.IsDraft(refusal))
        {
            return;
        }

        if (!block.Panels.All(panel => panel.SeamOutline().IsSimple()))
        {
            AssertIsKeptOutOfFiles(block);
            return;
        }

        PatternDocument read = PatternDocument.FromJson(PatternDocument.Of(block).ToJson());

        Assert.Equal(block.Method.Settings.Select(Said), read.Block.Method.Settings.Select(Said));
        Assert.Equal(block.Method.PrintedSettings.Select(Said), read.Block.Method.PrintedSettings.Select(Said));
        SkirtOptions said = SkirtBlockBuilder.From(read.Block.ToBuilder()).Options;
        Assert.Equal(builder.Options with { Table = ShapingTable.Proportional }, said with { Table = ShapingTable.Proportional });
        Assert.Equal((builder.Options.Table as TabulatedShaping)?.ToCsv() ?? builder.Options.Table.Name, (said.Table as TabulatedShaping)?.ToCsv() ?? said.Table.Name);
        DocumentNumbers.AssertSameBits(DocumentNumbers.Of(block), DocumentNumbers.Of(read.Block));
        DocumentNumbers.AssertSameBits(DocumentNumbers.Of(block), DocumentNumbers.Of(read.DraftBlock()));
    });

    // Its side crosses its waist: drawn, so that one sees why, and said by the report, but a file holds outlines that can be cut only.
    [Fact]
    public void Of_ABlockWhoseSideCrossesItsWaist_IsRefused() => AssertIsKeptOutOfFiles(RandomDrafts.Of(228712521).Draft());

    // As many rows as a table holds, each figure with seventeen digits.
    [Fact]
    public void FromJson_OfTheLongestTable_KeepsEveryRow()
    {
        TabulatedShaping table = ShapingTable.In(LengthUnit.Inch).Named("wardrobe room").Outside(ShapingOutside.Clamp);
        Length Mm(double mm) => Length.FromMillimeters(mm);
        for (int row = 0; row < 1000; row++)
        {
            table = table.Row(Mm(100 + (row / 7.0)), Mm(12 + (1 / 3.0)), Mm(25 + (row / 999.0)), Mm(30 + (row / 1001.0)), Mm(20 + (2 / 3.0)));
        }

        string json = PatternDocument.Of(SkirtBlock.For(Bodies.Example).ShapedBy(table).Draft()).ToJson();

        var read = (SkirtBlock)PatternDocument.FromJson(json).DraftBlock();
        Assert.Equal(table.Rows.Select(row => row.ToString()), ((TabulatedShaping)read.Shaping.Table).Rows.Select(row => row.ToString()));
        Assert.Equal(table.Rows.Select(row => row.FrontDart.Millimeters), ((TabulatedShaping)read.Shaping.Table).Rows.Select(row => row.FrontDart.Millimeters));
        Assert.Throws<ArgumentException>(() => table.Row(Mm(1900), Mm(1), Mm(1), Mm(1), Mm(1)));
    }

    // A law of somebody's own is a name in the file: the block is there all the same, and only the law itself can draft it again.
    [Fact]
    public void FromJson_OfALawOfSomebodysOwn_KeepsTheBlockAndItsName()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).ShapedBy(new ThirdsLaw()).Draft();

        PatternDocument read = PatternDocument.FromJson(PatternDocument.Of(block).ToJson());

        Assert.Equal("law of thirds", read.Block.Method.Settings.Single(setting => setting.Name == "shaping").Text);
        DocumentNumbers.AssertSameBits(DocumentNumbers.Of(block), DocumentNumbers.Of(read.Block));
        Assert.Equal(DiagnosticCode.ShapingLawUnknown, Assert.Throws<ConstructionException>(() => read.DraftBlock()).Code);
        Assert.Contains("law of thirds", Assert.Single(read.Block.Method.Readings).Value.Describe(TapeStep.Eighth));
    }

    // What a file cannot hold of a block is said, not invented.
    [Fact]
    public void Block_ThatWasRead_SaysWhatItDoesNotHave()
    {
        Block read = PatternDocument.FromJson(JsonSamples.Plain.ToJson()).Block;

        Assert.Empty(read.Steps);
        Assert.Empty(read.Alternatives);
        Assert.Empty(read.TruingChanges);
        Finding advice = Assert.Single(read.Report.Advice);
        Assert.Contains("were not run: the block was read from a file", advice.Advice!.Reason);
        Assert.Equal(
            SamplePieces.Skirt.Seams.Check([.. SamplePieces.Skirt.Panels]).Findings.Select(finding => finding.ToString()),
            read.Report.Findings.Where(finding => finding.Advice is null).Select(finding => finding.ToString()));
        Assert.Equal(SamplePieces.Skirt.Method.Readings[0].Value.Figures.Select(figure => (figure.Name, figure.Value)), read.Method.Readings[0].Value.Figures.Select(figure => (figure.Name, figure.Value)));
    }

    // The A-line of a random body, its settings chosen or not: made again by the built-in design, without a catalogue.
    [Property(MaxTest = 40)]
    public Property FromJson_OfADesignedBlock_MakesTheDesignAgain() => Prop.ForAll(
        (from body in Bodies.Any from asked in Bodies.Options from share in Gen.Choose(1, 100) from isChosen in Gen.Elements(true, false) select (body, asked, share, isChosen)).ToArbitrary(),
        sample =>
        {
            Block block;
            try
            {
                block = sample.asked.Apply(SkirtBlock.For(sample.body)).Draft().ALine(sample.isChosen ? Ratio.FromPercent(sample.share) : null);
            }
            catch (ConstructionException refusal) when (SkirtRefused.IsDraft(refusal) || SkirtRefused.IsDesign(refusal))
            {
                return;
            }

            string json = PatternDocument.Of(block).ToJson();
            PatternDocument read = PatternDocument.FromJson(json);
            Assert.Equal(json, read.ToJson());
            DocumentNumbers.AssertSameBits(DocumentNumbers.Of(block), DocumentNumbers.Of(read.Block));
            Block again = read.DraftBlock();
            DocumentNumbers.AssertSameBits(DocumentNumbers.Of(block), DocumentNumbers.Of(again));
            Assert.Equal(block.Report.ToString(), again.Report.ToString());
            Assert.Equal(block.Panels.Select(panel => block.TimesOf(panel.Name)), read.Block.Panels.Select(panel => read.Block.TimesOf(panel.Name)));
            Assert.Equal(block.Designs.SelectMany(design => design.Settings).Select(Said), read.Block.Designs.SelectMany(design => design.Settings).Select(Said));
            Assert.Equal(block.Designs.SelectMany(design => design.PromisedAnew), read.Block.Designs.SelectMany(design => design.PromisedAnew));
        });

    [Fact]
    public void FromJson_OfADesignThatNobodyKnows_IsReadAndSaysSo()
    {
        BlockDesign tucked = BlockDesign.Of("tucked", "2", work =>
        {
            work.Replace(work.FindPanel(PanelName.Front).TurnDartIntoTuck(EdgeName.Waist.Dart(1), Length.FromMillimeters(40)));
            work.Show("pocket", CurvePath.From(SamplePieces.At(20, -160)).LineTo(SamplePieces.At(60, -160)).LineTo(SamplePieces.At(60, -220)).Closed());
        });
        Block block = SamplePieces.Skirt.With(tucked);
        string json = PatternDocument.Of(block).ToJson();

        PatternDocument read = PatternDocument.FromJson(json);

        Assert.Equal(json, read.ToJson());
        Assert.Equal("Skirt block, tucked", read.Block.Heading);
        Assert.True(Assert.Single(read.Block.Trued.Lines).Path.IsClosed);
        Assert.Contains("the design tucked 2 is not known here", Assert.Single(read.Block.Report.Advice).Advice!.Reason);
        Assert.Equal(DiagnosticCode.DesignUnknown, Assert.Throws<ConstructionException>(() => read.DraftBlock()).Code);
        Assert.Equal(block.Report.ToString(), PatternDocument.FromJson(json, MethodCatalogue.BuiltIn.With(tucked)).DraftBlock().Report.ToString());
    }

    [Fact]
    public void From_ABuilderOfAnotherMethod_IsRefused()
    {
        BlockBuilder other = JsonSamples.Sample.For(Bodies.Example);

        Assert.Contains("PC4114", Assert.Throws<ArgumentException>(() => SkirtBlockBuilder.From(other)).Message);
    }

    private static (string, SettingKind, bool, string?, string?) Said(SettingValue value) => (value.Name, value.Kind, value.IsGiven, value.Text, value.Quantity?.Value.ToString("R", null));

    private sealed class ThirdsLaw() : ShapingTable("law of thirds")
    {
        protected override ShapingReading Answer(ShapingQuery query) => ShapingReading.Of(
            this, query, query.Difference.DividedBy(30), query.Difference.DividedBy(9), query.Difference.DividedBy(9), query.Difference.DividedBy(12));
    }

    internal static void AssertExact(PatternDocument document)
    {
        string json = document.ToJson();
        PatternDocument read = PatternDocument.FromJson(json, JsonSamples.Methods);
        Assert.Equal(json, read.ToJson());
        DocumentNumbers.AssertSameBits(DocumentNumbers.OfModel(document), DocumentNumbers.OfModel(read));
    }

    private static PatternDocument Of(string sample) => sample switch { "plain" => JsonSamples.Plain, "full" => JsonSamples.Full, _ => JsonSamples.Small };

    private static void AssertIsKeptOutOfFiles(Block block)
    {
        Assert.Contains(block.Panels, panel => !panel.SeamOutline().IsSimple());
        Assert.False(block.Report.Passed);
        Assert.Equal(DiagnosticCode.OutlineWouldCross, Assert.Throws<ConstructionException>(() => PatternDocument.Of(block)).Code);
    }
}
