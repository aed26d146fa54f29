using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Reflection;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Conventions;
using Pattern.Core.Tests.Pieces;
using UnitsNet;
using NodeObject = System.Text.Json.Nodes.JsonObject;

namespace Pattern.Core.Tests.Output;

/// <summary>Well-formed files that make no pattern, or another one than they say.</summary>
public class JsonContentTests
{
    // A choice that is added to the library needs a word in the file, here and in the schema.
    [Fact]
    public void Words_EveryChoiceOfTheLibrary_HasOneHereAndInTheSchema()
    {
        string schema = Repository.Read("docs/pattern.schema.json");
        int choices = 0;
        foreach (FieldInfo field in typeof(JsonWords).GetFields(BindingFlags.Static | BindingFlags.NonPublic))
        {
            object words = field.GetValue(null)!;
            Type kind = field.FieldType.GetGenericArguments().Single();

            // Of the units of UnitsNet, a body has only those of a tape.
            foreach (object choice in Enum.GetValues(kind).Cast<object>().Where(_ => kind.Assembly == typeof(PatternDocument).Assembly))
            {
                var word = (string)field.FieldType.GetMethod("WordOf", BindingFlags.Instance | BindingFlags.NonPublic)!.Invoke(words, [choice])!;
                Assert.Contains("\"" + word + "\"", schema);
                choices++;
            }
        }

        Assert.True(choices > 20);
    }

    private static readonly string Json = JsonSamples.Small.ToJson();

