using System;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.RegularExpressions;
using System.Threading;
using System.Threading.Tasks;
using System.Xml.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;
using Pattern.Core.Tests.Measurement;
using SvgPathProperties;
using UnitsNet;
using static Pattern.Core.Tests.Output.SvgFile;

namespace Pattern.Core.Tests.Output;

public class SvgOutputTests
{
    private static readonly string[] DataAttributes = ["data-panel", "data-edge", "data-dart", "data-leg", "data-cap"];

    public static TheoryData<string> Skirts => DrawnSkirts.Names;

    // Read back by an XML reader, measured by SvgPathProperties, compared with the model.
    [Theory]
    [MemberData(nameof(Skirts))]
    public void ToSvg_EveryStretchOfSeamLine_IsAPathOfItsOwnAsLongAsInTheModel(string skirt)
    {
        SkirtBlock block = DrawnSkirts.Draft(skirt);
        XElement[] paths = [.. Paths(block.Draw().ToSvg()).Where(path => path.Attribute("data-edge") is not null)];

        foreach (Panel panel in new[] { block.Back, block.Front })
        {
            foreach (PanelEdge edge in panel.Edges)
            {
                XElement[] drawn = [.. paths.Where(path => Value(path, "data-panel") == panel.Name.Text && Value(path, "data-edge") == edge.Name.Text)];
                Assert.Equal(edge.Stretches.Count, drawn.Length);
                for (int i = 0; i < drawn.Length; i++)
                {
                    Assert.Equal(edge.Stretches[i].Length.Millimeters, Measured(drawn[i]), 0.01);
                }
            }
        }

        Assert.Equal(block.Back.Edges.Concat(block.Front.Edges).Sum(edge => edge.Stretches.Count), paths.Length);
        Assert.Equal(["centre", "hem", "side", "waist"], paths.Select(path => Value(path, "data-edge")).Distinct().OrderBy(name => name, StringComparer.Ordinal));
        Assert.Equal(["back", "front"], paths.Select(path => Value(path, "data-panel")).Distinct().OrderBy(name => name, StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Skirts))]
    public void ToSvg_EveryDart_HasTwoStraightLegsFromSeamLineToApexAndACap(string skirt)
    {
        SkirtBlock block = DrawnSkirts.Draft(skirt);
        Drawing drawing = block.Draw();
        XElement[] paths = [.. Paths(drawing.ToSvg()).Where(path => path.Attribute("data-dart") is not null)];

        foreach (Panel panel in new[] { block.Back, block.Front })
        {
            foreach (Dart dart in panel.Darts)
            {
                XElement[] own = [.. paths.Where(path => Value(path, "data-panel") == panel.Name.Text && Value(path, "data-dart") == dart.Number.ToString(CultureInfo.InvariantCulture))];
                Assert.Equal(3, own.Length);
                foreach (Toward toward in new[] { Toward.Start, Toward.End })
                {
                    XElement leg = own.Single(path => Value(path, "data-leg") == (toward == Toward.Start ? "centre" : "side"));
                    double[] numbers = Numbers(leg);
                    Assert.Matches("^M[^A-Z]+L[^A-Z]+$", Value(leg, "d"));
                    AssertAt(toward == Toward.Start ? dart.StartLeg : dart.EndLeg, drawing, numbers[0], numbers[1]);
                    AssertAt(dart.Apex, drawing, numbers[2], numbers[3]);
                    Assert.Null(leg.Attribute("data-cap"));
                }

                XElement cap = own.Single(path => path.Attribute("data-cap") is not null);
                Assert.Equal("centre", Value(cap, "data-cap"));
                Assert.Null(cap.Attribute("data-leg"));
                Assert.Equal(dart.Cap.Length.Millimeters, Measured(cap), 0.01);
            }
        }

        Assert.Equal(3 * block.Back.Darts.Concat(block.Front.Darts).Count(), paths.Length);
    }

    // Sewn together, the stretches of a panel's outline end where the next begins: the drawing alone closes.
    [Theory]
    [MemberData(nameof(Skirts))]
    public void ToSvg_OutlineReadFromTheFileAlone_Closes(string skirt)
    {
        XElement[] paths = [.. Paths(DrawnSkirts.Drawn(skirt).ToSvg())];
        foreach (string panel in new[] { "back", "front" })
        {
            (double X, double Y)[] ends = [.. paths
                .Where(path => Value(path, "data-panel") == panel && (path.Attribute("data-edge") ?? path.Attribute("data-leg")) is not null)
                .SelectMany(path => new[] { First(path), Last(path) })];

            // Every end meets exactly one other: at corners two edges, at legs a stretch and a leg, at apexes two legs.
            Assert.All(ends, end => Assert.Equal(2, ends.Count(other => Math.Abs(other.X - end.X) < 0.001 && Math.Abs(other.Y - end.Y) < 0.001)));
        }
    }

