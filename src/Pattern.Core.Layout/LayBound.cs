using System;
using System.Collections.Generic;
using System.Linq;

namespace Pattern.Core.Layout;

/// <summary>A length of cloth that no lay is shorter than.</summary>
internal static class LayBound
{
    // By so much a level line may be off, and its stretch within a curve too long.
    private const double CurveMm = 2 * LayShapes.FlatMm;
    private const double BesideCornerMm = 1e-9;

    /// <summary>The greatest of three: all areas over the width; the longest piece; what the pieces wider than half the cloth take of its middle line, which each of them crosses.</summary>
    internal static double LengthMm(LayTask task, bool isExact)
    {
        double longest = 0;
        double middle = 0;
        var known = new Dictionary<int, (double Along, double Middle)>();
        foreach (int[] copy in task.Copies)
        {
            if (!known.TryGetValue(copy[0], out (double Along, double Middle) its))
            {
                its = (copy.Min(i => task.Shapes[i].Outline.AlongMm), copy.Min(i => MiddleMm(task.Shapes[i], task.WidthMm, isExact)));
                known.Add(copy[0], its);
            }

            longest = Math.Max(longest, its.Along);
            middle += its.Middle;
        }

        return Math.Max(task.AreaMm2 / task.WidthMm, Math.Max(longest, middle));
    }

    // The least that a piece takes of the middle line of the cloth, wherever it lies across it.
    private static double MiddleMm(LayShape shape, double widthMm, bool isExact)
    {
        Outline outline = shape.Flat;
        double slack = isExact ? 0 : CurveMm;
        double top = widthMm / 2;
        double from = shape.IsOnFold ? top : outline.AcrossMm - top;
        if (from - slack <= 0 || top + slack >= outline.AcrossMm)
        {
            return 0;
        }

        // Between two heights of corners the stretch changes evenly, so that it is least beside one of them or at an end.
        double low = outline.MinY + from - slack;
        double high = outline.MinY + top + slack;
        double least = Math.Min(LevelMm(outline, low), LevelMm(outline, high));
        foreach (double y in outline.Y)
        {
            if (y >= low && y <= high)
            {
                least = Math.Min(least, Math.Min(LevelMm(outline, y - BesideCornerMm), LevelMm(outline, y + BesideCornerMm)));
            }
        }

        return Math.Max(0, least - (2 * slack));
    }

    private static double LevelMm(Outline outline, double y)
    {
        var crossings = new List<double>();
        for (int i = 0, j = outline.Count - 1; i < outline.Count; j = i++)
        {
            if (outline.Y[i] > y != outline.Y[j] > y)
            {
                crossings.Add(outline.X[i] + ((y - outline.Y[i]) / (outline.Y[j] - outline.Y[i]) * (outline.X[j] - outline.X[i])));
            }
        }

        crossings.Sort();
        double sum = 0;
        for (int i = 0; i + 1 < crossings.Count; i += 2)
        {
            sum += crossings[i + 1] - crossings[i];
        }

        return sum;
    }
}
