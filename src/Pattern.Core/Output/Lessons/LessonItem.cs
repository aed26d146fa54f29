using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>Something that takes a height of a sheet of paper and is never broken.</summary>
internal sealed class LessonItem(double heightMm, Func<Point2D, IEnumerable<DrawingMark>> draw)
{
    internal double HeightMm { get; } = heightMm;

    /// <summary>Its marks, where its upper left corner lies there.</summary>
    internal Func<Point2D, IEnumerable<DrawingMark>> Draw { get; } = draw;

    /// <summary>Whether what comes next stands on the same sheet, as far as a sheet has room.</summary>
    internal bool KeepsNext { get; init; }

    /// <summary>What the contents call it.</summary>
    internal string? Id { get; init; }

    /// <summary>Items one below the other, as one.</summary>
    internal static LessonItem Stack(IReadOnlyList<LessonItem> items, double leftMm = 0)
    {
        double heightMm = 0;
        foreach (LessonItem item in items)
        {
            heightMm += item.HeightMm;
        }

        return new LessonItem(heightMm, corner => Below(items, new Point2D(corner.XMm + leftMm, corner.YMm)));
    }

    private static IEnumerable<DrawingMark> Below(IReadOnlyList<LessonItem> items, Point2D corner)
    {
        foreach (LessonItem item in items)
        {
            foreach (DrawingMark mark in item.Draw(corner))
            {
                yield return mark;
            }

            corner = new Point2D(corner.XMm, corner.YMm - item.HeightMm);
        }
    }
}
