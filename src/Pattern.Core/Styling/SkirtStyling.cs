using System.Diagnostics.Contracts;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>Designs of a skirt, said as a designer says them. What is left out is as usual; the page <c>skirt-designs</c> gives the reason of each usual value.</summary>
/// <example><code>
/// Block skirt = SkirtBlock.For(body).Draft().ALine(sideFlare: Tape.Inches("2"));
/// skirt.Report.ThrowIfFailed();
/// </code></example>
public static partial class SkirtStyling
{
    /// <summary>Makes an A-line: waist darts closed into flare, side seams swung out, the hem level.</summary>
    /// <remarks>Waist and side seams keep their lengths. A dart of intake w and length l opens a hem L below the waist by 2 (L - l) sin(a / 2), with sin(a / 2) = w / 2l.</remarks>
    /// <param name="block">A skirt block that hangs straight.</param>
    /// <param name="share">How much of each waist dart is closed, 0 to 100 %. Usually all.</param>
    /// <param name="sideFlare">How far each side hem swings out, front and back, 0 to 8 in. Usually half of what one panel opens by, so that the flare is even around the hem; 1 1/2 in (4 cm) where nothing opens.</param>
    /// <param name="mostHipGain">What the hip may gain in each quarter, since darts end above it; then they are lengthened before they are closed. Usually 3/8 in (1 cm).</param>
    /// <exception cref="ConstructionException">The block hangs otherwise, or another design has cut its panels apart.</exception>
    [Pure]
    public static Block ALine(this Block block, Ratio? share = null, Length? sideFlare = null, Length? mostHipGain = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.ALine.AsUsual()
            .WithGiven(ALineDesign.Share, share)
            .WithGiven(ALineDesign.SideFlare, sideFlare)
            .WithGiven(ALineDesign.HipGain, mostHipGain));

    /// <summary>Makes a flared skirt: all darts closed into flare, more by slashing from the hem up to the waist and spreading, side seams swung out, the hem level.</summary>
    /// <param name="block">A skirt block that hangs straight.</param>
    /// <param name="slashes">At how many places each quarter is slashed, 0 to 12. Usually 3.</param>
    /// <param name="spread">How far a slash is spread at the hem, in the mean, 0 to 12 in. Usually 2 in (5 cm).</param>
    /// <param name="falls">Where more of the spread falls. Usually even.</param>
    /// <param name="sideFlare">How far each side hem swings out, front and back. Usually half of the spread.</param>
    /// <exception cref="ConstructionException">The block hangs otherwise, or another design has cut its panels apart.</exception>
    [Pure]
    public static Block Flared(this Block block, int? slashes = null, Length? spread = null, FlareFalls falls = FlareFalls.Evenly, Length? sideFlare = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.Flared.AsUsual()
            .WithGiven(FlaredDesign.Places, slashes)
            .WithGiven(FlaredDesign.Spread, spread)
            .WithGiven(FlaredDesign.Weight, (FlareFalls)Guard.Choice((int)falls, 3, nameof(falls)) switch
            {
                FlareFalls.TowardSide => FlaredDesign.TowardSide,
                FlareFalls.TowardCentre => FlaredDesign.TowardCentre,
                _ => null,
            })
            .WithGiven(FlaredDesign.SideFlare, sideFlare));

    /// <summary>Makes a skirt of equal gores: the waist is shaped in their seams, each seam flares from a level of its own.</summary>
    /// <remarks>With n gores each seam edge takes in a 2n-th part of the difference between hip and waist.</remarks>
    /// <param name="block">A skirt block; its waist, hip, levels and length serve, its panels are drawn anew.</param>
    /// <param name="count">How many gores, 3 to 24. Usually 6.</param>
    /// <param name="flare">How far each seam edge stands out at the hem, 0 to 10 in. Usually 2 in (5 cm), on a short skirt no more than an eighth of what hangs below the hip.</param>
    /// <param name="from">From where the seams flare, below the waist. Usually from the hip; further down makes a trumpet, curved from there.</param>
    /// <exception cref="ConstructionException">The level lies above the hip or too near to the hem, or the waist is larger than the hip.</exception>
    [Pure]
    public static Block Gores(this Block block, int? count = null, Length? flare = null, Length? from = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.Gores.AsUsual()
            .WithGiven(GoresDesign.Count, count)
            .WithGiven(GoresDesign.Flare, flare)
            .WithGiven(GoresDesign.From, from));

