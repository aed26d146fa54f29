using System;
using System.Collections.Generic;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>Removes from an offset what lies nearer to the source than the width: loops at concave corners and of tight curves.</summary>
/// <remarks>Pieces are cut where they cross. Between cuts a run of pieces is the width away from the source all along, or nowhere;
/// so one point of each, its true parallel point and not the fitted one, decides for the run. That holds for open and
/// closed paths alike, on either side, and keeps apart what a winding number cannot on open ones.</remarks>
internal sealed partial class OffsetTrim
{
    // Ends of neighbours that are this near are one place; rounding of coordinates of a sheet is far less.
    private const double MeetMm = 1e-3 * GeometryTolerance.JoinMm;

    private readonly PathSegment[] _source;
    private readonly BoundingBox[] _sourceBoxes;
    private readonly List<OffsetElement> _elements;
    private readonly double _widthMm;
    private readonly double _toleranceMm;
    private readonly double _magnitudeMm;
    private readonly bool _isMitred;
    private readonly List<Cut> _cuts = new();
    private readonly List<Run> _runs = new();
    private readonly List<OffsetChain> _chains = new();
    private bool _hasOverlaps;

    internal OffsetTrim(CurvePath source, List<OffsetElement> elements, double widthMm, double toleranceMm, double magnitudeMm, bool isMitred)
    {
        _source = source.SegmentsRaw;
        _sourceBoxes = new BoundingBox[_source.Length];
        for (int i = 0; i < _source.Length; i++)
        {
            _sourceBoxes[i] = _source[i].LooseBounds;
        }

        _elements = elements;
        _widthMm = widthMm;
        _toleranceMm = toleranceMm;
        _magnitudeMm = magnitudeMm;
        _isMitred = isMitred;
    }

    /// <summary>Trims the pieces and adds what remains.</summary>
    /// <param name="pieces">In order.</param>
    /// <param name="barriers">Lines at which pieces may come too near, and which are no part of the offset.</param>
    /// <param name="closes">Whether the last piece is followed by the first.</param>
    /// <param name="paths">Receives what remains.</param>
    internal void Trim(List<OffsetPiece> pieces, List<PathSegment> barriers, bool closes, List<CurvePath> paths)
    {
        if (pieces.Count == 0)
        {
            return;
        }

        _cuts.Clear();
        MarkMeeting(pieces, closes);
        _hasOverlaps = false;
        FindCuts(pieces);
        FindCuts(pieces, barriers);
        _cuts.Sort(static (a, b) => a.Piece != b.Piece ? a.Piece.CompareTo(b.Piece) : a.T.CompareTo(b.T));
        MakeRuns(pieces);
        int first = paths.Count;

        // Rounding may put a run that is exactly the width away a hair nearer; then less is asked.
        double slackMm = 128 * Raw.Epsilon * _magnitudeMm;
        for (int attempt = 0; attempt < 4; attempt++)
        {
            _chains.Clear();
            MarkKept(pieces, slackMm);
            if (TryChain(pieces, closes && barriers.Count == 0, out Point2D loose))
            {
                // On a simple outline with one result a point that runs into something makes that result cross itself.
                bool isAlone = barriers.Count == 0 && _chains.Count == 1;
                foreach (OffsetChain chain in _chains)
                {
                    paths.Add(_isMitred ? OffsetMitre.Mitred(chain, isAlone ? null : this) : chain.ToPath());
                }

                paths.Sort(first, paths.Count - first, LongestFirst.Instance);
                return;
            }

            if (attempt == 3)
            {
                throw new ConstructionException(
                    DiagnosticCode.OffsetUnjoined, Length.FromMillimeters(_widthMm), loose, Length.FromMillimeters(_toleranceMm));
            }

            slackMm = Math.Min(slackMm * 1000, _toleranceMm);
        }
    }

    private static void MarkMeeting(List<OffsetPiece> pieces, bool closes)
    {
        for (int i = 0; i < pieces.Count; i++)
        {
            OffsetPiece piece = pieces[i];
            OffsetPiece before = pieces[(i + pieces.Count - 1) % pieces.Count];
            piece.MeetsBefore = (i > 0 || closes) && before.Segment.End.DistanceMm(piece.Segment.Start) <= MeetMm;
            pieces[i] = piece;
        }
    }