    [Theory]
    [MemberData(nameof(Skirts))]
    public void ToSvg_LinesThatAreNotSewn_CarryNoDataAttributes(string skirt)
    {
        XElement root = XDocument.Parse(DrawnSkirts.Drawn(skirt).ToSvg()).Root!;
        string[] sewn = ["seam-lines", "darts"];
        XElement[] others = [.. root.Elements().Where(group => !sewn.Contains(Value(group, "id"))).SelectMany(group => group.DescendantsAndSelf())];

        Assert.Contains(others, element => element.Name.LocalName == "path");
        Assert.All(others, element => Assert.All(DataAttributes, name => Assert.Null(element.Attribute(name))));
        Assert.DoesNotContain(root.Elements(), group => Value(group, "id") == "alternatives");
    }

    [Fact]
    public void ToSvg_AnAlternativeThatWasAskedFor_IsAGroupOfItsOwnWithoutDataAttributes()
    {
        SkirtBlock block = DrawnSkirts.Draft("default");
        XElement root = XDocument.Parse(block.Draw(new DrawingOptions { Alternatives = [block.Alternatives[0].Name] }).ToSvg()).Root!;

        XElement group = Assert.Single(root.Elements(), one => Value(one, "id") == "alternatives");
        Assert.Contains(group.Descendants(), element => element.Name.LocalName == "path");
        Assert.All(group.DescendantsAndSelf(), element => Assert.All(DataAttributes, name => Assert.Null(element.Attribute(name))));
    }

    [Theory]
    [MemberData(nameof(Skirts))]
    public void ToSvg_AnySkirt_OneUserUnitIsOneMillimetreAndNoGeometryIsTransformed(string skirt)
    {
        XElement root = XDocument.Parse(DrawnSkirts.Drawn(skirt).ToSvg()).Root!;
        string[] box = Value(root, "viewBox")!.Split(' ');

        Assert.Equal(["0", "0"], box.Take(2));
        Assert.Equal(box[2] + "mm", Value(root, "width"));
        Assert.Equal(box[3] + "mm", Value(root, "height"));
        Assert.All(root.DescendantsAndSelf().Where(element => element.Attribute("transform") is not null), element => Assert.Equal("text", element.Name.LocalName));
        Assert.DoesNotContain(root.DescendantsAndSelf(), element => element.Name.LocalName is "script" or "image" or "use" or "style" or "foreignObject");
    }

    [Fact]
    public void ToSvg_Words_HavePaperAroundThem()
    {
        string svg = DrawnSkirts.Draft("default").Draw().ToSvg();

        Assert.Equal(svg.Split("<text").Length, svg.Split("paint-order=\"stroke\"").Length);
    }

    [Fact]
    public void ToSvg_AnySkirt_HasTitleDescriptionAndAGroupPerLayer()
    {
        Drawing drawing = DrawnSkirts.Drawn("default");
        XElement root = XDocument.Parse(drawing.ToSvg()).Root!;

        Assert.Equal("img", Value(root, "role"));
        Assert.Equal("Skirt block for Rosalind", root.Elements().Single(e => e.Name.LocalName == "title").Value);
        Assert.Contains("All ", root.Elements().Single(e => e.Name.LocalName == "desc").Value);
        Assert.Equal(
            drawing.Layers.Select(layer => layer.Name.Text.Replace(' ', '-')),
            root.Elements().Where(e => e.Name.LocalName == "g").Select(e => Value(e, "id")));
        string[] ids = [.. root.DescendantsAndSelf().Select(e => Value(e, "id")).OfType<string>()];
        Assert.Equal(ids.Length, ids.Distinct().Count());
    }

    [Fact]
    public void ToSvg_Numbers_HaveAtMostFourDecimalsNoExponentAndNoMinusZero()
    {
        string svg = DrawnSkirts.Drawn("fitted").ToSvg();
        string[] numbers = [.. XDocument.Parse(svg).Descendants().Where(e => e.Name.LocalName == "path").SelectMany(e => Regex.Split(Value(e, "d")!, "[MLCZ ]")).Where(s => s.Length > 0)];

        Assert.NotEmpty(numbers);
        Assert.All(numbers, number => Assert.Matches(@"^(0|-?[1-9]\d*|-?(0|[1-9]\d*)\.\d{0,3}[1-9])$", number));
    }

    [Theory]
    [InlineData(0, "0")]
    [InlineData(-0.00004, "0")]
    [InlineData(-0.00005, "-0.0001")]
    [InlineData(1e-9, "0")]
    [InlineData(12.34565, "12.3457")]
    [InlineData(-1.5, "-1.5")]
    [InlineData(100, "100")]
    [InlineData(0.05, "0.05")]
    public void Number_RoundsToTheTenThousandth(double value, string expected) => Assert.Equal(expected, new StringBuilder().Number(value).ToString());

