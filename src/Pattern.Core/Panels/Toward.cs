namespace Pattern.Core.Panels;

/// <summary>A way along an edge that runs from the centre of the body out to its side.</summary>
public enum Toward
{
    /// <summary>Back to the start of the edge: to the centre line.</summary>
    Centre,

    /// <summary>On to the end of the edge: to the side seam.</summary>
    Side,
}
