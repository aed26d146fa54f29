using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Blocks;

/// <summary>What the user of a method or a design may choose, each under a name of its own.</summary>
internal sealed class SettingList
{
    private readonly string _owner;
    private readonly MethodSetting[] _settings;

    internal SettingList(string owner, MethodSetting[] settings)
    {
        _owner = owner;
        _settings = [.. Guard.NotNull(settings, nameof(settings))];
        if (_settings.GroupBy(setting => Guard.NotNull(setting, nameof(settings)).Name).FirstOrDefault(group => group.Count() > 1) is { } twice)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.SettingNamedTwice, owner, twice.Key), nameof(settings));
        }
    }

    internal IReadOnlyList<MethodSetting> All => _settings;

    internal int IndexOf(MethodSetting setting)
    {
        int index = Array.FindIndex(_settings, own => own.Name == setting.Name && own.Kind == setting.Kind);
        return index >= 0
            ? index
            : throw new ConstructionException(DiagnosticCode.SettingUnknown, _owner, setting.Name, string.Join(", ", _settings.Select(own => own.Name))) { Step = "taking a setting" };
    }
}