    // Closed form: every point of the path drawn for a circle lies on it.
    [Fact]
    public void ToSvg_Arcs_StayWithinAThousandthOfTheModel()
    {
        var arc = CircularArc.FromCentre(Point2D.FromMillimeters(300, 300), Length.FromMillimeters(250), Angle.FromDegrees(10), Angle.FromDegrees(300));
        var drawing = Drawing.Of(
            "arc",
            "an arc",
            BoundingBox.Around(Point2D.Origin, Point2D.FromMillimeters(600, 600)),
            [DrawingLayer.Of(LayerName.SeamLines, [PathMark.Of(CurvePath.FromArc(arc), LineRole.Seam)])]);

        XElement path = Paths(drawing.ToSvg()).Single();
        var measured = new SvgPath(Value(path, "d")!);

        Assert.Equal(arc.Length.Millimeters, measured.Length, 0.01);
        for (int i = 0; i <= 500; i++)
        {
            var point = measured.GetPointAtLength(measured.Length * i / 500);
            Assert.Equal(250, Math.Sqrt(Math.Pow(point.X - 300, 2) + Math.Pow(300 - point.Y, 2)), 0.001);
        }
    }

    [Theory]
    [MemberData(nameof(Cultures.Awkward), MemberType = typeof(Cultures))]
    public void ToSvg_AnyCulture_SameCharacters(string culture)
    {
        string expected = DrawnSkirts.Drawn("fitted").ToSvg();
        string steps = DrawnSkirts.Draft("fitted").ToStepsText();
        string csv = DrawnSkirts.Draft("fitted").Report.ToCsv();

        Cultures.Under(culture, () =>
        {
            SkirtBlock block = DrawnSkirts.Draft("fitted");
            Assert.Equal(expected, block.Draw().ToSvg());
            Assert.Equal(steps, block.ToStepsText());
            Assert.Equal(csv, block.Report.ToCsv());
        });
    }

    [Fact]
    public async Task ToSvg_EightThreadsOnOneBlock_SameCharacters()
    {
        SkirtBlock block = DrawnSkirts.Draft("two darts");
        string expected = DrawnSkirts.Drawn("two darts").ToSvg();
        using var start = new Barrier(8);

        string[] drawn = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Factory.StartNew(
            () =>
            {
                start.SignalAndWait();
                return block.Draw().ToSvg();
            },
            CancellationToken.None,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default)));

        Assert.All(drawn, svg => Assert.Equal(expected, svg));
    }

    [Fact]
    public void ToSvg_NameWithMarkupAndControlCharacters_ReadsBack()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example.Named("<b>Puck & \"Bottom\"</b>\u0001 \uD83D\uDC57\uD83D")).Draft();

        XElement root = XDocument.Parse(block.Draw().ToSvg()).Root!;

        Assert.Equal("Skirt block for <b>Puck & \"Bottom\"</b>\uFFFD \uD83D\uDC57\uFFFD", root.Elements().Single(e => e.Name.LocalName == "title").Value);
    }

    [Fact]
    public void WriteSvg_StreamAndWriter_WriteTheSameUtf8TextAndStayOpen()
    {
        Drawing drawing = DrawnSkirts.Drawn("default");
        using var stream = new MemoryStream();
        using var writer = new StringWriter();

        drawing.WriteSvg(stream);
        drawing.WriteSvg(writer);

        Assert.Equal(Encoding.UTF8.GetBytes(drawing.ToSvg()), stream.ToArray());
        Assert.Equal(drawing.ToSvg(), writer.ToString());
        Assert.True(stream.CanWrite);
    }

    [Fact]
    public void WriteSvg_StreamThatFails_LetsTheFaultThrough()
    {
        using var full = new FullStream();

        Assert.Throws<IOException>(() => DrawnSkirts.Drawn("default").WriteSvg(full));
    }

    private static double[] Numbers(XElement path)
        => [.. Regex.Matches(Value(path, "d")!, @"-?[\d.]+").Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture))];

    private static (double X, double Y) First(XElement path)
    {
        double[] numbers = Numbers(path);
        return (numbers[0], numbers[1]);
    }

    private static (double X, double Y) Last(XElement path)
    {
        double[] numbers = Numbers(path);
        return (numbers[numbers.Length - 2], numbers[numbers.Length - 1]);
    }

    private static void AssertAt(Point2D expected, Drawing drawing, double x, double y)
    {
        Assert.Equal(expected.X.Millimeters - drawing.Bounds.Left.Millimeters, x, 0.0001);
        Assert.Equal(drawing.Bounds.Top.Millimeters - expected.Y.Millimeters, y, 0.0001);
    }

    private sealed class FullStream : MemoryStream
    {
        public override void Write(byte[] buffer, int offset, int count) => throw new IOException("No space left on device.");

        public override void Write(ReadOnlySpan<byte> buffer) => throw new IOException("No space left on device.");
    }
}
