using Pattern.Core.Drafting;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>What the points, lines and seams of a bodice draft are called. CB and CF are centre back and centre front.</summary>
internal static class BodiceNames
{
    internal static readonly LandmarkName BustPoint = "bust point";
    internal static readonly LandmarkName ShoulderBlade = "shoulder blade";

    internal static readonly LineName CentreBackLine = LineName.Of("centre back line", ConstructionRole.Frame);
    internal static readonly LineName CentreFrontLine = LineName.Of("centre front line", ConstructionRole.Frame);
    internal static readonly LineName WaistLevel = LineName.Of("waist level", ConstructionRole.Level);
    internal static readonly LineName ArmholeLine = LineName.Of("armhole line", ConstructionRole.Level);
    internal static readonly LineName FrontArmholeLine = LineName.Of("front armhole line", ConstructionRole.Level);
    internal static readonly LineName BustPointLine = LineName.Of("bust point line", ConstructionRole.Guide);
    internal static readonly LineName FoldedSide = LineName.Of("front side line with the dart folded", ConstructionRole.Guide);

    internal static readonly LineName FoldedShoulder = LineName.Of("back shoulder with the dart folded", ConstructionRole.Guide);

    internal static readonly EdgeOf BackNeckline = EdgeOf.Panel(PanelName.Back, EdgeName.Neckline);
    internal static readonly EdgeOf BackShoulder = EdgeOf.Panel(PanelName.Back, EdgeName.Shoulder);
    internal static readonly EdgeOf BackArmhole = EdgeOf.Panel(PanelName.Back, EdgeName.Armhole);
    internal static readonly EdgeOf BackSide = EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam);
    internal static readonly EdgeOf BackWaist = EdgeOf.Panel(PanelName.Back, EdgeName.Waist);
    internal static readonly EdgeOf FrontNeckline = EdgeOf.Panel(PanelName.Front, EdgeName.Neckline);
    internal static readonly EdgeOf FrontShoulder = EdgeOf.Panel(PanelName.Front, EdgeName.Shoulder);
    internal static readonly EdgeOf FrontArmhole = EdgeOf.Panel(PanelName.Front, EdgeName.Armhole);
    internal static readonly EdgeOf FrontSide = EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam);
    internal static readonly EdgeOf FrontWaist = EdgeOf.Panel(PanelName.Front, EdgeName.Waist);

    internal static readonly Seam SideSeam = Seam.Between(BackSide, FrontSide).Named("side seam");

    internal static LineName Drawn(string name) => LineName.Of(name, ConstructionRole.HandDrawn);
}
