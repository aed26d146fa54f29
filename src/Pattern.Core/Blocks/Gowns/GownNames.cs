using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>The panels below the waist of a gown, and the seams that join them.</summary>
internal static class GownNames
{
    internal static readonly PanelName SkirtBack = PanelName.Of("skirt back");
    internal static readonly PanelName SkirtFront = PanelName.Of("skirt front");

    internal static readonly Seam BackWaistSeam = Seam
        .Between(BodiceNames.BackWaist, EdgeOf.Panel(SkirtBack, EdgeName.Waist)).Named("back waist seam").Running(SeamRun.Opposite);

    internal static readonly Seam FrontWaistSeam = Seam
        .Between(BodiceNames.FrontWaist, EdgeOf.Panel(SkirtFront, EdgeName.Waist)).Named("front waist seam").Running(SeamRun.Opposite);

    internal static readonly Seam SkirtSide = Seam
        .Between(EdgeOf.Panel(SkirtBack, EdgeName.SideSeam), EdgeOf.Panel(SkirtFront, EdgeName.SideSeam)).Named("skirt side seam", "waist to hip", "hip to hem");
}
