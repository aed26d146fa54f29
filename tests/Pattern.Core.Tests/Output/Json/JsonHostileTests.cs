using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Output;

namespace Pattern.Core.Tests.Output;

/// <summary>Whatever a file holds, it is read as it was written or refused with the place of the fault: nothing else, and nothing half.</summary>
public class JsonHostileTests
{
    // Short, and with one of everything: every change of every kind of value is tried.
    private static readonly string Json = JsonSamples.Small.ToJson();
    private static readonly byte[] Bytes = Encoding.UTF8.GetBytes(Json);
    private static readonly List<JsonPlace> Places = JsonPlaces.In(Bytes);

    // Whatever a text holds, its syntax comes first: every kind of token is cut at every byte, and the whole document at one byte in ninety-seven.
    [Fact]
    public void ReadJson_TruncatedAtEveryByte_IsRefused()
    {
        byte[] tokens = Encoding.UTF8.GetBytes("{\r\n \"for\\u006dat\\n\": [-0, 12.5e-3, 1E+2, \"Zo\u00EB \u674E \U0001F600 \\ud83d\\ude00\", true, false, null, [], {}],\t\"a\": {\"b\": [[1], {}]}}");

        // Without its last line end it is whole.
        Assert.Equal(Json, PatternDocument.FromJson(Json.TrimEnd('\n')).ToJson());
        Assert.NotEqual(DiagnosticCode.JsonMalformed, Refused(() => PatternDocument.ReadJson(new MemoryStream(tokens)), "all kinds of tokens").Code);
        for (int length = 0; length < tokens.Length; length++)
        {
            AssertCutOff(tokens, length);
        }

        for (int length = 0; length < Bytes.Length - 1; length += 97)
        {
            AssertCutOff(Bytes, length);
        }
    }

    [Theory]
    [InlineData("null", JsonValueKind.Null)]
    [InlineData("true", JsonValueKind.True)]
    [InlineData("-17", JsonValueKind.Number)]
    [InlineData("\"text\"", JsonValueKind.String)]
    [InlineData("[]", JsonValueKind.Array)]
    [InlineData("[[1]]", JsonValueKind.Array)]
    [InlineData("{}", JsonValueKind.Object)]
    [InlineData("{\"a/~b\":0}", JsonValueKind.Object)]
    public void FromJson_WithAnyValueOfAnotherType_IsRefusedWithItsPath(string text, JsonValueKind kind)
    {
        int refused = 0;
        foreach (JsonPlace place in OneOfEachKind(Places.Where(place => place.Kind != kind && !(Flag(place.Kind) && Flag(kind)))))
        {
            bool isNullable = place.Kind == JsonValueKind.Null || (kind == JsonValueKind.Null && JsonSamples.Nullable.Contains(place.Name));
            DocumentFormatException? fault = Try(JsonPlaces.Replaced(Bytes, place.Start, place.End, text), $"{place.Pointer} = {text}");
            if (fault is not null)
            {
                refused++;
                string near = isNullable ? place.Parent : place.Pointer;
                Assert.True(
                    fault.Path.StartsWith(near, StringComparison.Ordinal) || (isNullable && fault.Code is DiagnosticCode.JsonDrawnDiffers or DiagnosticCode.JsonTruedDiffers),
                    $"{place.Pointer} = {text}: {fault.Message}");
            }
            else
            {
                Assert.True(isNullable, $"{place.Pointer} = {text} was read");
            }
        }

        Assert.True(refused > 50);
    }

    [Fact]
    public void FromJson_WithoutAnyProperty_IsRefusedWithItsPath()
    {
        foreach (JsonPlace place in Properties())
        {
            bool isFirst = Bytes[..place.NameStart].AsSpan().TrimEnd(" \n"u8)[^1] == (byte)'{';
            int end = place.End + (isFirst && Bytes[place.End] == (byte)',' ? 1 : 0);
            int start = isFirst ? place.NameStart : Array.LastIndexOf(Bytes, (byte)',', place.NameStart);
            DocumentFormatException fault = Refused(() => Read(JsonPlaces.Replaced(Bytes, start, end, string.Empty)), place.Pointer);

            bool isSegment = place.Name is "line" or "arc" or "cubic";
            Assert.Equal((isSegment ? DiagnosticCode.JsonValueWrong : DiagnosticCode.JsonPropertyMissing, isSegment ? place.Parent : place.Pointer), (fault.Code, fault.Path));
        }
    }

    [Fact]
    public void FromJson_WithAPropertyTwice_IsRefusedWithItsPath()
    {
        foreach (JsonPlace place in Properties())
        {
            string again = Encoding.UTF8.GetString(Bytes, place.NameStart, place.End - place.NameStart) + ", ";
            DocumentFormatException fault = Refused(() => Read(JsonPlaces.Replaced(Bytes, place.NameStart, place.NameStart, again)), place.Pointer);

            Assert.Equal((DiagnosticCode.JsonSaidTwice, place.Pointer), (fault.Code, fault.Path));
        }
    }

