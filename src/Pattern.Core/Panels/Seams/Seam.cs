using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>Two edges that will be sewn to each other, and how much longer the first one is to be. Names edges, not shapes, so it outlives every change
/// to the panels. Immutable.</summary>
/// <remarks>What is not said keeps its default: no ease, both edges over their whole length, the run found from how the panels lie.</remarks>
/// <example><code>
/// Seam shoulder = Seam.Between(EdgeOf.Panel(PanelName.Back, EdgeName.Shoulder), EdgeOf.Panel(PanelName.Front, EdgeName.Shoulder))
///     .Named("shoulder")
///     .WithEase(Tape.Inches("3/8"));
/// </code></example>
public sealed partial class Seam
{
    private readonly string[] _stretchNames;

    private Seam(EdgeOf first, EdgeOf second)
    {
        First = first;
        Second = second;
        Place = first + " to " + (first == second ? "its mirror image" : second.ToString());
        Name = Place;
        _stretchNames = [];
        Names = new SeamNames(Name, _stretchNames);
        FirstTo = SeamMark.End;
        SecondTo = SeamMark.End;
    }

    private Seam(Seam from, string? name, string[] stretchNames)
    {
        First = from.First;
        Second = from.Second;
        Place = from.Place;
        Name = name ?? from.Place;
        _stretchNames = stretchNames;
        Names = new SeamNames(Name, stretchNames);
        Run = from.Run;
        EaseMm = from.EaseMm;
        EaseSpan = from.EaseSpan;
        FirstFrom = from.FirstFrom;
        FirstTo = from.FirstTo;
        SecondFrom = from.SecondFrom;
        SecondTo = from.SecondTo;
    }

    /// <summary>One edge. The seam is walked in its order.</summary>
    public EdgeOf First { get; }

    /// <summary>The edge that it is sewn to.</summary>
    public EdgeOf Second { get; }

    /// <summary>What the seam is called in reports.</summary>
    /// <value>Its two edges, such as <c>back side to front side</c>.</value>
    public string Name { get; }

    /// <summary>How the edges run.</summary>
    /// <value><see cref="SeamRun.Found"/>.</value>
    public SeamRun Run { get; private init; }

    /// <summary>How much longer the first edge is to be than the second; negative where the second is the longer one.</summary>
    /// <value>Zero.</value>
    public Length Ease => Length.FromMillimeters(EaseMm);

    /// <summary>The names of the stretches between notches, in the order of the first edge; none where the stretches are called after their notches.</summary>
    public IReadOnlyList<string> StretchNames => _stretchNames;

    /// <summary>Whether an edge is sewn to its own mirror image.</summary>
    public bool IsToMirrorImage => First == Second;

    /// <summary>Both edges.</summary>
    internal string Place { get; }

    /// <summary>Where a finding places the seam: on its panel, or between the panels of the block.</summary>
    internal string Where => First.PanelName == Second.PanelName ? First.PanelName.Text : "block";

    internal SeamNames Names { get; }

    internal double EaseMm { get; private init; }

    /// <summary>Where the ease sits, by marks on the first or the second edge; null for evenly all along.</summary>
    internal (SeamMark From, SeamMark To, bool OnFirst)? EaseSpan { get; private init; }

    internal SeamMark FirstFrom { get; private init; }

    internal SeamMark FirstTo { get; private init; }

    internal SeamMark SecondFrom { get; private init; }

    internal SeamMark SecondTo { get; private init; }

