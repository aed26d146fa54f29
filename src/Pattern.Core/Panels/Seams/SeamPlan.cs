using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Panels;

/// <summary>Which edges of a garment are sewn to which, and with which ease. Immutable, and apart from the panels, so that it can be held against them after every change.</summary>
/// <example><code>
/// Panel wider = block.Front.TrueEdge(EdgeName.Waist).Panel;
/// CheckReport report = block.Seams.Check(block.Back, wider);
/// </code></example>
public sealed partial class SeamPlan
{
    private readonly Seam[] _seams;

    private SeamPlan(Seam[] seams) => _seams = seams;

    /// <summary>A plan without seams.</summary>
    public static SeamPlan Empty { get; } = new([]);

    /// <summary>The seams, in the order in which they were added.</summary>
    public IReadOnlyList<Seam> Seams => _seams;

    /// <summary>Makes a plan.</summary>
    public static SeamPlan Of(params Seam[] seams) => new([.. Guard.NotNull(seams, nameof(seams)).Select(s => Guard.NotNull(s, nameof(seams)))]);

    /// <summary>Adds a seam.</summary>
    [Pure]
    public SeamPlan With(Seam seam) => new([.. _seams, Guard.NotNull(seam, nameof(seam))]);

    /// <summary>Leaves out every seam that an edge is sewn in.</summary>
    [Pure]
    public SeamPlan Without(EdgeOf edge) => new([.. _seams.Where(s => s.First != edge && s.Second != edge)]);

    /// <summary>Says that an edge has another name now, or that another panel carries it.</summary>
    /// <exception cref="ArgumentException">A seam would sew an edge to itself.</exception>
    [Pure]
    public SeamPlan Renamed(EdgeOf old, EdgeOf now) => new([.. _seams.Select(s => s.First == old || s.Second == old ? s.With(old, now) : s)]);

    /// <summary>The seams that an edge is sewn in.</summary>
    [Pure]
    public IEnumerable<Seam> SeamsOf(EdgeOf edge) => _seams.Where(s => s.First == edge || s.Second == edge);

    /// <summary>Walks every seam, in the order of the plan.</summary>
    /// <exception cref="ConstructionException">A panel, edge or mark of a seam is missing.</exception>
    [Pure]
    public IReadOnlyList<SeamWalk> Walk(params Panel[] panels) => [.. _seams.Select(s => s.Walk(panels))];

    /// <summary>Holds the plan against panels: every edge is there, notches pair, and each stretch has the ease asked for.</summary>
    /// <remarks>Throws nothing for what does not fit: after a change that took an edge away, or a plan that sews an edge twice, the report says so.</remarks>
    /// <param name="panels">The panels that carry the edges; others may be among them.</param>
    [Pure]
    public CheckReport Check(params Panel[] panels)
    {
        var list = new CheckList(4 * (_seams.Length + 1));
        Check(list, Guard.NotNull(panels, nameof(panels)));
        return list.ToReport();
    }

    internal void Check(CheckList list, Panel[] panels)
    {
        List<SewnPart>? sewn = _seams.Length > 1 ? new List<SewnPart>(2 * _seams.Length) : null;
        foreach (Seam seam in _seams)
        {
            SeamWalk? walk = Check(list, seam, panels);
            if (sewn is not null && walk is not null)
            {
                CheckSewnOnce(list, seam, seam.First, walk.First, sewn);
                if (!seam.IsToMirrorImage)
                {
                    CheckSewnOnce(list, seam, seam.Second, walk.Second, sewn);
                }
            }
        }
    }

    // Cloth that is sewn in one seam cannot be sewn in another; what meets at a mark does not overlap.
    private static void CheckSewnOnce(CheckList list, Seam seam, EdgeOf edge, WalkSide side, List<SewnPart> sewn)
    {
        double from = side.FromMm;
        double to = from + side.LengthMm;
        double twice = 0;
        foreach (SewnPart part in sewn)
        {
            twice += part.Edge == edge ? Math.Max(0, Math.Min(to, part.ToMm) - Math.Max(from, part.FromMm)) : 0;
        }

        sewn.Add(new SewnPart(edge, from, to));
        if (twice > CheckList.ToleranceMm)
        {
            list.Length(seam.Name + " sewn to another edge already", edge.PanelName.Text, twice, 0);
        }
    }

    /// <summary>Checks one seam; null where it could not be walked.</summary>
    private static SeamWalk? Check(CheckList list, Seam seam, Panel[] panels)
    {
        bool hasFirst = WalkSide.TryFind(seam.First, panels, out Panel? first, out PanelEdge? firstEdge);
        bool hasSecond = WalkSide.TryFind(seam.Second, panels, out Panel? second, out PanelEdge? secondEdge);
        if (!hasFirst || !hasSecond)
        {
            list.Count(seam.Name + " edges on the panels", seam.Where, (hasFirst ? 1 : 0) + (hasSecond ? 1 : 0), 2);
            return null;
        }

        if (SeamWalk.Make(seam, first!, firstEdge!, second!, secondEdge!) is not { } walk)
        {
            list.Count(seam.Name + " marks on the edges", seam.Where, 0, 1);
            return null;
        }

        if (seam.IsToMirrorImage && seam.EaseMm == 0)
        {
            // Cut from one drawing, both halves agree whatever they are.
            return walk;
        }

        list.Count(seam.Names.Notches, seam.Where, walk.SecondNotchCount, walk.FirstNotchCount);
        if (seam.StretchNames.Count > 0)
        {
            list.Count(seam.Names.Stretches, seam.Where, walk.Stretches.Count, seam.StretchNames.Count);
        }

        for (int i = 0; i < walk.Stretches.Count; i++)
        {
            WalkedStretch stretch = walk.Stretches[i];
            list.Length(seam.Names.Of(i, stretch.Name, walk.Stretches.Count), seam.Where, stretch.FirstMm, stretch.SecondMm + stretch.EaseAskedMm);
        }

        return walk;
    }

    private readonly record struct SewnPart(EdgeOf Edge, double FromMm, double ToMm);

    /// <summary>The seams, by what they join.</summary>
    public override string ToString()
        => string.Join("; ", _seams.Select(seam => seam.ToString()));
}
