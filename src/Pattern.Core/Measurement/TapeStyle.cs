namespace Pattern.Core.Measurement;

/// <summary>How a length is set in type.</summary>
public enum TapeStyle
{
    /// <summary>Characters that any keyboard has: <c>4 5/8 in</c>, <c>-3/16 in</c>, <c>11.8 cm</c>.</summary>
    Plain,

    /// <summary>As a printer would set it: <c>4⅝″</c>, <c>−³⁄₁₆″</c>, <c>11.8 cm</c> with a space that does not break. Reads back as well.</summary>
    Typographic,
}
