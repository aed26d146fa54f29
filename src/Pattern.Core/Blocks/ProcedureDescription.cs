using System.Collections.Generic;
using System.Linq;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>What a block says of a method or a design that it was made by: name, version and settings.</summary>
public abstract class ProcedureDescription
{
    private readonly SettingValue[] _settings;
    private readonly HashSet<string> _printed;

    private protected ProcedureDescription(string name, string version, SettingValue[] settings, IEnumerable<string> printed)
    {
        Name = name;
        Version = version;
        _settings = settings;
        _printed = [.. printed];
    }

    /// <summary>What it is called, such as <c>skirt block</c> or <c>a-line</c>.</summary>
    public string Name { get; }

    /// <summary>Its version. One that makes something else than before has another one.</summary>
    public string Version { get; }

    /// <summary>Every setting with its value.</summary>
    public IReadOnlyList<SettingValue> Settings => _settings;

    /// <summary>The settings that a sheet prints: those that always are, and those that differ from what is usual.</summary>
    public IEnumerable<SettingValue> PrintedSettings => _settings.Where(IsPrinted);

    /// <summary>Returns <see cref="Name"/> and <see cref="Version"/>.</summary>
    public sealed override string ToString() => Name + " " + Version;

    internal bool IsPrinted(SettingValue setting) => _printed.Contains(setting.Name);

    /// <summary>The names of the settings that a sheet prints.</summary>
    internal static IEnumerable<string> Printed(IReadOnlyList<MethodSetting> settings, SettingValue[] values, LengthUnit unit)
        => settings.Where((setting, i) => setting.IsAlwaysPrinted || !values[i].IsSameAs(setting.UsualIn(unit))).Select(setting => setting.Name);
}
