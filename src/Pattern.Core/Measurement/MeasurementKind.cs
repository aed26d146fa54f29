namespace Pattern.Core.Measurement;

/// <summary>How a body measurement is taken.</summary>
public enum MeasurementKind
{
    /// <summary>Around the body.</summary>
    Girth,

    /// <summary>Along the body from point to point.</summary>
    Length,

    /// <summary>Straight up from the floor.</summary>
    Height,

    /// <summary>Across the body.</summary>
    Width,
}
