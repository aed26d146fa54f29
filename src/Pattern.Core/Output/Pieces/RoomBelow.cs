using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>Finds places for boxes that hang from the upper edge of a sheet or from each other, as far up as there is room.</summary>
internal sealed class RoomBelow
{
    private readonly double _widthMm;
    private readonly double _betweenMm;

    // What has been taken, each with the room around it.
    private readonly List<BoundingBox> _taken = [];

    internal RoomBelow(double widthMm, double betweenMm)
    {
        _widthMm = widthMm;
        _betweenMm = betweenMm;
    }

    /// <summary>Takes room for a box below everything that was taken above it; one that is wider than the sheet begins at the left.</summary>
    /// <returns>The upper left corner.</returns>
    internal Point2D Take(double widthMm, double heightMm)
    {
        Point2D best = new(0, FreeBelow(0, widthMm));
        foreach (BoundingBox box in _taken)
        {
            double left = box.RightMm;
            double top = FreeBelow(left, left + widthMm);
            if (left + widthMm <= _widthMm && (top > best.YMm || (top == best.YMm && left < best.XMm)))
            {
                best = new Point2D(left, top);
            }
        }

        _taken.Add(new BoundingBox(best.XMm, best.YMm - heightMm - _betweenMm, best.XMm + widthMm + _betweenMm, best.YMm));
        return best;
    }

    private double FreeBelow(double leftMm, double rightMm)
    {
        double top = 0;
        foreach (BoundingBox box in _taken)
        {
            // The room to the right of a box counts as its own, the room to the left of the new one does not.
            if (box.LeftMm < rightMm + _betweenMm && box.RightMm > leftMm)
            {
                top = Math.Min(top, box.BottomMm);
            }
        }

        return top;
    }
}
