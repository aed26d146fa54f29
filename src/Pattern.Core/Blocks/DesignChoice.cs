using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>A design with what somebody chose for it. Immutable.</summary>
public sealed class DesignChoice
{
    private readonly SettingValue?[] _chosen;

    internal DesignChoice(BlockDesign design, SettingValue?[] chosen)
    {
        Design = design;
        _chosen = chosen;
    }

    /// <summary>The design.</summary>
    public BlockDesign Design { get; }

    /// <summary>Chooses the value of a setting; what is not chosen is as usual.</summary>
    /// <param name="setting">One of the design's settings.</param>
    /// <param name="value">Within what the setting allows.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not allowed.</exception>
    /// <exception cref="ConstructionException">The design has no such setting.</exception>
    [Pure]
    public DesignChoice With<T>(MethodSetting<T> setting, T value)
    {
        SettingValue?[] chosen = [.. _chosen];
        chosen[Design.SettingsRaw.IndexOf(Guard.NotNull(setting, nameof(setting)))] = setting.Value(value);
        return new DesignChoice(Design, chosen);
    }

    internal DesignChoice WithValue(int index, SettingValue value)
    {
        SettingValue?[] chosen = [.. _chosen];
        chosen[index] = value;
        return new DesignChoice(Design, chosen);
    }

    /// <summary>The same where a value is given; as usual where it is not.</summary>
    internal DesignChoice WithGiven<T>(MethodSetting<T> setting, T? value)
        where T : struct
        => value is { } given ? With(setting, given) : this;

    /// <inheritdoc cref="WithGiven{T}(MethodSetting{T}, T?)"/>
    internal DesignChoice WithGiven(MethodSetting<string> setting, string? value) => value is null ? this : With(setting, value);

    /// <summary>The design.</summary>
    public override string ToString() => Design.ToString();

    internal SettingValue[] ValuesIn(LengthUnit unit)
    {
        var values = new SettingValue[_chosen.Length];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = _chosen[i] ?? Design.Settings[i].UsualIn(unit);
        }

        return values;
    }
}
