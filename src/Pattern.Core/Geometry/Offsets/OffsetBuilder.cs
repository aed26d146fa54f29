using System;
using System.Collections.Generic;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>Makes the pieces of an offset, joins them at corners, and has them trimmed.</summary>
internal sealed class OffsetBuilder
{
    // Half as much again as was found at eleven places: what an error between these may reach.
    private const double Caution = 1.5;

    // In steps between two neighbouring numbers of the size of the coordinates: a fit that is to be closer than this halves for ever.
    private const double LeastTolerance = 4096 * 2.220446049250313e-16;

    // Of coordinates: nearer than this to a cusp, headings and curvature are made of rounding.
    private const double LeastShare = 1e-10;
    private const int MostParts = 8;
    private const int MostDepth = 24;

    // Eight parts a time, 24 times over, would never end. A path of a thousand segments takes a few thousand fits.
    private const int MostFits = 200_000;

    private readonly CurvePath _source;
    private readonly double _widthMm;
    private readonly OffsetJoin _join;
    private readonly double _toleranceMm;
    private readonly List<OffsetElement> _elements = new();
    private readonly List<OffsetPiece> _pieces = new();
    private readonly int _mostFits;
    private double _errorMm;
    private int _fits;

    private OffsetBuilder(CurvePath source, double widthMm, OffsetJoin join, double toleranceMm, int mostFits)
    {
        _mostFits = mostFits;
        _source = source;
        _widthMm = widthMm;
        _join = join;
        _toleranceMm = toleranceMm;
    }

    internal static PathOffset Build(CurvePath source, double widthMm, OffsetJoin join, double toleranceMm, int mostFits = MostFits)
        => widthMm == 0 ? new PathOffset(new List<CurvePath> { source }, 0) : new OffsetBuilder(source, widthMm, join, toleranceMm, mostFits).Build();

    private PathOffset Build()
    {
        BoundingBox box = _source.Bounds;
        double magnitude = Math.Max(
            Math.Max(Math.Abs(box.LeftMm), Math.Abs(box.RightMm)), Math.Max(Math.Abs(box.BottomMm), Math.Abs(box.TopMm))) + Math.Abs(_widthMm);
        if (!(LeastTolerance * magnitude <= _toleranceMm))
        {
            throw TooFine(magnitude);
        }

        MakeElements(magnitude);
        if (_elements.Count == 0)
        {
            throw new InvalidOperationException(MessageRegistry.Format(DiagnosticCode.OffsetOfNothing));
        }

        var paths = new List<CurvePath>();
        bool[] smooth = SmoothenJoints();
        int corner = FirstCorner(smooth);
        if (_join == OffsetJoin.Open && corner >= 0)
        {
            BuildStretches(smooth, corner, paths);
        }
        else
        {
            MakePieces(smooth);
            var trim = new OffsetTrim(_source, _elements, _widthMm, _toleranceMm, magnitude, _join == OffsetJoin.Mitre);
            trim.Trim(_pieces, Barriers(), _source.IsClosed, paths);
        }

        if (paths.Count == 0)
        {
            throw new ConstructionException(DiagnosticCode.OffsetVanishes, Length.FromMillimeters(_widthMm))
            {
                Measured = Length.FromMillimeters(_widthMm),
            };
        }

        return new PathOffset(paths, _errorMm);
    }

    private ConstructionException TooFine(double magnitude)
        => new(DiagnosticCode.OffsetTooFine, Length.FromMillimeters(_widthMm), Length.FromMillimeters(_toleranceMm), Length.FromMillimeters(magnitude), Length.FromMillimeters(_toleranceMm / LeastTolerance))
        {
            Measured = Length.FromMillimeters(magnitude),
            Allowed = Length.FromMillimeters(_toleranceMm / LeastTolerance),
        };

    private void MakeElements(double magnitude)
    {
        OffsetElements.Of(_source, _widthMm, LeastShare * magnitude, _elements);
    }

