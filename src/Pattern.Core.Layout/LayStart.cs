using System;
using System.Collections.Generic;
using System.Linq;

namespace Pattern.Core.Layout;

/// <summary>The first arrangement: the largest pieces first, each as near the beginning of the cloth as it can lie.</summary>
internal static class LayStart
{
    // So many lines across the cloth are tried for one piece; where there are more, every second, every third and so on.
    private const int MostLines = 400;

    // A gain below this is rounding.
    private const double SameMm = 1e-9;

    internal static Arrangement Lay(LayTask task, PlaceSearch places)
    {
        var arrangement = new Arrangement(task.Copies.Length)
        {
            LengthMm = task.Copies.Sum(copy => copy.Max(shape => task.Shapes[shape].Outline.AlongMm)),
        };
        var placed = new List<int>();
        foreach (int copy in Enumerable.Range(0, task.Copies.Length).OrderByDescending(i => task.Shapes[task.Copies[i][0]].AreaMm2))
        {
            Lay(task, places, arrangement, placed, copy);
            placed.Add(copy);
        }

        arrangement.LengthMm = arrangement.ExtentMm(task);
        return arrangement;
    }

    private static void Lay(LayTask task, PlaceSearch places, Arrangement arrangement, List<int> placed, int copy)
    {
        double end = double.MaxValue;
        foreach (int shape in task.Copies[copy])
        {
            // Long enough for all pieces one after the other, so there is always a place.
            if (!places.Begin(task, task.Shapes[shape], arrangement.LengthMm))
            {
                continue;
            }

            foreach (int other in placed)
            {
                places.Add(task.KeepOutOf(arrangement.Shape[other], shape), arrangement.X[other], arrangement.Y[other], 1);
            }

            foreach (double y in Lines(task, places, arrangement, placed, shape))
            {
                double x = places.FirstFree(y);
                double itsEnd = x + task.Shapes[shape].Outline.MaxX;
                if (itsEnd < end - SameMm)
                {
                    (arrangement.X[copy], arrangement.Y[copy], arrangement.Shape[copy]) = (x, y, shape);
                    end = itsEnd;
                }
            }
        }
    }

    // Where something begins or ends to be in the way.
    private static IEnumerable<double> Lines(LayTask task, PlaceSearch places, Arrangement arrangement, List<int> placed, int shape)
    {
        var lines = new SortedSet<double> { places.MinY, places.MaxY };
        foreach (int other in placed)
        {
            KeepOut keepOut = task.KeepOutOf(arrangement.Shape[other], shape);
            for (int i = 0; i < keepOut.Count; i++)
            {
                lines.Add(arrangement.Y[other] + keepOut.MinY[i]);
                lines.Add(arrangement.Y[other] + keepOut.MaxY[i]);
            }
        }

        double[] within = [.. lines.Where(y => y >= places.MinY && y <= places.MaxY)];
        double[] apart = [.. within.Where((y, i) => i == 0 || y > within[i - 1] + SameMm)];
        int step = Math.Max(1, (apart.Length + MostLines - 1) / MostLines);
        return apart.Where((_, i) => i % step == 0);
    }
}
