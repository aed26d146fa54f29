using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using System.Text;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>A sheet of paper: its name, the standard that defines it, its width and its height. Immutable.</summary>
/// <remarks>The sizes that are known here stand upright, the shorter side across. Two sizes are equal when they have the same name and measure the same.</remarks>
public sealed class PaperSize : IEquatable<PaperSize>
{
    private const string Iso = "ISO 216";
    private const string Ansi = "ANSI/ASME Y14.1";
    private const string Usual = "common practice";
    private const string Own = "custom";
    private const double MmPerInch = 25.4;
    private const double LeastMm = 10;
    private const double MostMm = 100_000;

    private readonly string[] _otherNames;

    private PaperSize(string name, string standard, double widthMm, double heightMm, params string[] otherNames)
    {
        Name = name;
        Standard = standard;
        WidthMm = widthMm;
        HeightMm = heightMm;
        _otherNames = otherNames;
    }

    /// <summary>ISO 216 A0, 841 mm by 1,189 mm.</summary>
    public static PaperSize A0 { get; } = new("A0", Iso, 841, 1189);

    /// <summary>ISO 216 A1, 594 mm by 841 mm.</summary>
    public static PaperSize A1 { get; } = new("A1", Iso, 594, 841);

    /// <summary>ISO 216 A2, 420 mm by 594 mm.</summary>
    public static PaperSize A2 { get; } = new("A2", Iso, 420, 594);

    /// <summary>ISO 216 A3, 297 mm by 420 mm.</summary>
    public static PaperSize A3 { get; } = new("A3", Iso, 297, 420);

    /// <summary>ISO 216 A4, 210 mm by 297 mm: what home printers take outside North America.</summary>
    public static PaperSize A4 { get; } = new("A4", Iso, 210, 297);

    /// <summary>ISO 216 A5, 148 mm by 210 mm.</summary>
    public static PaperSize A5 { get; } = new("A5", Iso, 148, 210);

    /// <summary>ISO 216 B0, 1,000 mm by 1,414 mm.</summary>
    public static PaperSize B0 { get; } = new("B0", Iso, 1000, 1414);

    /// <summary>ISO 216 B1, 707 mm by 1,000 mm.</summary>
    public static PaperSize B1 { get; } = new("B1", Iso, 707, 1000);

    /// <summary>ISO 216 B2, 500 mm by 707 mm.</summary>
    public static PaperSize B2 { get; } = new("B2", Iso, 500, 707);

    /// <summary>ISO 216 B3, 353 mm by 500 mm.</summary>
    public static PaperSize B3 { get; } = new("B3", Iso, 353, 500);

    /// <summary>ISO 216 B4, 250 mm by 353 mm.</summary>
    public static PaperSize B4 { get; } = new("B4", Iso, 250, 353);

    /// <summary>ANSI/ASME Y14.1 size A, 8 1/2 in by 11 in: what home printers take in North America.</summary>
    public static PaperSize Letter { get; } = Inches("Letter", Ansi, 8.5, 11, "ANSI A", "US Letter");

    /// <summary>Legal, 8 1/2 in by 14 in (common practice, in no standard of drawing sheets).</summary>
    public static PaperSize Legal { get; } = Inches("Legal", Usual, 8.5, 14, "US Legal");

    /// <summary>ANSI/ASME Y14.1 size B, 11 in by 17 in.</summary>
    public static PaperSize Tabloid { get; } = Inches("Tabloid", Ansi, 11, 17, "ANSI B", "Ledger");

    /// <summary>ANSI/ASME Y14.1 size C, 17 in by 22 in.</summary>
    public static PaperSize AnsiC { get; } = Inches("ANSI C", Ansi, 17, 22);

    /// <summary>ANSI/ASME Y14.1 size D, 22 in by 34 in.</summary>
    public static PaperSize AnsiD { get; } = Inches("ANSI D", Ansi, 22, 34);

    /// <summary>ANSI/ASME Y14.1 size E, 34 in by 44 in.</summary>
    public static PaperSize AnsiE { get; } = Inches("ANSI E", Ansi, 34, 44);

    /// <summary>Architectural D, 24 in by 36 in (common practice): copy shops in North America.</summary>
    public static PaperSize ArchD { get; } = Inches("Arch D", Usual, 24, 36);

