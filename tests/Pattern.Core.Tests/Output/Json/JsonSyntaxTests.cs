using System.Text.Json;
using Pattern.Core.Diagnostics;
using Pattern.Core.Output;

namespace Pattern.Core.Tests.Output;

/// <summary>The grammar of RFC 8259, rule by rule, and where it leaves the choice, ours. System.Text.Json reads the same texts beside it.</summary>
public class JsonSyntaxTests
{
    // Section 2 (white space), 3 (values), 4 (objects), 5 (arrays), 6 (numbers), 7 (strings).
    [Theory]
    [InlineData("null")]
    [InlineData(" \t\r\n true \t\r\n ")]
    [InlineData("false")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("[[],{}, [ ] ]")]
    [InlineData("{\"\":0}")]
    [InlineData("{\"a\":{\"b\":[1,2,{\"c\":null}]}}")]
    [InlineData("0")]
    [InlineData("-0")]
    [InlineData("-0.0e-0")]
    [InlineData("123.456E+78")]
    [InlineData("1e01")]
    [InlineData("0e1")]
    [InlineData("1.7976931348623157e308")]
    [InlineData("\"\"")]
    [InlineData("\"\\\"\\\\\\/\\b\\f\\n\\r\\t\\u00e9\\uD83D\\uDE00\"")]
    [InlineData("\"\\ud83d\\ude00\\uFFFF\\u0000\"")]
    [InlineData("\"é李😀\u007F\u2028\"")]
    public void Scan_OfJson_ReadsWhatAnotherReaderReads(string text)
    {
        JsonText scanned = JsonScanner.Scan(text);
        using JsonDocument other = JsonDocument.Parse(text);

        if (other.RootElement.ValueKind == JsonValueKind.String)
        {
            Assert.Equal(other.RootElement.GetString(), scanned.TextOf(0));
        }
        else if (other.RootElement.ValueKind == JsonValueKind.Number)
        {
            Assert.True(scanned.TryNumber(0, out double number));
            Assert.Equal(System.BitConverter.DoubleToInt64Bits(other.RootElement.GetDouble()), System.BitConverter.DoubleToInt64Bits(number));
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("nul")]
    [InlineData("nulL")]
    [InlineData("True")]
    [InlineData("nulll")]
    [InlineData("undefined")]
    [InlineData("NaN")]
    [InlineData("-NaN")]
    [InlineData("Infinity")]
    [InlineData("-Infinity")]
    [InlineData("[")]
    [InlineData("]")]
    [InlineData("[1")]
    [InlineData("[1,")]
    [InlineData("[1,]")]
    [InlineData("[,1]")]
    [InlineData("[1,,2]")]
    [InlineData("[1 2]")]
    [InlineData("[1}")]
    [InlineData("[] []")]
    [InlineData("1 2")]
    [InlineData("{")]
    [InlineData("{\"a\"")]
    [InlineData("{\"a\":")]
    [InlineData("{\"a\" 1}")]
    [InlineData("{\"a\":1,}")]
    [InlineData("{,}")]
    [InlineData("{a:1}")]
    [InlineData("{'a':1}")]
    [InlineData("{1:1}")]
    [InlineData("{\"a\":1]")]
    [InlineData("{\"a\"::1}")]
    [InlineData("{\"a\":1 \"b\":2}")]
    [InlineData("// c\n1")]
    [InlineData("1 // c")]
    [InlineData("/* c */ 1")]
    [InlineData("# c\n1")]
    [InlineData("01")]
    [InlineData("-01")]
    [InlineData("+1")]
    [InlineData("-")]
    [InlineData("--1")]
    [InlineData(".5")]
    [InlineData("5.")]
    [InlineData("5.e1")]
    [InlineData("1e")]
    [InlineData("1e+")]
    [InlineData("1e1.5")]
    [InlineData("0x10")]
    [InlineData("1_000")]
    [InlineData("1,5")]
    [InlineData("１")]
    [InlineData("\"")]
    [InlineData("\"a")]
    [InlineData("\"\\")]
    [InlineData("\"\\\"")]
    [InlineData("\"\\x41\"")]
    [InlineData("\"\\'\"")]
    [InlineData("\"\\u12\"")]
    [InlineData("\"\\u123g\"")]
    [InlineData("\"\\U0041\"")]
    [InlineData("\"a\nb\"")]
    [InlineData("\"a\tb\"")]
    [InlineData("\"a\0b\"")]
    [InlineData("\"a\u001Fb\"")]
    [InlineData("'a'")]
    [InlineData("\0")]
    [InlineData("1\0")]
    [InlineData("\u00A01")]
    [InlineData("\u20281")]
    [InlineData("\v1")]
    [InlineData("[\u000C]")]
    [InlineData("\uFEFF\uFEFF1")]
    [InlineData("1\uFEFF")]
    public void Scan_OfWhatIsNotJson_IsRefusedAsAnotherReaderRefusesIt(string text)
    {
        Assert.Equal(DiagnosticCode.JsonMalformed, Assert.Throws<DocumentFormatException>(() => JsonScanner.Scan(text)).Code);
        Assert.ThrowsAny<JsonException>(() => JsonDocument.Parse(text));
    }

    // Section 8.2 leaves halves of surrogate pairs open; 8.1 lets a reader skip a byte order mark.
    [Theory]
    [InlineData("\"\\uD800\"")]
    [InlineData("\"\\uDC00\"")]
    [InlineData("\"\\uD800x\"")]
    [InlineData("\"\\uD800\\n\"")]
    [InlineData("\"\\uD800\\uD800\"")]
    [InlineData("\"\\uDC00\\uD800\"")]
    [InlineData("{\"\\uD800\":1}")]
    public void Scan_OfHalfASurrogatePair_IsRefused(string text)
        => Assert.Equal(DiagnosticCode.JsonMalformed, Assert.Throws<DocumentFormatException>(() => JsonScanner.Scan(text)).Code);

    [Theory]
    [InlineData(0xD83D, "x")]
    [InlineData(0xDE00, "")]
    [InlineData(0xD83D, "\\n")]
    public void Scan_OfHalfASurrogatePairAsItIs_IsRefused(int half, string rest)
        => Assert.Equal(DiagnosticCode.JsonMalformed, Assert.Throws<DocumentFormatException>(() => JsonScanner.Scan("\"" + (char)half + rest + "\"")).Code);

    [Fact]
    public void Scan_OfAPairOfWhichHalfIsEscaped_IsOneCharacter()
        => Assert.Equal("😀", JsonScanner.Scan("\"\\uD83D" + '\uDE00' + "\"").TextOf(0));

    [Fact]
    public void Scan_WithAByteOrderMark_SkipsIt() => Assert.True(JsonScanner.Scan("\uFEFF 1").Root.Number(1, 1) == 1);

    [Theory]
    [InlineData("[1,\n {\"a/b~c\": tru}]", "/1/a~1b~0c", 2, 12)]
    [InlineData("[1,\r\n\r\n 2, x]", "/2", 3, 5)]
    [InlineData("{\"a\": 1\r \"b\"}", "/a", 2, 2)]
    [InlineData("{\"a\": 1, b}", "", 1, 10)]
    [InlineData("{\"a\": [[], [1, 2", "/a/1/1", 1, 17)]
    public void Fault_OfAnyText_SaysPathLineAndColumn(string text, string path, int line, int column)
    {
        DocumentFormatException fault = Assert.Throws<DocumentFormatException>(() => JsonScanner.Scan(text));

        Assert.Equal((path, line, column), (fault.Path, fault.Line, fault.Column));
    }
}