    // Ranges are those that the documentation of the methods states.
    [Theory]
    [InlineData("/body/name", "\" \"", DiagnosticCode.JsonContentRefused, "PC")]
    [InlineData("/body/unit", "\"hand\"", DiagnosticCode.JsonValueWrong, "mm, cm, m, in, ft, yd")]
    [InlineData("/body/measurements/0/term", "\"Waist girth\"", DiagnosticCode.JsonValueWrong, "waist girth")]
    [InlineData("/body/measurements/1/term", "\"waist girth\"", DiagnosticCode.JsonSaidTwice, "waist girth")]
    [InlineData("/body/measurements/0/value", "29.6", DiagnosticCode.JsonValueWrong, "751.84, as value and unit say", "/body/measurements/0/millimetres")]
    [InlineData("/body/measurements/3/defined", "null", DiagnosticCode.JsonValueWrong, "an object")]
    [InlineData("/body/measurements/3/defined/least", "900", DiagnosticCode.JsonContentRefused, "PC0002", "/body/measurements/3/defined")]
    [InlineData("/body/measurements/3/defined/most", "500", DiagnosticCode.JsonContentRefused, "head girth", "/body/measurements/3/millimetres")]
    [InlineData("/method/name", "\"trousers\"", DiagnosticCode.JsonValueWrong, "skirt block")]
    [InlineData("/method/options/waistEase", "203.3", DiagnosticCode.JsonContentRefused, "PC0002")]
    [InlineData("/method/options/length", "0", DiagnosticCode.JsonContentRefused, "PC0002")]
    [InlineData("/method/options/centreFrontDrop", "-51", DiagnosticCode.JsonContentRefused, "PC0002")]
    [InlineData("/method/options/levels/lowerHip", "1000.5", DiagnosticCode.JsonContentRefused, "PC0002")]
    [InlineData("/method/options/frontDarts/count", "5", DiagnosticCode.JsonValueWrong, "0 to 4")]
    [InlineData("/method/options/frontDarts/count", "1.5", DiagnosticCode.JsonValueWrong, "a whole number")]
    [InlineData("/method/options/backDarts/length", "9", DiagnosticCode.JsonContentRefused, "PC0002")]
    [InlineData("/method/options/fit/sideHem", "151", DiagnosticCode.JsonContentRefused, "PC0002")]
    [InlineData("/method/options/waistline", "\"low\"", DiagnosticCode.JsonValueWrong, "shaped, level, lowered-back")]
    [InlineData("/method/options/shaping/law", "\"proportional\"", DiagnosticCode.JsonValueWrong, "null where there is a table")]
    [InlineData("/method/options/shaping/table/rows/1/difference", "203.2", DiagnosticCode.JsonContentRefused, "PC5", "/method/options/shaping/table/rows/1")]
    [InlineData("/method/options/shaping/table/name", "\"a\\nb\"", DiagnosticCode.JsonContentRefused, "PC5")]
    [InlineData("/panels/0/name", "\"side\"", DiagnosticCode.JsonValueWrong, "panel back", "/panels/0")]
    [InlineData("/panels/0/name", "\"Back!\"", DiagnosticCode.JsonContentRefused, "PC0007")]
    [InlineData("/panels/0/edges/1/name", "\"waist\"", DiagnosticCode.JsonContentRefused, "PC2003", "/panels/0/edges")]
    [InlineData("/panels/0/edges", "[]", DiagnosticCode.JsonContentRefused, "PC2001")]
    [InlineData("/panels/0/edges/0/darts", "[]", DiagnosticCode.JsonValueWrong, "2 entries")]
    [InlineData("/panels/0/edges/0/stretches/0", "[]", DiagnosticCode.JsonValueWrong, "1 to 1000 entries")]
    [InlineData("/panels/0/edges/0/darts/0/apex", "[0, 0]", DiagnosticCode.JsonValueWrong, "the same to 0.01 mm", "/panels/0/edges/0/darts/0")]
    [InlineData("/panels/0/edges/0/darts/0/startLeg", "[0, 0]", DiagnosticCode.JsonValueWrong, "where the stretch before it ends")]
    [InlineData("/panels/0/edges/0/darts/0/pressedToward", "\"up\"", DiagnosticCode.JsonValueWrong, "start, end")]
    [InlineData("/panels/0/edges/0/darts/0/stitched", "1000", DiagnosticCode.JsonValueWrong, "the number 1000")]
    [InlineData("/panels/0/notches/0/edge", "\"sleeve\"", DiagnosticCode.JsonContentRefused, "PC2006")]
    [InlineData("/panels/0/notches/0/position", "[0, 0]", DiagnosticCode.JsonValueWrong, "on the edge at its distance")]
    [InlineData("/panels/0/notches/0/distanceFromStart", "5000", DiagnosticCode.JsonValueWrong, "the number 5000")]
    [InlineData("/panels/0/notches/0/count", "4", DiagnosticCode.JsonValueWrong, "1 to 3")]
    [InlineData("/pieces/0/panel/landmarks/0/name", "\"1\"", DiagnosticCode.JsonContentRefused, "PC0008")]
    [InlineData("/pieces/0/allowance", "500.1", DiagnosticCode.JsonContentRefused, "PC6001")]
    [InlineData("/pieces/0/allowance", "-0.1", DiagnosticCode.JsonContentRefused, "PC6001")]
    [InlineData("/pieces/0/allowances/0/edge", "\"sleeve\"", DiagnosticCode.JsonContentRefused, "sleeve", "/pieces/0/allowances/0/allowance")]
    [InlineData("/pieces/0/allowances/1/edge", "\"hem\"", DiagnosticCode.JsonSaidTwice, "hem")]
    [InlineData("/pieces/0/corners/0/corner", "\"round\"", DiagnosticCode.JsonValueWrong, "extended, squared-off, mirrored, blunt")]
    [InlineData("/pieces/0/corners/0/along", "\"waist\"", DiagnosticCode.JsonContentRefused, "PC6006", "/pieces/0/corners/0")]
    [InlineData("/pieces/0/corners/1/along", "\"side\"", DiagnosticCode.JsonSaidTwice, "hem and side", "/pieces/0/corners/1")]
    [InlineData("/pieces/0/fold", "\"side\"", DiagnosticCode.JsonContentRefused, "PC6007")]
    [InlineData("/pieces/0/fold", "null", DiagnosticCode.JsonContentRefused, "PC6008", "/pieces/0/unfolded")]
    [InlineData("/pieces/0/cuts/0/count", "0", DiagnosticCode.JsonValueWrong, "1 to 999")]
    [InlineData("/pieces/0/cuts/0/cloth", "\"felt\"", DiagnosticCode.JsonSaidTwice, "felt", "/pieces/0/cuts/1/cloth")]
    [InlineData("/pieces/0/label/garment", "\"\\u0007\"", DiagnosticCode.JsonContentRefused, "PC6009")]
    [InlineData("/pieces/0/label/date", "\"2026-02-30\"", DiagnosticCode.JsonValueWrong, "a day such as 2026-03-14")]
    [InlineData("/pieces/0/drawn/notches", "[]", DiagnosticCode.JsonDrawnDiffers, "a list of")]
    [InlineData("/pieces/0/drawn/foldLine", "[0, 0, 1, 1]", DiagnosticCode.JsonDrawnDiffers, "null")]
    public void FromJson_OfContentThatMakesNoPattern_IsRefusedWithItsPath(string pointer, string text, DiagnosticCode code, string says, string? path = null)
    {
        DocumentFormatException fault = Assert.Throws<DocumentFormatException>(() => PatternDocument.FromJson(JsonPlaces.Replaced(Json, pointer, text)));

        Assert.Equal((code, path ?? pointer), (fault.Code, fault.Path));
        Assert.Contains(says, fault.Message);
        Assert.Equal(code == DiagnosticCode.JsonContentRefused, fault.InnerException is not null);
        Assert.DoesNotContain("(Parameter", fault.Message);
    }

