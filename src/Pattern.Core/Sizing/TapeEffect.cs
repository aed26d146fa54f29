using System;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Sizing;

/// <summary>What drafting off a tape does to one measure of a method, over many bodies: all roundings together, against the exact hand draft. Immutable.</summary>
public sealed class TapeEffect
{
    internal TapeEffect(string what, string place, int count, double usualMm, double worstMm, Trial worst)
    {
        What = what;
        Place = place;
        Count = count;
        UsualMm = usualMm;
        WorstMm = worstMm;
        WorstTrial = worst;
    }

    /// <summary>What the method aims at, such as <c>closed waist</c>.</summary>
    public string What { get; }

    /// <summary>The panel, or <c>block</c>.</summary>
    public string Place { get; }

    /// <summary>Over how many bodies.</summary>
    public int Count { get; }

    /// <summary>The usual case: half of the bodies are off by no more. To 0.01 mm; at most 20 mm.</summary>
    public Length Usual => Length.FromMillimeters(UsualMm);

    /// <summary>The worst case.</summary>
    public Length Worst => Length.FromMillimeters(WorstMm);

    /// <summary>The body of the worst case.</summary>
    public Trial WorstTrial { get; }

    internal double UsualMm { get; }

    internal double WorstMm { get; }

    /// <summary>Measure, usual and worst case in millimetres.</summary>
    public override string ToString() => FormattableString.Invariant($"{What}, {Place}: usually off by up to {UsualMm:0.00} mm, at worst {WorstMm:0.00} mm in row {WorstTrial.Row.Number}");

    /// <summary>The same on a tape.</summary>
    /// <param name="step">The tape that lengths are read off.</param>
    public string Describe(TapeStep step) => FormattableString.Invariant(
        $"{What}, {Place}: usually off by up to {TapeText.WithUnit(UsualMm, step, TapeStyle.Plain)}, at worst {TapeText.WithUnit(WorstMm, step, TapeStyle.Plain)} in row {WorstTrial.Row.Number}");
}
