using System;
using System.Diagnostics;

namespace Pattern.Core.Geometry;

/// <summary>Counts the steps of all searches, so that tests can bound the work of a draft without looking at a clock.</summary>
/// <remarks>Built for debugging only: a release build holds no call of <see cref="Step"/>, and counts nothing.</remarks>
internal static class SearchWork
{
    [ThreadStatic]
    private static long _steps;

    /// <summary>The steps taken on this thread so far.</summary>
    internal static long Steps => _steps;

    /// <summary>One stretch looked at, one value asked for, or one curve drawn again.</summary>
    [Conditional("DEBUG")]
    internal static void Step() => _steps++;
}
