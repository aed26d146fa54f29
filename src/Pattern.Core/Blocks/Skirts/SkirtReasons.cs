using System;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>Says why the darts of a quarter are not what the shaping table gives.</summary>
internal static class SkirtReasons
{
    // Sums of halves and quarters of inches may end a few bits off in millimetres.
    private const double SameMm = 1e-6;

    /// <summary>Records a step where what is drafted differs from the table and nobody asked for it.</summary>
    /// <param name="sheet">Where the step is recorded.</param>
    /// <param name="quarter">The quarter, with its shaping decided.</param>
    /// <param name="width">The quarter at the hip, less what the centre comes in at the waist.</param>
    /// <param name="tableIntake">What the table gives the darts of the quarter.</param>
    /// <param name="plan">What the caller asked for.</param>
    /// <param name="options">The caps.</param>
    internal static void Say(DraftingSheet sheet, SkirtQuarter quarter, WorkedLength width, WorkedLength tableIntake, DartPlan plan, SkirtOptions options)
    {
        SkirtShaping shaping = quarter.Shaping;
        double drafted = shaping.DartCount == 0 ? 0 : shaping.DartIntake.ValueMm;
        double table = tableIntake.ValueMm;
        if (plan.IntakeMm is not null || plan.Count == 0 || Math.Abs(drafted - table) < SameMm)
        {
            return;
        }

        string panel = quarter.Names.Panel.Text;
        double room = width.ValueMm - shaping.Waist.ValueMm;
        if (drafted > table || (drafted > 0 && Math.Abs(drafted - (room - options.LargestSideShapingMm)) < SameMm))
        {
            SayWhatSideCannotTake(sheet, panel, width, shaping, tableIntake, drafted, options);
        }
        else if (room <= 0)
        {
            sheet.Note("Nothing to draw here. The {0} waist is as wide as the hip or wider: it takes no dart, though the table gives {1}.", panel, tableIntake);
        }
        else if (drafted == 0)
        {
            sheet.Note("Nothing to draw here. The {0} takes no dart: {1} is narrower than the {2}. The side seam takes it in.", panel, Narrow(tableIntake, room), WorkedLength.GivenMm("narrowest dart worth sewing", options.SmallestDartMm, LengthSource.Setting));
        }
        else
        {
            sheet.Note("Nothing to draw here. The {0} has no more to take in than {1}: its darts take that, and not {2}.", panel, width - shaping.Waist, tableIntake);
        }
    }

    private static void SayWhatSideCannotTake(
        DraftingSheet sheet, string panel, WorkedLength width, SkirtShaping shaping, WorkedLength tableIntake, double draftedMm, SkirtOptions options)
    {
        bool isSewn = tableIntake.ValueMm >= options.SmallestDartMm - SameMm;
        WorkedLength side = isSewn ? width - shaping.Waist - tableIntake : width - shaping.Waist;
        WorkedLength most = WorkedLength.GivenMm("largest side shaping", options.LargestSideShapingMm, LengthSource.Setting);
        if (!isSewn)
        {
            sheet.Note("Nothing to draw here. The {0} side seam would take in {1}, more than the {2}: the darts take the {3}.", panel, side, most, WorkedLength.DrawnMm("rest", draftedMm));
            return;
        }

        WorkedLength over = WorkedLength.DrawnMm("rest", draftedMm - tableIntake.ValueMm);
        sheet.Note("Nothing to draw here. The {0} side seam would take in {1}, more than the {2}: the rest goes to the darts, {3}.", panel, side, most, tableIntake.Bare() + over);
    }

    private static WorkedLength Narrow(WorkedLength tableIntake, double roomMm) => tableIntake.ValueMm > roomMm ? Plain(roomMm) : tableIntake.Bare();

    private static WorkedLength Plain(double valueMm) => WorkedLength.GivenMm(null, valueMm);

    // The figure, without the working that is printed under the shaping already.
    private static WorkedLength Bare(this WorkedLength length) => WorkedLength.GivenMm(length.Name, length.ValueMm);
}
