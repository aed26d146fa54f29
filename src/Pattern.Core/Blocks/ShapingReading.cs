using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>What a shaping table says for one body, and which row said it.</summary>
public sealed class ShapingReading
{
    internal ShapingReading(WorkedLength backWider, WorkedLength frontDartIntake, WorkedLength backDartIntake, WorkedLength frontDrop, string source)
    {
        BackWider = backWider;
        FrontDartIntake = frontDartIntake;
        BackDartIntake = backDartIntake;
        FrontDrop = frontDrop;
        Source = source;
    }

    /// <summary>How much wider the back is than the front at the hip.</summary>
    public WorkedLength BackWider { get; }

    /// <summary>The intake of all darts of the front panel together. Never negative.</summary>
    public WorkedLength FrontDartIntake { get; }

    /// <summary>The intake of all darts of the back panel together. Never negative.</summary>
    public WorkedLength BackDartIntake { get; }

    /// <summary>How far the centre front drops below the waist level. Never negative.</summary>
    public WorkedLength FrontDrop { get; }

    /// <summary>In words: which table and which row or law served, how it was looked up, and whether it was clamped.</summary>
    public string Source { get; }
}
