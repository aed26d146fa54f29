using System.Collections.Generic;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <summary>The sheet that a block is drafted on: every verb draws, and records the step that it is.</summary>
/// <remarks>The one changeable object of a draft. Methods that draw their own blocks use it as the library's do: what
/// the verbs return is what the next verbs start from, so the steps are the draft and not a description beside it.
/// x runs to the right and y up from the first landmark. Not for use from several threads at once.</remarks>
public sealed class DraftingSheet
{
    private readonly List<Landmark> _landmarks = new(40);
    private readonly List<ConstructionLine> _lines = new(24);
    private readonly List<Step> _steps = new(40);
    private readonly TapeStep? _tape;

    /// <summary>Lays out an empty sheet on which every distance is measured off exactly.</summary>
    public DraftingSheet()
    {
    }

    /// <summary>Lays out an empty sheet on which every distance is measured off to the nearest mark of a tape, as a hand does it.</summary>
    /// <param name="tape">The marks of that tape.</param>
    public DraftingSheet(TapeStep tape) => _tape = tape;

    /// <summary>The points drawn so far, in drafting order.</summary>
    public IReadOnlyList<Landmark> Landmarks => _landmarks;

    /// <summary>The construction lines drawn so far, in drafting order.</summary>
    public IReadOnlyList<ConstructionLine> Lines => _lines;

    /// <summary>The steps taken so far, in drafting order.</summary>
    public IReadOnlyList<Step> Steps => _steps;

    /// <summary>Marks a point to draft from.</summary>
    public Landmark Mark(LandmarkName name, Point2D position)
    {
        Record("Mark {0}.", Guard.NotNull(name, nameof(name)));
        return Place(name, position);
    }

    /// <summary>Squares a line down from a landmark and marks its end.</summary>
    public Landmark SquareDown(Landmark from, WorkedLength distance, LandmarkName to, LineName? draws = null)
        => Square(from, Direction.Down, "Square down from {0}: {1}. Mark {2}.", distance, to, draws);

    /// <summary>Squares a line up from a landmark and marks its end.</summary>
    public Landmark SquareUp(Landmark from, WorkedLength distance, LandmarkName to, LineName? draws = null)
        => Square(from, Direction.Up, "Square up from {0}: {1}. Mark {2}.", distance, to, draws);

    /// <summary>Squares a line across from a landmark and marks its end.</summary>
    public Landmark SquareAcross(Landmark from, Across toward, WorkedLength distance, LandmarkName to, LineName? draws = null)
        => Square(from, toward == Across.Right ? Direction.Right : Direction.Left, "Square across from {0}: {1}. Mark {2}.", distance, to, draws);

    /// <summary>Draws a straight line between two landmarks.</summary>
    public LineSegment Join(Landmark from, Landmark to, LineName draws)
    {
        Guard.NotNull(draws, nameof(draws));
        var line = LineSegment.Between(from.Position, to.Position);
        Record("Join {0} to {1}: the {2}.", from.Name, to.Name, draws.Text);
        _lines.Add(new ConstructionLine(draws.Text, draws.Role, CurvePath.FromLine(line)));
        return line;
    }

    /// <summary>Draws a hip curve: it leaves one landmark square up or down, along the straight line that it grows out of, and ends in the other.</summary>
    /// <remarks>The curve is the parabola whose axis is square to that line. The sideways distance grows with the square of the distance along the
    /// line, so the curve has no corner where it leaves the line, bulges outward all the way, and going on along the same
    /// curve never changes it.</remarks>
    public CubicBezier HipCurve(Landmark from, Landmark to, LineName draws)
    {
        Guard.NotNull(draws, nameof(draws));
        CubicBezier curve = HipCurves.Vertical(from.Position, to.Position);
        Record("Draw the {2} from {0} to {1}: a hip curve that leaves {0} straight.", from.Name, to.Name, draws.Text);
        _lines.Add(new ConstructionLine(draws.Text, draws.Role, CurvePath.FromCubic(curve)));
        return curve;
    }

    /// <summary>Goes on along a hip curve beyond its end, or back along it, and marks where that leads.</summary>
    /// <param name="curve">The curve, as <see cref="HipCurve"/> returned it.</param>
    /// <param name="end">The landmark that it ends in.</param>
    /// <param name="distance">Along the curve; negative goes back.</param>
    /// <param name="to">The name of the new point.</param>
    public Landmark GoOnAlong(CubicBezier curve, Landmark end, WorkedLength distance, LandmarkName to)
    {
        Guard.NotNull(distance, nameof(distance));
        Guard.NotNull(to, nameof(to));
        Record("Go on from {0} along its curve: {1}. Mark {2}.", end.Name, distance, to);
        return Place(to, HipCurves.GoOnMm(curve, Measure(distance)).End);
    }

    /// <summary>Draws a curve from one landmark to another with given directions at both ends.</summary>
    public CubicBezier Curve(Landmark from, Direction leaving, Landmark to, Direction arriving, LineName draws)
    {
        Guard.NotNull(draws, nameof(draws));
        CubicBezier curve = CubicBezier.Between(from.Position, leaving, to.Position, arriving);
        Record("Draw the {2} from {0} to {1}, square to the line at either end.", from.Name, to.Name, draws.Text);
        _lines.Add(new ConstructionLine(draws.Text, draws.Role, CurvePath.FromCubic(curve)));
        return curve;
    }

    /// <summary>Returns the landmark of that name.</summary>
    /// <exception cref="ConstructionException">No such landmark was drawn.</exception>
    public Landmark Find(LandmarkName name)
    {
        Guard.NotNull(name, nameof(name));
        foreach (Landmark landmark in _landmarks)
        {
            if (landmark.Name.Equals(name))
            {
                return landmark;
            }
        }

        throw new ConstructionException(DiagnosticCode.LandmarkNotDrawn, name) { Landmark = name.Text };
    }

    /// <summary>What a hand would measure off: the value itself, or the nearest mark of the sheet's tape.</summary>
    internal double Measure(WorkedLength distance) => _tape is { } tape ? Tape.MarksOf(distance.ValueMm, tape, TapeRounding.Nearest) * tape.SizeMm : distance.ValueMm;

    /// <summary>Records a step that no verb of the sheet covers; the words fill the places of the template.</summary>
    internal void Record(string template, params object[] words) => _steps.Add(new Step(_steps.Count + 1, template, words));

    internal Landmark Place(LandmarkName name, Point2D position)
    {
        var landmark = new Landmark(name, position);
        _landmarks.Add(landmark);
        return landmark;
    }

    /// <summary>Moves a landmark that truing found a better place for; the step that says so is recorded by whoever trues.</summary>
    internal void Move(LandmarkName name, Point2D position)
    {
        for (int i = _landmarks.Count - 1; i >= 0; i--)
        {
            if (_landmarks[i].Name.Equals(name))
            {
                _landmarks[i] = new Landmark(name, position);
                return;
            }
        }
    }

    internal void Draw(LineName name, CurvePath path) => _lines.Add(new ConstructionLine(name.Text, name.Role, path));

    private Landmark Square(Landmark from, Direction direction, string template, WorkedLength distance, LandmarkName to, LineName? draws)
    {
        Guard.NotNull(distance, nameof(distance));
        Guard.NotNull(to, nameof(to));
        Point2D end = from.Position + direction.TimesMm(Measure(distance));
        Record(template, from.Name, distance, to);
        if (draws is not null)
        {
            Draw(draws, CurvePath.FromLine(new LineSegment(from.Position, end)));
        }

        return Place(to, end);
    }
}
