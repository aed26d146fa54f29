using System;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>What must hold of a sheath, measured on whatever panels it has.</summary>
internal sealed class SheathChecks(SheathDraft sheath)
{
    internal void CheckGirths(CheckList list)
    {
        double waistMm = 0;
        double hipMm = 0;
        double withoutDartMm = 0;
        foreach (Panel panel in new[] { list.FindPanel(PanelName.Back), list.FindPanel(PanelName.Front) })
        {
            PanelEdge side = panel.FindEdge(EdgeName.SideSeam);
            double centreMm = panel.FindEdge(EdgeName.Centre).Start.XMm;
            double dartsMm = panel.InsideDarts.Sum(dart => dart.Intake.Millimeters);
            double quarterMm = WaistMm(side.StretchesRaw[side.StretchesRaw.Length - 1], centreMm) - dartsMm;
            waistMm += 2 * quarterMm;
            hipMm += 2 * Math.Abs(panel.FindEdge(EdgeName.Hem).Start.XMm - centreMm);
            if (panel.InsideDarts.Count > 0)
            {
                list.Length("closed waist", panel.Name.Text, quarterMm, sheath.Bodice.QuarterWaist.ValueMm);
            }

            withoutDartMm += panel.InsideDarts.Count == 0 ? 2 : 0;
            list.Length("length from the waist", panel.Name.Text, -panel.FindEdge(EdgeName.Hem).End.YMm, sheath.Length.ValueMm);
        }

        // A panel without a dart has nothing to take up what rounding off its side moves the waist by: a millimetre at most.
        list.LengthAtLeast("waist all around, double darts closed", "block", waistMm, 4 * sheath.Bodice.QuarterWaist.ValueMm, 0.01 + withoutDartMm);
        list.Length("hip width all around", "block", hipMm, sheath.HipTarget.ValueMm);
    }

    /// <summary>From the centre line to the side seam at the waist level.</summary>
    internal static double WaistMm(CurvePath side, double centreMm)
    {
        Line level = Line.Horizontal(Point2D.Origin);
        Point2D[] hits = [.. side.IntersectionsWith(level).Points.Select(hit => hit.Point)];
        return hits.Length == 0 ? double.NaN : hits.Min(point => Math.Abs(point.XMm - centreMm));
    }
}
