using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Sizing;

namespace Pattern.Core.Output;

/// <summary>Lays out the sheet of a nest.</summary>
internal sealed class NestSheet
{
    private const double MarginMm = 14;
    private const double BetweenMm = 80;
    private const double TypeMm = 4;
    private const double KeyLineMm = 60;
    private const double KeyStepMm = 8;
    private const double LongestLeaderMm = 40;

    // The corners at which sizes lie farthest apart are named; more would crowd the sheet.
    private const int NamedCorners = 2;

    private readonly SizeNest _nest;
    private readonly IReadOnlyList<string> _names;
    private readonly LineRole[] _roles;

    internal NestSheet(SizeNest nest)
    {
        _nest = nest;
        _names = nest.Rules.Sizes;
        _roles = [.. _names.Select((_, i) => LineRole.OfSize(i))];
    }

    internal Drawing Draw()
    {
        Panel[][] placed = Placed(out BoundingBox content);
        var seams = new List<DrawingMark>();
        var darts = new List<DrawingMark>();
        var grains = new List<DrawingMark>();
        for (int size = 0; size < placed.Length; size++)
        {
            foreach (Panel panel in placed[size])
            {
                seams.AddRange(panel.EdgesRaw.SelectMany(edge => edge.StretchesRaw).Select(stretch => new PathMark(stretch, _roles[size])));
                darts.AddRange(panel.Darts.SelectMany(dart => new[] { Line(dart.StartLeg, dart.Apex), Line(dart.EndLeg, dart.Apex) }).Select(leg => new PathMark(leg, _roles[size])));
                foreach (Point2D[] corners in panel.InsideDarts.Select(dart => dart.Corners()))
                {
                    darts.AddRange(corners.Select((corner, i) => new PathMark(Line(corner, corners[(i + 1) % corners.Length]), _roles[size])));
                }
            }
        }

        grains.AddRange(placed[0].Select(panel => new PathMark(CurvePath.FromLine(panel.Grainline), LineRole.Grain, null, ArrowEnds.Both)));
        double left = content.LeftMm - LongestLeaderMm - MarginMm;
        double right = Math.Max(content.RightMm + LongestLeaderMm + MarginMm, left + TitleBlock.LeastWidthMm + (2 * MarginMm));
        var titles = new List<DrawingMark>();
        var squares = new List<DrawingMark>();
        double keyTop = content.BottomMm - LongestLeaderMm;
        double below = Key(left + MarginMm, right - MarginMm, keyTop, titles);
        TitleBlock foot = Foot();
        double bottom = foot.Set(left + MarginMm, right - MarginMm, below - MarginMm, titles, squares) - MarginMm;
        var sheet = new BoundingBox(left, bottom, right, content.TopMm + LongestLeaderMm + MarginMm);
        var placer = new LabelPlacer(new BoundingBox(left + (MarginMm / 2), keyTop + 2, right - (MarginMm / 2), sheet.TopMm - (MarginMm / 2)));
        seams.ForEach(placer.Avoid);
        darts.ForEach(placer.Avoid);
        grains.ForEach(placer.Avoid);
        var names = new List<DrawingMark>();
        for (int p = 0; p < placed[0].Length; p++)
        {
            Name(placed, p, placer, names);
        }

        DrawingLayer[] layers =
        [
            new(LayerName.Grainlines, grains.ToArray()), new(LayerName.Darts, darts.ToArray()), new(LayerName.SeamLines, seams.ToArray()), new(LayerName.Names, names.ToArray()),
            new(LayerName.TestSquares, squares.ToArray()), new(LayerName.TitleBlock, titles.ToArray()),
        ];
        return new Drawing(Title, $"{Title} at full size: seam lines and darts of each size in a dash pattern of its own, laid {_nest.Place}. {_nest.Report.Verdict()}", sheet, Array.FindAll(layers, layer => layer.Marks.Count > 0))
        {
            Foot = foot,
        };
    }

    private string Title => $"{_nest.Run.Sizes[0].Block.Heading}, sizes {_names[0]} to {_names[_names.Count - 1]}";

    private static CurvePath Line(in Point2D from, in Point2D to) => CurvePath.FromLine(new LineSegment(from, to));

