using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Reflection;

namespace Pattern.Core.Tests.Conventions;

public class PropertySeedTests
{
    // Written for .ci/run, which shows it.
    [Fact]
    public void Properties_AllOfThem_StartFromASeedThatTheRunKnows()
    {
        (string Name, FsCheck.Xunit.PropertyAttribute Asked)[] properties =
            [.. typeof(PropertySeedTests).Assembly.GetTypes()
                .SelectMany(type => type.GetMethods())
                .Select(method => ($"{method.DeclaringType!.Name}.{method.Name}", Asked: method.GetCustomAttribute<FsCheck.Xunit.PropertyAttribute>()!))
                .Where(property => property.Asked is not null)
                .OrderBy(property => property.Item1, StringComparer.Ordinal)];
        string run = PropertySeed.OfThisRun;
        File.WriteAllLines(
            Path.Combine(AppContext.BaseDirectory, "property-seeds.txt"),
            properties.Select(property => $"property {property.Name} seed {property.Asked.Replay}"));

        Assert.True(properties.Length > 50);
        Rule.Holds(properties.Where(property => property.Asked is not PropertyAttribute).Select(property => property.Name + " uses FsCheck's own attribute"));
        Rule.Holds(properties.Where(property => property.Asked.Replay != PropertySeed.Of(property.Name, run)).Select(property => property.Name + " keeps a seed of its own: make the case a named test"));
    }

    [Fact]
    public void Seed_OfAPropertyAndARun_IsTheSameEachTimeAndDiffersFromAllOthers()
    {
        IEnumerable<string> seeds =
            from property in new[] { "A.B", "A.C", "B.B" }
            from run in new[] { string.Empty, "1", "2" }
            select PropertySeed.Of(property, run);

        Assert.Equal(9, seeds.Distinct().Count());
        Assert.Equal(seeds, seeds.ToArray());
        Assert.All(seeds, seed => Assert.Equal(1UL, ulong.Parse(seed.Split(',')[1], System.Globalization.CultureInfo.InvariantCulture) & 1));

        // FNV-1a of the empty text is its offset basis, and of "a" 0xaf63dc4c8601ec8c (the authors' test vectors).
        Assert.Equal(0xaf63dc4c8601ec8cUL, PropertySeed.Fnv("a"));
    }
}
