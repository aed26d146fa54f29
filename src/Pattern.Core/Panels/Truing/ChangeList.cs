using System;
using System.Collections.Generic;

namespace Pattern.Core.Panels;

/// <summary>Collects what truing changed; what stayed is not listed.</summary>
internal sealed class ChangeList
{
    // Rounding on the way of a line to its closed place and back.
    private const double SameMm = 1e-9;
    private const double SameRad = 1e-10;

    private readonly List<TruingChange> _lengths = new();
    private readonly List<CornerChange> _angles = new();

    internal void Length(string what, string place, double beforeMm, double afterMm, double? targetMm = null)
    {
        if (Math.Abs(afterMm - beforeMm) > SameMm)
        {
            _lengths.Add(new TruingChange(what, place, beforeMm, afterMm, targetMm ?? afterMm));
        }
    }

    internal void Angle(string what, string place, double beforeRad, double afterRad)
    {
        if (Math.Abs(afterRad - beforeRad) > SameRad)
        {
            _angles.Add(new CornerChange(what, place, beforeRad, afterRad));
        }
    }

    internal void Add(TruingResult other)
    {
        _lengths.AddRange(other.Changes);
        _angles.AddRange(other.Corners);
    }

    internal TruingChange[] Lengths() => _lengths.ToArray();

    internal CornerChange[] Angles() => _angles.ToArray();
}