    /// <summary>Says which two edges are sewn to each other; they may be on the same panel.</summary>
    /// <exception cref="ArgumentException">Both are the same edge: <see cref="ToMirrorImage"/> says that it is sewn to that of the other half.</exception>
    public static Seam Between(EdgeOf first, EdgeOf second) => first != second
        ? new Seam(first, second)
        : throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.SeamOntoItself, first), nameof(second));

    /// <summary>Says that an edge is sewn to its own mirror image, as at the centre back of a skirt of which one half is drawn.</summary>
    /// <remarks>Both halves are cut from one drawing, so such a seam fits whatever is done to the panel. It stands in the plan so that the plan names every seam there is to sew.</remarks>
    /// <param name="edge">The edge as it is drawn.</param>
    public static Seam ToMirrorImage(EdgeOf edge) => new(edge, edge);

    /// <summary>Names the seam.</summary>
    /// <param name="name">What it is called in reports, such as <c>side seam</c>.</param>
    /// <param name="stretches">What its stretches between notches are called, in the order of the first edge, such as <c>waist to hip</c>,
    /// <c>hip to hem</c>. A plan then reports when notches are lost or added.</param>
    /// <exception cref="ArgumentException">A name is empty.</exception>
    [Pure]
    public Seam Named(string name, params string[] stretches)
        => new(this, Guard.Name(name, nameof(name)), [.. Guard.NotNull(stretches, nameof(stretches)).Select(s => Guard.Name(s, nameof(stretches)))]);

    /// <summary>Asks for the first edge to be longer than the second, evenly all along.</summary>
    /// <param name="ease">How much longer; negative where the second edge is the longer one.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ease is not finite.</exception>
    [Pure]
    public Seam WithEase(Length ease) => new(this, OwnName, _stretchNames) { EaseMm = Guard.Millimetres(ease, nameof(ease)), EaseSpan = null };

    /// <summary>Asks for the first edge to be longer than the second between two marks only; elsewhere they are equally long.</summary>
    /// <param name="ease">How much longer; negative where the second edge is the longer one.</param>
    /// <param name="from">Where the ease begins, on the first edge.</param>
    /// <param name="to">Where it ends, on the first edge, in its order.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ease is not finite.</exception>
    [Pure]
    public Seam WithEaseBetween(Length ease, SeamMark from, SeamMark to)
        => WithEaseBetween(ease, from, to, onFirst: true);

    /// <summary>Says how the edges run, where that cannot be found because a panel is drawn turned over.</summary>
    [Pure]
    public Seam Running(SeamRun run) => new(this, OwnName, _stretchNames) { Run = (SeamRun)Guard.Choice((int)run, 3, nameof(run)) };

    /// <summary>Sews only a part of the first edge, as of a waistband that more than one panel is sewn to.</summary>
    [Pure]
    public Seam OverFirst(SeamMark from, SeamMark to) => IsToMirrorImage
        ? new(this, OwnName, _stretchNames) { FirstFrom = from, FirstTo = to, SecondFrom = from, SecondTo = to }
        : new(this, OwnName, _stretchNames) { FirstFrom = from, FirstTo = to };

    /// <summary>Sews only a part of the second edge, as of a waistband that more than one panel is sewn to.</summary>
    [Pure]
    public Seam OverSecond(SeamMark from, SeamMark to) => IsToMirrorImage ? OverFirst(from, to) : new(this, OwnName, _stretchNames) { SecondFrom = from, SecondTo = to };

    /// <summary>The same seam told from the other edge: the second comes first, and the ease changes its sign.</summary>
    [Pure]
    public Seam Reversed() => new(new Seam(Second, First), OwnName, ReversedNames())
    {
        Run = Run,
        EaseMm = -EaseMm,
        EaseSpan = EaseSpan is { } span ? (span.From, span.To, !span.OnFirst) : null,
        FirstFrom = SecondFrom,
        FirstTo = SecondTo,
        SecondFrom = FirstFrom,
        SecondTo = FirstTo,
    };

    /// <summary>Walks the seam on panels.</summary>
    /// <param name="panels">The panels that carry the edges; others may be among them.</param>
    /// <exception cref="ConstructionException">A panel, edge or mark of the seam is missing.</exception>
    [Pure]
    public SeamWalk Walk(params Panel[] panels) => SeamWalk.Along(this, panels);

    /// <summary>Such as <c>side seam, back side to front side</c>.</summary>
    public override string ToString() => Name == Place ? Place : Name + ", " + Place;

    internal Seam WithEaseBetween(Length ease, SeamMark from, SeamMark to, bool onFirst)
        => new(this, OwnName, _stretchNames) { EaseMm = Guard.Millimetres(ease, nameof(ease)), EaseSpan = (from, to, onFirst) };

    internal Seam With(EdgeOf old, EdgeOf now) => new(IsToMirrorImage ? ToMirrorImage(now) : Between(First == old ? now : First, Second == old ? now : Second), OwnName, _stretchNames)
    {
        Run = Run,
        EaseMm = EaseMm,
        EaseSpan = EaseSpan,
        FirstFrom = FirstFrom,
        FirstTo = FirstTo,
        SecondFrom = SecondFrom,
        SecondTo = SecondTo,
    };

    private string? OwnName => Name == Place ? null : Name;

    // Which way the other edge goes through the stretches is known only where the run is said.
    private string[] ReversedNames() => Run switch
    {
        SeamRun.SameWay => _stretchNames,
        SeamRun.Opposite => [.. _stretchNames.Reverse()],
        _ => [],
    };
}
