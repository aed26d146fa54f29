using System.Diagnostics.Contracts;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <content>Pockets, zip and lining: made last, in any order.</content>
public static partial class SkirtStyling
{
    /// <summary>Puts pockets into the side seams, left and right: a stretch of the seam left open, and a bag of two layers, as pieces of their own.</summary>
    /// <param name="block">A skirt with side seams from the waist down.</param>
    /// <param name="opening">How long the opening for the hand is, 13 cm at least; 15 to 17 cm by usage. Usually 6 1/2 in (16 cm).</param>
    /// <param name="below">How far below the waist it begins, 3 to 5 cm by usage. Usually 1 1/2 in (4 cm).</param>
    /// <param name="depth">How far below the waist the bag ends, 25 to 28 cm by usage. Usually 10 1/2 in (27 cm), and 6 cm below the opening.</param>
    /// <exception cref="ConstructionException">The hand would not fit, the skirt is too short for the bag, or there is no whole side seam.</exception>
    [Pure]
    public static Block SeamPockets(this Block block, Length? opening = null, Length? below = null, Length? depth = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.SeamPockets.AsUsual()
            .WithGiven(SeamPocketsDesign.Opening, opening)
            .WithGiven(SeamPocketsDesign.Below, below)
            .WithGiven(SeamPocketsDesign.Depth, depth));

    /// <summary>Cuts slanted pockets into the front, left and right: the corner between waist and side comes off, an inner layer keeps the outline of the block, and a bag is sewn to the cut.</summary>
    /// <param name="block">A skirt with side seams from the waist down.</param>
    /// <param name="along">Where it begins on the waist, from the side. Usually 4 in (10 cm), but 15 mm beside a dart.</param>
    /// <param name="down">Where it ends on the side seam, from the waist. Usually 6 1/2 in (16 cm).</param>
    /// <param name="depth">How far below the waist the bag ends. Usually 10 1/2 in (27 cm).</param>
    /// <exception cref="ConstructionException">It would cut into a dart, the hand would not fit, or there is no whole side seam.</exception>
    [Pure]
    public static Block SlantedPockets(this Block block, Length? along = null, Length? down = null, Length? depth = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.SlantedPockets.AsUsual()
            .WithGiven(SlantedPocketsDesign.Along, along)
            .WithGiven(SlantedPocketsDesign.Down, down)
            .WithGiven(SlantedPocketsDesign.Depth, depth));

    /// <summary>Says where the zip stands and how long it is, and checks that the skirt can be pulled on: the closed waist and both sides of the zip go around the hip.</summary>
    /// <param name="block">A skirt that does not wrap.</param>
    /// <param name="place">In the centre back, or in the left side seam; the centre back then lies on the fold where it is straight.</param>
    /// <param name="length">From the top down to the stop, 3 to 24 in. Usually 7 in (18 cm), and longer where the hip would not pass. One that is too short for the hip fails the check.</param>
    /// <exception cref="ConstructionException">The seam is too short, or there is none.</exception>
    [Pure]
    public static Block Zip(this Block block, ZipPlace place = ZipPlace.CentreBack, Length? length = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.Zip.AsUsual()
            .WithGiven(ZipDesign.Place, (ZipPlace)Guard.Choice((int)place, 2, nameof(place)) == ZipPlace.Side ? ZipDesign.Side : null)
            .WithGiven(ZipDesign.Opening, length));

    /// <summary>Lines the skirt: its own panels, shorter, open where it has a vent or a slit; where they are full, pleated or cut from tiers, an A-line of the block with the same waist.</summary>
    /// <param name="block">A skirt that does not wrap.</param>
    /// <param name="shorter">How much shorter it hangs, 0 to 6 in. Usually 1 in (2.5 cm).</param>
    /// <exception cref="ConstructionException">It wraps, or its front is cut away for pockets: line it before that.</exception>
    [Pure]
    public static Block Lined(this Block block, Length? shorter = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.Lined.AsUsual().WithGiven(LinedDesign.Shorter, shorter));
}
