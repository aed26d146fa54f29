using System.Collections.Generic;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Samples.Methods;

/// <summary>The circular foundation skirt of 1916, whole or cut into its six or seven gores: L. I. Baldt, Clothing for Women, US public domain; found.</summary>
/// <remarks>A curved hip line and a slanting centre back. The whole foundation is not taken in to the waist; the gores are, at their seams.</remarks>
public sealed class CircularFoundation() : DraftingMethod("circular foundation", "2", Sweep, HipDepth, FrontLength, SideLength, BackLength, HemRaised, Gores)
{
    private const string None = "none";
    private const string Six = "six";
    private const string Seven = "seven";

    private static readonly PanelName Foundation = PanelName.Of("foundation");
    private static readonly EdgeName BackSeam = EdgeName.Of("back seam");

    /// <summary>All around the bottom, at the floor.</summary>
    public static MethodSetting<Length> Sweep { get; } = MethodSetting.OfLength("sweep", Tape.Inches("72"), Tape.Inches("60"), Tape.Inches("180")).Printed();

    /// <summary>From waist to hip at the side; common practice, no source.</summary>
    public static MethodSetting<Length> HipDepth { get; } = MethodSetting.OfLength("hip depth", Tape.Inches("7"), Tape.Inches("4"), Tape.Inches("10")).Printed();

    /// <summary>From waist to floor at the centre front.</summary>
    public static MethodSetting<Length> FrontLength { get; } = MethodSetting.OfLength("front length", Tape.Inches("40"), Tape.Inches("20"), Tape.Inches("50")).Printed();

    /// <summary>From waist to floor at the side.</summary>
    public static MethodSetting<Length> SideLength { get; } = MethodSetting.OfLength("side length", Tape.Inches("40 1/2"), Tape.Inches("20"), Tape.Inches("50")).Printed();

    /// <summary>From waist to floor at the centre back.</summary>
    public static MethodSetting<Length> BackLength { get; } = MethodSetting.OfLength("back length", Tape.Inches("41"), Tape.Inches("20"), Tape.Inches("50")).Printed();

    /// <summary>How far the finished hem lies above the floor.</summary>
    public static MethodSetting<Length> HemRaised { get; } = MethodSetting.OfLength("hem above floor", Tape.Inches("3"), Tape.Inches("1"), Tape.Inches("12"));

    /// <summary>The gores that it is cut into.</summary>
    public static MethodSetting<string> Gores { get; } = MethodSetting.OfChoice("gores", Six, None, Six, Seven);

    /// <inheritdoc/>
    protected override void Draft(BlockDraft draft)
    {
        DraftingSheet sheet = draft.Sheet;
        WorkedLength hip = draft.Take(BodyMeasurement.HipGirth);
        WorkedLength waist = draft.Take(BodyMeasurement.WaistGirth);
        WorkedLength sweep = draft.Take(Sweep);
        WorkedLength half = sweep.Half().Named("half sweep");
        WorkedLength depth = draft.Take(HipDepth);
        WorkedLength front = draft.Take(FrontLength);
        WorkedLength longer = (draft.Take(SideLength) - front).Named("side longer than front");
        WorkedLength halfHip = hip.Half().Named("half hip");
        WorkedLength across = (halfHip - half.DividedBy(8)).Named("A to B");

        Landmark a = sheet.Mark("A", Point2D.Origin);
        Landmark b = sheet.SquareAcross(a, Across.Right, across, "B", LineName.Of("upper frame", ConstructionRole.Frame));
        Landmark c = sheet.SquareDown(a, half.DividedBy(10), "C");
        Landmark d = sheet.SquareAcross(c, Across.Right, across.Half(), "D");
        Landmark e = sheet.SquareUp(d, longer, "E");
        DraftedLine waistByEye = sheet.CurveThrough(LineName.Of("waistline as far as B", ConstructionRole.HandDrawn), [c, e, b], Direction.Right, null);
        Landmark g = sheet.SquareDown(c, depth - longer, "G");
        Landmark f = sheet.SquareOff(waistByEye, e, SheetSide.Below, depth - WorkedLength.Given("less", Tape.Inches("1/2")), "F");
        Landmark h = sheet.SquareOff(waistByEye, b, SheetSide.Below, depth, "H");
        DraftedLine toH = sheet.CurveThrough(LineName.Of("hip line as far as H", ConstructionRole.Guide), [g, f, h], Direction.Right, null);
        DraftedLine hipLine = Whole(sheet, toH, h, halfHip, "I", LineName.Of("hip line", ConstructionRole.Level));
        Landmark i = hipLine.To;

        sheet.SquareDown(c, front, "J");
        WorkedLength below = (front - depth + longer).Named("G to J");
        DraftedLine underHip = sheet.Parallel(hipLine, below, SheetSide.Below, "bottom front", "bottom under I", "bottom line under the hip line");
        sheet.Because("The skirt then hangs to one level, however wide it is.");
        DraftedLine bottom = Whole(sheet, underHip, underHip.To, half, "M", LineName.Of("bottom line", ConstructionRole.Level));
        Landmark m = bottom.To;

        // Up from the bottom through the hip line's end, and beyond it by the hip depth, raised or lowered as the back is longer or shorter than the side.
        WorkedLength upward = (sheet.Measure(m, i, "M to I") + depth + (draft.Take(BackLength) - draft.Take(SideLength))).Named("centre back");
        Landmark n = sheet.MarkToward(m, i, upward, "N", LineName.Of("centre back", ConstructionRole.HandDrawn));
        DraftedLine back = sheet.FindLine("centre back");
        DraftedLine waistLine = sheet.CurveThrough(LineName.Of("waistline", ConstructionRole.HandDrawn), [c, e, n], Direction.Right, back.Path.EndDirection.TurnedRight);

        if (2 * waistLine.Length < waist.Value)
        {
            throw draft.Refusal("The waistline of the foundation is shorter than the waist, so there is nothing to take in at the gores.", 2 * waistLine.Length, waist.Value);
        }

        WorkedLength raised = draft.Take(HemRaised);
        DraftedLine hemUnder = sheet.Parallel(hipLine, below - raised, SheetSide.Below, "hem front", "hem under I", "hem under the hip line");
        Landmark beyond = sheet.Slant(hemUnder.To, hemUnder.Path.EndDirection, half.DividedBy(4), "beyond the back", "hem beyond the hip line");
        DraftedLine hemWhole = sheet.Draw("whole hem", hemUnder.Path.Then(sheet.FindLine("hem beyond the hip line").Path), hemUnder.From, beyond);
        Landmark hemBack = sheet.Intersect(hemWhole, back, "hem back");
        DraftedLine hem = sheet.Part(hemWhole, hemUnder.From, hemBack, LineName.Of("hem", ConstructionRole.HandDrawn));
        draft.Check("foundation", list =>
        {
            list.Length("hip width all around", "block", 2 * hipLine.Length, hip.Value);
            list.Length("sweep", "block", 2 * bottom.Length, sweep.Value);
            list.Length("front length", "block", list.Panels[0].FindEdge(EdgeName.Centre).SewnLength, front.Value - raised.Value);
        });
        if (draft.Take(Gores) is var gores && gores != None)
        {
            FoundationGores.Cut(draft, new FoundationLines(waistLine, hem, g, i, depth, DrawGores(draft, hipLine, bottom, hip, half)), isBackSewn: gores == Seven);
            return;
        }

        draft.Add(sheet.Trace(PanelOutline.Of(Foundation, c)
            .Along(EdgeName.Waist, EdgeRole.Opening, waistLine)
            .Straight(BackSeam, EdgeRole.Seam, hemBack)
            .Along(EdgeName.Hem, EdgeRole.Hem, hem)
            .Straight(EdgeName.Centre, EdgeRole.Centre, c)
            .WithNotch(BackSeam, i)
            .WithGrainline(g, hemUnder.From)), 2);
        draft.Remark("Half of the skirt is drawn. It is a foundation: what the waistline is longer than the waist is taken in at the seams of the gores, most of it at the side.");
        draft.Check("whole", list =>
        {
            Panel panel = list.FindPanel(Foundation);
            list.LengthAtLeast("waistline to take in from", "block", 2 * panel.FindEdge(EdgeName.Waist).SewnLength, waist.Value);
            list.Count("outline crossing itself", "block", panel.SeamOutline().IsSimple() ? 0 : 1, 0);
        });
    }

