using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>A lining derived from the skirt: its own panels, shorter; where they are full or pleated, an A-line with the same waist.</summary>
internal sealed class LinedDesign() : BlockDesign(LinedName, "1", Shorter)
{
    internal const string LinedName = "lined";

    /// <summary>1 in (2.5 cm) by usage, so that it does not show when one sits or walks.</summary>
    internal static readonly MethodSetting<Length> Shorter = MethodSetting.OfLength("lining shorter by", Length.FromInches(1), Length.Zero, Length.FromInches(6)).InMetric(Length.FromCentimeters(2.5)).Printed();

    internal static readonly EdgeName Top = EdgeName.Of("lining top");
    internal static readonly EdgeName Opening = EdgeName.Of("lining opening");

    // A hem that fans out more in one panel belongs to a full skirt; a full lining only adds weight.
    private const double FullRad = 35 * Math.PI / 180;
    private const double ApartMm = 80;

    // Between a lining of another cut and what it is sewn to: eased in.
    private const double EasedMm = 6;

    /// <summary>Whether a panel is one of the lining.</summary>
    internal static bool IsLining(Panel panel) => panel.TryFindEdge(Top, out _);

    protected override void Style(DesignDraft work)
    {
        _ = SkirtStock.OfFinished(work);
        RefuseOthers(work);
        WorkedLength shorter = work.Take(Shorter);
        Panel[] waists = [.. work.Panels.Where(panel => panel.TryFindEdge(EdgeName.Waist, out _))];

        // The lower edge of a band cut off a full skirt has the length of that skirt there: its lining is the skirt once more.
        bool isBanded = work.Panels.Any(ContourBandDesign.IsBand);
        bool hasGodets = work.Source.Designs.Any(design => design.Name == BuiltInDesigns.Godets.Name);
        if (isBanded && hasGodets)
        {
            throw work.Refusal("It has godets, which are not lined, and a band with the length of the skirt below it. Finish it with the straight waistband or a facing: then an A-line goes inside.");
        }

        bool follows = !hasGodets && waists.All(panel => panel.TryFindEdge(EdgeName.Hem, out PanelEdge? hem) && (TurnRad(hem!) <= FullRad || isBanded) && work.Source.FindPanelAsCut(panel.Name).EdgesRaw == panel.EdgesRaw);

        // What follows the skirt is sewn to the free edge of a facing, an A-line to the waist beneath it.
        double facing = !follows ? 0 : work.Panels.Where(FacedWaistDesign.IsFacing).Select(panel => panel.EdgesRaw[1].SewnLengthMm()).FirstOrDefault();
        SeamPlan sewn = work.Seams;
        (Panel Panel, int Times)[] shells = follows
            ? [.. waists.Select(panel => (facing > 0 ? panel.MoveEdgeIn(EdgeName.Waist, SkirtStock.Mm(facing)) : panel, work.TimesOf(panel.Name)))]
            : Plain(work, out sewn);
        var linings = new List<(Panel Panel, int Times)>();
        foreach ((Panel shell, int times) in shells)
        {
            linings.Add((Lining(follows ? WithOpening(work, shell) : shell, shorter.ValueMm), times));
        }

        BoundingBox all = work.Panels.Select(panel => panel.SeamOutline().Bounds).Aggregate((one, other) => one.Union(other));
        BoundingBox own = linings.Select(one => one.Panel.SeamOutline().Bounds).Aggregate((one, other) => one.Union(other));
        Transform2D beside = Transform2D.Translation(new Vector2D(all.RightMm + ApartMm - own.LeftMm, 0));
        linings.ForEach(one => work.Add(one.Panel.Transformed(beside), one.Times));
        work.Sew(Sewn(work, sewn, linings));
        Tell(work, follows, shorter);
        SkirtStock.KeepLines(work);
        Promise(work, follows, shorter.ValueMm + facing, shells, linings);
    }

