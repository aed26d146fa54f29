using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Panels;

/// <content>Making the edges of a seam agree.</content>
public sealed partial class Seam
{
    /// <summary>Returns the panels with the stretches of this seam equally long, but for the ease asked for.</summary>
    /// <remarks>Held together at the start of the seam, both edges take half of each difference.</remarks>
    /// <param name="panels">The panels that carry the edges; others may be among them and come back as they are.</param>
    /// <exception cref="ConstructionException">An edge or mark is missing, notches do not pair, or an edge is too short for what would be taken off it.</exception>
    [Pure]
    public TruingResult TrueLengths(params Panel[] panels) => TrueLengths(LengthTruing.Default, panels);

    /// <summary>Returns the panels with the stretches of this seam equally long, but for the ease asked for, moving what may move.</summary>
    /// <remarks>Notches slide along their edge; the ends of an edge go on straight or are cut back, and the edges beside them follow.</remarks>
    /// <param name="truing">What may move.</param>
    /// <param name="panels">The panels that carry the edges; others may be among them and come back as they are.</param>
    /// <exception cref="ConstructionException">An edge or mark is missing, notches do not pair, or an edge is too short for what would be taken off it.</exception>
    [Pure]
    public TruingResult TrueLengths(LengthTruing truing, params Panel[] panels)
        => new SeamLengths(this, Guard.NotNull(truing, nameof(truing)), Guard.NotNull(panels, nameof(panels))).True(panels);
}
