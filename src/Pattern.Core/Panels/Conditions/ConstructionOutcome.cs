using System;
using System.Collections.Generic;

namespace Pattern.Core.Panels;

/// <summary>What a construction came to. Immutable.</summary>
/// <typeparam name="TDrawn">What is drawn.</typeparam>
public sealed class ConstructionOutcome<TDrawn>
{
    private readonly string[] _off;
    private readonly string[] _atLimit;

    internal ConstructionOutcome(TDrawn? drawn, bool isMet, string[] off, string[] atLimit, int drawings)
    {
        Drawn = drawn;
        IsMet = isMet;
        _off = off;
        _atLimit = atLimit;
        Drawings = drawings;
    }

    /// <summary>What was drawn: what measures as it has to, or what comes nearest; nothing where nothing could be drawn.</summary>
    public TDrawn? Drawn { get; }

    /// <summary>Whether everything measures as it has to, to 0.000000001 mm.</summary>
    public bool IsMet { get; }

    /// <summary>What does not, and by how much, such as <c>front cap is off by 2.1 mm</c>.</summary>
    public IReadOnlyList<string> Off => _off;

    /// <summary>The unknowns that stand at a limit.</summary>
    public IReadOnlyList<string> AtLimit => _atLimit;

    /// <summary>How often it was drawn; never more than a fixed number of times.</summary>
    public int Drawings { get; }

    /// <summary>Whether it is met, and what not.</summary>
    public override string ToString() => IsMet ? FormattableString.Invariant($"met in {Drawings} drawings") : string.Join("; ", _off);
}
