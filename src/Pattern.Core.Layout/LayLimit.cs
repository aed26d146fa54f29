using System;
using System.Diagnostics;
using System.Threading;

namespace Pattern.Core.Layout;

/// <summary>When a search ends, and who hears how it goes.</summary>
internal sealed class LayLimit
{
    private readonly Stopwatch? _clock;
    private readonly TimeSpan _time;
    private readonly long _mostMoves;
    private readonly Action<double, long>? _found;
    private readonly CancellationToken _cancellation;
    private long _moves;

    internal LayLimit(LayEffort effort, Action<double, long>? found, CancellationToken cancellation)
    {
        _mostMoves = effort.MostMoves;
        _time = effort.TimeLimit ?? TimeSpan.Zero;
        _clock = effort.TimeLimit is null ? null : Stopwatch.StartNew();
        _found = found;
        _cancellation = cancellation;
    }

    /// <summary>Whether the search has done enough; a cancelled one is left here.</summary>
    internal bool IsReached
    {
        get
        {
            ThrowIfCancelled();
            return _moves >= _mostMoves || _clock?.Elapsed >= _time;
        }
    }

    internal long Moves => _moves;

    internal void ThrowIfCancelled() => _cancellation.ThrowIfCancellationRequested();

    internal void Moved(int count = 1) => _moves += count;

    internal void Found(double lengthMm) => _found?.Invoke(lengthMm, _moves);
}
