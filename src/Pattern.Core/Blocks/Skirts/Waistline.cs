namespace Pattern.Core.Blocks;

/// <summary>Which waistline of a skirt block its seam line follows. Darts reach up to whichever it is.</summary>
public enum Waistline
{
    /// <summary>Dropped at the centre front, lifted at the side: for a skirt that hangs from its own waist.</summary>
    Shaped,

    /// <summary>At the waist level all around: for joining to a bodice as a dress.</summary>
    Level,

    /// <summary>Lowered at the centre back, level at the centre front, lifted at the side: the line of many handbooks.</summary>
    LoweredBack,
}
