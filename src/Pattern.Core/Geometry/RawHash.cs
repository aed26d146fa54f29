namespace Pattern.Core.Geometry;

/// <summary>Hash codes of raw doubles; -0 and +0, which are equal, hash alike.</summary>
internal static class RawHash
{
    internal static int Of(double a, double b) => unchecked(((a + 0.0).GetHashCode() * 397) ^ (b + 0.0).GetHashCode());

    internal static int Of(double a, double b, double c, double d) => unchecked((Of(a, b) * 397) ^ Of(c, d));
}
