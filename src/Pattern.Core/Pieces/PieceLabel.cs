using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Globalization;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Pieces;

/// <summary>What is printed on a piece besides its own name and how often it is cut. Immutable: every method returns a new label.</summary>
/// <remarks>A piece that is too small for all of it says its name and how it is cut.</remarks>
/// <example><code>
/// PieceLabel label = PieceLabel.For("Act 2 skirt").ForWhom("Rosalind").WithMeasurements(body, TapeStep.Quarter).Dated(new DateTime(2026, 3, 14));
/// </code></example>
public sealed class PieceLabel
{
    // Every measurement of a body that was measured with care.
    private const int LongestSize = 2_000;

    private readonly string[] _notes;

    private PieceLabel(string garment, string? forWhom, string? size, DateTime? date, string[] notes)
    {
        Garment = garment;
        Wearer = forWhom;
        Size = size;
        Date = date;
        _notes = notes;
    }

    /// <summary>The garment that the piece is part of.</summary>
    public string Garment { get; }

    /// <summary>Who will wear it, or null.</summary>
    public string? Wearer { get; }

    /// <summary>The size or the measurements that it was made from, or null.</summary>
    public string? Size { get; }

    /// <summary>The day that the caller gave, or null.</summary>
    public DateTime? Date { get; }

    /// <summary>Further lines.</summary>
    public IReadOnlyList<string> Notes => _notes;

    /// <summary>Begins a label.</summary>
    /// <param name="garment">What the piece is part of: 1 to 60 printable characters on one line.</param>
    /// <exception cref="ArgumentException">The text is blank, too long or has characters that cannot be printed.</exception>
    public static PieceLabel For(string garment) => new(PieceText.Checked(garment, nameof(garment)), null, null, null, []);

    /// <summary>Says who will wear it.</summary>
    /// <param name="wearer">1 to 60 printable characters on one line.</param>
    /// <exception cref="ArgumentException">The text is blank, too long or has characters that cannot be printed.</exception>
    [Pure]
    public PieceLabel ForWhom(string wearer) => new(Garment, PieceText.Checked(wearer, nameof(wearer)), Size, Date, _notes);

    /// <summary>Says the size.</summary>
    /// <param name="size">1 to 2,000 printable characters without line breaks; what is longer than 60 stands on several lines, broken after commas.</param>
    /// <exception cref="ArgumentException">The text is blank, too long or has characters that cannot be printed.</exception>
    [Pure]
    public PieceLabel WithSize(string size) => new(Garment, Wearer, PieceText.Checked(size, nameof(size), LongestSize), Date, _notes);

    /// <summary>Says the measurements that it was made from, in place of a size, on as many lines as they need.</summary>
    /// <param name="body">The body; its name is not taken over.</param>
    /// <param name="step">The tape, and the mark that they are read to.</param>
    /// <exception cref="ArgumentException">Together they are more than 2,000 characters long: say the size in other words.</exception>
    [Pure]
    public PieceLabel WithMeasurements(BodyMeasurements body, TapeStep step) => WithSize(Guard.NotNull(body, nameof(body)).Describe(step));

    /// <summary>Says the measurements that it was made from, in place of a size, on the tape that suits the unit of the body.</summary>
    /// <param name="body">The body; its name is not taken over.</param>
    /// <exception cref="ArgumentException">Together they are more than 2,000 characters long: say the size in other words.</exception>
    [Pure]
    public PieceLabel WithMeasurements(BodyMeasurements body) => WithMeasurements(body, TapeStep.For(Guard.NotNull(body, nameof(body)).Unit));

    /// <summary>Says the day. The library has no clock.</summary>
    /// <param name="day">Printed as 2026-03-14; the time of the day is left out.</param>
    [Pure]
    public PieceLabel Dated(DateTime day) => new(Garment, Wearer, Size, day.Date, _notes);

    /// <summary>Adds a line of your own.</summary>
    /// <param name="note">1 to 60 printable characters on one line.</param>
    /// <exception cref="ArgumentException">The text is blank, too long or has characters that cannot be printed.</exception>
    [Pure]
    public PieceLabel WithNote(string note) => new(Garment, Wearer, Size, Date, [.. _notes, PieceText.Checked(note, nameof(note))]);

    /// <summary>The lines below the name of the piece, what the label says first and how the piece is cut after it.</summary>
    internal IEnumerable<string> Lines(IEnumerable<string> cutting)
    {
        yield return Garment;
        if (Wearer is not null)
        {
            yield return "for " + Wearer;
        }

        if (Size is not null)
        {
            foreach (string line in PieceText.Lines(Size))
            {
                yield return line;
            }
        }

        foreach (string line in cutting.Concat(_notes))
        {
            yield return line;
        }

        if (Date is { } date)
        {
            yield return date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        }
    }

    /// <summary>Garment, wearer and size.</summary>
    public override string ToString()
        => Garment + (Wearer is null ? string.Empty : " for " + Wearer) + (Size is null ? string.Empty : ", size " + Size);
}