    private static void RefuseOthers(DesignDraft work)
    {
        if (work.Panels.Any(IsLining))
        {
            throw work.Refusal("It is lined already.");
        }

        if (work.Panels.Any(panel => panel.TryFindEdge(WrapDesign.FrontEdge, out _)))
        {
            throw work.Refusal("It wraps, and its fronts are faced. A lining is bagged out to its own edges there: line the block, and wrap the skirt without.");
        }

        if (work.Panels.Any(panel => panel.TryFindEdge(SlantedPocketsDesign.PocketTop, out _)))
        {
            throw work.Refusal("Its front is cut away for the pockets, and a lining is traced off the whole front. Line it first, and put the pockets in then.");
        }
    }

    // An A-line of the same waist: what lies above a band's lower edge is cut off first, since that is sewn to it.
    private static (Panel Panel, int Times)[] Plain(DesignDraft work, out SeamPlan sewn)
    {
        Block plain = work.Source.ToBuilder().WithoutDesigns().Draft();
        double lower = work.Panels.Where(ContourBandDesign.IsBand).Select(panel => panel.EdgesRaw[1].SewnLengthMm()).FirstOrDefault()
            + work.Source.Designs.Where(design => design.Name == LoweredWaistDesign.LoweredName).Sum(design => design.Settings[0].Raw);
        plain = (lower > 0 ? plain.LoweredWaist(SkirtStock.Mm(lower)) : plain).ALine();
        sewn = plain.Seams;
        return [.. plain.Panels.Select(panel => (panel, plain.TimesOf(panel.Name)))];
    }

    // A vent or kick pleat is not lined: the lining is left open along the fold, and hemmed beside it.
    private static Panel WithOpening(DesignDraft work, Panel shell)
    {
        BlockLine? fold = work.Source.FindFolds(shell.Name).Select(line => (BlockLine?)line).FirstOrDefault();
        bool hasOpening = shell.TryFindEdge(EdgeName.Of(PencilDesign.Slit), out _);
        if (fold is null && !hasOpening)
        {
            return shell;
        }

        var edges = new List<PanelEdge>();
        foreach (PanelEdge edge in shell.EdgesRaw)
        {
            if (edge.Name == EdgeName.Hem)
            {
                Point2D end = fold?.Path.Start ?? edge.End;
                edges.Add(new PanelEdge(edge.Name, edge.Role, CurvePath.FromLine(new LineSegment(edge.Start, end))));
                edges.Add(new PanelEdge(Opening, EdgeRole.Seam, fold?.Path ?? shell.FindEdge(EdgeName.Of(PencilDesign.Slit)).StretchesRaw[0]));
            }
            else if (edge.Name == EdgeName.Waist || edge.Name == EdgeName.SideSeam || edge.Name == EdgeName.Centre)
            {
                edges.Add(edge);
            }
        }

        return shell.WithEdges([.. edges], shell.Features with { Notches = [.. shell.Notches.Where(notch => edges.Exists(edge => edge.Name == notch.Edge))] }, "lining a skirt that opens");
    }

    private static Panel Lining(Panel shell, double shorterMm)
    {
        Panel panel = shell.MoveEdgeIn(EdgeName.Hem, SkirtStock.Mm(shorterMm));
        return new Panel(
            PanelName.Of(shell.Name.Text + " lining"),
            [.. panel.EdgesRaw.Select(edge => edge.Name == EdgeName.Waist ? new PanelEdge(Top, EdgeRole.Seam, edge.StretchesRaw, [.. edge.DartsRaw.Select(dart => dart.Shape)]) : edge)],
            panel.Features with { Landmarks = [], Notches = [] });
    }

