using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.RegularExpressions;
using MathNet.Numerics.Interpolation;

namespace Pattern.Core.Tests.Output;

/// <summary>Somebody with paper, a set square and a flexible rule who has the printed sheet of steps of a skirt and nothing else.</summary>
/// <remarks>Reads sentences, never objects; lays off printed marks only; folds as paper folds. All in the unit of the sheet, y up.</remarks>
internal sealed class PaperHand
{
    private const string Figure = @"(?:\d+(?: \d+/\d+|/\d+|\.\d+)?)";

    private readonly Dictionary<string, (double X, double Y)> _points = [];
    private readonly Dictionary<string, (double X, double Y)[]> _lines = [];
    private readonly Dictionary<string, PaperDart> _darts = [];
    private readonly List<string> _folded = [];

    private PaperHand()
    {
    }

    /// <summary>The trued waistlines by name: closed length, what it was to be, and the pieces between the folds, opened again.</summary>
    internal Dictionary<string, PaperWaist> Waists { get; } = [];

    /// <summary>Redrawn seams: what the rule measures along them, and what the sheet says.</summary>
    internal Dictionary<string, (double Drawn, double Said)> Seams { get; } = [];

    /// <summary>Steps that were not understood.</summary>
    internal List<string> Puzzles { get; } = [];

    internal static PaperHand Draw(string sheet)
    {
        var hand = new PaperHand();
        string[] lines = sheet.Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            if (Regex.Match(lines[i], @"^ *\d+\. (?<words>.+)$") is { Success: true } step)
            {
                string guides = i + 1 < lines.Length && lines[i + 1].StartsWith("     ", StringComparison.Ordinal) ? lines[i + 1].Trim() : string.Empty;
                hand.Do(step.Groups["words"].Value, guides);
            }
        }

