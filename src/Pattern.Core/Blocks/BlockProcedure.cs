using System.Collections.Generic;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Blocks;

/// <summary>What a block remembers that it was made by: a <see cref="DraftingMethod"/> drafts it, a <see cref="BlockDesign"/> changes it.</summary>
public abstract class BlockProcedure
{
    private readonly SettingList _settings;

    private protected BlockProcedure(string name, string version, MethodSetting[] settings)
    {
        Name = Guard.Identifier(name, nameof(name));
        Version = Guard.Name(version, nameof(version));
        _settings = new SettingList(Name, settings);
    }

    /// <summary>What it is called, in lower case words.</summary>
    public string Name { get; }

    /// <summary>Its version. One that makes something else than before has another one.</summary>
    public string Version { get; }

    /// <summary>What its user may choose.</summary>
    public IReadOnlyList<MethodSetting> Settings => _settings.All;

    internal SettingList SettingsRaw => _settings;

    /// <summary>Returns <see cref="Name"/> and <see cref="Version"/>.</summary>
    public sealed override string ToString() => Name + " " + Version;
}
