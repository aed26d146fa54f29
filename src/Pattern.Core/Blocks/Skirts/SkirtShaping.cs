using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>How one quarter gets from its hip width to its waist: what darts take, and what is left for the side seam.</summary>
internal sealed class SkirtShaping
{
    private SkirtShaping(WorkedLength waist, WorkedLength dartIntake, WorkedLength eachDart, WorkedLength[] lengths)
    {
        Waist = waist;
        DartIntake = dartIntake;
        EachDart = eachDart;
        DartLengths = lengths;
    }

    /// <summary>The quarter's finished waist, darts closed.</summary>
    internal WorkedLength Waist { get; }

    /// <summary>The intake of all darts together.</summary>
    internal WorkedLength DartIntake { get; }

    /// <summary>The intake of one dart.</summary>
    internal WorkedLength EachDart { get; }

    /// <summary>The length of each dart, from the centre; its number is the number of darts.</summary>
    internal WorkedLength[] DartLengths { get; }

    internal int DartCount => DartLengths.Length;

    /// <summary>The waist laid off from the centre, darts open.</summary>
    internal double OpenWaistMm => Waist.ValueMm + (DartCount == 0 ? 0 : DartIntake.ValueMm);

    /// <summary>Decides the darts of a quarter.</summary>
    /// <param name="panel">For messages.</param>
    /// <param name="hipWidth">The quarter at the hip, less what the centre comes in at the waist.</param>
    /// <param name="waist">The quarter's finished waist.</param>
    /// <param name="tableIntake">What the shaping table gives all darts of the panel.</param>
    /// <param name="plan">What the caller asked for.</param>
    /// <param name="usualLength">The length of the first dart where the caller says none.</param>
    /// <param name="twoAboveMm">A quarter waist above this takes two darts.</param>
    /// <param name="customs">What is usual where the caller does not say.</param>
    /// <param name="depths">The levels: no dart ends below the lower hip.</param>
    /// <param name="options">The caps.</param>
    internal static SkirtShaping Decide(
        PanelName panel,
        WorkedLength hipWidth,
        WorkedLength waist,
        WorkedLength tableIntake,
        DartPlan plan,
        WorkedLength usualLength,
        double twoAboveMm,
        SkirtCustoms customs,
        SkirtDepths depths,
        SkirtOptions options)
    {
        WorkedLength suppression = (hipWidth - waist).Named(panel.Text + " suppression");
        WorkedLength intake = plan.IntakeMm is { } asked
            ? WorkedLength.GivenMm(panel.Text + " darts", asked, LengthSource.Setting)
            : WithinCaps(suppression, tableIntake, options);
        int count = CountOf(intake, plan, waist.ValueMm > twoAboveMm ? 2 : 1, options);
        if (count == 0)
        {
            return new SkirtShaping(waist, Nothing, Nothing, []);
        }

        // Under the name of the table's figure only where it is that figure.
        intake = intake.Named(panel.Text + (Math.Abs(intake.ValueMm - tableIntake.ValueMm) < SameMm ? " dart intake" : " darts"));
        WorkedLength each = count == 1 ? intake : intake.DividedBy(count).Named("each " + panel.Text + " dart");
        WorkedLength[] lengths = LengthsOf(panel.Text, each, count, plan, usualLength, customs, depths);
        RefuseWrongLengths(panel, lengths, depths.LowerHip.ValueMm);
        return new SkirtShaping(waist, intake, each, lengths);
    }

    // Each further one shorter; not shorter than the usual range of darts, unless the caller says by how much.
    private static WorkedLength[] LengthsOf(
        string panel, WorkedLength each, int count, DartPlan plan, WorkedLength usualLength, SkirtCustoms customs, SkirtDepths depths)
    {
        var lengths = new WorkedLength[count];
        lengths[0] = plan.LengthMm is { } length ? WorkedLength.GivenMm(panel + " dart length", length, LengthSource.Setting) : NoTuck(panel, usualLength, each, depths.UpperHip, customs.ShortestDartMm);
        WorkedLength shortening = plan.GivenShorteningMm is { } shorter ? WorkedLength.GivenMm("shorter by", shorter, LengthSource.Setting) : customs.Shortening;
        double leastMm = plan.GivenShorteningMm is null ? Math.Min(customs.ShortestDartMm, lengths[0].ValueMm) : double.NegativeInfinity;
        for (int i = 1; i < count; i++)
        {
            WorkedLength next = lengths[i - 1] - shortening;
            next = next.ValueMm < leastMm - RoundingMm ? next.AtLeast(WorkedLength.GivenMm("shortest usual dart", leastMm)) : next;
            lengths[i] = next.Named(Ordinals[i] + panel + " dart length");
        }

        return lengths;
    }

