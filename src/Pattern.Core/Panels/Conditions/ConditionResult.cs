using System;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>What became of one thing that must hold. A seam with notches has one result for each stretch.</summary>
public sealed class ConditionResult
{
    private readonly bool _isAngle;
    private readonly double _offByHand;
    private readonly double _off;

    internal ConditionResult(Condition condition, string name, bool isAngle, double offByHand, double off, bool isMet, bool isRedundant, TruingNote note)
    {
        Condition = condition;
        Name = name;
        _isAngle = isAngle;
        _offByHand = offByHand;
        _off = off;
        IsMet = isMet;
        IsRedundant = isRedundant;
        Note = note;
    }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>What was asked, such as <c>side seam, notch 1 to end</c>.</summary>
    public string Name { get; }

    /// <summary>By how much the hand draft was off, measured less wanted; null for an angle.</summary>
    public Length? OffByHand => _isAngle ? null : Length.FromMillimeters(_offByHand);

    /// <summary>By how much it is off now; null for an angle. Where conditions contradict each other this is their compromise.</summary>
    public Length? Off => _isAngle ? null : Length.FromMillimeters(_off);

    /// <summary>By how much the angle of the hand draft was off; null for a length.</summary>
    public Angle? AngleOffByHand => _isAngle ? Angle.FromRadians(_offByHand) : null;

    /// <summary>By how much the angle is off now; null for a length.</summary>
    public Angle? AngleOff => _isAngle ? Angle.FromRadians(_off) : null;

    /// <summary>Whether it holds: lengths to 0.000000001 mm, angles to as much on an arm of 100 mm.</summary>
    public bool IsMet { get; }

    /// <summary>Whether it says nothing that those before it do not say already: it holds by itself when they do.</summary>
    public bool IsRedundant { get; }

    /// <summary>What a hand does for it.</summary>
    public TruingNote Note { get; }

    /// <summary>Such as <c>side seam: was off by 3.2 mm, holds</c>.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Name}: was off by {InWords(_offByHand)}, {(IsMet ? IsRedundant ? "holds, redundant" : "holds" : "is off by " + InWords(_off))}");

    private string InWords(double off) => _isAngle ? FormattableString.Invariant($"{off * 180 / Math.PI:0.######} degrees") : FormattableString.Invariant($"{off:0.######} mm");
}
