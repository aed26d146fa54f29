using System;

namespace Pattern.Core.Pdf;

/// <summary>How far the writing of a PDF has come.</summary>
public readonly struct PdfProgress : IEquatable<PdfProgress>
{
    internal PdfProgress(int sheetsDone, int sheetCount)
    {
        SheetsDone = sheetsDone;
        SheetCount = sheetCount;
    }

    /// <summary>The sheets that are complete.</summary>
    public int SheetsDone { get; }

    /// <summary>All sheets, the map counted.</summary>
    public int SheetCount { get; }

    /// <inheritdoc/>
    public bool Equals(PdfProgress other) => SheetsDone == other.SheetsDone && SheetCount == other.SheetCount;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is PdfProgress other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((SheetsDone * 397) ^ SheetCount);

    /// <summary>As in "3 of 24 sheets".</summary>
    public override string ToString() => FormattableString.Invariant($"{SheetsDone} of {SheetCount} sheets");

    /// <summary>Whether two are equal.</summary>
    public static bool operator ==(PdfProgress left, PdfProgress right) => left.Equals(right);

    /// <summary>Whether two differ.</summary>
    public static bool operator !=(PdfProgress left, PdfProgress right) => !left.Equals(right);
}
