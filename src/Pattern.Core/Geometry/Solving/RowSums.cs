using System;
using System.Runtime.CompilerServices;
#if NET
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
#endif

namespace Pattern.Core.Geometry;

/// <summary>Products and sums of rows of numbers, four at a time where the machine can: one after the other each sum waits for the one before.</summary>
internal static class RowSums
{
    /// <summary>The sum of the products, entry by entry.</summary>
    [MethodImpl(Raw.NotTiered)]
    internal static double Dot(double[] a, int atA, double[] b, int atB, int count)
    {
        int i = 0;
        double sum = 0;
#if NET
        if (Vector256.IsHardwareAccelerated && count >= 4)
        {
            ref double firstA = ref MemoryMarshal.GetReference(a.AsSpan(atA, count));
            ref double firstB = ref MemoryMarshal.GetReference(b.AsSpan(atB, count));
            Vector256<double> even = Vector256<double>.Zero;
            Vector256<double> odd = Vector256<double>.Zero;
            for (; i + 8 <= count; i += 8)
            {
                even = Vector256.FusedMultiplyAdd(Vector256.LoadUnsafe(ref firstA, (nuint)i), Vector256.LoadUnsafe(ref firstB, (nuint)i), even);
                odd = Vector256.FusedMultiplyAdd(Vector256.LoadUnsafe(ref firstA, (nuint)i + 4), Vector256.LoadUnsafe(ref firstB, (nuint)i + 4), odd);
            }

            if (i + 4 <= count)
            {
                even = Vector256.FusedMultiplyAdd(Vector256.LoadUnsafe(ref firstA, (nuint)i), Vector256.LoadUnsafe(ref firstB, (nuint)i), even);
                i += 4;
            }

            sum = Vector256.Sum(even + odd);
        }
#endif
        for (; i < count; i++)
        {
            sum += a[atA + i] * b[atB + i];
        }

        return sum;
    }

    /// <summary>Adds a multiple of one row to another.</summary>
    [MethodImpl(Raw.NotTiered)]
    internal static void Add(double factor, double[] a, int atA, double[] into, int at, int count)
    {
        int i = 0;
#if NET
        if (Vector256.IsHardwareAccelerated && count >= 4)
        {
            ref double first = ref MemoryMarshal.GetReference(a.AsSpan(atA, count));
            ref double target = ref MemoryMarshal.GetReference(into.AsSpan(at, count));
            var factors = Vector256.Create(factor);
            for (; i + 4 <= count; i += 4)
            {
                Vector256.FusedMultiplyAdd(factors, Vector256.LoadUnsafe(ref first, (nuint)i), Vector256.LoadUnsafe(ref target, (nuint)i)).StoreUnsafe(ref target, (nuint)i);
            }
        }
#endif
        for (; i < count; i++)
        {
            into[at + i] += factor * a[atA + i];
        }
    }

    /// <summary>Writes a multiple of one row into another.</summary>
    internal static void Scale(double factor, double[] a, int atA, double[] into, int at, int count)
    {
        Array.Clear(into, at, count);
        Add(factor, a, atA, into, at, count);
    }
}
