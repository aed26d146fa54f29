using System.Globalization;
using System.Linq;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Sizing;

/// <summary>The classes of EN 13402-3 (2005 text), through a secondary source.</summary>
internal static class En13402
{
    private const string Source = "EN 13402-3 (2005 text), through a secondary source";

    // Centimetres; each class in the middle of its limits.
    private static readonly (int Bust, int Waist, int Hip)[] WomensGirths =
    [
        (76, 60, 84), (80, 64, 88), (84, 68, 92), (88, 72, 96), (92, 76, 100), (96, 80, 104), (100, 84, 108), (104, 88, 112), (110, 94, 117), (116, 100, 122), (122, 106, 127), (128, 112, 132),
    ];

    internal static SizeTable Women() => SizeTable.Of("EN 13402-3, women", Source, WomensGirths.Select((girths, i) => BodyMeasurements.In(LengthUnit.Centimeter)
        .Named((i + 1).ToString(CultureInfo.InvariantCulture))
        .With(BodyMeasurement.BustGirth, Length.FromCentimeters(girths.Bust))
        .With(BodyMeasurement.WaistGirth, Length.FromCentimeters(girths.Waist))
        .With(BodyMeasurement.HipGirth, Length.FromCentimeters(girths.Hip))));
}
