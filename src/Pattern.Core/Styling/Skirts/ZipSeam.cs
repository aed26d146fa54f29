using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Panels;

namespace Pattern.Core.Styling;

/// <summary>The seam that takes a zip: from the top of the skirt down, panel after panel.</summary>
internal static class ZipSeam
{
    /// <summary>Finds its parts, from the top down.</summary>
    /// <param name="panels">The panels of the skirt.</param>
    /// <param name="atSide">Whether it is the side seam, of back and front each; else the centre back.</param>
    internal static List<ZipPart> Of(IReadOnlyList<Panel> panels, bool atSide)
    {
        var parts = new List<ZipPart>();
        foreach (PanelName half in atSide ? new[] { PanelName.Back, PanelName.Front } : [PanelName.Back])
        {
            Panel[] own = [.. panels.Where(panel => panel.Name.Text.StartsWith(half.Text, StringComparison.Ordinal) && EdgeOf(panel, atSide) is not null)];
            double above = 0;
            foreach (Panel panel in own.Where(panel => !FacedWaistDesign.IsFacing(panel) && !LinedDesign.IsLining(panel)).OrderByDescending(panel => Top(EdgeOf(panel, atSide)!)))
            {
                Add(panel, above);
                above += EdgeOf(panel, atSide)!.SewnLengthMm();
            }

            // A lining begins where a band or a facing ends.
            foreach (Panel lining in own.Where(panel => above > 0 && LinedDesign.IsLining(panel)))
            {
                Panel? finish = panels.FirstOrDefault(panel => panel.Name.Text.StartsWith(half.Text, StringComparison.Ordinal) && (ContourBandDesign.IsBand(panel) || FacedWaistDesign.IsFacing(panel)));
                bool isBelow = finish is not null && !(FacedWaistDesign.IsFacing(finish) && IsAtWaist(lining, finish));
                Add(lining, isBelow && finish!.TryFindEdge(EdgeOf(lining, atSide)!.Name, out PanelEdge? beside) ? beside!.SewnLengthMm() : 0);
            }
        }

        return parts;

        void Add(Panel panel, double fromTopMm)
        {
            PanelEdge edge = EdgeOf(panel, atSide)!;
            parts.Add(new ZipPart(panel.Name, edge.Name, fromTopMm, edge.SewnLengthMm(), LinedDesign.IsLining(panel)));
        }
    }

    /// <summary>How long the seam of the skirt is, from the top down; where back and front differ, the shorter one.</summary>
    internal static double LengthMm(List<ZipPart> parts) => parts.Count(part => !part.IsLining) == 0
        ? 0
        : parts.Where(part => !part.IsLining).GroupBy(part => part.Panel.Text.Split(' ')[0]).Min(half => half.Sum(part => part.LengthMm));

    // An A-line lining of a full skirt goes up to the waist, beneath the facing.
    private static bool IsAtWaist(Panel lining, Panel facing)
    {
        double top = lining.FindEdge(LinedDesign.Top).SewnLengthMm();
        return Math.Abs(top - facing.FindEdge(FacedWaistDesign.Faced).SewnLengthMm()) < Math.Abs(top - facing.FindEdge(FacedWaistDesign.Free).SewnLengthMm());
    }

    private static PanelEdge? EdgeOf(Panel panel, bool atSide) => panel.Edges.FirstOrDefault(edge => atSide ? edge.Name == EdgeName.SideSeam : edge.Role == EdgeRole.Centre);

    private static double Top(PanelEdge edge) => Math.Max(edge.Start.YMm, edge.End.YMm);
}

/// <summary>The part of a zip's seam that one panel has.</summary>
/// <param name="Panel">The panel.</param>
/// <param name="Edge">Its edge.</param>
/// <param name="FromTopMm">How far below the top of the skirt it begins.</param>
/// <param name="LengthMm">How long it is.</param>
/// <param name="IsLining">Whether it is of the lining.</param>
internal readonly record struct ZipPart(PanelName Panel, EdgeName Edge, double FromTopMm, double LengthMm, bool IsLining);
