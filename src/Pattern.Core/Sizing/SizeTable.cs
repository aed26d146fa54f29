using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.IO;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Sizing;

/// <summary>Sizes in order, each with the same measurements, and where the figures come from. Immutable.</summary>
/// <example><code>
/// SizeTable table = SizeTable.En13402Women;
/// SizeMatch match = table.FindNearest(body, BodyMeasurement.HipGirth);
/// Console.WriteLine(match);
/// BodyMeasurements between = table.BodyAt(BodyMeasurement.HipGirth, Length.FromCentimeters(98));
/// </code></example>
public sealed class SizeTable
{
    private readonly BodySize[] _sizes;
    private readonly (BodyMeasurement Measurement, string Source)[] _sources;

    private SizeTable(string name, BodySize[] sizes, (BodyMeasurement Measurement, string Source)[] sources)
    {
        Name = name;
        _sizes = sizes;
        _sources = sources;
    }

    /// <summary>The twelve classes of EN 13402-3 (2005 text) for women: bust, waist and hip girth. The numbers come through a secondary source; check them against the standard before quoting it.</summary>
    public static SizeTable En13402Women { get; } = En13402.Women();

    /// <summary>What the table is called.</summary>
    public string Name { get; }

    /// <summary>The sizes, in the order of the table.</summary>
    public IReadOnlyList<BodySize> Sizes => _sizes;

    /// <summary>What each size measures, in the order of <see cref="BodyMeasurement.All"/>.</summary>
    public IEnumerable<BodyMeasurement> Measurements => _sizes[0].Body.Select(entry => entry.Key);

    /// <summary>Makes a table of bodies, each named for its size.</summary>
    /// <param name="name">What the table is called.</param>
    /// <param name="source">Where its figures come from, such as <c>EN 13402-3</c>, <c>from memory</c> or <c>derived</c>.</param>
    /// <param name="sizes">Two or more bodies in order, each named as its size is.</param>
    /// <exception cref="ArgumentException">There are fewer than two sizes, one has no name or that of another, or they were not all measured alike.</exception>
    [Pure]
    public static SizeTable Of(string name, string source, IEnumerable<BodyMeasurements> sizes)
    {
        Guard.Name(name, nameof(name));
        Guard.Name(source, nameof(source));
        BodyMeasurements[] bodies = [.. Guard.NotNull(sizes, nameof(sizes)).Select(body => Guard.NotNull(body, nameof(sizes)))];
        if (Fault(name, bodies) is { } fault)
        {
            throw new ArgumentException(MessageRegistry.Format(fault.Code, fault.Facts), nameof(sizes));
        }

        return new SizeTable(name, [.. bodies.Select(body => new BodySize(body.Name!, body))], [.. bodies[0].Select(entry => (entry.Key, source))]);
    }

    /// <summary>Reads a table from comma-separated text, a size on each line.</summary>
    /// <param name="name">What the table is called.</param>
    /// <param name="source">Where its figures come from.</param>
    /// <param name="columns">Which columns hold what, the names of the sizes included: <see cref="BodyColumns.NamedBy"/>.</param>
    /// <param name="text">The table. It stays open.</param>
    /// <exception cref="FormatException">A row is no size, said with row, line and column; or the sizes make no table. A run with a size missing would be graded wrongly, so nothing is read over.</exception>
    [Pure]
    public static SizeTable Read(string name, string source, BodyColumns columns, TextReader text)
    {
        Guard.Name(name, nameof(name));
        Guard.Name(source, nameof(source));
        var bodies = new List<BodyMeasurements>();
        foreach (BodyRow row in Guard.NotNull(columns, nameof(columns)).Read(text))
        {
            if (row.Body is null)
            {
                throw new FormatException(MessageRegistry.Format(DiagnosticCode.SizeRowWrong, name, MessageRegistry.Whole(row.Problem!)));
            }

            if (row.Body.Name is null)
            {
                throw new FormatException(MessageRegistry.Format(DiagnosticCode.SizeRowWithoutName, name, row.Number, row.Line));
            }

            if (bodies.Count == MostSizes)
            {
                throw new FormatException(MessageRegistry.Format(DiagnosticCode.SizeTableTooLong, name, MostSizes));
            }

            bodies.Add(row.Body);
        }

        return Fault(name, bodies) is { } fault ? throw new FormatException(MessageRegistry.Format(fault.Code, fault.Facts)) : Of(name, source, bodies);
    }

