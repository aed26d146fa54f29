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
}
