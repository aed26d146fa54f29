using System.Collections.Generic;
using System.Linq;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>The values of a method's settings, in the order of the settings. What is typed inside a method is made into this only when asked for.</summary>
internal interface IMethodValues
{
    SettingValue At(int index);
}

/// <summary>Values kept one by one.</summary>
internal sealed class ListedValues(SettingValue[] values) : IMethodValues
{
    public SettingValue At(int index) => values[index];

    internal static ListedValues UsualOf(IReadOnlyList<MethodSetting> settings, LengthUnit unit) => new([.. settings.Select(setting => setting.UsualIn(unit))]);

    internal static ListedValues With(IReadOnlyList<MethodSetting> settings, IMethodValues from, int index, SettingValue value)
    {
        SettingValue[] values = Copy(settings, from);
        values[index] = value;
        return new ListedValues(values);
    }

    internal static SettingValue[] Copy(IReadOnlyList<MethodSetting> settings, IMethodValues from)
    {
        var values = new SettingValue[settings.Count];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = from.At(i);
        }

        return values;
    }
}
