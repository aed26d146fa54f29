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

/// <summary>The steps that matter for one thing on a block, in one small picture.</summary>
internal sealed class ExplanationPicture
{
    private const double WidestMm = 170;
    private const double HighestMm = 190;
    private const double MarginMm = 14;
    private const double NameMm = 3.2;
    private const double PointMm = 1.6;
    private const double GapMm = 1;

    private const string Style = """
        <style>
        .panel, .drawn, .asked, .leader { fill: none; stroke: #000; }
        .panel { stroke: #777; stroke-width: .35; stroke-dasharray: .8 1.2; }
        .drawn { stroke-width: .4; }
        .asked { stroke-width: 1; stroke-linecap: round; }
        .leader { stroke-width: .2; }
        circle { fill: #000; stroke: none; }
        circle.asked { fill: #fff; stroke-width: .6; }
        text { fill: #000; stroke: #fff; stroke-width: .7; stroke-linejoin: round; paint-order: stroke; font-family: Inter, Helvetica, Arial, "Liberation Sans", sans-serif; }
        </style>

        """;

    private readonly Explanation _explanation;
    private readonly List<CurvePath> _panels = [];
    private readonly List<CurvePath> _drawn = [];
    private readonly List<CurvePath> _asked = [];
    private readonly List<(Landmark Landmark, int Step)> _points = [];
    private readonly double _widthMm;
    private readonly double _heightMm;

    internal ExplanationPicture(Explanation explanation)
    {
        _explanation = explanation;
        Block block = explanation.Block;
        CurvePath[] drawn = [.. explanation.Steps.SelectMany(step => step.Drew).Select(line => line.Path)];
        Landmark[] marked = [.. explanation.Steps.SelectMany(step => step.Marked)];
        CurvePath[] panels = [.. block.Panels.SelectMany(panel => panel.EdgesRaw).SelectMany(edge => edge.StretchesRaw)];
        BoundingBox[] boxes = [.. drawn.Concat(panels).Select(path => path.Bounds), .. marked.Select(mark => BoundingBox.Around(mark.Position, mark.Position))];
        BoundingBox all = boxes.Aggregate((one, other) => one.Union(other));
        double scale = Math.Min(WidestMm / Math.Max(all.RightMm - all.LeftMm, 1), HighestMm / Math.Max(all.TopMm - all.BottomMm, 1));
        var corner = new Point2D(all.LeftMm, all.TopMm);
        Transform2D toPicture = Transform2D.Scaling(corner, Ratio.FromDecimalFractions(scale)).Then(Transform2D.Translation(new Vector2D(MarginMm - corner.XMm, -MarginMm - corner.YMm)));
        _widthMm = (scale * (all.RightMm - all.LeftMm)) + (2 * MarginMm);
        _heightMm = (scale * (all.TopMm - all.BottomMm)) + (2 * MarginMm);
        _panels.AddRange(panels.Select(path => path.Transformed(toPicture)));
        _drawn.AddRange(drawn.Select(path => path.Transformed(toPicture)));
        _asked.AddRange(Asked(block, explanation.Root).Select(path => path.Transformed(toPicture)));
        foreach (Step step in explanation.Steps)
        {
            _points.AddRange(step.Marked.Select(mark => (mark.At(toPicture.Apply(mark.Position)), step.Number)));
        }
    }

    internal string Write(bool isAlone)
    {
        var text = new StringBuilder(8 * 1024);
        string what = _explanation.Root.Name;
        text.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"").Escaped("The steps that matter for " + what + ": " + string.Join(", ", _explanation.Steps.Select(step => Number(step.Number))) + ".")
            .Append('"');
        if (isAlone)
        {
            text.Append(" width=\"").Number(Math.Round(_widthMm, 2)).Append("mm\" height=\"").Number(Math.Round(_heightMm, 2)).Append("mm\"");
        }

