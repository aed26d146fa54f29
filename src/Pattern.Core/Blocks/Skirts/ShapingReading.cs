using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>What a shaping table answered for one body, and which row or law served.</summary>
public sealed class ShapingReading : TableReading
{
    private const double MostMm = 5_000;

    /// <summary>Answers a query by a law of your own.</summary>
    /// <param name="table">The table or law that answers.</param>
    /// <param name="query">What it was asked.</param>
    /// <param name="backWider">How much wider the back panel is than the front at the hip; negative where the front is wider.</param>
    /// <param name="frontDartIntake">What one front panel takes into its darts, all together; not negative.</param>
    /// <param name="backDartIntake">What one back panel takes into its darts, all together; not negative.</param>
    /// <param name="frontDrop">How far the waist drops at centre front; negative where it rises.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">A figure is not finite or larger than 5 m, or an intake is negative.</exception>
    public static ShapingReading Of(
        ShapingTable table, ShapingQuery query, WorkedLength backWider, WorkedLength frontDartIntake, WorkedLength backDartIntake, WorkedLength frontDrop) => new(
            Guard.NotNull(table, nameof(table)),
            Guard.NotNull(query, nameof(query)),
            Checked(backWider, -MostMm, nameof(backWider)).Named("back wider than front"),
            Checked(frontDartIntake, 0, nameof(frontDartIntake)).Named("front dart intake"),
            Checked(backDartIntake, 0, nameof(backDartIntake)).Named("back dart intake"),
            Checked(frontDrop, -MostMm, nameof(frontDrop)).Named("centre front drop"));

    internal ShapingReading(
        ShapingTable table,
        ShapingQuery query,
        WorkedLength backWider,
        WorkedLength frontDartIntake,
        WorkedLength backDartIntake,
        WorkedLength frontDrop)
    {
        Table = table;
        Query = query;
        BackWider = backWider;
        FrontDartIntake = frontDartIntake;
        BackDartIntake = backDartIntake;
        FrontDrop = frontDrop;
    }

    /// <summary>The table that was read.</summary>
    public ShapingTable Table { get; }

    /// <summary>What it was asked.</summary>
    public ShapingQuery Query { get; }

    /// <summary>How much wider the back panel is than the front at the hip; negative where the front is wider.</summary>
    public WorkedLength BackWider { get; }

    /// <summary>What one front panel takes into its darts, all together; never negative.</summary>
    public WorkedLength FrontDartIntake { get; }

    /// <summary>What one back panel takes into its darts, all together; never negative.</summary>
    public WorkedLength BackDartIntake { get; }

    /// <summary>How far the waist drops at centre front; negative where it rises, over a belly.</summary>
    public WorkedLength FrontDrop { get; }

    /// <summary>The four figures: back wider, front and back dart intake, front drop.</summary>
    public override IReadOnlyList<WorkedLength> Figures => [BackWider, FrontDartIntake, BackDartIntake, FrontDrop];

    /// <summary>The rows that served: none for a law, one, or two where the reading is interpolated.</summary>
    public IReadOnlyList<ShapingRow> Rows { get; internal init; } = [];

    /// <summary>Whether the difference lies outside the table, so that its first or last row had to serve.</summary>
    public bool IsClamped { get; internal init; }

    /// <summary>What served, in words: <c>wardrobe room: row 8, nearest to waist-hip difference 8 1/4 in</c>.</summary>
    /// <remarks>A figure that the step cannot show exactly carries a <c>~</c>.</remarks>
    /// <param name="step">The tape and its finest mark.</param>
    [Pure]
    public override string Describe(TapeStep step) => Table.Describe(this, step);

    internal override string Describe(TapeStep step, Phrasebook book) => Table.Describe(this, step, book);

    private static WorkedLength Checked(WorkedLength figure, double leastMm, string parameter)
    {
        Guard.Millimetres(Guard.NotNull(figure, parameter).Value, leastMm, MostMm, parameter);
        return figure;
    }
}
