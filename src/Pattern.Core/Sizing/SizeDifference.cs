using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Sizing;

/// <summary>One measurement of a body beside that of a size.</summary>
/// <param name="Measurement">Which.</param>
/// <param name="OfBody">What the body measures.</param>
/// <param name="OfSize">What the size is cut for.</param>
public sealed record SizeDifference(BodyMeasurement Measurement, Length OfBody, Length OfSize)
{
    /// <summary>What the body has more than the size; negative where it has less.</summary>
    public Length Off => OfBody - OfSize;

    /// <summary>Both, and by how much they differ, in centimetres.</summary>
    public override string ToString() => System.FormattableString.Invariant(
        $"{Measurement.Term} {OfBody.Centimeters:0.0} cm, size {OfSize.Centimeters:0.0} cm, {Off.Centimeters:+0.0;-0.0;0.0} cm");
}
