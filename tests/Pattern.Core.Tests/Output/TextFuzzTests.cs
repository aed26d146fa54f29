using System;
using System.IO;
using System.Linq;
using System.Text;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Sizing;
using UnitsNet;
using UnitsNet.Units;
using Xunit.Abstractions;

namespace Pattern.Core.Tests.Output;

/// <summary>Every reader of text, given damaged texts from a fixed seed: it reads them or refuses them with a code, and nothing else comes out.</summary>
/// <remarks>The gate takes a sample; <c>.ci/long</c> says with PATTERN_LONG_FUZZ how many in all.</remarks>
public class TextFuzzTests(ITestOutputHelper output)
{
    private const string Bodies = "who,waist,hip\nRosalind,29 1/2 in,\"39 3/4\"\n\"Peter\nQuince\",70 cm,98 cm\nMoth,26,36\n";
    private const string Pieces = "0123456789 .,;:/-+\"'\n\r\t{}[]\\eEnN\u00BD\u2033\u00A0\uFEFF\uD83Dinchmcft";

    private static readonly string[] Lengths = ["29 1/2", "29 1/2 in", "74.9 cm", "5' 3 1/4\"", "1 yd 4 in", "29\u00BD", "-3/8 in", "749 mm"];

    private static readonly BodyColumns Columns = BodyColumns.In(LengthUnit.Inch).NamedBy("who").With(BodyMeasurement.WaistGirth, "waist").With(BodyMeasurement.HipGirth, "hip");

    private static readonly string Json = PatternDocument.Of(SkirtBlock.For(Tests.Blocks.Bodies.Example).Draft()).ToJson();

    [Fact]
    public void Readers_OfDamagedTexts_ReadOrRefuseThem()
    {
        int cases = int.TryParse(Environment.GetEnvironmentVariable("PATTERN_LONG_FUZZ"), out int asked) ? asked : 4_000;
        var random = new Random(20260314);
        int read = 0;
        for (int i = 0; i < cases; i++)
        {
            // JSON is long: one in fifty.
            int reader = i % 50 == 0 ? 3 : random.Next(3);
            string text = Damaged(reader switch { 0 => Lengths[random.Next(Lengths.Length)], 3 => Json, _ => Bodies }, random);
            try
            {
                read += Read(reader, text) ? 1 : 0;
            }
            catch (Exception refusal) when (refusal is FormatException or ArgumentException or ConstructionException)
            {
                Assert.True(refusal.Message.StartsWith("PC", StringComparison.Ordinal), $"case {i}, reader {reader}: {refusal}");
                Assert.InRange(refusal.Message.Length, 10, 2_000);
            }
            catch (Exception crash) when (crash is not Xunit.Sdk.XunitException)
            {
                Assert.Fail($"case {i}, reader {reader}, {Convert.ToBase64String(Encoding.Unicode.GetBytes(text.Length > 2_000 ? text[..2_000] : text))}: {crash}");
            }
        }

        output.WriteLine($"{cases} damaged texts, {read} of them read, the others refused with a code or row by row");
        Assert.InRange(read, 1, cases - 1);
    }

    private static bool Read(int reader, string text)
    {
        switch (reader)
        {
            case 0:
                Length length = Tape.Parse(text, LengthUnit.Inch);
                return double.IsFinite(length.Millimeters) ? true : throw new InvalidOperationException("a length that is no number");
            case 1:
                BodyRow[] rows = [.. Columns.Read(new StringReader(text))];
                Assert.All(rows, row => Assert.True(row.Body is null != row.Problem is null));
                return rows.Any(row => row.Body is not null);
            case 2:
                return SizeTable.Read("fuzz", "derived", Columns, new StringReader(text)).Sizes.Count >= 2;
            default:
                return PatternDocument.FromJson(text) is not null;
        }
    }

    private static string Damaged(string text, Random random)
    {
        var damaged = new StringBuilder(text);
        for (int i = random.Next(1, 5); i > 0; i--)
        {
            int at = random.Next(damaged.Length + 1);
            int length = Math.Min(random.Next(1, 9), damaged.Length - at);
            switch (random.Next(4))
            {
                case 0:
                    damaged.Remove(at, length);
                    break;
                case 1:
                    damaged.Insert(at, Pieces[random.Next(Pieces.Length)]);
                    break;
                case 2:
                    damaged.Insert(at, damaged.ToString(at, length));
                    break;
                default:
                    damaged.Insert(at, new string(Pieces[random.Next(Pieces.Length)], random.Next(1, 400)));
                    break;
            }
        }

        return damaged.ToString();
    }
}
