using System;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Sizing;

/// <summary>How many bodies are drafted at a time. The results are the same whatever is chosen.</summary>
public sealed record BatchOptions
{
    /// <summary>How many drafts run at the same time.</summary>
    /// <value>1 to 256. Default: one for each core of the machine.</value>
    public int Workers
    {
        get;
        init => field = Guard.InRange(value, 1, 256, nameof(Workers));
    }
    = Math.Min(256, Math.Max(1, Environment.ProcessorCount));

    /// <summary>How many bodies one worker takes at once. More costs room, fewer costs time.</summary>
    /// <value>1 to 10,000. Default 32.</value>
    public int BodiesAtOnce
    {
        get;
        init => field = Guard.InRange(value, 1, 10_000, nameof(BodiesAtOnce));
    }
    = 32;
}
