using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Globalization;
using System.Linq;
using System.Text;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Sizing;

/// <summary>How the points of panels move from size to size, taken from a nest of drafted sizes, to be applied to other panels. Immutable.</summary>
/// <remarks>Corners, dart points and joints of an edge move as they do in the nest; what lies between two of them moves in proportion along the edge. The ends of a curve keep their directions. Notches keep their part
/// of the edge. A panel to be graded has edges named as those of the nest, and lies as the nest does: turn or mirror it first.</remarks>
/// <example><code>
/// SizeRun run = SizeRun.Of(SizeTable.En13402Women.Between("3", "6"), body => SkirtBlock.For(body).Draft());
/// GradeRules rules = run.StackedOn(StackPlace.Corner(EdgeName.Centre, EdgeName.Hem)).Rules;
/// Panel larger = rules.Grade(run.Find("4").FindPanel(PanelName.Front), "4", "5");
/// </code></example>
public sealed class GradeRules
{
    private readonly string[] _sizes;
    private readonly Panel[][] _panels;

    internal GradeRules(string[] sizes, Panel[][] panels)
    {
        _sizes = sizes;
        _panels = panels;
        Rules = [.. Enumerable.Range(0, panels[0].Length).SelectMany(RulesOf)];
    }

    /// <summary>The names of the sizes, in order.</summary>
    public IReadOnlyList<string> Sizes => _sizes;

    /// <summary>The rules of all points, panel by panel.</summary>
    public IReadOnlyList<GradeRule> Rules { get; }

    /// <summary>Grades a panel from one size to another, step by step, by the rules of the panel of its name.</summary>
    /// <param name="panel">The panel in the first size: of this run, a design of it, or traced by hand.</param>
    /// <param name="from">The size that it is.</param>
    /// <param name="to">The size that it shall be; a smaller one is the exact way back.</param>
    /// <exception cref="ConstructionException">A size is unknown, no panel of the nest has this name, the panel is mirrored against it, or the graded outline would cross itself.</exception>
    [Pure]
    public Panel Grade(Panel panel, string from, string to)
    {
        Guard.NotNull(panel, nameof(panel));
        int at = IndexOf(from);
        int end = IndexOf(to);
        int p = Array.FindIndex(_panels[0], one => one.Name == panel.Name);
        if (p < 0)
        {
            throw new ConstructionException(DiagnosticCode.GradePanelUnknown, panel.Name, string.Join(", ", _panels[0].Select(one => one.Name.Text)));
        }

        if (panel.RunsCounterClockwise != _panels[at][p].RunsCounterClockwise)
        {
            throw new ConstructionException(DiagnosticCode.GradePanelMirrored, panel.Name);
        }

        Panel graded = panel;
        for (; at < end; at++)
        {
            graded = GradeStep.Up(graded, _panels[at][p], _panels[at + 1][p]);
        }

        for (; at > end; at--)
        {
            graded = GradeStep.Down(graded, _panels[at - 1][p], _panels[at][p]);
        }

        return graded;
    }

    /// <summary>Grades one size of the run to all others and holds each edge against the same edge as drafted: where grading lies.</summary>
    /// <param name="size">The size to grade from.</param>
    /// <returns>A finding for each edge of each panel and size: how long it is graded, and drafted as its target. A cutter lets 1/16 in pass (<see cref="Finding.PassedByHand"/>).</returns>
    /// <exception cref="ConstructionException">The size is unknown.</exception>
    [Pure]
    public IReadOnlyList<Finding> AgainstDrafted(string size)
    {
        var list = new CheckList();
        int from = IndexOf(size);
        for (int to = 0; to < _sizes.Length; to++)
        {
            for (int p = 0; p < _panels[to].Length && to != from; p++)
            {
                Panel graded = Grade(_panels[from][p], size, _sizes[to]);
                foreach (PanelEdge drafted in _panels[to][p].EdgesRaw)
                {
                    list.Length(FormattableString.Invariant($"{drafted.Name}, size {size} graded to {_sizes[to]}"), graded.Name.Text, graded.FindEdge(drafted.Name).SewnLengthMm(), drafted.SewnLengthMm());
                }
            }
        }

        return list.ToReport().Findings;
    }

    /// <summary>The table of the rules as comma-separated text, millimetres across and up for each step.</summary>
    [Pure]
    public string ToCsv()
    {
        var text = new StringBuilder("panel,point");
        for (int i = 1; i < _sizes.Length; i++)
        {
            string step = _sizes[i - 1] + " to " + _sizes[i];
            text.Append(',').Append(Cell(step + " across_mm")).Append(',').Append(Cell(step + " up_mm"));
        }

        foreach (GradeRule rule in Rules)
        {
            text.Append('\n').Append(Cell(rule.Panel.Text)).Append(',').Append(Cell(rule.Point));
            foreach (Vector2D move in rule.Moves)
            {
                text.Append(',').Append(Number(move.XMm)).Append(',').Append(Number(move.YMm));
            }
        }

        return text.Append('\n').ToString();
    }

    /// <summary>How many sizes and points.</summary>
    public override string ToString() => FormattableString.Invariant($"{Rules.Count} points in {_sizes.Length} sizes, {_sizes[0]} to {_sizes[_sizes.Length - 1]}");

    internal int IndexOf(string size)
    {
        int index = Array.IndexOf(_sizes, Guard.NotNull(size, nameof(size)));
        return index >= 0 ? index : throw SizeRun.Unknown(size, _sizes);
    }

    private static string Cell(string text) => text.IndexOfAny([',', '"', '\n', '\r']) < 0 ? text : "\"" + text.Replace("\"", "\"\"") + "\"";

    private static string Number(double mm) => (Math.Round(mm, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture);

    private IEnumerable<GradeRule> RulesOf(int p)
    {
        Panel first = _panels[0][p];
        GradeRule Rule(string point, Func<Panel, Point2D> at)
            => new(first.Name, point, [.. Enumerable.Range(1, _sizes.Length - 1).Select(k => at(_panels[k][p]) - at(_panels[k - 1][p]))]);

        for (int e = 0; e < first.EdgesRaw.Length; e++)
        {
            int edge = e;
            EdgeName name = first.EdgesRaw[e].Name;
            yield return Rule($"where {first.Neighbour(name, Toward.Start)} meets {name}", panel => panel.EdgesRaw[edge].Start);
            for (int d = 0; d < first.EdgesRaw[e].DartsRaw.Length; d++)
            {
                int dart = d;
                yield return Rule($"{first.EdgesRaw[e].DartsRaw[d].Name}, start leg", panel => panel.EdgesRaw[edge].DartsRaw[dart].StartLeg);
                yield return Rule($"{first.EdgesRaw[e].DartsRaw[d].Name}, apex", panel => panel.EdgesRaw[edge].DartsRaw[dart].Apex);
                yield return Rule($"{first.EdgesRaw[e].DartsRaw[d].Name}, end leg", panel => panel.EdgesRaw[edge].DartsRaw[dart].EndLeg);
            }
        }

        foreach (Landmark landmark in first.Landmarks)
        {
            if (_panels.All(size => GradeStep.TryFind(size[p], landmark.Name, out _)))
            {
                yield return Rule(landmark.Name.ToString(), panel => GradeStep.TryFind(panel, landmark.Name, out Point2D at) ? at : default);
            }
        }
    }
}
