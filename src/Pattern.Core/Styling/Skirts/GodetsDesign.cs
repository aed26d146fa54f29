using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>Godets: every seam between two panels that runs down to the hem is left open from a height, and a sector of a circle is set in.</summary>
/// <remarks>Closed form: a godet of the height g and the angle t adds g t to the hem; a quarter circle of 25 cm adds 39.27 cm.</remarks>
internal sealed class GodetsDesign() : BlockDesign("godets", "1", Height, Part)
{
    /// <summary>Where nobody says, 10 in (25 cm), but never above 10 cm below the hip.</summary>
    internal static readonly MethodSetting<Length> Height = MethodSetting.OfLength("godet height", null, Length.FromInches(3), Length.FromInches(40)).Printed();

    /// <summary>A quarter circle by usage.</summary>
    internal static readonly MethodSetting<Ratio> Part = MethodSetting.OfShare("part of a circle", Ratio.FromPercent(25), Ratio.FromPercent(5), Ratio.FromPercent(45)).Printed();

    internal static readonly EdgeName Left = EdgeName.Of("left");
    internal static readonly EdgeName Right = EdgeName.Of("right");

    // Below the hip a seam runs on before it opens; common practice, no source.
    private const double BelowHipMm = 100;
    private const double BelowTopMm = 20;
    private const double GapMm = 60;
    private const string OpenEdge = " beside godet";

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        if (work.Source.Designs.Any(design => design.Name == BuiltInDesigns.Circle.Name))
        {
            throw work.Refusal("A circle swings enough: a godet would not show in it. Set godets into a skirt of gores or of backs and fronts.");
        }

        Seam[] opened = [.. work.Seams.Seams.Where(seam => !seam.IsToMirrorImage && HemAt(work, seam.First) != 0 && HemAt(work, seam.Second) != 0)];
        if (opened.Length == 0 || work.Panels.Any(panel => work.Source.FoldsOf(panel.Name).Count > 0) || work.Panels.Any(panel => panel.Edges.Any(edge => edge.Name.Text.EndsWith(OpenEdge, StringComparison.Ordinal))))
        {
            throw work.Refusal("No seam that runs down to the hem without pleats, vents or godets is left to open. Set godets into a skirt of gores or of backs and fronts, and only once.");
        }

        Panel[] before = [.. work.Panels.Where(panel => (panel.Name == PanelName.Back || panel.Name == PanelName.Front) && panel.TryFindEdge(EdgeName.SideSeam, out _) && panel.TryFindEdge(EdgeName.Hem, out _) && panel.TryFindEdge(EdgeName.Centre, out _) && SkirtFlare.HangsStraight(panel))];
        double most = stock.LengthMm - stock.Levels.UpperHipMm - BelowHipMm;
        double heightMm = work.IsGiven(Height) ? work.Take(Height).ValueMm : Math.Min(stock.Usually(10, 25), most);
        if (heightMm > most)
        {
            throw work.Refusal(FormattableString.Invariant($"Godets {heightMm:0} mm high would open the seams less than {BelowHipMm:0} mm below the hip; up to {most:0} mm there is room. Make them less high, or the skirt longer."));
        }

        double shortest = opened.SelectMany(seam => new[] { seam.First, seam.Second }).Min(edge => work.FindPanel(edge.PanelName).FindEdge(edge.EdgeName).SewnLengthMm());
        if (heightMm > shortest - BelowTopMm)
        {
            throw work.Refusal(FormattableString.Invariant($"A seam that runs down to the hem is {shortest:0} mm long, too short for a godet {heightMm:0} mm high. Make the godets less high, or begin without tiers."));
        }

