using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>The answer key of one block: what each figure should be, what a draft off the tape makes of it, and what it is drawn from.</summary>
internal sealed class MarkingKey
{
    // Far below any mark of a tape, far above rounding of doubles.
    private const double LastBitsMm = 1e-6;
    private const string Between = " to ";
    private const string AcrossOnly = ", across";
    private const string UpOnly = ", up";

    private readonly Block _block;
    private readonly TapeStep _tape;
    private readonly DraftingSheet? _sheetOffTape;
    private readonly Block? _blockOffTape;
    private readonly Dictionary<string, WorkedLength> _figures;
    private readonly Dictionary<string, double> _dimensions;
    private readonly Dictionary<string, double> _dimensionsOffTape;

    internal MarkingKey(Block block, TapeStep tape)
    {
        _block = block;
        _tape = tape;
        (_sheetOffTape, _blockOffTape) = block.DraftOffTape(tape);
        _figures = block.Figures.ToDictionary(figure => figure.Name!);
        _dimensions = FinishedDimensions.Of(block).ToDictionary(dimension => dimension.Name, dimension => dimension.Mm);
        _dimensionsOffTape = _blockOffTape is { } rounded ? FinishedDimensions.Of(rounded).ToDictionary(dimension => dimension.Name, dimension => dimension.Mm) : [];
    }

    internal MarkedFigure[] Mark(MarkingRow[] rows)
    {
        (MarkedFigure Figure, Answer? Answer)[] marked = [.. rows.Select(Mark)];
        return [.. marked.Select(one => one is { Answer: { } answer, Figure.Verdict: MarkVerdict.Wrong } ? Placed(one.Figure, answer, marked) : one.Figure)];
    }

    private (MarkedFigure Figure, Answer? Answer) Mark(MarkingRow row)
    {
        string name = row.Cells.Count > 0 ? row.Cells[0] : string.Empty;
        if (row.Fault != CsvFault.None || row.Cells.Count != 2)
        {
            string why = row.Fault == CsvFault.QuoteOpen ? "A quote is opened and not closed."
                : row.Fault == CsvFault.TooLong ? "The line is too long."
                : FormattableString.Invariant($"There are {row.Cells.Count} cells; a row has 2, a figure and a value.");
            return (NotMarked(row, name, null, DiagnosticCode.MarkingRowWrong, why), null);
        }

        if (Find(name) is not { } answer)
        {
            string unknown = MessageRegistry.Format(DiagnosticCode.MarkingFigureUnknown, name, _block.Method.Name, _dimensions.Keys.First(), ExampleOfWay());
            return (NotMarked(row, name, MarkingRow.FigureColumn, DiagnosticCode.MarkingFigureUnknown, MessageRegistry.Whole(unknown)), null);
        }

        TapeReading reading = TapeReader.Read(row.Cells[1], _tape.Unit);
        if (!reading.IsLength)
        {
            return (NotMarked(row, name, MarkingRow.ValueColumn, reading.Code, MessageRegistry.Whole(reading.Message)), null);
        }

        return (Judge(row.Number, name, reading.Millimetres, answer), answer);
    }

    private MarkedFigure Judge(int row, string name, double drawnMm, Answer answer)
    {
        double halfMm = (_tape.SizeMm / 2) + LastBitsMm;

        // Where no draft off the tape came to this figure, a mark more is the least that rounding may do.
        double offTapeMm = answer.OffTapeMm ?? answer.ExpectedMm;
        double roomMm = answer.OffTapeMm is null ? halfMm + _tape.SizeMm : halfMm;
        MarkVerdict verdict = Math.Abs(drawnMm - answer.ExpectedMm) <= halfMm ? MarkVerdict.Right
            : drawnMm >= Math.Min(answer.ExpectedMm, offTapeMm) - roomMm && drawnMm <= Math.Max(answer.ExpectedMm, offTapeMm) + roomMm ? MarkVerdict.WithinRounding
            : MarkVerdict.Wrong;
        return new MarkedFigure(row, name, verdict) { DrawnMm = drawnMm, ExpectedMm = answer.ExpectedMm, OffTapeMm = answer.OffTapeMm };
    }

