using System.Globalization;

namespace Pattern.Core.Pieces;

/// <summary>How often a piece is cut from a cloth.</summary>
public sealed class CutCount
{
    internal CutCount(int count, ClothName cloth)
    {
        Count = count;
        Cloth = cloth;
    }

    /// <summary>How many are cut. A piece on the fold counts once for both of its halves.</summary>
    public int Count { get; }

    /// <summary>What they are cut from.</summary>
    public ClothName Cloth { get; }

    /// <summary>Such as "2 of main cloth".</summary>
    public override string ToString() => Count.ToString(CultureInfo.InvariantCulture) + " of " + Cloth.Text;
}
