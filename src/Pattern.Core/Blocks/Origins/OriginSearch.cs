using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>Finds of what something on a block was made, from what the steps of its draft recorded.</summary>
/// <remarks>Each link is made once, after those below it, and not by recursion: a working may be as deep as its author likes. A link that leads back to one that is still open is left out, so the
/// search ends even where a draft used a length from another sheet under the same names.</remarks>
internal sealed class OriginSearch
{
    private readonly Block _block;
    private readonly Dictionary<LandmarkName, Step> _marked = [];
    private readonly Dictionary<string, (DraftedLine Line, Step Step)> _drew = [];
    private readonly Dictionary<LandmarkName, (DartLink Dart, WorkedLength Intake)> _darts = [];
    private readonly HashSet<(string Name, double Mm)> _settings = [];
    private readonly HashSet<(string Name, double Mm)> _entries = [];
    private readonly Dictionary<object, Origin> _known = [];

    internal OriginSearch(Block block)
    {
        _block = block;
        foreach (Step step in block.Steps)
        {
            foreach (Landmark landmark in step.Marked)
            {
                _marked[landmark.Name] = step;
            }

            foreach (DraftedLine line in step.Drew)
            {
                _drew[line.Name.Text] = (line, step);
            }

            if (step.DartLegs is { } legs)
            {
                _darts[legs.Middle] = (new DartLink(legs.Middle, step), legs.Intake);
            }
        }

        foreach (SettingValue setting in block.Method.Settings.Concat(block.Designs.SelectMany(design => design.Settings)).Where(setting => setting is { Kind: SettingKind.Length, IsGiven: true }))
        {
            _settings.Add((setting.Name, setting.Raw));
        }

        foreach (WorkedLength figure in block.Method.Readings.SelectMany(reading => reading.Value.Figures).Where(figure => figure is { Operation: WorkedOperation.Given, Name: not null }))
        {
            _entries.Add((figure.Name!, figure.ValueMm));
        }
    }

    /// <summary>A landmark, and what truing or a design did to it since it was marked.</summary>
    internal Origin OfLandmark(Landmark drafted)
    {
        IEnumerable<Step> changes = !_marked.ContainsKey(drafted.Name) ? EdgeOrigins.OfDesigns(_block) : EdgeOrigins.HasMoved(_block, drafted.Name) ? EdgeOrigins.Changes(_block, [drafted.Name], []) : [];
        return Finish(OriginKind.Landmark, drafted.Name.Text, null, drafted.Name, [.. changes]);
    }

    internal Origin OfLine(DraftedLine line) => Of(new LineLink(line.Name.Text));

    internal Origin OfLength(WorkedLength length) => Of(length);

    internal Origin OfDart(LandmarkName middle, string name, double intakeMm, IReadOnlyList<Step> changes) => Finish(OriginKind.Dart, name, intakeMm, _darts[middle].Dart, changes);

    /// <summary>The darts that stand on some lines, each a source of an edge.</summary>
    internal IEnumerable<object> DartsOn(IReadOnlyList<DraftedLine> lines) => _darts.Values.Where(dart => StandsOn(dart.Dart, lines)).Select(dart => (object)dart.Dart);

    /// <summary>The middle of the drafted dart that a finished one was made of: the nearest on those lines; where truing left none of them, the nearest on the sheet that is no farther away than the dart is
    /// long.</summary>
    internal LandmarkName? NearestDart(IReadOnlyList<DraftedLine> lines, Dart dart)
    {
        DartLink[] onLines = [.. _darts.Values.Select(known => known.Dart).Where(known => StandsOn(known, lines))];
        double OffMm(DartLink known) => _block.Drafted.Find(known.Middle).Position.DistanceMm(dart.MiddleOfIntake);
        return (onLines.Length > 0 ? onLines : _darts.Values.Select(known => known.Dart).Where(known => OffMm(known) <= dart.LengthMm))
            .OrderBy(OffMm)
            .Select(known => known.Middle)
            .FirstOrDefault();
    }

    internal IEnumerable<string> DartNames => _darts.Keys.Select(name => name.Text);

