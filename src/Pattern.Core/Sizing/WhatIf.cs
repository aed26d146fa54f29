using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Globalization;
using System.Linq;
using System.Text;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Sizing;

/// <summary>What moves when a measurement or a setting moves: the block drafted again with a little more and a little less of each, not guessed. Says which measuring error is dear. Immutable.</summary>
/// <remarks>Of any method. Measurements, lengths, angles, counts and shares are moved either way, a choice to each of its other words; a text, and a setting that the method decides, are left alone.
/// What cannot be drafted is told with its reason and never stops the rest.</remarks>
/// <example><code>
/// WhatIf whatIf = WhatIf.Of(block, by: Tape.Inches("1/2"));
/// Console.WriteLine(whatIf.Describe(TapeStep.Sixteenth));
/// string? dear = whatIf.MattersMost("back hem")?.Change.Name;   // hip girth
/// </code></example>
public sealed class WhatIf
{
    private const double LeastMm = 0.01;

    /// <summary>What a tape can show at all.</summary>
    internal const double ShownMm = 25.4 / 64;

    private static readonly double DegreeRad = Math.PI / 180;
    private const double PartOfAll = 0.05;

    private readonly Block _block;
    private readonly WhatIfMove[] _moves;

    private WhatIf(Block block, double byMm)
    {
        _block = block;
        ByMm = byMm;
        IReadOnlyList<(string Name, double Mm)> dimensions = FinishedDimensions.Of(block);
        Dimensions = [.. dimensions.Select(dimension => dimension.Name)];
        string[] templates = Templates(block);
        var changes = new List<WhatIfChange>();
        var moves = new List<WhatIfMove>();
        foreach (Asked asked in Everything(block.ToBuilder(), byMm))
        {
            Outcome more = Outcome.Of(asked.More, templates);
            Outcome? less = asked.Less is null ? null : Outcome.Of(asked.Less, templates);
            var change = new WhatIfChange(asked.Kind, asked.Name, asked.By, more.Refusal, less?.Refusal, more.IsOtherwise, less?.IsOtherwise ?? false, asked.Less is null);
            changes.Add(change);
            moves.AddRange(dimensions.Select(dimension => new WhatIfMove(dimension.Name, change, more.MovedMm(dimension), less?.MovedMm(dimension))));
        }

        Changes = changes;
        _moves = [.. moves];
    }

    /// <summary>The block that was drafted first.</summary>
    public Block Block => _block;

    /// <summary>By how much measurements and lengths were moved.</summary>
    public Length By => Length.FromMillimeters(ByMm);

    /// <summary>What was measured: each edge as sewn, each dart and its length, and what the checks of the method measure across panels.</summary>
    public IReadOnlyList<string> Dimensions { get; }

    /// <summary>What was changed: the measurements first, then the settings of the method, then those of its designs.</summary>
    public IReadOnlyList<WhatIfChange> Changes { get; }

    /// <summary>How each dimension moves with each change, in the order of the dimensions within that of the changes.</summary>
    public IReadOnlyList<WhatIfMove> Moves => _moves;

    internal double ByMm { get; }

    /// <summary>Moves everything by half an inch, or by a centimetre for a body measured in centimetres: what a tape held loosely or tightly comes to (common practice, no source).</summary>
    /// <param name="block">The block.</param>
    /// <exception cref="ConstructionException">The block was read from a file, and its method or one of its designs is not known.</exception>
    [Pure]
    public static WhatIf Of(Block block) => Of(block, Tape.IsMetric(Guard.NotNull(block, nameof(block)).Body.Unit, nameof(block)) ? Length.FromCentimeters(1) : Length.FromInches(0.5));

    /// <summary>Moves everything by a length.</summary>
    /// <param name="block">The block.</param>
    /// <param name="by">More than zero, at most 100 mm.</param>
    /// <exception cref="ConstructionException">The block was read from a file, and its method or one of its designs is not known.</exception>
    [Pure]
    public static WhatIf Of(Block block, Length by) => new(Guard.NotNull(block, nameof(block)), Guard.Millimetres(by, LeastMm, 100, nameof(by)));

    /// <summary>How one dimension moves with one change.</summary>
    /// <param name="dimension">One of <see cref="Dimensions"/>.</param>
    /// <param name="change">The name of one of <see cref="Changes"/>.</param>
    /// <exception cref="ConstructionException">There is no such dimension or no such change.</exception>
    [Pure]
    public WhatIfMove Find(string dimension, string change)
    {
        Known("finished dimension", dimension, Dimensions);
        Known("change", change, Changes.Select(one => one.Name));
        return Array.Find(_moves, move => move.Dimension == dimension && move.Change.Name == change)!;
    }

    /// <summary>The measurement that moves a dimension most; null where none moves it by as much as a tape shows, 1/64 in.</summary>
    /// <param name="dimension">One of <see cref="Dimensions"/>.</param>
    /// <exception cref="ConstructionException">There is no such dimension.</exception>
    [Pure]
    public WhatIfMove? MattersMost(string dimension)
    {
        Known("finished dimension", dimension, Dimensions);
        WhatIfMove[] moves = [.. _moves.Where(move => move.Dimension == dimension && move.Change.Kind == WhatIfKind.Measurement).OrderByDescending(move => move.MostMm)];
        return moves.Length > 0 && moves[0].MostMm >= ShownMm ? moves[0] : null;
    }

