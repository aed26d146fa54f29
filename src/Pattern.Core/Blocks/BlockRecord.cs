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
    /// <summary>The promise that the seam plan fits.</summary>
    internal const string SeamsPromise = "seams";

    internal BlockRecord(BodyMeasurements body) => Body = body;

    internal BodyMeasurements Body { get; }

    /// <summary>Null for a block out of a file whose method nobody knows here.</summary>
    internal DraftingMethod? Method { get; init; }

    internal IMethodValues? Values { get; init; }

    /// <summary>Said already, for a block out of a file; else made from method and values.</summary>
    internal MethodDescription? Description { get; init; }

    /// <summary>What it was drafted on; null for a block out of a file.</summary>
    internal DraftingSheet? Sheet { get; init; }

    internal IReadOnlyList<Step> Steps => Sheet?.Steps ?? [];

    internal IReadOnlyList<Landmark> Landmarks { get; set; } = [];

    internal IReadOnlyList<DraftedLine> SheetLines { get; init; } = [];

    /// <summary>The lines of a block whose lines are not those of its sheet: out of a file, or changed by a design.</summary>
    internal BlockLine[]? ReadLines { get; set; }

    internal SeamPlan Seams { get; set; } = SeamPlan.Empty;

    /// <summary>How often each panel stands in the garment, in the order of the panels.</summary>
    internal int[] Times { get; set; } = [];

    /// <summary>Panels as they are cut, where that differs from how they are sewn.</summary>
    internal List<(Panel Sewn, Panel Cut, BlockLine[] Folds)> AsCut { get; } = [];

    /// <summary>Panels whose darts were turned.</summary>
    internal List<TurnedPanel> Turned { get; } = [];

    /// <summary>The designs that changed what was drafted, in order.</summary>
    internal DesignDescription[] Designs { get; set; } = [];

    /// <summary>Every check that the method promised, in order.</summary>
    internal List<BlockPromise> Promises { get; } = new(8);

    internal List<BlockAim> Aims { get; } = new(9);

    internal List<(LandmarkName Name, Point2D Position)> Moved { get; } = new(8);

    internal List<KeyValuePair<string, TableReading>> Readings { get; } = new(1);

    internal List<string> Remarks { get; } = [];

    internal List<AlternativePlan> Alternatives { get; } = new(1);

    /// <summary>What the method's own kind of block reads.</summary>
    internal object? Own { get; set; }
}

/// <summary>A panel whose darts were turned: as it is sewn, as it was turned, and as it was before the first turn.</summary>
/// <remarks>Turned, each dart reaches to the point that it turns about, and no line is trued. Another turn goes on from there, so that turning a dart back restores the panel.</remarks>
internal sealed record TurnedPanel(Panel Sewn, Panel Full, Panel Drafted);

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
