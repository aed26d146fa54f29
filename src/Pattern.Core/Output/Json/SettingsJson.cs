using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Output;

/// <summary>Named settings with their values in a pattern file: lengths in millimetres, angles in radians, words as words, a longer text line by line.</summary>
internal static class SettingsJson
{
    internal static void Write(JsonWriter json, IReadOnlyList<SettingValue> settings, Func<SettingValue, bool> isPrinted)
    {
        json.RequireEntries(settings.Count);
        json.Begin('[');
        foreach (SettingValue setting in settings)
        {
            json.Begin('{').Name("name").Text(setting.Name);
            json.Name("kind").Text(JsonWords.SettingKinds.WordOf(setting.Kind));
            json.Name("value");
            WriteValue(json, setting);
            json.Name("printed").Flag(isPrinted(setting));
            json.End('}');
        }

        json.End(']');
    }

    internal static ReadSetting[] Read(JsonValue value)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        return value.List(entry =>
        {
            JsonObject said = entry.Object("name", "kind", "value", "printed");
            string name = said["name"].NameOnce(text => Guard.Identifier(text, "name"), names);
            return new ReadSetting(said, Value(name, said["kind"].Choice(JsonWords.SettingKinds), said["value"]), said["printed"].Flag());
        });
    }

    /// <summary>The values in the order of the settings of a method or a design. Each goes in by the door that a caller uses, so that ranges are checked there.</summary>
    internal static SettingValue[] ValuesOf(IReadOnlyList<MethodSetting> allowed, string owner, ReadSetting[] read, JsonValue place)
    {
        MethodSetting[] settings = [.. allowed];
        var values = new SettingValue?[settings.Length];
        foreach (ReadSetting one in read)
        {
            int index = Array.FindIndex(settings, setting => setting.Name == one.Value.Name);
            if (index < 0)
            {
                throw one.Said["name"].Fault(DiagnosticCode.JsonValueWrong, one.Said["name"].Described(), string.Join(", ", settings.Select(setting => setting.Name)));
            }

            MethodSetting setting = settings[index];
            if (one.Value.Kind != setting.Kind)
            {
                throw one.Said["kind"].Fault(DiagnosticCode.JsonValueWrong, one.Said["kind"].Described(), JsonWords.SettingKinds.WordOf(setting.Kind));
            }

            // Only where the method decides by itself may there be nothing.
            if (!one.Value.IsGiven && setting.Usual.IsGiven && setting.UsualMetric.IsGiven)
            {
                throw one.Said["value"].Fault(DiagnosticCode.JsonValueWrong, one.Said["value"].Described(), "a value");
            }

            one.Said["value"].Make(() => setting.RefuseWrong(one.Value, setting.Name));
            values[index] = one.Value;
        }

        int missing = Array.IndexOf(values, null);
        return missing < 0
            ? Array.ConvertAll(values, value => value!)
            : throw place.Fault(DiagnosticCode.JsonValueWrong, "no setting " + settings[missing].Name, "every setting of " + owner);
    }

    private static void WriteValue(JsonWriter json, SettingValue setting)
    {
        if (setting.Kind == SettingKind.Text && setting.Text is { } text)
        {
            string[] lines = text.Split('\n');
            json.RequireEntries(lines.Length, JsonLimits.Lines);
            json.Begin('[');
            foreach (string line in lines)
            {
                json.Text(line);
            }

            json.End(']');
        }
        else if (setting.Kind is SettingKind.Choice or SettingKind.Text)
        {
            json.Text(setting.Text);
        }
        else
        {
            json.Number(setting.RawOrNull);
        }
    }

    private static SettingValue Value(string name, SettingKind kind, JsonValue value) => kind switch
    {
        SettingKind.Choice => SettingValue.Of(name, kind, value.IsNull ? null : value.Text()),
        SettingKind.Text => SettingValue.Of(name, kind, value.IsNull ? null : string.Join("\n", value.List(Line, 1, JsonLimits.Lines))),
        SettingKind.Count => SettingValue.Of(name, kind, value.IsNull ? null : value.Whole(-(int)JsonLimits.FarthestMm, (int)JsonLimits.FarthestMm)),
        _ => SettingValue.Of(name, kind, value.IsNull ? null : value.Mm()),
    };

    private static string Line(JsonValue value)
    {
        string line = value.Text();
        return line.IndexOf('\n') < 0 ? line : throw value.Fault(DiagnosticCode.JsonValueWrong, value.Described(), "one line of a text");
    }
}

/// <summary>A setting as it stands in a file, with its place there.</summary>
internal sealed class ReadSetting(JsonObject said, SettingValue value, bool isPrinted)
{
    internal JsonObject Said { get; } = said;

    internal SettingValue Value { get; } = value;

    internal bool IsPrinted { get; } = isPrinted;
}
