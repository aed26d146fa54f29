using System;
using System.Collections.Generic;
using System.Linq;

namespace Pattern.Core.Tests.Conventions;

internal static class Rule
{
    /// <summary>Passes when there is no violation, else names every one of them, a line each.</summary>
    internal static void Holds(IEnumerable<string> violations)
    {
        string[] all = violations.Distinct().OrderBy(violation => violation, StringComparer.Ordinal).ToArray();
        Assert.True(all.Length == 0, $"{all.Length} violations:\n{string.Join("\n", all)}");
    }
}
