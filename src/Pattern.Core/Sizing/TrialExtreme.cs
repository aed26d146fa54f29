namespace Pattern.Core.Sizing;

/// <summary>The two bodies at the ends of a measurement, among those for which a block was drafted. Immutable.</summary>
public sealed class TrialExtreme
{
    internal TrialExtreme(string what, double leastMm, Trial least, double mostMm, Trial most)
    {
        What = what;
        LeastMm = leastMm;
        Least = least;
        MostMm = mostMm;
        Most = most;
    }

    /// <summary>Of what: a measurement, or the waist-hip difference.</summary>
    public string What { get; }

    /// <summary>The body that has the least of it; the first where several do.</summary>
    public Trial Least { get; }

    /// <summary>The body that has the most of it; the first where several do.</summary>
    public Trial Most { get; }

    /// <summary>The least.</summary>
    public UnitsNet.Length LeastValue => UnitsNet.Length.FromMillimeters(LeastMm);

    /// <summary>The most.</summary>
    public UnitsNet.Length MostValue => UnitsNet.Length.FromMillimeters(MostMm);

    internal double LeastMm { get; }

    internal double MostMm { get; }

    /// <summary>What, and the rows.</summary>
    public override string ToString() => System.FormattableString.Invariant($"{What}: least in row {Least.Row.Number}, most in row {Most.Row.Number}");

    internal TrialExtreme With(double valueMm, Trial trial) => valueMm < LeastMm
        ? new(What, valueMm, trial, MostMm, Most)
        : valueMm > MostMm ? new(What, LeastMm, Least, valueMm, trial) : this;
}
