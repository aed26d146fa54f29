using System;
using System.IO;
using System.Reflection;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Pattern.Core.Pdf;

/// <summary>The type that is put into every file: two faces of Inter, from inside this assembly. The fonts of the machine are never asked.</summary>
internal sealed class InterFaces
{
    private static readonly Lazy<byte[]> RegularFile = new(() => Read("Inter-Regular.ttf"));
    private static readonly Lazy<byte[]> BoldFile = new(() => Read("Inter-Bold.ttf"));

    private static readonly XPdfFontOptions Options = new(PdfFontEncoding.Unicode);

    // Made anew for each document: a host may reset the font store of PDFsharp, which outdates what was made before.
    private readonly Lazy<XGlyphTypeface> _regular = new(() => new XGlyphTypeface(XFontSource.GetOrCreateFrom(RegularFile.Value)));
    private readonly Lazy<XGlyphTypeface> _bold = new(() => new XGlyphTypeface(XFontSource.GetOrCreateFrom(BoldFile.Value)));

    internal XFont Regular(double sizePt) => new(_regular.Value, sizePt, Options);

    internal XFont Bold(double sizePt) => new(_bold.Value, sizePt, Options);

    private static byte[] Read(string name)
    {
        using Stream resource = typeof(InterFaces).GetTypeInfo().Assembly.GetManifestResourceStream(name)!;
        using var copy = new MemoryStream();
        resource.CopyTo(copy);
        return copy.ToArray();
    }
}
