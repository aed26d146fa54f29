namespace Pattern.Core.Styling;

/// <summary>Where princess seams begin.</summary>
public enum PrincessFrom
{
    /// <summary>At the shoulder, where the back has its dart.</summary>
    Shoulder,

    /// <summary>At the armhole, half way along it in front.</summary>
    Armhole,
}
