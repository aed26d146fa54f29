namespace Pattern.Core.Panels;

/// <summary>The two parts that a panel was cut into.</summary>
public sealed class PanelPair
{
    internal PanelPair(Panel centre, Panel side)
    {
        Centre = centre;
        Side = side;
    }

    /// <summary>The part before the cut in the order of the edges: in a skirt, the one at the centre.</summary>
    public Panel Centre { get; }

    /// <summary>The part beyond the cut.</summary>
    public Panel Side { get; }
}
