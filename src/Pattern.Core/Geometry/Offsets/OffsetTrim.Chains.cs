using System;
using System.Collections.Generic;

namespace Pattern.Core.Geometry;

/// <content>Strings what remains into paths.</content>
internal sealed partial class OffsetTrim
{
    private bool TryChain(List<OffsetPiece> pieces, bool closes, out Point2D loose)
    {
        loose = default;
        double snapMm = Math.Max(GeometryTolerance.JoinMm, 1e-3 * _toleranceMm);
        int count = _runs.Count;
        bool[] used = new bool[count];
        DropSpecks(pieces, snapMm);
        if (_hasOverlaps)
        {
            DropDoubles(pieces, snapMm);
        }

        var chain = new List<int>();

        // An open offset begins where nothing kept leads to; rings are what is left.
        for (int pass = closes ? 1 : 0; pass < 2; pass++)
        {
            for (int i = 0; i < count; i++)
            {
                if (!_runs[i].IsKept || used[i] || (pass == 0 && HasBefore(i, snapMm)))
                {
                    continue;
                }

                chain.Clear();
                bool isRing = false;
                for (int at = i; at >= 0;)
                {
                    used[at] = true;
                    chain.Add(at);
                    int next = Next(at, used, snapMm, i);
                    isRing = next == i;
                    at = isRing ? -1 : next;
                }

                double lengthMm = 0;
                foreach (int index in chain)
                {
                    lengthMm += SizeMm(pieces, _runs[index]);
                }

                // A leftover within the tolerance is no part of the offset.
                if (!isRing && (closes || pass == 1))
                {
                    if (lengthMm <= _toleranceMm)
                    {
                        continue;
                    }

                    loose = _runs[chain[chain.Count - 1]].End;
                    return false;
                }

                if (lengthMm > (isRing ? _toleranceMm : snapMm))
                {
                    _chains.Add(Chain(pieces, chain, isRing));
                }
            }
        }

        return true;
    }

    // A run that begins and ends at one place joins nothing, and could be taken for what comes before itself.
    private void DropSpecks(List<OffsetPiece> pieces, double snapMm)
    {
        for (int i = 0; i < _runs.Count; i++)
        {
            Run run = _runs[i];
            run.IsKept &= SizeMm(pieces, run) > 0.5 * snapMm;
            _runs[i] = run;
        }
    }

    // Of two runs on top of each other one is enough; where they run against each other there is no room between them, and both go.
    private void DropDoubles(List<OffsetPiece> pieces, double snapMm)
    {
        for (int i = 0; i < _runs.Count; i++)
        {
            for (int k = i + 1; k < _runs.Count && _runs[i].IsKept; k++)
            {
                if (!_runs[k].IsKept)
                {
                    continue;
                }

                Run a = _runs[i];
                Run b = _runs[k];
                bool isSame = a.Start.DistanceMm(b.Start) <= snapMm && a.End.DistanceMm(b.End) <= snapMm;
                bool isOpposite = a.Start.DistanceMm(b.End) <= snapMm && a.End.DistanceMm(b.Start) <= snapMm;
                Point2D middle = pieces[a.Piece].Segment.PointAtRaw(0.5 * (a.From + a.To));
                if ((isSame || isOpposite) && pieces[b.Piece].Segment.SubSegmentRaw(b.From, b.To).ClosestTo(middle).DistanceMm <= _toleranceMm)
                {
                    b.IsKept = false;
                    a.IsKept = isSame;
                    _runs[k] = b;
                    _runs[i] = a;
                }
            }
        }
    }

    private bool HasBefore(int index, double snapMm)
    {
        for (int i = 0; i < _runs.Count; i++)
        {
            if (i != index && _runs[i].IsKept && _runs[i].End.DistanceMm(_runs[index].Start) <= snapMm)
            {
                return true;
            }
        }

        return false;
    }

    // The kept run that begins where this one ends, the natural one before any other; the first of the chain closes it.
    private int Next(int at, bool[] used, double snapMm, int first)
    {
        int natural = (at + 1) % _runs.Count;
        Point2D end = _runs[at].End;
        int best = -1;
        double bestMm = snapMm;
        for (int i = 0; i < _runs.Count; i++)
        {
            if (!_runs[i].IsKept || (used[i] && i != first))
            {
                continue;
            }

            double apartMm = _runs[i].Start.DistanceMm(end);
            if (apartMm <= snapMm && i == natural)
            {
                return i;
            }

            if (apartMm <= bestMm && (i != at || _runs.Count == 1))
            {
                best = i;
                bestMm = apartMm;
            }
        }

        return best;
    }

    private OffsetChain Chain(List<OffsetPiece> pieces, List<int> chain, bool isRing)
    {
        var segments = new List<PathSegment>(chain.Count);
        var joins = new List<int>();
        for (int i = 0; i < chain.Count; i++)
        {
            Run run = _runs[chain[i]];
            OffsetPiece piece = pieces[run.Piece];
            PathSegment segment = piece.Segment;
            bool isWhole = run.From == 0 && run.To == 1;
            if (!isWhole)
            {
                segment = segment.SubSegmentRaw(run.From, run.To);
            }
            else if (piece.Element < 0)
            {
                joins.Add(segments.Count);
            }

            // Up to exactly where the next one begins.
            bool hasNext = i + 1 < chain.Count || isRing;
            Point2D end = hasNext ? _runs[chain[(i + 1) % chain.Count]].Start : run.End;
            segments.Add(segment.WithEndsRaw(run.Start, end));
        }

        return new OffsetChain(segments, joins, isRing);
    }
}
