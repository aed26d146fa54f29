using System.Collections.Generic;

namespace Pattern.Core.Output;

/// <summary>What every sheet that will be cut from says of danger.</summary>
internal static class Cautions
{
    internal static IReadOnlyList<string> OfCutting { get; } =
    [
        "Make a toile before cutting good cloth. A garment that is long or narrow at the hem needs a slit or vent to walk in, and care on stairs and near machines.",
        "Blades, shears, needles and hot irons injure: cut on a stable surface, guards on, away from children. "
            + "Children\u2019s wear: local law on cords, drawstrings and the flammability of nightwear decides.",
    ];
}
