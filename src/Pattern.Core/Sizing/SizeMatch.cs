using System.Collections.Generic;
using System.Linq;

namespace Pattern.Core.Sizing;

/// <summary>The size of a table that is nearest to a body, and what it is off by. Immutable.</summary>
public sealed class SizeMatch
{
    private readonly SizeDifference[] _differences;

    internal SizeMatch(BodySize size, SizeDifference[] differences, bool isBeyondTable)
    {
        Size = size;
        _differences = differences;
        IsBeyondTable = isBeyondTable;
    }

    /// <summary>The nearest size.</summary>
    public BodySize Size { get; }

    /// <summary>Every measurement that body and size share, whether or not it chose the size.</summary>
    public IReadOnlyList<SizeDifference> Differences => _differences;

    /// <summary>Whether a measurement that chose the size lies further beyond the ends of the table than half the step there: then no size of the table is meant for this body.</summary>
    public bool IsBeyondTable { get; }

    /// <summary>The size, and what it is off by.</summary>
    public override string ToString()
        => "size " + Size.Name + (IsBeyondTable ? " (beyond the table): " : ": ") + string.Join("; ", _differences.Select(difference => difference.ToString()));
}
