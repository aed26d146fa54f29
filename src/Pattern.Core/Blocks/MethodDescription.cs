using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>How a block was drafted: by which method, in which version, with which settings, and what its tables said.</summary>
public sealed class MethodDescription
{
    private readonly SettingValue[] _settings;
    private readonly HashSet<string> _printed;

    internal MethodDescription(string name, string version, SettingValue[] settings, IEnumerable<string> printed, IReadOnlyList<KeyValuePair<string, TableReading>> readings)
    {
        Name = name;
        Version = version;
        _settings = settings;
        _printed = [.. printed];
        Readings = readings;
    }

    /// <summary>What the method is called, such as <c>skirt block</c>.</summary>
    public string Name { get; }

    /// <summary>Its version. A method that drafts otherwise than before has another one.</summary>
    public string Version { get; }

    /// <summary>Every setting with its value.</summary>
    public IReadOnlyList<SettingValue> Settings => _settings;

    /// <summary>The settings that a sheet prints: those that always are, and those that differ from what is usual.</summary>
    public IEnumerable<SettingValue> PrintedSettings => _settings.Where(setting => _printed.Contains(setting.Name));

    /// <summary>What tables and laws said for this body, each by what it was read for, such as <c>shaping</c>.</summary>
    public IReadOnlyList<KeyValuePair<string, TableReading>> Readings { get; }

    /// <summary>Name and version.</summary>
    public override string ToString() => Name + " " + Version;

    [Pure]
    internal bool IsPrinted(SettingValue setting) => _printed.Contains(setting.Name);

    internal static MethodDescription Of(DraftingMethod method, IMethodValues values, LengthUnit unit, IReadOnlyList<KeyValuePair<string, TableReading>> readings)
    {
        SettingValue[] listed = ListedValues.Copy(method.Settings, values);
        return new MethodDescription(method.Name, method.Version, listed, Printed(method.Settings, listed, unit), readings);
    }

    /// <summary>The names of the settings that a sheet prints.</summary>
    internal static IEnumerable<string> Printed(IReadOnlyList<MethodSetting> settings, SettingValue[] values, LengthUnit unit)
        => settings.Where((setting, i) => setting.IsAlwaysPrinted || !values[i].IsSameAs(setting.UsualIn(unit))).Select(setting => setting.Name);
}