    /// <summary>Where the figures of a measurement come from.</summary>
    /// <exception cref="ConstructionException">The table does not have it.</exception>
    [Pure]
    public string SourceOf(BodyMeasurement measurement)
    {
        Guard.NotNull(measurement, nameof(measurement));
        return Array.Find(_sources, one => one.Measurement.Equals(measurement)).Source ?? throw Lacks(measurement);
    }

    /// <summary>Returns the size of that name.</summary>
    /// <exception cref="ConstructionException">The table has no such size.</exception>
    [Pure]
    public BodySize Find(string name) => _sizes[IndexOf(name)];

    /// <summary>Takes the sizes from one to another, both included.</summary>
    /// <exception cref="ConstructionException">The table has no such size.</exception>
    /// <exception cref="ArgumentException">There would be fewer than two.</exception>
    [Pure]
    public SizeTable Between(string first, string last)
    {
        int from = IndexOf(first);
        int count = IndexOf(last) - from + 1;
        return count >= 2
            ? new SizeTable(Name, _sizes.Skip(from).Take(count).ToArray(), _sources)
            : throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.SizeTableTooShort, Name, Math.Max(0, count)), nameof(last));
    }

    /// <summary>Adds a measurement that the table lacks, worked out for each size, or replaces one.</summary>
    /// <param name="measurement">Which.</param>
    /// <param name="source">Where the rule comes from, such as <c>from memory</c> or <c>derived</c>.</param>
    /// <param name="rule">Says it for the body of a size.</param>
    /// <exception cref="ArgumentOutOfRangeException">No human body measures what the rule says.</exception>
    [Pure]
    public SizeTable With(BodyMeasurement measurement, string source, Func<BodyMeasurements, Length> rule)
    {
        Guard.NotNull(measurement, nameof(measurement));
        Guard.NotNull(rule, nameof(rule));
        return new SizeTable(
            Name,
            Array.ConvertAll(_sizes, size => new BodySize(size.Name, size.Body.With(measurement, rule(size.Body)))),
            [.. _sources.Where(one => !one.Measurement.Equals(measurement)), (measurement, Guard.Name(source, nameof(source)))]);
    }

    /// <summary>The body between two sizes at which one measurement is as given: every other lies in the same part of its step.</summary>
    /// <param name="measurement">Which; it grows from each size to the next.</param>
    /// <param name="value">Within the table.</param>
    /// <exception cref="ConstructionException">The table does not have the measurement, or it does not grow from each size to the next.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value lies beyond the table.</exception>
    [Pure]
    public BodyMeasurements BodyAt(BodyMeasurement measurement, Length value)
    {
        double[] figures = FiguresOf(measurement);
        for (int i = 1; i < figures.Length; i++)
        {
            if (figures[i] <= figures[i - 1])
            {
                throw new ConstructionException(
                    DiagnosticCode.SizesDoNotGrow, Name, measurement.Term, _sizes[i - 1].Name, Length.FromMillimeters(figures[i - 1]), _sizes[i].Name, Length.FromMillimeters(figures[i]));
            }
        }

        double valueMm = Guard.Millimetres(value, figures[0], figures[figures.Length - 1], nameof(value));
        int above = Math.Max(1, Array.FindIndex(figures, figure => figure >= valueMm));
        double part = (valueMm - figures[above - 1]) / (figures[above] - figures[above - 1]);
        BodyMeasurements between = BodyMeasurements.In(_sizes[0].Body.Unit);
        foreach (BodyMeasurement each in Measurements)
        {
            Length low = _sizes[above - 1].Body[each];
            Length at = each.Equals(measurement) ? value : low + ((_sizes[above].Body[each] - low) * part);
            between = between.With(each, at);
        }

        return between;
    }

    /// <summary>The size nearest to a body: the one with the least sum of squared differences.</summary>
    /// <remarks>Half way between two sizes it is the larger one: what is too wide can be taken in (common practice, no source).</remarks>
    /// <param name="body">The body.</param>
    /// <param name="by">What chooses the size, as the hip girth does for a skirt; where none is named, all that body and table share.</param>
    /// <exception cref="ConstructionException">Body or table lacks a measurement that is to choose, or they share none.</exception>
    [Pure]
    public SizeMatch FindNearest(BodyMeasurements body, params BodyMeasurement[] by)
    {
        Guard.NotNull(body, nameof(body));
        BodyMeasurement[] shared = [.. Measurements.Where(each => body.TryFind(each, out _))];
        BodyMeasurement[] choosing = Guard.NotNull(by, nameof(by)).Length == 0 ? shared : by;
        if (choosing.Length == 0)
        {
            throw new ConstructionException(DiagnosticCode.SizeNothingShared, Name, string.Join(", ", Measurements.Select(each => each.Term)));
        }

        var off = new double[_sizes.Length];
        bool isBeyond = false;
        foreach (BodyMeasurement each in choosing)
        {
            double bodyMm = body.RequireMm(each, "choosing a size");
            double[] figures = FiguresOf(each);
            for (int i = 0; i < off.Length; i++)
            {
                off[i] += (bodyMm - figures[i]) * (bodyMm - figures[i]);
            }

            isBeyond |= IsBeyond(bodyMm, figures);
        }

        // The last of those that are as near; sums of a few squares of millimetres round far below this.
        double least = off.Min() + 1e-6;
        BodySize size = _sizes[Array.FindLastIndex(off, sum => sum <= least)];
        return new SizeMatch(size, [.. shared.Select(each => new SizeDifference(each, body[each], size.Body[each]))], isBeyond);
    }

    /// <summary>The name, and its sizes from the first to the last.</summary>
    public override string ToString() => FormattableString.Invariant($"{Name}: {_sizes.Length} sizes, {_sizes[0].Name} to {_sizes[_sizes.Length - 1].Name}");

    // Far above any range of sizes, low enough that a table of bodies read by mistake is found out soon.
    private const int MostSizes = 200;

    // What fits on a label and beside the corner of a line.
    private const int MostNameLength = 40;

    private static (DiagnosticCode Code, object[] Facts)? Fault(string name, IReadOnlyList<BodyMeasurements> bodies)
    {
        if (bodies.Count < 2)
        {
            return (DiagnosticCode.SizeTableTooShort, [name, bodies.Count]);
        }

        if (bodies.Count > MostSizes)
        {
            return (DiagnosticCode.SizeTableTooLong, [name, MostSizes]);
        }

        var names = new HashSet<string>(StringComparer.Ordinal);
        for (int i = 0; i < bodies.Count; i++)
        {
            if (bodies[i].Name is not { } size)
            {
                return (DiagnosticCode.SizeWithoutName, [name, i + 1]);
            }

            if (size.Length > MostNameLength)
            {
                return (DiagnosticCode.SizeNameTooLong, [name, i + 1, size.Length, MostNameLength]);
            }

            if (!names.Add(size))
            {
                return (DiagnosticCode.SizeTwice, [name, size]);
            }

            if (!bodies[i].Select(entry => entry.Key).SequenceEqual(bodies[0].Select(entry => entry.Key)) || bodies[i].Count == 0)
            {
                return (DiagnosticCode.SizeMeasuredOtherwise, [name, size, bodies[i].Count, bodies[0].Name!, bodies[0].Count]);
            }
        }

        return null;
    }

    private static bool IsBeyond(double valueMm, double[] figures)
    {
        // From the least to the largest, whatever the order of the sizes; one that never grows chooses none.
        double[] ends = [.. figures.Distinct().OrderBy(figure => figure)];
        int last = ends.Length - 1;
        return last > 0 && (ends[0] - valueMm > (ends[1] - ends[0]) / 2 || valueMm - ends[last] > (ends[last] - ends[last - 1]) / 2);
    }

    private double[] FiguresOf(BodyMeasurement measurement)
    {
        Guard.NotNull(measurement, nameof(measurement));
        return Array.ConvertAll(_sizes, size => size.Body.TryFindMm(measurement, out double valueMm) ? valueMm : throw Lacks(measurement));
    }

    private int IndexOf(string name)
    {
        Guard.NotNull(name, nameof(name));
        int index = Array.FindIndex(_sizes, size => size.Name == name);
        return index >= 0 ? index : throw new ConstructionException(DiagnosticCode.SizeUnknown, Name, name, string.Join(", ", _sizes.Select(size => size.Name)));
    }

    private ConstructionException Lacks(BodyMeasurement measurement)
        => new(DiagnosticCode.SizeMeasurementMissing, Name, measurement.Term, string.Join(", ", Measurements.Select(each => each.Term)));
}
