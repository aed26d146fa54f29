using System;
using System.Linq;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>The skirt below a bodice: with its waist and with its darts, each drafted where the folded dart above it lies.</summary>
internal static class GownSkirt
{
    private const double FoundMm = 1e-7;

    // The place of a dart on the sewn waist follows its place on the open one nearly one to one: five or six drafts settle it.
    private const int MostDrafts = 30;

    /// <summary>Drafts the skirt until its darts meet those of the bodice.</summary>
    /// <param name="draft">The draft of the gown.</param>
    /// <param name="body">With a hip girth.</param>
    /// <param name="options">Eases and length.</param>
    /// <param name="back">The back of the bodice.</param>
    /// <param name="front">The front of the bodice.</param>
    internal static SkirtBlock Under(BlockDraft draft, BodyMeasurements body, SkirtOptions options, Panel back, Panel front)
    {
        double[] backPlaces = PlacesMm(back, isCentreFirst: false);
        double[] frontPlaces = PlacesMm(front, isCentreFirst: false);
        options = options with
        {
            Waistline = Waistline.Level,
            BackDarts = backPlaces.Length > 0 ? new DartPlan { Count = backPlaces.Length } : options.BackDarts,
            FrontDarts = frontPlaces.Length > 0 ? new DartPlan { Count = frontPlaces.Length } : options.FrontDarts,
        };
        SkirtBlock skirt = SkirtMethod.Draft(body, options);
        for (int i = 0; i < MostDrafts; i++)
        {
            double offMm = 0;
            double[]? nextBack = Next(skirt.Back, options.BackDartPlacesMm, backPlaces, ref offMm);
            double[]? nextFront = Next(skirt.Front, options.FrontDartPlacesMm, frontPlaces, ref offMm);
            if (offMm <= FoundMm)
            {
                return skirt;
            }

            options = options with { BackDartPlacesMm = nextBack, FrontDartPlacesMm = nextFront };
            skirt = SkirtMethod.Draft(body, options);
        }

        throw draft.Refusal(
            "The darts of the skirt cannot be brought below those of the bodice: give the skirt fewer darts, or the bodice other ones.", UnitsNet.Length.FromMillimeters(FoundMm), UnitsNet.Length.Zero);
    }

    /// <summary>From the centre along the sewn waist to each dart, the nearest first.</summary>
    internal static double[] PlacesMm(Panel panel, bool isCentreFirst)
    {
        double[] stretches = [.. panel.FindEdge(EdgeName.Waist).Stretches.Select(stretch => stretch.LengthMm)];
        if (!isCentreFirst)
        {
            Array.Reverse(stretches);
        }

        var places = new double[stretches.Length - 1];
        double atMm = 0;
        for (int i = 0; i < places.Length; i++)
        {
            places[i] = atMm += stretches[i];
        }

        return places;
    }

    // Where the darts are as many as above them; else they stay where they usually stand.
    private static double[]? Next(Panel skirt, double[]? laidOff, double[] wanted, ref double offMm)
    {
        double[] now = PlacesMm(skirt, isCentreFirst: true);
        if (now.Length != wanted.Length || now.Length == 0)
        {
            return laidOff;
        }

        var next = new double[now.Length];
        for (int i = 0; i < now.Length; i++)
        {
            Dart dart = skirt.FindEdge(EdgeName.Waist).Darts[i];
            double openMm = laidOff?[i] ?? Math.Abs(dart.Apex.XMm - skirt.FindEdge(EdgeName.Waist).Start.XMm);
            next[i] = openMm + wanted[i] - now[i];
            offMm = Math.Max(offMm, Math.Abs(wanted[i] - now[i]));
        }

        return next;
    }
}