    [Fact]
    public void FromJson_OfAPanelWithAGap_SaysWhereAndHowWide()
    {
        JsonNode tree = JsonNode.Parse(Json)!;
        JsonArray hem = tree["pieces"]![0]!["panel"]!["edges"]![2]!["stretches"]![0]![0]!["cubic"]!.AsArray();
        hem[0] = hem[0]!.GetValue<double>() - 0.5;

        DocumentFormatException fault = Assert.Throws<DocumentFormatException>(() => PatternDocument.FromJson(tree.ToJsonString()));

        var cause = Assert.IsType<ConstructionException>(fault.InnerException);
        Assert.Equal((DiagnosticCode.EdgesApart, "/pieces/0/panel/edges"), (cause.Code, fault.Path));
        Assert.Equal(0.5, cause.Measured!.Value.Millimeters, 9);
    }

    [Fact]
    public void FromJson_OfAPanelThatCrossesItself_IsRefused()
    {
        JsonNode tree = JsonNode.Parse(Json)!;
        JsonNode edges = tree["pieces"]![0]!["panel"]!["edges"]!;
        edges[2]!["stretches"]![0]!.AsArray().RemoveAt(0);
        edges[2]!["stretches"]![0]!.AsArray().Add(JsonNode.Parse("{\"line\": [100, 0, 50, 190]}"));
        edges[2]!["stretches"]![0]!.AsArray().Add(JsonNode.Parse("{\"line\": [50, 190, 0, 0]}"));

        DocumentFormatException fault = Assert.Throws<DocumentFormatException>(() => PatternDocument.FromJson(tree.ToJsonString()));

        Assert.Equal(DiagnosticCode.OutlineWouldCross, Assert.IsType<ConstructionException>(fault.InnerException).Code);
    }

    // Every coordinate of what is drawn is looked at: 0.02 mm is refused where a point is meant, 0.004 mm is not seen; an end of a segment may not leave its neighbour.
    // Control points are left out: moved along a nearly straight curve they draw the same line.
    [Fact]
    public void FromJson_OfDrawnLinesOfAnotherPiece_IsRefused()
    {
        byte[] bytes = Encoding.UTF8.GetBytes(Json);
        JsonPlace[] drawn = [.. JsonPlaces.In(bytes).Where(p => p.Pointer.StartsWith("/pieces/0/drawn/", StringComparison.Ordinal) && p.Kind == JsonValueKind.Number && p.Name != "number")];
        JsonPlace[] ends = [.. drawn.Where(p => p.Parent.EndsWith("/line", StringComparison.Ordinal) || (p.Parent.EndsWith("/cubic", StringComparison.Ordinal) && p.Name is "0" or "1" or "6" or "7"))];
        JsonPlace[] points = [.. drawn.Where(p => !p.Pointer.Contains("/line/", StringComparison.Ordinal) && !p.Pointer.Contains("/cubic/", StringComparison.Ordinal) && !p.Pointer.Contains("/arc/", StringComparison.Ordinal))];
        string Changed(JsonPlace place, double by)
        {
            double number = double.Parse(bytes.AsSpan(place.Start, place.End - place.Start), CultureInfo.InvariantCulture);
            return JsonPlaces.Replaced(bytes, place.Start, place.End, (number + by).ToString("R", CultureInfo.InvariantCulture));
        }

        Assert.True(ends.Length > 50 && points.Length > 50);
        Assert.All(ends, place => Assert.StartsWith("/pieces/0/drawn/", Assert.Throws<DocumentFormatException>(() => PatternDocument.FromJson(Changed(place, 0.02))).Path));
        Assert.All(points, place =>
        {
            DocumentFormatException fault = Assert.Throws<DocumentFormatException>(() => PatternDocument.FromJson(Changed(place, 0.02)));
            Assert.Equal(DiagnosticCode.JsonDrawnDiffers, fault.Code);
            Assert.StartsWith(fault.Path, place.Pointer);
            _ = PatternDocument.FromJson(Changed(place, 0.004));
        });
    }

    // A line drawn in two halves is the same line: another version may cut it otherwise.
    [Fact]
    public void FromJson_OfDrawnLinesCutOtherwise_IsRead()
    {
        JsonNode tree = JsonNode.Parse(Json)!;
        JsonArray seamLine = tree["pieces"]![0]!["drawn"]!["seamLine"]!.AsArray();
        int at = seamLine.ToList().FindIndex(segment => segment!["line"] is not null);
        double[] line = [.. seamLine[at]!["line"]!.AsArray().Select(number => number!.GetValue<double>())];
        double[] middle = [(line[0] + line[2]) / 2, (line[1] + line[3]) / 2];
        seamLine.RemoveAt(at);
        seamLine.Insert(at, new NodeObject { ["line"] = new JsonArray(middle[0], middle[1], line[2], line[3]) });
        seamLine.Insert(at, new NodeObject { ["line"] = new JsonArray(line[0], line[1], middle[0], middle[1]) });

        PatternDocument read = PatternDocument.FromJson(tree.ToJsonString());

        Assert.Equal(Json, read.ToJson());
    }

