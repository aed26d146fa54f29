using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>What is known to be impossible from lengths alone, before the line that it concerns is drawn.</summary>
/// <remarks>A hip curve is a parabola: where it leans sideways by half of its height, it ends at 45 degrees. Seams that lean farther than that at the waist
/// or at the hem are no seams of a skirt, and the lines square to them run into each other.</remarks>
internal static class SkirtRefusals
{
    private const double MostLean = 0.5;

    // Between the centre of the waistline and the upper hip line, where the side seam begins to curve.
    private const double LeastRiseMm = 10;

    // As at the hip.
    private const double LeastHemMm = 50;

    // Darts that turn the waistline by more than this in a quarter turn it once round in the whole skirt: a cone so flat that it is a disc.
    private const double MostTurnRad = Math.PI / 2;

    /// <summary>Refuses levels that leave no room for each other, or for the hem.</summary>
    internal static void RefuseWrongLevels(SkirtLevels levels, double lengthMm)
    {
        if (levels.LowerHipMm < levels.UpperHipMm + 1)
        {
            throw new ConstructionException(DiagnosticCode.HipLevelsCrossed, levels.UpperHip, levels.LowerHip)
            {
                Step = "drawing the levels",
                Landmark = SkirtNames.LowerHipLine.Text,
                Measured = levels.LowerHip,
                Allowed = levels.UpperHip,
            };
        }

        double lowestMm = Math.Max(levels.LowerHipMm, levels.YokeMm);
        if (lengthMm < lowestMm + 10)
        {
            Length least = Length.FromMillimeters(lowestMm + 10);
            throw new ConstructionException(DiagnosticCode.SkirtTooShort, Length.FromMillimeters(lengthMm), Length.FromMillimeters(lowestMm), least)
            {
                Step = "drawing the box",
                Landmark = SkirtNames.CentreBackHem.Text,
                Measured = Length.FromMillimeters(lengthMm),
                Allowed = least,
            };
        }
    }

    /// <summary>Refuses a panel without room at the hip.</summary>
    internal static void RefuseNoWidth(SkirtQuarter quarter)
    {
        const double LeastMm = 50;
        if (quarter.HipWidth.ValueMm < LeastMm)
        {
            throw new ConstructionException(DiagnosticCode.PanelTooNarrow, quarter.Names.Panel, quarter.HipWidth.Value, Length.FromMillimeters(LeastMm))
            {
                Step = "dividing the box",
                Landmark = SkirtNames.SideLowerHip.Text,
                Measured = quarter.HipWidth.Value,
                Allowed = Length.FromMillimeters(LeastMm),
            };
        }
    }

    /// <summary>Refuses darts that turn the waistline too far, and a waistline that they make too wide for the hip.</summary>
    internal static void RefuseWideWaist(PanelName panel, WorkedLength hipWidth, SkirtShaping shaping, double upperHipMm)
    {
        double intakeMm = shaping.DartCount == 0 ? 0 : shaping.DartIntake.ValueMm;
        double turnRad = TurnRad(shaping.DartLengths, intakeMm);
        if (turnRad > MostTurnRad)
        {
            double allowedMm = IntakeThatTurns(shaping.DartLengths, intakeMm);
            throw new ConstructionException(
                DiagnosticCode.DartsTurnTooFar, panel, Mm(intakeMm), Angle.FromRadians(turnRad), Angle.FromRadians(MostTurnRad), Mm(allowedMm))
            {
                Step = "placing the darts",
                Landmark = panel.Text,
                Measured = Mm(intakeMm),
                Allowed = Mm(allowedMm),
            };
        }

        double openMm = shaping.Waist.ValueMm + intakeMm;
        double mostMm = hipWidth.ValueMm + (MostLean * upperHipMm);
        if (openMm > mostMm)
        {
            throw new ConstructionException(DiagnosticCode.WaistWiderThanHip, panel, Mm(openMm), Mm(intakeMm), hipWidth.Value, Mm(mostMm))
            {
                Step = "laying off the waist",
                Landmark = panel.Text,
                Measured = Mm(openMm),
                Allowed = Mm(mostMm),
            };
        }
    }

    /// <summary>Refuses a waistline that begins as low as the hip.</summary>
    internal static void RefuseLowCentre(string landmark, double loweredMm, double upperHipMm)
    {
        double mostMm = upperHipMm - LeastRiseMm;
        if (loweredMm > mostMm)
        {
            throw new ConstructionException(DiagnosticCode.WaistAtHip, landmark, Mm(loweredMm), Mm(mostMm), Mm(upperHipMm))
            {
                Step = "shaping the waistline",
                Landmark = landmark,
                Measured = Mm(loweredMm),
                Allowed = Mm(mostMm),
            };
        }
    }

    /// <summary>Refuses a hem that comes in more steeply than a seam can, or until nothing is left of it.</summary>
    internal static void RefuseNarrowHem(SkirtQuarter quarter, double sideInMm, double centreInMm, double belowHipMm)
    {
        double comesInMm = Math.Max(sideInMm, centreInMm);
        double mostMm = MostLean * belowHipMm;
        if (comesInMm > mostMm)
        {
            throw new ConstructionException(DiagnosticCode.HemTooSteep, quarter.Names.Panel, Mm(comesInMm), Mm(belowHipMm), Mm(mostMm))
            {
                Step = "bringing the hem in",
                Landmark = quarter.Names.Panel.Text,
                Measured = Mm(comesInMm),
                Allowed = Mm(mostMm),
            };
        }

        double hemMm = quarter.HipWidth.ValueMm - sideInMm - centreInMm;
        if (hemMm < LeastHemMm)
        {
            throw new ConstructionException(DiagnosticCode.HemTooNarrow, quarter.Names.Panel, Mm(hemMm), Mm(LeastHemMm))
            {
                Step = "bringing the hem in",
                Landmark = quarter.Names.Panel.Text,
                Measured = Mm(hemMm),
                Allowed = Mm(LeastHemMm),
            };
        }
    }

    private static double TurnRad(WorkedLength[] dartLengths, double intakeMm)
    {
        double turnRad = 0;
        foreach (WorkedLength length in dartLengths)
        {
            turnRad += 2 * Math.Atan(intakeMm / dartLengths.Length / 2 / length.ValueMm);
        }

        return turnRad;
    }

    // By halving: the more intake, the more turn. Ends at a micrometre, after some thirty steps.
    private static double IntakeThatTurns(WorkedLength[] dartLengths, double tooMuchMm)
    {
        double low = 0;
        double high = tooMuchMm;
        for (int i = 0; i < 60 && high - low > 1e-3; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = TurnRad(dartLengths, middle) > MostTurnRad ? (low, middle) : (middle, high);
        }

        return low;
    }

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