    /// <summary>Makes a skirt of a front gore and a back gore of their own width, and side gores that share the rest; what the darts and side seams of the block take in goes into the seams beside them.</summary>
    /// <remarks>Where the zip stands in the centre back, the back gore is cut in two there.</remarks>
    /// <param name="block">The block as drafted, straight; its waist, hip, levels, length and shaping serve, its panels are drawn anew.</param>
    /// <param name="count">How many gores: 4, 6 or 8. Usually 6.</param>
    /// <param name="frontWidth">How wide the front gore is at the hip. Usually a sixth of the hip (Baldt, 1916).</param>
    /// <param name="backWidth">How wide the back gore is at the hip. Usually a sixth of the hip (Baldt, 1916).</param>
    /// <param name="flare">How far each seam edge stands out at the hem, 0 to 10 in. Usually 2 in (5 cm), on a short skirt no more than an eighth of what hangs below the hip.</param>
    /// <param name="panelFlare">How far the seam edges beside front and back gore stand out. Usually as far as the others.</param>
    /// <param name="from">From where the seams flare, below the waist. Usually from the hip; further down makes a trumpet.</param>
    /// <exception cref="ConstructionException">The number is odd, a gore would be too narrow at the waist, or the level lies above the hip or too near to the hem.</exception>
    [Pure]
    public static Block UnequalGores(
        this Block block, int? count = null, Length? frontWidth = null, Length? backWidth = null, Length? flare = null, Length? panelFlare = null, Length? from = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.UnequalGores.AsUsual()
            .WithGiven(UnequalGoresDesign.Count, count)
            .WithGiven(UnequalGoresDesign.FrontWidth, frontWidth)
            .WithGiven(UnequalGoresDesign.BackWidth, backWidth)
            .WithGiven(UnequalGoresDesign.Flare, flare)
            .WithGiven(UnequalGoresDesign.PanelFlare, panelFlare)
            .WithGiven(UnequalGoresDesign.From, from));

    /// <summary>Sets a godet, a sector of a circle, into every seam that runs down to the hem: gore seams, side seams.</summary>
    /// <remarks>A godet of the height g and the angle t adds g t to the hem.</remarks>
    /// <param name="block">A skirt of gores, or of backs and fronts; nothing is designed after godets.</param>
    /// <param name="height">How high above the hem the seams are left open, 3 to 40 in. Usually 10 in (25 cm), but never above 10 cm below the hip.</param>
    /// <param name="circle">The part of a circle, 5 to 45 %. Usually a quarter.</param>
    /// <exception cref="ConstructionException">No seam runs down to the hem plainly, or they would open too near to the hip.</exception>
    [Pure]
    public static Block Godets(this Block block, Length? height = null, Ratio? circle = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.Godets.AsUsual()
            .WithGiven(GodetsDesign.Height, height)
            .WithGiven(GodetsDesign.Part, circle));

    /// <summary>Makes a circle skirt: a quarter circle to a double one, from waist, hip and length of the block.</summary>
    /// <remarks>For the part f of a circle the waist lies at the radius W / (2 pi f), the hem at the length further out.</remarks>
    /// <param name="block">A skirt block; its panels are drawn anew.</param>
    /// <param name="circle">The part of a circle, 25 to 200 %. Usually a full one.</param>
    /// <param name="waistCutSmaller">What the waist is cut smaller by all around, since it stretches where it lies on the bias, 0 to 2 in. Usually 3/4 in (2 cm); only the pieces show it.</param>
    /// <exception cref="ConstructionException">The hip does not pass through so small a part of a circle.</exception>
    [Pure]
    public static Block Circle(this Block block, Ratio? circle = null, Length? waistCutSmaller = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.Circle.AsUsual()
            .WithGiven(CircleDesign.Part, circle)
            .WithGiven(CircleDesign.Smaller, waistCutSmaller));

