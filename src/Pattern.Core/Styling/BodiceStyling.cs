using System.Diagnostics.Contracts;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>Designs of a bodice, said as a designer says them. What is left out is as usual; the page <c>bodice-designs</c> gives the reason of each usual value.</summary>
/// <example><code>
/// Block bodice = BodiceBlock.For(body.With(BodyMeasurement.BustGirth, "36")).Draft().BustDartTo(BustDartPlace.Shoulder);
/// bodice.Report.ThrowIfFailed();
/// </code></example>
public static partial class BodiceStyling
{
    /// <summary>Turns the bust dart to another edge: it is closed where it stands, and its angle opens there.</summary>
    /// <remarks>The angle at the bust point stays, and every edge is sewn as long as before; how wide the dart is goes with the length of its legs. Onto a dart that points at the bust point already,
    /// such as the waist dart, it makes one wider dart. Turned back, it restores the block.</remarks>
    /// <param name="block">A bodice block, or a design of one that has not cut its front apart.</param>
    /// <param name="to">The edge.</param>
    /// <param name="share">How much of its angle goes, 1 to 100 %. Usually all.</param>
    /// <param name="along">Where on the edge, in its order: from centre to neck, from neck to armhole, from shoulder to side, from armhole to waist, from side to centre, from waist to neck. Usually as <see cref="BustDartPlace"/> says.</param>
    /// <param name="standsOff">How far the sewn dart ends before the bust point, 0 to 4 in. Usually as the darts of the block: a thirtieth of the bust girth, on the waist a forty-fifth.</param>
    /// <exception cref="ConstructionException">There is no such dart, the new one would be wider than cloth takes or than its edge has room for, or would lie over another one.</exception>
    [Pure]
    public static Block BustDartTo(this Block block, BustDartPlace to, Ratio? share = null, Ratio? along = null, Length? standsOff = null)
        => Guard.NotNull(block, nameof(block)).With(Turned(BustDartDesign.BustDart, to, share, along, standsOff));

    /// <summary>Turns the waist dart that points at the bust point to another edge, as <see cref="BustDartTo"/> does the bust dart: to where that stands, both are one.</summary>
    /// <inheritdoc cref="BustDartTo"/>
    [Pure]
    public static Block WaistDartTo(this Block block, BustDartPlace to, Ratio? share = null, Ratio? along = null, Length? standsOff = null)
        => Guard.NotNull(block, nameof(block)).With(Turned(BustDartDesign.WaistDart, to, share, along, standsOff));

    /// <summary>Splits the bust dart, wherever it stands, into several of the same angle, side by side.</summary>
    /// <param name="block">A bodice block, or a design of one that has not cut its front apart.</param>
    /// <param name="count">How many, 2 to 4. Usually 2.</param>
    /// <param name="spacing">From dart to dart along the edge, 1/2 to 4 in. Usually 1 in (2.5 cm).</param>
    /// <exception cref="ConstructionException">There is no bust dart, or the edge has no room for so many.</exception>
    [Pure]
    public static Block BustDartSplit(this Block block, int? count = null, Length? spacing = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.DartSplit.AsUsual()
            .WithGiven(DartSplitDesign.Count, count)
            .WithGiven(DartSplitDesign.Spacing, spacing));

    /// <summary>Splits the waist dart that points at the bust point into several of the same angle, side by side.</summary>
    /// <inheritdoc cref="BustDartSplit"/>
    [Pure]
    public static Block WaistDartSplit(this Block block, int? count = null, Length? spacing = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.DartSplit.AsUsual()
            .With(DartSplitDesign.From, BustDartDesign.WaistDart)
            .WithGiven(DartSplitDesign.Count, count)
            .WithGiven(DartSplitDesign.Spacing, spacing));

    /// <summary>Turns the dart over the shoulder blade to another edge of the back.</summary>
    /// <param name="block">A bodice block with a back shoulder dart.</param>
    /// <param name="to">The edge.</param>
    /// <param name="share">How much of its angle goes, 1 to 100 %. Usually all.</param>
    /// <param name="along">Where on the edge, from centre to neck, from neck to armhole, from shoulder to side, 5 to 95 %. Usually the middle.</param>
    /// <exception cref="ConstructionException">The back has no such dart, or it stands there already.</exception>
    [Pure]
    public static Block ShoulderDartTo(this Block block, ShoulderDartPlace to, Ratio? share = null, Ratio? along = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.ShoulderDartTurned.AsUsual()
            .With(ShoulderDartDesign.To, ShoulderDartDesign.Word(to))
            .WithGiven(ShoulderDartDesign.Share, share)
            .WithGiven(ShoulderDartDesign.Along, along));

    /// <summary>Leaves the dart over the shoulder blade out: a share of it is eased into the armhole, the rest into the shoulder seam.</summary>
    /// <param name="block">A bodice block with a back shoulder dart.</param>
    /// <param name="inArmhole">The share that the armhole takes, 0 to 100 %. Usually a quarter.</param>
    /// <exception cref="ConstructionException">The back has no such dart, or one of them would have to take more than cloth can.</exception>
    [Pure]
    public static Block ShoulderDartEased(this Block block, Ratio? inArmhole = null)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.ShoulderDartEased.AsUsual().WithGiven(ShoulderEaseDesign.InArmhole, inArmhole));

    /// <summary>Makes seams of the darts: in front from shoulder or armhole over the bust point to the waist, in the back over the shoulder blade.</summary>
    /// <remarks>Panels <c>centre back</c>, <c>side back</c>, <c>side front</c>, <c>centre front</c>. Both edges of a seam are rounded between notches 5 cm before and behind the point; what one of them is
    /// longer there is eased in, and stands in the seam plan.</remarks>
    /// <param name="block">A bodice block with a bust dart, a back shoulder dart and waist darts.</param>
    /// <param name="from">Where the seams begin.</param>
    /// <exception cref="ConstructionException">A dart is missing, or more than 6 mm would have to be eased.</exception>
    [Pure]
    public static Block Princess(this Block block, PrincessFrom from = PrincessFrom.Shoulder)
        => Guard.NotNull(block, nameof(block)).With(BuiltInDesigns.Princess.AsUsual()
            .With(PrincessDesign.From, (PrincessFrom)Guard.Choice((int)from, 2, nameof(from)) == PrincessFrom.Shoulder ? PrincessDesign.Shoulder : PrincessDesign.Armhole));

    private static DesignChoice Turned(string dart, BustDartPlace to, Ratio? share, Ratio? along, Length? standsOff) => BuiltInDesigns.DartTurned.AsUsual()
        .With(BustDartDesign.From, dart)
        .With(BustDartDesign.To, BustDartDesign.Word(to))
        .WithGiven(BustDartDesign.Share, share)
        .WithGiven(BustDartDesign.Along, along)
        .WithGiven(BustDartDesign.StandsOff, standsOff);
}
