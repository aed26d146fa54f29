using System.IO;
using System.IO.Compression;
using System.Linq;
using System.Text;

namespace Pattern.Core.Pdf.Tests;

public class ZlibStreamTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(5552)]
    [InlineData(5553)]
    [InlineData(400_000)]
    public void Compress_AnyLength_IsReadBackByThePlatform(int length)
    {
        byte[] content = Enumerable.Range(0, length).Select(i => (byte)(255 - ((i * i) % 7))).ToArray();

        using var stream = new ZLibStream(new MemoryStream(ZlibStream.Compress(content)), CompressionMode.Decompress);
        using var copy = new MemoryStream();
        stream.CopyTo(copy);

        Assert.Equal(content, copy.ToArray());
    }

    // The checksum that is printed everywhere for this word (from memory).
    [Fact]
    public void Compress_AKnownWord_EndsWithItsChecksum()
        => Assert.Equal([0x11, 0xE6, 0x03, 0x98], ZlibStream.Compress(Encoding.ASCII.GetBytes("Wikipedia"))[^4..]);
}
