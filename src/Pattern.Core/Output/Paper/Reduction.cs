namespace Pattern.Core.Output;

/// <summary>How small a print for an exercise book is.</summary>
public enum Reduction
{
    /// <summary>Half scale, 1:2.</summary>
    Half,

    /// <summary>Quarter scale, 1:4: what schools draft in where the inch is at home.</summary>
    Quarter,

    /// <summary>Fifth scale, 1:5: what schools draft in where the centimetre is.</summary>
    Fifth,
}
