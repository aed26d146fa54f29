using Pattern.Core.Drafting;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>What the points and lines of a sleeve draft are called.</summary>
internal static class SleeveNames
{
    internal static readonly PanelName Sleeve = PanelName.Of("sleeve");

    internal static readonly LandmarkName BackUnderarm = LandmarkName.Of("back underarm");
    internal static readonly LandmarkName FrontUnderarm = LandmarkName.Of("front underarm");
    internal static readonly LandmarkName CrownFoot = LandmarkName.Of("crown foot");
    internal static readonly LandmarkName Crown = LandmarkName.Of("crown");
    internal static readonly LandmarkName UnderarmMiddle = LandmarkName.Of("underarm middle");
    internal static readonly LandmarkName WristMiddle = LandmarkName.Of("wrist middle");
    internal static readonly LandmarkName BackWrist = LandmarkName.Of("back wrist");
    internal static readonly LandmarkName FrontWrist = LandmarkName.Of("front wrist");

    internal static readonly LineName UnderarmLine = LineName.Of("underarm line", ConstructionRole.Level);
    internal static readonly LineName CrownLine = LineName.Of("crown line", ConstructionRole.Guide);
    internal static readonly LineName MiddleLine = LineName.Of("middle line", ConstructionRole.Guide);
    internal static readonly LineName WristLine = LineName.Of("wrist line", ConstructionRole.Level);
    internal static readonly LineName BackHead = LineName.Of("back head", ConstructionRole.HandDrawn);
    internal static readonly LineName FrontHead = LineName.Of("front head", ConstructionRole.HandDrawn);
    internal static readonly LineName BackSeam = LineName.Of("back underarm seam", ConstructionRole.HandDrawn);
    internal static readonly LineName FrontSeam = LineName.Of("front underarm seam", ConstructionRole.HandDrawn);

    internal static readonly LevelNames Elbow = new("elbow");
    internal static readonly LevelNames Hem = new("hem");
}

/// <summary>The names on a level across the sleeve below the underarm line.</summary>
internal sealed class LevelNames(string level)
{
    internal LandmarkName BackLevel { get; } = LandmarkName.Of(level + " level behind");

    internal LandmarkName FrontLevel { get; } = LandmarkName.Of(level + " level in front");

    internal LandmarkName Back { get; } = LandmarkName.Of("back " + level);

    internal LandmarkName Front { get; } = LandmarkName.Of("front " + level);

    internal LineName Line { get; } = LineName.Of(level + " line", ConstructionRole.Level);
}
