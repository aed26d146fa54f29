using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>Says how a block is to be drafted. Immutable: every method returns a new builder, so a chain can stop at any dot.</summary>
/// <remarks>Begin with <see cref="DraftingMethod.For"/>, end with <see cref="Draft"/>. What is not set is as usual.</remarks>
public sealed class BlockBuilder
{
    internal BlockBuilder(DraftingMethod method, BodyMeasurements body, IMethodValues values)
    {
        Method = method;
        Body = body;
        Values = values;
    }

    /// <summary>The method that drafts.</summary>
    public DraftingMethod Method { get; }

    /// <summary>The body that the block is to fit.</summary>
    public BodyMeasurements Body { get; }

    internal IMethodValues Values { get; }

    /// <summary>Sets something.</summary>
    /// <param name="setting">One of the method's settings.</param>
    /// <param name="value">Within what the setting allows.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not allowed.</exception>
    /// <exception cref="ConstructionException">The method has no such setting.</exception>
    [Pure]
    public BlockBuilder With<T>(MethodSetting<T> setting, T value) => With(Guard.NotNull(setting, nameof(setting)), setting.Value(value));

    /// <summary>Sets something as usual again.</summary>
    /// <param name="setting">One of the method's settings.</param>
    /// <exception cref="ConstructionException">The method has no such setting.</exception>
    [Pure]
    public BlockBuilder AsUsual(MethodSetting setting) => With(Guard.NotNull(setting, nameof(setting)), setting.UsualIn(Body.Unit));

    /// <summary>Drafts the block, and checks it.</summary>
    /// <returns>The block. Its report may say that a check failed: the block can still be drawn and looked at.</returns>
    /// <exception cref="ConstructionException">A measurement is missing, or this body cannot be drafted with these settings.</exception>
    [Pure]
    public Block Draft() => Method.Draft(Body, Values);

    internal BlockBuilder With(MethodSetting setting, SettingValue value)
        => new(Method, Body, ListedValues.With(Method.Settings, Values, Method.IndexOf(setting), value));
}
