using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>A small filled dot on a point.</summary>
public sealed class PointMark : DrawingMark
{
    internal PointMark(Point2D position, double diameterMm, Ink ink)
    {
        Position = position;
        DiameterMm = diameterMm;
        Ink = ink;
    }

    /// <summary>The point.</summary>
    public Point2D Position { get; }

    /// <summary>How large the dot is.</summary>
    public Length Diameter => Length.FromMillimeters(DiameterMm);

    /// <summary>The colour.</summary>
    public Ink Ink { get; }

    /// <inheritdoc/>
    public override BoundingBox Bounds => new(
        Position.XMm - (DiameterMm / 2), Position.YMm - (DiameterMm / 2), Position.XMm + (DiameterMm / 2), Position.YMm + (DiameterMm / 2));

    internal double DiameterMm { get; }

    /// <summary>Makes a dot.</summary>
    /// <param name="position">The point.</param>
    /// <param name="diameter">0.1 mm to 20 mm.</param>
    /// <param name="ink">The colour.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static PointMark Of(Point2D position, Length diameter, Ink ink) => new(position, Guard.Millimetres(diameter, 0.1, 20, nameof(diameter)), ink);

    /// <summary>Where it is.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"point at {Position}, {DiameterMm:0.##} mm across");
}
