using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>A place where two edges of a seam have to meet, and how far they have drifted apart there, walked from either end.</summary>
public sealed class WalkedMark
{
    internal WalkedMark(string name, double onFirstMm, double onSecondMm, double offFromStartMm, double offFromEndMm)
    {
        Name = name;
        OnFirst = Length.FromMillimeters(onFirstMm);
        OnSecond = Length.FromMillimeters(onSecondMm);
        OffFromStart = Length.FromMillimeters(offFromStartMm);
        OffFromEnd = Length.FromMillimeters(offFromEndMm);
    }

    /// <summary>Such as <c>start</c>, <c>notch 1</c> or <c>end</c>.</summary>
    public string Name { get; }

    /// <summary>Along the sewn first edge from its own start.</summary>
    public Length OnFirst { get; }

    /// <summary>Along the sewn second edge from its own start.</summary>
    public Length OnSecond { get; }

    /// <summary>Walked from the start of the seam: how far the first edge is ahead here, beyond the ease asked for.</summary>
    public Length OffFromStart { get; }

    /// <summary>Walked from the end of the seam: how far the first edge is ahead here, beyond the ease asked for.</summary>
    public Length OffFromEnd { get; }

    /// <summary>Where it meets on both edges.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{Name}: {OnFirst.Millimeters:0.##} mm on the first edge, {OnSecond.Millimeters:0.##} mm on the second");
}
