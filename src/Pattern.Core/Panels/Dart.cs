using System;
using System.Threading;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>A wedge folded away and stitched: two legs of equal length from the seam line to an apex. Immutable.</summary>
public sealed class Dart
{
    // In the upper part of the dart, where it is wide and no drill hole stands; long enough to be seen across a narrow one.
    private const double ArrowPlace = 0.35;
    private const double ArrowShare = 0.8;
    private const double LeastArrowMm = 12;
    private const double MostArrowMm = 18;

    private readonly PanelEdge _edge;
    private CurvePath? _cap;

    internal Dart(PanelEdge edge, int number, in DartShape shape)
    {
        _edge = edge;
        Number = number;
        Shape = shape;
    }

    /// <summary>The edge that the dart stands on, and its number there.</summary>
    public DartName Name => new(_edge.Name, Number);

    /// <summary>The dart's number on its edge, in the order of the edge, starting at 1.</summary>
    public int Number { get; }

    /// <summary>The point of the wedge.</summary>
    public Point2D Apex => Shape.Apex;

    /// <summary>Where the leg nearer the start of the edge meets the seam line.</summary>
    public Point2D StartLeg => Shape.StartLeg;

    /// <summary>Where the leg nearer the end of the edge meets the seam line.</summary>
    public Point2D EndLeg => Shape.EndLeg;

    /// <summary>The way in which the folded intake is pressed. Common practice: towards the centre of the body, or down.</summary>
    public Toward PressedToward => Shape.PressedToward;

    /// <summary>The cut edge across the intake, from the start leg over the fold to the end leg.</summary>
    /// <remarks>Shaped for the way that the dart is pressed: folded and sewn, it lies exactly under the seam line, other darts closed.</remarks>
    /// <exception cref="Diagnostics.ConstructionException">The seam line that the dart is pressed onto is shorter than half the intake.</exception>
    public CurvePath Cap => Volatile.Read(ref _cap) ?? (_cap = _edge.FoldCap(Number - 1));

    /// <summary>The width taken out at the seam, measured straight from leg to leg.</summary>
    public Length Intake => Length.FromMillimeters(IntakeMm);

    /// <summary>From the middle of the intake straight to the apex.</summary>
    public Length Length => Length.FromMillimeters(LengthMm);

    /// <summary>The opening of the wedge at the apex. It stays the same wherever the dart is moved to.</summary>
    public Angle Angle => Angle.FromRadians(AngleRad);

    /// <summary>How far from the seam line the legs are stitched to each other: all the way to the apex, or less for a tuck.</summary>
    public Length StitchedLength => Length.FromMillimeters(IsTuck ? Shape.TuckMm : LegLengthMm(Toward.Start));

    /// <summary>Whether the intake is only held at the seam line, as a tuck, and released before the apex.</summary>
    public bool IsTuck => Shape.TuckMm > 0;

    /// <summary>The sign for the way that the dart is pressed: a short line across the intake, its end the tip of the arrow.</summary>
    public LineSegment PressArrow
    {
        get
        {
            Point2D place = MiddleOfIntake + ((Apex - MiddleOfIntake) * ArrowPlace);
            Vector2D across = (PressedToward == Toward.Start ? StartLeg - EndLeg : EndLeg - StartLeg) * (1 - ArrowPlace);
            double widthMm = across.LengthMm;
            Vector2D half = across * (Math.Min(Math.Max(ArrowShare * widthMm, LeastArrowMm), MostArrowMm) / widthMm / 2);
            return new LineSegment(place - half, place + half);
        }
    }

    /// <summary>The middle of the intake, half way between the legs.</summary>
    public Point2D MiddleOfIntake => StartLeg.MidpointTo(EndLeg);

    internal DartShape Shape { get; }

    internal double IntakeMm => (EndLeg - StartLeg).LengthMm;

    internal double LengthMm => (MiddleOfIntake - Apex).LengthMm;

    /// <summary>The unsigned angle between the legs.</summary>
    internal double AngleRad => Math.Abs(SignedAngleRad);

    /// <summary>The turn about the apex that carries the start leg onto the end leg.</summary>
    internal double SignedAngleRad
    {
        get
        {
            Vector2D start = StartLeg - Apex;
            Vector2D end = EndLeg - Apex;
            return Math.Atan2(start.CrossMm2(end), start.DotMm2(end));
        }
    }

    /// <summary>The length of one leg.</summary>
    /// <param name="toward">Which leg.</param>
    public Length LegLength(Toward toward) => Length.FromMillimeters(LegLengthMm(toward));

    internal double LegLengthMm(Toward toward) => ((toward == Toward.Start ? StartLeg : EndLeg) - Apex).LengthMm;

    /// <summary>The motion that closes this dart: what lies beyond it turns about the apex until its end leg meets its start leg.</summary>
    internal Transform2D Closing() => Turn(-SignedAngleRad);

    internal Transform2D Opening() => Turn(SignedAngleRad);

    internal Transform2D Turn(double angleRad) => Transform2D.RotationRaw(Apex, Direction.FromRadians(angleRad));

    /// <summary>Name, intake and length.</summary>
    public override string ToString()
        => FormattableString.Invariant($"{Name}, {IntakeMm:0.##} mm wide, {LengthMm:0.##} mm long");
}
