using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Output;

/// <summary>Somebody who has never seen the drawing draws the skirt from the printed sheet alone: it has to be the skirt that was drafted.</summary>
public class PaperHandTests
{
    // What cutters accept between two seams that they walk by hand: common practice, no source.
    private const double SixteenthMm = 25.4 / 16;

    public static TheoryData<string> Bodies => new(
        from body in new[] { "29.5,39.75,26 in", "24,34,24 in", "26,37,24 in", "36,42,26 in", "40,43,24 in", "22,40,24 in", "78,104,62 cm", "64,92,60 cm", "110,124,65 cm", "67.3,93.1,58 cm" }
        from variant in new[] { "usual", "fitted", "level", "two front darts" }
        select body + " " + variant);

    [Theory]
    [MemberData(nameof(Bodies))]
    public void ToStepsText_DrawnFromThePrintedSentencesAlone_IsTheSkirt(string body)
    {
        string[] words = body.Split(' ', ',');
        bool isMetric = words[3] == "cm";
        LengthUnit unit = isMetric ? LengthUnit.Centimeter : LengthUnit.Inch;
        SkirtBlockBuilder skirt = SkirtBlock.For(BodyMeasurements.In(unit).With(BodyMeasurement.WaistGirth, words[0]).With(BodyMeasurement.HipGirth, words[1]))
            .WithLength(Tape.Parse(words[2], unit));
        SkirtBlock block = (words[4] switch
        {
            "fitted" => skirt.Fitted(),
            "level" => skirt.WithWaistline(Waistline.Level),
            "two" => skirt.WithFrontDarts(new DartPlan { Count = 2 }),
            _ => skirt,
        }).Draft();
        double unitMm = isMetric ? 10 : 25.4;

        PaperHand hand = PaperHand.Draw(block.ToStepsText());

        Assert.Empty(hand.Puzzles);
        Assert.Equal(["back waistline", "front waistline"], hand.Waists.Keys);
        Assert.Equal(["back side seam", "front side seam"], hand.Seams.Keys);
        List<string> wrong = [];
        foreach ((Panel panel, string name) in new[] { (block.Back, "back waistline"), (block.Front, "front waistline") })
        {
            PanelEdge edge = panel.FindEdge(EdgeName.Waist);
            PaperWaist drawn = hand.Waists[name];
            double first = (drawn.AtFirst.Sum(PaperHand.LengthOf) * unitMm) - edge.SewnLength.Millimeters;
            double closed = (drawn.Closed * unitMm) - edge.SewnLength.Millimeters;
            double lineAtFirst = Farthest(edge, drawn.AtFirst, unitMm);
            double line = Farthest(edge, drawn.Pieces, unitMm);

            // What four rounded halves of intakes are off together, the hand finds when it measures over the folds, and puts right at the side.
            if (Math.Abs(first) > 2 * SixteenthMm || lineAtFirst > SixteenthMm || Math.Abs(closed) > SixteenthMm / 2 || line > 1.5 * SixteenthMm
                || Math.Abs((drawn.Said * unitMm) - edge.SewnLength.Millimeters) > SixteenthMm / 4)
            {
                wrong.Add(FormattableString.Invariant($"{name}: closed off by {first:0.00} mm, then by {closed:0.00} mm, the line by {lineAtFirst:0.00} mm, then by {line:0.00} mm; said {drawn.Said * unitMm:0.00}"));
            }
        }

        wrong.AddRange(from seam in hand.Seams where Math.Abs(seam.Value.Drawn - seam.Value.Said) * unitMm > SixteenthMm select seam.ToString());
        Assert.True(wrong.Count == 0, string.Join("; ", wrong));
    }

    private static double Farthest(PanelEdge edge, (double X, double Y)[][] pieces, double unitMm)
        => edge.Stretches.Zip(pieces, (part, piece) => piece.Max(p => part.ClosestTo(new Point2D(p.X * unitMm, p.Y * unitMm)).Distance.Millimeters)).Max();
}
