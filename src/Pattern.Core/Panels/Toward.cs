namespace Pattern.Core.Panels;

/// <summary>A way along an edge. <see cref="Panel.WordFor"/> says it in the words of a panel: on a skirt's waist, the centre and the side.</summary>
public enum Toward
{
    /// <summary>Back to the start of the edge.</summary>
    Start,

    /// <summary>On to the end of the edge.</summary>
    End,
}
