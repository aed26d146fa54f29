using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>The steps of one block as small pictures at one scale: what is new is strong, what stood there is quiet, and the landmarks that the step speaks of are named.</summary>
internal sealed class StepPictures
{
    private const double WidestMm = 60;
    private const double HighestMm = 62;
    private const double WidestFinishedMm = 150;
    private const double HighestFinishedMm = 150;
    private const double MarginMm = 6;
    private const double NameMm = 3.4;
    private const double GapMm = 1;

    private readonly Phrasebook _book;
    private readonly List<CurvePath> _lines = [];
    private readonly Dictionary<int, int> _before = [];
    private readonly List<(int Step, CurvePath Leg)> _legs = [];
    private readonly Transform2D _toPicture;
    private readonly double _widthMm;
    private readonly double _heightMm;

    internal StepPictures(Block block, Phrasebook book)
    {
        _book = book;
        BoundingBox draft = Around(block);
        (_toPicture, _widthMm, _heightMm) = Fit(draft, WidestMm, HighestMm);
        foreach (Step step in block.Steps)
        {
            _before.Add(step.Number, _lines.Count);
            _lines.AddRange(step.Drew.Select(line => line.Path.Transformed(_toPicture)));
            _legs.AddRange(StepDarts.LegsOf(step).Select(leg => (step.Number, leg.Transformed(_toPicture))));
        }
    }

    /// <summary>The draft as it stands after a step.</summary>
    internal LessonPicture Of(Step step)
    {
        DraftedLine[] drew = [.. step.Drew];
        Landmark[] marked = [.. step.Marked];
        CurvePath[] redrew = [.. Redrawn(step).Select(path => path.Transformed(_toPicture))];
        CurvePath[] legs = [.. _legs.Where(one => one.Step == step.Number).Select(one => one.Leg)];
        CurvePath[] earlier = [.. _legs.Where(one => one.Step < step.Number).Select(one => one.Leg)];
        int before = _before[step.Number];
        var names = new List<TextMark>();
        var leaders = new List<CurvePath>();
        LessonPoint[] points = Points(step, marked, _lines.Take(before + drew.Length).Concat(redrew).Concat(legs).Concat(earlier), names, leaders);
        return new LessonPicture(
            InWords(step, drew, marked, redrew.Length > 0, legs.Length > 0),
            _widthMm,
            _heightMm,
            _lines,
            [
                new LessonLines(LessonStroke.Earlier) { Common = (0, before), Own = earlier },
                new LessonLines(LessonStroke.New) { Common = (before, drew.Length), Own = [.. redrew, .. legs] },
                .. leaders.Count == 0 ? Array.Empty<LessonLines>() : [new LessonLines(LessonStroke.Leader) { Own = leaders }],
            ],
            points,
            names);
    }

    /// <summary>The block as it was trued: its seam lines, darts and levels.</summary>
    internal static LessonPicture Finished(Block block, string words)
    {
        Drawing drawing = block.Draw();
        PathMark[] marks = [.. new[] { LayerName.Levels, LayerName.Darts, LayerName.SeamLines }.SelectMany(name => drawing.TryFindLayer(name, out DrawingLayer? layer) ? layer!.Marks : []).OfType<PathMark>()];
        BoundingBox box = marks.Length == 0 ? default : marks.Select(mark => mark.Path.Bounds).Aggregate((one, other) => one.Union(other));
        (Transform2D toPicture, double widthMm, double heightMm) = Fit(box, WidestFinishedMm, HighestFinishedMm);
        return new LessonPicture(
            words,
            widthMm,
            heightMm,
            [],
            [.. marks.GroupBy(mark => StrokeOf(mark.Role)).OrderByDescending(group => group.Key).Select(group => new LessonLines(group.Key) { Own = [.. group.Select(mark => mark.Path.Transformed(toPicture))] })],
            [],
            []);
    }

    private static LessonStroke StrokeOf(LineRole role)
        => role == LineRole.Seam ? LessonStroke.Seam : role == LineRole.Level || role == LineRole.Fold ? LessonStroke.Level : LessonStroke.Dart;