        double angle = 2 * Math.PI * work.Take(Part).DecimalFractions;
        double right = work.Panels.Max(panel => panel.SeamOutline().Bounds.Right.Millimeters) + GapMm;
        double apexY = heightMm - stock.LengthMm;
        var seams = new List<Seam>();
        var names = new List<PanelName>();
        foreach (Seam seam in work.Seams.Seams)
        {
            if (Array.IndexOf(opened, seam) < 0)
            {
                seams.Add(seam);
                continue;
            }

            PanelName name = PanelName.Of(opened.Length == 1 ? "godet" : FormattableString.Invariant($"godet {names.Count + 1}"));
            int times = work.TimesOf(seam.First.PanelName);
            bool firstRunsDown = Open(work, seam.First, heightMm);
            bool secondRunsDown = Open(work, seam.Second, heightMm);
            double wide = heightMm * Math.Sin(Math.Min(angle / 2, SkirtStock.SquareRad));
            work.Add(Godet(name, new Point2D(right + wide, apexY), heightMm, angle), times);
            right += (2 * wide) + GapMm;
            names.Add(name);
            seams.Add(seam.Named(seam.Name, [.. seam.StretchNames.Select(stretch => stretch.Replace("to hem", "to godet"))]));

            // The left side of a godet runs up, its right side down.
            seams.Add(Seam.Between(Beside(seam.First), EdgeOf.Panel(name, Left))
                .Running(firstRunsDown ? SeamRun.Opposite : SeamRun.SameWay)
                .Named(name + " to " + seam.First));
            seams.Add(Seam.Between(Beside(seam.Second), EdgeOf.Panel(name, Right))
                .Running(secondRunsDown ? SeamRun.SameWay : SeamRun.Opposite)
                .Named(name + " to " + seam.Second));
        }