    // Only for what is wrong: where it comes from, and whether something that it is drawn from is wrong already.
    private MarkedFigure Placed(MarkedFigure figure, Answer answer, (MarkedFigure Figure, Answer? Answer)[] all)
    {
        IReadOnlyList<Explanation> chains = answer.Chains.Value;
        Step? step = answer.Step;
        string[] from =
        [
            .. all.Where(other => other is { Answer: not null, Figure.Verdict: MarkVerdict.Wrong } && other.Figure.Name != figure.Name && IsDrawnFrom(chains, answer, other.Answer!))
                .Select(other => other.Figure.Name).Distinct(),
        ];
        bool isUntrued = answer.ByHandMm is { } byHandMm && Math.Abs(byHandMm - answer.ExpectedMm) > _tape.SizeMm / 2 && Math.Abs(byHandMm - figure.DrawnMm!.Value) <= (_tape.SizeMm / 2) + LastBitsMm;
        return new MarkedFigure(figure.Row, figure.Name, figure.Verdict)
        {
            DrawnMm = figure.DrawnMm,
            ExpectedMm = figure.ExpectedMm,
            OffTapeMm = figure.OffTapeMm,
            Step = step,
            Working = answer.Working ?? step?.Workings.FirstOrDefault(),
            FollowsFrom = from,
            IsUntrued = isUntrued,
        };
    }

    // The other stands in the chain of this one, and this one does not stand in that of the other: both would be told to mend the other first.
    private static bool IsDrawnFrom(IReadOnlyList<Explanation> chains, Answer own, Answer other)
        => Stands(chains, other.Marks) && !Stands(other.Chains.Value, own.Marks);

    private static bool Stands(IReadOnlyList<Explanation> chains, IReadOnlyList<(OriginKind Kind, string Name)> marks) => marks.Count > 0 && marks.All(mark => chains.Any(chain =>
        chain.All.Any(origin => !ReferenceEquals(origin, chain.Root) && origin.Name == mark.Name && (origin.Kind == mark.Kind || (mark.Kind == OriginKind.Working && origin.Working is not null)))));

    private Answer? Find(string name)
    {
        if (_figures.TryGetValue(name, out WorkedLength? figure))
        {
            return new Answer(figure.ValueMm, Tape.MarksOf(figure.ValueMm, _tape, TapeRounding.Nearest) * _tape.SizeMm, null, [(OriginKind.Working, name)], figure, () => [_block.ExplainFigure(name)], _ => StepOf(figure));
        }

        if (_dimensions.TryGetValue(name, out double mm))
        {
            return new Answer(mm, OffTape(_dimensionsOffTape, name), ByHand(name), LinesOf(name), null, () => ChainsOf(name), LastThatDrew);
        }

        if (_block.Steps.SelectMany(step => step.Drew).FirstOrDefault(line => line.Name.Text == name) is { } drawn)
        {
            double? offTape = _sheetOffTape?.Lines.FirstOrDefault(line => line.Name.Text == name)?.LengthMm();
            return new Answer(drawn.LengthMm(), offTape, null, [(OriginKind.Line, name)], null, () => [_block.ExplainLine(name)], chains => chains[0].Root.Step);
        }

        return FindWay(name);
    }

    private Answer? FindWay(string name)
    {
        string way = name.EndsWith(AcrossOnly, StringComparison.Ordinal) ? AcrossOnly : name.EndsWith(UpOnly, StringComparison.Ordinal) ? UpOnly : string.Empty;
        string ends = name.Substring(0, name.Length - way.Length);
        for (int at = ends.IndexOf(Between, StringComparison.Ordinal); at >= 0; at = ends.IndexOf(Between, at + 1, StringComparison.Ordinal))
        {
            string from = ends.Substring(0, at);
            string to = ends.Substring(at + Between.Length);
            if (TryMeasure(_block.Trued.Landmarks, from, to, way) is { } expected)
            {
                double? offTape = TryMeasure(_blockOffTape?.Trued.Landmarks ?? _sheetOffTape?.Landmarks ?? [], from, to, way);
                double? byHand = TryMeasure(_block.Drafted.Landmarks, from, to, way);
                return new Answer(
                    expected, offTape, byHand, [(OriginKind.Landmark, from), (OriginKind.Landmark, to)], null, () => [_block.ExplainLandmark(from), _block.ExplainLandmark(to)],
                    chains => chains.Select(chain => chain.Root.Step).OfType<Step>().OrderBy(step => step.Number).LastOrDefault());
            }
        }

        return null;
    }

    private static double? TryMeasure(IReadOnlyList<Landmark> landmarks, string from, string to, string way)
    {
        Landmark first = landmarks.FirstOrDefault(landmark => landmark.Name.Text == from);
        Landmark second = landmarks.FirstOrDefault(landmark => landmark.Name.Text == to);
        if (first.Name is null || second.Name is null)
        {
            return null;
        }

        Vector2D between = second.Position - first.Position;
        return way switch { AcrossOnly => Math.Abs(between.XMm), UpOnly => Math.Abs(between.YMm), _ => between.LengthMm };
    }

