using UnitsNet;

namespace Pattern.Core.Drafting;

/// <summary>What reading every distance of a hand draft off the tape does to one measure of it, all roundings together.</summary>
public sealed class TapeEffect
{
    internal TapeEffect(string what, string place, double exactMm, double offTheTapeMm, double targetMm)
    {
        What = what;
        Place = place;
        Exact = Length.FromMillimeters(exactMm);
        OffTheTape = Length.FromMillimeters(offTheTapeMm);
        Target = Length.FromMillimeters(targetMm);
    }

    /// <summary>What was measured, in lower case words, such as <c>closed waist</c>.</summary>
    public string What { get; }

    /// <summary>The panel, or <c>block</c> where the measure spans all of them.</summary>
    public string Place { get; }

    /// <summary>By hand, every distance laid off exactly.</summary>
    public Length Exact { get; }

    /// <summary>By hand, every distance laid off to the nearest mark of the tape.</summary>
    public Length OffTheTape { get; }

    /// <summary>What it should be.</summary>
    public Length Target { get; }

    /// <summary>What the rounding alone adds.</summary>
    public Length Effect => OffTheTape - Exact;
}
