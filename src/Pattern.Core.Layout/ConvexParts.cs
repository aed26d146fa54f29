using System;
using System.Collections.Generic;
using System.Linq;

namespace Pattern.Core.Layout;

/// <summary>Parts an outline into convex polygons.</summary>
/// <remarks>Ears are cut off, the one with the shortest cut first; then parts are joined across the longest cuts as long as they stay convex (Hertel and Mehlhorn, 1983).</remarks>
internal static class ConvexParts
{
    // So much a corner may bend inwards, as twice the area of its triangle in mm², and still count as straight: the rounding of coordinates of some metres.
    private const double FlatMm2 = 1e-7;

    internal static IReadOnlyList<Outline> Of(Outline outline)
    {
        List<List<int>> parts = Triangles(outline);
        while (TryJoin(outline, parts))
        {
        }

        return [.. parts.Select(part => Outline.Of([.. part.Select(i => outline.X[i])], [.. part.Select(i => outline.Y[i])]))];
    }

    private static List<List<int>> Triangles(Outline outline)
    {
        List<int> left = [.. Enumerable.Range(0, outline.Count)];
        var triangles = new List<List<int>>();
        while (left.Count > 3)
        {
            int n = left.Count;
            int best = -1;
            double shortest = double.MaxValue;
            for (int k = 0; k < n; k++)
            {
                int a = left[(k + n - 1) % n];
                int c = left[(k + 1) % n];
                double cut = Squared(outline, a, c);
                if (cut < shortest && IsEar(outline, left, a, left[k], c))
                {
                    (best, shortest) = (k, cut);
                }
            }

            if (best < 0)
            {
                // What is left has no inside: the corners lie on one line but for rounding. The flattest can go.
                best = Enumerable.Range(0, n).OrderBy(k => Math.Abs(outline.Cross(left[(k + n - 1) % n], left[k], left[(k + 1) % n]))).First();
            }
            else if (outline.Cross(left[(best + n - 1) % n], left[best], left[(best + 1) % n]) > FlatMm2)
            {
                triangles.Add([left[(best + n - 1) % n], left[best], left[(best + 1) % n]]);
            }

            left.RemoveAt(best);
        }

        triangles.Add(left);
        return triangles;
    }

    private static bool IsEar(Outline outline, List<int> left, int a, int b, int c)
    {
        if (outline.Cross(a, b, c) <= 0)
        {
            return false;
        }

        foreach (int q in left)
        {
            if (q != a && q != b && q != c && outline.Cross(a, b, q) >= 0 && outline.Cross(b, c, q) >= 0 && outline.Cross(c, a, q) >= 0)
            {
                return false;
            }
        }

        return true;
    }

    // Each join takes one part away, so there are fewer joins than parts.
    private static bool TryJoin(Outline outline, List<List<int>> parts)
    {
        double longest = -1;
        (int First, int Second, List<int> Joined)? best = null;
        for (int i = 0; i < parts.Count; i++)
        {
            for (int j = i + 1; j < parts.Count; j++)
            {
                if (Join(outline, parts[i], parts[j], out double cut) is { } joined && cut > longest)
                {
                    longest = cut;
                    best = (i, j, joined);
                }
            }
        }

        if (best is not { } chosen)
        {
            return false;
        }

        parts.RemoveAt(chosen.Second);
        parts[chosen.First] = chosen.Joined;
        return true;
    }

    private static List<int>? Join(Outline outline, List<int> first, List<int> second, out double cut)
    {
        cut = 0;
        for (int i = 0; i < first.Count; i++)
        {
            int a = first[i];
            int b = first[(i + 1) % first.Count];
            int k = second.IndexOf(b);
            if (k < 0 || second[(k + 1) % second.Count] != a)
            {
                continue;
            }

            cut = Squared(outline, a, b);
            List<int> joined = [.. Enumerable.Range(1, first.Count).Select(t => first[(i + t) % first.Count])];
            joined.AddRange(Enumerable.Range(2, second.Count - 2).Select(t => second[(k + t) % second.Count]));
            int n = joined.Count;
            return Enumerable.Range(0, n).All(t => outline.Cross(joined[t], joined[(t + 1) % n], joined[(t + 2) % n]) >= -FlatMm2) ? joined : null;
        }

        return null;
    }

    private static double Squared(Outline outline, int a, int b)
    {
        double dx = outline.X[a] - outline.X[b];
        double dy = outline.Y[a] - outline.Y[b];
        return (dx * dx) + (dy * dy);
    }
}
