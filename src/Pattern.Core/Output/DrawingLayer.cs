using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Output;

/// <summary>The marks of one kind on a drawing. Immutable.</summary>
public sealed class DrawingLayer
{
    internal DrawingLayer(LayerName name, DrawingMark[] marks)
    {
        Name = name;
        Marks = Array.AsReadOnly(marks);
    }

    /// <summary>What the marks are.</summary>
    public LayerName Name { get; }

    /// <summary>The marks, the lowest first.</summary>
    public IReadOnlyList<DrawingMark> Marks { get; }

    /// <summary>Makes a layer.</summary>
    /// <param name="name">What the marks are.</param>
    /// <param name="marks">The marks, the lowest first; may be none.</param>
    /// <exception cref="ArgumentException">A mark is null.</exception>
    public static DrawingLayer Of(LayerName name, IEnumerable<DrawingMark> marks)
        => new(name, Guard.NotNull(marks, nameof(marks)).Select(mark => Guard.NotNull(mark, nameof(marks))).ToArray());

    /// <summary>Name and number of marks.</summary>
    public override string ToString()
        => FormattableString.Invariant($"{Name}, {Marks.Count} marks");
}
