using System.Diagnostics.Contracts;
using System.IO;
using System.Text;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Output;

/// <summary>Drawings as SVG at full size: printed at 100 %, one millimetre on paper is one millimetre of cloth.</summary>
/// <remarks>
/// <para>One user unit is one millimetre. The drawing is moved so that its upper left corner is the origin, and y runs down; no line carries a
/// <c>transform</c>, only turned text does. Coordinates are rounded to 0.0001 mm. Each layer is a group whose id is the layer's name.</para>
/// <para>So that anyone can check the drawing with tools of their own: a stretch of seam line is a path with <c>data-panel</c>, <c>data-edge</c> and, on the drawing of a block,
/// <c>data-times</c>, how often the panel stands in the garment (2 for one half of a front); a dart leg is a straight path
/// from the seam line to the apex with <c>data-panel</c>, <c>data-on</c> (its edge), <c>data-dart</c> (1, 2, along the edge) and <c>data-leg</c> (the edge it is nearer to); a dart cap is a path with <c>data-panel</c>,
/// <c>data-on</c>, <c>data-dart</c> and <c>data-cap</c>, the way in which the dart is pressed. On pieces, the cut line along an edge is a path with <c>data-panel</c> and <c>data-cut</c>, the edge, and what lies
/// between two of these a path with <c>data-corner</c>, the edge before it. No other line carries any of these.</para>
/// <para>Same drawing, same characters, in any culture.</para>
/// </remarks>
public static class SvgOutput
{
    /// <summary>The drawing as the text of an SVG file.</summary>
    [Pure]
    public static string ToSvg(this Drawing drawing) => new SvgWriter(Guard.NotNull(drawing, nameof(drawing))).Write();

    /// <summary>Writes the drawing to a file, as a whole or not at all.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <exception cref="System.ArgumentException">The path is empty, holds a NUL character, or names a device.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void SaveSvg(this Drawing drawing, string path)
    {
        FilePaths.Checked(path, nameof(path));
        WholeFiles.Write(path, drawing.ToSvg());
    }

    /// <summary>Writes the drawing to a stream, in UTF-8. The stream stays open.</summary>
    /// <remarks>The whole text is formed before the first byte is written.</remarks>
    public static void WriteSvg(this Drawing drawing, Stream stream)
    {
        Guard.NotNull(stream, nameof(stream));
        byte[] bytes = Encoding.UTF8.GetBytes(drawing.ToSvg());
        stream.Write(bytes, 0, bytes.Length);
    }

    /// <summary>Writes the drawing to a text writer. The writer stays open.</summary>
    /// <remarks>The whole text is formed before the first character is written. The text declares itself as UTF-8.</remarks>
    public static void WriteSvg(this Drawing drawing, TextWriter writer)
    {
        Guard.NotNull(writer, nameof(writer));
        writer.Write(drawing.ToSvg());
    }
}