    /// <summary>Makes a half circle.</summary>
    /// <inheritdoc cref="Circle"/>
    [Pure]
    public static Block HalfCircle(this Block block, Length? waistCutSmaller = null) => block.Circle(Ratio.FromPercent(50), waistCutSmaller);

    /// <summary>Makes a full circle.</summary>
    /// <inheritdoc cref="Circle"/>
    [Pure]
    public static Block FullCircle(this Block block, Length? waistCutSmaller = null) => block.Circle(Ratio.FromPercent(100), waistCutSmaller);

    /// <summary>Makes a pencil skirt: the sides come in below the hip and hang straight for the last of it; a vent, a slit or a kick pleat at the centre back gives room to walk.</summary>
    /// <remarks>The report advises where a usual step is longer than the hem allows.</remarks>
    /// <param name="block">The block as drafted, straight.</param>
    /// <param name="sideHemIn">How far each side hem comes in, 0 to 4 in. Usually 1 in (2.5 cm).</param>
    /// <param name="room">What gives room to walk. Usually a vent.</param>
    /// <param name="height">How high that is. Usually 8 in (20 cm), but never above 20 cm below the hip.</param>
    /// <exception cref="ConstructionException">The block hangs otherwise, is too short for that, or the opening would reach the hip.</exception>
    [Pure]
    public static Block Pencil(this Block block, Length? sideHemIn = null, WalkingRoom room = WalkingRoom.Vent, Length? height = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.Pencil.AsUsual()
            .WithGiven(PencilDesign.In, sideHemIn)
            .WithGiven(PencilDesign.Opening, (WalkingRoom)Guard.Choice((int)room, 4, nameof(room)) switch
            {
                WalkingRoom.Slit => PencilDesign.Slit,
                WalkingRoom.KickPleat => PencilDesign.KickPleat,
                WalkingRoom.None => PencilDesign.None,
                _ => null,
            })
            .WithGiven(PencilDesign.Height, height));

