namespace Pattern.Core.Measurement;

/// <summary>Which mark of the tape a length goes to when it lies between two.</summary>
/// <remarks>A length within a millionth of a millimetre of a mark lies on it, so that no rounding of the arithmetic underneath pushes it to the next one.</remarks>
public enum TapeRounding
{
    /// <summary>To the nearer mark; from the middle to the one further from zero, so that 1/16 on a tape of eighths becomes 1/8.</summary>
    Nearest,

    /// <summary>To the next mark that is not shorter (towards plus infinity: -3/16 becomes -1/8).</summary>
    Up,

    /// <summary>To the next mark that is not longer (towards minus infinity: -3/16 becomes -1/4).</summary>
    Down,
}
