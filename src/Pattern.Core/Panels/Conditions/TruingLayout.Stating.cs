using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <content>From movables to unknowns, from conditions to equations.</content>
internal sealed partial class TruingLayout
{
    private void Free(int index, Movable movable)
    {
        (int p, int e) = Find(movable.Edge);
        switch (movable.Kind)
        {
            case MovableKind.Corner:
                int corner = movable.End == EdgeEnd.Start ? _pieces[FirstOf(p, e)].Start : _pieces[LastOf(p, e)].End;
                FreeRigid(index, movable, [corner]);
                break;
            case MovableKind.Dart:
                (int startLeg, int endLeg) = Legs(p, e, DartIndex(p, e, movable.Number));
                FreeRigid(index, movable, [_apexes[(p, e, movable.Number - 1)], startLeg, endLeg]);
                break;
            case MovableKind.Legs:
                FreeLegs(index, p, e, DartIndex(p, e, movable.Number));
                break;
            case MovableKind.Handles:
                foreach (int piece in PiecesOf(p, e).Where(i => _pieces[i].Kind == PathSegmentKind.Cubic).ToArray())
                {
                    FreeHandle(index, movable, piece, atStart: true);
                    FreeHandle(index, movable, piece, atStart: false);
                }

                break;
            case MovableKind.OneSweep:
                // When all corners and darts are free: it follows them.
                break;
            default:
                int unknown = Unknown(index, 0);
                _notches.Add(new TruingNotch(p, e, NotchIndex(p, e, movable.Number), unknown));
                break;
        }
    }

    private int Unknown(int movable, int axis)
    {
        _unknowns.Add(new TruingUnknown(movable, axis));
        return _unknowns.Count - 1;
    }

    // Points and the handles at them: the curves beside a point follow it.
    private void FreeRigid(int index, Movable movable, int[] points)
    {
        int[] spots = [.. points.Concat(points.SelectMany(HandlesAt)).Distinct().Where(spot => !_sweptSpots.Contains(spot))];
        if (movable.Way is not null || movable.Path is not null)
        {
            int along = Unknown(index, 0);
            Follow(spots, along, movable.Path is null ? FollowWay.AlongLine : FollowWay.AlongPath, -1);
            return;
        }

        Follow(spots, Unknown(index, 0), FollowWay.Across, -1);
        Follow(spots, Unknown(index, 1), FollowWay.Up, -1);
    }

    private void FreeLegs(int index, int p, int e, int dart)
    {
        (int startLeg, int endLeg) = Legs(p, e, dart);
        Follow([startLeg, .. HandlesAt(startLeg)], Unknown(index, 0), FollowWay.AlongLeg, _dartPieces[(p, e, dart, DartLine.StartLeg)]);
        Follow([endLeg, .. HandlesAt(endLeg)], Unknown(index, 0), FollowWay.AlongLeg, _dartPieces[(p, e, dart, DartLine.EndLeg)]);
    }

    private void FreeSweep(int index, Movable movable)
    {
        (int p, int e) = Find(movable.Edge);
        int darts = _panels[p].EdgesRaw[e].Darts.Count;
        int leaving = movable.KeepsDirections ? -1 : Unknown(index, 0);
        int arriving = movable.KeepsDirections ? -1 : Unknown(index, 1);
        int[] pieces = [.. Enumerable.Range(0, darts + 1).Select(s => _firstPiece[(p, e, s)])];
        int[] apexPieces = [.. Enumerable.Range(0, darts).Select(d => _dartPieces[(p, e, d, DartLine.StartLeg)])];
        int[] apexes = [.. Enumerable.Range(0, darts).Select(d => _apexes[(p, e, d)])];
        int[] fixedTo = [_pieces[pieces[0]].Start, _pieces[pieces[darts]].End, .. apexes];
        int[] unknowns = [.. _follows.Where(f => Array.IndexOf(fixedTo, f.Spot) >= 0).Select(f => f.Unknown).Concat(new[] { leaving, arriving }.Where(u => u >= 0)).Distinct().OrderBy(u => u)];
        int sweep = _sweeps.Count;
        _sweeps.Add(new TruingSweep(p, e, index, pieces, apexPieces, apexes, leaving, arriving, unknowns));
        int[] swept = [.. pieces.SelectMany(piece => Enumerable.Range(0, 4).Select(_pieces[piece].Spot)).Distinct().Where(_sweptSpots.Contains)];
        foreach (int unknown in unknowns)
        {
            Follow(swept, unknown, FollowWay.Swept, sweep);
        }
    }

    // Inside a stretch a handle keeps its direction where the curve runs smoothly on, so that it still does.
    private void FreeHandle(int index, Movable movable, int piece, bool atStart)
    {
        int spot = atStart ? _pieces[piece].StartControl : _pieces[piece].EndControl;
        bool inside = _joints.Any(j => j.IsSmooth && (atStart ? j.Second == piece : j.First == piece));
        if (inside || movable.KeepsDirections)
        {
            Follow([spot], Unknown(index, 0), atStart ? FollowWay.AlongStartHandle : FollowWay.AlongEndHandle, piece);
            return;
        }

        Follow([spot], Unknown(index, 0), FollowWay.Across, -1);
        Follow([spot], Unknown(index, 1), FollowWay.Up, -1);
    }