        return hand;
    }

    private void Do(string step, string guides)
    {
        if (Try(step, "^Mark (?<to>[^:]+?)\\.$", out Match m))
        {
            _points[m.Groups["to"].Value] = (0, 0);
        }
        else if (Try(step, "^Square (?<way>across to the right|across to the left|up|down) from (?<from>[^:]+): (?<work>.+?)\\. Mark (?<to>.+?)\\.", out m))
        {
            if (_points.TryGetValue(m.Groups["from"].Value, out (double X, double Y) from))
            {
                double by = Result(m.Groups["work"].Value);
                _points[m.Groups["to"].Value] = m.Groups["way"].Value switch
                {
                    "up" => (from.X, from.Y + by),
                    "down" => (from.X, from.Y - by),
                    "across to the right" => (from.X + by, from.Y),
                    _ => (from.X - by, from.Y),
                };
            }
        }
        else if (Try(step, "^Draw the (?<line>.+?) (?:again )?from (?<from>.+?) to (?<to>.+?): a hip curve that leaves .+? straight (?<way>up|down)\\.(?: It is to measure (?<long>.+? (?:in|cm)),)?", out m))
        {
            Curve(m, guides);
        }
        else if (Try(step, "^Carry the (?<line>.+?) on beyond (?<from>.+?), in its own direction: .+ Mark (?<to>.+)\\.$", out m)
            && Try(guides, $"lies (?:~?(?<across>{Figure}) (?:in|cm) to the (?<side>left|right) of .+?)?(?: and )?(?:~?(?<up>{Figure}) (?:in|cm) (?<way>above|below) .+|, on a level with it)\\.$", out Match place))
        {
            (double x, double y) = _points[m.Groups["from"].Value];
            double across = place.Groups["across"].Success ? Value(place.Groups["across"].Value) : 0;
            double up = place.Groups["up"].Success ? Value(place.Groups["up"].Value) : 0;
            _points[m.Groups["to"].Value] = (x + (place.Groups["side"].Value == "left" ? -across : across), y + (place.Groups["way"].Value == "below" ? -up : up));
        }
        else if (Try(step, "^From (?<from>.+?) measure level to the (?<side>left|right): (?<work>.+?)\\. Mark (?<dart>.+?) centre on", out m))
        {
            (double x, _) = _points[m.Groups["from"].Value];
            double by = Result(m.Groups["work"].Value);
            _darts[m.Groups["dart"].Value] = new PaperDart(x + (m.Groups["side"].Value == "left" ? -by : by));
        }
        else if (Try(step, $"^Move (?<what>.+?) (?:(?<side>out|in), level and [^,]+, by ~?(?<across>{Figure}) (?:in|cm))?(?:, and then )?(?:straight (?<way>up|down) by ~?(?<up>{Figure}) (?:in|cm))?\\. Take this figure, not the difference", out m))
        {
            string what = m.Groups["what"].Value;
            (double x, double y) = _points[what];
            double hand = (what.StartsWith("front", StringComparison.Ordinal) ? -1 : 1) * (m.Groups["side"].Value == "in" ? -1 : 1);
            double across = m.Groups["across"].Success ? Value(m.Groups["across"].Value) : 0;
            double up = m.Groups["up"].Success ? Value(m.Groups["up"].Value) : 0;
            _points[what] = (x + (hand * across), y + (m.Groups["way"].Value == "down" ? -up : up));
        }
        else if (Try(step, $"^Mark the new tops of (?<dart>.+?): both (?:~?(?<up>{Figure}) (?:in|cm) (?<way>above|below)|on a level with) (?<level>.+?), ~?(?<apart>{Figure}) (?:in|cm) apart, with the upright line through .+? midway between them\\. From the middle between them square down ~?(?<long>{Figure}) (?:in|cm) to", out m))
        {
            double up = m.Groups["up"].Success ? Value(m.Groups["up"].Value) * (m.Groups["way"].Value == "below" ? -1 : 1) : 0;
            PaperDart dart = _darts[m.Groups["dart"].Value];
            dart.TopY = _points[m.Groups["level"].Value].Y + up;
            dart.Half = Value(m.Groups["apart"].Value) / 2;
            dart.Long = Value(m.Groups["long"].Value);
        }
        else if (Try(step, "^Fold (?<dart>.+?) on its new legs, toward .+, and pin it\\.", out m))
        {
            _folded.Add(m.Groups["dart"].Value);
        }
        else if (Try(step, "^Draw the (?<line>.+?) again(?: over the folds)?, one smooth curve from (?<from>.+?) (?:through the folded dart tops )?to (?<to>.+?), square to the (?<first>.+?) and to the (?<last>.+?)\\.$", out m))
        {
            Waist(m);
        }
        else if (Try(step, $"^Measure the (?<line>.+?) again.*: ~?(?<long>{Figure}) (?:in|cm)\\. Where it is not", out m))
        {
            MeasureAgain(Waists[m.Groups["line"].Value], Value(m.Groups["long"].Value), step.Contains(" cm", StringComparison.Ordinal));
        }
        else if (!Regex.IsMatch(step, "^(Join|Mark the two tops|Add up the|Measure the|Leave the|Nothing to draw here|Draw the (back|front) waistline from)"))
        {
            Puzzles.Add(step);
        }
    }

    // A flexible rule, upright at its foot, through the guide points.
    private void Curve(Match m, string guides)
    {
        (double X, double Y) foot = _points[m.Groups["from"].Value];
        (double X, double Y) end = _points[m.Groups["to"].Value];
        bool isUp = m.Groups["way"].Value == "up";
        List<double> along = [0];
        List<double> off = [0];
        foreach (Match guide in Regex.Matches(guides, $"(?<along>{Figure}) (?:in|cm) (?:up|down), (?:nothing|~?(?<off>{Figure}) (?:in|cm) to the (?<side>left|right))"))
        {
            along.Add(Value(guide.Groups["along"].Value));
            off.Add(guide.Groups["off"].Success ? Value(guide.Groups["off"].Value) * (guide.Groups["side"].Value == "left" ? -1 : 1) : 0);
        }

        along.Add(Math.Abs(end.Y - foot.Y));
        off.Add(end.X - foot.X);
        CubicSpline rule = CubicSpline.InterpolateBoundaries(along, off, SplineBoundaryCondition.FirstDerivative, 0, SplineBoundaryCondition.Natural, 0);
        (double X, double Y)[] drawn = [.. Enumerable.Range(0, 201).Select(i => along[^1] * i / 200).Select(a => (foot.X + rule.Interpolate(a), foot.Y + (isUp ? a : -a)))];
        _lines[m.Groups["line"].Value] = drawn;
        if (m.Groups["long"].Success)
        {
            Seams[m.Groups["line"].Value] = (LengthOf(drawn), Result(m.Groups["long"].Value));
        }
    }

    // The side goes out by what the tape shows too little, as the sheet says, and the end is drawn again.
    private static void MeasureAgain(PaperWaist waist, double said, bool isMetric)
    {
        double mark = isMetric ? 0.1 : 1.0 / 16;
        waist.Said = said;
        for (int once = 0; once < 2 && Math.Abs(said - waist.Closed) >= mark / 2; once++)
        {
            waist.Draw(Math.Round((said - waist.Closed) / mark * 2) * mark / 2);
        }
    }

    private void Waist(Match m)
    {
        (double X, double Y) centre = _points[m.Groups["from"].Value];
        (double X, double Y) side = _points[m.Groups["to"].Value];
        PaperDart[] darts = [.. _folded.Select(dart => _darts[dart])];
        _folded.Clear();
        Waists[m.Groups["line"].Value] = new PaperWaist(outward => Over(m.Groups["first"].Value, _lines[m.Groups["last"].Value], centre, (side.X + (side.X > centre.X ? outward : -outward), side.Y), darts));
    }

    private (double X, double Y)[][] Over(string first, (double X, double Y)[] seam, (double X, double Y) centre, (double X, double Y) side, PaperDart[] darts)
    {
        double hand = side.X > centre.X ? 1 : -1;

        // Each fold turns all beyond it about the apex.
        List<Func<(double X, double Y), (double X, double Y)>> folds = [p => p];
        foreach (PaperDart dart in darts)
        {
            Func<(double X, double Y), (double X, double Y)> before = folds[^1];
            (double X, double Y) apex = before((dart.X, dart.TopY - dart.Long));
            double angle = hand * 2 * Math.Atan2(dart.Half, dart.Long);
            folds.Add(p => Turn(before(p), apex, angle));
        }

        (double X, double Y) end = folds[^1](side);
        (double X, double Y) below = folds[^1]((side.X + seam[^2].X - seam[^1].X, side.Y + seam[^2].Y - seam[^1].Y));
        (double X, double Y) up = Unit((end.X - below.X, end.Y - below.Y));
        (double X, double Y) arriving = (hand * up.Y, -hand * up.X);
        (double X, double Y) leaving = (hand, 0);
        if (!first.StartsWith("centre", StringComparison.Ordinal))
        {
            (double X, double Y)[] centreSeam = _lines[first];
            (double X, double Y) rise = Unit((centreSeam[^1].X - centreSeam[^2].X, centreSeam[^1].Y - centreSeam[^2].Y));
            leaving = (hand * rise.Y, -hand * rise.X);
        }

        (double X, double Y)[] through = [centre, .. darts.Select((dart, i) => folds[i]((dart.X - (hand * dart.Half), dart.TopY))), end];
        return [.. Smooth(through, leaving, arriving).Select((piece, i) => piece.Select(p => Opened(p, folds[i])).ToArray())];
    }

    // What a flexible rule does between pins: the curve of least bending, its ends held in their directions.
    private static (double X, double Y)[][] Smooth((double X, double Y)[] through, (double X, double Y) leaving, (double X, double Y) arriving)
    {
        List<double> t = [0];
        for (int i = 1; i < through.Length; i++)
        {
            t.Add(t[^1] + Math.Sqrt(Math.Pow(through[i].X - through[i - 1].X, 2) + Math.Pow(through[i].Y - through[i - 1].Y, 2)));
        }

        CubicSpline Rule(Func<(double X, double Y), double> of) => CubicSpline.InterpolateBoundaries(
            t, through.Select(of), SplineBoundaryCondition.FirstDerivative, of(leaving), SplineBoundaryCondition.FirstDerivative, of(arriving));
        CubicSpline x = Rule(p => p.X);
        CubicSpline y = Rule(p => p.Y);
        return [.. Enumerable.Range(0, through.Length - 1).Select(i =>
            Enumerable.Range(0, 101).Select(k => t[i] + ((t[i + 1] - t[i]) * k / 100)).Select(s => (x.Interpolate(s), y.Interpolate(s))).ToArray())];
    }

    // A fold keeps distances: its image of two points tells where a third one came from.
    private static (double X, double Y) Opened((double X, double Y) p, Func<(double X, double Y), (double X, double Y)> fold)
    {
        (double X, double Y) origin = fold((0, 0));
        (double X, double Y) right = fold((1, 0));
        (double c, double s) = (right.X - origin.X, right.Y - origin.Y);
        (double dx, double dy) = (p.X - origin.X, p.Y - origin.Y);
        return ((c * dx) + (s * dy), (c * dy) - (s * dx));
    }

    private static (double X, double Y) Turn((double X, double Y) p, (double X, double Y) about, double angle)
    {
        (double c, double s) = (Math.Cos(angle), Math.Sin(angle));
        (double dx, double dy) = (p.X - about.X, p.Y - about.Y);
        return (about.X + (c * dx) - (s * dy), about.Y + (s * dx) + (c * dy));
    }

    private static (double X, double Y) Unit((double X, double Y) way)
    {
        double length = Math.Sqrt((way.X * way.X) + (way.Y * way.Y));
        return (way.X / length, way.Y / length);
    }

    internal static double LengthOf((double X, double Y)[] line)
        => line.Zip(line.Skip(1), (a, b) => Math.Sqrt(Math.Pow(b.X - a.X, 2) + Math.Pow(b.Y - a.Y, 2))).Sum();

    private static bool Try(string text, string pattern, out Match match)
    {
        match = Regex.Match(text, pattern);
        return match.Success;
    }

    // The last figure of a working is its result.
    private static double Result(string working) => Value(Regex.Matches(working, Figure + "(?= (?:in|cm))")[^1].Value);

    private static double Value(string figure) => figure.Split(' ').Sum(part => part.Split('/') is [string over, string under]
        ? double.Parse(over, CultureInfo.InvariantCulture) / double.Parse(under, CultureInfo.InvariantCulture)
        : double.Parse(part, CultureInfo.InvariantCulture));

    private sealed class PaperDart(double x)
    {
        internal double X { get; } = x;

        internal double TopY { get; set; }

        internal double Half { get; set; }

        internal double Long { get; set; }
    }
}
