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
            foreach (object choice in ChoicesOf(kind).Where(_ => kind.Assembly == typeof(PatternDocument).Assembly))
            {
                var word = (string)field.FieldType.GetMethod("WordOf", BindingFlags.Instance | BindingFlags.NonPublic)!.Invoke(words, [choice])!;
                Assert.Contains("\"" + word + "\"", schema);
                choices++;
            }
        }

        Assert.True(choices > 20);
    }

    // A choice that is no enumeration has a static property for each of its values.
    private static IEnumerable<object> ChoicesOf(Type kind) => kind.IsEnum
        ? Enum.GetValues(kind).Cast<object>()
        : kind.GetProperties(BindingFlags.Static | BindingFlags.Public).Select(property => property.GetValue(null)!);

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
    [InlineData("/method/name", "\"Sample!\"", DiagnosticCode.JsonContentRefused, "PC0007")]
    [InlineData("/method/version", "\" \"", DiagnosticCode.JsonContentRefused, "PC0006")]
    [InlineData("/method/settings", "[]", DiagnosticCode.JsonValueWrong, "every setting of sample 7 b")]
    [InlineData("/method/settings/0/name", "\"height\"", DiagnosticCode.JsonValueWrong, "width, depth, slope, pleats, closing, fullness, notes")]
    [InlineData("/method/settings/0/name", "\"depth\"", DiagnosticCode.JsonSaidTwice, "depth", "/method/settings/1/name")]
    [InlineData("/method/settings/0/kind", "\"angle\"", DiagnosticCode.JsonValueWrong, "allowed is length")]
    [InlineData("/method/settings/0/value", "500.1", DiagnosticCode.JsonContentRefused, "PC0002")]
    [InlineData("/method/settings/0/value", "null", DiagnosticCode.JsonValueWrong, "a value")]
    [InlineData("/method/settings/1/value", "9", DiagnosticCode.JsonContentRefused, "PC0002")]
    [InlineData("/method/settings/2/value", "0.8", DiagnosticCode.JsonContentRefused, "slope")]
    [InlineData("/method/settings/3/value", "13", DiagnosticCode.JsonContentRefused, "pleats")]
    [InlineData("/method/settings/3/value", "1.5", DiagnosticCode.JsonValueWrong, "a whole number")]
    [InlineData("/method/settings/4/value", "\"hooks\"", DiagnosticCode.JsonContentRefused, "zip, ties")]
    [InlineData("/method/settings/6/value", "[]", DiagnosticCode.JsonValueWrong, "1 to 10000 entries")]
    [InlineData("/method/settings/6/value/0", "\"a\\nb\"", DiagnosticCode.JsonValueWrong, "one line")]
    [InlineData("/method/settings/5/value", "1.5", DiagnosticCode.JsonContentRefused, "fullness")]
    [InlineData("/designs/0/name", "\"Patched\"", DiagnosticCode.JsonContentRefused, "PC0007")]
    [InlineData("/designs/0/settings/0/value", "91", DiagnosticCode.JsonContentRefused, "PC0002")]
    [InlineData("/designs/0/settings/0/name", "\"length\"", DiagnosticCode.JsonValueWrong, "allowed is size")]
    [InlineData("/designs/0/settings", "[]", DiagnosticCode.JsonValueWrong, "every setting of patched 1")]
    [InlineData("/designs/0/promisedAnew/0", "\"\"", DiagnosticCode.JsonContentRefused, "PC0007")]
    [InlineData("/times", "[2]", DiagnosticCode.JsonValueWrong, "2 entries")]
    [InlineData("/times/0", "0", DiagnosticCode.JsonValueWrong, "1 to 99")]
    [InlineData("/method/readings/0/purpose", "\"Width\"", DiagnosticCode.JsonContentRefused, "PC0007")]
    [InlineData("/method/remarks/0", "\"\"", DiagnosticCode.JsonContentRefused, "PC0006")]
    [InlineData("/landmarks/0/name", "\"side\"", DiagnosticCode.JsonSaidTwice, "side", "/landmarks/1/name")]
    [InlineData("/landmarks/0/kind", "\"corner\"", DiagnosticCode.JsonValueWrong, "point, dart-middle, dart-apex")]
    [InlineData("/landmarks/3/trued", "[1, 2]", DiagnosticCode.JsonTruedDiffers, "a list of 2")]
    [InlineData("/landmarks/2/trued", "[1, 2]", DiagnosticCode.JsonTruedDiffers, "between its landmarks", "/lines/2/trued")]
    [InlineData("/lines/0/role", "\"wall\"", DiagnosticCode.JsonValueWrong, "frame, level, guide, hand-drawn")]
    [InlineData("/lines/0/trued", "null", DiagnosticCode.JsonTruedDiffers, "between its landmarks")]
    [InlineData("/lines/3/trued", "[{\"line\": [0, 0, 1, 1]}]", DiagnosticCode.JsonTruedDiffers, "becomes an edge")]
    [InlineData("/lines/0/name", "\"\"", DiagnosticCode.JsonContentRefused, "PC0008")]
    [InlineData("/panels", "[]", DiagnosticCode.JsonValueWrong, "1 to 1000 entries")]
    [InlineData("/panels/1/name", "\"back\"", DiagnosticCode.JsonSaidTwice, "panel back again", "/panels/1")]
    [InlineData("/seams/0/name", "\"\"", DiagnosticCode.JsonContentRefused, "PC0006")]
    [InlineData("/seams/0/second/panel", "\"back\"", DiagnosticCode.JsonContentRefused, "PC2201", "/seams/0/second")]
    [InlineData("/seams/0/run", "\"up\"", DiagnosticCode.JsonValueWrong, "found, same-way, opposite")]
    [InlineData("/seams/0/first/from/value", "1", DiagnosticCode.JsonValueWrong, "null at an end")]
    [InlineData("/seams/0/first/from/mark", "\"corner\"", DiagnosticCode.JsonValueWrong, "start, end, notch, distance")]
    [InlineData("/seams/1/second/from/value", "0", DiagnosticCode.JsonValueWrong, "1 to 99")]
    [InlineData("/seams/1/second/from/value", "1.5", DiagnosticCode.JsonValueWrong, "a whole number")]
    [InlineData("/seams/1/easeSpan/on", "\"third\"", DiagnosticCode.JsonValueWrong, "first, second")]
    [InlineData("/seams/1/easeSpan/from/value", "-1", DiagnosticCode.JsonContentRefused, "PC0002")]
    [InlineData("/pieces/0/tape", "\"1/3 in\"", DiagnosticCode.JsonValueWrong, "1/2 in, 1/4 in, 1/8 in")]
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
        DocumentFormatException fault = Assert.Throws<DocumentFormatException>(() => PatternDocument.FromJson(JsonPlaces.Replaced(Json, pointer, text), JsonSamples.Methods));

        Assert.Equal((code, path ?? pointer), (fault.Code, fault.Path));
        Assert.Contains(says, fault.Message);
        Assert.Equal(code == DiagnosticCode.JsonContentRefused, fault.InnerException is not null);
        Assert.DoesNotContain("(Parameter", fault.Message);
    }

    // Ranges are those that the documentation of the skirt's builder states.
    [Theory]
    [InlineData("waist ease", "203.3", "PC0002")]
    [InlineData("waist ease", "null", "a value")]
    [InlineData("length", "0", "PC0002")]
    [InlineData("centre front drop", "-51", "PC0002")]
    [InlineData("lower hip depth", "1000.5", "PC0002")]
    [InlineData("front dart count", "5", "front dart count")]
    [InlineData("back dart length", "9", "PC0002")]
    [InlineData("side hem in", "151", "PC0002")]
    [InlineData("waistline", "\"low\"", "shaped, level, lowered back")]
    [InlineData("shaping", "[\"# unit: in\", \"difference,back_wider,front_dart,back_dart,front_drop\", \"8,1/2,1,1,1\", \"8,1/2,1,1,1\"]", "PC5")]
    public void FromJson_OfASkirtWithASettingThatItDoesNotTake_IsRefusedWithItsPath(string setting, string text, string says)
    {
        string json = JsonSamples.Full.ToJson();
        int index = JsonSamples.Block.Method.Settings.ToList().FindIndex(value => value.Name == setting);
        string pointer = $"/method/settings/{index}/value";

        DocumentFormatException fault = Assert.Throws<DocumentFormatException>(() => PatternDocument.FromJson(JsonPlaces.Replaced(json, pointer, text)));

        Assert.Equal((says == "a value" ? DiagnosticCode.JsonValueWrong : DiagnosticCode.JsonContentRefused, pointer), (fault.Code, fault.Path));
        Assert.Contains(says, fault.Message);
    }

    // Another version of a method is another method: the block is there, its settings are not held against those that are known.
    [Fact]
    public void FromJson_OfAnotherVersionOfTheMethod_IsReadAsOfAMethodThatIsNotKnown()
    {
        string json = JsonPlaces.Replaced(JsonSamples.Plain.ToJson(), "/method/version", "\"0\"");

        PatternDocument read = PatternDocument.FromJson(json);

        Assert.Equal(json, read.ToJson());
        Assert.Contains("skirt block 0 is not known here, only its version " + BuiltInMethods.Skirt.Version, Assert.Single(read.Block.Report.Advice).Advice!.Reason);
        ConstructionException refusal = Assert.Throws<ConstructionException>(() => read.DraftBlock());
        Assert.Equal(DiagnosticCode.MethodUnknown, refusal.Code);
        Assert.Contains("skirt block 0", refusal.Message);
    }

    // A panel of the file that the draft does not have, or has under another name.
    [Fact]
    public void DraftBlock_OfAFileWithOtherPanels_SaysSo()
    {
        PatternDocument read = PatternDocument.FromJson(JsonPlaces.Replaced(PatternDocument.Of(SamplePieces.Skirt).ToJson(), "/panels/1/name", "\"apron\""));

        ConstructionException refusal = Assert.Throws<ConstructionException>(() => read.DraftBlock());

        Assert.Equal((DiagnosticCode.DraftDiffers, "block"), (refusal.Code, refusal.Landmark));
        Assert.Contains("back; apron", refusal.Message);
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
        PatternDocument read = PatternDocument.FromJson(JsonPlaces.Replaced(JsonSamples.Plain.ToJson(), "/method/settings/2/value", "23.4"));

        ConstructionException refusal = Assert.Throws<ConstructionException>(() => read.DraftBlock());

        Assert.Equal((DiagnosticCode.DraftDiffers, "back"), (refusal.Code, refusal.Landmark));
        Assert.InRange(refusal.Measured!.Value.Millimeters, 0.05, 1.0);
        Assert.Equal(0.01, refusal.Allowed!.Value.Millimeters);
        Assert.Contains("allowed is 0.01 mm", refusal.Message);
        SkirtBlock block = SkirtBlockBuilder.From(read.Block.ToBuilder()).Draft();
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
        Assert.Equal(read.Block.Panels.Select(panel => panel.Name), again.Block.Panels.Select(panel => panel.Name));
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
        PatternDocument read = PatternDocument.FromJson(JsonPlaces.Replaced(JsonSamples.Plain.ToJson(), "/method/settings/11/value", "3"));

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
