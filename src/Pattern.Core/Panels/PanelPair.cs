namespace Pattern.Core.Panels;

/// <summary>The two parts that a panel was cut into, in the order of its edges.</summary>
public sealed class PanelPair
{
    internal PanelPair(Panel before, Panel beyond)
    {
        Before = before;
        Beyond = beyond;
    }

    /// <summary>The part before the cut: the one that holds the start of the edge that the cut begins on.</summary>
    public Panel Before { get; }

    /// <summary>The part beyond the cut: the one that holds the end of that edge.</summary>
    public Panel Beyond { get; }

    /// <summary>Both names.</summary>
    public override string ToString()
        => Before.Name + " and " + Beyond.Name;
}
