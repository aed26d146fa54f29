using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>The three levels of one skirt with their working: as the caller says, else from the body's heights, else the usual figures.</summary>
internal sealed class SkirtDepths
{
    private const string FromWaistToHip = "Levels from the body's waist to hip.";
    private const string FromStature = "Levels from an eighth of the stature: waist to hip was not measured.";
    private const string Usual = "Levels by the usual figures: neither waist to hip nor stature was measured.";

    private SkirtDepths(WorkedLength yoke, WorkedLength upperHip, WorkedLength lowerHip, SkirtLevels levels, string? remark)
    {
        Yoke = yoke;
        UpperHip = upperHip;
        LowerHip = lowerHip;
        Levels = levels;
        Remark = remark;
    }

    internal WorkedLength Yoke { get; }

    internal WorkedLength UpperHip { get; }

    internal WorkedLength LowerHip { get; }

    /// <summary>The same three as plain lengths.</summary>
    internal SkirtLevels Levels { get; }

    /// <summary>Where the levels come from; null where the caller said all of them.</summary>
    internal string? Remark { get; }

    internal static SkirtDepths Of(BodyMeasurements body, SkirtLevels asked, SkirtCustoms customs)
    {
        string? remark = asked is { GivenYokeMm: not null, GivenUpperHipMm: not null, GivenLowerHipMm: not null } ? null : Usual;
        WorkedLength? height = remark is null ? null : HeightOf(body, ref remark);
        WorkedLength upper = Level("upper hip depth", asked.GivenUpperHipMm, height, customs.Levels.UpperHipMm);
        WorkedLength lower = Level("lower hip depth", asked.GivenLowerHipMm, height is null ? null : upper.Times(1.25), customs.Levels.LowerHipMm);
        WorkedLength yoke = Level("yoke depth", asked.GivenYokeMm, height is null ? null : upper.Times(0.625), customs.Levels.YokeMm);
        SkirtLevels levels = height is null && asked == Unsaid
            ? customs.Levels
            : new SkirtLevels { Yoke = yoke.Value, UpperHip = upper.Value, LowerHip = lower.Value };
        return new SkirtDepths(yoke, upper, lower, levels, remark);
    }

    private static readonly SkirtLevels Unsaid = new();

    private static WorkedLength? HeightOf(BodyMeasurements body, ref string? remark)
    {
        if (body.TryFindMm(BodyMeasurement.WaistToHip, out double depthMm))
        {
            remark = FromWaistToHip;
            return WorkedLength.MeasuredMm("waist to hip", depthMm);
        }

        if (body.TryFindMm(BodyMeasurement.Stature, out double statureMm))
        {
            remark = FromStature;
            return WorkedLength.MeasuredMm("stature", statureMm).DividedBy(8).Named("upper hip depth");
        }

        return null;
    }

    private static WorkedLength Level(string name, double? askedMm, WorkedLength? fromBody, double usualMm)
        => askedMm is { } mm ? WorkedLength.GivenMm(name, mm, LengthSource.Setting) : fromBody is null ? WorkedLength.GivenMm(name, usualMm) : fromBody.Name is null ? fromBody.Named(name) : fromBody;
}
