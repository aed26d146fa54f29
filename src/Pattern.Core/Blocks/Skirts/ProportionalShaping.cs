using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>The proportional law. See <see cref="ShapingTable.Proportional"/> for what it says and why.</summary>
internal sealed class ProportionalShaping() : ShapingTable("proportional law")
{
    private const int WiderPart = 16;
    private const int DropPart = 8;

    // The front rises by once and a half what it goes out at the side: the waistline then turns evenly from the centre to the side, square to both.
    private const double RiseOverWidth = 1.5;

    // A deeper drop would have to be eased into the waistband.
    private static readonly WorkedLength MostDrop = WorkedLength.GivenMm(null, 31.75);
    private static readonly WorkedLength MostDropMetric = WorkedLength.GivenMm(null, 30);
    private static readonly WorkedLength MostRise = WorkedLength.GivenMm(null, 25.4);
    private static readonly WorkedLength MostRiseMetric = WorkedLength.GivenMm(null, 25);
    private static readonly WorkedLength Nothing = WorkedLength.GivenMm(null, 0.0);

    /// <inheritdoc/>
    protected internal override string Describe(ShapingReading reading, TapeStep step) => Describe(reading, step, Phrasebook.English);

    internal override string Describe(ShapingReading reading, TapeStep step, Phrasebook book) => book.Say(
        reading.Query.Difference.ValueMm > 0.0 ? "{table} for {difference}" : "{table} for {difference}: no darts, the waist is as large as the hip",
        ("table", book.Say(Name)),
        ("difference", WorkedText.NameAndFigure(reading.Query.Difference, step, book)));

    /// <inheritdoc/>
    protected override ShapingReading Answer(ShapingQuery query)
    {
        WorkedLength box = WithEase(query.HipGirth, query.HipEase).Half().Named("box width");
        WorkedLength? less = query.Difference.ValueMm < 0 ? (query.WaistGirth - query.HipGirth).Named("waist over hip").DividedBy(WiderPart).Named("front wider than back") : null;
        WorkedLength wider = (less?.Times(-1) ?? query.Difference.DividedBy(WiderPart)).Named("back wider than front");
        WorkedLength front = (less is null ? box - wider : box + less).Half().Named("front hip width");
        WorkedLength back = (less is null ? front + wider : front - less).Named("back hip width");
        WorkedLength waist = WithEase(query.WaistGirth, query.WaistEase).Quarter().Named("quarter waist");

        bool hasDarts = query.Difference.ValueMm > 0.0;
        return new ShapingReading(
            this,
            query,
            wider,
            hasDarts ? Intake(front, waist).Named("front dart intake") : WorkedLength.GivenMm("front dart intake", 0.0),
            hasDarts ? Intake(back, waist).Named("back dart intake") : WorkedLength.GivenMm("back dart intake", 0.0),
            Drop(query, front, waist).Named("centre front drop"));
    }

    private static WorkedLength Drop(ShapingQuery query, WorkedLength front, WorkedLength waist)
    {
        bool isMetric = Tape.IsMetric(query.Unit, nameof(query));
        return query.Difference.ValueMm > 0.0
            ? query.Difference.DividedBy(DropPart).AtMost(isMetric ? MostDropMetric : MostDrop)
            : waist.ValueMm > front.ValueMm
                ? (waist - front).Times(RiseOverWidth).AtMost(isMetric ? MostRiseMetric : MostRise).Named("centre front rise").Times(-1)
                : Nothing;
    }

    private static WorkedLength WithEase(WorkedLength girth, WorkedLength ease) => ease.ValueMm == 0.0 ? girth : girth + ease;

    // Half of what a panel has to lose goes into its darts, the other half into the side seam.
    private static WorkedLength Intake(WorkedLength hipWidth, WorkedLength waistQuarter) => NotNegative((hipWidth - waistQuarter).Half());

    // Said only where it made a difference.
    private static WorkedLength NotNegative(WorkedLength length) => length.ValueMm < 0.0 ? length.AtLeast(Nothing) : length;
}