    // In words: a number before a figure would read as part of it.
    private static readonly string[] Ordinals = [string.Empty, "second ", "third ", "fourth "];

    private static readonly WorkedLength Nothing = WorkedLength.GivenMm("no darts", 0);

    // Half of the suppression or what the table says; never more than there is to take out; what is too narrow to sew goes to the side
    // seam, and what the side seam cannot take goes back.
    private static WorkedLength WithinCaps(WorkedLength suppression, WorkedLength tableIntake, SkirtOptions options)
    {
        double smallest = options.SmallestDartMm;
        double most = suppression.ValueMm;
        WorkedLength intake = tableIntake.ValueMm > most && most > 0 ? tableIntake.AtMost(suppression) : tableIntake;
        if (most <= 0 || intake.ValueMm < smallest - RoundingMm)
        {
            intake = Nothing;
        }

        double over = most - intake.ValueMm - options.LargestSideShapingMm;
        if (over > 0 && intake.ValueMm + over >= smallest)
        {
            intake = suppression - WorkedLength.GivenMm("largest side shaping", options.LargestSideShapingMm, LengthSource.Setting);
        }

        return intake;
    }

    // A dart much longer than it is wide is a tuck that shows; one shorter than the usual range of 3 to 6 in is none. Neither ends near the hip of a small body.
    private static WorkedLength NoTuck(string panel, WorkedLength usualLength, WorkedLength each, WorkedLength upperHip, double shortestMm)
    {
        const double MostOverIntake = 8;
        const double MostOverHip = 0.75;
        WorkedLength length = usualLength.ValueMm > (upperHip.ValueMm * MostOverHip) + RoundingMm ? usualLength.AtMost(upperHip.Times(MostOverHip)) : usualLength;
        if (each.ValueMm * MostOverIntake < length.ValueMm - RoundingMm)
        {
            double leastMm = Math.Min(shortestMm, length.ValueMm);
            WorkedLength tuck = each.Times(MostOverIntake);
            length = length.AtMost(tuck.ValueMm < leastMm ? WorkedLength.GivenMm("shortest usual dart", leastMm) : tuck);
        }

        return length.First is null ? length : length.Named(panel + " dart length");
    }

    // Sums of halves and quarters of inches may end a few bits off in millimetres.
    private const double RoundingMm = 1e-9;
    private const double SameMm = 1e-6;

    private static int CountOf(WorkedLength intake, DartPlan plan, int least, SkirtOptions options)
    {
        if (intake.ValueMm <= 0)
        {
            return 0;
        }

        if (plan.Count is { } count)
        {
            return count;
        }

        double darts = Math.Ceiling((intake.ValueMm - RoundingMm) / options.LargestDartMm);
        darts = intake.ValueMm >= least * options.SmallestDartMm ? Math.Max(darts, least) : darts;
        return (int)Math.Min(darts, DartPlan.MostDarts);
    }

    private static void RefuseWrongLengths(PanelName panel, WorkedLength[] lengths, double lowerHipMm)
    {
        foreach (WorkedLength length in lengths)
        {
            if (length.ValueMm < 10 || length.ValueMm > lowerHipMm)
            {
                throw new ConstructionException(DiagnosticCode.DartLengthImpossible, panel, length.Value, Length.FromMillimeters(10), Length.FromMillimeters(lowerHipMm))
                {
                    Step = "placing the darts",
                    Landmark = panel.Text,
                    Measured = length.Value,
                    Allowed = Length.FromMillimeters(lowerHipMm),
                };
            }
        }
    }
}
