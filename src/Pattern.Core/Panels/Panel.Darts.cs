using System;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <content>Taking darts in, and changing them where they stand.</content>
public sealed partial class Panel
{
    /// <summary>Returns a copy of this panel with a dart taken in where it lies: the edge becomes shorter by what lies between the legs.</summary>
    /// <remarks>The apex stands square to the line from leg to leg, so the legs are equal. Other edges do not change.</remarks>
    /// <param name="at">The middle of the intake.</param>
    /// <param name="intake">Straight from leg to leg.</param>
    /// <param name="length">From the middle of the intake to the apex.</param>
    /// <param name="pressed">The way the intake is pressed. Common practice: towards the centre of the body, or down; <see cref="WithDartPressed(DartName, EdgeName)"/> says it by a neighbouring edge.</param>
    /// <exception cref="ConstructionException">The stretch of edge has no room for the intake, the apex lies outside the panel, or a leg crosses a dart.</exception>
    [Pure]
    public Panel TakeInDart(EdgePlace at, Length intake, Length length, Toward pressed = Toward.Start)
    {
        const string Step = "taking in a dart";
        double intakeMm = Guard.Millimetres(intake, 0, 10_000, nameof(intake));
        double lengthMm = Guard.Millimetres(length, 0.1, 10_000, nameof(length));
        if (intakeMm == 0)
        {
            return this;
        }

        int edgeIndex = IndexOf(at.Edge);
        PanelEdge edge = _edges[edgeIndex];
        double sewn = edge.SewnLengthMm();
        double middle = at.ResolveMm(this);
        if (!(middle > 0 && middle < sewn))
        {
            throw PanelErrors.OffEdge(Name, at, middle, sewn, Step);
        }

        int index = edge.LocateSewn(middle, out double within);
        CurvePath stretch = edge.Stretches[index];
        double half = HalfOfIntake(edge, stretch, within, intakeMm);
        Point2D startLeg = stretch.PointAtMm(within - half);
        Point2D endLeg = stretch.PointAtMm(within + half);
        Direction across = startLeg.DirectionTo(endLeg);
        Direction inward = SeamOutline().SignedAreaMm2 > 0 ? across.TurnedLeft : across.TurnedRight;
        var shape = new DartShape(startLeg.MidpointTo(endLeg) + inward.TimesMm(lengthMm), startLeg, endLeg, pressed);
        RefuseWrongDart(shape, at.Edge, Step);

        CurvePath[] stretches =
        [
            .. edge.Stretches.Take(index),
            stretch.SubPathMm(0, within - half),
            stretch.SubPathMm(within + half, stretch.LengthMm),
            .. edge.Stretches.Skip(index + 1),
        ];
        DartShape[] darts = [.. edge.Darts.Take(index).Select(d => d.Shape), shape, .. edge.Darts.Skip(index).Select(d => d.Shape)];
        PanelEdge[] edges = [.. _edges];
        edges[edgeIndex] = new PanelEdge(edge.Name, edge.Role, stretches, darts);
        PanelFeatures features = _features with { Notches = [.. Notches.Select(n => n.Edge == edge.Name ? n.AfterTakingIn(middle, half) : n)] };
        return WithEdges(edges, features, Step);
    }

    /// <summary>Returns a copy of this panel with a double-pointed dart taken in inside it.</summary>
    /// <param name="first">One point, the upper one where the dart stands upright.</param>
    /// <param name="second">The other point.</param>
    /// <param name="intake">The width at the widest place.</param>
    /// <param name="widestAt">Where that is, as a part of the way from the first point to the second.</param>
    /// <exception cref="ConstructionException">The dart does not lie inside the panel, or crosses another.</exception>
    [Pure]
    public Panel TakeInInsideDart(Point2D first, Point2D second, Length intake, Ratio widestAt)
    {
        const string Step = "taking in a double-pointed dart";
        double intakeMm = Guard.Millimetres(intake, 0, 10_000, nameof(intake));
        double share = Guard.Share(widestAt, nameof(widestAt));
        if (intakeMm == 0)
        {
            return this;
        }

        Direction along = first.DirectionTo(second);
        Point2D middle = first + ((second - first) * share);
        var dart = new InsideDart(first, second, middle + along.TurnedLeft.TimesMm(intakeMm / 2), middle + along.TurnedRight.TimesMm(intakeMm / 2));
        Point2D[] corners = dart.Corners();
        for (int i = 0; i < corners.Length; i++)
        {
            CutRules.RefuseOutside(this, _edges[0].Name, corners[i], Step);
            CutRules.RefuseLeg(this, corners[i], corners[(i + 1) % corners.Length], Step);
        }

        return new Panel(Name, _edges, _features with { InsideDarts = [.. InsideDarts, dart] });
    }

