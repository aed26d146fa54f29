using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using Pattern.Core.Styling;
using UnitsNet;

namespace Pattern.Core.Patterns;

/// <summary>Where the zip of a skirt stands: down the centre back, through all panels that have a part of it, or else down the first seam at the waist.</summary>
internal sealed class SkirtZip
{
    private const double StopMm = 12;

    // Marks nearer to each other than this cannot be told apart once they are cut; common practice, no source.
    private const double ApartMm = 12;

    private readonly List<(PanelName Panel, EdgeName Edge, double FromTopMm)> _seam = [];
    private readonly double _zipMm;
    private readonly double? _hipMm;

    /// <summary>Finds the seam.</summary>
    /// <param name="block">The skirt.</param>
    /// <param name="zipMm">From the waist seam down to the stop.</param>
    /// <param name="hipMm">The level of the hip below the waist, where the two halves are to match; null where it is not level.</param>
    internal SkirtZip(Block block, double zipMm, double? hipMm)
    {
        _zipMm = zipMm;
        _hipMm = hipMm;
        // Fronts that lie over each other open by themselves.
        if (block.Panels.Any(panel => panel.TryFindEdge(WrapDesign.FrontEdge, out _)))
        {
            return;
        }

        List<ZipPart> parts = ZipSeam.Of(block.Panels, ZipDesign.Of(block)?.AtSide ?? false);
        double above = ZipSeam.LengthMm(parts);

        // What hangs below the end of the zip lies on the fold.
        _seam.AddRange(parts.Where(part => part.FromTopMm < zipMm).Select(part => (part.Panel, part.Edge, part.FromTopMm)));
        if (parts.Count > 0 && zipMm >= above)
        {
            throw new ConstructionException(DiagnosticCode.PlaceOffEdge, Length.FromMillimeters(zipMm), parts[0].Edge, parts[0].Panel, Length.FromMillimeters(above))
            {
                Step = "marking the stop of the zip",
                Landmark = parts[0].Edge.Text,
                Measured = Length.FromMillimeters(zipMm),
                Allowed = Length.FromMillimeters(above),
            };
        }

        if (parts.Count == 0 && block.Panels.FirstOrDefault(panel => SeamAtWaist(panel) is not null) is { } first)
        {
            PanelEdge edge = SeamAtWaist(first)!;
            if (block.TimesOf(first.Name) <= 2 && zipMm < edge.SewnLengthMm())
            {
                _seam.Add((first.Name, edge.Name, 0));
            }
        }
    }

    /// <summary>Whether an edge is part of the seam that takes the zip, so that it is cut with its allowance.</summary>
    internal bool Takes(Panel panel, PanelEdge edge) => _seam.Exists(part => part.Panel == panel.Name && part.Edge == edge.Name);

    /// <summary>The panel with the notches of the seam: a cut beside the stop, and a match at the hip.</summary>
    internal Panel Marked(Panel panel)
    {
        if (Part(panel) is not { } part)
        {
            return panel;
        }

        PanelEdge edge = panel.FindEdge(part.Edge);
        CurvePath line = edge.StretchesRaw[0];
        double length = line.LengthMm;
        var notches = new List<Notch>(panel.Notches);
        if (Stands(part.FromTopMm, length))
        {
            double at = FromStart(edge, length, _zipMm - part.FromTopMm);
            notches.Add(new Notch(edge.Name, line.PointAtMm(at), at, 1));
        }

        if (_hipMm is { } hipMm)
        {
            foreach (PathIntersection hip in line.IntersectionsWith(Line.Horizontal(new Point2D(0, -hipMm))).Points.Take(1))
            {
                double at = line.LengthTo(line.ClosestTo(hip.Point)).Millimeters;
                if (Math.Abs(at - (length - _zipMm)) > ApartMm)
                {
                    notches.Add(new Notch(edge.Name, hip.Point, at, 2));
                }
            }
        }

        return new Panel(panel.Name, panel.EdgesRaw, panel.Features with { Notches = [.. notches] });
    }

    /// <summary>The piece with the stop drawn across the end of the zip, where it ends on this piece.</summary>
    internal PatternPiece WithStop(PatternPiece piece)
    {
        Panel panel = piece.Half;
        if (Part(panel) is not { } part)
        {
            return piece;
        }

        PanelEdge edge = panel.FindEdge(part.Edge);
        CurvePath line = edge.StretchesRaw[0];
        if (!Stands(part.FromTopMm, line.LengthMm))
        {
            return piece;
        }

        double at = FromStart(edge, line.LengthMm, _zipMm - part.FromTopMm);
        Point2D from = line.PointAtMm(at);
        int index = line.Locate(at, out double t);
        Direction along = line.SegmentsRaw[index].DirectionAtRaw(t);
        Direction inward = panel.SeamOutline().SignedAreaMm2 > 0 ? along.TurnedLeft : along.TurnedRight;
        return piece.WithInternalLine("zip stop", InternalLineKind.Stop, CurvePath.FromLine(new LineSegment(from, from + inward.TimesMm(StopMm))));
    }

    // The seam that a waist edge ends in.
    private static PanelEdge? SeamAtWaist(Panel panel)
    {
        int waist = Array.FindIndex(panel.EdgesRaw, edge => edge.Role == EdgeRole.Opening && edge.Name != FacedWaistDesign.Free);
        return waist < 0 ? null : panel.EdgesRaw[(waist + 1) % panel.EdgesRaw.Length];
    }

    private (PanelName Panel, EdgeName Edge, double FromTopMm)? Part(Panel panel)
    {
        int index = _seam.FindIndex(part => part.Panel == panel.Name);
        return index < 0 ? null : _seam[index];
    }

    private bool Stands(double fromTopMm, double lengthMm) => _zipMm > fromTopMm && _zipMm < fromTopMm + lengthMm;

    // A centre edge runs up to the waist, a seam that follows the waist runs down from it.
    private static double FromStart(PanelEdge edge, double lengthMm, double fromTopMm) => edge.Role == EdgeRole.Centre ? lengthMm - fromTopMm : fromTopMm;
}
