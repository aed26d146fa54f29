using System.Collections.Generic;

namespace Pattern.Core.Blocks;

/// <summary>A design that a block went through: in which version, with which settings, and what it promises anew.</summary>
public sealed class DesignDescription : ProcedureDescription
{
    private readonly string[] _promisedAnew;

    internal DesignDescription(
        string name, string version, DesignChoice? choice, SettingValue[] settings, IEnumerable<string> printed, string[] promisedAnew, int firstStep)
        : base(name, version, settings, printed)
    {
        Choice = choice;
        _promisedAnew = promisedAnew;
        FirstStep = firstStep;
    }

    /// <summary>What had been promised of the block before, and is promised in another way since.</summary>
    public IReadOnlyList<string> PromisedAnew => _promisedAnew;

    /// <summary>The number of its first step; 0 where the block was read from a file, which has no steps.</summary>
    public int FirstStep { get; }

    /// <summary>Null for a design out of a file that nobody knows here.</summary>
    internal DesignChoice? Choice { get; }
}