    // A line as far as asked: a part of what is drawn, or what is drawn and straight on.
    private static DraftedLine Whole(DraftingSheet sheet, DraftedLine drawn, Landmark end, WorkedLength length, LandmarkName to, LineName name)
    {
        if (drawn.Length >= length.Value)
        {
            return sheet.Part(drawn, drawn.From, sheet.MarkAlong(drawn, drawn.From, length, to), name);
        }

        LineName more = drawn.Name.Text + " and on";
        Landmark last = sheet.Slant(end, drawn.Path.EndDirection, length - sheet.Measure(drawn), to, more);
        return sheet.Draw(name, drawn.Path.Then(sheet.FindLine(more).Path), drawn.From, last);
    }

    private static GoreLine[] DrawGores(BlockDraft draft, DraftedLine hipLine, DraftedLine bottom, WorkedLength hip, WorkedLength half)
    {
        string gores = draft.Take(Gores);
        DraftingSheet sheet = draft.Sheet;
        WorkedLength halfHip = hip.Half().Named("half hip");
        WorkedLength front = hip.DividedBy(12).Named("front gore at the hip");
        WorkedLength back = gores == Six ? front : (front + WorkedLength.Given("wider", Tape.Inches("1"))).Named("back gore at the hip");
        WorkedLength frontBelow = front.Times(gores == Six ? 2 : 1.5).Named("front gore at the bottom");
        WorkedLength backBelow = (gores == Six ? frontBelow : (half - frontBelow).DividedBy(3) - WorkedLength.Given("less", Tape.Inches("2"))).Named("back gore at the bottom");
        WorkedLength side = (halfHip - front - back).Half().Named("side gore at the hip");
        WorkedLength sideBelow = (half - frontBelow - backBelow).Half().Named("side gore at the bottom");
        var lines = new List<(string Name, WorkedLength AtHip, WorkedLength Below)>
        {
            ("front gore", front, frontBelow),
            ("side gore", front + side, frontBelow + sideBelow),
            ("back gore", halfHip - back, half - backBelow),
        };
        var drawn = new List<GoreLine>();
        foreach ((string name, WorkedLength atHip, WorkedLength below) in lines)
        {
            Landmark upper = sheet.MarkAlong(hipLine, hipLine.From, atHip, name + " hip");
            Landmark lower = sheet.MarkAlong(bottom, bottom.From, below, name + " bottom");
            drawn.Add(new GoreLine(name, upper, lower, sheet.Join(upper, lower, name + " line")));
        }

        return [.. drawn];
    }
}
