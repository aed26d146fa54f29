using System.Diagnostics.Contracts;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <content>Where the waist lies and what finishes it.</content>
public static partial class SkirtStyling
{
    /// <summary>Lowers the waist along the panels: cut parallel to the old one with the darts closed, which are carried on below it.</summary>
    /// <remarks>The closed waist then measures what the block measures at that level. Other designs go on from it; those that draw their panels anew from the natural waist refuse it.</remarks>
    /// <param name="block">A skirt block, or what a design made of it.</param>
    /// <param name="by">How far, along centre and side, 1/4 to 5 in. Usually 1 in (2.5 cm).</param>
    /// <exception cref="ConstructionException">Too little of a dart would be left to be sewn, or the panels are cut otherwise than they are sewn.</exception>
    [Pure]
    public static Block LoweredWaist(this Block block, Length? by = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.LoweredWaist.AsUsual().WithGiven(LoweredWaistDesign.By, by));

    /// <summary>Cuts a contour band off the top of the skirt, its darts closed: it curves as the body does. The darts go on below it.</summary>
    /// <remarks>Made last. The waist of the body is the top of the band; the edge of the skirt that it is sewn to is called waist.</remarks>
    /// <param name="block">A skirt block, or what a design made of it.</param>
    /// <param name="width">How wide, 3/4 to 5 in. Usually 1 1/2 in (4 cm).</param>
    /// <exception cref="ConstructionException">A dart would end in the band, or the waist is finished already.</exception>
    [Pure]
    public static Block ContourBand(this Block block, Length? width = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.ContourBand.AsUsual().WithGiven(ContourBandDesign.Width, width));

    /// <summary>Finishes the waist without a band: faced by the top of the skirt, traced with its darts closed.</summary>
    /// <remarks>Made last; the shape of the skirt does not change.</remarks>
    /// <param name="block">A skirt block, or what a design made of it.</param>
    /// <param name="depth">How deep the facing is, 1 to 5 in. Usually 2 in (5 cm).</param>
    /// <exception cref="ConstructionException">The waist is finished already, or the panels are cut otherwise than they are sewn.</exception>
    [Pure]
    public static Block FacedWaist(this Block block, Length? depth = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.FacedWaist.AsUsual().WithGiven(FacedWaistDesign.Depth, depth));
}
