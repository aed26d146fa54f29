using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Samples.Methods;

/// <summary>Cuts the circular foundation of 1916 into its gores, and takes the waist in at their seams.</summary>
/// <remarks>The seams run straight from hem to hip along the lines of the gores. Above the hip each edge curves away from its line by its own amount, square to the waistline, so that the waist has no
/// corner over a seam.</remarks>
internal sealed class FoundationGores
{
    private static readonly EdgeName TowardFront = EdgeName.Of("seam toward front");
    private static readonly EdgeName TowardBack = EdgeName.Of("seam toward back");
    private static readonly EdgeName BackSeam = EdgeName.Of("back seam");
    private static readonly PanelName[] Names = [PanelName.Front, PanelName.Of("front side gore"), PanelName.Of("back side gore"), PanelName.Back];

    private static readonly Length LeastGore = Tape.Inches("1/2");

    // Common practice, no source: more makes a bump over the hip.
    private static readonly Length MostAtTheHip = Tape.Inches("1 1/2");
    private static readonly Advice MuchAtTheHip = Advice.Of("So much taken in at one edge of the hip seam makes a bump over the hip.", "Take a narrower sweep, or put a dart in the side gore.");

    // What is less than any tape shows is not said.
    private static readonly Length Shown = Tape.Inches("1/64");

    // Stated once: another body only asks for another waist.
    private static readonly TruingPlan Plan = TruingPlan.Empty
        .MayMove([.. Seams().SelectMany(seam => new[] { Waist(seam.First).AtEnd, Waist(seam.Second).AtStart }).Select(corner => Movable.Corner(corner, within: Length.FromCentimeters(3)))])
        .MustHold([Condition.SewnLength(WorkedLength.Given(Length.Zero), [.. Names.Select(name => EdgeOf.Panel(name, EdgeName.Waist))]).Named("waist"), .. Seams().Select(Condition.Sewn)]);

    private readonly BlockDraft _draft;
    private readonly FoundationLines _lines;
    private readonly WorkedLength _halfWaist;

    private FoundationGores(BlockDraft draft, FoundationLines lines)
    {
        _draft = draft;
        _lines = lines;
        _halfWaist = draft.Take(BodyMeasurement.WaistGirth).Half().Named("half waist");
    }

    private DraftingSheet Sheet => _draft.Sheet;

    /// <summary>Draws the gores on the foundation and adds them as panels.</summary>
    internal static void Cut(BlockDraft draft, FoundationLines lines, bool isBackSewn) => new FoundationGores(draft, lines).Cut(isBackSewn);

    private void Cut(bool isBackSewn)
    {
        WorkedLength takenIn = (Sheet.Measure(_lines.Waist, "foundation waist") - _halfWaist).Named("to take in");
        (WorkedLength Front, WorkedLength Back)[] amounts = Amounts(takenIn);
        GoreSeam[] seams = [.. _lines.Gores.Select((gore, i) => DrawSeam(gore, amounts[i].Front, amounts[i].Back))];
        Panel[] drawn = [.. Names.Select((name, i) => TraceGore(name, i == 0 ? null : seams[i - 1], i == seams.Length ? null : seams[i], isBackSewn))];
        Length byHand = Sum(drawn);
        TruingOutcome outcome = Plan.Asking("waist", _halfWaist).True(drawn);
        foreach (TruingNote note in outcome.Notes.Where(IsWorthSaying))
        {
            Sheet.Note(note);
        }

        foreach (Panel panel in outcome.Panels)
        {
            _draft.Add(panel, 2);
        }

        _draft.Seams(SeamPlan.Of(Seams()));
        _draft.Aim("closed waist", "block", 2 * byHand, 2 * _halfWaist.Value, list => 2 * Sum([.. Names.Select(list.FindPanel)]));
        _draft.Remark(isBackSewn ? "Half of the skirt is drawn: half of the front gore, two side gores, one of the two back gores." : "Half of the skirt is drawn: half of the front gore, two side gores, half of the back gore.");
        _draft.Check("gores", list =>
        {
            list.Length("closed waist all around", "block", 2 * Sum([.. Names.Select(list.FindPanel)]), 2 * _halfWaist.Value);
            foreach (PanelName name in Names)
            {
                Panel panel = list.FindPanel(name);
                list.LengthAtLeast("waist of a gore", name.Text, panel.FindEdge(EdgeName.Waist).SewnLength, LeastGore);
                list.Count("outline crossing itself", name.Text, panel.SeamOutline().IsSimple() ? 0 : 1, 0);
            }

            Length most = new[] { amounts[1].Front.Value, amounts[1].Back.Value }.Max();
            if (most > MostAtTheHip)
            {
                list.Advise(MuchAtTheHip, "taken in at the hip seam", "block", most, FindingRelation.AtMost, MostAtTheHip);
            }
        });
    }

