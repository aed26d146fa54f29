using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <content>The line beside a path.</content>
public sealed partial class CurvePath
{
    internal const double OffsetToleranceMm = 1e-3;

    /// <summary>The line beside this path at a width, to within 0.001 mm.</summary>
    /// <remarks>
    /// Lines stay lines and arcs stay arcs; the parallel of a cubic is no cubic, so cubics are fitted to it. What would lie nearer to the
    /// path than the width is removed: the loops of curves tighter than the width, and what crosses over at corners that
    /// point towards the offset. Nothing is nearer to the path than the width less the tolerance.
    /// An edge for which the width leaves no room vanishes from the result; where nothing is left of the whole path, it is refused.
    /// </remarks>
    /// <param name="width">Positive to the left of the way the path runs: inside a counter-clockwise outline. Negative to the right.</param>
    /// <param name="join">How the parts meet at corners that point away from the offset.</param>
    /// <exception cref="InvalidOperationException">The path has no length.</exception>
    /// <exception cref="ConstructionException">Nothing is left at this width, or coordinates are too large for the tolerance: beyond 1,000 km at 0.001 mm.</exception>
    [Pure]
    public PathOffset Offset(Length width, OffsetJoin join) => OffsetBuilder.Build(
        this, Guard.Millimetres(width, nameof(width)), (OffsetJoin)Guard.Choice((int)join, 3, nameof(join)), OffsetToleranceMm);

    /// <summary>The line beside this path at a width, to within a tolerance: see <see cref="Offset(Length, OffsetJoin)"/>.</summary>
    /// <param name="width">Positive to the left of the way the path runs: inside a counter-clockwise outline. Negative to the right.</param>
    /// <param name="join">How the parts meet at corners that point away from the offset.</param>
    /// <param name="tolerance">How far a fitted curve may be from the true parallel; from 0.0000001 mm to 10 mm.</param>
    /// <exception cref="InvalidOperationException">The path has no length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is out of range, or a value is not finite.</exception>
    /// <exception cref="ConstructionException">Nothing is left at this width, or coordinates are too large for the tolerance: beyond 1,000 km at 0.001 mm.</exception>
    [Pure]
    public PathOffset Offset(Length width, OffsetJoin join, Length tolerance) => OffsetBuilder.Build(
        this,
        Guard.Millimetres(width, nameof(width)),
        (OffsetJoin)Guard.Choice((int)join, 3, nameof(join)),
        Guard.Millimetres(tolerance, 1e-7, 10, nameof(tolerance)));
}
