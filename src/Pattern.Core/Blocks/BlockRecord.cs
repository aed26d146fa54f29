using System;
using System.Collections.Generic;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>What a draft left behind besides its panels: filled by one draft, never changed after it.</summary>
internal sealed class BlockRecord
{
    internal BlockRecord(BodyMeasurements body) => Body = body;

    internal BodyMeasurements Body { get; }

    /// <summary>Null for a block out of a file whose method nobody knows here.</summary>
    internal DraftingMethod? Method { get; init; }

    internal IMethodValues? Values { get; init; }

    /// <summary>Said already, for a block out of a file; else made from method and values.</summary>
    internal MethodDescription? Description { get; init; }

    internal IReadOnlyList<Step> Steps { get; init; } = [];

    internal IReadOnlyList<Landmark> Landmarks { get; init; } = [];

    internal IReadOnlyList<DraftedLine> SheetLines { get; init; } = [];

    /// <summary>The lines of a block out of a file, which has no sheet.</summary>
    internal BlockLine[]? ReadLines { get; init; }

    internal SeamPlan Seams { get; set; } = SeamPlan.Empty;

    /// <summary>Every check that the method promised, in order.</summary>
    internal List<Action<CheckList>> Promises { get; } = new(4);

    internal List<BlockAim> Aims { get; } = new(9);

    internal List<(LandmarkName Name, Point2D Position)> Moved { get; } = new(8);

    internal List<KeyValuePair<string, TableReading>> Readings { get; } = new(1);

    internal List<string> Remarks { get; } = [];

    internal List<AlternativePlan> Alternatives { get; } = new(1);

    /// <summary>What the method's own kind of block reads.</summary>
    internal object? Own { get; set; }
}

/// <summary>A measure of the hand draft that the panels should have too.</summary>
internal readonly struct BlockAim(string what, string place, double byHandMm, double targetMm, Func<CheckList, double> measure)
{
    internal string What { get; } = what;

    internal string Place { get; } = place;

    internal double ByHandMm { get; } = byHandMm;

    internal double TargetMm { get; } = targetMm;

    internal Func<CheckList, double> Measure { get; } = measure;
}

/// <summary>How a block would be drafted otherwise, and which edges of that are worth seeing beside it.</summary>
internal sealed class AlternativePlan(string name, Func<BlockBuilder, BlockBuilder> change, EdgeName[] edges)
{
    internal string Name { get; } = name;

    internal Func<BlockBuilder, BlockBuilder> Change { get; } = change;

    internal EdgeName[] Edges { get; } = edges;
}
