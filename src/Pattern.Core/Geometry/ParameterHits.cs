namespace Pattern.Core.Geometry;

/// <summary>Up to three curve parameters, ascending: where a cubic meets a line.</summary>
internal struct ParameterHits
{
    internal double T0;
    internal double T1;
    internal double T2;

    /// <summary>How many parameters there are.</summary>
    internal int Count { get; private set; }

    /// <summary>The curve lies along the line all the way: no single points.</summary>
    internal bool Overlaps { get; set; }

    internal readonly double this[int index] => index == 0 ? T0 : index == 1 ? T1 : T2;

    internal void Add(double t)
    {
        if (Count == 0)
        {
            T0 = t;
        }
        else if (Count == 1)
        {
            T1 = t;
        }
        else if (Count == 2)
        {
            T2 = t;
        }
        else
        {
            return;
        }

        Count++;
    }
}