    private IReadOnlyList<Explanation> ChainsOf(string dimension)
    {
        foreach (Panel panel in _block.Panels)
        {
            foreach (PanelEdge edge in panel.Edges)
            {
                if (EdgeOf.Panel(panel.Name, edge.Name).ToString() == dimension)
                {
                    return [_block.ExplainEdge(panel.Name, edge.Name)];
                }

                foreach (Dart dart in edge.Darts)
                {
                    string name = new DartOf(panel.Name, dart.Name).ToString();
                    if (dimension == name || dimension == name + " length")
                    {
                        return Try(() => _block.ExplainDart(panel.Name, dart.Name));
                    }
                }
            }
        }

        return [];
    }

    // A dart that a design made was drawn by no step.
    private static IReadOnlyList<Explanation> Try(Func<Explanation> explain)
    {
        try
        {
            return [explain()];
        }
        catch (ConstructionException)
        {
            return [];
        }
    }

    // What stands for an edge in the chain of another thing: the lines that it runs along.
    private IReadOnlyList<(OriginKind Kind, string Name)> LinesOf(string dimension)
        => [.. _block.Panels.SelectMany(panel => panel.Edges.Where(edge => EdgeOf.Panel(panel.Name, edge.Name).ToString() == dimension).SelectMany(edge => EdgeOrigins.Of(_block, panel, edge).Lines))
            .Select(line => (OriginKind.Line, line.Name.Text))];

    private double? ByHand(string dimension)
    {
        foreach (Panel panel in _block.Panels)
        {
            foreach (PanelEdge edge in panel.Edges.Where(edge => edge.Darts.Count == 0 && EdgeOf.Panel(panel.Name, edge.Name).ToString() == dimension))
            {
                IReadOnlyList<DraftedLine> lines = EdgeOrigins.Of(_block, panel, edge).Lines;
                return lines.Count == 0 ? null : lines.Sum(line => line.LengthMm());
            }
        }

        return null;
    }

    // The step that drew its line, or marked its later end; what truing did to it comes after.
    private static Step? LastThatDrew(IReadOnlyList<Explanation> chains)
        => chains.Select(chain => chain.Root.Step ?? chain.Root.From.Where(from => from is { Kind: not OriginKind.Change, Step: not null })
            .OrderBy(from => from.Kind == OriginKind.Line).ThenBy(from => from.Step!.Number).LastOrDefault()?.Step).FirstOrDefault();

    // The first step that lays the figure off, or works with it.
    private Step? StepOf(WorkedLength figure)
    {
        foreach (Step step in _block.Steps)
        {
            var seen = new HashSet<WorkedLength>();
            var open = new Stack<WorkedLength>(step.Workings);
            while (open.Count > 0)
            {
                WorkedLength length = open.Pop();
                if (ReferenceEquals(length, figure))
                {
                    return step;
                }

                if (seen.Add(length))
                {
                    foreach (WorkedLength operand in length.Operands)
                    {
                        open.Push(operand);
                    }
                }
            }
        }

        return null;
    }

    private string ExampleOfWay() => _block.Trued.Landmarks.Count > 1 ? _block.Trued.Landmarks[0].Name + Between + _block.Trued.Landmarks[1].Name : "A" + Between + "B";

    private static double? OffTape(Dictionary<string, double> dimensions, string name) => dimensions.TryGetValue(name, out double mm) ? mm : null;

    private static MarkedFigure NotMarked(MarkingRow row, string name, string? column, DiagnosticCode code, object why) => new(row.Number, name, MarkVerdict.NotMarked)
    {
        Column = column,
        Code = code,
        Problem = MessageRegistry.Format(
            DiagnosticCode.MarkingRowWrong, row.Number, row.Line, column switch { null => "1 to 2", MarkingRow.FigureColumn => "1 (figure)", _ => "2 (value)" }, why is string words ? MessageRegistry.Whole(words) : why),
    };

    private sealed class Answer(
        double expectedMm,
        double? offTapeMm,
        double? byHandMm,
        IReadOnlyList<(OriginKind Kind, string Name)> marks,
        WorkedLength? working,
        Func<IReadOnlyList<Explanation>> chains,
        Func<IReadOnlyList<Explanation>, Step?> step)
    {
        internal double ExpectedMm { get; } = expectedMm;

        internal double? OffTapeMm { get; } = offTapeMm;

        /// <summary>What the hand draft has before truing, where that can be said.</summary>
        internal double? ByHandMm { get; } = byHandMm;

        /// <summary>What stands for it in the chain of another figure.</summary>
        internal IReadOnlyList<(OriginKind Kind, string Name)> Marks { get; } = marks;

        internal WorkedLength? Working { get; } = working;

        internal Lazy<IReadOnlyList<Explanation>> Chains { get; } = new(chains);

        internal Step? Step => step(Chains.Value);
    }
}
