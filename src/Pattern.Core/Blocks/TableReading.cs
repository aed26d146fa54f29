using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>What a method read out of a table or a law for one body: in words, and the lengths that the draft starts from. Printed with the block.</summary>
/// <remarks>Derive from it for a table of your own; what derives holds nothing that changes.</remarks>
public abstract class TableReading
{
    /// <summary>The lengths that were read, each with its name and working.</summary>
    public abstract IReadOnlyList<WorkedLength> Figures { get; }

    /// <summary>Which row or law served, in words.</summary>
    /// <param name="step">The tape and its finest mark.</param>
    [Pure]
    public abstract string Describe(TapeStep step);

    /// <summary>Which row or law served, in another language.</summary>
    internal virtual string Describe(TapeStep step, Phrasebook book) => book.Say(Describe(step));

    /// <summary>Which row or law served, in sixteenths of an inch.</summary>
    public override string ToString() => Describe(TapeStep.Sixteenth);
}
