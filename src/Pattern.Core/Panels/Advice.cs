using System;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Panels;

/// <summary>Why a cutter would look twice at something that was drawn as asked for, and what would help.</summary>
public sealed class Advice
{
    private Advice(string reason, string remedy)
    {
        Reason = reason;
        Remedy = remedy;
    }

    /// <summary>Why, in a sentence.</summary>
    public string Reason { get; }

    /// <summary>What would help, in a sentence.</summary>
    public string Remedy { get; }

    /// <summary>Gives advice.</summary>
    /// <param name="reason">Why, such as <c>A dart wider than 1 1/4 in pokes at its apex.</c></param>
    /// <param name="remedy">What would help, such as <c>Split it.</c></param>
    /// <exception cref="ArgumentException">One of the two is empty.</exception>
    public static Advice Of(string reason, string remedy) => new(Guard.Name(reason, nameof(reason)), Guard.Name(remedy, nameof(remedy)));

    /// <summary>Reason and remedy.</summary>
    public override string ToString() => Reason + " " + Remedy;
}
