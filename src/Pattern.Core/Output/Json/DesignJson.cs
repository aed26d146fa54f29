using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>A design that a block went through, in a pattern file: which one, its settings, and what it promises anew.</summary>
internal static class DesignJson
{
    internal static void Write(JsonWriter json, DesignDescription design)
    {
        json.Begin('{').Name("name").Text(design.Name);
        json.Name("version").Text(design.Version);
        json.Name("settings");
        SettingsJson.Write(json, design.Settings, design.IsPrinted);
        json.Name("promisedAnew").RequireEntries(design.PromisedAnew.Count);
        json.Begin('[');
        foreach (string promise in design.PromisedAnew)
        {
            json.Text(promise);
        }

        json.End(']').End('}');
    }

    internal static DesignDescription Read(JsonValue value, MethodCatalogue catalogue, BodyMeasurements body)
    {
        JsonObject said = value.Object("name", "version", "settings", "promisedAnew");
        string name = said["name"].Name(text => Guard.Identifier(text, "name"));
        string version = said["version"].Name(text => Guard.Name(text, "version"));
        ReadSetting[] settings = SettingsJson.Read(said["settings"]);
        string[] promisedAnew = said["promisedAnew"].List(promise => promise.Name(text => Guard.Identifier(text, "promise")));
        DesignChoice? choice = catalogue.TryFindDesign(name, out BlockDesign? design) && design!.Version == version
            ? ChoiceOf(design, SettingsJson.ValuesOf(design.Settings, design.ToString(), settings, said["settings"]), body)
            : null;
        return new DesignDescription(
            name, version, choice, [.. settings.Select(setting => setting.Value)], settings.Where(setting => setting.IsPrinted).Select(setting => setting.Value.Name), promisedAnew, firstStep: 0);
    }

    // What is as usual was not chosen, so that another body gets what is usual for it.
    private static DesignChoice ChoiceOf(BlockDesign design, SettingValue[] values, BodyMeasurements body) => new(
        design,
        [.. design.Settings.Select((setting, i) => values[i].IsSameAs(setting.UsualIn(body.Unit)) ? null : values[i])]);
}
