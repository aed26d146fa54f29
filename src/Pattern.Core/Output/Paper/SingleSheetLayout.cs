using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>One sheet of the drawing's own size.</summary>
internal sealed class SingleSheetLayout : SheetLayout
{
    [Pure]
    public override IReadOnlyList<PrintSheet> Arrange(Drawing drawing)
    {
        BoundingBox box = Guard.NotNull(drawing, nameof(drawing)).Bounds;
        return [PrintSheet.Whole("sheet", box.RightMm - box.LeftMm, box.TopMm - box.BottomMm, Transform2D.Translation(Point2D.Origin - box.LowerLeft))];
    }

    public override string ToString() => "one sheet of the drawing's size";
}