    private void FindCuts(List<OffsetPiece> pieces)
    {
        int count = pieces.Count;
        var hulls = new CubicBezier[count];
        var boxes = new BoundingBox[count];
        bool[] hasHull = new bool[count];
        for (int i = 0; i < count; i++)
        {
            hasHull[i] = pieces[i].Segment.TryHull(out hulls[i]);
            boxes[i] = hasHull[i] ? hulls[i].ControlBounds : pieces[i].Segment.LooseBounds;
        }

        for (int i = 0; i < count; i++)
        {
            for (int k = i + 1; k < count; k++)
            {
                if (!boxes[i].IsNear(boxes[k], 0))
                {
                    continue;
                }

                bool follows = k == i + 1 && pieces[k].MeetsBefore;
                bool precedes = i == 0 && k == count - 1 && pieces[0].MeetsBefore;
                if (hasHull[i] && hasHull[k])
                {
                    if (!follows && !precedes ? PieceTests.AreApart(hulls[i], hulls[k], GeometryTolerance.DefaultMm)
                        : follows != precedes && (PieceTests.LeadApart(hulls[i], follows ? -1 : 1, hulls[k], follows ? 1 : -1)
                            || PieceTests.MeetAtMostOnce(hulls[i], hulls[k])))
                    {
                        continue;
                    }
                }

                Intersector.Find(pieces[i].Segment, pieces[k].Segment, null, out CurveIntersections hits);
                for (int h = 0; h < hits.Count; h++)
                {
                    Intersection hit = hits[h];
                    _cuts.Add(new Cut(i, hit.FirstParameter, hit.Point));
                    _cuts.Add(new Cut(k, hit.SecondParameter, hit.Point));
                }

                for (int h = 0; h < hits.OverlapCount; h++)
                {
                    Overlap stretch = hits.OverlapAt(h);
                    _hasOverlaps = true;
                    AddOverlapEnd(pieces, i, stretch.FirstFrom, k, stretch.SecondFrom);
                    AddOverlapEnd(pieces, i, stretch.FirstTo, k, stretch.SecondTo);
                }
            }
        }
    }

    private void FindCuts(List<OffsetPiece> pieces, List<PathSegment> barriers)
    {
        foreach (PathSegment barrier in barriers)
        {
            for (int i = 0; i < pieces.Count; i++)
            {
                Intersector.Find(pieces[i].Segment, barrier, null, out CurveIntersections hits);
                for (int h = 0; h < hits.Count; h++)
                {
                    _cuts.Add(new Cut(i, hits[h].FirstParameter, hits[h].Point));
                }

                for (int h = 0; h < hits.OverlapCount; h++)
                {
                    Overlap stretch = hits.OverlapAt(h);
                    _cuts.Add(new Cut(i, stretch.FirstFrom, pieces[i].Segment.PointAtRaw(stretch.FirstFrom)));
                    _cuts.Add(new Cut(i, stretch.FirstTo, pieces[i].Segment.PointAtRaw(stretch.FirstTo)));
                }
            }
        }
    }

    private void AddOverlapEnd(List<OffsetPiece> pieces, int i, double t, int k, double u)
    {
        Point2D at = pieces[i].Segment.PointAtRaw(t);
        _cuts.Add(new Cut(i, t, at));
        _cuts.Add(new Cut(k, u, at));
    }

    // Splits pieces at their cuts, and strings together what meets naturally.
    private void MakeRuns(List<OffsetPiece> pieces)
    {
        _runs.Clear();
        int cut = 0;
        for (int i = 0; i < pieces.Count; i++)
        {
            PathSegment segment = pieces[i].Segment;
            Point2D start = segment.Start;
            Point2D end = segment.End;
            double from = 0;
            Point2D fromPoint = start;
            bool goesOn = pieces[i].MeetsBefore;
            for (; cut < _cuts.Count && _cuts[cut].Piece == i; cut++)
            {
                Cut c = _cuts[cut];

                // A cut at an end cuts nothing off, but ends the run there.
                if (c.Point.DistanceMm(fromPoint) <= MeetMm || c.T <= from)
                {
                    goesOn &= from > 0;
                    continue;
                }

                if (c.Point.DistanceMm(end) <= MeetMm || c.T >= 1)
                {
                    break;
                }

                _runs.Add(new Run(i, from, c.T, fromPoint, c.Point, goesOn));
                from = c.T;
                fromPoint = c.Point;
                goesOn = false;
            }

            bool cutAtEnd = cut < _cuts.Count && _cuts[cut].Piece == i;
            while (cut < _cuts.Count && _cuts[cut].Piece == i)
            {
                cut++;
            }

            _runs.Add(new Run(i, from, 1, fromPoint, end, goesOn) { IsCutAtEnd = cutAtEnd });
        }
    }

    private void MarkKept(List<OffsetPiece> pieces, double slackMm)
    {
        int count = _runs.Count;

        // A ring without any cut is one run; else begin where one does.
        int begin = 0;
        while (begin < count && GoesOn(begin))
        {
            begin++;
        }

        begin = begin == count ? 0 : begin;
        for (int k = 0; k < count;)
        {
            int longest = 0;
            double longestMm = -1;
            int length = 0;
            do
            {
                int index = (begin + k + length) % count;
                Run run = _runs[index];
                double sizeMm = SizeMm(pieces, run);
                if (sizeMm > longestMm)
                {
                    longestMm = sizeMm;
                    longest = index;
                }

                length++;
            }
            while (k + length < count && GoesOn((begin + k + length) % count));

            bool isKept = IsClear(TruePoint(pieces[_runs[longest].Piece], _runs[longest]), slackMm);
            for (int n = 0; n < length; n++)
            {
                int index = (begin + k + n) % count;
                Run run = _runs[index];
                run.IsKept = isKept;
                _runs[index] = run;
            }

            k += length;
        }
    }