    private static bool StandsOn(DartLink dart, IReadOnlyList<DraftedLine> lines)
        => dart.Step.Words.Any(word => word.Line is { } on && lines.Any(line => line.Name.Text == on.Text));

    internal Origin OfEdge(string name, double lengthMm, IReadOnlyList<object> sources, IReadOnlyList<Step> changes)
    {
        var from = new List<Origin>();
        foreach (object source in sources.Select(ToKey).OfType<object>())
        {
            Add(from, Of(source));
        }

        AddChanges(from, changes);
        return new Origin(OriginKind.Edge, name, lengthMm, null, null, OrItself(from, OriginKind.Edge, name));
    }

    // The link as drafted, its inputs with the changes beside them.
    private Origin Finish(OriginKind kind, string name, double? valueMm, object key, IReadOnlyList<Step> changes)
    {
        Origin drafted = Of(key);
        var from = new List<Origin>(drafted.From);
        AddChanges(from, changes);
        return new Origin(kind, name, valueMm ?? drafted.ValueMm, null, drafted.Step, [.. from]);
    }

    private void AddChanges(List<Origin> from, IReadOnlyList<Step> changes)
    {
        foreach (Step step in changes)
        {
            Origin change = Of(step);
            if (change.From.Count > 0)
            {
                from.Add(change);
            }
        }
    }

    private Origin Of(object asked)
    {
        if (_known.TryGetValue(asked, out Origin? before))
        {
            return before;
        }

        var open = new Stack<Frame>();
        var isOpen = new HashSet<object>();
        Open(asked);
        while (true)
        {
            Frame frame = open.Peek();
            if (frame.Next < frame.Keys.Length)
            {
                object key = frame.Keys[frame.Next++];
                if (_known.TryGetValue(key, out Origin? known))
                {
                    Add(frame.Found, known);
                }
                else if (!isOpen.Contains(key))
                {
                    Open(key);
                }

                continue;
            }

            open.Pop();
            isOpen.Remove(frame.Key);
            Origin made = _known[frame.Key] = Make(frame.Key, frame.Found);
            if (open.Count == 0)
            {
                return made;
            }

            Add(open.Peek().Found, made);
        }

        void Open(object key)
        {
            isOpen.Add(key);
            open.Push(new Frame(key, [.. Below(key)]));
        }
    }

    private static void Add(List<Origin> found, Origin origin)
    {
        if (!found.Contains(origin))
        {
            found.Add(origin);
        }
    }

    // What a link was made of, in the order of its sentence.
    private IEnumerable<object> Below(object key)
    {
        switch (key)
        {
            case WorkedLength length when length.Operands.Count > 0:
                return length.Operands;
            case WorkedLength { Source: StepWord[] along }:
                return along.Select(word => ToKey(word)).OfType<object>();
            case WorkedLength { Source: WorkedLength[] lengths }:
                return lengths;
            case WorkedLength { Operation: WorkedOperation.Drawn, Name: { } name } when _drew.ContainsKey(name):
                return [new LineLink(name)];
            case LandmarkName name when _marked.TryGetValue(name, out Step? step):
                return Inputs(step, isChange: false);
            case LineLink line when _drew.TryGetValue(line.Name, out (DraftedLine Line, Step Step) drawn):
                return Inputs(drawn.Step, isChange: false).Concat(new[] { drawn.Line.From.Name, drawn.Line.To.Name }.Where(end => !IsOutput(drawn.Step, end))).Distinct();
            case DartLink dart:
                return Inputs(dart.Step, isChange: false);
            case Step change:
                return Inputs(change, isChange: true);
            default:
                return [];
        }
    }