        work.Sew(SeamPlan.Of([.. seams]));
        Tell(work, opened, heightMm, angle);
        Promise(work, opened, names, heightMm, angle);
        PromiseHip(work, before, heightMm);
    }

    private static EdgeOf Beside(EdgeOf edge) => EdgeOf.Panel(edge.PanelName, EdgeName.Of(edge.EdgeName.Text + OpenEdge));

    // Whether an edge ends at a hem, 1, begins at one, -1, or neither.
    private static int HemAt(DesignDraft work, EdgeOf edge)
    {
        Panel panel = work.FindPanel(edge.PanelName);
        int index = panel.IndexOf(edge.EdgeName);
        int count = panel.EdgesRaw.Length;
        return panel.EdgesRaw[index].Darts.Count > 0 ? 0
            : panel.EdgesRaw[(index + 1) % count].Role == EdgeRole.Hem ? 1
            : panel.EdgesRaw[(index + count - 1) % count].Role == EdgeRole.Hem ? -1
            : 0;
    }

    // Parts the lowest piece of an edge off, to be sewn to a godet; true where the edge runs down.
    private static bool Open(DesignDraft work, EdgeOf edge, double heightMm)
    {
        bool runsDown = HemAt(work, edge) > 0;
        Panel panel = work.FindPanel(edge.PanelName);
        PanelEdge whole = panel.FindEdge(edge.EdgeName);
        CurvePath line = whole.StretchesRaw[0];
        double at = runsDown ? line.LengthMm - heightMm : heightMm;
        PanelEdge first = new(runsDown ? whole.Name : Beside(edge).EdgeName, whole.Role, line.SubPathMm(0, at));
        PanelEdge second = new(runsDown ? Beside(edge).EdgeName : whole.Name, whole.Role, line.SubPathMm(at, line.LengthMm));
        work.Replace(panel.WithEdges(
            [.. panel.EdgesRaw.SelectMany(one => one.Name == whole.Name ? new[] { first, second } : [one])],
            panel.Features with
            {
                Notches = [.. panel.Notches.Select(notch => notch.Edge != whole.Name || runsDown ? notch : new Notch(notch.Edge, notch.Position, notch.FromStartMm - at, notch.Count))],
            },
            "opening a seam for a godet"));
        return runsDown;
    }

    private static Panel Godet(PanelName name, Point2D apex, double heightMm, double angleRad)
    {
        Vector2D down = new(0, -heightMm);
        Point2D right = apex + down.Rotated(Angle.FromRadians(angleRad / 2));
        CircularArc hem = CircularArc.Around(apex, right, Angle.FromRadians(-angleRad));
        return Panel.Named(name)
            .WithEdge(Right, EdgeRole.Seam, CurvePath.FromLine(new LineSegment(apex, right)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromArc(hem))
            .WithEdge(Left, EdgeRole.Seam, CurvePath.FromLine(new LineSegment(hem.End, apex)))
            .WithGrainline(new LineSegment(apex + (down * 0.35), apex + (down * 0.85)))
            .Make();
    }

    private static void Tell(DesignDraft work, Seam[] opened, double heightMm, double angleRad)
    {
        WorkedLength height = WorkedLength.GivenMm("height", heightMm);
        work.Sheet.Note("Leave open, from {0} above the hem: {1}.", height, string.Join(", ", opened.Select(seam => seam.Name)));
        work.Sheet.Note("For each draw a godet: about a corner, with the {0} as radius, a sector of {1} degrees. It adds to the hem {2}.", height, (angleRad * 180 / Math.PI).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture), height.Times(angleRad));
        work.Sheet.Note("Sew the seam first, down to the opening. Set the godet in from its point down on one side, then on the other, and reinforce the point.");
        work.Sheet.Because("Three seams meet there, and it carries the swing of the godet.");
        work.Remark("Hang the skirt 24 to 48 hours before levelling the hem: the sides of the godets lie on the bias and drop.");
    }

    private static void Promise(DesignDraft work, Seam[] opened, List<PanelName> names, double heightMm, double angleRad)
    {
        work.Check("godets", list =>
        {
            for (int i = 0; i < opened.Length; i++)
            {
                Panel godet = list.FindPanel(names[i]);
                CurvePath hem = godet.FindEdge(EdgeName.Hem).StretchesRaw[0];
                list.Length("godet adds to the hem", names[i].Text, hem.LengthMm, heightMm * angleRad);
                list.Angle("hem joined at godet, on its left", names[i].Text, Corner(list, opened[i].First) + CheckList.CornerRad(hem, godet.FindEdge(Left).StretchesRaw[0]), Math.PI);
                list.Angle("hem joined at godet, on its right", names[i].Text, Corner(list, opened[i].Second) + CheckList.CornerRad(godet.FindEdge(Right).StretchesRaw[0], hem), Math.PI);
                SkirtPromises.SimpleOutline(list, godet);
            }
        });

        // What was promised of the hem spoke of seams that run down to it.
        PanelName[] panels = [.. opened.SelectMany(seam => new[] { seam.First.PanelName, seam.Second.PanelName }).Distinct()];
        work.Check(SkirtPromises.Hem, list => Array.ForEach(panels, name => list.Angle(
            "hem without a corner", name.Text, list.FindPanel(name).Edges.Where(edge => edge.Role == EdgeRole.Hem).Max(edge => SkirtPromises.SharpestCornerRad(edge.StretchesRaw[0])), 0)));
        work.Check(SkirtPromises.Outline, list => Array.ForEach(panels, name => SkirtPromises.SimpleOutline(list, list.FindPanel(name))));
    }

    // The hip is measured from the hem up, along the seam and what of it is sewn to the godet.
    private static void PromiseHip(DesignDraft work, Panel[] before, double heightMm)
    {
        if (before.Length < 2)
        {
            return;
        }

        double hip = before.Sum(SkirtFlare.HipWidthMm);
        work.Check(SkirtPromises.Hip, list => list.Length(
            "hip width all around",
            SkirtPromises.Block,
            2 * before.Sum(was =>
            {
                Panel panel = list.FindPanel(was.Name);
                double above = SkirtFlare.BelowHipMm(panel) + heightMm;
                return panel.FindEdge(EdgeName.Hem).StretchesRaw[0].SegmentsRaw.Sum(segment => segment.LengthMm() - (above * Math.Abs(segment.TurningRad)));
            }),
            2 * hip));
    }

    // The corner of a panel between the edge beside a godet and the hem.
    private static double Corner(CheckList list, EdgeOf edge)
    {
        Panel panel = list.FindPanel(edge.PanelName);
        int index = panel.IndexOf(Beside(edge).EdgeName);
        int count = panel.EdgesRaw.Length;
        PanelEdge after = panel.EdgesRaw[(index + 1) % count];
        CurvePath line = panel.EdgesRaw[index].StretchesRaw[0];
        return after.Role == EdgeRole.Hem
            ? CheckList.CornerRad(line, after.StretchesRaw[0])
            : CheckList.CornerRad(panel.EdgesRaw[(index + count - 1) % count].StretchesRaw[0], line);
    }
}
