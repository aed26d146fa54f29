using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Sizing;

/// <summary>The panels of a run, all sizes of each laid on one place. Immutable.</summary>
public sealed class SizeNest
{
    // Sizes that meet where nothing grows do not cross there; well below what a pencil shows.
    private const double PinnedMm = 0.05;

    // Each size is right by itself: what crosses on the paper is a matter of reading it, or of uneven growth.
    private static readonly Advice Crossing = Advice.Of(
        "Lines of two sizes that cross are hard to follow, and an edge that does not grow evenly may be meant otherwise.", "Lay the sizes on another place, let the lengths grow as well, or look at the sizes apart.");

    private readonly Panel[][] _panels;

    internal SizeNest(SizeRun run, StackPlace place)
    {
        Run = run;
        Place = place;
        SizedBlock first = run.Sizes[0];
        for (int i = 1; i < run.Sizes.Count; i++)
        {
            RefuseOther(run.Sizes[i - 1], run.Sizes[i]);
        }

        _panels = [.. run.Sizes.Select(size => size.Block.Panels.Select((panel, p) => panel.Transformed(place.Motion(panel, first.Block.Panels[p]))).ToArray())];
        Rules = new GradeRules([.. run.Sizes.Select(size => size.Name)], _panels);
        Report = Check();
    }

    /// <summary>The run.</summary>
    public SizeRun Run { get; }

    /// <summary>What the sizes lie on.</summary>
    public StackPlace Place { get; }

    /// <summary>How each point moves from size to size, in the axes of the first size.</summary>
    public GradeRules Rules { get; }

    /// <summary>Whether each seam walks in each size and no corner turns back from one step to the next; and, as advice, which edges of one size cross the same edge of the next away from a point that both share.</summary>
    public CheckReport Report { get; }

    /// <summary>The panels of a size, as they lie in the nest.</summary>
    /// <exception cref="ConstructionException">The run has no such size.</exception>
    [Pure]
    public IReadOnlyList<Panel> PanelsOf(string size) => _panels[Rules.IndexOf(size)];

    internal Panel[][] PanelsRaw => _panels;

    private static void RefuseOther(SizedBlock one, SizedBlock other)
    {
        string[] first = [.. Make(one)];
        string[] second = [.. Make(other)];
        if (!first.SequenceEqual(second))
        {
            throw new ConstructionException(
                DiagnosticCode.SizesMadeOtherwise, one.Name, string.Join(", ", first.Except(second)), other.Name, string.Join(", ", second.Except(first)));
        }
    }

    // What has to be alike so that point stands for point.
    private static IEnumerable<string> Make(SizedBlock size)
        => size.Block.Panels.SelectMany(panel => panel.Edges.Select(edge => FormattableString.Invariant($"{panel.Name} {edge.Name} with {edge.Darts.Count} darts"))
            .Append(FormattableString.Invariant($"{panel.Name} with {panel.InsideDarts.Count} inside darts")));

    private CheckReport Check()
    {
        var list = new CheckList();
        for (int size = 0; size < _panels.Length; size++)
        {
            string name = Run.Sizes[size].Name;
            list.Count("seams that do not walk in size " + name, "block", Run.Sizes[size].Block.Seams.Check(_panels[size]).Failures.Count(), 0);
            if (size == 0)
            {
                continue;
            }

            for (int p = 0; p < _panels[size].Length; p++)
            {
                Panel small = _panels[size - 1][p];
                Panel large = _panels[size][p];
                foreach (PanelEdge edge in small.EdgesRaw)
                {
                    int crossings = Crossings(edge, large.FindEdge(edge.Name));
                    if (crossings > 0)
                    {
                        list.Advise(Crossing, FormattableString.Invariant($"{edge.Name} of sizes {Run.Sizes[size - 1].Name} and {name} crossing"), small.Name.Text, crossings, FindingRelation.AtMost, 0);
                    }
                }

                if (size > 1)
                {
                    list.Count(FormattableString.Invariant($"corners that turn back after size {Run.Sizes[size - 1].Name}"), small.Name.Text, TurningBack(_panels[size - 2][p], small, large), 0);
                }
            }
        }

        return list.ToReport();
    }

    private static int Crossings(PanelEdge one, PanelEdge other)
    {
        Point2D[] pinned = [.. Ends(one).Zip(Ends(other), (a, b) => (a, b)).Where(pair => pair.a.DistanceMm(pair.b) < PinnedMm).Select(pair => pair.a)];
        int count = 0;
        foreach (CurvePath stretch in one.StretchesRaw)
        {
            foreach (CurvePath beside in other.StretchesRaw)
            {
                count += stretch.IntersectionsWith(beside).Points.Count(hit => !hit.IsTouching && !Array.Exists(pinned, at => at.DistanceMm(hit.Point) < PinnedMm));
            }
        }

        return count;
    }

    private static IEnumerable<Point2D> Ends(PanelEdge edge) => edge.StretchesRaw.SelectMany(stretch => new[] { stretch.Start, stretch.End });

    private static int TurningBack(Panel first, Panel second, Panel third)
    {
        int count = 0;
        for (int e = 0; e < first.EdgesRaw.Length; e++)
        {
            Vector2D before = second.EdgesRaw[e].Start - first.EdgesRaw[e].Start;
            Vector2D after = third.EdgesRaw[e].Start - second.EdgesRaw[e].Start;

            // Steps of less than that have no direction.
            count += before.LengthMm > PinnedMm && after.LengthMm > PinnedMm && before.DotMm2(after) < 0 ? 1 : 0;
        }

        return count;
    }

    /// <summary>The size run, and where it is stacked.</summary>
    public override string ToString() => Run + ", stacked on " + Place;
}
