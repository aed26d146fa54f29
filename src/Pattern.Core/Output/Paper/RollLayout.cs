using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>One sheet cut from a roll. Immutable.</summary>
/// <remarks>The drawing is turned by a quarter, to the left, where only that makes it fit, or where it takes less of the roll. It lies at the left edge of the roll, so
/// that what is left over is one strip. The margins are those of the drawing.</remarks>
public sealed class RollLayout : SheetLayout
{
    // The drawing's own size is a sum of roundings.
    private const double ToleranceMm = 1e-6;

    private readonly double _widthMm;

    internal RollLayout(double widthMm) => _widthMm = widthMm;

    /// <summary>The width of the roll.</summary>
    public Length Width => Length.FromMillimeters(_widthMm);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">The roll is narrower than both sides of the drawing.</exception>
    [Pure]
    public override IReadOnlyList<PrintSheet> Arrange(Drawing drawing)
    {
        BoundingBox box = Guard.NotNull(drawing, nameof(drawing)).Bounds;
        double width = box.RightMm - box.LeftMm;
        double height = box.TopMm - box.BottomMm;
        bool fitsUpright = width <= _widthMm + ToleranceMm;
        bool fitsTurned = height <= _widthMm + ToleranceMm;
        if (!fitsUpright && !fitsTurned)
        {
            throw new ArgumentException(
                MessageRegistry.Format(DiagnosticCode.RollTooNarrow, Length.FromMillimeters(width), Length.FromMillimeters(height), Width),
                nameof(drawing));
        }

        Transform2D toOrigin = Transform2D.Translation(Point2D.Origin - box.LowerLeft);
        if (fitsUpright && (!fitsTurned || height <= width))
        {
            return [PrintSheet.Whole("roll", _widthMm, height, toOrigin)];
        }

        Transform2D turned = toOrigin
            .Then(Transform2D.RotationRaw(Point2D.Origin, Direction.Up))
            .Then(Transform2D.Translation(new Vector2D(height, 0)));
        return [PrintSheet.Whole("roll", _widthMm, width, turned)];
    }

    /// <summary>The width in words.</summary>
    public override string ToString() => FormattableString.Invariant($"roll of {_widthMm:0.#} mm");
}