    private void Follow(IEnumerable<int> spots, int unknown, FollowWay way, int piece)
        => _follows.AddRange(spots.Select(spot => new TruingFollow(spot, unknown, way, piece)));

    private IEnumerable<int> HandlesAt(int point)
    {
        foreach (TruingPiece piece in _pieces)
        {
            if (piece.Kind == PathSegmentKind.Cubic && piece.Start == point)
            {
                yield return piece.StartControl;
            }

            if (piece.Kind == PathSegmentKind.Cubic && piece.End == point)
            {
                yield return piece.EndControl;
            }
        }
    }

    private (int StartLeg, int EndLeg) Legs(int p, int e, int dart)
        => (_pieces[_dartPieces[(p, e, dart, DartLine.StartLeg)]].End, _pieces[_dartPieces[(p, e, dart, DartLine.EndLeg)]].End);

    private int DartIndex(int p, int e, int number)
    {
        PanelEdge edge = _panels[p].EdgesRaw[e];
        return number <= edge.Darts.Count
            ? number - 1
            : throw new ConstructionException(DiagnosticCode.DartNotOnEdge, edge.Name.Dart(number), _panels[p].Name, edge.Darts.Count) { Step = Step, Landmark = edge.Name.Text };
    }

    private int NotchIndex(int p, int e, int number)
    {
        PanelEdge edge = _panels[p].EdgesRaw[e];
        int count = WalkSide.NotchesOf(_panels[p], edge.Name).Length;
        return number <= count
            ? number - 1
            : throw new ConstructionException(DiagnosticCode.NotchMissing, number, edge.Name, _panels[p].Name, count) { Step = Step, Landmark = edge.Name.Text };
    }

    private void State(int index, Condition condition)
    {
        switch (condition.Kind)
        {
            case ConditionKind.SewnLength:
                Add(index, condition.Name, isAngle: false, condition.Edges.SelectMany(edge => Whole(Find(edge), 1)));
                break;
            case ConditionKind.Sewn:
                StateSeam(index, condition.Seam!);
                break;
            case ConditionKind.JoinedAngle:
                Add(index, condition.Name, isAngle: true, condition.Corners.SelectMany(CornerTerms));
                break;
            case ConditionKind.SmoothOverDarts:
                StateSmooth(index, condition);
                break;
            case ConditionKind.LegsEqual:
                (int p, int e) = Find(condition.Edges[0]);
                int dart = DartIndex(p, e, condition.Dart.DartName.Number);
                Add(index, condition.Name, isAngle: false, [Line(p, e, dart, DartLine.StartLeg, 1), Line(p, e, dart, DartLine.EndLeg, -1)]);
                break;
            default:
                (p, e) = Find(condition.Edges[0]);
                Add(index, condition.Name, isAngle: false, [Line(p, e, DartIndex(p, e, condition.Dart.DartName.Number), DartLine.Intake, 1)]);
                break;
        }
    }

    private TruingTerm Line(int p, int e, int dart, DartLine line, double factor) => new(TermKind.Length, factor, _dartPieces[(p, e, dart, line)]);

    private void Add(int index, string name, bool isAngle, IEnumerable<TruingTerm> terms) => _equations.Add(new TruingEquation(index, name, isAngle, [.. terms]));

    private IEnumerable<TruingTerm> Whole((int Panel, int Edge) edge, double factor)
        => PiecesOf(edge.Panel, edge.Edge).Select(piece => new TruingTerm(TermKind.Length, factor, piece));

    // Inside the panel, from the edge that leaves the corner to the one that arrives there, looked at backwards.
    private IEnumerable<TruingTerm> CornerTerms(CornerOf corner)
    {
        (int p, int e) = Find(corner.Edge);
        int count = _panels[p].EdgesRaw.Length;
        int before = corner.End == EdgeEnd.End ? e : (e + count - 1) % count;
        int after = corner.End == EdgeEnd.End ? (e + 1) % count : e;
        return
        [
            new TruingTerm(TermKind.EndAngle, 1, LastOf(p, before), p),
            new TruingTerm(TermKind.StartAngle, -1, FirstOf(p, after), p),
            new TruingTerm(TermKind.Fixed, Math.PI, p, p),
        ];
    }

    private void StateSmooth(int index, Condition condition)
    {
        (int p, int e) = Find(condition.Edges[0]);
        PanelEdge edge = _panels[p].EdgesRaw[e];
        for (int d = 0; d < edge.Darts.Count; d++)
        {
            int arrives = LastOf(p, e, d);
            string name = edge.Darts.Count == 1 ? condition.Name : condition.Name + ", dart " + Number(d + 1);
            Add(
                index,
                name,
                isAngle: true,
                [
                    new TruingTerm(TermKind.StartAngle, 1, _firstPiece[(p, e, d + 1)]),
                    new TruingTerm(TermKind.EndAngle, -1, arrives),
                    new TruingTerm(TermKind.StartAngle, -1, _dartPieces[(p, e, d, DartLine.EndLeg)]),
                    new TruingTerm(TermKind.StartAngle, 1, _dartPieces[(p, e, d, DartLine.StartLeg)]),
                ]);
        }
    }

