using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>Says how a sleeve is to be drafted. Immutable: every method returns a new builder, so a chain can stop at any dot.</summary>
/// <remarks>Begin with <see cref="SleeveBlock.For(Armhole, BodyMeasurements)"/>, end with <see cref="Draft"/>. What is not said keeps the default that its method documents.</remarks>
public sealed class SleeveBlockBuilder
{
    private readonly BodyMeasurements _body;
    private readonly SleeveOptions _options;

    internal SleeveBlockBuilder(BodyMeasurements body, SleeveOptions options)
    {
        _body = body;
        _options = options;
    }

    /// <summary>Says everything by name that a builder of this method says, such as that of a block that was read from a file.</summary>
    /// <remarks>What it drafts is the block alone, without the designs of the builder.</remarks>
    /// <param name="builder">A builder of <see cref="BuiltInMethods.Sleeve"/>.</param>
    /// <exception cref="ArgumentException">It is a builder of another method.</exception>
    [Pure]
    public static SleeveBlockBuilder From(BlockBuilder builder) => Guard.NotNull(builder, nameof(builder)).Method == BuiltInMethods.Sleeve
        ? new SleeveBlockBuilder(builder.Body, SleeveSettings.OptionsOf(builder.Values))
        : throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.MethodOther, builder.Method, BuiltInMethods.Sleeve), nameof(builder));

    /// <summary>Sets the sleeve into another armhole; everything else stays as it was said.</summary>
    [Pure]
    public SleeveBlockBuilder WithArmhole(Armhole armhole) => With(_options with { Armhole = Guard.NotNull(armhole, nameof(armhole)) });

    /// <summary>Sets how close the sleeve lies to the arm; eases that are not said follow it.</summary>
    /// <param name="fit">Default <see cref="SleeveFit.Close"/>.</param>
    [Pure]
    public SleeveBlockBuilder WithFit(SleeveFit fit) => With(_options with { Fit = (SleeveFit)Guard.Choice((int)fit, 2, nameof(fit)) });

    /// <summary>Sets where the sleeve ends.</summary>
    /// <param name="length">Default <see cref="SleeveLength.Long"/>.</param>
    [Pure]
    public SleeveBlockBuilder WithLength(SleeveLength length) => With(_options with { Length = (SleeveLength)Guard.Choice((int)length, 3, nameof(length)), LengthMm = null });

    /// <summary>Sets the length from the crown to the lower edge. Shorter than the arm, the sleeve is cut off on its seams; longer, its wrist lies there.</summary>
    /// <param name="length">50 to 1,000 mm.</param>
    [Pure]
    public SleeveBlockBuilder WithLength(Length length)
        => With(_options with { LengthMm = Guard.Millimetres(length, SleeveSettings.LeastLengthMm, SleeveSettings.MostLengthMm, nameof(length)) });

    /// <summary>Sets how much the sleeve measures more than the upper arm.</summary>
    /// <param name="ease">0 to 300 mm. Default 2 in (5 cm) for a close sleeve, the least that woven cloth wants; 3 in (8 cm) for an easy one.</param>
    [Pure]
    public SleeveBlockBuilder WithUpperArmEase(Length ease) => With(_options with { WidthEaseMm = Guard.Millimetres(ease, 0, SleeveSettings.MostWidthEaseMm, nameof(ease)) });

    /// <summary>Sets how much longer the head is than the armhole, in all.</summary>
    /// <param name="ease">0 to 100 mm. Default 1 in (2.5 cm) for a close sleeve, 3/8 in (1 cm) for an easy one.</param>
    [Pure]
    public SleeveBlockBuilder WithCapEase(Length ease) => With(_options with { CapEaseMm = Guard.Millimetres(ease, 0, SleeveSettings.MostCapEaseMm, nameof(ease)) });

    /// <summary>Sets how much of the ease of the head lies in front.</summary>
    /// <param name="share">0 to 100 %. Default 45 %: the back of the arm is fuller.</param>
    [Pure]
    public SleeveBlockBuilder WithFrontShareOfCapEase(Ratio share) => With(_options with { FrontShare = Guard.Share(share, nameof(share)) });

    /// <summary>Sets the height of the cap; the width of the sleeve then follows from it and from the armhole, and the upper arm ease does not count.</summary>
    /// <param name="height">10 to 1,000 mm. Default: found for the width.</param>
    [Pure]
    public SleeveBlockBuilder WithCapHeight(Length height) => With(_options with { CapHeightMm = Guard.Millimetres(height, 10, SleeveSettings.MostLengthMm, nameof(height)) });

    /// <summary>Sets how much a long sleeve measures more than the wrist; shorter ones lie on its seams. No wider at the wrist than at the underarm.</summary>
    /// <param name="ease">0 to 600 mm. Default 2 in (5 cm) for a close sleeve, 3 in (8 cm) for an easy one.</param>
    [Pure]
    public SleeveBlockBuilder WithWristEase(Length ease) => With(_options with { WristEaseMm = Guard.Millimetres(ease, 0, SleeveSettings.MostWristEaseMm, nameof(ease)) });

    /// <summary>Leaves both underarm seams straight, which is the default.</summary>
    [Pure]
    public SleeveBlockBuilder WithStraightElbow() => With(_options with { Elbow = ElbowShaping.Straight, ElbowMm = null });

    /// <summary>Bends the sleeve forward, with a dart at the elbow. The sleeve has to reach below the elbow.</summary>
    /// <param name="intake">How wide the dart is, up to 60 mm. Default 3/4 in (2 cm). It is a quarter of the sleeve at the elbow long.</param>
    [Pure]
    public SleeveBlockBuilder WithElbowDart(Length? intake = null) => WithElbow(ElbowShaping.Dart, intake, nameof(intake));

    /// <summary>Bends the sleeve forward, the back seam eased in at the elbow. The sleeve has to reach below the elbow.</summary>
    /// <param name="ease">How much, up to 60 mm. Default 3/8 in (1 cm).</param>
    [Pure]
    public SleeveBlockBuilder WithElbowEase(Length? ease = null) => WithElbow(ElbowShaping.Eased, ease, nameof(ease));

    /// <summary>Cuts the sleeve in two, an upper and an under sleeve, both bent forward at the elbow. Their seams meet the armhole at its first notches. The sleeve has to reach below the elbow.</summary>
    /// <param name="elbowEase">How much longer the back seam of the upper sleeve is, 2 to 60 mm: the more, the more both are bent. Default 3/16 in (0.5 cm).</param>
    [Pure]
    public SleeveBlockBuilder InTwoPieces(Length? elbowEase = null) => WithElbow(ElbowShaping.TwoPiece, elbowEase, nameof(elbowEase));

    /// <summary>Drafts the sleeve and checks it.</summary>
    /// <returns>The sleeve. Its report may say that a check failed: it can still be drawn and looked at.</returns>
    /// <exception cref="ConstructionException">A measurement is missing, or no such sleeve fits into this armhole.</exception>
    [Pure]
    public SleeveBlock Draft() => SleeveMethod.Draft(_body, _options);

    private SleeveBlockBuilder WithElbow(ElbowShaping elbow, Length? amount, string parameter) => With(_options with
    {
        Elbow = elbow,
        ElbowMm = amount is { } length ? Guard.Millimetres(length, SleeveSettings.LeastElbowMm, SleeveSettings.MostElbowMm, parameter) : null,
    });

    private SleeveBlockBuilder With(SleeveOptions options) => new(_body, options);

    /// <summary>What is drafted for whom.</summary>
    public override string ToString()
        => "sleeve block for " + _body;
}
