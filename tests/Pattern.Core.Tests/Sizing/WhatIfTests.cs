using System;
using System.Linq;
using System.Xml.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Sizing;
using Pattern.Core.Styling;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Sizing;

public class WhatIfTests
{
    private static readonly MethodSetting<Length> CircleLength = MethodSetting.OfLength("length", Length.FromMillimeters(600), Length.FromMillimeters(100), Length.FromMillimeters(605));

    // Waist arc W / 2 over half of a circle: its radius is W / pi; the hem lies the length further out.
    private static readonly DraftingMethod HalfCircle = DraftingMethod.Of("half circle", "1", draft =>
    {
        DraftingSheet sheet = draft.Sheet;
        WorkedLength radius = draft.Take(BodyMeasurement.WaistGirth).Times(1 / Math.PI).Named("radius");
        Landmark pivot = sheet.Mark("pivot", Point2D.Origin);
        Landmark waist = sheet.SquareAcross(pivot, Across.Right, radius, "waist");
        Landmark hem = sheet.SquareAcross(waist, Across.Right, draft.Take(CircleLength), "hem", "fold");
        DraftedLine waistLine = sheet.Arc(pivot, waist, Angle.FromDegrees(90), "waist end", "waistline");
        DraftedLine hemLine = sheet.Arc(pivot, hem, Angle.FromDegrees(90), "hem end", "hemline");
        DraftedLine side = sheet.Join(waistLine.To, hemLine.To, "side line");
        draft.Add(sheet.Trace(PanelOutline.Of(PanelName.Of("quarter"), waist)
            .Along(EdgeName.Centre, EdgeRole.Centre, sheet.FindLine("fold"))
            .Along(EdgeName.Hem, EdgeRole.Hem, hemLine)
            .Along(EdgeName.SideSeam, EdgeRole.Seam, side)
            .Along(EdgeName.Waist, EdgeRole.Opening, waistLine)), 2);
    }, CircleLength);

    // Half of a half: the arc of 90 degrees is pi / 2 times its radius.
    [Fact]
    public void HalfCircle_MovesByItsClosedForm()
    {
        Block block = HalfCircle.For(BodyMeasurements.In(LengthUnit.Millimeter).With(BodyMeasurement.WaistGirth, "700")).Draft();
        WhatIf whatIf = WhatIf.Of(block, Length.FromMillimeters(10));

        Close(5, -5, whatIf.Find("quarter waist", "waist girth"));
        Close(5, -5, whatIf.Find("quarter hem", "waist girth"));
        Close(0, 0, whatIf.Find("quarter centre", "waist girth"));
        Assert.Equal("waist girth", whatIf.MattersMost("quarter hem")!.Change.Name);
        Assert.Null(whatIf.MattersMost("quarter centre"));

        // The length may be 605 mm at the most: with 10 more it is refused and told, with 10 less all of it is drafted.
        WhatIfMove hem = whatIf.Find("quarter hem", "length");
        Assert.Null(hem.More);
        Assert.Equal(-10 * Math.PI / 2, hem.Less!.Value.Millimeters, 1e-6);
        Assert.Contains("PC0002", hem.Change.MoreRefusal, StringComparison.Ordinal);
        Assert.Null(hem.Change.LessRefusal);
    }

    // By the trade's rules, with 1/2 in more around the hip: the box grows by a half of it, the back is wider by a sixteenth of hip less waist, halved; the waist of a quarter is a quarter of the waist
    // girth and all around the whole. Common practice, no source.
    [Fact]
    public void SkirtBlock_MovesByItsRules()
    {
        WhatIf whatIf = WhatIf.Of(SkirtBlock.For(Bodies.Inches("29 1/2", "39 3/4")).Draft());

        Assert.Equal(0.5, whatIf.By.Inches, 1e-12);
        Close(0.5 * 0.28125 * 25.4, -0.5 * 0.28125 * 25.4, whatIf.Find("back hem", "hip girth"));
        Close(0.5 * 0.21875 * 25.4, -0.5 * 0.21875 * 25.4, whatIf.Find("front hem", "hip girth"));
        Close(0.125 * 25.4, -0.125 * 25.4, whatIf.Find("back waist", "waist girth"), 1e-2);
        Close(0.125 * 25.4, -0.125 * 25.4, whatIf.Find("front waist", "waist girth"), 1e-2);
        Close(0, 0, whatIf.Find("back waist", "hip girth"), 1e-2);
        Close(12.7, -12.7, whatIf.Find("back centre", "length"));
        Assert.Equal("hip girth", whatIf.MattersMost("back hem")!.Change.Name);
        Assert.Equal("waist girth", whatIf.MattersMost("back waist")!.Change.Name);
        Assert.Contains(whatIf.Changes, change => change.ToString() == "waistline level instead of shaped" && change.Kind == WhatIfKind.Setting);
    }

