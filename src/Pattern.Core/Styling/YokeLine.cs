namespace Pattern.Core.Styling;

/// <summary>How the lower edge of a yoke runs.</summary>
public enum YokeLine
{
    /// <summary>Everywhere as far below the shaped waist.</summary>
    Parallel,

    /// <summary>At one level, the same at centres and sides; its depth is measured at the centre back.</summary>
    Level,
}