    // What each edge takes in: 1/4 from the front gore, 1/4 to 3/4 from the side gore beside it; 3/4 to 1 from the side gore beside the back, 1/4 from the back gore; the rest at the hip seam, more of it on
    // the front side gore. Found. The middle of each range, and five eighths of the rest, are our own choice; where there is less to take in than that, each takes its share.
    private static (WorkedLength Front, WorkedLength Back)[] Amounts(WorkedLength takenIn)
    {
        double[] usual = [0.25, 0.5, 0.875, 0.25];
        double all = usual.Sum();
        WorkedLength rest = takenIn - WorkedLength.Given("at the other seams", Length.FromInches(all));
        WorkedLength[] edges = rest.Value > Length.Zero
            ? [.. usual.Select(inches => WorkedLength.Given("at this edge", Length.FromInches(inches)))]
            : [.. usual.Select(inches => takenIn.Times(inches / all))];
        WorkedLength nothing = WorkedLength.Given("nothing", Length.Zero);
        return
        [
            (edges[0], edges[1]),
            rest.Value > Length.Zero ? (rest.Times(0.625).Named("front of the hip seam"), rest.Times(0.375).Named("back of the hip seam")) : (nothing, nothing),
            (edges[2], edges[3]),
        ];
    }

    // The line of the gore goes on to the waist; either side of it the amount is laid off along the waistline, and the edge curves down from there to the hip.
    private GoreSeam DrawSeam(GoreLine gore, WorkedLength toFront, WorkedLength toBack)
    {
        string name = gore.Name;
        Landmark hem = Sheet.Intersect(gore.Line, _lines.Hem, name + " hem");
        DraftedLine below = Sheet.Join(gore.Hip, hem, LineName.Of(name + " seam below", ConstructionRole.HandDrawn));
        WorkedLength beyond = (Sheet.Measure(gore.Line) + _lines.HipDepth.Times(1.5)).Named(name + " line as far as the waist");
        Sheet.MarkToward(gore.Bottom, gore.Hip, beyond, name + " above", name + " line to the waist");
        Landmark waist = Sheet.Intersect(Sheet.FindLine(name + " line to the waist"), _lines.Waist, name + " waist");
        RefuseTooMuch(waist, toFront, Sheet.Measure(_lines.Waist, _lines.Waist.From, waist, "as far as the front"));
        RefuseTooMuch(waist, toBack, Sheet.Measure(_lines.Waist, waist, _lines.Waist.To, "as far as the back"));
        Landmark front = Sheet.MarkAlong(_lines.Waist, waist, toFront, name + " front edge", _lines.Waist.From);
        Landmark back = Sheet.MarkAlong(_lines.Waist, waist, toBack, name + " back edge", _lines.Waist.To);
        return new GoreSeam(gore, hem, front, back, below, DrawAbove(gore, front, name + " seam of the front edge"), DrawAbove(gore, back, name + " seam of the back edge"));
    }

    private DraftedLine DrawAbove(GoreLine gore, Landmark waist, string name)
    {
        Direction up = gore.Line.Path.StartDirection.Reversed;
        CurvePath waistline = _lines.Waist.Path;
        waistline.SplitAt(waistline.ClosestTo(waist.Position), out CurvePath before, out _);
        return Sheet.Curve(gore.Hip, up, waist, before.EndDirection.TurnedLeft, LineName.Of(name, ConstructionRole.HandDrawn));
    }

    private void RefuseTooMuch(Landmark at, WorkedLength amount, WorkedLength room)
    {
        if (amount.Value > room.Value - LeastGore)
        {
            throw _draft.Refusal($"At {at.Name} more would be taken in than the gore is wide at the waist.", amount.Value, room.Value - LeastGore);
        }
    }

