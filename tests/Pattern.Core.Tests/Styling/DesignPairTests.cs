using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Styling;
using Pattern.Core.Tests.Blocks;

namespace Pattern.Core.Tests.Styling;

/// <summary>Every design of the library after every other one: it is made and holds, or it is refused with its reason. Nothing in between.</summary>
public class DesignPairTests
{
    public static TheoryData<string> First => new(BuiltInDesigns.All.Select(design => design.Name));

    // The closed waist is measured with chords, by nothing that the report was made with.
    [Theory]
    [MemberData(nameof(First))]
    public void With_EveryDesignAfterThisOne_HoldsOrIsRefused(string first)
    {
        BlockDesign design = BuiltInDesigns.All.Single(one => one.Name == first);
        var faults = new List<string>();
        foreach (BodyMeasurements body in new[] { Bodies.Example, Bodies.Inches("24", "38"), Bodies.Inches("44", "44") })
        {
            Block block = SkirtBlock.For(body).Draft();
            Block once;
            try
            {
                once = block.With(design);
            }
            catch (ConstructionException e) when (e.Code == DiagnosticCode.DesignRefused)
            {
                continue;
            }

            foreach (BlockDesign then in BuiltInDesigns.All)
            {
                string pair = FormattableString.Invariant($"{first}, {then.Name} for {body}: ");
                try
                {
                    Block skirt = once.With(then);
                    double waist = Sewn.WaistMm(skirt);
                    double target = Sewn.WaistMm(once);
                    bool keepsWaist = !skirt.Panels.Any(panel => panel.TryFindEdge(EdgeName.Waist, out _)) || Math.Abs(waist - target) < 0.02 || ChangesWaist.Contains(then.Name);

                    // A zip too short for the hip to pass is what the report is there to say; it depends on the body.
                    bool holds = skirt.Report.Failures.All(failure => failure.Check.EndsWith("for the hip to pass", StringComparison.Ordinal));
                    if (!holds || !keepsWaist)
                    {
                        faults.Add(pair + waist + " of " + target + " " + string.Join("; ", skirt.Report.Failures));
                    }
                }
                catch (ConstructionException e) when (e.Code == DiagnosticCode.DesignRefused)
                {
                }
                catch (ConstructionException e)
                {
                    faults.Add(pair + e.Message);
                }
            }
        }

        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    // These cut the waist elsewhere; their own tests hold them to what it measures there.
    private static readonly string[] ChangesWaist = ["lowered waist", "contour band", "faced waist"];
}
