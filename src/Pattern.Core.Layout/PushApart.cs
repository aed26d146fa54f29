namespace Pattern.Core.Layout;

/// <summary>Pushes overlapping copies apart, all together, each pair by half of its depth: resolves what needs many small moves at once.</summary>
internal static class PushApart
{
    // A little farther than needed gets there sooner.
    private const double Beyond = 1.2;
    private const double PastNoiseMm = 1e-7;
    private const int MostRounds = 100;

    // So many rounds have to gain a tenth, or it is given up.
    private const int Patience = 16;
    private const double WorthIt = 0.9;

    /// <summary>Returns whether nothing overlaps any more.</summary>
    internal static bool TryResolve(LayTask task, Arrangement arrangement, LayLimit limit)
    {
        limit.Moved();
        double before = double.MaxValue;
        int n = arrangement.X.Length;
        for (int i = 0; i < n; i++)
        {
            arrangement.Put(task, i, arrangement.X[i], arrangement.Y[i]);
        }

        for (int round = 1; round <= MostRounds; round++)
        {
            double total = 0;
            for (int i = 0; i < n; i++)
            {
                for (int j = i + 1; j < n; j++)
                {
                    total += Push(task, arrangement, i, j);
                }
            }

            if (total == 0)
            {
                return true;
            }

            if (round % Patience == 0)
            {
                if (total > before * WorthIt)
                {
                    return false;
                }

                before = total;
            }
        }

        return false;
    }

    private static double Push(LayTask task, Arrangement arrangement, int still, int moving)
    {
        KeepOut keepOut = task.KeepOutOf(arrangement.Shape[still], arrangement.Shape[moving]);
        double x = arrangement.X[moving] - arrangement.X[still];
        double y = arrangement.Y[moving] - arrangement.Y[still];
        if (x <= keepOut.LeftMm || x >= keepOut.RightMm || y <= keepOut.BottomMm || y >= keepOut.TopMm)
        {
            return 0;
        }

        double total = 0;
        double[] sides = keepOut.Sides;
        for (int k = 0; k < keepOut.Count; k++)
        {
            if (x <= keepOut.MinX[k] || x >= keepOut.MaxX[k] || y <= keepOut.MinY[k] || y >= keepOut.MaxY[k])
            {
                continue;
            }

            double depth = double.MaxValue;
            int nearest = -1;
            for (int q = keepOut.First[k]; q < keepOut.First[k + 1] && depth > KeepOut.NoiseMm; q += 3)
            {
                double its = sides[q + 2] - (sides[q] * x) - (sides[q + 1] * y);
                if (its < depth)
                {
                    depth = its;
                    nearest = q;
                }
            }

            if (depth > KeepOut.NoiseMm)
            {
                total += depth;
                double push = ((depth * Beyond) + PastNoiseMm) / 2;
                arrangement.Put(task, still, arrangement.X[still] - (push * sides[nearest]), arrangement.Y[still] - (push * sides[nearest + 1]));
                arrangement.Put(task, moving, arrangement.X[moving] + (push * sides[nearest]), arrangement.Y[moving] + (push * sides[nearest + 1]));
                x = arrangement.X[moving] - arrangement.X[still];
                y = arrangement.Y[moving] - arrangement.Y[still];
            }
        }

        return total;
    }
}
