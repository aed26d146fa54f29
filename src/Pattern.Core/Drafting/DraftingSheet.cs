using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <summary>The sheet that a block is drafted on: every verb draws, and records the step that it is.</summary>
/// <remarks>The one changeable object of a draft. Methods of your own use it exactly as the library's do: what
/// the verbs return is what the next verbs start from, so the steps are the draft and not a description beside it.
/// Landmarks and lines stay as drafted; what truing moves, it keeps in a list of its own. A name stands for one landmark or one line only.
/// x runs to the right and y up. Every distance is zero or more: the verb says the way. Not for use from several threads at once.</remarks>
/// <example><code>
/// var sheet = new DraftingSheet();
/// Landmark waist = sheet.Mark("centre waist", Point2D.Origin);
/// Landmark hem = sheet.SquareDown(waist, WorkedLength.Given("length", Tape.Inches("24")), "centre hem");
/// DraftedLine centre = sheet.Join(waist, hem, "centre line");
/// </code></example>
public sealed partial class DraftingSheet
{
    // No sentence has more.
    private const int MostWords = 60;

    private readonly List<Landmark> _landmarks = new(28);
    private readonly List<DraftedLine> _lines = new(16);
    private readonly List<Step> _steps = new(64);

    // The way by which each landmark was reached, in radians; not a number where it was just marked.
    private readonly List<double> _reachedRad = new(28);
    private readonly TapeStep? _tape;
    private List<(int Step, WorkedLength[] From)>? _workedFrom;
    private volatile Action? _untold;
    private bool _isTelling;
    private bool _isFinished;

    /// <summary>Lays out an empty sheet on which every distance is measured off exactly.</summary>
    public DraftingSheet()
    {
    }

    /// <summary>Lays out an empty sheet on which every distance is measured to the nearest mark of a tape, as a hand does it.</summary>
    /// <param name="tape">The marks of that tape.</param>
    public DraftingSheet(TapeStep tape) => _tape = tape;

    /// <summary>Goes on from a sheet that is done: its landmarks, lines and steps stand on this one too.</summary>
    internal DraftingSheet(DraftingSheet from)
    {
        _landmarks.AddRange(from._landmarks);
        _reachedRad.AddRange(from._reachedRad);
        _lines.AddRange(from._lines.Select(line => line.On(this)));
        _steps.AddRange(from.Steps);
        _workedFrom = from._workedFrom is { } said ? [.. said] : null;
    }

    /// <summary>The points drawn so far, in drafting order, as drafted.</summary>
    public IReadOnlyList<Landmark> Landmarks => _landmarks;

    /// <summary>The lines drawn so far, in drafting order, as drafted.</summary>
    public IReadOnlyList<DraftedLine> Lines => _lines;

    /// <summary>The steps taken so far, in drafting order.</summary>
    public IReadOnlyList<Step> Steps
    {
        get
        {
            TellAll();
            return _steps;
        }
    }

    /// <summary>Returns the landmark of that name.</summary>
    /// <exception cref="ConstructionException">No such landmark was drawn.</exception>
    [Pure]
    public Landmark Find(LandmarkName name)
    {
        int index = IndexOf(Guard.NotNull(name, nameof(name)));
        return index >= 0 ? _landmarks[index] : throw Refuse(DiagnosticCode.LandmarkNotDrawn, "looking for a landmark", name.Text, null, null, name);
    }

    /// <summary>Returns the line of that name.</summary>
    /// <exception cref="ConstructionException">No such line was drawn.</exception>
    [Pure]
    public DraftedLine FindLine(LineName name)
    {
        DraftedLine? line = LineOf(Guard.NotNull(name, nameof(name)));
        return line ?? throw Refuse(DiagnosticCode.LineNotDrawn, "looking for a line", name.Text, null, null, name);
    }

    /// <summary>Records a sentence of your own as a step: what no verb of the sheet says.</summary>
    /// <param name="template">The sentence, with a place <c>{0}</c>, <c>{1}</c>, .. for each word.</param>
    /// <param name="words">What fills the places: landmarks, lines, lengths with their working, counts, text.</param>
    /// <exception cref="System.ArgumentException">The template is empty, or its places are not those of the words.</exception>
    public Step Note(string template, params StepWord[] words)
    {
        Guard.Name(template, nameof(template));
        RefuseWrongPlaces(template, Guard.NotNull(words, nameof(words)).Length);
        return Record(template, (StepWord[])words.Clone());
    }

