using System;
using System.Collections.Generic;

namespace Pattern.Core.Geometry;

/// <summary>Cuts the source of an offset into elements.</summary>
internal readonly struct OffsetElements
{
    private const int MostDepth = 40;

    // From here on a change of direction between both ends of a part is taken for the only one in it.
    private const int BracketDepth = 5;
    private const int LastDepth = 16;

    private readonly double _widthMm;
    private readonly double _leastMm;
    private readonly List<OffsetElement> _elements;
    private readonly Gap _gap;

    private OffsetElements(double widthMm, double leastMm, List<OffsetElement> elements)
    {
        _widthMm = widthMm;
        _leastMm = leastMm;
        _elements = elements;
        _gap = new Gap();
    }

    /// <summary>Adds the elements of a path.</summary>
    /// <param name="path">The source.</param>
    /// <param name="widthMm">Positive to the left.</param>
    /// <param name="leastMm">What is shorter counts as a point.</param>
    /// <param name="elements">Receives the elements.</param>
    internal static void Of(CurvePath path, double widthMm, double leastMm, List<OffsetElement> elements)
    {
        var cutter = new OffsetElements(widthMm, leastMm, elements);
        foreach (PathSegment segment in path.SegmentsRaw)
        {
            switch (segment.Kind)
            {
                case PathSegmentKind.Line:
                    cutter.AddLine(segment.LineRaw);
                    break;
                case PathSegmentKind.Arc:
                    cutter.AddArc(segment);
                    break;
                default:
                    cutter.AddCubic(segment);
                    break;
            }
        }
    }

    private void AddLine(in LineSegment line)
    {
        if (line.LengthMm > _leastMm && Direction.TryOfRaw(line.End.XMm - line.Start.XMm, line.End.YMm - line.Start.YMm, out Direction heading))
        {
            _elements.Add(new OffsetElement
            {
                Source = PathSegment.FromLine(line),
                To = 1,
                Start = line.Start,
                End = line.End,
                StartHeading = heading,
                EndHeading = heading,
            });
        }
    }

    private void AddArc(in PathSegment segment)
    {
        CircularArc arc = segment.ArcRaw;
        if (arc.LengthMm > _leastMm)
        {
            _elements.Add(new OffsetElement
            {
                Source = segment,
                To = 1,
                Start = arc.Start,
                End = arc.End,
                StartHeading = arc.DirectionAtRaw(0),
                EndHeading = arc.DirectionAtRaw(1),
                IsBackwards = arc.RadiusMm - (_widthMm * Math.Sign(arc.SweepRad)) <= _leastMm,
            });
        }
    }

    private void AddCubic(in PathSegment segment)
    {
        CubicBezier cubic = segment.CubicRaw;
        if (cubic.IsStraight(16 * Raw.Epsilon * cubic.MagnitudeMm, out _))
        {
            // Straight, at any speed and perhaps there and back: as lines.
            Point2D at = cubic.Start;
            Polynomial.QuadraticRoots(Along(cubic, 0), Along(cubic, 1), Along(cubic, 2), out double t0, out double t1);
            double low = t0 < t1 || double.IsNaN(t1) ? t0 : t1;
            double high = t0 < t1 || double.IsNaN(t1) ? t1 : t0;
            for (int i = 0; i < 3; i++)
            {
                double t = i == 0 ? low : i == 1 ? high : 1;
                if (t > 0 && (t < 1 || i == 2))
                {
                    Point2D next = cubic.PointAtRaw(t);
                    AddLine(new LineSegment(at, next));
                    at = next;
                }
            }

            return;
        }

        SplitByHeading(segment, cubic, 0, 1, 0);
    }

    private static double Along(in CubicBezier cubic, int leg)
    {
        cubic.IsStraight(double.PositiveInfinity, out Direction along);
        return leg switch
        {
            0 => ((cubic.X1 - cubic.X0) * along.X) + ((cubic.Y1 - cubic.Y0) * along.Y),
            1 => ((cubic.X2 - cubic.X1) * along.X) + ((cubic.Y2 - cubic.Y1) * along.Y),
            _ => ((cubic.X3 - cubic.X2) * along.X) + ((cubic.Y3 - cubic.Y2) * along.Y),
        };
    }

    private void SplitByHeading(in PathSegment whole, in CubicBezier part, double from, double to, int depth)
    {
        SearchWork.Step();
        if (TurnsLessThanARightAngle(part))
        {
            var fit = new OffsetFit(new PowerCubic(whole.CubicRaw), _widthMm);
            int first = _elements.Count;
            SplitByDirection(whole, fit, part, from, to, 0, first);
            return;
        }

        // A cusp, or as good as one: the headings before and after it make a corner.
        if (depth >= MostDepth || PieceTests.Size(part) <= _leastMm)
        {
            CloseUp(whole, Slowest(whole.CubicRaw, from, to));
            return;
        }

        double middle = 0.5 * (from + to);
        part.SplitRaw(0.5, out CubicBezier before, out CubicBezier after);
        SplitByHeading(whole, before, from, middle, depth + 1);
        SplitByHeading(whole, after, middle, to, depth + 1);
    }

    private static bool TurnsLessThanARightAngle(in CubicBezier c)
    {
        double x0 = c.X1 - c.X0;
        double y0 = c.Y1 - c.Y0;
        double x1 = c.X2 - c.X1;
        double y1 = c.Y2 - c.Y1;
        double x2 = c.X3 - c.X2;
        double y2 = c.Y3 - c.Y2;
        return IsWithin(x0, y0, x1, y1) && IsWithin(x1, y1, x2, y2) && IsWithin(x0, y0, x2, y2) && (c.X0 != c.X3 || c.Y0 != c.Y3);
    }

    private static bool IsWithin(double ax, double ay, double bx, double by)
    {
        double dot = (ax * bx) + (ay * by);
        return dot > 0 || (ax == 0 && ay == 0) || (bx == 0 && by == 0);
    }

    private void SplitByDirection(
        in PathSegment whole, in OffsetFit fit, in CubicBezier part, double from, double to, int depth, int first)
    {
        SearchWork.Step();

        // Curvature is the cross product of both derivatives over the speed cubed; on control points both are bounded.
        double x0 = part.X1 - part.X0;
        double y0 = part.Y1 - part.Y0;
        double x1 = part.X2 - part.X1;
        double y1 = part.Y2 - part.Y1;
        double x2 = part.X3 - part.X2;
        double y2 = part.Y3 - part.Y2;
        double c0 = 18 * _widthMm * ((x0 * y1) - (y0 * x1));
        double c1 = 9 * _widthMm * ((x0 * y2) - (y0 * x2));
        double c2 = 18 * _widthMm * ((x1 * y2) - (y1 * x2));
        double most = Math.Max(c0, Math.Max(c1, c2));
        double least = Math.Min(c0, Math.Min(c1, c2));
        if (most <= 0)
        {
            Add(whole, from, to, false, first);
            return;
        }

        double ux = part.X3 - part.X0;
        double uy = part.Y3 - part.Y0;
        double chord = Raw.Hypot(ux, uy);
        double slow = 3 * Math.Min((x0 * ux) + (y0 * uy), Math.Min((x1 * ux) + (y1 * uy), (x2 * ux) + (y2 * uy))) / chord;
        double fast = 3 * Math.Max(Raw.Hypot(x0, y0), Math.Max(Raw.Hypot(x1, y1), Raw.Hypot(x2, y2)));
        if (slow > 0 && most < slow * slow * slow)
        {
            Add(whole, from, to, false, first);
            return;
        }

        if (least > fast * fast * fast)
        {
            Add(whole, from, to, true, first);
            return;
        }

        if (depth >= BracketDepth)
        {
            bool startsBack = !(fit.Stretch(from) > 0);
            bool endsBack = !(fit.Stretch(to) > 0);
            if (startsBack != endsBack)
            {
                double turn = Turn(fit, from, to, startsBack);
                Add(whole, from, turn, startsBack, first);
                Add(whole, turn, to, endsBack, first);
                return;
            }

            if (depth >= LastDepth)
            {
                Add(whole, from, to, startsBack, first);
                return;
            }
        }

        double middle = 0.5 * (from + to);
        part.SplitRaw(0.5, out CubicBezier before, out CubicBezier after);
        SplitByDirection(whole, fit, before, from, middle, depth + 1, first);
        SplitByDirection(whole, fit, after, middle, to, depth + 1, first);
    }

    private static double Turn(in OffsetFit fit, double from, double to, bool startsBack)
    {
        double low = from;
        double high = to;
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            if (middle <= low || middle >= high)
            {
                break;
            }

            if (!(fit.Stretch(middle) > 0) == startsBack)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return 0.5 * (low + high);
    }

    private void Add(in PathSegment whole, double from, double to, bool isBackwards, int first)
    {
        if (!(to > from))
        {
            return;
        }

        CubicBezier cubic = whole.CubicRaw;
        if (!TryArrival(cubic, to, out Direction endHeading))
        {
            return;
        }

        // Goes on with the last element unless that runs the other way; only within one part that turns little.
        int last = _elements.Count - 1;
        if (last >= first && _elements[last].IsBackwards == isBackwards)
        {
            OffsetElement longer = _elements[last];
            longer.To = to;
            longer.End = cubic.PointAtRaw(to);
            longer.EndHeading = endHeading;
            _elements[last] = longer;
            return;
        }

        Point2D start = cubic.PointAtRaw(from);
        Point2D end = cubic.PointAtRaw(to);
        if (start.DistanceMm(end) <= _leastMm)
        {
            CloseUp(whole, Slowest(cubic, from, to));
            return;
        }

        if (cubic.TryDirectionAt(from, out Direction startHeading))
        {
            // What was left out before it has shrunk to a point.
            start = _gap.IsOpen && _gap.Source == whole ? _gap.Point : start;
            _gap.IsOpen = false;
            _elements.Add(new OffsetElement
            {
                Source = whole,
                From = from,
                To = to,
                Start = start,
                End = end,
                StartHeading = startHeading,
                EndHeading = endHeading,
                IsBackwards = isBackwards,
            });
        }
    }

    // With which heading the curve arrives: where it stands still, another one than that with which it goes on.
    private static bool TryArrival(in CubicBezier cubic, double t, out Direction heading)
    {
        bool hasHeading = cubic.TryDirectionAt(t, out heading);
        if (hasHeading && t < 1 && cubic.DerivativeAtRaw(t).LengthMm <= 1e-13 * PieceTests.Size(cubic))
        {
            heading = heading.Reversed;
        }

        return hasHeading;
    }

    // A part too small to have a heading is left out: what is before it and after it meet in one point.
    private void CloseUp(in PathSegment whole, double t)
    {
        // Of several parts left out in a row the slowest point stands for all.
        double speedMm = whole.CubicRaw.DerivativeAtRaw(t).LengthMm;
        bool goesOn = _gap.IsOpen && _gap.Source == whole;
        if (goesOn && _gap.SpeedMm <= speedMm)
        {
            return;
        }

        _gap.IsOpen = true;
        _gap.Source = whole;
        _gap.SpeedMm = speedMm;
        _gap.Point = whole.CubicRaw.PointAtRaw(t);
        int last = _elements.Count - 1;
        if (last >= 0 && _elements[last].Source == whole)
        {
            OffsetElement before = _elements[last];
            before.End = _gap.Point;
            _elements[last] = before;
        }
    }

    // Where the curve is slowest: the very point of a cusp.
    private static double Slowest(in CubicBezier cubic, double from, double to)
    {
        double t = 0.5 * (from + to);
        double xxx = 6 * ((cubic.X3 - cubic.X0) - (3 * (cubic.X2 - cubic.X1)));
        double yyy = 6 * ((cubic.Y3 - cubic.Y0) - (3 * (cubic.Y2 - cubic.Y1)));
        for (int i = 0; i < 4; i++)
        {
            Vector2D v = cubic.DerivativeAtRaw(t);
            Vector2D a = cubic.SecondDerivativeAtRaw(t);
            double slope = a.DotMm2(a) + (v.XMm * xxx) + (v.YMm * yyy);
            double next = Raw.Clamp(t - (v.DotMm2(a) / slope), from, to);
            t = next >= from ? next : t;
        }

        return t;
    }

    private sealed class Gap
    {
        internal bool IsOpen;
        internal PathSegment Source;
        internal Point2D Point;
        internal double SpeedMm;
    }
}
