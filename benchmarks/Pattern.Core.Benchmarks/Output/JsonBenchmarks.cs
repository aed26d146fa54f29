using System;
using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using BenchmarkDotNet.Attributes;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Patterns;
using UnitsNet.Units;

namespace Pattern.Core.Benchmarks.Output;

/// <summary>A skirt block and its three pieces as a pattern file. The pieces' own lines are worked out before writing; reading draws them anew to check them.</summary>
/// <remarks>The peer, System.Text.Json, writes and parses the same content; it makes neither panels nor pieces of it.</remarks>
[MemoryDiagnoser]
public class JsonBenchmarks
{
    private PatternDocument _document = null!;
    private string _json = null!;
    private JsonDocument _parsed = null!;

    [GlobalSetup]
    public void Setup()
    {
        SkirtBlock block = SkirtBlock.For(BodyMeasurements.In(LengthUnit.Inch).With(BodyMeasurement.WaistGirth, "32").With(BodyMeasurement.HipGirth, "40")).Draft();
        _document = PatternDocument.Of(block, SkirtPattern.From(block));
        _json = _document.ToJson();
        _parsed = JsonDocument.Parse(_json);
        Console.WriteLine(string.Format(CultureInfo.InvariantCulture, "// {0} characters; System.Text.Json writes {1}", _json.Length, WriteByPeer().Length));
    }

    [Benchmark(Baseline = true)]
    public string Write() => _document.ToJson();

    [Benchmark]
    public string WriteByPeer()
    {
        var bytes = new ArrayBufferWriter<byte>(65_536);
        using (var writer = new Utf8JsonWriter(bytes, new JsonWriterOptions { Indented = true }))
        {
            Rewrite(writer, _parsed.RootElement);
        }

        return Encoding.UTF8.GetString(bytes.WrittenSpan);
    }

    [Benchmark]
    public PatternDocument Read() => PatternDocument.FromJson(_json);

    /// <summary>Of reading, what the text alone takes.</summary>
    [Benchmark]
    public object Scan() => JsonScanner.Scan(_json);

    [Benchmark]
    public int ParseByPeer()
    {
        using JsonDocument parsed = JsonDocument.Parse(_json);
        return parsed.RootElement.GetPropertyCount();
    }

    // Numbers as numbers: an element would copy the digits that it was parsed from.
    private static void Rewrite(Utf8JsonWriter writer, JsonElement element)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                writer.WriteStartObject();
                foreach (JsonProperty property in element.EnumerateObject())
                {
                    writer.WritePropertyName(property.Name);
                    Rewrite(writer, property.Value);
                }

                writer.WriteEndObject();
                break;
            case JsonValueKind.Array:
                writer.WriteStartArray();
                foreach (JsonElement entry in element.EnumerateArray())
                {
                    Rewrite(writer, entry);
                }

                writer.WriteEndArray();
                break;
            case JsonValueKind.Number:
                writer.WriteNumberValue(element.GetDouble());
                break;
            default:
                element.WriteTo(writer);
                break;
        }
    }
}