    /// <summary>Returns a copy of this panel with a dart made longer or shorter: new apex on the same middle line, same intake.</summary>
    /// <remarks>The stretches of edge stay; when the dart is closed they meet at another angle than before, so true the edge afterwards.</remarks>
    /// <param name="dart">The dart.</param>
    /// <param name="length">From the middle of the intake to the new apex.</param>
    /// <exception cref="ConstructionException">The apex would lie outside the panel, or a leg would cross another dart.</exception>
    [Pure]
    public Panel WithDartLength(DartName dart, Length length)
    {
        double lengthMm = Guard.Millimetres(length, 0.1, 10_000, nameof(length));
        Dart old = FindDart(dart);
        Direction inward = old.MiddleOfIntake.DirectionTo(old.Apex);
        return Math.Abs(old.LengthMm - lengthMm) == 0
            ? this
            : WithDart(old, old.Shape with { Apex = old.MiddleOfIntake + inward.TimesMm(lengthMm) }, "changing the length of a dart");
    }

    /// <summary>Returns a copy of this panel with a dart swung about the middle of its intake: same intake, same length, another direction.</summary>
    /// <remarks>The legs would become unequal: the leg that the apex comes nearer to stays, and the other is laid off anew at its length and at the same
    /// intake; the stretch of edge beyond that follows, turned and fitted about its far end. Its sewn length changes a little: see the stretch, or true the edge.</remarks>
    /// <param name="dart">The dart.</param>
    /// <param name="angle">Counter-clockwise positive, less than 60 degrees either way.</param>
    /// <exception cref="ConstructionException">The apex would lie outside the panel, or a leg would cross another dart.</exception>
    [Pure]
    public Panel SwingDart(DartName dart, Angle angle)
    {
        const string Step = "swinging a dart";
        double radians = angle.Radians;
        if (!(Math.Abs(radians) < Math.PI / 3))
        {
            throw new ArgumentOutOfRangeException(nameof(angle), MessageRegistry.Format(DiagnosticCode.QuantityOutOfRange, nameof(angle), angle, Angle.FromDegrees(-60), Angle.FromDegrees(60)));
        }

        Dart old = FindDart(dart);
        if (radians == 0)
        {
            return this;
        }

        return WithApex(old, Transform2D.RotationRaw(old.MiddleOfIntake, Direction.FromRadians(radians)).Apply(old.Apex), Step);
    }

    /// <summary>Returns a copy of this panel with the apex of a dart moved to a point: same intake, equal legs.</summary>
    /// <remarks>The leg that the apex comes nearer to stays where it meets the edge. The other is laid off anew at its length and at the same intake, and the stretch of edge beyond
    /// that follows, turned and fitted about its far end. So the edge changes a little; <see cref="TrueEdge(EdgeName, EdgeTruing)"/> gives it back its length. To bring two darts together, move the
    /// apex of one to that of the other; then <see cref="MergeDarts"/> makes them one.</remarks>
    /// <param name="dart">The dart.</param>
    /// <param name="to">Where its apex is to be.</param>
    /// <exception cref="ConstructionException">The point lies outside the panel or nearer to the edge than half the intake, or a leg would cross another dart.</exception>
    [Pure]
    public Panel MoveApex(DartName dart, Point2D to)
    {
        const string Step = "moving the apex of a dart";
        Dart old = FindDart(dart);
        double legMm = Math.Min(to.DistanceMm(old.StartLeg), to.DistanceMm(old.EndLeg));
        if (!(legMm > old.IntakeMm / 2))
        {
            throw new ConstructionException(DiagnosticCode.ApexTooNear, to, dart, Name, Length.FromMillimeters(legMm), Length.FromMillimeters(old.IntakeMm / 2))
            {
                Step = Step,
                Landmark = dart.ToString(),
                Measured = Length.FromMillimeters(legMm),
                Allowed = Length.FromMillimeters(old.IntakeMm / 2),
            };
        }

        return to == old.Apex ? this : WithApex(old, to, Step);
    }

