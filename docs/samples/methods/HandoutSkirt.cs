using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using UnitsNet;
using static Pattern.Core.Samples.Methods.Figures;

namespace Pattern.Core.Samples.Methods;

/// <summary>The skirt of a university handout, published under an open licence (WikiEducator): one dart in each quarter, and much at the side.</summary>
public sealed class HandoutSkirt() : DraftingMethod("handout skirt", "1", Length, HipDepth)
{
    /// <summary>From the waist level to the hem.</summary>
    public static MethodSetting<Length> Length { get; } = MethodSetting.OfLength("length", Tape.Centimeters("60"), Tape.Centimeters("30"), Tape.Centimeters("120")).Printed();

    /// <summary>From waist to hip, where the body's own was not measured.</summary>
    public static MethodSetting<Length> HipDepth { get; } = MethodSetting.OfLength("hip depth", Tape.Centimeters("20"), Tape.Centimeters("16"), Tape.Centimeters("26"));

    /// <inheritdoc/>
    protected override void Draft(BlockDraft draft)
    {
        WorkedLength waist = draft.Take(BodyMeasurement.WaistGirth);
        WorkedLength hip = draft.Take(BodyMeasurement.HipGirth);
        WorkedLength box = (hip.Half() + Cm("half ease", 2.5)).Named("half box");
        WorkedLength backHip = (hip.Quarter() + Cm("back share", 2)).Named("back hip width");
        WorkedLength dart = Cm("dart", 2);
        WorkedLength backWaist = (waist.Quarter() + dart + Cm("back ease", 1.2)).Named("back waist");
        WorkedLength frontWaist = (waist.Quarter() + dart).Named("front waist");
        WorkedLength beyond = Cm("beyond the middle", 1);
        HalfSkirt.Draft(draft, new HalfFigures(
            box,
            draft.Take(Length),
            draft.Body.TryFind(BodyMeasurement.WaistToHip, out _) ? draft.Take(BodyMeasurement.WaistToHip) : draft.Take(HipDepth),
            Cm("side lift", 1),
            new QuarterFigures(backHip, backWaist, (backWaist - dart).Named("closed back waist"), [new(backWaist.Half() + beyond, dart, Cm("dart length", 12))]),
            new QuarterFigures((box - backHip).Named("front hip width"), frontWaist, waist.Quarter().Named("closed front waist"), [new(frontWaist.Half() + beyond, dart, Cm("dart length", 10))])));
    }
}
