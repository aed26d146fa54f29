using System;
using UnitsNet;

namespace Pattern.Core.Diagnostics;

/// <summary>This body cannot be drafted, or this step cannot be drawn: thrown instead of a wrong line.</summary>
/// <remarks>Not for callers' mistakes, which are <see cref="ArgumentException"/>s, nor for lines that were drawn but do not
/// fit, which are findings in a report. The facts are properties, so that a program can act on them.</remarks>
public sealed class ConstructionException : Exception
{
    internal ConstructionException(DiagnosticCode code, params object[] facts)
        : base(MessageRegistry.Format(code, facts))
    {
        Code = code;
    }

    /// <summary>What went wrong.</summary>
    public DiagnosticCode Code { get; }

    /// <summary>The step that could not be drawn, in trade words, or null where no step was reached.</summary>
    public string? Step { get; internal init; }

    /// <summary>The landmark, edge or panel that it happened at, or null.</summary>
    public string? Landmark { get; internal init; }

    /// <summary>What was measured there, or null where no length is to blame.</summary>
    public Length? Measured { get; internal init; }

    /// <summary>What is allowed there, or null where no length is to blame.</summary>
    public Length? Allowed { get; internal init; }
}
