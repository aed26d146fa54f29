using System.Collections.Generic;
using System.Linq;

namespace Pattern.Core.Blocks;

/// <summary>A design that a block went through: in which version, with which settings, and what it promises anew.</summary>
public sealed class DesignDescription
{
    private readonly SettingValue[] _settings;
    private readonly HashSet<string> _printed;
    private readonly string[] _promisedAnew;

    internal DesignDescription(
        string name, string version, DesignChoice? choice, SettingValue[] settings, IEnumerable<string> printed, string[] promisedAnew, int firstStep)
    {
        Name = name;
        Version = version;
        Choice = choice;
        _settings = settings;
        _printed = [.. printed];
        _promisedAnew = promisedAnew;
        FirstStep = firstStep;
    }

    /// <summary>What the design is called, such as <c>a-line</c>.</summary>
    public string Name { get; }

    /// <summary>Its version.</summary>
    public string Version { get; }

    /// <summary>Every setting with its value.</summary>
    public IReadOnlyList<SettingValue> Settings => _settings;

    /// <summary>The settings that a sheet prints: those that always are, and those that differ from what is usual.</summary>
    public IEnumerable<SettingValue> PrintedSettings => _settings.Where(setting => _printed.Contains(setting.Name));

    /// <summary>What had been promised of the block before, and is promised in another way since.</summary>
    public IReadOnlyList<string> PromisedAnew => _promisedAnew;

    /// <summary>The number of its first step; 0 where the block was read from a file, which has no steps.</summary>
    public int FirstStep { get; }

    /// <summary>Null for a design out of a file that nobody knows here.</summary>
    internal DesignChoice? Choice { get; }

    internal bool IsPrinted(SettingValue setting) => _printed.Contains(setting.Name);

    /// <summary>Name and version.</summary>
    public override string ToString() => Name + " " + Version;
}