    [Fact]
    public void FromJson_OfPropertiesInAnotherOrder_IsTheSameDocument()
    {
        Assert.Equal(Json, PatternDocument.FromJson(Turned(JsonNode.Parse(Json))!.ToJsonString()).ToJson());
    }

    // 2 mm less around the hip: each of the four quarters is half a millimetre narrower there.
    [Fact]
    public void DraftBlock_OfAFileWithAnotherEase_SaysWhichPanelAndHowFar()
    {
        PatternDocument read = PatternDocument.FromJson(JsonPlaces.Replaced(JsonSamples.Plain.ToJson(), "/method/options/hipEase", "23.4"));

        ConstructionException refusal = Assert.Throws<ConstructionException>(() => read.DraftBlock());

        Assert.Equal((DiagnosticCode.DraftDiffers, "back"), (refusal.Code, refusal.Landmark));
        Assert.InRange(refusal.Measured!.Value.Millimeters, 0.05, 1.0);
        Assert.Equal(0.01, refusal.Allowed!.Value.Millimeters);
        Assert.Contains("allowed is 0.01 mm", refusal.Message);
        SkirtBlock block = read.ToBuilder().Draft();
        Assert.Equal(23.4, block.HipEase.Millimeters);
    }

    // A term that somebody defined may be one that the library knows later on: the file must go on being read.
    [Fact]
    public void FromJson_OfAKnownTermThatWasDefined_IsReadAsTheKnownOne()
    {
        string json = JsonPlaces.Replaced(JsonSamples.Plain.ToJson(), "/body/measurements/0/defined", "{\"kind\": \"girth\", \"least\": 1, \"most\": 2}");

        Assert.Equal(JsonSamples.Plain.ToJson(), PatternDocument.FromJson(json).ToJson());
    }

    [Fact]
    public void WithPieces_OfALoadedDocument_SavesThemBesideTheSameBlock()
    {
        PatternDocument read = PatternDocument.FromJson(JsonSamples.Plain.ToJson());
        PatternPiece first = read.Pieces.Pieces[0];
        PatternDocument changed = read.WithPieces(read.Pieces.With(first.WithAllowance(Length.FromMillimeters(21))));

        PatternDocument again = PatternDocument.FromJson(changed.ToJson());
        Assert.Equal(changed.ToJson(), again.ToJson());
        Assert.Equal(21, again.Pieces.Pieces[0].FindEdge(EdgeName.SideSeam).Allowance.Millimeters);
        Assert.Equal(read.Panels.Select(panel => panel.Name), again.Panels.Select(panel => panel.Name));
    }

    // Where the cap of a dart lies follows from how it is pressed, so a block pressed otherwise is another one.
    [Fact]
    public void DraftBlock_OfAFileWithADartPressedOtherwise_SaysSo()
    {
        PatternDocument read = PatternDocument.FromJson(JsonPlaces.Replaced(PatternDocument.Of(SamplePieces.Skirt).ToJson(), "/panels/0/edges/0/darts/0/pressedToward", "\"end\""));

        Assert.Equal(DiagnosticCode.DraftDiffers, Assert.Throws<ConstructionException>(() => read.DraftBlock()).Code);
    }

    [Fact]
    public void DraftBlock_OfAFileWithAnotherNumberOfDarts_SaysSo()
    {
        PatternDocument read = PatternDocument.FromJson(JsonPlaces.Replaced(JsonSamples.Plain.ToJson(), "/method/options/frontDarts/count", "3"));

        ConstructionException refusal = Assert.Throws<ConstructionException>(() => read.DraftBlock());

        Assert.Equal((DiagnosticCode.DraftDiffers, "front"), (refusal.Code, refusal.Landmark));
        Assert.Contains("3 darts", refusal.Message);
    }

    [Fact]
    public void DraftBlock_OfABodyThatCannotBeDrafted_IsRefusedAsDraftingIs()
    {
        string json = PatternDocument.Of(SamplePieces.Skirt).ToJson();
        JsonNode tree = JsonNode.Parse(json)!;
        tree["body"]!["measurements"]!.AsArray().RemoveAt(1);

        ConstructionException refusal = Assert.Throws<ConstructionException>(() => PatternDocument.FromJson(tree.ToJsonString()).DraftBlock());

        Assert.Equal("hip girth", refusal.Landmark);
    }

    private static JsonNode? Turned(JsonNode? node) => node switch
    {
        NodeObject properties => new NodeObject(properties.Reverse().Select(pair => KeyValuePair.Create(pair.Key, Turned(pair.Value)))),
        JsonArray entries => new JsonArray(entries.Select(Turned).ToArray()),
        _ => node?.DeepClone(),
    };
}
