using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>Two edges laid along each other as they will be sewn, darts closed, and compared stretch by stretch between their notches.</summary>
/// <remarks>Lengths are measured along the seam line. Walking the second edge against the first finds the same stretches, the ease with the other sign; where the
/// edges run opposite ways it finds them in the other order, since a seam is walked in the order of its first edge.</remarks>
/// <example><code>
/// SeamWalk walk = SeamWalk.Between(block.Back, EdgeName.SideSeam, block.Front, EdgeName.SideSeam);
/// foreach (WalkedStretch stretch in walk.Stretches)
/// {
///     Console.WriteLine(stretch);
/// }
/// </code></example>
public sealed partial class SeamWalk
{
    private readonly WalkSide _first;
    private readonly WalkSide _second;
    private readonly double[] _firstAtMm;
    private readonly double[] _secondAtMm;
    private readonly WalkedStretch[] _stretches;

    private SeamWalk(Seam seam, WalkSide first, WalkSide second, (bool OnFirst, double FromMm, double ToMm) easeBase)
    {
        Seam = seam;
        _first = first;
        _second = second;
        bool pair = first.NotchesMm.Length == second.NotchesMm.Length;
        _firstAtMm = Marks(first, pair);
        _secondAtMm = Marks(second, pair);
        EaseBase = easeBase;
        _stretches = new WalkedStretch[_firstAtMm.Length - 1];
        bool named = seam.StretchNames.Count == _stretches.Length;
        for (int i = 0; i < _stretches.Length; i++)
        {
            _stretches[i] = new WalkedStretch(
                named ? seam.StretchNames[i] : StretchName(i, _stretches.Length),
                _firstAtMm[i + 1] - _firstAtMm[i],
                _secondAtMm[i + 1] - _secondAtMm[i],
                EaseAskedMm(i));
        }
    }

    /// <summary>The seam that was walked.</summary>
    public Seam Seam { get; }

    /// <summary>How the edges run: as the seam says, or as found.</summary>
    public SeamRun Run => _second.Backwards ? SeamRun.Opposite : SeamRun.SameWay;

    /// <summary>Whether both edges have equally many notches. If not, nobody can say which notch misses its twin, and the seam is one stretch.</summary>
    public bool NotchesPair => _first.NotchesMm.Length == _second.NotchesMm.Length;

    /// <summary>How many notches there are on the way along the first edge, ends not counted.</summary>
    public int FirstNotchCount => _first.NotchesMm.Length;

    /// <summary>How many notches there are on the way along the second edge, ends not counted.</summary>
    public int SecondNotchCount => _second.NotchesMm.Length;

    /// <summary>The stretches between notches, in the order of the first edge.</summary>
    public IReadOnlyList<WalkedStretch> Stretches => _stretches;

    /// <summary>The whole seam as one stretch.</summary>
    public WalkedStretch Whole => new("whole", _first.LengthMm, _second.LengthMm, Seam.EaseMm);

    /// <summary>The places where the edges have to meet, ends included, with what they are off by when walked from either end.</summary>
    [Pure]
    public IReadOnlyList<WalkedMark> Marks()
    {
        var marks = new WalkedMark[_firstAtMm.Length];
        double total = _stretches.Sum(s => s.OffMm);
        double off = 0;
        for (int i = 0; i < marks.Length; i++)
        {
            string name = i == 0 ? "start" : i == marks.Length - 1 ? "end" : "notch " + Number(i);
            marks[i] = new WalkedMark(name, _first.OnEdgeMm(_firstAtMm[i]), _second.OnEdgeMm(_secondAtMm[i]), off, total - off);
            off += i < _stretches.Length ? _stretches[i].OffMm : 0;
        }

        return marks;
    }

    /// <summary>Whether the notches pair and every stretch agrees within the 0.01 mm that computed work holds.</summary>
    public bool Passed => NotchesPair && _stretches.All(s => s.Passed);

    /// <summary>Whether the notches pair and every stretch agrees within the 1/16 in that cutters accept (common practice, no source).</summary>
    public bool PassedByHand => NotchesPair && _stretches.All(s => s.PassedByHand);

    internal WalkSide First => _first;

    internal WalkSide Second => _second;

    internal double[] FirstAtMm => _firstAtMm;

    internal double[] SecondAtMm => _secondAtMm;

    /// <summary>The edge that the ease is laid out along, and from where to where on it.</summary>
    internal (bool OnFirst, double FromMm, double ToMm) EaseBase { get; }

    /// <summary>Walks two edges that are to be equally long.</summary>
    /// <exception cref="ConstructionException">A panel has no such edge.</exception>
    [Pure]
    public static SeamWalk Between(Panel first, EdgeName firstEdge, Panel second, EdgeName secondEdge)
    {
        Seam seam = Seam.Between(
            EdgeOf.Panel(Guard.NotNull(first, nameof(first)).Name, firstEdge), EdgeOf.Panel(Guard.NotNull(second, nameof(second)).Name, secondEdge));
        return Make(seam, first, first.FindEdge(firstEdge), second, second.FindEdge(secondEdge)) ?? throw NoMark(seam);
    }

    /// <summary>Walks a seam on the panels that carry its edges.</summary>
    /// <exception cref="ConstructionException">A panel, edge or mark of the seam is missing.</exception>
    [Pure]
    public static SeamWalk Along(Seam seam, IReadOnlyList<Panel> panels)
    {
        (Panel first, PanelEdge firstEdge) = Find(Guard.NotNull(seam, nameof(seam)).First, Guard.NotNull(panels, nameof(panels)), seam);
        (Panel second, PanelEdge secondEdge) = Find(seam.Second, panels, seam);
        return Make(seam, first, firstEdge, second, secondEdge) ?? throw NoMark(seam);
    }

