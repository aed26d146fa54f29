using System;
using System.Collections.Generic;

namespace Pattern.Core.Panels;

/// <summary>Collects what truing changed; what stayed is not listed.</summary>
internal sealed class ChangeList
{
    // Rounding on the way of a line to its closed place and back.
    private const double SameMm = 1e-9;
    private const double SameRad = 1e-10;

    private readonly List<Finding> _lengths = new();
    private readonly List<Finding> _angles = new();

    internal void Length(string what, string place, double beforeMm, double afterMm, double? targetMm = null)
    {
        if (Math.Abs(afterMm - beforeMm) > SameMm)
        {
            _lengths.Add(new Finding(what, place, FindingKind.Length, FindingRelation.Equal, afterMm, targetMm ?? afterMm, CheckList.ToleranceMm, beforeMm));
        }
    }

    internal void Angle(string what, string place, double beforeRad, double afterRad)
    {
        if (Math.Abs(afterRad - beforeRad) > SameRad)
        {
            _angles.Add(new Finding(what, place, FindingKind.Angle, FindingRelation.Equal, afterRad, afterRad, CheckList.ToleranceRad, beforeRad));
        }
    }

    internal void Add(TruingResult other)
    {
        _lengths.AddRange(other.Changes);
        _angles.AddRange(other.Corners);
    }

    internal Finding[] Lengths() => _lengths.ToArray();

    internal Finding[] Angles() => _angles.ToArray();
}
