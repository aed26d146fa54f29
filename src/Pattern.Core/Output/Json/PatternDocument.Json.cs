using System.Diagnostics.Contracts;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Pieces;
using Pattern.Core.Styling;

namespace Pattern.Core.Output;

/// <content>As JSON, in the format that <c>docs/pattern.schema.json</c> describes.</content>
public sealed partial class PatternDocument
{
    private const string Format = "pattern-core";
    private const int Version = 2;
    private const string Unit = "mm";
    private const int ReadAtOnce = 81_920;

    // Not the platform's own: it puts a sign for "unreadable" in the place of what it cannot read.
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The document as the text of a JSON file.</summary>
    /// <remarks>Same document, same characters, in any culture. Lines end in a line feed.</remarks>
    /// <exception cref="ConstructionException">A text has half of a surrogate pair or more than 10,000 characters, a panel more than 1,000 segments, a
    /// coordinate lies beyond 100 m, or all together is more than a file may hold.</exception>
    [Pure]
    public string ToJson()
    {
        var json = new JsonWriter();
        json.Begin('{').Name("format").Text(Format);
        json.Name("version").Whole(Version);
        json.Name("unit").Text(Unit);
        json.Name("body");
        BodyJson.Write(json, Block.Body);
        json.Name("method");
        MethodJson.Write(json, Block);
        BlockJson.Write(json, Block);
        json.Name("pieces").RequireEntries(Pieces.Pieces.Count);
        json.Begin('[');
        foreach (PatternPiece piece in Pieces.Pieces)
        {
            PieceJson.Write(json, piece);
        }

        json.End(']').End('}');
        return json.Finish();
    }

    /// <summary>Writes the document to a file, as a whole or not at all.</summary>
    /// <inheritdoc cref="ToJson"/>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public void SaveJson(string path)
    {
        Guard.Name(path, nameof(path));
        WholeFiles.Write(path, ToJson());
    }

    /// <summary>Writes the document to a stream, in UTF-8. The stream stays open.</summary>
    /// <inheritdoc cref="ToJson"/>
    /// <param name="stream">Receives the file, after the whole text was formed.</param>
    public void WriteJson(Stream stream)
    {
        Guard.NotNull(stream, nameof(stream));
        byte[] bytes = Utf8.GetBytes(ToJson());
        stream.Write(bytes, 0, bytes.Length);
    }

    /// <summary>Reads a document from the text of a JSON file, as a whole or not at all.</summary>
    /// <param name="text">The whole text, with or without a byte order mark.</param>
    /// <param name="methods">What a block can be drafted anew by; the methods that the library brings where it is left out, and its designs in any case. A block of another method is read as well.</param>
    /// <exception cref="DocumentFormatException">The text is no JSON, no pattern, of another version, or too large; or the library refuses what it says.</exception>
    public static PatternDocument FromJson(string text, MethodCatalogue? methods = null)
        => Read(JsonScanner.Scan(Guard.NotNull(text, nameof(text))).Root, methods ?? MethodCatalogue.BuiltIn);

    /// <summary>Reads a document from a JSON file, as a whole or not at all.</summary>
    /// <param name="path">The file, in UTF-8.</param>
    /// <param name="methods">What a block can be drafted anew by; the methods that the library brings where it is left out, and its designs in any case. A block of another method is read as well.</param>
    /// <exception cref="DocumentFormatException">The file is no JSON, no pattern, of another version, or too large; or the library refuses what it says.</exception>
    /// <exception cref="IOException">The file cannot be opened or read.</exception>
    public static PatternDocument LoadJson(string path, MethodCatalogue? methods = null)
    {
        Guard.Name(path, nameof(path));
        using FileStream stream = File.OpenRead(path);
        return ReadJson(stream, methods);
    }

    /// <summary>Reads a document from a stream, from where it stands to its end, as a whole or not at all. The stream stays open.</summary>
    /// <param name="stream">A JSON file in UTF-8. At most 16 MiB are read.</param>
    /// <param name="methods">What a block can be drafted anew by; the methods that the library brings where it is left out, and its designs in any case. A block of another method is read as well.</param>
    /// <exception cref="DocumentFormatException">The text is no JSON, no pattern, of another version, or too large; or the library refuses what it says.</exception>
    public static PatternDocument ReadJson(Stream stream, MethodCatalogue? methods = null)
    {
        Guard.NotNull(stream, nameof(stream));
        var bytes = new MemoryStream();
        var part = new byte[ReadAtOnce];
        int count;
        while ((count = stream.Read(part, 0, part.Length)) > 0)
        {
            bytes.Write(part, 0, count);
            if (bytes.Length > JsonLimits.Bytes)
            {
                string limit = JsonLimits.Bytes.ToString(CultureInfo.InvariantCulture);
                throw new DocumentFormatException(DiagnosticCode.JsonTooLarge, string.Empty, 1, 1, "more than " + limit + " bytes", limit);
            }
        }

        byte[] all = bytes.GetBuffer();
        try
        {
            return FromJson(Utf8.GetString(all, 0, (int)bytes.Length), methods);
        }
        catch (DecoderFallbackException e)
        {
            // What can be read up to there says where in the content it is.
            string found = "a byte that is not UTF-8, 0x" + all[e.Index].ToString("X2", CultureInfo.InvariantCulture);
            return Read(JsonScanner.Scan(Utf8.GetString(all, 0, e.Index), found).Root, methods ?? MethodCatalogue.BuiltIn);
        }
    }

    private static PatternDocument Read(JsonValue root, MethodCatalogue methods)
    {
        // First of all: whatever else a file of another format or version holds, it is not for this reader.
        if (root.TryProperty("format", out JsonValue format) && format.Text() != Format)
        {
            throw format.Fault(DiagnosticCode.JsonFormatUnknown, format.Described(), Format);
        }

        if (root.TryProperty("version", out JsonValue version) && version.Whole(int.MinValue, int.MaxValue) != Version)
        {
            throw version.Fault(DiagnosticCode.JsonVersionUnknown, version.Described(), JsonValue.Number(Version));
        }

        JsonObject said = root.Object("format", "version", "unit", "body", "method", "designs", "landmarks", "lines", "panels", "times", "seams", "pieces");
        if (said["unit"].Text() != Unit)
        {
            throw said["unit"].Fault(DiagnosticCode.JsonValueWrong, said["unit"].Described(), Unit);
        }

        BodyMeasurements body = BodyJson.Read(said["body"]);
        Block block = BlockJson.Read(body, WithBuiltInDesigns(methods), said);
        PatternPiece[] pieces = said["pieces"].List(PieceJson.Read);
        return new PatternDocument(block, said["pieces"].Make(() => PieceSet.Of(pieces)));
    }

    // Those of the caller come first: one may have the name of one that the library brings later on.
    private static MethodCatalogue WithBuiltInDesigns(MethodCatalogue methods) => BuiltInDesigns.All
        .Where(design => !methods.TryFindDesign(design.Name, out _))
        .Aggregate(methods, (catalogue, design) => catalogue.With(design));
}
