namespace Pattern.Core.Layout;

/// <summary>Chance that can be had again: the same seed gives the same numbers on every platform.</summary>
/// <remarks>SplitMix64 (Steele, Lea and Flood, "Fast splittable pseudorandom number generators", 2014). The platform's own generator does not promise its sequence.</remarks>
internal sealed class LayRandom
{
    private const ulong Step = 0x9E3779B97F4A7C15UL;
    private const double UnitOf53Bits = 1.0 / (1UL << 53);

    private ulong _state;

    internal LayRandom(int seed) => _state = unchecked((ulong)(uint)seed * Step);

    /// <summary>At least 0, less than 1.</summary>
    internal double Next()
    {
        unchecked
        {
            _state += Step;
            ulong z = _state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return ((z ^ (z >> 31)) >> 11) * UnitOf53Bits;
        }
    }

    /// <summary>At least 0, less than the count.</summary>
    internal int Below(int count) => (int)(Next() * count);

    internal double Between(double low, double high) => low + (Next() * (high - low));
}