    // One dart or two is decided by the figures: there the draft takes other steps, and what moves jumps. A quarter waist above 8 in takes two darts in the back; 32 in is 8 exactly.
    [Fact]
    public void WhereTheDraftTakesOtherSteps_ItIsSaid()
    {
        WhatIf whatIf = WhatIf.Of(SkirtBlock.For(Bodies.Example).Draft());

        Assert.Contains(whatIf.Changes, change => change.IsMoreDraftedOtherwise || change.IsLessDraftedOtherwise);
        Assert.Contains("Drafted by other steps", whatIf.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void ADesign_IsMadeAgain_AndItsSettingsMove()
    {
        Block flared = SkirtBlock.For(Bodies.Example).Draft().With(BuiltInDesigns.All.First(design => design.Name == "a-line"));
        WhatIf whatIf = WhatIf.Of(flared);

        Assert.Contains(whatIf.Changes, change => change.Kind == WhatIfKind.DesignSetting);
        Assert.True(whatIf.Find("back hem", "hip girth").Most > Length.FromMillimeters(1));
    }

    [Fact]
    public void TextCsvAndPage_SayTheSame()
    {
        WhatIf whatIf = WhatIf.Of(SkirtBlock.For(Bodies.Example.Named("a,b <i>")).Draft());

        string[] rows = whatIf.ToCsv().TrimEnd('\n').Split('\n');
        Assert.Equal("kind,changed,by,dimension,before_mm,more_mm,less_mm,more_note,less_note", rows[0]);
        Assert.Equal(1 + (whatIf.Changes.Count * whatIf.Dimensions.Count), rows.Length);
        Assert.StartsWith("measurement,waist girth,1/2 in,back waist,203.2,3.175,-3.175,", rows[1], StringComparison.Ordinal);
        Assert.Contains("waist girth by 1/2 in: +1/8 in with more, -1/8 in with less; the measurement that matters most", whatIf.Describe(TapeStep.Eighth), StringComparison.Ordinal);
        string page = whatIf.ToHtml(TapeStep.Eighth);
        Assert.Equal("html", XDocument.Parse(page.Replace("<!DOCTYPE html>\n", string.Empty, StringComparison.Ordinal)).Root!.Name.LocalName);
        Assert.Contains("+1/8 in / -1/8 in", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<i>", page, StringComparison.Ordinal);
    }

    // Whatever the body: nothing is thrown, and the change of a measurement by so much moves no edge by more than the whole skirt is wide.
    [Property(MaxTest = 15)]
    public Property AnyBody_IsToldAndNeverThrown() => Prop.ForAll(Bodies.Any.ToArbitrary(), body =>
    {
        Block block;
        try
        {
            block = SkirtBlock.For(body).Draft();
        }
        catch (ConstructionException)
        {
            return true;
        }

        WhatIf whatIf = WhatIf.Of(block, Length.FromMillimeters(25));
        Assert.NotEmpty(whatIf.ToString());
        return whatIf.Moves.Where(move => move.Dimension == "back hem" && move.Change.Name == "hip girth" && move.More is not null && move.Less is not null)
            .All(move => Math.Abs(move.More!.Value.Millimeters + move.Less!.Value.Millimeters) < 1e-6);
    });

    [Fact]
    public void WhatIsNotThere_AndNoLength_AreRefused()
    {
        WhatIf whatIf = WhatIf.Of(SkirtBlock.For(Bodies.Example).Draft());

        Assert.Contains("back hem", Assert.Throws<ConstructionException>(() => whatIf.Find("hem", "hip girth")).Message, StringComparison.Ordinal);
        Assert.Throws<ConstructionException>(() => whatIf.Find("back hem", "shoe size"));
        Assert.Throws<ConstructionException>(() => whatIf.MattersMost("hem"));
        Assert.Throws<ArgumentOutOfRangeException>(() => WhatIf.Of(whatIf.Block, Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => WhatIf.Of(whatIf.Block, Length.FromMeters(1)));
    }

    private static void Close(double moreMm, double lessMm, WhatIfMove move, double toleranceMm = 1e-6)
    {
        Assert.Equal(moreMm, move.More!.Value.Millimeters, toleranceMm);
        Assert.Equal(lessMm, move.Less!.Value.Millimeters, toleranceMm);
    }
}
