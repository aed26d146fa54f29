using System;
using System.Collections.Generic;

namespace Pattern.Core.Measurement;

/// <summary>The figures that one text has printed under their names. What was worked out once is cited by name and figure, and its figure is the same wherever it stands.</summary>
internal sealed class NamedFigures(TapeStep tape)
{
    // Sums of halves and quarters of inches may end a few bits off in millimetres.
    private const double SameMm = 1e-6;

    // As deep as a working is printed.
    private const int Deepest = 100;

    private readonly Dictionary<string, (double ValueMm, TapeStep Step)> _figures = new(StringComparer.Ordinal);
    private readonly HashSet<WorkedLength> _seen = [];

    /// <summary>Whether figures are left blank, to be worked out by the reader: names and workings stay.</summary>
    internal bool LeavesBlank { get; init; }

    /// <summary>Whether what is worked out before the steps is printed as a formula in words, the result left out.</summary>
    internal bool PrintsFormulas { get; init; }

    /// <summary>The language of the text.</summary>
    internal Phrasebook Book { get; init; } = Phrasebook.English;

    /// <summary>Whether a length was printed under its name, and on which mark.</summary>
    internal bool TryFind(WorkedLength length, out TapeStep step)
    {
        bool found = length.Name is not null && _figures.TryGetValue(length.Name, out (double ValueMm, TapeStep Step) figure) && Math.Abs(figure.ValueMm - length.ValueMm) <= SameMm;
        step = found ? _figures[length.Name!].Step : default;
        return found;
    }

    /// <summary>Keeps the mark that a length was printed on; a name that stands for another length already stays with that.</summary>
    internal void Add(WorkedLength length, TapeStep step)
    {
        if (length.Name is { } name && !_figures.ContainsKey(name))
        {
            _figures.Add(name, (length.ValueMm, step));
        }
    }

    /// <summary>Prints a named length with its working, and before it every named one that it is worked from and that was not printed yet.</summary>
    /// <param name="length">The length; without a name or a working, only what it is worked from is printed.</param>
    /// <param name="row">Prints a name and its working.</param>
    internal void WorkOut(WorkedLength length, Action<string, string> row) => WorkOut(length, row, 0);

    private void WorkOut(WorkedLength length, Action<string, string> row, int depth)
    {
        if (length.First is null || depth > Deepest || !_seen.Add(length) || TryFind(length, out _))
        {
            return;
        }

        WorkOut(length.First, row, depth + 1);
        if (length.Second is { } second)
        {
            WorkOut(second, row, depth + 1);
        }

        if (length.Name is { } name && !_figures.ContainsKey(name))
        {
            string working = WorkedText.Describe(length, tape, TapeStyle.Plain, this, out TapeStep shown);
            row(Book.Say(name), PrintsFormulas ? WorkedText.Formula(length, tape, this) : working);
            Add(length, shown);
        }
    }
}