    // Each panel in all its sizes beside the one before.
    private Panel[][] Placed(out BoundingBox content)
    {
        Panel[][] placed = Array.ConvertAll(_nest.PanelsRaw, panels => (Panel[])panels.Clone());
        BoundingBox? all = null;
        for (int p = 0; p < placed[0].Length; p++)
        {
            BoundingBox box = placed.Select(panels => panels[p].SeamOutline().Bounds).Aggregate((one, other) => one.Union(other));
            double shiftMm = all is { } before ? before.RightMm + BetweenMm - box.LeftMm : 0;
            Transform2D shift = Transform2D.Translation(new Vector2D(shiftMm, 0));
            foreach (Panel[] panels in placed)
            {
                panels[p] = shiftMm == 0 ? panels[p] : panels[p].Transformed(shift);
            }

            box = new BoundingBox(box.LeftMm + shiftMm, box.BottomMm, box.RightMm + shiftMm, box.TopMm);
            all = all?.Union(box) ?? box;
        }

        content = all!.Value;
        return placed;
    }

    private void Name(Panel[][] placed, int p, LabelPlacer placer, List<DrawingMark> names)
    {
        Panel first = placed[0][p];
        Panel last = placed[placed.Length - 1][p];
        if (placer.TryPlace(first.Name.Text, 3 * TypeMm, TextWeight.Bold, Ink.Middle, [LabelSpot.On(first.SeamOutline().Bounds.Centre), LabelSpot.Upright(first.Grainline.Midpoint + new Vector2D(8 * TypeMm, 0)), LabelSpot.Upright(first.Grainline.Midpoint - new Vector2D(8 * TypeMm, 0))]) is { } title)
        {
            names.Add(title);
        }

        IEnumerable<int> corners = Enumerable.Range(0, first.EdgesRaw.Length).OrderByDescending(e => first.EdgesRaw[e].Start.DistanceMm(last.EdgesRaw[e].Start)).Take(NamedCorners);
        foreach (int e in corners)
        {
            // Away from the panel, so that the names stand outside all lines.
            Direction away = first.SeamOutline().Bounds.Centre.DirectionTo(last.EdgesRaw[e].Start);
            for (int size = placed.Length - 1; size >= 0; size--)
            {
                (TextMark? label, PathMark? leader) = placer.PlaceBeside(_names[size], TypeMm, Ink.Strong, placed[size][p].EdgesRaw[e].Start, away, null, 1, LongestLeaderMm);
                names.AddRange(new DrawingMark?[] { leader, label }.OfType<DrawingMark>());
            }
        }
    }

    // A line of each size with its name, in rows.
    private double Key(double leftMm, double rightMm, double topMm, List<DrawingMark> marks)
    {
        double columnMm = KeyLineMm + 6 + _names.Max(name => TextMark.WidthOfMm(name, TypeMm, TextWeight.Regular)) + 12;
        int columns = Math.Max(1, (int)((rightMm - leftMm) / columnMm));
        for (int i = 0; i < _names.Count; i++)
        {
            double x = leftMm + (i % columns * columnMm);
            double y = topMm - ((1 + (i / columns)) * KeyStepMm);
            marks.Add(new PathMark(Line(new Point2D(x, y), new Point2D(x + KeyLineMm, y)), _roles[i]));
            marks.Add(new TextMark(_names[i], new Point2D(x + KeyLineMm + 3, y - (TypeMm * 0.35)), TypeMm, 0, TextAlignment.Start, TextWeight.Regular, Ink.Strong));
        }

        return topMm - ((1 + ((_names.Count - 1) / columns)) * KeyStepMm);
    }

    private TitleBlock Foot() => new()
    {
        Heading = _nest.Run.Sizes[0].Block.Heading,
        Subject = $"sizes {_names[0]} to {_names[_names.Count - 1]}",
        Notes = ["Full size, scale 1:1.", $"All sizes laid {_nest.Place}.", "Seam lines, no seam allowance."],
        Rows = [.. _nest.Run.Sizes.Select(size => ("size " + size.Name, size.Block.Body.Describe(Measurement.TapeStep.For(size.Block.Body.Unit))))],
        Verdict = ("checks", _nest.Report.Verdict()),
        VerdictInk = _nest.Report.Passed ? Ink.Strong : Ink.Accent,
        Cautions = Cautions.OfCutting,
    };
}
