using System.Collections.Generic;
using Pattern.Core.Blocks;

namespace Pattern.Core.Styling;

/// <summary>The designs that the library brings. <see cref="SkirtStyling"/> and <see cref="BodiceStyling"/> say their settings by name.</summary>
public static class BuiltInDesigns
{
    /// <summary>A skirt that widens from the hip: waist darts closed into flare.</summary>
    public static BlockDesign ALine { get; } = new ALineDesign();

    /// <summary>A skirt that swings: all darts closed into flare, more by slashing and spreading.</summary>
    public static BlockDesign Flared { get; } = new FlaredDesign();

    /// <summary>A quarter circle to a double one.</summary>
    public static BlockDesign Circle { get; } = new CircleDesign();

    /// <summary>Sides that come in below the hip, and room to walk.</summary>
    public static BlockDesign Pencil { get; } = new PencilDesign();

    /// <summary>A yoke over the hip, the darts closed inside it.</summary>
    public static BlockDesign HipYoke { get; } = new HipYokeDesign();

    /// <summary>Fronts that lie over each other.</summary>
    public static BlockDesign Wrap { get; } = new WrapDesign();

    /// <summary>Strips gathered to each other below the hip.</summary>
    public static BlockDesign Tiers { get; } = new TiersDesign();

    /// <summary>Knife pleats, all around or in one part.</summary>
    public static BlockDesign KnifePleats { get; } = new PleatsDesign(PleatKind.Knife);

    /// <summary>Box pleats, all around or in one part.</summary>
    public static BlockDesign BoxPleats { get; } = new PleatsDesign(PleatKind.Box);

    /// <summary>Inverted pleats, all around or in one part.</summary>
    public static BlockDesign InvertedPleats { get; } = new PleatsDesign(PleatKind.Inverted);

    /// <summary>Equal gores, the waist shaped in their seams.</summary>
    public static BlockDesign Gores { get; } = new GoresDesign();

    /// <summary>A front and a back gore of their own width, side gores between them.</summary>
    public static BlockDesign UnequalGores { get; } = new UnequalGoresDesign();

    /// <summary>Sectors of a circle set into the seams at the hem.</summary>
    public static BlockDesign Godets { get; } = new GodetsDesign();

    /// <summary>The waist lowered along the panels, its darts carried on.</summary>
    public static BlockDesign LoweredWaist { get; } = new LoweredWaistDesign();

    /// <summary>A curved band cut off the top, its darts closed.</summary>
    public static BlockDesign ContourBand { get; } = new ContourBandDesign();

    /// <summary>A waist without a band, faced.</summary>
    public static BlockDesign FacedWaist { get; } = new FacedWaistDesign();

    /// <summary>Pockets in the side seams.</summary>
    public static BlockDesign SeamPockets { get; } = new SeamPocketsDesign();

    /// <summary>Slanted pockets between waist and side.</summary>
    public static BlockDesign SlantedPockets { get; } = new SlantedPocketsDesign();

    /// <summary>A zip, long enough for the hip to pass.</summary>
    public static BlockDesign Zip { get; } = new ZipDesign();

    /// <summary>A lining derived from the skirt.</summary>
    public static BlockDesign Lined { get; } = new LinedDesign();

    /// <summary>A dart of a bodice front turned about the bust point.</summary>
    public static BlockDesign DartTurned { get; } = new BustDartDesign();

    /// <summary>A dart of a bodice front split into several.</summary>
    public static BlockDesign DartSplit { get; } = new DartSplitDesign();

    /// <summary>The shoulder dart of a bodice back turned.</summary>
    public static BlockDesign ShoulderDartTurned { get; } = new ShoulderDartDesign();

    /// <summary>The shoulder dart of a bodice back eased in.</summary>
    public static BlockDesign ShoulderDartEased { get; } = new ShoulderEaseDesign();

    /// <summary>Darts of a bodice made into seams from shoulder or armhole to the waist.</summary>
    public static BlockDesign Princess { get; } = new PrincessDesign();

    /// <summary>All of them, in the order of the guides: skirts first, then bodices.</summary>
    public static IReadOnlyList<BlockDesign> All { get; } = [ALine, Flared, Pencil, Gores, UnequalGores, Godets, HipYoke, KnifePleats, BoxPleats, InvertedPleats, Tiers, Circle, Wrap, LoweredWaist, ContourBand, FacedWaist, SeamPockets, SlantedPockets, Zip, Lined, DartTurned, DartSplit, ShoulderDartTurned, ShoulderDartEased, Princess];
}
