using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>What one measures on a finished block: edges as sewn, darts, and what its checks measure across panels.</summary>
internal static class FinishedDimensions
{
    private const string WholeBlock = "block";

    /// <summary>Every dimension with its name, each name once: <c>back waist</c>, <c>back waist dart 1</c>, <c>back waist dart 1 length</c>, <c>closed waist all around</c>.</summary>
    internal static IReadOnlyList<(string Name, double Mm)> Of(Block block)
    {
        var names = new HashSet<string>();
        return
        [
            .. block.Panels.SelectMany(OfPanel)
                .Concat(block.Report.Findings
                    .Where(finding => finding is { Advice: null, Kind: FindingKind.Length, Relation: FindingRelation.Equal, Place: WholeBlock } && finding.RawTarget != 0 && !double.IsNaN(finding.RawMeasured))
                    .Select(finding => (finding.Check, finding.RawMeasured)))
                .Where(dimension => names.Add(dimension.Item1)),
        ];
    }

    private static IEnumerable<(string Name, double Mm)> OfPanel(Panel panel)
    {
        foreach (PanelEdge edge in panel.Edges)
        {
            yield return (EdgeOf.Panel(panel.Name, edge.Name).ToString(), edge.SewnLengthMm());
            foreach (Dart dart in edge.Darts)
            {
                string name = new DartOf(panel.Name, dart.Name).ToString();
                yield return (name, dart.IntakeMm);
                yield return (name + " length", dart.LengthMm);
            }
        }
    }
}