    /// <summary>Cuts a hip yoke; the darts close inside it, and what is left of them below is eased in, as far as 1/4 in (5 mm) in a quarter, or comes off the side seam.</summary>
    /// <param name="block">A skirt block, or one that an A-line or flare was made of.</param>
    /// <param name="depth">How deep, 1 to 10 in, but no deeper than the darts. Usually 5 in (12.5 cm), or where the shortest dart nearly ends.</param>
    /// <param name="fullness">How much longer the top of the skirt is than the yoke that it is gathered to, 100 to 400 %. Usually as long: plain.</param>
    /// <param name="line">How its lower edge runs. Usually parallel to the shaped waist.</param>
    /// <exception cref="ConstructionException">The yoke would end below a dart, or there is one already.</exception>
    [Pure]
    public static Block HipYoke(this Block block, Length? depth = null, Ratio? fullness = null, YokeLine line = YokeLine.Parallel)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.HipYoke.AsUsual()
            .WithGiven(HipYokeDesign.Depth, depth)
            .WithGiven(HipYokeDesign.Fullness, fullness)
            .WithGiven(HipYokeDesign.Runs, (YokeLine)Guard.Choice((int)line, 2, nameof(line)) == YokeLine.Level ? HipYokeDesign.Level : null));

    /// <summary>Makes a wrap skirt: each front goes on beyond the centre front as its own mirror image.</summary>
    /// <param name="block">A skirt block that hangs straight or flares.</param>
    /// <param name="overlap">How far beyond the centre front, 2 to 16 in. Usually 6 in (15 cm), or as far as there is room before a dart and the side; a front edge that would cut into a dart goes on beyond it.</param>
    /// <exception cref="ConstructionException">The overlap would reach beyond the side, or the block has a yoke.</exception>
    [Pure]
    public static Block Wrap(this Block block, Length? overlap = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.Wrap.AsUsual().WithGiven(WrapDesign.Overlap, overlap));

    /// <summary>Makes a tiered skirt: the block down to the hip, and strips below it, each gathered to the one above.</summary>
    /// <param name="block">The block as drafted, straight.</param>
    /// <param name="count">How many tiers, the fitted one counted, 2 to 8. Usually 3.</param>
    /// <param name="fullness">How much longer each strip is than the edge it is gathered to, 110 to 300 %. Usually 150 %.</param>
    /// <param name="first">How deep the first tier is. Usually down to the hip.</param>
    /// <exception cref="ConstructionException">A tier would be too shallow, or the first one end above hip or darts.</exception>
    [Pure]
    public static Block Tiers(this Block block, int? count = null, Ratio? fullness = null, Length? first = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.Tiers.AsUsual()
            .WithGiven(TiersDesign.Count, count)
            .WithGiven(TiersDesign.Fullness, fullness)
            .WithGiven(TiersDesign.First, first));

    /// <summary>Pleats a skirt with knife pleats, from the waist or from a yoke, stitched down to the hip.</summary>
    /// <remarks>The block is drawn as it is sewn, pleats folded; the pieces are the flat cloth, their cut edges shaped by folding. Seams lie hidden in the middle of an underlay.</remarks>
    /// <param name="block">The block as drafted, straight, or with a plain yoke.</param>
    /// <param name="count">How many in all: knife and inverted pleats a multiple of 4, box pleats 2 more than one; in one part half of that. Usually as many as are about 2 in (5 cm) wide at the hip.</param>
    /// <param name="depth">How deep they lie under, of the deepest that no three layers hide each other at, 20 to 100 %. Usually all of it: three times the hip of cloth.</param>
    /// <param name="part">Which part is pleated. Usually all around.</param>
    /// <param name="stitchedDown">How far below the waist they are stitched down. Usually to the hip.</param>
    /// <exception cref="ConstructionException">The block hangs otherwise, the pleats do not share out over the quarters, or would be stitched down beyond the hip.</exception>
    [Pure]
    public static Block KnifePleats(this Block block, int? count = null, Ratio? depth = null, PleatedPart part = PleatedPart.AllAround, Length? stitchedDown = null)
        => Pleated(block, BuiltInDesigns.KnifePleats, count, depth, part, stitchedDown);

    /// <summary>Pleats a skirt with box pleats, from the waist or from a yoke, stitched down to the hip; a box lies over the centre.</summary>
    /// <inheritdoc cref="KnifePleats"/>
    [Pure]
    public static Block BoxPleats(this Block block, int? count = null, Ratio? depth = null, PleatedPart part = PleatedPart.AllAround, Length? stitchedDown = null)
        => Pleated(block, BuiltInDesigns.BoxPleats, count, depth, part, stitchedDown);

    /// <summary>Pleats a skirt with inverted pleats, from the waist or from a yoke, stitched down to the hip; one lies over the centre.</summary>
    /// <inheritdoc cref="KnifePleats"/>
    [Pure]
    public static Block InvertedPleats(this Block block, int? count = null, Ratio? depth = null, PleatedPart part = PleatedPart.AllAround, Length? stitchedDown = null)
        => Pleated(block, BuiltInDesigns.InvertedPleats, count, depth, part, stitchedDown);

    private static Block Pleated(Block block, BlockDesign design, int? count, Ratio? depth, PleatedPart part, Length? stitchedDown)
        => Guard.NotNull(block, nameof(block)).With(design.AsUsual()
            .WithGiven(PleatsDesign.Count, count)
            .WithGiven(PleatsDesign.Depth, depth)
            .WithGiven(PleatsDesign.Part, (PleatedPart)Guard.Choice((int)part, 3, nameof(part)) switch
            {
                PleatedPart.Front => PleatsDesign.FrontOnly,
                PleatedPart.Back => PleatsDesign.BackOnly,
                _ => null,
            })
            .WithGiven(PleatsDesign.Stitched, stitchedDown));
}
