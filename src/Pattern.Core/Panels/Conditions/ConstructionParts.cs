using System;

namespace Pattern.Core.Panels;

/// <summary>An unknown of a construction: where it begins, and its limits.</summary>
internal sealed record ConstructionUnknown<TGiven>(string Name, bool IsAngle, Func<TGiven, double> Start, Func<TGiven, double> Least, Func<TGiven, double> Most);

/// <summary>What a construction has to measure, as what it is off by.</summary>
internal sealed record ConstructionMeasure<TGiven, TDrawn>(string Name, bool IsAngle, Func<TGiven, TDrawn, double> Off);
