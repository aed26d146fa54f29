using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>How every skirt block is sewn together.</summary>
internal static class SkirtSeams
{
    internal static readonly SeamPlan Plan = SeamPlan.Of(
        Seam.Between(EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam), EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam))
            .Named("side seam", "waist to hip", "hip to hem"));
}
