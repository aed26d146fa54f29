using System;
using System.Collections.Generic;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Tests.Blocks;

/// <summary>What the waistline of a trued skirt has to be, said without the engine that trues it: read off the finished panels.</summary>
public class SkirtWaistTests
{
    [Fact]
    public void Draft_EveryMeasuredBody_HasAWaistThatMeetsItsConditions()
    {
        double easeMm = new SkirtOptions().WaistEaseMm;
        var worst = new SortedDictionary<string, double>(StringComparer.Ordinal);
        void Off(string what, double by) => worst[what] = Math.Max(worst.TryGetValue(what, out double so) ? so : 0, Math.Abs(by));
        int count = 0;
        foreach (BodyMeasurements body in Bodies.Ansur)
        {
            SkirtBlock block = SkirtBlock.For(body).Draft();
            double quarterMm = (body.RequireMm(BodyMeasurement.WaistGirth, "this test") + easeMm) / 4;
            foreach (Panel panel in new[] { block.Back, block.Front })
            {
                PanelEdge waist = panel.FindEdge(EdgeName.Waist);
                CurvePath closed = waist.Closed();
                Off("closed length", closed.LengthMm - quarterMm);
                Off("square to the side", panel.CornerRad(0) - (Math.PI / 2));
                Off("square to the centre", panel.CornerRad(panel.EdgesRaw.Length - 1) - (Math.PI / 2));
                for (int i = 1; i < closed.Segments.Count; i++)
                {
                    Off("smooth over the darts", closed.Segments[i - 1].EndDirection.TurnRadTo(closed.Segments[i].StartDirection));
                }

                foreach (Dart dart in waist.Darts)
                {
                    Off("legs", dart.LegLengthMm(Toward.Start) - dart.LegLengthMm(Toward.End));
                }
            }

            Off("side seams", block.Back.FindEdge(EdgeName.SideSeam).SewnLengthMm() - block.Front.FindEdge(EdgeName.SideSeam).SewnLengthMm());
            count++;
        }

        Assert.Equal(1986, count);
        Assert.All(worst, off => Assert.True(off.Value <= 2e-9, $"{off.Key} is off by {off.Value}"));
    }
}
