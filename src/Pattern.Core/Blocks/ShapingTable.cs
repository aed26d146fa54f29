
namespace Pattern.Core.Blocks;

/// <summary>How the waist-hip difference becomes darts: data that every school and cutter has its own of.</summary>
public abstract class ShapingTable
{
    private protected ShapingTable()
    {
    }

    /// <summary>The proportional law: shaping grows with the waist-hip difference D, for any body.</summary>
    /// <remarks>Own derivation; it agrees with common practice at D = 8 in. The back is wider by D/16; darts take half of what each quarter loses between hip and
    /// waist; the centre front drops by D/8, never more than 1 1/4 in and never less than nothing.</remarks>
    public static ShapingTable Proportional { get; } = new ProportionalShaping();

    /// <summary>What the table says for one body.</summary>
    public abstract ShapingReading Read(ShapingQuery query);
}
