using System.IO;
using System.IO.Compression;

namespace Pattern.Core.Pdf;

/// <summary>Compresses as the Flate filter of PDF wants it: a zlib stream (RFC 1950) with its checksum, which PDFsharp leaves out and strict readers miss.</summary>
internal static class ZlibStream
{
    // RFC 1950: deflate with a window of 32 KiB, the default level, no dictionary.
    private const byte Method = 0x78;
    private const byte Flags = 0x9C;

    // RFC 1950, Adler-32: the largest prime below 65,536, and how many bytes 32 bits can sum before the remainder is due.
    private const uint Prime = 65521;
    private const int Batch = 5552;

    internal static byte[] Compress(byte[] content)
    {
        using var output = new MemoryStream((content.Length / 2) + 64);
        output.WriteByte(Method);
        output.WriteByte(Flags);
        using (var deflate = new DeflateStream(output, CompressionLevel.Optimal, leaveOpen: true))
        {
            deflate.Write(content, 0, content.Length);
        }

        uint checksum = Adler32(content);
        for (int shift = 24; shift >= 0; shift -= 8)
        {
            output.WriteByte((byte)(checksum >> shift));
        }

        return output.ToArray();
    }

    private static uint Adler32(byte[] content)
    {
        uint low = 1;
        uint high = 0;
        for (int start = 0; start < content.Length; start += Batch)
        {
            int end = System.Math.Min(start + Batch, content.Length);
            for (int i = start; i < end; i++)
            {
                low += content[i];
                high += low;
            }

            low %= Prime;
            high %= Prime;
        }

        return (high << 16) | low;
    }
}