    /// <summary>Says why the last step is done.</summary>
    /// <param name="reason">A sentence, such as "The hem then hangs level."</param>
    /// <exception cref="ConstructionException">There is no step yet.</exception>
    public Step Because(string reason)
    {
        Guard.Name(reason, nameof(reason));
        TellAll();
        int last = _steps.Count - 1;
        RefuseFinished();
        return last < 0
            ? throw Refuse(DiagnosticCode.NoStepYet, "giving a reason", null, null, null)
            : _steps[last] = _steps[last].Because(reason);
    }

    /// <summary>Says from which lengths the numbers of the last step were worked out off the sheet: an angle, a heading, a place, a path of your own.</summary>
    /// <remarks>Nothing is printed. Whoever asks how something came about is led on to these lengths; see <c>Block.ExplainEdge</c>.</remarks>
    /// <param name="lengths">One or more.</param>
    /// <exception cref="ConstructionException">There is no step yet.</exception>
    public void WorkedFrom(params WorkedLength[] lengths)
    {
        Guard.InRange(Guard.NotNull(lengths, nameof(lengths)).Length, 1, MostWords, nameof(lengths));
        TellAll();
        RefuseFinished();
        if (_steps.Count == 0)
        {
            throw Refuse(DiagnosticCode.NoStepYet, "saying what a step was worked from", null, null, null);
        }

        (_workedFrom ??= []).Add((_steps.Count, [.. lengths.Select(length => Guard.NotNull(length, nameof(lengths)))]));
    }

    /// <summary>What was said of a step besides its words.</summary>
    internal IEnumerable<WorkedLength> WorkedFromOf(int step) => _workedFrom?.Where(said => said.Step == step).SelectMany(said => said.From) ?? [];

    /// <summary>Keeps the curve that the last step draws again, so that its guide points can be printed.</summary>
    internal void Redraws(RedrawnCurve curve) => _steps[_steps.Count - 1] = _steps[_steps.Count - 1].Redrawing(curve);