    [Fact]
    public void FromJson_WithAnExtraPropertyInAnyObject_IsRefusedWithItsPath()
    {
        foreach (JsonPlace place in Places.Where(place => place.Kind == JsonValueKind.Object))
        {
            DocumentFormatException fault = Refused(() => Read(JsonPlaces.Replaced(Bytes, place.End - 1, place.End - 1, ", \"sur/plus~\": {\"deep\": [1]}")), place.Pointer);

            Assert.Equal((DiagnosticCode.JsonPropertyUnknown, place.Pointer + "/sur~1plus~0"), (fault.Code, fault.Path));
        }
    }

    // Read, it is written with that number and nothing else changed; refused, it is for that number or what follows from it.
    [Theory]
    [InlineData("0")]
    [InlineData("-1")]
    [InlineData("1e-300")]
    [InlineData("1e5")]
    [InlineData("-1e5")]
    [InlineData("1e9")]
    public void FromJson_WithAnyNumberOfAnotherSize_IsReadAsItStandsOrRefusedWithItsPath(string text)
    {
        int refused = 0;
        foreach (JsonPlace place in OneOfEachKind(Places.Where(place => place.Kind == JsonValueKind.Number)))
        {
            string what = $"{place.Pointer} = {text}";
            string changed = JsonPlaces.Replaced(Bytes, place.Start, place.End, text);
            if (Try(changed, what) is { } fault)
            {
                refused++;
                bool isThere = place.Pointer.StartsWith(fault.Path, StringComparison.Ordinal) || fault.Path.StartsWith(place.Parent, StringComparison.Ordinal);
                bool follows = fault.Code is DiagnosticCode.JsonContentRefused or DiagnosticCode.JsonDrawnDiffers or DiagnosticCode.JsonTruedDiffers;
                Assert.True(isThere || follows, $"{what}: {fault.Message}");
                continue;
            }

            byte[] written = Encoding.UTF8.GetBytes(Read(changed).ToJson());
            List<JsonPlace> now = JsonPlaces.In(written);
            Assert.Equal(Places.Select(before => before.Pointer), now.Select(after => after.Pointer));
            foreach ((JsonPlace before, JsonPlace after) in Places.Zip(now).Where(pair => pair.First.Kind is not (JsonValueKind.Object or JsonValueKind.Array)))
            {
                string had = before == place ? text : Encoding.UTF8.GetString(Bytes, before.Start, before.End - before.Start);
                string has = Encoding.UTF8.GetString(written, after.Start, after.End - after.Start);
                if (before.Kind != JsonValueKind.Number)
                {
                    Assert.Equal(had, has);
                }
                else
                {
                    // Lines drawn anew follow the number that changed; what is that small, they follow as closely.
                    double off = Math.Abs(double.Parse(had, CultureInfo.InvariantCulture) - double.Parse(has, CultureInfo.InvariantCulture));
                    Assert.True(before == place && !place.Pointer.Contains("/drawn/", StringComparison.Ordinal) ? off == 0 : off <= 1e-9, $"{what}: {before.Pointer} was {had} and is {has}");
                }
            }
        }

        Assert.True(refused > 5);
    }

    [Theory]
    [InlineData("1e999")]
    [InlineData("-1e999")]
    [InlineData("1.01e9")]
    public void FromJson_WithANumberBeyondAll_IsRefusedEverywhere(string text)
    {
        foreach (JsonPlace place in OneOfEachKind(Places.Where(place => place.Kind == JsonValueKind.Number && place.Pointer != "/version")))
        {
            DocumentFormatException fault = Refused(() => Read(JsonPlaces.Replaced(Bytes, place.Start, place.End, text)), place.Pointer);

            Assert.Equal((DiagnosticCode.JsonValueWrong, place.Pointer), (fault.Code, fault.Path));
        }
    }

    [Property(MaxTest = 400)]
    public Property ReadJson_WithAnyBytesChanged_IsReadOrRefused() => Prop.ForAll(
        (from at in Gen.Choose(0, Bytes.Length - 1)
         from length in Gen.Choose(0, 3)
         from put in Gen.Elements("{", "}", "[", "]", ",", ":", "\"", "\\", "\0", "9", "-", "e", "null", "\uFEFF", "\\ud800", "[[", "1e", " ")
         select (at, end: Math.Min(at + length, Bytes.Length), put)).ToArbitrary(),
        change => _ = Try(JsonPlaces.Replaced(Bytes, change.at, change.end, change.put), change.ToString()));

