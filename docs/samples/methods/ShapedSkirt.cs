using System;
using System.Collections.Generic;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Samples.Methods;

/// <summary>The skirt whose shaping follows the waist-hip difference: by a law of proportions, or by the rows of a table of the teacher's own.</summary>
/// <remarks>Common practice, no source; the law is the library's own derivation. Every figure is in inches, as the rule of thumb is.</remarks>
public sealed class ShapedSkirt : DraftingMethod
{
    private const int MostDarts = 3;

    private static readonly WorkedLength SideLift = In("side lift", "1/2");
    private static readonly WorkedLength BackLift = In("CB lift", "1/4");
    private static readonly WorkedLength MostSide = In("most at the side", "1 1/2");
    private static readonly Length LargestDart = Tape.Inches("1 1/4");
    private static readonly Length SmallestDart = Tape.Inches("3/8");

    private readonly MethodSetting<string>? _rows;

    private ShapedSkirt(string name, MethodSetting<string>? rows, params MethodSetting[] settings)
        : base(name, "1", settings) => _rows = rows;

    /// <summary>How much the skirt measures more than the body around the hip.</summary>
    public static MethodSetting<Length> HipEase { get; } = MethodSetting.OfLength("hip ease", Tape.Inches("1"), UnitsNet.Length.Zero, Tape.Inches("8")).Printed();

    /// <summary>From the waist level to the hem.</summary>
    public static MethodSetting<Length> Length { get; } = MethodSetting.OfLength("length", Tape.Inches("24"), Tape.Inches("12"), Tape.Inches("48")).Printed();

    /// <summary>The table, as comma-separated text: see the page on shaping tables. The usual one is invented, for the wardrobe room of a theatre.</summary>
    public static MethodSetting<string> Rows { get; } = MethodSetting.OfText("shaping", """
        # name: Wardrobe Room
        # unit: in
        # lookup: interpolated
        # outside: clamp
        difference,back_wider,front_dart,back_dart,front_drop
        0,0,0,0,0
        4,1/4,1/2,5/8,1/2
        8,1/2,1,1 1/4,1
        12,3/4,1 1/2,1 7/8,1 1/4
        16,1,2,2 1/2,1 1/4
        """.Replace("\r\n", "\n", StringComparison.Ordinal));

    /// <summary>By the law of proportions.</summary>
    public static DraftingMethod Proportional { get; } = new ShapedSkirt("proportional skirt", null, HipEase, Length);

    /// <summary>By a table that the caller gives.</summary>
    public static DraftingMethod ByTable { get; } = new ShapedSkirt("skirt by table", Rows, HipEase, Length, Rows);

    /// <inheritdoc/>
    protected override void Draft(BlockDraft draft)
    {
        WorkedLength waist = draft.Take(BodyMeasurement.WaistGirth);
        WorkedLength hip = draft.Take(BodyMeasurement.HipGirth);
        WorkedLength ease = draft.Take(HipEase);
        ShapingTable table = _rows is null ? ShapingTable.Proportional : ShapingTable.FromCsv(draft.Take(_rows));
        ShapingReading reading = table.Read(ShapingQuery.For(waist.Value, hip.Value).WithHipEase(ease.Value));
        draft.Read("shaping", reading);

        WorkedLength box = (hip.Half() + ease.Half()).Named("half box");
        WorkedLength quarter = waist.Quarter().Named("quarter waist");
        WorkedLength backHip = (box + reading.BackWider).Half().Named("back hip width");
        WorkedLength frontHip = (box - backHip).Named("front hip width");
        QuarterFigures back = Quarter(backHip, quarter, reading.BackDartIntake, In("dart length", "6"));
        QuarterFigures front = Quarter(frontHip, quarter, reading.FrontDartIntake, In("dart length", "5"));

        // A belly wants a rise; and a side that goes out is not lifted.
        bool comesIn = back.OpenWaist.Value < backHip.Value && front.OpenWaist.Value < frontHip.Value;
        WorkedLength drop = reading.FrontDrop;
        HalfSkirt.Draft(draft, new HalfFigures(
            box,
            draft.Take(Length),
            In("hip depth", "8"),
            comesIn ? SideLift : null,
            comesIn ? back with { CentreLift = BackLift } : back,
            drop.Value >= UnitsNet.Length.Zero ? front with { CentreDrop = drop } : front with { CentreLift = drop.Times(-1).Named("CF rise") }));
    }

    // What is too narrow for a dart goes to the side; what is too much for the side goes back into the darts; what is too wide for one dart makes more.
    private static QuarterFigures Quarter(WorkedLength hipWidth, WorkedLength waist, WorkedLength asked, WorkedLength dartLength)
    {
        WorkedLength suppression = (hipWidth - waist).Named("suppression");
        WorkedLength atLeast = suppression - MostSide;
        WorkedLength intake = atLeast.Value > asked.Value ? atLeast.Named("dart intake") : asked.Value < SmallestDart ? asked.Times(0) : asked;
        int count = intake.Value <= UnitsNet.Length.Zero ? 0 : Math.Min(MostDarts, (int)Math.Ceiling((intake.Value / LargestDart) - 1e-9));
        if (count == 0)
        {
            return new QuarterFigures(hipWidth, waist, waist, []);
        }

        WorkedLength each = count == 1 ? intake : intake.DividedBy(count).Named("each dart");
        WorkedLength part = waist.DividedBy(count + 1);
        var darts = new List<DartFigures>();
        for (int i = 0; i < count; i++)
        {
            WorkedLength fromCentre = i == 0 ? part + each.Half() : part.Times(i + 1) + each.Times(i + 0.5);
            darts.Add(new DartFigures(fromCentre, each, i == 0 ? dartLength : dartLength - In("shorter by", "3/4").Times(i)));
        }

        return new QuarterFigures(hipWidth, waist + intake, waist, darts);
    }

    private static WorkedLength In(string name, string inches) => WorkedLength.Given(name, Tape.Inches(inches));
}
