using System;
using System.Globalization;

namespace Pattern.Core.Tests;

/// <summary>The seed that a property starts from, out of its name and the seed of the run.</summary>
internal static class PropertySeed
{
    internal const string Variable = "PATTERN_SEED";

    internal static string OfThisRun { get; } = Environment.GetEnvironmentVariable(Variable) ?? string.Empty;

    /// <summary>Two numbers, as FsCheck's generator takes them; the second one is odd.</summary>
    internal static string Of(string property, string run)
        => string.Create(CultureInfo.InvariantCulture, $"{Hash(property + "|" + run)},{Hash(run + "|" + property) | 1}");

    /// <summary>FNV-1a: <see cref="string.GetHashCode()"/> differs from run to run.</summary>
    internal static ulong Fnv(string text)
    {
        ulong hash = 14695981039346656037;
        foreach (char c in text)
        {
            hash = unchecked((hash ^ c) * 1099511628211);
        }

        return hash;
    }

    // Mixed, so that names that differ at their ends only lead far apart.
    private static ulong Hash(string text)
    {
        ulong hash = Fnv(text);
        hash = unchecked((hash ^ (hash >> 32)) * 0x9E3779B97F4A7C15);
        return hash ^ (hash >> 29);
    }
}