    [Fact]
    public void FromJson_OfTextDeeperThanAnyPattern_IsRefused()
    {
        DocumentFormatException lists = Refused(() => PatternDocument.FromJson(new string('[', 10_000)), "lists");
        DocumentFormatException objects = Refused(() => PatternDocument.FromJson(string.Concat(Enumerable.Repeat("{\"a\":", 10_000))), "objects");

        Assert.Equal((DiagnosticCode.JsonTooLarge, string.Concat(Enumerable.Repeat("/0", 32))), (lists.Code, lists.Path));
        Assert.Equal((DiagnosticCode.JsonTooLarge, string.Concat(Enumerable.Repeat("/a", 32))), (objects.Code, objects.Path));
        Assert.Equal(33, lists.Column);
    }

    [Fact]
    public void FromJson_OfTextLargerThanAnyPattern_IsRefused()
    {
        string many = "[" + string.Join(",", Enumerable.Repeat("1", 1_000_000)) + "]";
        (string Text, string Path)[] texts =
        [
            (new string(' ', (16 * 1024 * 1024) + 1), string.Empty),
            (many, "/999999"),
            ("{\"a\": \"" + new string('x', 10_001) + "\"}", "/a"),
            ("{\"a\": {\"" + new string('x', 101) + "\": 1}}", "/a"),
            ("{\"a\": [1, " + new string('1', 101) + "]}", "/a/1"),
            (JsonPlaces.Replaced(Json, "/pieces/0/allowances", "[" + string.Join(",", Enumerable.Repeat("0", 1_001)) + "]"), "/pieces/0/allowances"),
        ];

        Assert.All(texts.SkipLast(1), text => AssertFault(text.Text, DiagnosticCode.JsonTooLarge, text.Path));
        AssertFault(texts[^1].Text, DiagnosticCode.JsonValueWrong, texts[^1].Path);
        DocumentFormatException stream = Refused(() => PatternDocument.ReadJson(new Endless()), "a stream without end");
        Assert.Equal(DiagnosticCode.JsonTooLarge, stream.Code);
    }

    [Theory]
    [InlineData("/version", "1", DiagnosticCode.JsonVersionUnknown)]
    [InlineData("/version", "3", DiagnosticCode.JsonVersionUnknown)]
    [InlineData("/version", "0", DiagnosticCode.JsonVersionUnknown)]
    [InlineData("/version", "-1", DiagnosticCode.JsonVersionUnknown)]
    [InlineData("/version", "\"2\"", DiagnosticCode.JsonValueWrong)]
    [InlineData("/version", "1.5", DiagnosticCode.JsonValueWrong)]
    [InlineData("/version", "1e999", DiagnosticCode.JsonValueWrong)]
    [InlineData("/version", "null", DiagnosticCode.JsonValueWrong)]
    [InlineData("/format", "\"Pattern-Core\"", DiagnosticCode.JsonFormatUnknown)]
    [InlineData("/format", "\"\"", DiagnosticCode.JsonFormatUnknown)]
    [InlineData("/format", "1", DiagnosticCode.JsonValueWrong)]
    [InlineData("/unit", "\"in\"", DiagnosticCode.JsonValueWrong)]
    public void FromJson_OfAnotherFormatOrVersion_IsRefused(string pointer, string text, DiagnosticCode code)
        => AssertFault(JsonPlaces.Replaced(Json, pointer, text), code, pointer);

    // Whatever a later version adds, it is the version that is to blame.
    [Fact]
    public void FromJson_OfALaterVersionWithOtherContent_IsRefusedForItsVersion()
    {
        AssertFault("{\"size\": [], \"version\": 3, \"format\": \"pattern-core\"}", DiagnosticCode.JsonVersionUnknown, "/version");
        AssertFault("{\"format\": \"another\", \"version\": \"x\"}", DiagnosticCode.JsonFormatUnknown, "/format");
        AssertFault("[]", DiagnosticCode.JsonValueWrong, string.Empty);
        AssertFault("{}", DiagnosticCode.JsonPropertyMissing, "/format");
    }

    [Theory]
    [InlineData(new byte[] { 0xFF }, "0xFF")]
    [InlineData(new byte[] { 0xC0, 0x80 }, "0xC0")]
    [InlineData(new byte[] { 0xED, 0xA0, 0x80 }, "0xED")]
    [InlineData(new byte[] { 0xF4, 0x90, 0x80, 0x80 }, "0xF4")]
    [InlineData(new byte[] { 0xE2, 0x82, 0x22 }, "0xE2")]
    public void ReadJson_OfBytesThatAreNotUtf8_IsRefusedWithItsPath(byte[] wrong, string found)
    {
        JsonPlace name = Places.Single(place => place.Pointer == "/body/name");
        byte[] bytes = [.. Bytes[..(name.Start + 3)], .. wrong, .. Bytes[(name.Start + 3)..]];

        DocumentFormatException fault = Refused(() => PatternDocument.ReadJson(new MemoryStream(bytes)), found);

        Assert.Equal((DiagnosticCode.JsonMalformed, "/body/name"), (fault.Code, fault.Path));
        Assert.Contains(found, fault.Message);
        Assert.Equal(Json[..Json.IndexOf("\"name\"", StringComparison.Ordinal)].Count(c => c == '\n') + 1, fault.Line);
    }

