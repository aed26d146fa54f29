using System;
using System.Linq;
using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>How far the waistline of a skirt rises, drops and comes in at centre and side, where the caller does not say.</summary>
/// <remarks>Common practice, no source: a seat lifts the back, a hip bone the side, a belly the front.</remarks>
internal static class SkirtHeights
{
    // What the centre takes, the side need not: but no more than there is, or the side would have to go out again.
    internal static WorkedLength? ComesIn(SkirtQuarter quarter, WorkedLength suppression, double askedMm)
    {
        WorkedLength asked = WorkedLength.GivenMm(quarter.Names.Centre + " waist in", askedMm, LengthSource.Setting);
        return suppression.ValueMm <= 0 ? null : suppression.ValueMm < askedMm ? asked.AtMost(suppression).Named(quarter.Names.Centre + " waist in") : asked;
    }

    // Where the sides go out or hardly come in there is no hip bone to rise over.
    internal static WorkedLength? SideLift(SkirtOptions options, SkirtCustoms customs, double bothSidesInMm, SkirtQuarter back, SkirtQuarter front)
        => options.Waistline == Waistline.Level ? null
            : options.SideLiftMm is { } asked ? asked == 0 ? null : WorkedLength.GivenMm("side lift", asked, LengthSource.Setting)
            : bothSidesInMm < customs.SideLift.ValueMm ? OnTape(customs, "side lift", bothSidesInMm, back, front)
            : customs.SideLift;

    internal static WorkedLength? CentreBackLift(SkirtOptions options, SkirtCustoms customs, SkirtQuarter back, WorkedLength? sideLift)
    {
        const string Name = "CB lift";
        if (options.Waistline == Waistline.Level)
        {
            return null;
        }

        if (options.CentreBackLiftMm is { } asked)
        {
            return WorkedLength.GivenMm(Name, asked, LengthSource.Setting);
        }

        if (options.Waistline == Waistline.LoweredBack)
        {
            return WorkedLength.GivenMm(Name, -customs.LoweredBackMm);
        }

        if (back.Shaping.DartCount > 0)
        {
            return customs.CentreBackLift;
        }

        // Without darts the waistline is one curve between a centre and a side that lean: it turns back where it does not climb by a share of what its ends turn.
        const double LeastShare = 0.12;
        const double RiseOverWidth = 1.5;
        double liftMm = sideLift?.ValueMm ?? 0;
        double chosenMm = back.SideInMm < 0
            ? Math.Min(-back.SideInMm * RiseOverWidth, customs.MostCentreLiftMm)
            : Math.Min(customs.CentreBackLift.ValueMm, liftMm / 2);
        double sideTurn = 2 * back.SideInMm / -back.SideFoot.Position.YMm;
        double centreTurn = back.ComesIn is { } comesIn ? 2 * comesIn.ValueMm / -back.CentreFoot.Position.YMm : 0;
        if (sideTurn >= 0)
        {
            double shareRad = LeastShare * (centreTurn + sideTurn);
            double leastMm = liftMm - (back.Shaping.Waist.ValueMm * (sideTurn - shareRad));
            double mostMm = liftMm + (back.Shaping.Waist.ValueMm * (centreTurn - shareRad));
            chosenMm = Math.Max(Math.Min(chosenMm, mostMm), Math.Min(leastMm, customs.MostCentreLiftMm));
        }

        return chosenMm == customs.CentreBackLift.ValueMm ? customs.CentreBackLift : OnTape(customs, Name, chosenMm, back);
    }

    internal static WorkedLength? CentreFrontDrop(SkirtOptions options, ShapingReading reading)
        => options.Waistline == Waistline.Level ? null
            : options.CentreFrontDropMm is { } asked ? WorkedLength.GivenMm("centre front drop", asked, LengthSource.Setting)
            : options.Waistline == Waistline.LoweredBack ? null
            : reading.FrontDrop;

    // With its working, where the shaping gave one.
    internal static WorkedLength Rise(WorkedLength drop)
        => drop is { Operation: WorkedOperation.Product, Factor: -1, First: { } rise } ? rise : WorkedLength.GivenMm("centre front rise", -drop.ValueMm, drop.Source);

    private static WorkedLength[] WidthsOf(SkirtQuarter[] quarters) => [.. quarters.SelectMany(quarter => new[] { quarter.HipWidth, quarter.Shaping.Waist, quarter.Shaping.DartIntake })];

    // What the draft chooses itself is a figure of the tape; null where nothing is left of it.
    private static WorkedLength? OnTape(SkirtCustoms customs, string name, double valueMm, params SkirtQuarter[] inViewOf)
    {
        double marks = Math.Floor((valueMm / customs.TapeMarkMm) + 1e-9);
        return marks > 0 ? WorkedLength.GivenMm(name, marks * customs.TapeMarkMm, WidthsOf(inViewOf)) : null;
    }
}
