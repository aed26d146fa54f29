using System;
using System.Linq;

namespace Pattern.Core.Tests.Output;

/// <summary>A waistline as somebody drew it over the folds, and draws it again where it came out too long or too short.</summary>
internal sealed class PaperWaist
{
    private readonly Func<double, (double X, double Y)[][]> _over;
    private double _outward;

    internal PaperWaist(Func<double, (double X, double Y)[][]> over)
    {
        _over = over;
        Pieces = AtFirst = over(0);
    }

    /// <summary>The pieces between the folds, opened again.</summary>
    internal (double X, double Y)[][] Pieces { get; private set; }

    /// <summary>What the tape measures over the folds.</summary>
    internal double Closed => Pieces.Sum(PaperHand.LengthOf);

    /// <summary>The pieces before anything was put right.</summary>
    internal (double X, double Y)[][] AtFirst { get; }

    /// <summary>What the sheet says that it is to measure.</summary>
    internal double Said { get; set; }

    /// <summary>Draws it again with its side end moved out.</summary>
    internal void Draw(double outward)
    {
        _outward += outward;
        Pieces = _over(_outward);
    }
}