        text.Append(" viewBox=\"0 0 ").Number(Math.Round(_widthMm, 2)).Append(' ').Number(Math.Round(_heightMm, 2)).Append("\">\n").Append(Style.Replace("\r\n", "\n"));
        Paths(text, "panel", _panels);
        Paths(text, "drawn", _drawn);
        Paths(text, "asked", _asked);
        Points(text);
        return text.Append("</svg>\n").ToString();
    }

    private static IEnumerable<CurvePath> Asked(Block block, Origin root)
    {
        switch (root.Kind)
        {
            case OriginKind.Edge:
                return block.Panels.SelectMany(panel => panel.EdgesRaw.Where(edge => EdgeOf.Panel(panel.Name, edge.Name).ToString() == root.Name)).SelectMany(edge => edge.StretchesRaw);
            case OriginKind.Line:
                return block.Steps.SelectMany(step => step.Drew).Where(line => line.Name.Text == root.Name).Select(line => line.Path);
            case OriginKind.Dart:
                return block.Panels.SelectMany(panel => panel.EdgesRaw.SelectMany(edge => edge.DartsRaw.Where(dart => new DartOf(panel.Name, dart.Name).ToString() == root.Name)))
                    .SelectMany(dart => new[] { CurvePath.FromLine(new LineSegment(dart.StartLeg, dart.Apex)), CurvePath.FromLine(new LineSegment(dart.Apex, dart.EndLeg)) });
            default:
                return [];
        }
    }

    private void Points(StringBuilder text)
    {
        var placer = new LabelPlacer(new BoundingBox(0, -_heightMm, _widthMm, 0));
        foreach (CurvePath path in _drawn.Concat(_asked))
        {
            placer.Avoid(new PathMark(path, LineRole.DartLeg));
        }

        foreach ((Landmark landmark, _) in _points)
        {
            placer.Avoid(new PointMark(landmark.Position, IsAsked(landmark) ? 2 * PointMm : PointMm, Ink.Strong));
        }

        foreach ((Landmark landmark, int step) in _points)
        {
            Point2D at = landmark.Position;
            bool isAsked = IsAsked(landmark);
            text.Append(isAsked ? "<circle class=\"asked\" cx=\"" : "<circle cx=\"").Number(Math.Round(at.XMm, 2)).Append("\" cy=\"").Number(Math.Round(-at.YMm, 2)).Append("\" r=\"").Number(isAsked ? PointMm : PointMm / 2).Append("\"/>\n");
            (TextMark? label, PathMark? leader) = placer.PlaceBeside(
                landmark.Name.Text + " (" + Number(step) + ")", NameMm, Ink.Strong, at, at.XMm < _widthMm / 2 ? Direction.Right : Direction.Left, null, isAsked ? 2 * GapMm : GapMm, double.PositiveInfinity);
            if (leader is not null)
            {
                Paths(text, "leader", [leader.Path]);
            }

            if (label is not null)
            {
                string anchor = label.Alignment switch { TextAlignment.Start => "start", TextAlignment.End => "end", _ => "middle" };
                text.Append("<text x=\"").Number(Math.Round(label.Anchor.XMm, 2)).Append("\" y=\"").Number(Math.Round(-label.Anchor.YMm, 2)).Append("\" font-size=\"").Number(Math.Round(label.SizeMm, 2))
                    .Append("\" text-anchor=\"").Append(anchor).Append("\">").Escaped(label.Text).Append("</text>\n");
            }
        }
    }

    private bool IsAsked(in Landmark landmark) => _explanation.Root.Kind == OriginKind.Landmark && _explanation.Root.Name == landmark.Name.Text;

    private static void Paths(StringBuilder text, string kind, IEnumerable<CurvePath> paths)
    {
        foreach (CurvePath path in paths)
        {
            text.Append("<path class=\"").Append(kind).Append("\" d=\"");
            var sink = new PathData(text, 0, 0, decimals: 2);
            path.WriteTo(ref sink, LengthUnit.Millimeter, ArcOutput.Cubics);
            text.Append("\"/>\n");
        }
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
