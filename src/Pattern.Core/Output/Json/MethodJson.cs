using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>How a block was drafted, in a pattern file: the method, its settings, what its tables said, and what it remarks.</summary>
internal static class MethodJson
{
    internal static void Write(JsonWriter json, Block block)
    {
        MethodDescription method = block.Method;
        json.Begin('{').Name("name").Text(method.Name);
        json.Name("version").Text(method.Version);
        json.Name("settings");
        SettingsJson.Write(json, method.Settings, method.IsPrinted);
        json.Name("readings").RequireEntries(method.Readings.Count);
        json.Begin('[');
        foreach (KeyValuePair<string, TableReading> reading in method.Readings)
        {
            Write(json, reading.Key, reading.Value, TapeStep.For(block.Body.Unit));
        }

        json.End(']').Name("remarks").RequireEntries(block.Remarks.Count);
        json.Begin('[');
        foreach (string remark in block.Remarks)
        {
            json.Text(remark);
        }

        json.End(']').End('}');
    }

    internal static ReadMethod Read(JsonValue value, MethodCatalogue methods)
    {
        JsonObject said = value.Object("name", "version", "settings", "readings", "remarks");
        string name = said["name"].Name(text => Guard.Identifier(text, "name"));
        string version = Worded(said["version"]);
        ReadSetting[] settings = SettingsJson.Read(said["settings"]);
        var description = new MethodDescription(
            name,
            version,
            [.. settings.Select(setting => setting.Value)],
            settings.Where(setting => setting.IsPrinted).Select(setting => setting.Value.Name),
            said["readings"].List(Reading));
        string[] remarks = said["remarks"].List(Worded);
        bool hasName = methods.TryFind(name, out DraftingMethod? method);
        return hasName && method!.Version == version
            ? new ReadMethod(description, remarks, method, new ListedValues(SettingsJson.ValuesOf(method.Settings, method.ToString(), settings, said["settings"])))
            : new ReadMethod(description, remarks, null, null) { OtherVersion = method?.Version };
    }

    private static void Write(JsonWriter json, string purpose, TableReading reading, TapeStep tape)
    {
        json.Begin('{').Name("purpose").Text(purpose);
        json.Name("served").Text(reading.Describe(tape));
        json.Name("figures").RequireEntries(reading.Figures.Count);
        json.Begin('[');
        foreach (WorkedLength figure in reading.Figures)
        {
            json.Begin('{').Name("name").Text(figure.Name);
            json.Name("value").Number(figure.ValueMm);
            json.End('}');
        }

        json.End(']').End('}');
    }

    private static KeyValuePair<string, TableReading> Reading(JsonValue value)
    {
        JsonObject said = value.Object("purpose", "served", "figures");
        string purpose = said["purpose"].Name(text => Guard.Identifier(text, "purpose"));
        return new KeyValuePair<string, TableReading>(purpose, new ServedReading(said["served"].Text(), said["figures"].List(Figure)));
    }

    private static WorkedLength Figure(JsonValue value)
    {
        JsonObject said = value.Object("name", "value");
        return WorkedLength.GivenMm(said["name"].IsNull ? null : Worded(said["name"]), said["value"].Mm());
    }

    private static string Worded(JsonValue value) => value.Name(text => Guard.Name(text, "text"));

    /// <summary>What a table said as the file has it: in words off one tape, and the figures without their working.</summary>
    private sealed class ServedReading(string served, WorkedLength[] figures) : TableReading
    {
        public override IReadOnlyList<WorkedLength> Figures { get; } = Array.AsReadOnly(figures);

        public override string Describe(TapeStep step) => served;
    }
}

/// <summary>What a file says about the method, and the method itself where it is known.</summary>
internal sealed class ReadMethod(MethodDescription description, string[] remarks, DraftingMethod? method, IMethodValues? values)
{
    internal MethodDescription Description { get; } = description;

    internal string[] Remarks { get; } = remarks;

    /// <summary>Null where nobody knows it here.</summary>
    internal DraftingMethod? Method { get; } = method;

    internal IMethodValues? Values { get; } = values;

    /// <summary>The version that is known instead of the one asked for.</summary>
    internal string? OtherVersion { get; init; }
}
