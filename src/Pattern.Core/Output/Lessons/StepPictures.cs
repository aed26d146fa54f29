using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Output;

/// <summary>The steps of one block as small pictures at one scale: what is new is strong, what stood there is quiet, and the landmarks that the step speaks of are named.</summary>
/// <remarks>Each line is written once into the page, and shown again by the pictures of all later steps.</remarks>
internal sealed class StepPictures
{
    private const double WidestMm = 60;
    private const double HighestMm = 62;
    private const double MarginMm = 6;
    private const double NameMm = 3.4;
    private const double PointMm = 1.5;
    private const double GapMm = 1;
    private const string NewLines = "</g>\n<g class=\"new\">";

    private readonly List<CurvePath> _lines = [];
    private readonly Dictionary<int, int> _before = [];
    private readonly Transform2D _toPicture;
    private readonly double _widthMm;
    private readonly double _heightMm;

    internal StepPictures(Block block)
    {
        BoundingBox draft = Around(block);
        double scale = Math.Min(WidestMm / Math.Max(draft.RightMm - draft.LeftMm, 1), HighestMm / Math.Max(draft.TopMm - draft.BottomMm, 1));
        var corner = new Point2D(draft.LeftMm, draft.TopMm);
        _toPicture = Transform2D.Scaling(corner, Ratio.FromDecimalFractions(scale)).Then(Transform2D.Translation(new Vector2D(MarginMm - corner.XMm, -MarginMm - corner.YMm)));
        _widthMm = (scale * (draft.RightMm - draft.LeftMm)) + (2 * MarginMm);
        _heightMm = (scale * (draft.TopMm - draft.BottomMm)) + (2 * MarginMm);
        foreach (Step step in block.Steps)
        {
            _before.Add(step.Number, _lines.Count);
            _lines.AddRange(step.Drew.Select(line => line.Path.Transformed(_toPicture)));
        }
    }

    /// <summary>Writes every line under an id; shows nothing.</summary>
    internal void WriteLines(StringBuilder text)
    {
        text.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"lines\" width=\"0\" height=\"0\" aria-hidden=\"true\"><defs>\n");
        for (int i = 0; i < _lines.Count; i++)
        {
            text.Append("<path id=\"").Append(IdOf(i)).Append('"');
            WriteData(text, _lines[i]);
        }

        text.Append("</defs></svg>\n");
    }

    internal void Write(StringBuilder text, Step step)
    {
        DraftedLine[] drew = [.. step.Drew];
        Landmark[] marked = [.. step.Marked];
        CurvePath[] redrew = [.. Redrawn(step).Select(path => path.Transformed(_toPicture))];
        text.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"").Escaped(InWords(step, drew, marked, redrew.Length > 0)).Append("\" viewBox=\"0 0 ").Number(Math.Round(_widthMm, 2)).Append(' ')
            .Number(Math.Round(_heightMm, 2)).Append("\">\n<g class=\"old\">");
        int before = _before[step.Number];
        for (int i = 0; i < before + drew.Length; i++)
        {
            text.Append(i == before ? NewLines : string.Empty).Append("<use href=\"#").Append(IdOf(i)).Append("\"/>");
        }

        text.Append(drew.Length == 0 ? NewLines : string.Empty);

        foreach (CurvePath path in redrew)
        {
            text.Append("<path");
            WriteData(text, path);
        }

        text.Append("</g>\n");
        WritePoints(text, step, marked, _lines.Skip(before).Take(drew.Length).Concat(redrew));
        text.Append("</svg>\n");
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

    private static string InWords(Step step, DraftedLine[] drew, Landmark[] marked, bool draws)
    {
        string number = "Step " + step.Number.ToString(CultureInfo.InvariantCulture) + ". ";
        string lines = drew.Length > 0 ? "New: " + string.Join(", ", drew.Select(line => line.Name.Text)) + ". " : draws ? "Drawn again: the emphasised line. " : string.Empty;
        string points = marked.Length > 0 ? "Marked: " + string.Join(", ", marked.Select(mark => mark.Name.Text)) + "." : string.Empty;
        string words = lines + points;
        return number + (words.Length > 0 ? words.Trim() : "The draft so far.");
    }

    private static string IdOf(int line) => "line-" + (line + 1).ToString(CultureInfo.InvariantCulture);

    private static void WriteData(StringBuilder text, CurvePath path)
    {
        text.Append(" vector-effect=\"non-scaling-stroke\" d=\"");
        var sink = new PathData(text, 0, 0, decimals: 2);
        path.WriteTo(ref sink, LengthUnit.Millimeter, ArcOutput.Cubics);
        text.Append("\"/>\n");
    }

    // A point that is marked in this step is full, one that the step goes out from is a ring.
    private void WritePoints(StringBuilder text, Step step, Landmark[] marked, IEnumerable<CurvePath> emphasised)
    {
        var placer = new LabelPlacer(new BoundingBox(0, -_heightMm, _widthMm, 0));
        foreach (CurvePath path in emphasised)
        {
            placer.Avoid(new PathMark(path, LineRole.DartLeg));
        }

        Landmark[] spoken = [.. step.Landmarks.Distinct().Where(name => !marked.Any(mark => mark.Name.Equals(name))).Select(step.Find)];
        Landmark[] named = [.. marked.Concat(spoken).Select(mark => mark.At(_toPicture.Apply(mark.Position)))];
        foreach (Landmark mark in named)
        {
            placer.Avoid(new PointMark(mark.Position, PointMm, Ink.Strong));
        }

        for (int i = 0; i < named.Length; i++)
        {
            Point2D at = named[i].Position;
            text.Append("<circle class=\"").Append(i < marked.Length ? "marked" : "from").Append("\" cx=\"").Number(Math.Round(at.XMm, 2)).Append("\" cy=\"").Number(Math.Round(-at.YMm, 2))
                .Append("\" r=\"").Number(PointMm / 2).Append("\"/>\n");
            WriteName(text, placer, named[i], at.XMm < _widthMm / 2 ? Direction.Right : Direction.Left);
        }
    }

    // Where a step speaks of more points than there is room for, a name that finds none stays in the sentence.
    private static void WriteName(StringBuilder text, LabelPlacer placer, in Landmark mark, Direction inward)
    {
        (TextMark? label, PathMark? leader) = placer.PlaceBeside(mark.Name.Text, NameMm, Ink.Strong, mark.Position, inward, null, GapMm, double.PositiveInfinity);
        if (leader is not null)
        {
            text.Append("<path class=\"leader\"");
            WriteData(text, leader.Path);
        }

        if (label is not null)
        {
            string anchor = label.Alignment switch { TextAlignment.Start => "start", TextAlignment.End => "end", _ => "middle" };
            text.Append("<text x=\"").Number(Math.Round(label.Anchor.XMm, 2)).Append("\" y=\"").Number(Math.Round(-label.Anchor.YMm, 2)).Append("\" font-size=\"").Number(Math.Round(label.SizeMm, 2))
                .Append("\" text-anchor=\"").Append(anchor).Append("\">").Escaped(label.Text).Append("</text>\n");
        }
    }
}