    private void MakePieces(bool[] smooth)
    {
        int count = _elements.Count;
        for (int i = 0; i < count; i++)
        {
            int before = (i + count - 1) % count;
            if ((i > 0 || _source.IsClosed) && !smooth[before])
            {
                AddJoin(_elements[before], _elements[i]);
            }

            AddParallel(i);
        }
    }

    // Each stretch between corners is an open path that knows nothing of the others.
    private void BuildStretches(bool[] smooth, int corner, List<CurvePath> paths)
    {
        var stretch = new List<PathSegment>();
        int count = _elements.Count;
        for (int k = 0; k < count; k++)
        {
            int index = (corner + k) % count;
            OffsetElement element = _elements[index];
            stretch.Add(element.Source.SubSegmentRaw(element.From, element.To));
            if (k < count - 1 && (smooth[index] || GoesOnWithin(index)))
            {
                continue;
            }

            var builder = new OffsetBuilder(CurvePath.Trusted(stretch.ToArray(), isClosed: false), _widthMm, OffsetJoin.Round, _toleranceMm, _mostFits);
            stretch.Clear();
            try
            {
                PathOffset part = builder.Build();
                paths.AddRange(part.Paths);
                _errorMm = Math.Max(_errorMm, part.AchievedError.Millimeters);
            }
            catch (ConstructionException e) when (e.Code == DiagnosticCode.OffsetVanishes)
            {
                // A stretch all of which bends tighter than the width leaves nothing; others may.
                continue;
            }
        }
    }

    // The parallel turns round here, but the path itself has no corner.
    private bool GoesOnWithin(int index)
    {
        OffsetElement next = _elements[(index + 1) % _elements.Count];
        return Math.Abs(_widthMm * _elements[index].EndHeading.TurnRadTo(next.StartHeading)) <= 0.125 * _toleranceMm;
    }

    // The first element that begins at a corner of the path, or -1.
    private int FirstCorner(bool[] smooth)
    {
        int count = _elements.Count;
        for (int i = 0; i < count; i++)
        {
            int before = (i + count - 1) % count;
            if (!(smooth[before] || GoesOnWithin(before)) || (i == 0 && !_source.IsClosed && HasCornerInside(smooth)))
            {
                return i;
            }
        }

        return -1;
    }

