using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>What a hand draft would have been off by, and what truing made of it.</summary>
public sealed class TruingChange
{
    internal TruingChange(string what, string place, double byHandMm, double truedMm, double targetMm)
    {
        What = what;
        Place = place;
        ByHandMm = byHandMm;
        TruedMm = truedMm;
        TargetMm = targetMm;
    }

    /// <summary>What was measured, in lower case words, such as <c>closed waist</c>.</summary>
    public string What { get; }

    /// <summary>The panel, or <c>block</c> where the measure spans all of them.</summary>
    public string Place { get; }

    /// <summary>As drawn by hand: straight distances laid off, one sweep for the waistline, darts cut out of it.</summary>
    public Length ByHand => Length.FromMillimeters(ByHandMm);

    /// <summary>After truing.</summary>
    public Length Trued => Length.FromMillimeters(TruedMm);

    /// <summary>What it should be.</summary>
    public Length Target => Length.FromMillimeters(TargetMm);

    /// <summary>How far off the hand draft was: by hand minus target.</summary>
    public Length HandError => Length.FromMillimeters(ByHandMm - TargetMm);

    internal double ByHandMm { get; }

    internal double TruedMm { get; }

    internal double TargetMm { get; }
}