    private void StateSeam(int index, Seam seam)
    {
        Find(seam.First);
        Find(seam.Second);
        if (seam.IsToMirrorImage)
        {
            // What is done to a half is done to its mirror image.
            return;
        }

        SeamWalk walk = seam.Walk(_panels);
        if (!walk.NotchesPair)
        {
            throw new ConstructionException(DiagnosticCode.NotchesUnpaired, seam, walk.FirstNotchCount, walk.SecondNotchCount) { Step = Step, Landmark = seam.Place };
        }

        bool easedAlongFirst = seam.EaseMm < 0;
        int last = walk.FirstAtMm.Length - 1;
        for (int i = 0; i < last; i++)
        {
            TruingTerm[] first = Between(walk.First, walk.FirstAtMm, i, i + 1, 1);
            TruingTerm[] second = Between(walk.Second, walk.SecondAtMm, i, i + 1, 1);
            bool eased = seam.EaseMm != 0 && seam.EaseSpan is null;
            _equations.Add(new TruingEquation(
                index,
                last == 1 ? seam.Name : seam.Name + ", " + walk.Stretches[i].Name,
                false,
                [.. first, .. second.Select(t => t with { Factor = -t.Factor })],
                eased ? easedAlongFirst ? first : second : null,
                eased ? Between(easedAlongFirst ? walk.First : walk.Second, easedAlongFirst ? walk.FirstAtMm : walk.SecondAtMm, 0, last, 1) : null,
                i));
        }
    }

    private TruingTerm[] Between(WalkSide side, double[] marksMm, int from, int to, double factor)
    {
        int p = Array.IndexOf(_panels, side.Panel);
        int e = side.Panel.IndexOf(side.Edge.Name);
        (int low, int high) = side.Backwards ? (to, from) : (from, to);
        return [.. Place(p, e, side.OnEdgeMm(marksMm[high]), factor), .. Place(p, e, side.OnEdgeMm(marksMm[low]), -factor)];
    }

    /// <summary>A place on an edge, from its start: an end, a notch that may slide, or a fixed distance.</summary>
    private IEnumerable<TruingTerm> Place(int p, int e, double onEdgeMm, double factor)
    {
        PanelEdge edge = _panels[p].EdgesRaw[e];
        if (onEdgeMm <= GeometryTolerance.JoinMm)
        {
            return [];
        }

        if (onEdgeMm >= edge.SewnLengthMm() - GeometryTolerance.JoinMm)
        {
            return Whole((p, e), factor);
        }

        int notch = Array.FindIndex(WalkSide.NotchesOf(_panels[p], edge.Name), mm => Math.Abs(mm - onEdgeMm) <= GeometryTolerance.JoinMm);
        if (notch < 0)
        {
            return [new TruingTerm(TermKind.Fixed, factor * onEdgeMm, p)];
        }

        int slot = _notches.FindIndex(n => n.Panel == p && n.Edge == e && n.Number == notch);
        if (slot < 0)
        {
            slot = _notches.Count;
            _notches.Add(new TruingNotch(p, e, notch, -1));
        }

        return [new TruingTerm(TermKind.Notch, factor, slot)];
    }

    /// <summary>Where two segments of a stretch run smoothly into each other and a line beside the joint may turn, they have to go on doing so.</summary>
    private void KeepJointsSmooth(int condition)
    {
        foreach (TruingJoint joint in _joints.Where(j => j.IsSmooth))
        {
            TruingPiece first = _pieces[joint.First];
            TruingPiece second = _pieces[joint.Second];
            int before = first.EndControl >= 0 ? first.EndControl : first.Start;
            int after = second.StartControl >= 0 ? second.StartControl : second.End;
            if (first.Kind != PathSegmentKind.Arc && second.Kind != PathSegmentKind.Arc && (Turns(before, first.End, first, joint.First) || Turns(after, first.End, second, joint.Second)))
            {
                PanelEdge edge = _panels[first.Panel].EdgesRaw[first.Edge];
                Add(condition, EdgeOf.Panel(_panels[first.Panel].Name, edge.Name) + " smooth inside", isAngle: true, [new TruingTerm(TermKind.StartAngle, 1, joint.Second), new TruingTerm(TermKind.EndAngle, -1, joint.First)]);
            }
        }
    }

    // A handle that only gets longer turns nothing, and what moves together neither.
    private bool Turns(int spot, int node, TruingPiece piece, int index)
    {
        bool LengthensOnly(TruingFollow f) => f.Way is FollowWay.AlongStartHandle or FollowWay.AlongEndHandle && f.Piece == index && piece.Kind == PathSegmentKind.Cubic;
        IEnumerable<(int, FollowWay)> Of(int s) => _follows.Where(f => f.Spot == s && !LengthensOnly(f)).Select(f => (f.Unknown, f.Way)).OrderBy(f => f.Unknown);
        return !Of(spot).SequenceEqual(Of(node));
    }

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
