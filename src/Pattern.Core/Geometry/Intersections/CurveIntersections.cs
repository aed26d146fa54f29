using System;
using System.Diagnostics.Contracts;

namespace Pattern.Core.Geometry;

/// <summary>All that two curves have in common: points, and stretches that lie on top of each other.</summary>
/// <remarks>A value with room inside, so that asking allocates nothing. Two cubics cross at most nine times.
/// Points come in the order of the first curve. A point on a reported stretch is not reported again.</remarks>
public unsafe struct CurveIntersections
{
    private const int PointRoom = 12;
    private const int OverlapRoom = 6;

    private fixed double _first[PointRoom];
    private fixed double _second[PointRoom];
    private fixed double _x[PointRoom];
    private fixed double _y[PointRoom];
    private fixed double _angleRad[PointRoom];
    private fixed double _overlaps[OverlapRoom * 4];
    private int _touching;

    /// <summary>How many points there are.</summary>
    public int Count { readonly get; private set; }

    /// <summary>How many stretches there are.</summary>
    public int OverlapCount { readonly get; private set; }

    /// <summary>Whether the curves have nothing in common.</summary>
    public readonly bool IsEmpty => Count == 0 && OverlapCount == 0;

    /// <summary>One of the points.</summary>
    /// <param name="index">From 0 to less than <see cref="Count"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such point.</exception>
    public readonly Intersection this[int index]
    {
        get
        {
            Diagnostics.Guard.InRange(index, 0, Count - 1, nameof(index));
            return new Intersection(
                _first[index], _second[index], new Point2D(_x[index], _y[index]), _angleRad[index], (_touching & (1 << index)) != 0);
        }
    }

    /// <summary>One of the stretches.</summary>
    /// <param name="index">From 0 to less than <see cref="OverlapCount"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such stretch.</exception>
    [Pure]
    public readonly Overlap OverlapAt(int index)
    {
        Diagnostics.Guard.InRange(index, 0, OverlapCount - 1, nameof(index));
        int at = index * 4;
        return new Overlap(_overlaps[at], _overlaps[at + 1], _overlaps[at + 2], _overlaps[at + 3]);
    }

    internal readonly double FirstRaw(int index) => _first[index];

    internal readonly double SecondRaw(int index) => _second[index];

    internal readonly bool IsTouchingRaw(int index) => (_touching & (1 << index)) != 0;

    internal readonly double OverlapFromRaw(int index) => _overlaps[index * 4];

    internal readonly double OverlapToRaw(int index) => _overlaps[(index * 4) + 1];

    /// <summary>Puts a point in its place in the order of the first curve.</summary>
    internal void Insert(in Intersection hit)
    {
        if (Count == PointRoom)
        {
            return;
        }

        int at = Count;
        while (at > 0 && (_first[at - 1] > hit.FirstParameter || (_first[at - 1] == hit.FirstParameter && _second[at - 1] > hit.SecondParameter)))
        {
            at--;
        }

        for (int i = Count; i > at; i--)
        {
            Move(i - 1, i);
        }

        Count++;
        Set(at, hit);
    }

    internal void RemoveAt(int index)
    {
        for (int i = index + 1; i < Count; i++)
        {
            Move(i, i - 1);
        }

        Count--;
    }

    internal void Insert(in Overlap overlap)
    {
        if (OverlapCount == OverlapRoom)
        {
            return;
        }

        int at = OverlapCount * 4;
        while (at > 0 && _overlaps[at - 4] > overlap.FirstFrom)
        {
            for (int k = 0; k < 4; k++)
            {
                _overlaps[at + k] = _overlaps[at - 4 + k];
            }

            at -= 4;
        }

        _overlaps[at] = overlap.FirstFrom;
        _overlaps[at + 1] = overlap.FirstTo;
        _overlaps[at + 2] = overlap.SecondFrom;
        _overlaps[at + 3] = overlap.SecondTo;
        OverlapCount++;
    }

    /// <summary>The same seen from the second curve.</summary>
    internal readonly CurveIntersections Swapped()
    {
        CurveIntersections swapped = default;
        for (int i = 0; i < Count; i++)
        {
            swapped.Insert(this[i].Swapped());
        }

        for (int i = 0; i < OverlapCount; i++)
        {
            swapped.Insert(OverlapAt(i).Swapped());
        }

        return swapped;
    }

    private void Set(int at, in Intersection hit)
    {
        _first[at] = hit.FirstParameter;
        _second[at] = hit.SecondParameter;
        _x[at] = hit.Point.XMm;
        _y[at] = hit.Point.YMm;
        _angleRad[at] = hit.AngleRad;
        _touching = hit.IsTouching ? _touching | (1 << at) : _touching & ~(1 << at);
    }

    private void Move(int from, int to)
    {
        _first[to] = _first[from];
        _second[to] = _second[from];
        _x[to] = _x[from];
        _y[to] = _y[from];
        _angleRad[to] = _angleRad[from];
        _touching = (_touching & (1 << from)) != 0 ? _touching | (1 << to) : _touching & ~(1 << to);
    }

    /// <summary>How many points and stretches.</summary>
    public readonly override string ToString()
        => FormattableString.Invariant($"{Count} intersections, {OverlapCount} overlaps");
}
