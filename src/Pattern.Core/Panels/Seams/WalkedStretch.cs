using System;
using System.Globalization;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>One stretch of a walked seam, between two places where the edges meet: what it measures on both.</summary>
public sealed class WalkedStretch
{
    // What cutters accept when walking a seam by hand (common practice, no source): 1/16 in.
    internal const double HandToleranceMm = 25.4 / 16;

    internal WalkedStretch(string name, double firstMm, double secondMm, double easeAskedMm)
    {
        Name = name;
        FirstMm = firstMm;
        SecondMm = secondMm;
        EaseAskedMm = easeAskedMm;
    }

    /// <summary>From where to where, such as <c>start to notch 1</c>, or the name that the seam gives it.</summary>
    public string Name { get; }

    /// <summary>On the first edge, along the sewn edge, darts closed.</summary>
    public Length FirstLength => Length.FromMillimeters(FirstMm);

    /// <summary>On the second edge, along the sewn edge, darts closed.</summary>
    public Length SecondLength => Length.FromMillimeters(SecondMm);

    /// <summary>How much longer the first edge is: first minus second.</summary>
    public Length EaseFound => Length.FromMillimeters(FirstMm - SecondMm);

    /// <summary>How much longer the first edge was to be.</summary>
    public Length EaseAsked => Length.FromMillimeters(EaseAskedMm);

    /// <summary>Ease found minus ease asked for.</summary>
    public Length Off => Length.FromMillimeters(OffMm);

    /// <summary>Whether the edges agree, with the ease asked for, within the 0.01 mm that computed work holds.</summary>
    public bool Passed => Math.Abs(OffMm) <= CheckList.ToleranceMm;

    /// <summary>Whether a cutter walking the seam by hand would accept it: 1/16 in (common practice, no source).</summary>
    public bool PassedByHand => Math.Abs(OffMm) <= HandToleranceMm;

    internal double FirstMm { get; }

    internal double SecondMm { get; }

    internal double EaseAskedMm { get; }

    internal double OffMm => FirstMm - SecondMm - EaseAskedMm;

    /// <summary>One line in millimetres.</summary>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0}: {1:0.000} mm on {2:0.000} mm, ease {3:0.000} mm, asked {4:0.000} mm",
        Name,
        FirstMm,
        SecondMm,
        FirstMm - SecondMm,
        EaseAskedMm);
}
