using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>Says how a skirt is shaped for the difference between hip and waist: how much wider the back is than the front, what the darts
/// take in, and how far the waist drops at centre front.</summary>
/// <remarks>Schools and cutters each have their own table. <see cref="Proportional"/> serves where nobody brings one; bring yours with
/// <see cref="In"/> or <see cref="FromCsv"/>. Immutable.</remarks>
/// <example><code>
/// ShapingTable table = ShapingTable.In(LengthUnit.Inch).Named("wardrobe room")
///     .Row(difference: "8", backWider: "1/2", frontDart: "1", backDart: "1 1/4", frontDrop: "1")
///     .Row(difference: "10", backWider: "5/8", frontDart: "1 1/4", backDart: "1 1/2", frontDrop: "1 1/4")
///     .ReadBy(ShapingLookup.Interpolated)
///     .Outside(ShapingOutside.Clamp);
/// </code></example>
public abstract class ShapingTable
{
    /// <summary>Names a law of your own.</summary>
    /// <param name="name">For steps, reports and messages; one line.</param>
    /// <exception cref="ArgumentException">The name is empty or blank, or has more than one line.</exception>
    protected ShapingTable(string name) => Name = OneLine(name);

    /// <summary>The library's own law: everything in proportion to the difference, so that it serves any body.</summary>
    /// <remarks>Own derivation; it agrees with common practice (no source) at a difference of 8 in. With the difference D = hip girth less waist girth of the
    /// body: the back is wider than the front by D/16, negative where the waist is the larger; half the suppression of each panel (its hip width with ease less
    /// its waist width with ease) goes into its darts; centre front drops by D/8, at most 1 1/4 in (3 cm). A body whose
    /// waist is as large as its hip, or larger, gets no darts and no drop; where its front goes out from the hip to the waist, centre front rises by once and a half as much,
    /// at most 1 in (2.5 cm).</remarks>
    public static ShapingTable Proportional { get; } = new ProportionalShaping();

    /// <summary>What it is called in steps, reports and messages.</summary>
    public string Name { get; }

    /// <summary>Starts a table of rows.</summary>
    /// <param name="unit">What numbers without a unit are in, and what the table is written in: inch, foot, yard, millimetre, centimetre or metre.</param>
    /// <returns>A table without rows, read by the nearest row, refusing what lies outside it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not one that cloth is measured in.</exception>
    [Pure]
    public static TabulatedShaping In(LengthUnit unit) => TabulatedShaping.Empty(unit);

    /// <summary>Reads a table of rows from comma-separated text.</summary>
    /// <remarks>See <see cref="ShapingCsvOptions"/> for what holds where the text does not say. The format:
    /// <code>
    /// # name: wardrobe room
    /// # unit: in
    /// # lookup: interpolated
    /// # outside: clamp
    /// difference,back_wider,front_dart,back_dart,front_drop
    /// 8,1/2,1,1 1/4,1
    /// 10,5/8,1 1/4,1 1/2,1 1/4
    /// </code></remarks>
    /// <param name="text">The whole text, lines ended in any way.</param>
    /// <param name="options">What holds where the text does not say; the defaults where it is left out.</param>
    /// <exception cref="FormatException">The text is no such table; the message names the line, counted from 1, and the column.</exception>
    [Pure]
    public static TabulatedShaping FromCsv(string text, ShapingCsvOptions? options = null)
        => new ShapingCsvReader(Guard.NotNull(text, nameof(text)), options ?? ShapingCsvOptions.Default).Read();

    /// <summary>Reads the table for one body.</summary>
    /// <param name="query">The body, and the ease that the block is to have.</param>
    /// <exception cref="ConstructionException">The table has no rows, or the difference lies outside it and the table refuses that.</exception>
    [Pure]
    public ShapingReading Read(ShapingQuery query) => Answer(Guard.NotNull(query, nameof(query)));

    /// <summary>The name.</summary>
    public override string ToString() => Name;

    /// <summary>Says in words what served for one body.</summary>
    /// <param name="reading">What <see cref="Answer"/> returned.</param>
    /// <param name="step">The tape and its finest mark.</param>
    protected internal virtual string Describe(ShapingReading reading, TapeStep step)
        => Name + " for " + WorkedText.NameAndFigure(Guard.NotNull(reading, nameof(reading)).Query.Difference, step);

    /// <summary>Says in another language what served for one body.</summary>
    internal virtual string Describe(ShapingReading reading, TapeStep step, Phrasebook book) => book.Say(Describe(reading, step));

    /// <summary>Answers for one body, by <see cref="ShapingReading.Of"/>.</summary>
    /// <param name="query">The body, and the ease that the block is to have.</param>
    protected abstract ShapingReading Answer(ShapingQuery query);

    private static string OneLine(string name) => Guard.Name(name, nameof(name)).IndexOfAny(['\r', '\n']) < 0
        ? name.Trim()
        : throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.ShapingNameBroken, nameof(name)), nameof(name));
}
