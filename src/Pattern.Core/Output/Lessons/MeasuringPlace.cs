using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>Where the tape lies for one measurement: in words, and as lines on the figure seen from the front and from behind.</summary>
internal sealed class MeasuringPlace(string words, CurvePath[] front, CurvePath[] back)
{
    internal string Words { get; } = words;

    internal IReadOnlyList<CurvePath> Front { get; } = front;

    internal IReadOnlyList<CurvePath> Back { get; } = back;

    /// <summary>The place of a measurement that the library knows; of one that somebody defined, none.</summary>
    internal static MeasuringPlace? Of(BodyMeasurement measurement) => MeasuringPlaces.All.TryGetValue(measurement.Term, out MeasuringPlace? place) ? place : null;
}
