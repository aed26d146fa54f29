using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>Many sheets of one size, to be cut and joined. Immutable.</summary>
/// <remarks>The first sheet is a map of the others, with test squares and cautions. Sheets on which nothing would be drawn are left out.</remarks>
public sealed class TiledLayout : SheetLayout
{
    /// <summary>Less than this each way holds no test square, and no row and column that could be read.</summary>
    internal const double LeastWindowMm = 60;

    // Printers leave 3 mm to 6.4 mm at the edges of the sheet, some 12 mm at its foot.
    private const double UsualMarginMm = 10;

    // Wide enough for glue and for the tape of an office; three tenths of an inch or less comes off again.
    private const double UsualOverlapMm = 12;

    private const double MostMarginMm = 500;
    private const double LeastOverlapMm = 5;

    private TiledLayout(PaperSize paper, SheetOrientation orientation, double marginMm, double overlapMm)
    {
        Paper = paper;
        Orientation = orientation;
        MarginMm = marginMm;
        OverlapMm = overlapMm;
    }

    /// <summary>The size of the sheets.</summary>
    public PaperSize Paper { get; }

    /// <summary>How the sheets lie.</summary>
    /// <value>Default: whichever needs fewer sheets.</value>
    public SheetOrientation Orientation { get; }

    /// <summary>How much of each sheet stays white along every side.</summary>
    /// <value>Default: 10 mm, which nearly every printer can keep.</value>
    public Length Margin => Length.FromMillimeters(MarginMm);

    /// <summary>How much of the drawing two neighbours both show: the strip that is glued.</summary>
    /// <value>Default: 12 mm, wide enough for glue.</value>
    public Length Overlap => Length.FromMillimeters(OverlapMm);

    internal double MarginMm { get; }

    internal double OverlapMm { get; }

    /// <summary>Sheets of one size, with margins, overlap and orientation at their defaults.</summary>
    /// <param name="paper">The sheets.</param>
    public static TiledLayout On(PaperSize paper) => new(Guard.NotNull(paper, nameof(paper)), SheetOrientation.FewestSheets, UsualMarginMm, UsualOverlapMm);

    /// <summary>The same layout with other margins.</summary>
    /// <param name="margin">How much stays white along every side: 0 to 500 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The margin is outside its range.</exception>
    [Pure]
    public TiledLayout WithMargin(Length margin) => new(Paper, Orientation, Guard.Millimetres(margin, 0, MostMarginMm, nameof(margin)), OverlapMm);

    /// <summary>The same layout with another overlap.</summary>
    /// <param name="overlap">How much of the drawing two neighbours both show: 5 mm or more, and at most half of what a sheet can draw.</param>
    /// <exception cref="ArgumentOutOfRangeException">The overlap is outside its range.</exception>
    [Pure]
    public TiledLayout WithOverlap(Length overlap)
        => new(Paper, Orientation, MarginMm, Guard.Millimetres(overlap, LeastOverlapMm, Math.Max(Paper.WidthMm, Paper.HeightMm), nameof(overlap)));

    /// <summary>The same layout with the sheets lying another way.</summary>
    /// <param name="orientation">How the sheets lie.</param>
    /// <exception cref="ArgumentOutOfRangeException">The orientation is none of the named ones.</exception>
    [Pure]
    public TiledLayout WithOrientation(SheetOrientation orientation)
        => new(Paper, (SheetOrientation)Guard.Choice((int)orientation, 3, nameof(orientation)), MarginMm, OverlapMm);

    /// <summary>Parts the drawing into sheets.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <exception cref="ArgumentException">The margins leave less than 60 mm of a sheet, the overlap is more than half of that, or more than 2,500 sheets would be needed.</exception>
    [Pure]
    public Tiling Tile(Drawing drawing) => Tiling.Of(Guard.NotNull(drawing, nameof(drawing)), this);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">The margins leave less than 60 mm of a sheet, the overlap is more than half of that, or more than 2,500 sheets would be needed.</exception>
    [Pure]
    public override IReadOnlyList<PrintSheet> Arrange(Drawing drawing) => Tile(drawing).Print();

    /// <summary>The paper in words.</summary>
    public override string ToString() => "tiled on " + Paper.Name;
}
