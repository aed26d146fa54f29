using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.IO;
using System.Text;
using Pattern.Core.Diagnostics;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>Pieces as a pattern file that cutting and marker programs read, and drawings for general drawing programs: both as ASCII DXF at full size.</summary>
/// <remarks>
/// <para>Pieces follow the open standard for pattern exchange (ASTM D6673, earlier ANSI/AAMA-292): a block for each piece, size and cloth, inserted once; what a line or
/// point is, its layer says. A drawing keeps its own layers, blanks in their names turned into hyphens.</para>
/// <para>Curves are polylines within <see cref="DxfOptions.Tolerance"/>. Coordinates are rounded to 0.0001 mm or 0.000001 in. All characters are ASCII, others are written as
/// <c>\U+XXXX</c>; lines end in CR LF. Same input, same characters, in any culture and on any day.</para>
/// </remarks>
/// <example><code>
/// PatternPiece back = PatternPiece.From(block.Back).WithAllowance(Length.FromInches(0.5));
/// PatternPiece front = PatternPiece.From(block.Front).WithAllowance(Length.FromInches(0.5)).CutOnFold(EdgeName.Centre);
/// new[] { back, front }.SaveDxf("skirt.dxf", new DxfOptions { Unit = LengthUnit.Inch, Author = "Wardrobe room", SampleSize = "12" });
/// block.Draw().SaveDxf("skirt-drawing.dxf");
/// </code></example>
public static class DxfOutput
{
    /// <summary>The pieces as the text of a pattern file.</summary>
    /// <param name="pieces">One or more, in the order in which they shall stand; the same piece may come in several sizes.</param>
    /// <param name="options">Unit, tolerance and what the file says about itself; null for the defaults.</param>
    /// <exception cref="ArgumentException">There is no piece, two are alike in name, size and cloth, or a text has characters that cannot be printed.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The unit is neither millimetre nor inch, or the tolerance is outside its range.</exception>
    /// <exception cref="ConstructionException">The cut line of a piece cannot be drawn.</exception>
    [Pure]
    public static string ToDxf(this IEnumerable<PatternPiece> pieces, DxfOptions? options = null) => new PatternDxfWriter(pieces, options ?? new DxfOptions()).Write();

    /// <summary>One piece as the text of a pattern file.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="options">Unit, tolerance and what the file says about itself; null for the defaults.</param>
    /// <exception cref="ArgumentException">A text has characters that cannot be printed.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The unit is neither millimetre nor inch, or the tolerance is outside its range.</exception>
    /// <exception cref="ConstructionException">The cut line of the piece cannot be drawn.</exception>
    [Pure]
    public static string ToDxf(this PatternPiece piece, DxfOptions? options = null) => ToDxf([Guard.NotNull(piece, nameof(piece))], options);

    /// <summary>The drawing as the text of a plain layered file.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="options">Unit and tolerance; null for the defaults.</param>
    /// <exception cref="ArgumentOutOfRangeException">The unit is neither millimetre nor inch, or the tolerance is outside its range.</exception>
    [Pure]
    public static string ToDxf(this Drawing drawing, DrawingDxfOptions? options = null)
        => new DrawingDxfWriter(Guard.NotNull(drawing, nameof(drawing)), options ?? new DrawingDxfOptions()).Write();

    /// <summary>Writes the pieces to a file, as a whole or not at all.</summary>
    /// <inheritdoc cref="ToDxf(IEnumerable{PatternPiece}, DxfOptions?)"/>
    /// <param name="pieces">One or more, in the order in which they shall stand; the same piece may come in several sizes.</param>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <param name="options">Unit, tolerance and what the file says about itself; null for the defaults.</param>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void SaveDxf(this IEnumerable<PatternPiece> pieces, string path, DxfOptions? options = null)
    {
        FilePaths.Checked(path, nameof(path));
        WholeFiles.Write(path, pieces.ToDxf(options));
    }

    /// <summary>Writes one piece to a file, as a whole or not at all.</summary>
    /// <inheritdoc cref="ToDxf(PatternPiece, DxfOptions?)"/>
    /// <param name="piece">The piece.</param>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <param name="options">Unit, tolerance and what the file says about itself; null for the defaults.</param>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void SaveDxf(this PatternPiece piece, string path, DxfOptions? options = null)
    {
        FilePaths.Checked(path, nameof(path));
        WholeFiles.Write(path, piece.ToDxf(options));
    }

    /// <summary>Writes the drawing to a file, as a whole or not at all.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <param name="options">Unit and tolerance; null for the defaults.</param>
    /// <exception cref="ArgumentOutOfRangeException">The unit is neither millimetre nor inch, or the tolerance is outside its range.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void SaveDxf(this Drawing drawing, string path, DrawingDxfOptions? options = null)
    {
        FilePaths.Checked(path, nameof(path));
        WholeFiles.Write(path, drawing.ToDxf(options));
    }

    /// <summary>Writes the pieces to a stream. The stream stays open.</summary>
    /// <remarks>The whole text is formed before the first byte is written.</remarks>
    /// <inheritdoc cref="ToDxf(IEnumerable{PatternPiece}, DxfOptions?)"/>
    /// <param name="pieces">One or more, in the order in which they shall stand; the same piece may come in several sizes.</param>
    /// <param name="stream">Receives the file.</param>
    /// <param name="options">Unit, tolerance and what the file says about itself; null for the defaults.</param>
    public static void WriteDxf(this IEnumerable<PatternPiece> pieces, Stream stream, DxfOptions? options = null)
    {
        Guard.NotNull(stream, nameof(stream));
        WriteTo(stream, pieces.ToDxf(options));
    }

    /// <summary>Writes the drawing to a stream. The stream stays open.</summary>
    /// <remarks>The whole text is formed before the first byte is written.</remarks>
    /// <param name="drawing">The drawing.</param>
    /// <param name="stream">Receives the file.</param>
    /// <param name="options">Unit and tolerance; null for the defaults.</param>
    /// <exception cref="ArgumentOutOfRangeException">The unit is neither millimetre nor inch, or the tolerance is outside its range.</exception>
    public static void WriteDxf(this Drawing drawing, Stream stream, DrawingDxfOptions? options = null)
    {
        Guard.NotNull(stream, nameof(stream));
        WriteTo(stream, drawing.ToDxf(options));
    }

    private static void WriteTo(Stream stream, string text)
    {
        byte[] bytes = Encoding.ASCII.GetBytes(text);
        stream.Write(bytes, 0, bytes.Length);
    }
}
