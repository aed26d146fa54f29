using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>What a sleeve has to know of the arm: measured, or else assumed.</summary>
/// <remarks>What is assumed lies on lines fitted to the 1,986 women of ANSUR II (public release), by bust girth and stature. The upper arm there is measured flexed; the arm length is the
/// sum of its parts from the shoulder point to the elbow and from there to the wrist.</remarks>
internal sealed class ArmMeasures
{
    private const string Survey = "an open survey of 1,986 women";

    // Hand girth by wrist girth, the same women; two of three within 6 mm.
    private const double HandConstantMm = 57.92;
    private const double HandOfWrist = 0.8310;

    private ArmMeasures(WorkedLength upperArm, WorkedLength wrist, WorkedLength length)
    {
        UpperArm = upperArm;
        Wrist = wrist;
        Length = length;
    }

    internal WorkedLength UpperArm { get; }

    internal WorkedLength Wrist { get; }

    /// <summary>From the shoulder point over the elbow to the wrist.</summary>
    internal WorkedLength Length { get; }

    internal static ArmMeasures Of(BlockDraft draft)
    {
        WorkedLength? stature = null;
        return new ArmMeasures(
            Take(BodyMeasurement.UpperArmGirth, 2.84, 0.2719, 0.0278, 20),
            Take(BodyMeasurement.WristGirth, 31.26, 0.0389, 0.0532, 6),
            Take(BodyMeasurement.OuterArmLength, -49.06, 0, 0.3836, 18));

        WorkedLength Stature() => stature ??= draft.TakeOrAssume(
            BodyMeasurement.Stature, WorkedLength.GivenMm(null, TapeStep.For(draft.Body.Unit).IsMetric ? 1640 : 64.5 * 25.4), "the middle of " + Survey, UnitsNet.Length.FromCentimeters(6.4));

        // Without the bust there is nothing to assume it by: then it is asked for.
        WorkedLength Take(BodyMeasurement key, double constantMm, double perBust, double perStature, double spreadMm)
        {
            if (draft.Body.TryFindMm(key, out _) || (perBust != 0 && !draft.Body.TryFindMm(BodyMeasurement.BustGirth, out _)))
            {
                return draft.Take(key);
            }

            WorkedLength part = Stature().Times(perStature);
            WorkedLength byStature = constantMm < 0 ? part - WorkedLength.GivenMm(null, -constantMm) : part + WorkedLength.GivenMm(null, constantMm);
            return draft.TakeOrAssume(key, perBust == 0 ? byStature : draft.Take(BodyMeasurement.BustGirth).Times(perBust) + byStature, Survey, UnitsNet.Length.FromMillimeters(spreadMm));
        }
    }

    /// <summary>The girth of the hand, measured or assumed: what a wrist without an opening has to let through.</summary>
    internal static double HandMm(BodyMeasurements body, WorkedLength wrist)
        => body.TryFindMm(BodyMeasurement.HandGirth, out double measuredMm) ? measuredMm : HandConstantMm + (HandOfWrist * wrist.ValueMm);
}
