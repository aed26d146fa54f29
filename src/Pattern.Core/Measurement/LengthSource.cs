namespace Pattern.Core.Measurement;

/// <summary>Where a length comes from that was given and not worked out.</summary>
internal sealed class LengthSource
{
    /// <summary>Somebody chose it, or left it as usual: a setting of a method or a design.</summary>
    internal static readonly LengthSource Setting = new();

    /// <summary>It stands in a table.</summary>
    internal static readonly LengthSource Table = new();

    /// <summary>Truing found it: it is what came out, and nothing that was put in.</summary>
    internal static readonly LengthSource Found = new();

    private LengthSource()
    {
    }
}
