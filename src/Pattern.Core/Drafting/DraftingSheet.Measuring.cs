using System;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <content>Lengths taken from the draft, and darts.</content>
public sealed partial class DraftingSheet
{
    // What these verbs say, known again where somebody asks how something came about.
    private const string TakeLine = "Measure the {0}.";
    private const string TakeNamed = "Measure the {0}: {1}.";
    private const string TakePart = "Measure the {0} from {1} to {2}: {3}.";
    private const string TakeStraight = "Measure straight from {0} to {1}: {2}.";
    private const string TakeFolded = "Fold the darts and measure the {0}: {1}.";
    private const string LegsDown = "Mark the two tops of the dart on the {3}, {1} apart measured level, with {0} midway between them. Join both to {2}.";
    private const string LegsToward = "Mark the two tops of the dart on the {3}, {1} apart measured square to the line from {0} to {2}, with {0} midway between them. Join both to {2}.";

    private const string LegsDownBy = "Mark the two tops of the dart on the {3}, {1} apart measured level, with {0} midway between them: {4} to either side. Join both to {2}.";
    private const string LegsTowardBy = "Mark the two tops of the dart on the {3}, {1} apart measured square to the line from {0} to {2}, with {0} midway between them: {4} to either side. Join both to {2}.";

    internal static bool IsTaking(string template) => template is TakeLine or TakeNamed or TakePart or TakeStraight or TakeFolded;

    internal static bool IsOfLegs(string template) => template is LegsDown or LegsToward or LegsDownBy or LegsTowardBy;

    /// <summary>Measures a line or curve along itself; the next step can use what the tape says. The measure is called as the line is.</summary>
    /// <param name="line">The line.</param>
    /// <exception cref="ConstructionException">The line is not of this sheet.</exception>
    public WorkedLength Measure(DraftedLine line)
    {
        Require(line, "measuring a line");
        WorkedLength measured = WorkedLength.DrawnMm(line.Name.Text, ToMarkMm(line.LengthMm()), Along(line));
        Record(TakeLine, measured);
        return measured;
    }

    /// <summary>Measures a line or curve along itself under a name of your own; the next step can use what the tape says.</summary>
    /// <param name="line">The line.</param>
    /// <param name="name">What the measure is called.</param>
    /// <exception cref="ConstructionException">The line is not of this sheet.</exception>
    public WorkedLength Measure(DraftedLine line, string name)
    {
        Require(line, "measuring a line");
        WorkedLength measured = WorkedLength.DrawnMm(Guard.Name(name, nameof(name)), ToMarkMm(line.LengthMm()), Along(line));
        Record(TakeNamed, line, measured);
        return measured;
    }

    /// <summary>Measures a line or curve along itself between two landmarks on it.</summary>
    /// <exception cref="ConstructionException">The line is not of this sheet, or a landmark is not on it.</exception>
    public WorkedLength Measure(DraftedLine line, Landmark from, Landmark to, string name)
    {
        const string Doing = "measuring a part of a line";
        Require(line, Doing);
        double lengthMm = Math.Abs(AlongOf(line, to, Doing) - AlongOf(line, from, Doing));
        WorkedLength measured = WorkedLength.DrawnMm(Guard.Name(name, nameof(name)), ToMarkMm(lengthMm), Along(line, from, to));
        Record(TakePart, line, from, to, measured);
        return measured;
    }

    /// <summary>Measures the straight distance between two landmarks.</summary>
    /// <exception cref="ConstructionException">A landmark is not of this sheet.</exception>
    public WorkedLength Measure(Landmark from, Landmark to, string name)
    {
        const string Doing = "measuring between landmarks";
        Require(from, Doing);
        Require(to, Doing);
        WorkedLength measured = WorkedLength.DrawnMm(Guard.Name(name, nameof(name)), ToMarkMm(from.Position.DistanceMm(to.Position)), Along(from, to));
        Record(TakeStraight, from, to, measured);
        return measured;
    }

    /// <summary>Measures a line along itself with its darts folded: without the part between their legs.</summary>
    /// <exception cref="ConstructionException">The line is not of this sheet, or a dart stands on another line.</exception>
    public WorkedLength MeasureFolded(DraftedLine line, string name, params DraftedDart[] darts)
    {
        const string Doing = "measuring with darts folded";
        Require(line, Doing);
        double lengthMm = line.LengthMm();
        foreach (DraftedDart dart in Guard.NotNull(darts, nameof(darts)))
        {
            RefuseOtherLine(line, dart, Doing);
            lengthMm -= dart.AlongMm;
        }

        WorkedLength measured = WorkedLength.DrawnMm(Guard.Name(name, nameof(name)), ToMarkMm(lengthMm), Along([line, .. darts.Select(dart => (StepWord)dart)]));
        Record(TakeFolded, line, measured);
        return measured;
    }

