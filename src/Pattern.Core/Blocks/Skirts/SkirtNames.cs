using Pattern.Core.Drafting;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>What the points and lines of a skirt draft are called. CB and CF are centre back and centre front.</summary>
internal static class SkirtNames
{
    internal static readonly LandmarkName CentreBackLevel = LandmarkName.Of("CB waist level");
    internal static readonly LandmarkName CentreFrontLevel = LandmarkName.Of("CF waist level");
    internal static readonly LandmarkName CentreBackYoke = LandmarkName.Of("CB yoke");
    internal static readonly LandmarkName CentreFrontYoke = LandmarkName.Of("CF yoke");
    internal static readonly LandmarkName CentreBackUpperHip = LandmarkName.Of("CB upper hip");
    internal static readonly LandmarkName CentreFrontUpperHip = LandmarkName.Of("CF upper hip");
    internal static readonly LandmarkName CentreBackLowerHip = LandmarkName.Of("CB lower hip");
    internal static readonly LandmarkName CentreFrontLowerHip = LandmarkName.Of("CF lower hip");
    internal static readonly LandmarkName CentreBackHem = LandmarkName.Of("CB hem");
    internal static readonly LandmarkName CentreFrontHem = LandmarkName.Of("CF hem");
    internal static readonly LandmarkName SideLevel = LandmarkName.Of("side waist level");
    internal static readonly LandmarkName SideUpperHip = LandmarkName.Of("side upper hip");
    internal static readonly LandmarkName SideLowerHip = LandmarkName.Of("side lower hip");
    internal static readonly LandmarkName SideHem = LandmarkName.Of("side hem");

    internal static readonly LineName CentreBackLine = LineName.Of("centre back line", ConstructionRole.Frame);
    internal static readonly LineName CentreFrontLine = LineName.Of("centre front line", ConstructionRole.Frame);
    internal static readonly LineName WaistLevel = LineName.Of("waist level", ConstructionRole.Level);
    internal static readonly LineName YokeLine = LineName.Of("yoke line", ConstructionRole.Level);
    internal static readonly LineName UpperHipLine = LineName.Of("upper hip line", ConstructionRole.Level);
    internal static readonly LineName LowerHipLine = LineName.Of("lower hip line", ConstructionRole.Level);
    internal static readonly LineName HemLine = LineName.Of("hem line", ConstructionRole.Frame);
    internal static readonly LineName SideLine = LineName.Of("side line", ConstructionRole.Guide);

    internal static readonly LineName SideLineBelow = LineName.Of("side line below the hip", ConstructionRole.Guide);

    internal static readonly QuarterNames Back = new(PanelName.Back, "CB", "back");
    internal static readonly QuarterNames Front = new(PanelName.Front, "CF", "front");
}

/// <summary>The names in one quarter of the draft, back or front.</summary>
internal sealed class QuarterNames
{
    internal QuarterNames(PanelName panel, string centre, string side)
    {
        Panel = panel;
        Centre = centre;
        WaistComesIn = LandmarkName.Of(centre + " waist in");
        CentreWaist = LandmarkName.Of(centre + " waist");
        WaistPoint = LandmarkName.Of(side + " waist point");
        SideWaist = LandmarkName.Of(side + " side waist");
        SideHem = LandmarkName.Of(side + " side hem");
        CentreHemIn = LandmarkName.Of(centre + " hem in");
        SideSeam = LineName.Of(side + " side seam", ConstructionRole.HandDrawn);
        SideSeamBelow = LineName.Of(side + " side seam below the hip", ConstructionRole.HandDrawn);
        CentreSeam = LineName.Of(centre + " seam", ConstructionRole.HandDrawn);
        CentreSeamBelow = LineName.Of(centre + " seam below the hip", ConstructionRole.HandDrawn);
        Waistline = LineName.Of(side + " waistline", ConstructionRole.HandDrawn);
        Darts = new DartNames[DartPlan.MostDarts];
        for (int i = 0; i < Darts.Length; i++)
        {
            Darts[i] = new DartNames(side + " dart " + (i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture));
        }
    }

    internal PanelName Panel { get; }

    /// <summary>CB or CF.</summary>
    internal string Centre { get; }

    internal LandmarkName WaistComesIn { get; }

    internal LandmarkName CentreWaist { get; }

    internal LandmarkName WaistPoint { get; }

    internal LandmarkName SideWaist { get; }

    internal LandmarkName SideHem { get; }

    internal LandmarkName CentreHemIn { get; }

    internal LineName SideSeam { get; }

    internal LineName SideSeamBelow { get; }

    internal LineName CentreSeam { get; }

    internal LineName CentreSeamBelow { get; }

    internal LineName Waistline { get; }

    internal DartNames[] Darts { get; }
}

/// <summary>The names of one dart.</summary>
internal sealed class DartNames(string dart)
{
    internal LandmarkName Middle { get; } = dart + " centre";

    internal LandmarkName Apex { get; } = dart + " apex";

    internal LineName MiddleLine { get; } = dart + " middle line";
}
