using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <content>What lies beside an edge: cut off, or made into a piece of its own.</content>
public sealed partial class Panel
{
    /// <summary>Returns a copy of this panel with an edge moved in along the edges on either side: a lowered waist, a shorter hem.</summary>
    /// <remarks>The new line is parallel to the edge with its darts closed; where the edges on either side bend, it is one sweep between the two places at that depth, and meets them at the angles
    /// of the old one. A dart that reaches beyond it keeps its apex and its angle, so its intake becomes smaller with its legs. One that ends above it is gone. What the edge measures then is
    /// what the panel measures there, darts closed.</remarks>
    /// <param name="edge">The edge.</param>
    /// <param name="by">How far, along the edges on either side; zero leaves all as it is.</param>
    /// <exception cref="ConstructionException">The edges on either side are too short for that, or a dart on them, a tuck or a double-pointed dart is in the way.</exception>
    [Pure]
    public Panel MoveEdgeIn(EdgeName edge, Length by)
    {
        double byMm = Guard.Millimetres(by, 0, 10_000, nameof(by));
        return byMm == 0 ? this : new EdgeStrip(this, edge, byMm, closesAll: false, "moving an edge in").Below();
    }

    /// <summary>Returns the strip of this panel beside an edge, its darts closed, as a panel of its own: a yoke, a contour band, a facing.</summary>
    /// <remarks>What <see cref="MoveEdgeIn"/> leaves is the rest: where every dart of the edge reaches beyond the strip, their lines are equally long, and both together have the area of
    /// this panel outside its darts. A dart that ends within the strip is closed all the same, as in a facing.</remarks>
    /// <param name="edge">The edge.</param>
    /// <param name="depth">How deep the strip is, along the edges on either side.</param>
    /// <param name="seam">What the line is called on the strip.</param>
    /// <param name="name">What the strip is called.</param>
    /// <exception cref="ConstructionException">The edges on either side are too short for that.</exception>
    [Pure]
    public Panel StripBeside(EdgeName edge, Length depth, EdgeName seam, PanelName name)
    {
        double depthMm = Guard.Millimetres(depth, 0.1, 10_000, nameof(depth));
        return new EdgeStrip(this, edge, depthMm, closesAll: true, "cutting a strip").Strip(name, seam);
    }
}