    /// <summary>The walk, or null where an edge does not have the marks that the seam runs between.</summary>
    internal static SeamWalk? Make(Seam seam, Panel first, PanelEdge firstEdge, Panel second, PanelEdge secondEdge)
    {
        bool opposite = !seam.IsToMirrorImage && seam.Run switch
        {
            SeamRun.SameWay => false,
            SeamRun.Opposite => true,
            _ => ReferenceEquals(first, second) || first.RunsCounterClockwise == second.RunsCounterClockwise,
        };
        WalkSide? along = WalkSide.Along(first, firstEdge, seam.FirstFrom, seam.FirstTo, backwards: false);
        WalkSide? against = WalkSide.Along(second, secondEdge, seam.SecondFrom, seam.SecondTo, opposite);
        return along is not null && against is not null && TryReadEaseBase(seam, along, against, out (bool, double, double) easeBase)
            ? new SeamWalk(seam, along, against, easeBase)
            : null;
    }

    private static (Panel Panel, PanelEdge Edge) Find(EdgeOf edge, IReadOnlyList<Panel> panels, Seam seam)
        => WalkSide.TryFind(edge, panels, out Panel? panel, out PanelEdge? found)
            ? (panel!, found!)
            : throw new ConstructionException(DiagnosticCode.SeamEdgeMissing, edge, seam, string.Join(", ", panels.Select(p => p.Name.Text)))
            {
                Step = "walking a seam",
                Landmark = edge.ToString(),
            };

    private static ConstructionException NoMark(Seam seam)
        => new(DiagnosticCode.SeamMarkMissing, seam) { Step = "walking a seam", Landmark = seam.Place };

    private static string Number(int value) => value.ToString(System.Globalization.CultureInfo.InvariantCulture);

    // Almost every seam has few stretches: their names are made once.
    private static readonly string[][] Names = [.. Enumerable.Range(1, 4).Select(count => Enumerable.Range(0, count).Select(i => MakeName(i, count)).ToArray())];

    private static string StretchName(int index, int count) => count <= Names.Length ? Names[count - 1][index] : MakeName(index, count);

    private static string MakeName(int index, int count)
        => (index == 0 ? "start" : "notch " + Number(index)) + " to " + (index == count - 1 ? "end" : "notch " + Number(index + 1));

    private static double[] Marks(WalkSide side, bool pair)
    {
        double[] inner = pair ? side.NotchesMm : [];
        var marks = new double[inner.Length + 2];
        inner.CopyTo(marks, 1);
        marks[marks.Length - 1] = side.LengthMm;
        return marks;
    }

    // Evenly means along the edge that is to be the shorter one, whichever edge the seam is told from.
    private static bool TryReadEaseBase(Seam seam, WalkSide first, WalkSide second, out (bool OnFirst, double FromMm, double ToMm) easeBase)
    {
        if (seam.EaseSpan is not { } span)
        {
            bool onFirst = seam.EaseMm < 0;
            easeBase = (onFirst, 0, (onFirst ? first : second).LengthMm);
            return true;
        }

        WalkSide side = span.OnFirst ? first : second;
        double a = side.AlongMm(side.ResolveMm(span.From));
        double b = side.AlongMm(side.ResolveMm(span.To));
        easeBase = (span.OnFirst, Math.Max(0, Math.Min(a, b)), Math.Min(side.LengthMm, Math.Max(a, b)));
        return easeBase.ToMm > easeBase.FromMm;
    }

    private double EaseAskedMm(int stretch) => EaseAskedMm(stretch, EaseBase.OnFirst ? _firstAtMm : _secondAtMm, EaseBase.FromMm, EaseBase.ToMm);

    /// <summary>The ease asked of a stretch when the stretches have other lengths than were found. Ends of the ease that lie at a mark go with it.</summary>
    internal double EaseAskedMm(int stretch, double[] firstMm, double[] secondMm)
    {
        if (Seam.EaseMm == 0)
        {
            return 0;
        }

        double[] was = EaseBase.OnFirst ? _firstAtMm : _secondAtMm;
        double[] lengths = EaseBase.OnFirst ? firstMm : secondMm;
        var at = new double[was.Length];
        double from = EaseBase.FromMm;
        double to = EaseBase.ToMm;
        for (int i = 1; i < at.Length; i++)
        {
            at[i] = at[i - 1] + lengths[i - 1];
            from = Math.Abs(EaseBase.FromMm - was[i]) <= GeometryTolerance.JoinMm ? at[i] : from;
            to = Math.Abs(EaseBase.ToMm - was[i]) <= GeometryTolerance.JoinMm ? at[i] : to;
        }

        return EaseAskedMm(stretch, at, from, to);
    }

    private double EaseAskedMm(int stretch, double[] at, double fromMm, double toMm)
    {
        double Share(double d) => Raw.Clamp((d - fromMm) / (toMm - fromMm), 0, 1);
        return Seam.EaseMm == 0 ? 0 : Seam.EaseMm * (Share(at[stretch + 1]) - Share(at[stretch]));
    }

    /// <summary>The seam, and whether it walks.</summary>
    public override string ToString()
        => Seam + (Passed ? ": walks" : ": does not walk");
}