    // From end to end by way of the middle: not nothing even on a full circle.
    private static double SizeMm(List<OffsetPiece> pieces, in Run run)
    {
        Point2D middle = pieces[run.Piece].Segment.PointAtRaw(0.5 * (run.From + run.To));
        return run.Start.DistanceMm(middle) + middle.DistanceMm(run.End);
    }

    private bool GoesOn(int index) => _runs[index].GoesOn && !_runs[(index + _runs.Count - 1) % _runs.Count].IsCutAtEnd;

    /// <summary>Whether a straight line keeps its distance, as far as eight points of it tell.</summary>
    internal bool IsClear(in LineSegment line)
    {
        for (int i = 1; i <= 8; i++)
        {
            if (!IsClear(line.PointAtRaw(i / 8.0), _toleranceMm))
            {
                return false;
            }
        }

        return true;
    }

    private bool IsClear(in Point2D point, double slackMm)
    {
        double limitMm = Math.Abs(_widthMm) - slackMm;
        for (int i = 0; i < _source.Length; i++)
        {
            double boundMm = limitMm;
            if (_sourceBoxes[i].DistanceMm(point) < limitMm && _source[i].TryCloserRaw(point, ref boundMm, out _))
            {
                return false;
            }
        }

        return true;
    }

    // The point half-way along a run, on the exact parallel.
    private Point2D TruePoint(in OffsetPiece piece, in Run run)
    {
        double s = 0.5 * (run.From + run.To);
        if (piece.Element < 0)
        {
            return piece.Segment.PointAtRaw(s);
        }

        OffsetElement element = _elements[piece.Element];
        double t = piece.From + (s * (piece.To - piece.From));
        if (element.Source.Kind == PathSegmentKind.Cubic)
        {
            t = Abreast(piece, piece.Segment.PointAtRaw(s), t, element.Source.CubicRaw);
        }

        Point2D on = element.Source.PointAtRaw(t);
        return element.Source.TryDirectionAtRaw(t, out Direction heading)
            ? new Point2D(on.XMm - (_widthMm * heading.Y), on.YMm + (_widthMm * heading.X))
            : piece.Segment.PointAtRaw(s);
    }

    // The fitted cubic runs a little otherwise than the source: to where the source is abreast of a point of it. Bracketed, since next
    // to a turning point of the parallel the plain method of Newton goes astray.
    private static double Abreast(in OffsetPiece piece, in Point2D at, double t, in CubicBezier cubic)
    {
        var source = new PowerCubic(cubic);
        double low = piece.From;
        double high = piece.To;
        for (int i = 0; i < 20; i++)
        {
            source.At(t, out double x, out double y, out double vx, out double vy);
            source.SecondAt(t, out double ax, out double ay);
            double ahead = ((x - at.XMm) * vx) + ((y - at.YMm) * vy);
            double slope = (vx * vx) + (vy * vy) + ((x - at.XMm) * ax) + ((y - at.YMm) * ay);
            if (ahead < 0)
            {
                low = t;
            }
            else
            {
                high = t;
            }

            double next = t - (ahead / slope);
            if (!(next >= low && next <= high))
            {
                next = 0.5 * (low + high);
            }

            if (Math.Abs(next - t) <= 1e-6 * (piece.To - piece.From))
            {
                return next;
            }

            t = next;
        }

        return t;
    }

    private readonly struct Cut
    {
        internal readonly int Piece;
        internal readonly double T;
        internal readonly Point2D Point;

        internal Cut(int piece, double t, in Point2D point)
        {
            Piece = piece;
            T = t;
            Point = point;
        }
    }

    private struct Run
    {
        internal readonly int Piece;
        internal readonly double From;
        internal readonly double To;
        internal readonly Point2D Start;
        internal readonly Point2D End;

        /// <summary>Begins where the run before ends, both parts of the same smooth piece or joined pieces, and uncut.</summary>
        internal readonly bool GoesOn;
        internal bool IsCutAtEnd;
        internal bool IsKept;

        internal Run(int piece, double from, double to, in Point2D start, in Point2D end, bool goesOn)
        {
            Piece = piece;
            From = from;
            To = to;
            Start = start;
            End = end;
            GoesOn = goesOn;
            IsCutAtEnd = false;
            IsKept = false;
        }
    }

    private sealed class LongestFirst : IComparer<CurvePath>
    {
        internal static readonly LongestFirst Instance = new();

        public int Compare(CurvePath? x, CurvePath? y)
        {
            BoundingBox a = x!.Bounds;
            BoundingBox b = y!.Bounds;
            double sizeA = (a.RightMm - a.LeftMm) + (a.TopMm - a.BottomMm);
            double sizeB = (b.RightMm - b.LeftMm) + (b.TopMm - b.BottomMm);
            return sizeB.CompareTo(sizeA);
        }
    }
}