    private static void RefuseWrongPlaces(string template, int words)
    {
        long used = 0;
        bool right = words <= MostWords;
        for (int at = 0; right && at < template.Length; at++)
        {
            if (template[at] == '{')
            {
                int place = 0;
                int open = at;
                for (at++; at < template.Length && template[at] is >= '0' and <= '9' && place < MostWords; at++)
                {
                    place = (10 * place) + (template[at] - '0');
                }

                right = at > open + 1 && at < template.Length && template[at] == '}' && place < words;
                used |= 1L << place;
            }
            else
            {
                right = template[at] != '}';
            }
        }

        if (!right || used != (1L << words) - 1)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.NoteWordsWrong, template, words), nameof(template));
        }
    }

    /// <summary>Keeps steps that draw nothing until somebody reads the steps: most drafts are measured and never read.</summary>
    /// <param name="tell">Records them. It must not draw, nor refuse.</param>
    internal void TellLater(Action tell)
    {
        RefuseFinished();
        TellAll();
        _untold = tell;
    }

    // A finished sheet is read from several threads; one of them tells, the others wait.
    private void TellAll()
    {
        if (_untold is null)
        {
            return;
        }

        lock (_steps)
        {
            if (_isTelling || _untold is not { } tell)
            {
                return;
            }

            _isTelling = true;
            tell();
            _isTelling = false;
            _untold = null;
        }
    }

    /// <summary>Ends the draft: nothing can be drawn on the sheet any more.</summary>
    internal void Finish() => _isFinished = true;

    private void RefuseFinished()
    {
        if (_isFinished && !_isTelling)
        {
            throw new ConstructionException(DiagnosticCode.DraftDone, "sheet");
        }
    }

    private Step Record(string template, params StepWord[] words)
    {
        RefuseFinished();
        TellAll();
        var step = new Step(this, _steps.Count + 1, template, words, null, _landmarks.Count, _lines.Count);
        _steps.Add(step);
        return step;
    }

    /// <summary>What a hand would measure off: the value itself, or the nearest mark of the sheet's tape.</summary>
    private double ToMarkMm(double lengthMm) => _tape is { } tape ? Tape.MarksOf(lengthMm, tape, TapeRounding.Nearest) * tape.SizeMm : lengthMm;

    private double OffMm(WorkedLength distance, string doing, in Landmark from)
    {
        double distanceMm = Guard.NotNull(distance, nameof(distance)).ValueMm;
        return distanceMm >= 0 ? ToMarkMm(distanceMm) : throw Refuse(DiagnosticCode.DistanceNegative, doing, from.Name.Text, distanceMm, 0, distance.Value, from.Name);
    }

    private Landmark Place(LandmarkName name, in Point2D position, LandmarkKind kind = LandmarkKind.Point, double reachedRad = double.NaN)
    {
        RefuseFinished();
        var landmark = new Landmark(name, position, kind, _landmarks.Count);
        _landmarks.Add(landmark);
        _reachedRad.Add(reachedRad);
        return landmark;
    }

    // A step that draws is recorded after it has drawn, so that it counts what it drew; its number is known before.
    private void RefuseMarked(LandmarkName name, string doing)
    {
        int index = IndexOf(Guard.NotNull(name, nameof(name)));
        if (index >= 0)
        {
            throw Refuse(DiagnosticCode.LandmarkMarkedTwice, doing, name.Text, null, null, name, _landmarks[index].Position);
        }
    }

    private void RefuseDrawn(LineName? name, string doing)
    {
        if (name is not null && LineOf(name) is { } drawn)
        {
            throw Refuse(DiagnosticCode.LineDrawnTwice, doing, name.Text, null, null, name, drawn.From.Name, drawn.To.Name);
        }
    }

    /// <summary>Refuses a landmark that does not stand on this sheet.</summary>
    private void Require(in Landmark landmark, string doing)
    {
        int index = landmark.Index;
        if (landmark.Name is null || index >= _landmarks.Count || !_landmarks[index].Name.Equals(landmark.Name) || _landmarks[index].Position != landmark.Position)
        {
            string name = landmark.Name?.Text ?? "without a name";
            throw Refuse(DiagnosticCode.LandmarkNotDrawn, doing, name, null, null, name);
        }
    }

    private void Require(DraftedLine line, string doing)
    {
        if (!Guard.NotNull(line, nameof(line)).IsOn(this))
        {
            throw Refuse(DiagnosticCode.LineNotDrawn, doing, line.Name.Text, null, null, line.Name);
        }
    }

    private int IndexOf(LandmarkName name)
    {
        for (int i = 0; i < _landmarks.Count; i++)
        {
            if (_landmarks[i].Name.Equals(name))
            {
                return i;
            }
        }

        return -1;
    }

    private DraftedLine? LineOf(LineName name)
    {
        foreach (DraftedLine line in _lines)
        {
            if (ReferenceEquals(line.Name, name) || line.Name.Text == name.Text)
            {
                return line;
            }
        }

        return null;
    }

    private DraftedLine Draw(LineName name, in PathSegment segment, in Landmark from, in Landmark to)
    {
        RefuseFinished();
        var line = new DraftedLine(this, name, segment, from, to);
        _lines.Add(line);
        return line;
    }

    private DraftedLine DrawPath(LineName name, CurvePath path, in Landmark from, in Landmark to)
    {
        RefuseFinished();
        var line = new DraftedLine(this, name, path, from, to);
        _lines.Add(line);
        return line;
    }

    private string Now(string doing) => "step " + (Steps.Count + 1).ToString(System.Globalization.CultureInfo.InvariantCulture) + ", " + doing;

    /// <summary>A refusal that says at which step the draft stopped.</summary>
    private ConstructionException Refuse(DiagnosticCode code, string doing, string? landmark, double? measuredMm, double? allowedMm, params object[] facts) => new(code, facts)
    {
        Step = Now(doing),
        Landmark = landmark,
        Measured = measuredMm is { } measured ? UnitsNet.Length.FromMillimeters(measured) : null,
        Allowed = allowedMm is { } allowed ? UnitsNet.Length.FromMillimeters(allowed) : null,
    };

    /// <summary>How much has been drawn.</summary>
    public override string ToString()
        => FormattableString.Invariant($"sheet with {_landmarks.Count} landmarks, {_lines.Count} lines");
}
