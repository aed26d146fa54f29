using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>Says how a skirt block is to be drafted. Immutable: every method returns a new builder, so a chain can stop at any dot.</summary>
/// <remarks>Begin with <see cref="SkirtBlock.For"/>, end with <see cref="Draft"/>. What is not said keeps the default that its method documents.</remarks>
public sealed class SkirtBlockBuilder
{
    private readonly BodyMeasurements _body;
    private readonly SkirtOptions _options;

    internal SkirtBlockBuilder(BodyMeasurements body, SkirtOptions options)
    {
        _body = body;
        _options = options;
    }

    internal SkirtOptions Options => _options;

    /// <summary>Says everything by name that a builder of this method says, such as that of a block that was read from a file.</summary>
    /// <remarks>What it drafts is the block alone, without the designs of the builder.</remarks>
    /// <param name="builder">A builder of <see cref="BuiltInMethods.Skirt"/>.</param>
    /// <exception cref="ArgumentException">It is a builder of another method.</exception>
    /// <exception cref="ConstructionException">It was shaped by a law of somebody's own, and knows only its name.</exception>
    [Pure]
    public static SkirtBlockBuilder From(BlockBuilder builder) => Guard.NotNull(builder, nameof(builder)).Method == BuiltInMethods.Skirt
        ? new SkirtBlockBuilder(builder.Body, SkirtSettings.OptionsOf(builder.Values))
        : throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.MethodOther, builder.Method, BuiltInMethods.Skirt), nameof(builder));

    /// <summary>Looks the shaping up in this table.</summary>
    /// <remarks>Default <see cref="ShapingTable.Proportional"/>, a law that fits any body.</remarks>
    [Pure]
    public SkirtBlockBuilder ShapedBy(ShapingTable table) => With(_options with { Table = Guard.NotNull(table, nameof(table)) });

    /// <summary>Sets how much the skirt measures more than the body around the waist, in all.</summary>
    /// <param name="ease">-2 in to 8 in. Default 0: a waistband adds its own.</param>
    [Pure]
    public SkirtBlockBuilder WithWaistEase(Length ease) => With(_options with { WaistEaseMm = Inches(ease, -2, 8, nameof(ease)) });

    /// <summary>Sets how much the skirt measures more than the body around the hip, in all.</summary>
    /// <param name="ease">-4 in to 20 in. Default 1 in (2.5 cm for a body in centimetres), the least of the usual 1 to 2 in: a block is the plain fit.</param>
    [Pure]
    public SkirtBlockBuilder WithHipEase(Length ease) => With(_options with { HipEaseMm = Inches(ease, -4, 20, nameof(ease)) });

    /// <summary>Sets the length from the waist level to the hem, straight down.</summary>
    /// <param name="length">More than the lower hip level, up to 60 in. Default 24 in (60 cm), about the knee.</param>
    [Pure]
    public SkirtBlockBuilder WithLength(Length length) => With(_options with { LengthMm = Inches(length, 1, 60, nameof(length)) });

    /// <summary>Sets the three levels below the waist.</summary>
    [Pure]
    public SkirtBlockBuilder WithLevels(SkirtLevels levels) => With(_options with { Levels = Guard.NotNull(levels, nameof(levels)) });

    /// <summary>Sets how far the side of the shaped waistline is lifted, along the side seam, before truing makes front and back agree.</summary>
    /// <param name="lift">0 to 3 in. Default 1/2 in (1.2 cm): a waistline drawn level would dip over the hip bone; but never more than both sides come in together,
    /// so nothing where the waist is as large as the hip with its ease.</param>
    [Pure]
    public SkirtBlockBuilder WithSideLift(Length lift) => With(_options with { SideLiftMm = Inches(lift, 0, 3, nameof(lift)) });

    /// <summary>Sets how far the centre back of the shaped waistline is lifted; negative lowers it, as many handbooks do.</summary>
    /// <param name="lift">-2 in to 3 in. Default 1/4 in (0.6 cm), since the seat lifts the back, but never more than half of the side lift; where the sides go out to a waist that is larger
    /// than the hip, once and a half as much as the back goes out, at most 1 in.</param>
    [Pure]
    public SkirtBlockBuilder WithCentreBackLift(Length lift) => With(_options with { CentreBackLiftMm = Inches(lift, -2, 3, nameof(lift)) });

    /// <summary>Sets how far the centre front of the shaped waistline drops, whatever the shaping table says; negative lets it rise over a belly.</summary>
    /// <param name="drop">-2 in to 4 in. Default: from the shaping table.</param>
    [Pure]
    public SkirtBlockBuilder WithCentreFrontDrop(Length drop) => With(_options with { CentreFrontDropMm = Inches(drop, -2, 4, nameof(drop)) });

    /// <summary>Sets number, intake and lengths of the front darts.</summary>
    [Pure]
    public SkirtBlockBuilder WithFrontDarts(DartPlan darts) => With(_options with { FrontDarts = Guard.NotNull(darts, nameof(darts)) });

    /// <summary>Sets number, intake and lengths of the back darts.</summary>
    [Pure]
    public SkirtBlockBuilder WithBackDarts(DartPlan darts) => With(_options with { BackDarts = Guard.NotNull(darts, nameof(darts)) });

    /// <summary>Sets the widest single dart; a wider intake is split evenly over more darts.</summary>
    /// <param name="intake">1/4 in to 4 in. Default 1 1/4 in (3.2 cm): a wider dart pokes at its apex.</param>
    [Pure]
    public SkirtBlockBuilder WithLargestDart(Length intake) => With(_options with { LargestDartMm = Inches(intake, 0.25, 4, nameof(intake)) });

    /// <summary>Sets the narrowest dart worth sewing; a narrower intake goes to the side seam.</summary>
    /// <param name="intake">0 to 2 in. Default 3/8 in (1 cm).</param>
    [Pure]
    public SkirtBlockBuilder WithSmallestDart(Length intake) => With(_options with { SmallestDartMm = Inches(intake, 0, 2, nameof(intake)) });

    /// <summary>Sets the most that one side seam takes in at the waist; what is over goes back into the darts.</summary>
    /// <param name="shaping">0 to 6 in. Default 1 1/2 in (3.8 cm): more makes a bump over the hip.</param>
    [Pure]
    public SkirtBlockBuilder WithLargestSideShaping(Length shaping) => With(_options with { LargestSideShapingMm = Inches(shaping, 0, 6, nameof(shaping)) });

    /// <summary>Brings side hem, centre back hem and centre back waist in by the usual figures of the body's tape: <see cref="SkirtFit.Usual"/> or <see cref="SkirtFit.UsualMetric"/>.</summary>
    [Pure]
    public SkirtBlockBuilder Fitted() => Fitted(SkirtCustoms.Of(_body.Unit).Fit);

    /// <summary>Brings the hem, and if wanted the centre back, in.</summary>
    /// <remarks>Default <see cref="SkirtFit.Straight"/>.</remarks>
    [Pure]
    public SkirtBlockBuilder Fitted(SkirtFit fit) => With(_options with { Fit = Guard.NotNull(fit, nameof(fit)) });

    /// <summary>Chooses the waistline that the seam line follows.</summary>
    /// <remarks>Default <see cref="Waistline.Shaped"/>.</remarks>
    [Pure]
    public SkirtBlockBuilder WithWaistline(Waistline waistline)
        => With(_options with { Waistline = (Waistline)Guard.Choice((int)waistline, 3, nameof(waistline)) });

    /// <summary>Drafts the block, trues it and checks it.</summary>
    /// <returns>The block. Its report may say that a check failed: the block can still be drawn and looked at.</returns>
    /// <exception cref="ConstructionException">A measurement is missing, or this body cannot be drafted with these options.</exception>
    [Pure]
    public SkirtBlock Draft() => SkirtMethod.Draft(_body, _options);

    private SkirtBlockBuilder With(SkirtOptions options) => new(_body, options);

    // Three inches are 76.2 mm, but 3 x 25.4 is a bit less: a bound said in the other unit is within it.
    private static double Inches(Length value, double least, double most, string parameter)
    {
        const double RoundingMm = 1e-9;
        double millimetres = Guard.Millimetres(value, (least * 25.4) - RoundingMm, (most * 25.4) + RoundingMm, parameter);
        return Math.Min(Math.Max(millimetres, least * 25.4), most * 25.4);
    }

    /// <summary>What is drafted for whom.</summary>
    public override string ToString()
        => "skirt block for " + _body;
}
