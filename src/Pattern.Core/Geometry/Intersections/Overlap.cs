namespace Pattern.Core.Geometry;

/// <summary>A stretch along which two curves run on top of each other.</summary>
public readonly struct Overlap
{
    internal Overlap(double firstFrom, double firstTo, double secondFrom, double secondTo)
    {
        FirstFrom = firstFrom;
        FirstTo = firstTo;
        SecondFrom = secondFrom;
        SecondTo = secondTo;
    }

    /// <summary>Where the stretch begins on the first curve, 0 to 1.</summary>
    public double FirstFrom { get; }

    /// <summary>Where the stretch ends on the first curve, 0 to 1; more than <see cref="FirstFrom"/>.</summary>
    public double FirstTo { get; }

    /// <summary>Where on the second curve the stretch begins, 0 to 1.</summary>
    public double SecondFrom { get; }

    /// <summary>Where on the second curve the stretch ends; less than <see cref="SecondFrom"/> where the curves run against each other.</summary>
    public double SecondTo { get; }

    internal Overlap Swapped() => SecondFrom <= SecondTo
        ? new Overlap(SecondFrom, SecondTo, FirstFrom, FirstTo)
        : new Overlap(SecondTo, SecondFrom, FirstTo, FirstFrom);

    /// <summary>The stretch on both curves.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{FirstFrom:0.######} to {FirstTo:0.######} on {SecondFrom:0.######} to {SecondTo:0.######}");
}
