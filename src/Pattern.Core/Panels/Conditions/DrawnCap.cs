using System.Diagnostics.Contracts;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>A cap as <see cref="CapCurve"/> draws it: the back underarm point at the origin, the front one level with it to the right, the crown above. Immutable.</summary>
public sealed class DrawnCap
{
    internal DrawnCap(in CapHalves halves)
    {
        Back = halves.Back;
        Front = halves.Front;
    }

    /// <summary>From the back underarm point up to the crown.</summary>
    public CubicBezier Back { get; }

    /// <summary>From the crown down to the front underarm point.</summary>
    public CubicBezier Front { get; }

    /// <summary>The highest point, where the shoulder seam is sewn to; level there.</summary>
    public Point2D Crown => Back.End;

    /// <summary>From the underarm line up to the crown.</summary>
    public Length Height => Length.FromMillimeters(Crown.YMm);

    /// <summary>From one underarm point to the other.</summary>
    public Length Width => Length.FromMillimeters(Front.X3);

    /// <summary>The whole line, from the back underarm point over the crown to the front one.</summary>
    [Pure]
    public CurvePath ToPath() => CurvePath.FromSegments([PathSegment.FromCubic(Back), PathSegment.FromCubic(Front)]);

    /// <summary>Height and width.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"cap {Crown.YMm:0.##} mm high, {Front.X3:0.##} mm wide");
}

/// <summary>Both halves while they are tried.</summary>
internal readonly record struct CapHalves(CubicBezier Back, CubicBezier Front);
