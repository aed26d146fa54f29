using System;
using System.Globalization;
using System.Linq;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.RegularExpressions;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Pdf;
using Pattern.Core.Pieces;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Foreign;

/// <summary>What a method that stands outside the library gets: all that the built-in ones do.</summary>
public class ForeignMethodTests
{
    private static BodyMeasurements Body => BodyMeasurements.In(LengthUnit.Inch).Named("Moth").With(BodyMeasurement.WaistGirth, "30").With(BodyMeasurement.HipGirth, "40");

    public static TheoryData<string> Methods => new("half apron", "full circle");

    private static MethodCatalogue Catalogue => MethodCatalogue.BuiltIn.With(new HalfApron()).With(CircleSkirt.Method);

    private static Block Draft(string method) => Catalogue.Find(method).For(Body).Draft();

    [Fact]
    public void Assembly_SeesNoInternals()
    {
        string[] friends = [.. typeof(Block).Assembly.GetCustomAttributes(typeof(InternalsVisibleToAttribute), false).Cast<InternalsVisibleToAttribute>().Select(friend => friend.AssemblyName)];

        Assert.NotEmpty(friends);
        Assert.DoesNotContain(typeof(ForeignMethodTests).Assembly.GetName().Name, friends);
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Draw_ShowsEveryEdgeAndTheTitle(string method)
    {
        Block block = Draft(method);

        Drawing drawing = block.Draw();
        string svg = drawing.ToSvg();

        foreach (Panel panel in block.Panels)
        {
            foreach (PanelEdge edge in panel.Edges)
            {
                Assert.Contains($"data-panel=\"{panel.Name}\"", svg);
                Assert.Contains($"data-edge=\"{edge.Name}\"", svg);
            }

            Assert.Contains(panel.Name.Text.ToUpperInvariant(), Words(drawing));
        }

        string heading = char.ToUpperInvariant(method[0]) + method[1..];
        Assert.Equal(heading + " for Moth", drawing.Title);
        Assert.Contains(heading, Words(drawing));
        Assert.All(block.Remarks, remark => Assert.Contains(Words(drawing), word => remark.StartsWith(word, StringComparison.Ordinal)));
        Assert.Contains(block.Report.Verdict(), Words(drawing));
        Assert.All(block.Trued.Landmarks, landmark => Assert.Contains(landmark.Name.Text, Words(drawing)));
        Assert.True(drawing.TryFindLayer(LayerName.TestSquares, out _));
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Steps_SayEverySentenceAndEverySetting(string method)
    {
        Block block = Draft(method);

        string text = block.ToStepsText();

        Assert.StartsWith(block.Title, text);
        Assert.All(block.Steps, step => Assert.Matches(Sentence(step), text));
        Assert.All(block.Method.PrintedSettings, setting => Assert.Contains(setting.Name, text));
        Assert.All(block.Remarks, remark => Assert.Contains(remark, text));

        // The checks close the text, figures in the reader's own unit.
        string checks = text.Substring(text.IndexOf(block.Report.Verdict(), StringComparison.Ordinal));
        Assert.All(block.Report.Findings, finding => Assert.Contains($"{finding.Check}, {finding.Place}: ", checks));
        Assert.DoesNotContain(" mm", checks);
    }

    // 30 / 4 + 2 in over the front; a quarter of 30 in, and of the circle of radius 30 / (2 pi) + 22 in.
    [Fact]
    public void Report_HoldsAgainstClosedForms()
    {
        Assert.Equal(9.5, Draft("half apron").FindPanel(HalfApron.Apron).FindEdge(EdgeName.Waist).SewnLength.Inches, 1e-9);
        Panel back = Draft("full circle").FindPanel(PanelName.Back);
        Assert.Equal(7.5, back.FindEdge(EdgeName.Waist).SewnLength.Inches, 1e-9);
        Assert.Equal(((30 / (2 * Math.PI)) + 22) * Math.PI / 2, back.FindEdge(EdgeName.Hem).SewnLength.Inches, 1e-9);
        Assert.All(["half apron", "full circle"], method => Assert.True(Draft(method).Report.Passed, Draft(method).Report.ToString()));
        Assert.Contains(Draft("full circle").Report.ToCsv().Split('\n'), row => row.StartsWith("side_seam", StringComparison.Ordinal) && row.EndsWith(",558.800000,558.800000,0.010000,true", StringComparison.Ordinal));
    }

    [Fact]
    public void Report_WithAdvice_PassesAndSaysIt()
    {
        Block block = new HalfApron().For(Body).With(HalfApron.Depth, Tape.Inches("36")).Draft();

        Assert.True(block.Report.Passed);
        Finding advice = Assert.Single(block.Report.Advice);
        Assert.Equal(FindingVerdict.Advice, advice.Verdict);
        Assert.False(advice.Passed || advice.Failed);
        Assert.Contains("depth,apron,914.400000,762.000000,0.000000,advice\n", block.Report.ToCsv());
        Assert.Equal("All 4 checks passed.", block.Report.Verdict());
        Assert.Contains("A long apron catches on stairs. Make it end above the knee.", block.ToStepsText());
        Assert.Contains("catches on stairs", string.Join(" ", Words(block.Draw())));
    }

    [Fact]
    public void Report_OfAChangedPanel_IsMeasuredAgain()
    {
        Block block = Draft("half apron");
        Panel darted = block.FindPanel(HalfApron.Apron).TakeInDart(EdgeName.Waist.Middle, Tape.Inches("1"), Tape.Inches("4"));

        Block changed = block.WithPanel(darted);

        Assert.True(block.Report.Passed);
        Assert.Equal(["waist edge", "darts"], changed.Report.Failures.Select(failure => failure.Check));
        Assert.Contains(changed.Draw().Layers, layer => layer.Name == LayerName.Warning);
    }

    [Fact]
    public void Alternatives_AreDrawnWhereTheyAreAskedFor()
    {
        Block block = Draft("half apron");

        Assert.False(block.Draw().TryFindLayer(LayerName.Alternatives, out _));
        Assert.True(block.Draw(new DrawingOptions { Alternatives = ["longer apron"] }).TryFindLayer(LayerName.Alternatives, out DrawingLayer? layer));
        Assert.Contains(layer!.Marks.OfType<TextMark>(), mark => mark.Text == "longer apron");
        Assert.Equal(DiagnosticCode.AlternativeUnknown, Assert.Throws<ConstructionException>(() => block.Draw(new DrawingOptions { Alternatives = ["other"] })).Code);
    }

    [Fact]
    public void ReadOffTape_ComparesTheAimsOfTheMethod()
    {
        Finding effect = Assert.Single(new HalfApron().For(Body).With(HalfApron.Cover, Tape.Inches("1 1/3")).Draft().ReadOffTape(TapeStep.Half));

        Assert.Equal("half width", effect.Check);
        Assert.Equal(9, ((Length)effect.Measured).Inches, 1e-9);
        Assert.Equal(7.5 + (4 / 3.0), ((Length)effect.Before!).Inches, 1e-9);
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Pieces_OfItsPanels_AreCutPrintedAndSent(string method)
    {
        Block block = Draft(method);

        PieceSet pieces = PieceSet.Of([.. block.Panels.Select(panel => PatternPiece.From(panel).WithAllowance(Tape.Inches("1/2")).CutOnFold(EdgeName.Centre).Cut(1, ClothName.Main))]);

        Assert.All(pieces.Pieces, piece => Assert.True(piece.CutLine.IsClosed));
        string dxf = pieces.Pieces.ToDxf();
        Assert.All(block.Panels, panel => Assert.Contains(panel.Name.Text, dxf, StringComparison.OrdinalIgnoreCase));
        byte[] pdf = block.Draw().ToPdf(SheetLayout.TiledOn(PaperSize.A4));
        Assert.Equal("%PDF-", Encoding.ASCII.GetString(pdf, 0, 5));
        Assert.StartsWith("<svg", pieces.Draw().ToSvg()[pieces.Draw().ToSvg().IndexOf("<svg", StringComparison.Ordinal)..]);
    }

    [Fact]
    public void Values_OutOfRange_AreRefusedNamingTheSetting()
    {
        Assert.Contains("depth", Assert.Throws<ArgumentOutOfRangeException>(() => new HalfApron().For(Body).With(HalfApron.Depth, Tape.Inches("41"))).Message);
        Assert.Contains("ties", Assert.Throws<ArgumentOutOfRangeException>(() => new HalfApron().For(Body).With(HalfApron.Ties, "none")).Message);
        Assert.Equal(DiagnosticCode.BodyMeasurementMissing, Assert.Throws<ConstructionException>(() => new HalfApron().For(BodyMeasurements.In(LengthUnit.Inch)).Draft()).Code);
    }

    // The sentence with its landmarks and lines as the step has them, and a figure for each length: how much of its working stands there is for the sheet to say.
    private static string Sentence(Step step) => $"(?m)^ *{step.Number}\\. " + Regex.Replace(Regex.Escape(step.Template), "\\\\\\{([0-9]+)}", place =>
    {
        StepWord word = step.Words[int.Parse(place.Groups[1].Value, CultureInfo.InvariantCulture)];
        return word.Length is null ? Regex.Escape(word.ToString()) : ".*[0-9].*";
    }) + "$";

    private static string[] Words(Drawing drawing) => [.. drawing.Layers.SelectMany(layer => layer.Marks).OfType<TextMark>().Select(mark => mark.Text)];
}
