namespace Pattern.Core.Styling;

/// <summary>Where a dart that points at the bust point stands on the front.</summary>
public enum BustDartPlace
{
    /// <summary>On the shoulder. Usually in its middle.</summary>
    Shoulder,

    /// <summary>On the neckline. Usually in its middle.</summary>
    Neckline,

    /// <summary>On the armhole. Usually in its middle.</summary>
    Armhole,

    /// <summary>On the side seam. Usually where the block has it, a third of the way down from the armhole.</summary>
    Side,

    /// <summary>On the waist. Usually one dart with the waist dart that points at the bust point, or straight below it.</summary>
    Waist,

    /// <summary>On the centre front, which is a seam then. Usually level with the bust point.</summary>
    CentreFront,
}
