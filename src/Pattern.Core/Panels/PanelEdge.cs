using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>One named edge of a panel: its seam line, cut into stretches by the darts that stand on it.</summary>
/// <remarks>An edge without darts has one stretch. Dart k lies between stretch k and stretch k + 1.</remarks>
public sealed class PanelEdge
{
    private readonly CurvePath[] _stretches;
    private readonly Dart[] _darts;

    /// <summary>Trusted: the stretches run head to tail once the darts are closed, and there is one more of them than of darts.</summary>
    internal PanelEdge(EdgeName name, CurvePath[] stretches, Dart[] darts)
    {
        Name = name;
        _stretches = stretches;
        _darts = darts;
    }

    internal PanelEdge(EdgeName name, CurvePath path)
        : this(name, [path], [])
    {
    }

    /// <summary>The name of the edge.</summary>
    public EdgeName Name { get; }

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

    internal double SewnLengthMm()
    {
        double sum = 0;
        foreach (CurvePath stretch in _stretches)
        {
            sum += stretch.LengthMm;
        }

        return sum;
    }

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
}
