using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>Says how a bodice block is to be drafted. Immutable: every method returns a new builder, so a chain can stop at any dot.</summary>
/// <remarks>Begin with <see cref="BodiceBlock.For"/>, end with <see cref="Draft"/>. What is not said keeps the default that its method documents.</remarks>
public sealed class BodiceBlockBuilder
{
    private readonly BlockBuilder _builder;

    internal BodiceBlockBuilder(BlockBuilder builder) => _builder = builder;

    /// <summary>Sets how much the bodice measures more than the body around the bust, in all, at the armhole line with the bust dart folded.</summary>
    /// <param name="ease">0 to 12 in. Default 3 in (7.5 cm), room to breathe and to reach in woven cloth: between the 1 1/2 to 2 in that a costume text gives a bodice and
    /// the 4 in of a handbook's block (from memory); a textbook's draft measures 3 1/4 in.</param>
    [Pure]
    public BodiceBlockBuilder WithBustEase(Length ease) => new(_builder.With(BodiceSettings.BustEase, ease));

    /// <summary>Sets how much the bodice measures more than the body around the waist, in all.</summary>
    /// <param name="ease">-1 in to 12 in. Default 1 in (2.5 cm), the more of the 3/4 to 1 in that a costume text gives a dress.</param>
    [Pure]
    public BodiceBlockBuilder WithWaistEase(Length ease) => new(_builder.With(BodiceSettings.WaistEase, ease));

    /// <summary>Sets how far the armhole lies below the armpit.</summary>
    /// <param name="ease">-1 in to 4 in. Default 3/8 in (1 cm), of the usual 1/4 to 1/2 in: the higher it lies, the better the arm lifts.</param>
    [Pure]
    public BodiceBlockBuilder WithArmholeLoweredBy(Length ease) => new(_builder.With(BodiceSettings.ScyeEase, ease));

    /// <summary>Sets how the shoulder seam slopes: the back by 1.5 degrees more, the front by as much less.</summary>
    /// <param name="slope">5 to 35 degrees. Default 18.5: a drop of 1 1/2 in on a shoulder of 4 3/4 in, the normal one of a school book of 1916; its sloping one of 2 in is 25.</param>
    [Pure]
    public BodiceBlockBuilder WithShoulderSlope(Angle slope) => new(_builder.With(BodiceSettings.ShoulderSlope, slope));

    /// <summary>Sets how the back shoulder is shaped.</summary>
    /// <param name="shoulder">Default <see cref="BackShoulder.Dart"/>.</param>
    [Pure]
    public BodiceBlockBuilder WithBackShoulder(BackShoulder shoulder) => new(_builder.With(
        BodiceSettings.BackShoulder, Guard.Choice((int)shoulder, 2, nameof(shoulder)) == (int)BackShoulder.Dart ? BodiceSettings.Dart : BodiceSettings.Ease));

    /// <summary>Sets how much wider half the front is than half the back, at the armhole line.</summary>
    /// <param name="wider">-2 in to 3 in. Default 3/8 in (1 cm): the bust needs the room in front, and the seam does not show from there.</param>
    [Pure]
    public BodiceBlockBuilder WithFrontWider(Length wider) => new(_builder.With(BodiceSettings.FrontWider, wider));

    /// <summary>Sets how far the darts of the front end before the bust point.</summary>
    /// <param name="bustDart">0 to 3 in. Default a thirtieth of the bust girth: of the usual 1 to 1 1/2 in, the more for the larger bust.</param>
    /// <param name="waistDart">0 to 3 in. Default a forty-fifth of the bust girth, of the usual 1/2 to 1 in.</param>
    [Pure]
    public BodiceBlockBuilder WithDartsStandingOff(Length bustDart, Length waistDart)
        => new(_builder.With(BodiceSettings.BustDartStandsOff, bustDart).With(BodiceSettings.WaistDartStandsOff, waistDart));

    /// <summary>The same as a builder of the method, with every setting by its name.</summary>
    [Pure]
    public BlockBuilder ToBlockBuilder() => _builder;

    /// <summary>Drafts the block, trues it and checks it.</summary>
    /// <returns>The block. Its report may say that a check failed: the block can still be drawn and looked at.</returns>
    /// <exception cref="ConstructionException">Bust or waist girth is missing, or this body cannot be drafted with these settings.</exception>
    [Pure]
    public BodiceBlock Draft() => (BodiceBlock)_builder.Draft();

    /// <summary>What is drafted for whom.</summary>
    public override string ToString()
        => _builder.ToString();
}