    /// <summary>Returns a copy of this panel with a dart pressed the other way; only its cap changes.</summary>
    /// <param name="dart">The dart.</param>
    /// <param name="toward">The way the intake is pressed.</param>
    [Pure]
    public Panel WithDartPressed(DartName dart, Toward toward)
    {
        Dart old = FindDart(dart);
        return old.PressedToward == toward ? this : WithDart(old, old.Shape with { PressedToward = toward }, "pressing a dart");
    }

    /// <summary>Returns a copy of this panel with a dart pressed toward an edge that its own edge meets: on a skirt's waist, toward the centre or the side.</summary>
    /// <param name="dart">The dart.</param>
    /// <param name="toward">The edge before or after the one that the dart stands on.</param>
    /// <exception cref="ConstructionException">The edge of the dart does not meet that edge, or meets it at both ends.</exception>
    [Pure]
    public Panel WithDartPressed(DartName dart, EdgeName toward)
    {
        EdgeName start = Neighbour(dart.Edge, Toward.Start);
        EdgeName end = Neighbour(dart.Edge, Toward.End);
        return (start == toward) != (end == toward)
            ? WithDartPressed(dart, start == toward ? Toward.Start : Toward.End)
            : throw new ConstructionException(DiagnosticCode.NoSuchNeighbour, Name, dart.Edge, start, end, toward) { Step = "pressing a dart", Landmark = dart.ToString() };
    }

    // The leg that the apex comes nearer to stays; the other one and what lies beyond it follow, to the inside of the panel.
    private Panel WithApex(Dart old, in Point2D apex, string step)
    {
        bool holdsStart = apex.DistanceMm(old.StartLeg) <= apex.DistanceMm(old.EndLeg);
        Point2D held = holdsStart ? old.StartLeg : old.EndLeg;
        double wedge = 2 * Math.Asin(Math.Min(1, old.IntakeMm / 2 / apex.DistanceMm(held))) * Math.Sign(old.SignedAngleRad);
        Point2D laid = Transform2D.RotationRaw(apex, Direction.FromRadians(holdsStart ? wedge : -wedge)).Apply(held);
        DartShape shape = holdsStart ? old.Shape with { Apex = apex, EndLeg = laid } : old.Shape with { Apex = apex, StartLeg = laid };
        RefuseWrongDart(shape, old.Name.Edge, step, old.Shape);

        var parts = new OutlineParts(this);
        int index = parts.IndexOf(old);
        parts.Replace(index, shape);
        int beyond = index + (holdsStart ? 1 : -1);
        CurvePath stretch = parts[beyond].Stretch!;
        parts.Replace(beyond, holdsStart ? stretch.WithStartMovedTo(laid) : stretch.Reversed().WithStartMovedTo(laid).Reversed());
        return WithEdges(parts.ToEdges(), _features, step);
    }

    private Panel WithDart(Dart old, in DartShape shape, string step)
    {
        RefuseWrongDart(shape, old.Name.Edge, step, old.Shape);
        var parts = new OutlineParts(this);
        parts.Replace(parts.IndexOf(old), shape);
        return WithEdges(parts.ToEdges(), _features, step);
    }

    private void RefuseWrongDart(in DartShape shape, EdgeName edge, string step, DartShape? replaces = null)
    {
        CutRules.RefuseOutsideUnless(this, edge, shape.Apex, step, replaces);
        CutRules.RefuseLeg(this, shape.Apex, shape.StartLeg, step, replaces);
        CutRules.RefuseLeg(this, shape.Apex, shape.EndLeg, step, replaces);
    }

    // Half of what lies between the legs along a curved seam line, so that they stand the intake apart in a straight line.
    private double HalfOfIntake(PanelEdge edge, CurvePath stretch, double withinMm, double intakeMm)
    {
        double room = Math.Min(withinMm, stretch.LengthMm - withinMm);
        double Apart(double half) => stretch.PointAtMm(withinMm - half).DistanceMm(stretch.PointAtMm(withinMm + half));
        double most = room * (1 - 1e-9);
        if (!(intakeMm / 2 < most) || Apart(most) < intakeMm)
        {
            throw PanelErrors.TooWide(Name, edge.Name, intakeMm, 2 * room, "taking in a dart");
        }

        // The straight distance is nearly twice the half along the line, so scaling by what is missing gains several digits a step.
        double half = intakeMm / 2;
        for (int i = 0; i < 50; i++)
        {
            double apart = Apart(half);
            if (Math.Abs(apart - intakeMm) <= 1e-12 * intakeMm)
            {
                break;
            }

            half = Math.Min(half * intakeMm / apart, most);
        }

        return half;
    }
}
