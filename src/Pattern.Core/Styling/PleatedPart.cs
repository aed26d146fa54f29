namespace Pattern.Core.Styling;

/// <summary>Which part of a skirt is pleated.</summary>
public enum PleatedPart
{
    /// <summary>Back and front.</summary>
    AllAround,

    /// <summary>The front only; the back stays as it is.</summary>
    Front,

    /// <summary>The back only; the front stays as it is.</summary>
    Back,
}
