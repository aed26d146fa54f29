namespace Pattern.Core.Geometry;

/// <summary>Gauss-Legendre rules on -1 to 1: the positive nodes and their weights; the negative ones mirror them.</summary>
internal static class GaussLegendre
{
    internal static readonly double[] Nodes16 =
    [
        0.09501250983763744,
        0.2816035507792589,
        0.45801677765722737,
        0.6178762444026438,
        0.755404408355003,
        0.8656312023878318,
        0.9445750230732326,
        0.9894009349916499,
    ];

    internal static readonly double[] Weights16 =
    [
        0.1894506104550685,
        0.18260341504492358,
        0.16915651939500254,
        0.14959598881657674,
        0.12462897125553388,
        0.09515851168249279,
        0.062253523938647894,
        0.027152459411754096,
    ];
}
