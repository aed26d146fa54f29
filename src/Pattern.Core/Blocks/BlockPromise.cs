using System;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>Something that holds of the panels of a block, under a name by which a design can promise it anew.</summary>
internal readonly struct BlockPromise(string name, Action<CheckList> measure)
{
    internal string Name { get; } = name;

    internal Action<CheckList> Measure { get; } = measure;
}
