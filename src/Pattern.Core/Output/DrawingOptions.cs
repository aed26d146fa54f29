using System;
using System.Collections.Generic;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>How a block is drawn. What is left out follows the body's own unit.</summary>
public sealed record DrawingOptions
{
    private readonly string[] _alternatives = [];

    /// <summary>The tape that lengths are printed for, and its finest usual mark; a value between two marks is printed finer.</summary>
    /// <value>Default: eighths of an inch or millimetres, after the unit of the body measurements.</value>
    public TapeStep? Tape { get; init; }

    /// <summary>The day to print in the title block.</summary>
    /// <value>Default: none, so that the same block gives the same drawing on any day.</value>
    public DateTime? Date { get; init; }

    /// <summary>The names of the alternatives to draw beside the block, such as <c>level waistline</c>; each is drafted for that.</summary>
    /// <value>Default: none.</value>
    public IReadOnlyList<string> Alternatives
    {
        get => _alternatives;
        init => _alternatives = [.. Guard.NotNull(value, nameof(Alternatives))];
    }
}