    /// <summary>A line for each dimension and what moves it, the most first; then what was refused, and where the draft took other steps.</summary>
    /// <param name="tape">The finest mark of the tape that moves are read off; a finer one shows what this one cannot, a figure that was rounded carries a <c>~</c>.</param>
    [Pure]
    public string Describe(TapeStep tape)
    {
        var text = new StringBuilder(4096);
        text.Append("What if: ").Append(_block.Title).Append(", each measurement and length ").Append(Figure(ByMm, tape)).Append(" more or less\n");
        foreach ((string name, double mm) in FinishedDimensions.Of(_block))
        {
            text.Append('\n').Append(name).Append(", ").Append(Figure(mm, tape)).Append('\n');
            WhatIfMove? dear = MattersMost(name);
            foreach (WhatIfMove move in _moves.Where(move => move.Dimension == name && move.MostMm >= ShownMm).OrderByDescending(move => move.MostMm))
            {
                text.Append("  ").Append(move.Change).Append(": ").Append(InWords(move, tape)).Append(ReferenceEquals(move, dear) ? "; the measurement that matters most" : string.Empty).Append('\n');
            }
        }

        IReadOnlyList<string> notes = Notes();
        if (notes.Count > 0)
        {
            text.Append('\n').Append(string.Join("\n", notes)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>A row for each change and dimension: <c>kind,changed,by,dimension,before_mm,more_mm,less_mm,more_note,less_note</c>. A move that could not be drafted is empty, its note says why.</summary>
    [Pure]
    public string ToCsv()
    {
        Dictionary<string, double> before = FinishedDimensions.Of(_block).ToDictionary(dimension => dimension.Name, dimension => dimension.Mm);
        var text = new StringBuilder("kind,changed,by,dimension,before_mm,more_mm,less_mm,more_note,less_note\n");
        foreach (WhatIfMove move in _moves)
        {
            WhatIfChange change = move.Change;
            string[] cells =
            [
                change.Kind switch { WhatIfKind.Measurement => "measurement", WhatIfKind.Setting => "setting", _ => "design setting" }, change.Name, change.By, move.Dimension,
                Number(before[move.Dimension]), Number(move.MoreMm), Number(move.LessMm), Note(change.MoreRefusal, change.IsMoreDraftedOtherwise), Note(change.LessRefusal, change.IsLessDraftedOtherwise),
            ];
            text.Append(string.Join(",", cells.Select(CsvText.Cell))).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>What was moved and by how much, in sixteenths of an inch.</summary>
    public override string ToString() => Describe(TapeStep.Sixteenth);

    internal static string InWords(WhatIfMove move, TapeStep tape) => (move.MoreMm, move.LessMm) switch
    {
        ({ } more, { } less) => Signed(more, tape) + " with more, " + Signed(less, tape) + " with less",
        ({ } more, null) => Signed(more, tape),
        (null, { } less) => Signed(less, tape) + " with less",
        _ => "not drafted",
    };

    /// <summary>A move with its sign, to the mark of the tape that still shows it.</summary>
    internal static string Signed(double mm, TapeStep tape)
    {
        if (Math.Abs(mm) < ShownMm)
        {
            return "0";
        }

        string figure = Figure(Math.Abs(mm), tape);
        string sign = mm > 0 ? "+" : "-";
        return figure[0] == '~' ? "~" + sign + figure.Substring(1) : sign + figure;
    }

    /// <summary>What could not be drafted, with its reason, and where what moves jumps.</summary>
    internal IReadOnlyList<string> Notes()
    {
        var notes = new List<string>();
        var otherwise = new List<string>();
        foreach (WhatIfChange change in Changes)
        {
            string more = change.IsChoice ? string.Empty : " more";
            if (change.MoreRefusal is { } refused)
            {
                notes.Add("Refused, " + change + more + ": " + refused);
            }

            if (change.LessRefusal is { } refusedLess)
            {
                notes.Add("Refused, " + change + " less: " + refusedLess);
            }

            if (change.IsMoreDraftedOtherwise || change.IsLessDraftedOtherwise)
            {
                otherwise.Add(change + (change.IsChoice ? string.Empty : !change.IsLessDraftedOtherwise ? " more" : !change.IsMoreDraftedOtherwise ? " less" : " either way"));
            }
        }

        if (otherwise.Count > 0)
        {
            notes.Add("Drafted by other steps, such as a dart more or a curve of another kind, so that what moves jumps: " + string.Join("; ", otherwise) + ".");
        }

        return notes;
    }

    private static string Figure(double mm, TapeStep tape) => WorkedLength.DrawnMm(null, mm).Describe(tape);

    private static string Number(double? mm) => mm is { } known ? (Math.Round(known, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture) : string.Empty;

    private static string Note(string? refusal, bool isOtherwise) => refusal ?? (isOtherwise ? "drafted by other steps" : string.Empty);

    private void Known(string kind, string name, IEnumerable<string> known)
    {
        if (!known.Contains(Guard.Name(name, nameof(name))))
        {
            throw new ConstructionException(DiagnosticCode.FigureUnknown, _block.Method.Name, kind, name, string.Join(", ", known.OrderBy(other => other.IndexOf(name, StringComparison.OrdinalIgnoreCase) < 0)));
        }
    }

    private static string[] Templates(Block block) => [.. block.Steps.Select(step => step.Template)];

    private static IEnumerable<Asked> Everything(BlockBuilder builder, double byMm)
    {
        string by = WorkedLength.GivenMm(null, byMm).Describe(TapeStep.For(builder.Body.Unit));
        foreach (KeyValuePair<BodyMeasurement, Length> entry in builder.Body)
        {
            BlockBuilder Moved(double mm) => builder.For(builder.Body.With(entry.Key, Length.FromMillimeters(entry.Value.Millimeters + mm)));
            yield return new Asked(WhatIfKind.Measurement, entry.Key.Term, by, () => Moved(byMm), () => Moved(-byMm));
        }

        for (int i = 0; i < builder.Method.Settings.Count; i++)
        {
            MethodSetting setting = builder.Method.Settings[i];
            foreach (Asked asked in OfSetting(WhatIfKind.Setting, setting.Name, setting, builder.Values.At(i), value => builder.With(setting, value), byMm, by))
            {
                yield return asked;
            }
        }

        for (int d = 0; d < builder.Designs.Count; d++)
        {
            DesignChoice design = builder.Designs[d];
            SettingValue[] values = design.ValuesIn(builder.Body.Unit);
            int place = d;
            for (int i = 0; i < values.Length; i++)
            {
                int at = i;
                MethodSetting setting = design.Design.Settings[i];
                foreach (Asked asked in OfSetting(WhatIfKind.DesignSetting, design.Design.Name + ", " + setting.Name, setting, values[i], value => builder.WithDesign(place, design.WithValue(at, value)), byMm, by))
                {
                    yield return asked;
                }
            }
        }
    }

    private static IEnumerable<Asked> OfSetting(WhatIfKind kind, string name, MethodSetting setting, SettingValue now, Func<SettingValue, BlockBuilder> change, double byMm, string by)
    {
        if (!now.IsGiven || setting.Kind == SettingKind.Text)
        {
            yield break;
        }

        if (setting.Kind == SettingKind.Choice)
        {
            foreach (string word in setting.Choices.Where(word => word != now.Text))
            {
                yield return new Asked(kind, name + " " + word, now.Text!, () => Checked(SettingValue.Of(setting.Name, setting.Kind, word)), null);
            }

            yield break;
        }

        (double step, string said) = setting.Kind switch
        {
            SettingKind.Length => (byMm, by),
            SettingKind.Angle => (DegreeRad, "1 degree"),
            SettingKind.Count => (1.0, "1"),
            _ => (PartOfAll, "5 %"),
        };
        yield return new Asked(kind, name, said, () => Moved(step), () => Moved(-step));

        BlockBuilder Moved(double more) => Checked(SettingValue.Of(setting.Name, setting.Kind, now.Raw + more));

        BlockBuilder Checked(SettingValue value)
        {
            setting.RefuseWrong(value, setting.Name);
            return change(value);
        }
    }

    /// <summary>A change, and the builders with more and with less of it; what its limits refuse is refused when it is asked for.</summary>
    private sealed record Asked(WhatIfKind Kind, string Name, string By, Func<BlockBuilder> More, Func<BlockBuilder>? Less);

    private sealed class Outcome
    {
        private readonly Dictionary<string, double> _dimensions;

        private Outcome(string? refusal, bool isOtherwise, Dictionary<string, double> dimensions)
        {
            Refusal = refusal;
            IsOtherwise = isOtherwise;
            _dimensions = dimensions;
        }

        internal string? Refusal { get; }

        internal bool IsOtherwise { get; }

        internal static Outcome Of(Func<BlockBuilder> builder, string[] templates)
        {
            BlockBuilder? asked;
            try
            {
                asked = builder();
            }
            catch (Exception refusal) when (refusal is ArgumentException or FormatException or ConstructionException)
            {
                return new Outcome(refusal.Message.Split([" (Parameter '"], StringSplitOptions.None)[0], false, []);
            }

            Trial trial = Trial.Of(BodyRow.Of(1, asked.Body), _ => asked.Draft());
            return trial.Block is { } block
                ? new Outcome(trial.Reason, !Templates(block).SequenceEqual(templates), FinishedDimensions.Of(block).ToDictionary(dimension => dimension.Name, dimension => dimension.Mm))
                : new Outcome(trial.Reason ?? "not drafted", false, []);
        }

        internal double? MovedMm((string Name, double Mm) dimension) => _dimensions.TryGetValue(dimension.Name, out double now) ? now - dimension.Mm : null;
    }
}
