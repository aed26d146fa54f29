namespace Pattern.Core.Patterns;

/// <summary>What becomes of the armhole of a bodice.</summary>
public enum ArmholeFinish
{
    /// <summary>It is faced: the bodice is worn without sleeves.</summary>
    Faced,

    /// <summary>A sleeve is sewn in.</summary>
    SewnIn,
}
