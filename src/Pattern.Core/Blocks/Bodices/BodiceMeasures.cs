using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>The measurements that a bodice is drafted from: bust and waist taken, every other one taken or assumed.</summary>
/// <remarks>What is assumed goes through the body of a handbook (from memory: W. Aldrich, Metric Pattern Cutting for Women's Wear, bust 88, stature 164 cm), and changes with bust and
/// stature as in the open survey of 1,986 women (ANSUR II, least squares) where the survey measures the same; else by the handbook's step.</remarks>
internal sealed class BodiceMeasures
{
    private const double HandbookBustCm = 88;
    private const double HandbookStatureCm = 164;
    private const string Survey = "a handbook's body, from memory, and the slopes of an open survey of 1,986 women";
    private const string Handbook = "a handbook's step from size to size, from memory";
    private const string Practice = "common practice";

    internal BodiceMeasures(BlockDraft draft)
    {
        Bust = draft.Take(BodyMeasurement.BustGirth);
        Waist = draft.Take(BodyMeasurement.WaistGirth);
        IsMetric = TapeStep.For(draft.Body.Unit).IsMetric;
        WorkedLength? stature = null;
        WorkedLength Stature() => stature ??= draft.TakeOrAssume(
            BodyMeasurement.Stature, Figure("64 1/2", 164), "the middle of an open survey of 1,986 women", Length.FromCentimeters(6.4));

        BackLength = Law(BodyMeasurement.BackNeckPointToWaist, 41.0, 0.116, 0.168, 2.1);
        ScyeDepth = Step(BodyMeasurement.ScyeDepthLength, 21.0, 0.1);
        AcrossBack = Law(BodyMeasurement.AcrossBackWidth, 34.4, 0.221, 0.042, 2.3);
        AcrossFront = draft.TakeOrAssume(BodyMeasurement.AcrossFrontWidth, AcrossBack - Figure("3/4", 2), Practice);
        Shoulder = Law(BodyMeasurement.ShoulderLength, 12.25, 0.003, 0.062, 0.9);
        Neck = Law(BodyMeasurement.NeckBaseGirth, 37.0, 0.140, 0.079, 1.4);
        FrontLength = draft.TakeOrAssume(
            BodyMeasurement.SideNeckPointToWaist,
            (BackLength + Bust.DividedBy(8) - Figure("3 1/2", 9)).AtLeast((BackLength + Neck.DividedBy(24)).Named("length of the back")),
            Handbook);
        BustPointWidth = draft.TakeOrAssume(BodyMeasurement.BustPointToBustPointWidth, Bust.Times(0.22), Practice);
        BustPointDepth = draft.TakeOrAssume(BodyMeasurement.SideNeckPointToBustPoint, ScyeDepth + Figure("1 7/8", 4.7), Handbook);

        WorkedLength Law(BodyMeasurement measurement, double atHandbookCm, double perBust, double perStature, double spreadCm)
        {
            if (draft.Body.TryFind(measurement, out _))
            {
                return draft.Take(measurement);
            }

            double restCm = atHandbookCm - (perBust * HandbookBustCm) - (perStature * HandbookStatureCm);
            return draft.TakeOrAssume(
                measurement, Bust.Times(perBust) + Stature().Times(perStature) + WorkedLength.Given(Length.FromCentimeters(restCm)), Survey, Length.FromCentimeters(spreadCm));
        }

        WorkedLength Step(BodyMeasurement measurement, double atHandbookCm, double perBust)
            => draft.TakeOrAssume(measurement, Bust.Times(perBust) + WorkedLength.Given(Length.FromCentimeters(atHandbookCm - (perBust * HandbookBustCm))), Handbook);
    }

    internal WorkedLength Bust { get; }

    internal WorkedLength Waist { get; }

    /// <summary>From the back neck point to the waist.</summary>
    internal WorkedLength BackLength { get; }

    internal WorkedLength ScyeDepth { get; }

    internal WorkedLength AcrossBack { get; }

    internal WorkedLength AcrossFront { get; }

    internal WorkedLength Shoulder { get; }

    /// <summary>Around the base of the neck.</summary>
    internal WorkedLength Neck { get; }

    /// <summary>From the side neck point over the bust to the waist.</summary>
    internal WorkedLength FrontLength { get; }

    internal WorkedLength BustPointWidth { get; }

    /// <summary>From the side neck point to the bust point.</summary>
    internal WorkedLength BustPointDepth { get; }

    internal bool IsMetric { get; }

    /// <summary>A figure of the draft, round on the tape of the body.</summary>
    internal WorkedLength Figure(string inches, double centimetres)
        => WorkedLength.Given(IsMetric ? Length.FromCentimeters(centimetres) : Tape.Inches(inches));
}
