using System;
using System.Collections.Generic;
using System.IO;
using System.Security.Cryptography;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;

namespace Pattern.Core.Pdf;

/// <summary>Writes a finished document, so that the same one always gives the same bytes.</summary>
/// <remarks>PDFsharp prepares a document while it saves it: subsets of fonts, numbers of objects, and with them random ids, the clock and an unescaped packet of properties. So it
/// saves into nothing first; then what is random is replaced, every stream is compressed, and the objects are written here, as ISO 32000-1, 7.5 says.</remarks>
internal sealed class PdfFile
{
    // Version 1.7, and four bytes beyond ASCII that tell programs that the file is binary.
    private const string Header = "%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n";

    private const int LeastWorthCompressing = 64;

    // ISO 32000-1, 9.9.2: six capital letters before the name of a font that is not there as a whole.
    private const int TagLength = 6;

    private readonly PdfDocument _document;
    private readonly PdfProperties _properties;

    internal PdfFile(PdfDocument document, PdfProperties properties)
    {
        _document = document;
        _properties = properties;
    }

    internal byte[] Write()
    {
        _document.Save(Stream.Null);
        PdfObject[] objects = _document.Internals.GetAllObjects();
        Array.Sort(objects, (one, other) => NumberOf(one).CompareTo(NumberOf(other)));
        SetProperties();
        NameFonts(objects);
        CompressStreams(objects);
        return Assemble(objects);
    }

    private static int NumberOf(PdfObject item) => PdfInternals.GetObjectNumber(item);

    private void SetProperties()
    {
        PdfDictionary info = _document.Info;
        info.Elements.Clear();
        info.Elements.SetString("/Title", _properties.Title);
        info.Elements.SetString("/Subject", _properties.Subject);
        info.Elements.SetString("/Creator", PdfProperties.Creator);
        if (_properties.Author.Length > 0)
        {
            info.Elements.SetString("/Author", _properties.Author);
        }

        if (_properties.PdfDate() is { } date)
        {
            info.Elements.SetString("/CreationDate", date);
        }

        PdfDictionary metadata = _document.Internals.Catalog.Elements.GetDictionary("/Metadata")!;
        metadata.Stream.Value = _properties.ToXmp();
        metadata.Elements.SetInteger("/Length", metadata.Stream.Length);
    }

    // The tag need only differ between the fonts of one file.
    private static void NameFonts(PdfObject[] objects)
    {
        var tags = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (PdfObject item in objects)
        {
            if (item is PdfDictionary dictionary)
            {
                NameFont(dictionary, "/BaseFont", tags);
                NameFont(dictionary, "/FontName", tags);
            }
        }
    }

    private static void NameFont(PdfDictionary dictionary, string key, Dictionary<string, string> tags)
    {
        string name = dictionary.Elements.GetName(key);
        int plus = name.IndexOf('+');
        if (plus != TagLength + 1)
        {
            return;
        }

        string font = name.Substring(plus + 1);
        if (!tags.TryGetValue(font, out string? tag))
        {
            tag = "PATCO" + (char)('A' + tags.Count);
            tags.Add(font, tag);
        }

        dictionary.Elements.SetName(key, "/" + tag + "+" + font);
    }

    private static void CompressStreams(PdfObject[] objects)
    {
        foreach (PdfObject item in objects)
        {
            // Metadata stays readable for programs that only search for it.
            if (item is PdfDictionary { Stream: { } stream } dictionary
                && stream.Length >= LeastWorthCompressing
                && dictionary.Elements["/Filter"] is null
                && dictionary.Elements.GetName("/Type") != "/Metadata")
            {
                stream.Value = ZlibStream.Compress(stream.Value);
                dictionary.Elements.SetName("/Filter", "/FlateDecode");
                dictionary.Elements.SetInteger("/Length", stream.Length);
            }
        }
    }

    private byte[] Assemble(PdfObject[] objects)
    {
        using var file = new MemoryStream();
        Append(file, Header);
        long[] places = new long[NumberOf(objects[objects.Length - 1]) + 1];
        foreach (PdfObject item in objects)
        {
            places[NumberOf(item)] = file.Position;
            _document.Internals.WriteObject(file, item);
        }

        string id = Identify(file);
        long tablePlace = file.Position;
        Append(file, FormattableString.Invariant($"xref\n0 {places.Length}\n0000000000 65535 f \n"));
        for (int i = 1; i < places.Length; i++)
        {
            Append(file, places[i] > 0 ? FormattableString.Invariant($"{places[i]:0000000000} 00000 n \n") : "0000000000 65535 f \n");
        }

        int root = NumberOf(_document.Internals.Catalog);
        int info = NumberOf(_document.Info);
        Append(file, FormattableString.Invariant($"trailer\n<</Size {places.Length}/Root {root} 0 R/Info {info} 0 R/ID[<{id}><{id}>]>>\nstartxref\n{tablePlace}\n%%EOF\n"));
        return file.ToArray();
    }

    // ISO 32000-1, 14.4 wants an id that no other file has; what is in the file tells it from others best.
    private static string Identify(MemoryStream file)
    {
        const int IdBytes = 16;
        using var sha = SHA256.Create();
        byte[] hash = sha.ComputeHash(file.GetBuffer(), 0, (int)file.Length);
        return BitConverter.ToString(hash, 0, IdBytes).Replace("-", string.Empty);
    }

    private static void Append(MemoryStream file, string text)
    {
        foreach (char c in text)
        {
            file.WriteByte((byte)c);
        }
    }
}