    /// <summary>Architectural E, 36 in by 48 in (common practice).</summary>
    public static PaperSize ArchE { get; } = Inches("Arch E", Usual, 36, 48);

    /// <summary>Architectural E1, 30 in by 42 in (common practice).</summary>
    public static PaperSize ArchE1 { get; } = Inches("Arch E1", Usual, 30, 42);

    /// <summary>Every size that has a name here, by standard and then by size, the largest first in ISO 216 and the smallest first elsewhere.</summary>
    public static IReadOnlyList<PaperSize> All { get; } = Array.AsReadOnly(
        new[] { A0, A1, A2, A3, A4, A5, B0, B1, B2, B3, B4, Letter, Legal, Tabloid, AnsiC, AnsiD, AnsiE, ArchD, ArchE, ArchE1 });

    /// <summary>What it is called, as in "A4".</summary>
    public string Name { get; }

    /// <summary>The standard that defines it; "common practice" or "custom" where none does.</summary>
    public string Standard { get; }

    /// <summary>From side to side.</summary>
    public Length Width => Length.FromMillimeters(WidthMm);

    /// <summary>From bottom to top.</summary>
    public Length Height => Length.FromMillimeters(HeightMm);

    internal double WidthMm { get; }

    internal double HeightMm { get; }

    internal bool IsUpright => WidthMm <= HeightMm;

    /// <summary>Makes a size of your own.</summary>
    /// <param name="name">What a reader of the sheets will call it.</param>
    /// <param name="width">From side to side: 10 mm to 100 m.</param>
    /// <param name="height">From bottom to top: 10 mm to 100 m.</param>
    /// <exception cref="ArgumentException">The name is empty, or a side is outside its range.</exception>
    public static PaperSize Of(string name, Length width, Length height) => new(
        Guard.Name(name, nameof(name)), Own, Guard.Millimetres(width, LeastMm, MostMm, nameof(width)), Guard.Millimetres(height, LeastMm, MostMm, nameof(height)));

    /// <summary>Finds a size by its name: <c>A4</c>, <c>letter</c>, <c>ansi-a</c>.</summary>
    /// <param name="name">Capital or small letters; blanks and hyphens do not count.</param>
    /// <exception cref="ArgumentException">No size has this name; the message lists those that are known.</exception>
    public static PaperSize Find(string name)
        => TryFind(name, out PaperSize? paper)
            ? paper!
            : throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.PaperUnknown, name, MessageRegistry.Whole(string.Join(", ", All.Select(known => known.Name)))), nameof(name));

    /// <summary>Looks for a size by its name.</summary>
    /// <param name="name">Capital or small letters; blanks and hyphens do not count.</param>
    /// <param name="paper">The size, or null.</param>
    /// <returns>Whether one has this name.</returns>
    public static bool TryFind(string name, out PaperSize? paper)
    {
        string key = Key(Guard.NotNull(name, nameof(name)));
        paper = All.FirstOrDefault(known => Key(known.Name) == key || Array.Exists(known._otherNames, other => Key(other) == key));
        return paper is not null;
    }

    /// <summary>The same sheet, lying where it stood and standing where it lay.</summary>
    [Pure]
    public PaperSize Turned() => new(Name, Standard, HeightMm, WidthMm, _otherNames);

    /// <inheritdoc/>
    public bool Equals(PaperSize? other) => other is not null && Name == other.Name && WidthMm == other.WidthMm && HeightMm == other.HeightMm;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as PaperSize);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>Name and size: <c>A4, 210 mm by 297 mm</c>.</summary>
    public override string ToString() => FormattableString.Invariant($"{Name}, {WidthMm:0.#} mm by {HeightMm:0.#} mm");

    private static PaperSize Inches(string name, string standard, double width, double height, params string[] otherNames)
        => new(name, standard, width * MmPerInch, height * MmPerInch, otherNames);

    private static string Key(string name)
    {
        var key = new StringBuilder(name.Length);
        foreach (char c in name)
        {
            if (c is not (' ' or '-' or '_'))
            {
                key.Append(char.ToUpperInvariant(c));
            }
        }

        return key.ToString();
    }
}
