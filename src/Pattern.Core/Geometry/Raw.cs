using System;
using System.Runtime.CompilerServices;
using Pattern.Core.Diagnostics;
#if NET
using System.Runtime.Intrinsics.Arm;
using System.Runtime.Intrinsics.X86;
#endif

namespace Pattern.Core.Geometry;

/// <summary>Plain arithmetic that every curve needs.</summary>
internal static class Raw
{
    /// <summary>Relative rounding of a double: half a unit in the last place.</summary>
    internal const double Epsilon = 1.1102230246251565e-16;

    /// <summary>AggressiveOptimization, which netstandard2.0 has no name for.</summary>
    internal const MethodImplOptions NotTiered = (MethodImplOptions)512;

    // Squares neither overflow nor vanish between these bounds, so the plain root is right.
    private const double LeastSafe = 1e-140;
    private const double MostSafe = 1e150;

    /// <summary>Length of a vector; safe for very small and very large components.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static double Hypot(double x, double y)
    {
        double squared = (x * x) + (y * y);
        return squared > LeastSafe && squared < MostSafe ? Math.Sqrt(squared) : HypotScaled(x, y);
    }

    /// <summary>a b + c, in one step where the machine has it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static double MultiplyAdd(double a, double b, double c)
    {
#if NET
        if (Fma.IsSupported || AdvSimd.IsSupported)
        {
            return Math.FusedMultiplyAdd(a, b, c);
        }
#endif
        return (a * b) + c;
    }

    internal static double Clamp(double value, double least, double most) => value < least ? least : value > most ? most : value;

    /// <summary>Refuses NaN and infinity where a search begins: inside it every comparison with a NaN is false, so nothing would end it.</summary>
    /// <remarks>One comparison; a sum of several numbers is refused where one of them is.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static void RequireFinite(double value, string name)
    {
        if (!(Math.Abs(value) <= double.MaxValue))
        {
            Guard.Finite(value, name);
        }
    }

    private static double HypotScaled(double x, double y)
    {
        double larger = Math.Max(Math.Abs(x), Math.Abs(y));
        if (larger == 0 || double.IsNaN(larger) || double.IsInfinity(larger))
        {
            return larger;
        }

        x /= larger;
        y /= larger;
        return larger * Math.Sqrt((x * x) + (y * y));
    }
}
