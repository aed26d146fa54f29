using System;
using System.Runtime.CompilerServices;
using Xunit.Sdk;

namespace Pattern.Core.Tests;

/// <summary>A property over random input that starts from a seed of its own: the same one in every run, unless the environment variable
/// <c>PATTERN_SEED</c> names others. So the tests are the same on every machine, and a new seed is something one asks for and can ask for again.</summary>
/// <remarks>On the build for older platforms a quarter of the cases: the sources are the same, and the whole number ran on the other build.
/// Stands in for the attribute of the same name in FsCheck.Xunit: names of an enclosing namespace come before those of a using directive.
/// Where a property fails, FsCheck says which seed and size lead straight to the failing case: put those in <c>Replay</c> to look at it.</remarks>
[AttributeUsage(AttributeTargets.Method)]
[TraitDiscoverer("Pattern.Core.Tests.PropertyTraits", "Pattern.Core.Tests")]
internal sealed class PropertyAttribute : FsCheck.Xunit.PropertyAttribute, ITraitAttribute
{
    public PropertyAttribute([CallerMemberName] string name = "", [CallerFilePath] string file = "")
        => Replay = PropertySeed.Of($"{System.IO.Path.GetFileNameWithoutExtension(file)}.{name}", PropertySeed.OfThisRun);

#if PATTERN_NETSTANDARD
    public new int MaxTest
    {
        get => base.MaxTest;
        set => base.MaxTest = System.Math.Max(10, value / 4);
    }
#endif
}
