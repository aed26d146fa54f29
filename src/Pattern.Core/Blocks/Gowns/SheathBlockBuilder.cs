using System.Diagnostics.Contracts;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>Says how a sheath block is to be drafted. Immutable: every method returns a new builder, so a chain can stop at any dot.</summary>
/// <remarks>Begin with <see cref="SheathBlock.For"/>, end with <see cref="Draft"/>. What is not said keeps the default that its method documents.</remarks>
public sealed class SheathBlockBuilder
{
    private readonly BlockBuilder _builder;

    internal SheathBlockBuilder(BlockBuilder builder) => _builder = builder;

    /// <inheritdoc cref="BodiceBlockBuilder.WithBustEase"/>
    [Pure]
    public SheathBlockBuilder WithBustEase(Length ease) => new(_builder.With(BodiceSettings.BustEase, ease));

    /// <summary>Sets how much the sheath measures more than the body around the waist, in all.</summary>
    /// <param name="ease">-1 in to 12 in. Default 1 in (2.5 cm), the more of the 3/4 to 1 in that a costume text gives a dress.</param>
    [Pure]
    public SheathBlockBuilder WithWaistEase(Length ease) => new(_builder.With(BodiceSettings.WaistEase, ease));

    /// <summary>Sets how much the sheath measures more than the body around the hip, in all.</summary>
    /// <param name="ease">-4 in to 20 in. Default 1 in (2.5 cm), as for a skirt block.</param>
    [Pure]
    public SheathBlockBuilder WithSkirtEase(Length ease) => new(_builder.With(GownSettings.SkirtEase, ease));

    /// <summary>Sets the length from the waist to the hem, straight down.</summary>
    /// <param name="length">10 to 60 in. Default 24 in (60 cm), about the knee.</param>
    [Pure]
    public SheathBlockBuilder WithSkirtLength(Length length) => new(_builder.With(GownSettings.SkirtLength, length));

    /// <summary>Sets how much longer the head of the sleeve is than the armhole.</summary>
    /// <param name="ease">0 to 3 in. Default as for a sleeve block.</param>
    [Pure]
    public SheathBlockBuilder WithCapEase(Length ease) => new(_builder.With(GownSettings.CapEase, ease));

    /// <summary>Leaves the sleeves out. Default: they are set in.</summary>
    [Pure]
    public SheathBlockBuilder WithoutSleeves() => new(_builder.With(GownSettings.Sleeves, GownSettings.None));

    /// <summary>The same as a builder of the method, with every setting by its name, those of the bodice among them.</summary>
    [Pure]
    public BlockBuilder ToBlockBuilder() => _builder;

    /// <summary>Drafts the sheath, trues it and checks it.</summary>
    /// <returns>The block. Its report may say that a check failed: the block can still be drawn and looked at.</returns>
    /// <exception cref="Diagnostics.ConstructionException">Bust or waist girth is missing, or this body cannot be drafted with these settings.</exception>
    [Pure]
    public SheathBlock Draft() => (SheathBlock)_builder.Draft();

    /// <summary>What is drafted for whom.</summary>
    public override string ToString()
        => _builder.ToString();
}
