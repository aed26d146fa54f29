using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>Says how a block is to be drafted. Immutable: every method returns a new builder, so a chain can stop at any dot.</summary>
/// <remarks>Begin with <see cref="DraftingMethod.For"/>, end with <see cref="Draft"/>. What is not set is as usual.</remarks>
public sealed class BlockBuilder
{
    private readonly DesignChoice[] _designs;

    internal BlockBuilder(DraftingMethod method, BodyMeasurements body, IMethodValues values, params DesignChoice[] designs)
    {
        _designs = designs;
        Method = method;
        Body = body;
        Values = values;
    }

    /// <summary>The method that drafts.</summary>
    public DraftingMethod Method { get; }

    /// <summary>The designs that are made of the drafted block, in order.</summary>
    public IReadOnlyList<DesignChoice> Designs => _designs;

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
    public Block Draft() => _designs.Aggregate(Method.Draft(Body, Values), (block, design) => block.With(design));

    /// <summary>Drafts the same for another body: settings and designs stay as they are said here.</summary>
    /// <param name="body">The other body.</param>
    [Pure]
    public BlockBuilder For(BodyMeasurements body) => new(Method, Guard.NotNull(body, nameof(body)), Values, _designs);

    /// <summary>Adds a design, to be made after the others.</summary>
    /// <param name="design">The design, with what was chosen for it.</param>
    [Pure]
    public BlockBuilder With(DesignChoice design) => new(Method, Body, Values, [.. _designs, Guard.NotNull(design, nameof(design))]);

    /// <summary>Leaves all designs out: what is drafted is the block alone.</summary>
    [Pure]
    public BlockBuilder WithoutDesigns() => new(Method, Body, Values);

    /// <summary>The same with another choice for one of its designs.</summary>
    internal BlockBuilder WithDesign(int place, DesignChoice design)
    {
        DesignChoice[] designs = [.. _designs];
        designs[place] = design;
        return new BlockBuilder(Method, Body, Values, designs);
    }

    internal BlockBuilder With(MethodSetting setting, SettingValue value)
        => new(Method, Body, ListedValues.With(Method.Settings, Values, Method.SettingsRaw.IndexOf(setting), value), _designs);

    /// <summary>Method, designs and body.</summary>
    public override string ToString()
        => Method + string.Concat(_designs.Select(design => ", " + design.Design.Name)) + " for " + Body;
}
