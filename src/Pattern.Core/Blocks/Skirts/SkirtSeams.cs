using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>How every skirt block is sewn together.</summary>
internal static class SkirtSeams
{
    /// <summary>One half is drawn, and sewn to its mirror image; the front lies on the fold.</summary>
    internal static readonly Seam CentreBack = Seam.ToMirrorImage(EdgeOf.Panel(PanelName.Back, EdgeName.Centre)).Named("centre back seam");

    internal static readonly SeamPlan Plan = SeamPlan.Of(
        Seam.Between(EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam), EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam))
            .Named("side seam", "waist to hip", "hip to hem"),
        CentreBack);
}