    /// <summary>Draws a dart on a line, squared down from its middle.</summary>
    /// <remarks>Two steps: the apex, then the legs. Half the intake lies either side of the middle, measured across.</remarks>
    /// <param name="line">The line that it stands on.</param>
    /// <param name="middle">The middle of the intake, a landmark on the line; it becomes one of kind <see cref="LandmarkKind.DartMiddle"/>.</param>
    /// <param name="intake">How wide it is; greater than zero.</param>
    /// <param name="length">From the middle to the apex; greater than zero.</param>
    /// <param name="apex">The name of the apex.</param>
    /// <param name="draws">The name of the middle line, where it is drawn.</param>
    /// <exception cref="ConstructionException">A name is taken, the middle is not on the line, a distance is not greater than zero, or the line ends before half the intake.</exception>
    public DraftedDart PlaceDart(DraftedLine line, Landmark middle, WorkedLength intake, WorkedLength length, LandmarkName apex, LineName? draws = null)
    {
        const string Doing = "placing a dart";
        RequireDart(line, middle, intake, length, Doing);
        DartLegs legs = LegsOf(line, middle, Direction.Down, intake, Doing);
        Landmark end = Square(middle, Direction.Down, Doing, "Square down from {0}: {1}. Mark {2}.", length, apex, draws, LandmarkKind.DartApex);
        return DrawLegs(line, middle, end, intake, legs, LegsDown, LegsDownBy);
    }

    /// <summary>Draws a dart on a line that points at a landmark, such as the bust point.</summary>
    /// <remarks>Two steps: the apex, then the legs. Half the intake lies either side of the middle, measured square to the line from the middle to the apex.</remarks>
    /// <param name="line">The line that it stands on.</param>
    /// <param name="middle">The middle of the intake, a landmark on the line; it becomes one of kind <see cref="LandmarkKind.DartMiddle"/>.</param>
    /// <param name="intake">How wide it is; greater than zero.</param>
    /// <param name="toward">The landmark that it points at.</param>
    /// <param name="length">From the middle to the apex; greater than zero.</param>
    /// <param name="apex">The name of the apex.</param>
    /// <param name="draws">The name of the middle line, where it is drawn.</param>
    /// <exception cref="ConstructionException">A name is taken, the middle is not on the line, a distance is not greater than zero, or the line ends before half the intake.</exception>
    public DraftedDart PointDart(DraftedLine line, Landmark middle, WorkedLength intake, Landmark toward, WorkedLength length, LandmarkName apex, LineName? draws = null)
    {
        const string Doing = "placing a dart";
        RequireDart(line, middle, intake, length, Doing);
        Direction way = WayBetween(middle, toward, Doing);
        DartLegs legs = LegsOf(line, middle, way, intake, Doing);
        Landmark end = Lay(middle, way, length, apex, draws, Doing, LandmarkKind.DartApex, "From {0} toward {3} measure {1}. Mark {2}.", toward);
        return DrawLegs(line, middle, end, intake, legs, LegsToward, LegsTowardBy);
    }

    // What the tape lay along, kept with what it said.
    private static StepWord[] Along(params StepWord[] what) => what;

    /// <summary>Draws a dart whose legs and apex are marked already, as where a line was opened about a point.</summary>
    /// <param name="line">The line that it stands on.</param>
    /// <param name="first">Where one leg begins, a landmark on the line.</param>
    /// <param name="second">Where the other leg begins, another one.</param>
    /// <param name="middle">The middle between both; it becomes a landmark of kind <see cref="LandmarkKind.DartMiddle"/>.</param>
    /// <param name="apex">The point in which the dart ends; it becomes a landmark of kind <see cref="LandmarkKind.DartApex"/>.</param>
    /// <exception cref="ConstructionException">A landmark is not of this sheet, a leg is not on the line, or the middle does not lie midway between the legs.</exception>
    public DraftedDart JoinDart(DraftedLine line, Landmark first, Landmark second, Landmark middle, Landmark apex)
    {
        const string Doing = "joining the legs of a dart";
        Require(line, Doing);
        Require(middle, Doing);
        double firstMm = AlongOf(line, first, Doing);
        double secondMm = AlongOf(line, second, Doing);
        _ = WayBetween(first, second, Doing);
        _ = WayBetween(middle, apex, Doing);
        double offMm = first.Position.MidpointTo(second.Position).DistanceMm(middle.Position);
        if (offMm > GeometryTolerance.JoinMm)
        {
            throw Refuse(DiagnosticCode.LandmarkOffLine, Doing, middle.Name.Text, offMm, GeometryTolerance.JoinMm, middle.Name, Millimetres(offMm), line.Name);
        }

        Landmark known = middle.As(LandmarkKind.DartMiddle);
        Landmark point = apex.As(LandmarkKind.DartApex);
        _landmarks[middle.Index] = known;
        _landmarks[apex.Index] = point;
        double halfMm = first.Position.DistanceMm(second.Position) / 2;
        Record("Join {0} and {1} to {2}: the dart.", first, second, apex);
        return new DraftedDart(line, known, point, firstMm <= secondMm
            ? new(halfMm, first.Position, firstMm, second.Position, secondMm)
            : new(halfMm, second.Position, secondMm, first.Position, firstMm));
    }

