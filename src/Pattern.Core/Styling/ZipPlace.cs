namespace Pattern.Core.Styling;

/// <summary>Where the zip of a skirt stands.</summary>
public enum ZipPlace
{
    /// <summary>In the centre back seam.</summary>
    CentreBack,

    /// <summary>In the left side seam; the centre back then lies on the fold where it is straight.</summary>
    Side,
}
