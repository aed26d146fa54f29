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
public static class SkirtStyling
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
    /// <param name="flare">How far each seam edge stands out at the hem, 0 to 10 in. Usually 2 in (5 cm).</param>
    /// <param name="from">From where the seams flare, below the waist. Usually from the hip; further down makes a trumpet, curved from there.</param>
    /// <exception cref="ConstructionException">The level lies above the hip or too near to the hem, or the waist is larger than the hip.</exception>
    [Pure]
    public static Block Gores(this Block block, int? count = null, Length? flare = null, Length? from = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.Gores.AsUsual()
            .WithGiven(GoresDesign.Count, count)
            .WithGiven(GoresDesign.Flare, flare)
            .WithGiven(GoresDesign.From, from));

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
}
