using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using UnitsNet;
using static Pattern.Core.Samples.Methods.Figures;

namespace Pattern.Core.Samples.Methods;

/// <summary>The tailored skirt block of a handbook: fixed darts, no shaping table. W. Aldrich, Metric Pattern Cutting for Women's Wear; its figures from memory.</summary>
public sealed class TailoredSkirt() : DraftingMethod("tailored skirt", "1", Length, HipDepth)
{
    /// <summary>From the waist level to the hem.</summary>
    public static MethodSetting<Length> Length { get; } = MethodSetting.OfLength("length", Tape.Centimeters("60"), Tape.Centimeters("30"), Tape.Centimeters("120")).Printed();

    /// <summary>From waist to hip, where the body's own was not measured.</summary>
    public static MethodSetting<Length> HipDepth { get; } = MethodSetting.OfLength("hip depth", Tape.Centimeters("20.6"), Tape.Centimeters("16"), Tape.Centimeters("26"));

    /// <inheritdoc/>
    protected override void Draft(BlockDraft draft)
    {
        WorkedLength waist = draft.Take(BodyMeasurement.WaistGirth);
        WorkedLength hip = draft.Take(BodyMeasurement.HipGirth);
        WorkedLength box = (hip.Half() + Cm("half ease", 1.5)).Named("half box");
        WorkedLength backHip = (hip.Quarter() + Cm("back share", 1.5)).Named("back hip width");
        WorkedLength backWaist = (waist.Quarter() + Cm("back darts and ease", 4.25)).Named("back waist");
        WorkedLength frontWaist = (waist.Quarter() + Cm("front dart and ease", 2.25)).Named("front waist");
        WorkedLength closed = (waist.Quarter() + Cm("waist ease of a quarter", 0.25)).Named("closed quarter waist");
        WorkedLength intake = Cm("dart", 2);

        // The back darts stand at the thirds of the waistline, the front dart at its half: common practice, no source.
        HalfSkirt.Draft(draft, new HalfFigures(
            box,
            draft.Take(Length),
            draft.Body.TryFind(BodyMeasurement.WaistToHip, out _) ? draft.Take(BodyMeasurement.WaistToHip) : draft.Take(HipDepth),
            Cm("side lift", 1.25),
            new QuarterFigures(backHip, backWaist, closed, [new(backWaist.DividedBy(3), intake, Cm("dart length", 14)), new(backWaist.DividedBy(3).Times(2), intake, Cm("dart length", 12.5))]),
            new QuarterFigures((box - backHip).Named("front hip width"), frontWaist, closed, [new(frontWaist.Half(), intake, Cm("dart length", 10))])));
    }
}
