namespace Pattern.Core.Geometry;

/// <summary>A stretch along which two segments of paths run on top of each other. A longer stretch comes as one for each pair of segments.</summary>
public readonly struct PathOverlap
{
    internal PathOverlap(int firstSegment, int secondSegment, in Overlap stretch)
    {
        FirstSegment = firstSegment;
        SecondSegment = secondSegment;
        Stretch = stretch;
    }

    /// <summary>On which segment of the first path, counted from 0.</summary>
    public int FirstSegment { get; }

    /// <summary>On which segment of the second path, counted from 0.</summary>
    public int SecondSegment { get; }

    /// <summary>From where to where on the two segments.</summary>
    public Overlap Stretch { get; }

    /// <summary>The segments and the stretch that they share.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"segments {FirstSegment} and {SecondSegment}: {Stretch}");
}