    private bool HasCornerInside(bool[] smooth)
    {
        for (int i = 0; i + 1 < _elements.Count; i++)
        {
            if (!(smooth[i] || GoesOnWithin(i)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Where an offset can come too near to its source without meeting itself: the other side of the path, and round its ends.</summary>
    /// <remarks>Not on a closed path that is simple: there the other side cannot be reached.</remarks>
    private List<PathSegment> Barriers()
    {
        var barriers = new List<PathSegment>();
        if (_source.IsClosed && _source.IsSimple())
        {
            return barriers;
        }

        // Finer, so that the error of a barrier hardly adds to that of what it cuts.
        var other = new OffsetBuilder(_source, -_widthMm, OffsetJoin.Round, 0.1 * _toleranceMm, _mostFits);
        BoundingBox box = _source.Bounds;
        other.MakeElements(Math.Max(Math.Abs(box.LeftMm), Math.Abs(box.RightMm)));
        other.MakePieces(other.SmoothenJoints());
        foreach (OffsetPiece piece in other._pieces)
        {
            barriers.Add(piece.Segment);
        }

        if (!_source.IsClosed)
        {
            AddCap(_elements[0].Start, _elements[0].StartHeading, barriers);
            AddCap(_elements[_elements.Count - 1].End, _elements[_elements.Count - 1].EndHeading.Reversed, barriers);
        }

        return barriers;
    }

    // The half of the circle round an end that lies beyond it; the other half is within reach of the path anyway.
    private void AddCap(in Point2D end, in Direction inward, List<PathSegment> barriers)
    {
        double startRad = inward.AngleRad + (0.5 * Math.PI);
        barriers.Add(PathSegment.FromArc(new CircularArc(end.XMm, end.YMm, Math.Abs(_widthMm), startRad, 0.5 * Math.PI)));
        barriers.Add(PathSegment.FromArc(new CircularArc(end.XMm, end.YMm, Math.Abs(_widthMm), startRad + (0.5 * Math.PI), 0.5 * Math.PI)));
    }

    // A turn so small that the parallels part by less than the tolerance is no corner.
    private bool IsSmooth(in OffsetElement before, in OffsetElement after)
        => Math.Abs(_widthMm * before.EndHeading.TurnRadTo(after.StartHeading)) <= 0.125 * _toleranceMm
            && before.IsBackwards == after.IsBackwards;

    // Gives both sides of every smooth joint the same place and heading, so that the parallels meet exactly.
    private bool[] SmoothenJoints()
    {
        int count = _elements.Count;
        bool[] smooth = new bool[count];
        for (int i = 0; i < count; i++)
        {
            if (i == count - 1 && !_source.IsClosed)
            {
                break;
            }

            int next = (i + 1) % count;
            OffsetElement before = _elements[i];
            OffsetElement after = _elements[next];
            if (!IsSmooth(before, after))
            {
                continue;
            }

            smooth[i] = true;
            _errorMm = Math.Max(_errorMm, 0.5 * Math.Abs(_widthMm * before.EndHeading.TurnRadTo(after.StartHeading)));
            if (Direction.TryOfRaw(before.EndHeading.X + after.StartHeading.X, before.EndHeading.Y + after.StartHeading.Y, out Direction mean))
            {
                before.EndHeading = mean;
                before.End = after.Start;
                _elements[i] = before;
                after = _elements[next];
                after.StartHeading = mean;
                _elements[next] = after;
            }
        }

        return smooth;
    }

    private Point2D Beside(in Point2D point, in Direction heading)
        => new(point.XMm - (_widthMm * heading.Y), point.YMm + (_widthMm * heading.X));

    private void AddJoin(in OffsetElement before, in OffsetElement after)
    {
        double turn = before.EndHeading.TurnRadTo(after.StartHeading);
        const double AlmostBack = Math.PI - 1e-3;
        if (Math.Abs(turn) > AlmostBack)
        {
            turn = Math.Abs(turn) * TurnBackSign(before, after);
        }

        Point2D corner = after.Start;
        if (turn * _widthMm >= -0.125 * _toleranceMm || corner.DistanceMm(before.End) > Math.Max(GeometryTolerance.JoinMm, _toleranceMm))
        {
            return;
        }

        // Always round at first, which is the true boundary; mitres are put in where the whole arc remains.
        Point2D from = Beside(corner, before.EndHeading);
        double startRad = Math.Atan2(from.YMm - corner.YMm, from.XMm - corner.XMm);
        AddPiece(PathSegment.FromArc(new CircularArc(corner.XMm, corner.YMm, Math.Abs(_widthMm), startRad, turn)), -1, 0, 0);
    }

    // Where the path turns back on itself, as at a cusp, the heading does not tell which way it turned; the way out does, left
    // or right of the way in. On top of each other, the tip has both sides: then the side that is asked for.
    private double TurnBackSign(in OffsetElement before, in OffsetElement after)
    {
        Direction heading = after.StartHeading;
        double awayMm = 0.01 * Math.Min(before.Start.DistanceMm(before.End), after.Start.DistanceMm(after.End));
        var beside = new Point2D(after.Start.XMm + (awayMm * heading.X), after.Start.YMm + (awayMm * heading.Y));
        Point2D goingIn = before.Source.SubSegmentRaw(before.From, before.To).ClosestTo(beside).Point;
        Point2D goingOut = after.Source.SubSegmentRaw(after.From, after.To).ClosestTo(beside).Point;
        double leftMm = (heading.X * (goingOut.YMm - goingIn.YMm)) - (heading.Y * (goingOut.XMm - goingIn.XMm));
        double noise = 64 * Raw.Epsilon * (Math.Abs(beside.XMm) + Math.Abs(beside.YMm) + awayMm);
        return leftMm > noise ? -1 : leftMm < -noise ? 1 : -Math.Sign(_widthMm);
    }

    private void AddPiece(in PathSegment segment, int element, double from, double to) => _pieces.Add(new OffsetPiece
    {
        Segment = segment,
        Element = element,
        From = from,
        To = to,
    });

    private void AddParallel(int index)
    {
        OffsetElement element = _elements[index];
        if (element.IsBackwards)
        {
            return;
        }

        Point2D start = Beside(element.Start, element.StartHeading);
        Point2D end = Beside(element.End, element.EndHeading);
        switch (element.Source.Kind)
        {
            case PathSegmentKind.Line:
                AddPiece(PathSegment.FromLine(new LineSegment(start, end)), index, 0, 1);
                break;
            case PathSegmentKind.Arc:
                CircularArc arc = element.Source.ArcRaw;
                double radiusMm = arc.RadiusMm - (_widthMm * Math.Sign(arc.SweepRad));
                AddPiece(
                    PathSegment.FromArc(new CircularArc(arc.CentreXMm, arc.CentreYMm, radiusMm, arc.StartRad, arc.SweepRad)), index, 0, 1);
                break;
            default:
                CubicBezier cubic = element.Source.CubicRaw;
                var fit = new OffsetFit(new PowerCubic(cubic), _widthMm);
                AddFitted(
                    index, cubic, fit, element.From, element.To, start, element.StartHeading, end, element.EndHeading, 0);
                break;
        }
    }

    private void AddFitted(
        int index,
        in CubicBezier cubic,
        in OffsetFit fit,
        double from,
        double to,
        in Point2D start,
        in Direction startHeading,
        in Point2D end,
        in Direction endHeading,
        int depth)
    {
        SearchWork.Step();
        if (++_fits > _mostFits)
        {
            throw TooFine(cubic.MagnitudeMm);
        }

        double enoughMm = _toleranceMm / Caution;
        double error = fit.Fit(from, to, start, startHeading, end, endHeading, enoughMm, out CubicBezier fitted);
        if (error <= enoughMm)
        {
            _errorMm = Math.Max(_errorMm, error);
            AddPiece(PathSegment.FromCubic(fitted), index, from, to);
            return;
        }

        // Next to a turning point of the parallel the parts shrink fast; one within the tolerance is as good as a line.
        double apart = start.DistanceMm(end);
        if (depth >= MostDepth || apart <= 0.25 * _toleranceMm)
        {
            _errorMm = Math.Max(_errorMm, Math.Min(apart, _toleranceMm));
            AddPiece(PathSegment.FromLine(new LineSegment(start, end)), index, from, to);
            return;
        }

        // The error falls with the sixth power of the number of parts.
        int parts = double.IsInfinity(error) ? 2 : (int)Math.Ceiling(Math.Pow(error / (0.7 * enoughMm), 1.0 / 6));
        parts = parts < 2 ? 2 : parts > MostParts ? MostParts : parts;
        Point2D at = start;
        Direction heading = startHeading;
        double t = from;
        for (int i = 1; i <= parts; i++)
        {
            double next = i == parts ? to : from + ((to - from) * i / parts);
            Point2D nextAt = end;
            Direction nextHeading = endHeading;
            if (i < parts && cubic.TryDirectionAt(next, out nextHeading))
            {
                nextAt = Beside(cubic.PointAtRaw(next), nextHeading);
            }

            AddFitted(index, cubic, fit, t, next, at, heading, nextAt, nextHeading, depth + 1);
            t = next;
            at = nextAt;
            heading = nextHeading;
        }
    }
}
