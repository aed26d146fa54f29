using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>The proportional law. See <see cref="ShapingTable.Proportional"/> for what it says and why.</summary>
internal sealed class ProportionalShaping() : ShapingTable("proportional law")
{
    private const int WiderPart = 16;
    private const int DropPart = 8;

    // 1 1/4 in: a deeper drop would have to be eased into the waistband.
    private static readonly WorkedLength MostDrop = WorkedLength.GivenMm(null, 31.75);
    private static readonly WorkedLength Nothing = WorkedLength.GivenMm(null, 0.0);

    internal override string Describe(ShapingReading reading, TapeStep step)
    {
        string text = Name + " for " + WorkedLength.GivenMm("the difference", reading.Query.DifferenceMm).Describe(step);
        return reading.Query.DifferenceMm > 0.0 ? text : text + ": no darts, the waist is as large as the hip";
    }

    private protected override ShapingReading ReadChecked(ShapingQuery query)
    {
        WorkedLength waist = WorkedLength.MeasuredMm("waist girth", query.WaistGirthMm);
        WorkedLength hip = WorkedLength.MeasuredMm("hip girth", query.HipGirthMm);
        WorkedLength difference = (hip - waist).Named("difference");

        WorkedLength wider = difference.DividedBy(WiderPart);
        WorkedLength box = WithEase(hip, "hip ease", query.HipEaseMm).Half();
        WorkedLength front = (box - wider).Half();
        WorkedLength waistQuarter = WithEase(waist, "waist ease", query.WaistEaseMm).Quarter();

        bool hasDarts = query.DifferenceMm > 0.0;
        return new ShapingReading(
            this,
            query,
            wider.Named("back wider by"),
            hasDarts ? Intake(front.Named("front hip width"), waistQuarter).Named("front dart intake") : WorkedLength.GivenMm("front dart intake", 0.0),
            hasDarts ? Intake((front + wider).Named("back hip width"), waistQuarter).Named("back dart intake") : WorkedLength.GivenMm("back dart intake", 0.0),
            NotNegative(difference.DividedBy(DropPart).AtMost(MostDrop)).Named("centre front drop"));
    }

    private static WorkedLength WithEase(WorkedLength girth, string name, double easeMm)
        => easeMm == 0.0 ? girth : girth + WorkedLength.GivenMm(name, easeMm);

    // Half of what a panel has to lose goes into its darts, the other half into the side seam.
    private static WorkedLength Intake(WorkedLength hipWidth, WorkedLength waistQuarter) => NotNegative((hipWidth - waistQuarter).Half());

    // Said only where it made a difference.
    private static WorkedLength NotNegative(WorkedLength length) => length.ValueMm < 0.0 ? length.AtLeast(Nothing) : length;
}
