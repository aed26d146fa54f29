using System;
using System.Globalization;
using System.Text;
using Pattern.Core.Output;

namespace Pattern.Core.Pdf;

/// <summary>What a document says about itself, in the two forms that PDF knows.</summary>
internal sealed class PdfProperties
{
    internal const string Creator = "Pattern.Core";

    private PdfProperties(string title, string subject, string author, DateTime? date)
    {
        Title = title;
        Subject = subject;
        Author = author;
        Date = date;
    }

    internal string Title { get; }

    internal string Subject { get; }

    /// <summary>Empty for none.</summary>
    internal string Author { get; }

    internal DateTime? Date { get; }

    internal static PdfProperties Of(Drawing drawing, PdfOptions options) => new(
        PdfWords.Clean(drawing.Title), PdfWords.Clean(options.Subject ?? drawing.Description), PdfWords.Clean(options.Author ?? string.Empty), options.Date);

    /// <summary>The date as PDF writes it (ISO 32000, 7.9.4), without a time zone.</summary>
    internal string? PdfDate() => Date?.ToString("'D:'yyyyMMddHHmmss", CultureInfo.InvariantCulture);

    /// <summary>The properties as an XMP packet (ISO 16684-1). PDFsharp's own does not escape what stands in it, and holds random ids.</summary>
    internal byte[] ToXmp()
    {
        var xmp = new StringBuilder("<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n");
        xmp.Append("<x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\"><rdf:Description rdf:about=\"\"")
            .Append(" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\">\n");
        Language(xmp, "dc:title", Title);
        Language(xmp, "dc:description", Subject);
        if (Author.Length > 0)
        {
            xmp.Append("<dc:creator><rdf:Seq><rdf:li>").Append(Escaped(Author)).Append("</rdf:li></rdf:Seq></dc:creator>\n");
        }

        xmp.Append("<xmp:CreatorTool>").Append(Creator).Append("</xmp:CreatorTool>\n");
        if (Date is { } date)
        {
            xmp.Append("<xmp:CreateDate>").Append(date.ToString("yyyy-MM-dd'T'HH:mm:ss", CultureInfo.InvariantCulture)).Append("</xmp:CreateDate>\n");
        }

        xmp.Append("</rdf:Description></rdf:RDF></x:xmpmeta>\n<?xpacket end=\"r\"?>");
        return Encoding.UTF8.GetBytes(xmp.ToString());
    }

    private static void Language(StringBuilder xmp, string element, string words) => xmp.Append('<').Append(element).Append("><rdf:Alt><rdf:li xml:lang=\"x-default\">")
        .Append(Escaped(words)).Append("</rdf:li></rdf:Alt></").Append(element).Append(">\n");

    private static string Escaped(string words) => words.Replace("&", "&amp;").Replace("<", "&lt;").Replace(">", "&gt;");
}
