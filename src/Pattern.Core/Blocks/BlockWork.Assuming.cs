using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <content>Measurements that nobody took.</content>
public abstract partial class BlockWork
{
    /// <summary>Takes a measurement of the body or, where nobody took it, what is assumed instead: a step then says how that came about, and the report advises to measure it.</summary>
    /// <remarks>What was measured always wins.</remarks>
    /// <param name="measurement">The measurement.</param>
    /// <param name="assumed">What is assumed where it is missing, with its working.</param>
    /// <param name="source">Where the working comes from, a clause such as <c>the handbook's step from memory</c>.</param>
    /// <param name="spread">How far bodies differ from it: two in three lie within it, one in three beyond. Null where nobody knows.</param>
    /// <exception cref="ConstructionException">It was not measured, and what would be assumed is none of a body's.</exception>
    public WorkedLength TakeOrAssume(BodyMeasurement measurement, WorkedLength assumed, string source, Length? spread = null)
    {
        Guard.NotNull(measurement, nameof(measurement));
        Guard.NotNull(assumed, nameof(assumed));
        Guard.Name(source, nameof(source));
        if (Body.TryFindMm(measurement, out double measuredMm))
        {
            return WorkedLength.MeasuredMm(measurement.Term, measuredMm);
        }

        if (!measurement.IsPlausible(assumed.ValueMm))
        {
            return WorkedLength.MeasuredMm(measurement.Term, Body.RequireMm(measurement, _by));
        }

        Sheet.Note("Take for the {0}, which was not measured: {1}.", measurement.Term, assumed);
        Sheet.Because("By " + source + ".");
        string known = spread is { } within ? $", give or take {Tape.Format(within, TapeStep.For(Body.Unit))}" : string.Empty;
        Advice advice = Advice.Of($"By {source}{known}.", "Measure it and draft again.");
        Length value = assumed.Value;
        Check(list => list.Advise(advice, "assumed " + measurement.Term, "block", value, FindingRelation.Equal, value));
        return assumed.Named(measurement.Term);
    }
}