    private static (Transform2D ToPicture, double WidthMm, double HeightMm) Fit(in BoundingBox box, double widestMm, double highestMm)
    {
        double scale = Math.Min(widestMm / Math.Max(box.RightMm - box.LeftMm, 1), highestMm / Math.Max(box.TopMm - box.BottomMm, 1));
        var corner = new Point2D(box.LeftMm, box.TopMm);
        return (
            Transform2D.Scaling(corner, Ratio.FromDecimalFractions(scale)).Then(Transform2D.Translation(new Vector2D(MarginMm - corner.XMm, -MarginMm - corner.YMm))),
            (scale * (box.RightMm - box.LeftMm)) + (2 * MarginMm),
            (scale * (box.TopMm - box.BottomMm)) + (2 * MarginMm));
    }

    private static BoundingBox Around(Block block)
    {
        BoundingBox[] boxes =
        [
            .. block.Steps.SelectMany(step => step.Drew).Select(line => line.Path.Bounds),
            .. block.Steps.SelectMany(step => step.Marked).Select(mark => BoundingBox.Around(mark.Position, mark.Position)),
        ];
        return boxes.Length == 0 ? default : boxes.Aggregate((one, other) => one.Union(other));
    }

    private static IEnumerable<CurvePath> Redrawn(Step step)
        => step.Redrew is not { } curve ? [] : curve.HipCurve is { } hip ? [hip] : curve.Edge!.Stretches;

    private string InWords(Step step, DraftedLine[] drew, Landmark[] marked, bool draws, bool isDart)
    {
        (string, string) number = ("number", step.Number.ToString(CultureInfo.InvariantCulture));
        (string, string) lines = ("lines", _book.List(drew.Select(line => _book.Say(line.Name.Text))));
        (string, string) points = ("points", _book.List(marked.Select(mark => _book.Say(mark.Name.Text))));
        return (drew.Length > 0, marked.Length > 0) switch
        {
            (true, true) => _book.Say("Step {number}. New: {lines}. Marked: {points}.", number, lines, points),
            (true, false) => _book.Say("Step {number}. New: {lines}.", number, lines),
            (false, true) => _book.Say("Step {number}. Marked: {points}.", number, points),
            _ when isDart => _book.Say("Step {number}. New: the two legs of the dart.", number),
            _ => _book.Say(draws ? "Step {number}. Drawn again: the emphasised line." : "Step {number}. The draft so far.", number),
        };
    }

    // A point that is marked in this step is full, one that the step goes out from is a ring.
    private LessonPoint[] Points(Step step, Landmark[] marked, IEnumerable<CurvePath> shown, List<TextMark> names, List<CurvePath> leaders)
    {
        var placer = new LabelPlacer(new BoundingBox(0, -_heightMm, _widthMm, 0));
        foreach (CurvePath path in shown)
        {
            placer.Avoid(new PathMark(path, LineRole.DartLeg));
        }

        Landmark[] spoken = [.. step.Landmarks.Distinct().Where(name => !marked.Any(mark => mark.Name.Equals(name))).Select(step.Find)];
        Landmark[] named = [.. marked.Concat(spoken).Select(mark => mark.At(_toPicture.Apply(mark.Position)))];
        foreach (Landmark mark in named)
        {
            placer.Avoid(new PointMark(mark.Position, LessonPicture.PointMm, Ink.Strong));
        }

        foreach (Landmark mark in named)
        {
            PlaceName(placer, mark, names, leaders);
        }

        return [.. named.Select((mark, i) => new LessonPoint(mark.Position, i < marked.Length))];
    }

    // Where a step speaks of more points than there is room for, a name that finds none stays in the sentence.
    private void PlaceName(LabelPlacer placer, in Landmark mark, List<TextMark> names, List<CurvePath> leaders)
    {
        Direction inward = mark.Position.XMm < _widthMm / 2 ? Direction.Right : Direction.Left;
        (TextMark? label, PathMark? leader) = placer.PlaceBeside(_book.Say(mark.Name.Text), NameMm, Ink.Strong, mark.Position, inward, null, GapMm, double.PositiveInfinity);
        if (leader is not null)
        {
            leaders.Add(leader.Path);
        }

        if (label is not null)
        {
            names.Add(label);
        }
    }
}
