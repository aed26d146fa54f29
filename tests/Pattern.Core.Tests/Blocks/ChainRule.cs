using System.Collections.Generic;
using Pattern.Core.Blocks;

namespace Pattern.Core.Tests.Blocks;

/// <summary>What holds of every chain.</summary>
internal static class ChainRule
{
    /// <summary>Ends in measurements, settings, table entries and constants only; comes back to nothing that it came from; has no more links than the draft has things.</summary>
    internal static void Holds(Explanation why)
    {
        var depths = new Dictionary<Origin, int>();
        var open = new Stack<(Origin Origin, bool IsDone)>();
        var way = new HashSet<Origin>();
        open.Push((why.Root, false));
        while (open.Count > 0)
        {
            (Origin origin, bool isDone) = open.Pop();
            if (isDone)
            {
                way.Remove(origin);
                depths[origin] = 1;
                continue;
            }

            Assert.DoesNotContain(origin, way);
            if (depths.ContainsKey(origin))
            {
                continue;
            }

            Assert.True(origin.From.Count > 0 || origin.Kind is OriginKind.Measurement or OriginKind.Setting or OriginKind.TableEntry or OriginKind.Constant, origin.Kind + " " + origin + " is no end");
            Assert.True(!origin.IsEnd || origin.From.Count == 0, origin.Kind + " " + origin + " is an end that was made of something");
            way.Add(origin);
            open.Push((origin, true));
            foreach (Origin from in origin.From)
            {
                open.Push((from, false));
            }
        }

        Assert.All(why.Ends, end => Assert.True(end.IsEnd));
        Assert.True(why.Ends.Count > 0);
        Assert.InRange(depths.Count, 1, 30_100);
    }
}
