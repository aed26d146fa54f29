using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>What a shaping table is asked with: the girths and eases of one skirt, each with its working.</summary>
public sealed class ShapingQuery
{
    internal ShapingQuery(WorkedLength waistGirth, WorkedLength hipGirth, WorkedLength waistEase, WorkedLength hipEase)
    {
        WaistGirth = waistGirth;
        HipGirth = hipGirth;
        WaistEase = waistEase;
        HipEase = hipEase;
        Difference = (hipGirth - waistGirth).Named("waist-hip difference");
    }

    /// <summary>The body's waist girth.</summary>
    public WorkedLength WaistGirth { get; }

    /// <summary>The body's hip girth.</summary>
    public WorkedLength HipGirth { get; }

    /// <summary>What the garment measures more than the body around the waist, in all.</summary>
    public WorkedLength WaistEase { get; }

    /// <summary>What the garment measures more than the body around the hip, in all.</summary>
    public WorkedLength HipEase { get; }

    /// <summary>Hip girth minus waist girth: what the rows of a table are keyed by. Negative where the waist is larger.</summary>
    public WorkedLength Difference { get; }
}
