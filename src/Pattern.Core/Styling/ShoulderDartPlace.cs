namespace Pattern.Core.Styling;

/// <summary>Where the dart over the shoulder blade stands on the back.</summary>
public enum ShoulderDartPlace
{
    /// <summary>On the shoulder. Usually in its middle.</summary>
    Shoulder,

    /// <summary>On the neckline. Usually in its middle.</summary>
    Neckline,

    /// <summary>On the armhole. Usually in its middle.</summary>
    Armhole,
}