    private Panel TraceGore(PanelName name, GoreSeam? toFront, GoreSeam? toBack, bool isBackSewn)
    {
        Landmark first = toFront?.BackEdge ?? _lines.Waist.From;
        Landmark last = toBack?.FrontEdge ?? _lines.Waist.To;
        double room = Along(last) - Along(first);
        if (Length.FromMillimeters(room) < LeastGore)
        {
            throw _draft.Refusal($"The {name} would be too narrow at the waist.", Length.FromMillimeters(room), LeastGore);
        }

        Landmark hemFront = toFront?.Hem ?? _lines.Hem.From;
        Landmark hemBack = toBack?.Hem ?? _lines.Hem.To;
        PanelOutline outline = PanelOutline.Of(name, first).Along(EdgeName.Waist, EdgeRole.Opening, Sheet.Part(_lines.Waist, first, last, LineName.Of(name.Text + " waistline", ConstructionRole.HandDrawn)));
        outline = toBack is { } back
            ? outline.Along(TowardBack, EdgeRole.Seam, back.AboveFront, back.Below)
            : isBackSewn ? outline.Straight(BackSeam, EdgeRole.Seam, hemBack) : outline.Straight(EdgeName.Centre, EdgeRole.Centre, hemBack);
        outline = outline.Along(EdgeName.Hem, EdgeRole.Hem, Sheet.Part(_lines.Hem, hemBack, hemFront, LineName.Of(name.Text + " hem", ConstructionRole.HandDrawn)));
        outline = toFront is { } front
            ? outline.Along(TowardFront, EdgeRole.Seam, front.Below, front.AboveBack)
            : outline.Straight(EdgeName.Centre, EdgeRole.Centre, first);
        outline = toBack is { } one ? outline.WithNotch(TowardBack, one.Gore.Hip) : isBackSewn ? outline.WithNotch(BackSeam, _lines.BackHip) : outline;
        outline = toFront is { } other ? outline.WithNotch(TowardFront, other.Gore.Hip) : outline;
        outline = toFront is { } before && toBack is { } beyond
            ? outline.WithGrainline(Sheet.Midpoint(before.Gore.Hip, beyond.Gore.Hip, name.Text + " grain top"), Sheet.Midpoint(before.Hem, beyond.Hem, name.Text + " grain foot"))
            : toFront is null ? outline.WithGrainline(_lines.FrontHip, hemFront) : outline.WithGrainline(_lines.BackHip, hemBack);
        return Sheet.Trace(outline);
    }

    private static bool IsWorthSaying(TruingNote note) => note.Words.OfType<WorkedLength>().Any(length => length.Value >= Shown);

    private double Along(Landmark landmark) => _lines.Waist.Path.LengthTo(_lines.Waist.Path.ClosestTo(landmark.Position)).Millimeters;

    private static Length Sum(IEnumerable<Panel> panels) => panels.Aggregate(Length.Zero, (sum, panel) => sum + panel.FindEdge(EdgeName.Waist).SewnLength);

    private static Seam[] Seams()
        => [.. Names.Zip(Names.Skip(1), (one, next) => Seam.Between(EdgeOf.Panel(one, TowardBack), EdgeOf.Panel(next, TowardFront)).Named(one + " to " + next, "waist to hip", "hip to hem"))];

    private static EdgeOf Waist(EdgeOf seam) => EdgeOf.Panel(seam.PanelName, EdgeName.Waist);

    private sealed record GoreSeam(GoreLine Gore, Landmark Hem, Landmark FrontEdge, Landmark BackEdge, DraftedLine Below, DraftedLine AboveFront, DraftedLine AboveBack);
}

/// <summary>The lines of a foundation that its gores are cut along.</summary>
internal sealed record FoundationLines(DraftedLine Waist, DraftedLine Hem, Landmark FrontHip, Landmark BackHip, WorkedLength HipDepth, IReadOnlyList<GoreLine> Gores);

/// <summary>The line of a gore, from the hip line down to the bottom line.</summary>
internal sealed record GoreLine(string Name, Landmark Hip, Landmark Bottom, DraftedLine Line);
