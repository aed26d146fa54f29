using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>One named edge of a panel: its seam line, cut into stretches by the darts that stand on it. Immutable.</summary>
/// <remarks>An edge without darts has one stretch. Dart k lies between stretch k and stretch k + 1. "Along the sewn edge" means along the stretches only,
/// darts closed.</remarks>
public sealed class PanelEdge
{
    private readonly CurvePath[] _stretches;
    private readonly Dart[] _darts;

    /// <summary>Trusted: the stretches run head to tail once the darts are closed, and there is one more of them than of darts.</summary>
    internal PanelEdge(EdgeName name, EdgeRole role, CurvePath[] stretches, DartShape[] darts)
    {
        Name = name;
        Role = role;
        _stretches = stretches;
        _darts = new Dart[darts.Length];
        for (int i = 0; i < darts.Length; i++)
        {
            _darts[i] = new Dart(this, i + 1, darts[i]);
        }
    }

    internal PanelEdge(EdgeName name, EdgeRole role, CurvePath path)
        : this(name, role, [path], [])
    {
    }

    /// <summary>The name of the edge.</summary>
    public EdgeName Name { get; }

    /// <summary>What becomes of the edge.</summary>
    public EdgeRole Role { get; }

    /// <summary>The stretches of seam line between the darts, in the order of the edge.</summary>
    public IReadOnlyList<CurvePath> Stretches => _stretches;

    /// <summary>The darts on the edge, in the order of the edge.</summary>
    public IReadOnlyList<Dart> Darts => _darts;

    /// <summary>Where the edge begins.</summary>
    public Point2D Start => _stretches[0].Start;

    /// <summary>Where the edge ends, with its darts open.</summary>
    public Point2D End => _stretches[_stretches.Length - 1].End;

    /// <summary>The length that is sewn: all stretches, without the intake of the darts, measured along the seam line.</summary>
    public Length SewnLength => Length.FromMillimeters(SewnLengthMm());

    /// <summary>The edge as it lies when every dart on it is closed: one line without gaps, its start where it was.</summary>
    /// <remarks>Everything beyond a dart, the next apex included, turns about that dart's apex; the turns are composed from the
    /// first dart outwards.</remarks>
    [Pure]
    public CurvePath Closed()
    {
        CurvePath closed = _stretches[0];
        Transform2D closing = Transform2D.Identity;
        for (int i = 0; i < _darts.Length; i++)
        {
            closing = _darts[i].Closing().Then(closing);
            closed = closed.Then(_stretches[i + 1].Transformed(closing));
        }

        return closed;
    }

    internal CurvePath[] StretchesRaw => _stretches;

    internal Dart[] DartsRaw => _darts;

    internal double SewnLengthMm()
    {
        double sum = 0;
        foreach (CurvePath stretch in _stretches)
        {
            sum += stretch.LengthMm;
        }

        return sum;
    }

    /// <summary>The stretch that holds a distance along the sewn edge, and how far into it that is. At a dart, the stretch before it.</summary>
    internal int LocateSewn(double distanceMm, out double withinMm)
    {
        int last = _stretches.Length - 1;
        withinMm = distanceMm;
        for (int i = 0; i < last; i++)
        {
            double length = _stretches[i].LengthMm;
            if (withinMm <= length)
            {
                return i;
            }

            withinMm -= length;
        }

        return last;
    }

    /// <summary>The point at a distance along the sewn edge, darts open.</summary>
    internal Point2D PointAtSewnMm(double distanceMm) => _stretches[LocateSewn(distanceMm, out double within)].PointAtMm(within);

    /// <summary>The distance along the sewn edge at which a dart stands.</summary>
    internal double SewnPositionMm(int dart)
    {
        double sum = 0;
        for (int i = 0; i <= dart; i++)
        {
            sum += _stretches[i].LengthMm;
        }

        return sum;
    }

    /// <summary>The cap of a dart, folded onto the seam line that it is pressed onto, with the darts next to it closed.</summary>
    internal CurvePath FoldCap(int index)
    {
        Dart dart = _darts[index];
        return DartCaps.Fold(dart.Shape, PressedOnto(index), dart.PressedToward == Toward.Start);
    }

    /// <summary>The seam line that a dart is pressed onto, with the darts next to it closed: it ends at the start leg, or begins at the end leg.</summary>
    internal CurvePath PressedOnto(int index) => _darts[index].PressedToward == Toward.Start ? JoinedBefore(index) : JoinedAfter(index);

    // The seam line up to the start leg, with earlier darts closed onto the stretch that ends at it.
    private CurvePath JoinedBefore(int index)
    {
        CurvePath joined = _stretches[index];
        Transform2D opening = Transform2D.Identity;
        for (int i = index - 1; i >= 0; i--)
        {
            opening = _darts[i].Opening().Then(opening);
            joined = _stretches[i].Transformed(opening).Then(joined);
        }

        return joined;
    }

    // The seam line from the end leg on, with later darts closed onto the stretch that begins at it.
    private CurvePath JoinedAfter(int index)
    {
        CurvePath joined = _stretches[index + 1];
        Transform2D closing = Transform2D.Identity;
        for (int i = index + 1; i < _darts.Length; i++)
        {
            closing = _darts[i].Closing().Then(closing);
            joined = joined.Then(_stretches[i + 1].Transformed(closing));
        }

        return joined;
    }

    /// <summary>Name, sewn length and darts.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{Name}, {SewnLengthMm():0.##} mm sewn, {_darts.Length} darts");
}
