using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using UnitsNet.Units;

namespace Pattern.Core.Pdf.Tests;

/// <summary>What the tests print.</summary>
internal static class Skirts
{
    internal static Drawing Rosalind { get; } = Draw("Rosalind");

    internal static Drawing Draw(string name) => SkirtBlock.For(
        BodyMeasurements.In(LengthUnit.Inch).Named(name).With(BodyMeasurement.WaistGirth, "29 1/2").With(BodyMeasurement.HipGirth, "39 3/4")).Draft().Draw();
}