    // Sewn as what it was traced from, each seam whole: openings for pockets are the skirt's. Without a zip at the centre back it lies on the fold there, as the skirt.
    private static SeamPlan Sewn(DesignDraft work, SeamPlan from, List<(Panel Panel, int Times)> linings)
    {
        EdgeOf? Own(EdgeOf edge)
        {
            PanelName name = PanelName.Of(edge.PanelName.Text + " lining");
            return linings.Exists(one => one.Panel.Name == name && one.Panel.TryFindEdge(edge.EdgeName, out _)) ? EdgeOf.Panel(name, edge.EdgeName) : null;
        }

        bool hasCentreBack = work.Seams.Seams.Any(seam => seam.IsToMirrorImage && seam.First.EdgeName == EdgeName.Centre && seam.First.PanelName.Text.StartsWith(PanelName.Back.Text, StringComparison.Ordinal));
        SeamPlan plan = work.Seams;
        var sewn = new HashSet<(EdgeOf, EdgeOf)>();
        foreach (Seam seam in from.Seams)
        {
            if (Own(seam.First) is { } first && Own(seam.Second) is { } second && (hasCentreBack || !seam.IsToMirrorImage) && sewn.Add((first, second)))
            {
                plan = plan.With((seam.IsToMirrorImage ? Seam.ToMirrorImage(first) : Seam.Between(first, second).Running(seam.Run)).Named(first + " seam"));
            }
        }

        return plan;
    }

    private static void Tell(DesignDraft work, bool follows, WorkedLength shorter)
    {
        if (follows)
        {
            work.Sheet.Note("Trace each panel once more for the lining, its hem higher: {0}.", shorter);
            work.Sheet.Because("It hangs from the waist with the skirt, and does not show when one sits or walks.");
        }
        else
        {
            work.Sheet.Note("For the lining draft the block again and make it an A-line with the waist of the skirt, its hem higher: {0}.", shorter);
            work.Sheet.Because("A lining as full as the skirt only adds weight; the A-line lets one stride.");
        }

        work.Sheet.Note("Lay the darts of the lining as pleats, the other way than those of the skirt; sew the lining to the waist inside, and beside zip and opening by hand. Its hem hangs free.");
    }

    private static void Promise(DesignDraft work, bool follows, double shorterMm, (Panel Panel, int Times)[] shells, List<(Panel Panel, int Times)> linings)
    {
        (PanelName Name, int Times)[] own = [.. linings.Select(one => (one.Panel.Name, one.Times))];
        EdgeName to = follows && work.Panels.Any(FacedWaistDesign.IsFacing) ? FacedWaistDesign.Free : EdgeName.Waist;
        Dictionary<PanelName, int> times = work.Panels.ToDictionary(panel => panel.Name, panel => work.TimesOf(panel.Name));
        (PanelName Shell, EdgeName Side)[] sides = follows ? [.. shells.Select(one => (one.Panel.Name, one.Panel.EdgesRaw[(one.Panel.IndexOf(EdgeName.Waist) + 1) % one.Panel.EdgesRaw.Length].Name))] : [];
        work.Check("lining", list =>
        {
            double top = own.Sum(one => one.Times * list.FindPanel(one.Name).FindEdge(Top).SewnLengthMm());

            // A part that a pocket took off the waist later stands in the skirt as often as the front that it was cut from.
            double sewnTo = list.PanelsRaw.Where(panel => panel.TryFindEdge(to, out _))
                .Sum(panel => (times.TryGetValue(panel.Name, out int count) ? count : 2) * panel.FindEdge(to).SewnLengthMm());
            if (follows)
            {
                list.Length("lining as wide as what it is sewn to", SkirtPromises.Block, top, sewnTo);
            }
            else
            {
                list.LengthAtMost("lining off what it is sewn to", SkirtPromises.Block, Math.Abs(top - sewnTo), EasedMm);
            }

            // A side that a pocket was cut into later is shorter by that; the lining side seam says whether both linings agree.
            foreach ((PanelName shell, EdgeName side) in sides.Where(one => !list.FindPanel(one.Shell).TryFindEdge(SeamPocketsDesign.Mouth, out _)))
            {
                PanelName lining = PanelName.Of(shell.Text + " lining");
                list.Length("lining shorter than the skirt", lining.Text, list.FindPanel(shell).FindEdge(side).SewnLengthMm() - list.FindPanel(lining).FindEdge(side).SewnLengthMm(), shorterMm);
            }

            foreach ((PanelName name, _) in own)
            {
                SkirtPromises.SimpleOutline(list, list.FindPanel(name));
            }
        });
    }

    private static double TurnRad(PanelEdge hem) => hem.StretchesRaw.Sum(stretch => stretch.SegmentsRaw.Sum(segment => Math.Abs(segment.TurningRad)));
}
