using System.Collections.Generic;
using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>How the waist of one half of the front or the back comes in: so much at the side, the rest in a dart.</summary>
/// <remarks>Both sides of the seam take as much, so that it stays straight to the body: 27 % of all that comes in, half of it each; the dart takes the rest up to 2 in (5 cm), and what
/// is more goes to the side up to 1 in (2.5 cm). Where that is not enough two darts share it, and the side takes what both cannot (common practice, no source). What is less than 3/8 in (1 cm) is no dart. Where nothing comes in the side goes straight down or out.</remarks>
internal sealed class BodiceShaping
{
    private const double SideShare = 0.135;

    private BodiceShaping(WorkedLength sideIn, params WorkedLength[] darts)
    {
        SideIn = sideIn;
        Darts = darts;
    }

    /// <summary>Negative where the side goes out.</summary>
    internal WorkedLength SideIn { get; }

    /// <summary>None, one, or two of equal width.</summary>
    internal IReadOnlyList<WorkedLength> Darts { get; }

    /// <summary>Shapes one half of the front or the back.</summary>
    /// <param name="panel">Back or front.</param>
    /// <param name="comesIn">What comes in there.</param>
    /// <param name="whole">What comes in in the back and the front together.</param>
    /// <param name="measures">For figures that are round on the tape of the body.</param>
    internal static BodiceShaping Of(string panel, WorkedLength comesIn, WorkedLength whole, BodiceMeasures measures)
    {
        WorkedLength mostAtSide = measures.Figure("1", 2.5);
        WorkedLength mostInDart = measures.Figure("2", 5);
        WorkedLength least = (comesIn - mostInDart).AtMost(mostAtSide);
        WorkedLength side = whole.Times(SideShare).AtMost(mostAtSide).AtLeast(least).Named(panel + " side take-in");
        WorkedLength dart = (comesIn - side).Named(panel + " waist dart");
        if (dart.ValueMm < measures.Figure("3/8", 1).ValueMm)
        {
            return new BodiceShaping(comesIn.Named(panel + " side take-in"));
        }

        if (dart.ValueMm <= mostInDart.ValueMm)
        {
            return new BodiceShaping(side, dart);
        }

        WorkedLength half = dart.Half().AtMost(mostInDart).Named("each " + panel + " waist dart");
        return dart.ValueMm <= 2 * mostInDart.ValueMm ? new BodiceShaping(side, half, half) : new BodiceShaping((comesIn - mostInDart.Times(2)).Named(panel + " side take-in"), half, half);
    }

    /// <summary>Shapes back and front with one dart each, no wider than that; both sides come in alike by what is left.</summary>
    internal static (BodiceShaping Back, BodiceShaping Front) WithDartsUpTo(WorkedLength widest, WorkedLength back, WorkedLength front, WorkedLength whole, BodiceMeasures measures)
    {
        WorkedLength side = whole.Times(SideShare).AtLeast(back - widest).AtLeast(front - widest).Named("side take-in");
        return (Of(back, "back"), Of(front, "front"));

        BodiceShaping Of(WorkedLength comesIn, string panel)
        {
            WorkedLength dart = (comesIn - side).Named(panel + " waist dart");
            return dart.ValueMm < measures.Figure("3/8", 1).ValueMm ? new BodiceShaping(comesIn.Named(panel + " side take-in")) : new BodiceShaping(side, dart);
        }
    }
}