    private void RequireDart(DraftedLine line, in Landmark middle, WorkedLength intake, WorkedLength length, string doing)
    {
        Require(line, doing);
        Require(middle, doing);
        RefuseNoSize(intake, middle, doing);
        RefuseNoSize(length, middle, doing);
        if (!line.TryCross(Line.Vertical(middle.Position), middle.Position, out Point2D place, out _) || place.DistanceMm(middle.Position) > GeometryTolerance.JoinMm)
        {
            _ = PlaceOn(line, middle, doing);
        }
    }

    private void RefuseNoSize(WorkedLength distance, in Landmark middle, string doing)
    {
        if (!(OffMm(distance, doing, middle) > 0))
        {
            throw Refuse(DiagnosticCode.DartWithoutSize, doing, middle.Name.Text, distance.ValueMm, 0, middle.Name, distance.Value);
        }
    }

    private DartLegs LegsOf(DraftedLine line, in Landmark middle, in Direction axis, WorkedLength intake, string doing)
    {
        // A hand lays the whole intake, so that a mark of the tape counts once.
        double halfMm = ToMarkMm(intake.ValueMm) / 2;
        (Point2D Place, double AlongMm) one = Leg(line, middle, axis, axis.TurnedLeft, halfMm, doing);
        (Point2D Place, double AlongMm) other = Leg(line, middle, axis, axis.TurnedRight, halfMm, doing);
        return one.AlongMm <= other.AlongMm ? new(halfMm, one.Place, one.AlongMm, other.Place, other.AlongMm) : new(halfMm, other.Place, other.AlongMm, one.Place, one.AlongMm);
    }

    private DraftedDart DrawLegs(DraftedLine line, in Landmark middle, in Landmark apex, WorkedLength intake, in DartLegs legs, string template, string withHalf)
    {
        Landmark known = middle.As(LandmarkKind.DartMiddle);
        _landmarks[middle.Index] = known;
        if (IsHalvedExactly(intake))
        {
            Record(withHalf, middle, intake, apex, line, intake.Half());
        }
        else
        {
            Record(template, middle, intake, apex, line);
        }

        return new DraftedDart(line, known, apex, legs);
    }

    // Half of a rounded figure is rounded once more, and twice it need not be the figure.
    private static bool IsHalvedExactly(WorkedLength intake)
        => Tape.IsOnMark(intake.ValueMm / 2, TapeStep.SixtyFourth) || Tape.IsOnMark(intake.ValueMm / 2, TapeStep.HalfMillimeter);

    private (Point2D Place, double AlongMm) Leg(DraftedLine line, in Landmark middle, in Direction axis, in Direction across, double halfMm, string doing)
    {
        Point2D beside = middle.Position + across.TimesMm(halfMm);
        if (line.TryCross(Line.From(beside, axis), beside, out Point2D place, out double alongMm))
        {
            return (place, alongMm);
        }

        Vector2D side = across.TimesMm(1);
        double roomMm = Math.Max(side.DotMm2(line.Path.Start - middle.Position), side.DotMm2(line.Path.End - middle.Position));
        throw Refuse(DiagnosticCode.DartOffLine, doing, middle.Name.Text, halfMm, roomMm, middle.Name, Millimetres(halfMm), line.Name, Millimetres(roomMm));
    }

    private void RefuseOtherLine(DraftedLine line, DraftedDart dart, string doing)
    {
        if (!ReferenceEquals(Guard.NotNull(dart, nameof(dart)).Line, line))
        {
            throw Refuse(DiagnosticCode.DartOnOtherLine, doing, dart.Middle.Name.Text, null, null, dart.Middle.Name, dart.Line.Name, line.Name);
        }
    }
}
