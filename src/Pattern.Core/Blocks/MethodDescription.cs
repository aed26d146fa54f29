using System.Collections.Generic;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>How a block was drafted: by which method, in which version, with which settings, and what its tables said.</summary>
public sealed class MethodDescription : ProcedureDescription
{
    internal MethodDescription(string name, string version, SettingValue[] settings, IEnumerable<string> printed, IReadOnlyList<KeyValuePair<string, TableReading>> readings)
        : base(name, version, settings, printed) => Readings = readings;

    /// <summary>What tables and laws said for this body, each by what it was read for, such as <c>shaping</c>.</summary>
    public IReadOnlyList<KeyValuePair<string, TableReading>> Readings { get; }

    internal static MethodDescription Of(DraftingMethod method, IMethodValues values, LengthUnit unit, IReadOnlyList<KeyValuePair<string, TableReading>> readings)
    {
        SettingValue[] listed = ListedValues.Copy(method.Settings, values);
        return new MethodDescription(method.Name, method.Version, listed, Printed(method.Settings, listed, unit), readings);
    }
}
