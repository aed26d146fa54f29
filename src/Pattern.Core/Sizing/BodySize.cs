using Pattern.Core.Measurement;

namespace Pattern.Core.Sizing;

/// <summary>One size of a table: what it is called, and the body that it is cut for. Immutable.</summary>
public sealed class BodySize
{
    internal BodySize(string name, BodyMeasurements body)
    {
        Name = name;
        Body = body.Named("size " + name);
    }

    /// <summary>What it is called, such as <c>12</c> or <c>M</c>.</summary>
    public string Name { get; }

    /// <summary>Its body, named <c>size 12</c>.</summary>
    public BodyMeasurements Body { get; }

    /// <summary>Name and measurements.</summary>
    public override string ToString() => Body.ToString();
}