    // What a step says and did not itself make.
    private IEnumerable<object> Inputs(Step step, bool isChange)
    {
        foreach (StepWord word in step.Words)
        {
            bool isResult = word.Length is { } length && (length.Source == LengthSource.Found || (isChange && length is { Operation: WorkedOperation.Drawn, Source: null }));
            bool isOutput = (word.Landmark is { } landmark && IsOutput(step, landmark)) || (word.Line is { } line && _drew.TryGetValue(line.Text, out (DraftedLine Line, Step Step) drawn) && drawn.Step == step);
            if (!isResult && !isOutput && ToKey(word) is { } key)
            {
                yield return key;
            }
        }

        foreach (WorkedLength length in step.WorkedFrom)
        {
            yield return length;
        }
    }

    private bool IsOutput(Step step, LandmarkName landmark) => _marked.TryGetValue(landmark, out Step? marks) && marks == step;

    private object? ToKey(object source) => source switch
    {
        StepWord word => ToKey(word),
        DraftedLine line => new LineLink(line.Name.Text),
        _ => source,
    };

    private object? ToKey(StepWord word)
    {
        if (word.Length is { } length)
        {
            return length;
        }

        if (word.Landmark is { } landmark)
        {
            return _marked.ContainsKey(landmark) ? landmark : null;
        }

        if (word.Line is { } line)
        {
            return _drew.ContainsKey(line.Text) ? new LineLink(line.Text) : null;
        }

        return word.Dart is { } dart && _darts.TryGetValue(dart.Middle.Name, out (DartLink Dart, WorkedLength Intake) known) ? known.Dart : null;
    }

    private Origin Make(object key, List<Origin> found)
    {
        switch (key)
        {
            case WorkedLength length:
                OriginKind kind = KindOf(length, found.Count > 0);
                return new Origin(kind, length.Name ?? string.Empty, length.ValueMm, length, null, [.. found]);
            case LandmarkName name:
                return new Origin(OriginKind.Landmark, name.Text, null, null, _marked.TryGetValue(name, out Step? marks) ? marks : null, OrItself(found, OriginKind.Landmark, name.Text));
            case LineLink line:
                (DraftedLine drawn, Step step) = _drew[line.Name];
                return new Origin(OriginKind.Line, line.Name, drawn.LengthMm(), null, step, OrItself(found, OriginKind.Line, line.Name));
            case DartLink dart:
                return new Origin(OriginKind.Dart, DraftedDart.NameOf(dart.Middle), _darts[dart.Middle].Intake.ValueMm, null, dart.Step, OrItself(found, OriginKind.Dart, dart.Middle.Text));
            default:
                var change = (Step)key;
                bool isDesign = _block.Designs.Any(design => design.FirstStep > 0 && change.Number >= design.FirstStep);
                return new Origin(OriginKind.Change, isDesign ? "changed by the design" : "trued", null, null, change, [.. found]);
        }
    }

    private OriginKind KindOf(WorkedLength length, bool isMadeOfOthers)
    {
        if (isMadeOfOthers)
        {
            return length.Operation == WorkedOperation.Drawn ? OriginKind.Taken : OriginKind.Working;
        }

        if (length.Operation == WorkedOperation.Measured)
        {
            return OriginKind.Measurement;
        }

        (string, double) said = (length.Name ?? string.Empty, length.ValueMm);
        return length.Source == LengthSource.Table || _entries.Contains(said) ? OriginKind.TableEntry
            : length.Source == LengthSource.Setting || _settings.Contains(said) ? OriginKind.Setting
            : OriginKind.Constant;
    }

    // What stands in the record without anything that it was made of is the method's own.
    private static Origin[] OrItself(List<Origin> found, OriginKind kind, string name) => found.Count > 0
        ? [.. found]
        : [new Origin(OriginKind.Constant, kind == OriginKind.Landmark ? "the place of " + name + " on the paper" : "how " + name + " runs", null, null, null, [])];

    /// <summary>A line by its name: two names of one text are one line.</summary>
    private sealed record LineLink(string Name);

    /// <summary>A dart by its middle, with the step that drew its legs.</summary>
    private sealed record DartLink(LandmarkName Middle, Step Step);

    private sealed class Frame(object key, object[] keys)
    {
        internal object Key { get; } = key;

        internal object[] Keys { get; } = keys;

        internal int Next { get; set; }

        internal List<Origin> Found { get; } = [];
    }
}
