using System.Collections.Generic;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>What a sleeve has to know of the arm: measured, or else assumed by a law that is said.</summary>
/// <remarks>The laws are lines fitted to the 1,986 women of ANSUR II (public release), by bust girth and stature. The upper arm there is measured flexed; the arm length is the sum
/// of its parts from the shoulder point to the elbow and from there to the wrist.</remarks>
internal sealed class ArmMeasures
{
    // Where stature was not measured either.
    private const double UsualStatureMm = 1640;

    // Hand girth by wrist girth, the same women; two of three within 6 mm.
    private const double HandConstantMm = 57.92;
    private const double HandOfWrist = 0.8310;

    private ArmMeasures(WorkedLength upperArm, WorkedLength wrist, WorkedLength length, IReadOnlyList<AssumedMeasure> assumed)
    {
        UpperArm = upperArm;
        Wrist = wrist;
        Length = length;
        Assumed = assumed;
    }

    internal WorkedLength UpperArm { get; }

    internal WorkedLength Wrist { get; }

    /// <summary>From the shoulder point over the elbow to the wrist.</summary>
    internal WorkedLength Length { get; }

    internal IReadOnlyList<AssumedMeasure> Assumed { get; }

    internal static ArmMeasures Of(BlockDraft draft)
    {
        var assumed = new List<AssumedMeasure>(3);
        WorkedLength upperArm = Take(draft, BodyMeasurement.UpperArmGirth, Laws.UpperArm, assumed);
        WorkedLength wrist = Take(draft, BodyMeasurement.WristGirth, Laws.Wrist, assumed);
        WorkedLength length = Take(draft, BodyMeasurement.OuterArmLength, Laws.Length, assumed);
        return new ArmMeasures(upperArm, wrist, length, assumed);
    }

    /// <summary>The girth of the hand, measured or assumed: what a wrist without an opening has to let through.</summary>
    internal static double HandMm(BodyMeasurements body, WorkedLength wrist)
        => body.TryFindMm(BodyMeasurement.HandGirth, out double measuredMm) ? measuredMm : HandConstantMm + (HandOfWrist * wrist.ValueMm);

    private static WorkedLength Take(BlockDraft draft, BodyMeasurement key, ArmLaw law, List<AssumedMeasure> assumed)
    {
        BodyMeasurements body = draft.Body;
        bool needsBust = law.OfBust != 0;
        if (body.TryFindMm(key, out _) || (needsBust && !body.TryFindMm(BodyMeasurement.BustGirth, out _)))
        {
            return draft.Take(key);
        }

        WorkedLength stature = body.TryFindMm(BodyMeasurement.Stature, out _) ? draft.Take(BodyMeasurement.Stature) : WorkedLength.GivenMm("usual stature", UsualStatureMm);
        WorkedLength part = stature.Times(law.OfStature);
        WorkedLength byStature = law.ConstantMm < 0 ? part - WorkedLength.GivenMm("constant", -law.ConstantMm) : part + WorkedLength.GivenMm("constant", law.ConstantMm);
        WorkedLength value = (needsBust ? draft.Take(BodyMeasurement.BustGirth).Times(law.OfBust) + byStature : byStature).Named(key.Term);
        assumed.Add(new AssumedMeasure(law, value.ValueMm));
        return value;
    }

    private static class Laws
    {
        internal static readonly ArmLaw UpperArm = new("upper-arm girth, assumed", 2.84, 0.2719, 0.0278, Assumption("upper-arm girth", "bust girth and stature", "2 cm"));
        internal static readonly ArmLaw Wrist = new("wrist girth, assumed", 31.26, 0.0389, 0.0532, Assumption("wrist girth", "bust girth and stature", "6 mm"));
        internal static readonly ArmLaw Length = new("outer arm length, assumed", -49.06, 0, 0.3836, Assumption("outer arm length", "stature", "2 cm"));

        private static Advice Assumption(string measure, string from, string spread) => Advice.Of(
            "The " + measure + " was not measured. It is assumed from " + from + ", as they go together on 1,986 women: two of three are within " + spread + " of it.",
            "Measure it, and draft again.");
    }
}

/// <summary>A line fitted to a survey: a constant, and what bust girth and stature add to it.</summary>
internal sealed record ArmLaw(string Check, double ConstantMm, double OfBust, double OfStature, Advice Advice);

/// <summary>A measure that was not taken, and what it was taken to be.</summary>
internal readonly record struct AssumedMeasure(ArmLaw Law, double ValueMm);
