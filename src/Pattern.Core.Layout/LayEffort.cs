using System;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Layout;

/// <summary>How long a lay is searched for.</summary>
/// <remarks>With the same seed and the same number of moves the same pieces lie the same way, on any machine. A time limit only ends the search early: how far it came by then
/// depends on the machine. A search also ends by itself where it reaches the lower bound, or finds nothing better for long.</remarks>
public sealed record LayEffort
{
    private const int MostMovesOfAll = 1_000_000_000;

    private readonly int _mostMoves = 20_000;
    private readonly TimeSpan? _timeLimit;

    /// <summary>The usual effort: 20,000 moves from seed 0, without a time limit.</summary>
    public static LayEffort Usual { get; } = new();

    /// <summary>How often a piece is moved at the most; 0 to 1,000,000,000.</summary>
    /// <value>Default 20,000. With 0 the pieces stay where they were first laid.</value>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public int MostMoves
    {
        get => _mostMoves;
        init => _mostMoves = Guard.InRange(value, 0, MostMovesOfAll, nameof(MostMoves));
    }

    /// <summary>When the search is broken off with what it has found; not negative. Null for no limit.</summary>
    /// <value>Default: null.</value>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative.</exception>
    public TimeSpan? TimeLimit
    {
        get => _timeLimit;
        init => _timeLimit = value is null || value >= TimeSpan.Zero
            ? value
            : throw new ArgumentOutOfRangeException(nameof(TimeLimit), MessageRegistry.Format(DiagnosticCode.LayTimeNegative, nameof(TimeLimit)));
    }

    /// <summary>Where chance begins. Another seed finds another lay.</summary>
    /// <value>Default 0.</value>
    public int Seed { get; init; }
}
