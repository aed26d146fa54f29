using System.Collections.Generic;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace Pattern.Core.Tests;

/// <summary>Lets <c>--filter "Kind=Property"</c> run the properties alone.</summary>
public sealed class PropertyTraits : ITraitDiscoverer
{
    public IEnumerable<KeyValuePair<string, string>> GetTraits(IAttributeInfo traitAttribute) => [new("Kind", "Property")];
}