    [Fact]
    public void ReadJson_OfTextInOtherEncodings_IsRefused()
    {
        foreach (Encoding encoding in new[] { Encoding.Unicode, Encoding.BigEndianUnicode, Encoding.UTF32 })
        {
            byte[] bytes = [.. encoding.GetPreamble(), .. encoding.GetBytes(Json)];
            Assert.Equal(DiagnosticCode.JsonMalformed, Refused(() => PatternDocument.ReadJson(new MemoryStream(bytes)), encoding.WebName).Code);
        }
    }

    [Fact]
    public void Fault_OfAnUnknownProperty_SaysPlaceFoundAllowedAndWhatToDo()
    {
        DocumentFormatException fault = Refused(() => PatternDocument.FromJson("{\n  \"format\": \"pattern-core\",\r\n  \"version\": 2, \"colour\": 3\n}"), "colour");

        Assert.Equal((3, 17, "/colour"), (fault.Line, fault.Column, fault.Path));
        Assert.Equal(
            "PC7306: A property is not known: at /colour (line 3, column 17) there is \"colour\"; allowed is format, version, unit, body, method, designs, landmarks, lines, panels, times, seams, pieces. Look at its spelling, or leave it out.",
            fault.Message);
    }

    [Theory]
    [InlineData("/format")]
    [InlineData("/method/name")]
    [InlineData("/method/settings/4/value")]
    [InlineData("/panels/0/name")]
    [InlineData("/seams/0/run")]
    public void Fault_OfHostileText_StaysShortAndOnOneLine(string pointer)
    {
        DocumentFormatException fault = Refused(() => Read(JsonPlaces.Replaced(Json, pointer, "\"\\u0000\\n\\u202e" + new string('x', 9000) + "\"")), "name");

        Assert.True(fault.Message.Length < 600);
        Assert.DoesNotContain(fault.Message, c => char.IsControl(c) || c == '\u202e');
    }

    // Of places that differ in the numbers of their lists only, the first and the last: all of them are read by the same code.
    private static IEnumerable<JsonPlace> OneOfEachKind(IEnumerable<JsonPlace> places) => places
        .GroupBy(place => Regex.Replace(place.Pointer, "/[0-9]+(?=/|$)", "/n"))
        .SelectMany(alike => new[] { alike.First(), alike.Last() }.Distinct());

    private static void AssertCutOff(byte[] bytes, int length)
    {
        DocumentFormatException fault = Refused(() => PatternDocument.ReadJson(new MemoryStream(bytes, 0, length)), $"{length} bytes");
        Assert.Equal(DiagnosticCode.JsonMalformed, fault.Code);
        Assert.True(fault.Line >= 1 && fault.Column >= 1);
    }

    private static PatternDocument Read(string json) => PatternDocument.FromJson(json, JsonSamples.Methods);

    private static bool Flag(JsonValueKind kind) => kind is JsonValueKind.True or JsonValueKind.False;

    private static IEnumerable<JsonPlace> Properties() => Places.Where(place => place.NameStart != place.Start && place.Pointer.Length > 0);

    private static void AssertFault(string json, DiagnosticCode code, string path)
    {
        DocumentFormatException fault = Refused(() => Read(json), path);
        Assert.Equal((code, path), (fault.Code, fault.Path));
    }

    private static DocumentFormatException Refused(Func<PatternDocument> read, string what)
    {
        try
        {
            _ = read();
        }
        catch (DocumentFormatException fault)
        {
            return fault;
        }
        catch (Exception other)
        {
            throw new InvalidOperationException(what, other);
        }

        throw new InvalidOperationException(what + " was read");
    }

    /// <summary>The refusal, or null where it was read; what was read can be written and read again, with its method and without.</summary>
    private static DocumentFormatException? Try(string json, string what)
    {
        try
        {
            string written = Read(json).ToJson();
            Assert.Equal(written, Read(written).ToJson());

            // Who does not know the method reads the same file.
            Assert.Equal(written, PatternDocument.FromJson(written, MethodCatalogue.Empty).ToJson());
            return null;
        }
        catch (DocumentFormatException fault)
        {
            return fault;
        }
        catch (Exception other)
        {
            throw new InvalidOperationException(what, other);
        }
    }

    private sealed class Endless : MemoryStream
    {
        public override int Read(byte[] buffer, int offset, int count)
        {
            Array.Fill(buffer, (byte)' ', offset, count);
            return count;
        }
    }
}
