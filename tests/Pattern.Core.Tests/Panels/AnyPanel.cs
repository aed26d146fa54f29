using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Panels;

/// <summary>Panels of all sorts, 0 to 4 darts on any edges: bodice-like, free outlines of straight and curved edges, and panels of drafted skirts.</summary>
internal static class AnyPanel
{
    /// <summary>What a panel is made from; the same recipe can be made at another scale.</summary>
    internal static Gen<PanelRecipe> Recipes { get; } =
        from shape in Gen.Frequency((2, Gen.Constant(0)), (3, Gen.Choose(3, 7)))
        from numbers in Gen.ArrayOf(Bodies.Range(0, 1), 64)
        from dartCount in Gen.Choose(0, 4)
        from notchCount in Gen.Choose(0, 3)
        from mirrored in Gen.Elements(false, true)
        let recipe = new PanelRecipe(shape, numbers, dartCount, notchCount, mirrored)
        where recipe.IsPossible()
        select recipe;

    /// <summary>Panels made from recipes, and now and then one of a real skirt.</summary>
    internal static Gen<Panel> Panels { get; } = Gen.Frequency(
        (5, Recipes.Select(recipe => recipe.Make())),
        (1, from body in Gen.Elements(Bodies.Ansur.AsEnumerable())
            from asked in Bodies.Options
            from back in Gen.Elements(false, true)
            let block = asked.Apply(SkirtBlock.For(body)).Draft()
            select back ? block.Back : block.Front));

    /// <summary>A panel and one of its edges.</summary>
    internal static Gen<(Panel Panel, PanelEdge Edge)> WithEdge { get; } =
        from panel in Panels
        from index in Gen.Choose(0, 1000)
        select (panel, panel.Edges[index % panel.Edges.Count]);
}

/// <summary>Numbers between 0 and 1 that a panel is made from.</summary>
/// <param name="Corners">0 for a bodice-like panel, else the number of corners of a free outline.</param>
/// <param name="Numbers">Used one after the other.</param>
/// <param name="DartCount">How many darts are tried; those that have no room are left out.</param>
/// <param name="NotchCount">How many notches there are.</param>
/// <param name="Mirrored">Whether the panel is drawn the other way round.</param>
public sealed record PanelRecipe(int Corners, double[] Numbers, int DartCount, int NotchCount, bool Mirrored)
{
    internal Panel Make(double scale = 1)
    {
        var numbers = new Queue<double>(Numbers);
        double Between(double least, double most) => least + ((most - least) * numbers.Dequeue());
        Point2D At(double x, double y) => Point2D.FromMillimeters((Mirrored ? -x : x) * scale, y * scale);

        (string Name, CurvePath Path)[] edges = Corners == 0 ? Bodice(Between, At) : Free(Between, At);
        double[] lengths = [.. edges.Select(e => e.Path.Length.Millimeters)];
        PanelBuilder builder = Panel.Named(PanelName.Of("any"));
        foreach ((string name, CurvePath path) in edges)
        {
            builder = builder.WithEdge(EdgeName.Of(name), EdgeRole.Seam, path);
        }

        for (int i = 0; i < NotchCount; i++)
        {
            int edge = (int)(numbers.Dequeue() * edges.Length * 0.999);
            builder = builder.WithNotch(EdgeName.Of(edges[edge].Name), Length.FromMillimeters(lengths[edge] * Math.Round(0.05 + (0.9 * numbers.Dequeue()), 3)));
        }

        Panel panel = builder.WithLandmark(LandmarkName.Of("first corner"), edges[0].Path.Start).Make();
        double size = Math.Sqrt(Math.Abs(panel.SeamOutline().SignedArea.SquareMillimeters));
        for (int i = 0; i < DartCount; i++)
        {
            EdgeName edge = EdgeName.Of(edges[(int)(numbers.Dequeue() * edges.Length * 0.999)].Name);
            double share = 0.1 + (0.8 * numbers.Dequeue());
            double intake = size * (0.02 + (0.1 * numbers.Dequeue()));
            double length = size * (0.15 + (0.35 * numbers.Dequeue()));
            try
            {
                panel = panel.TakeInDart(edge.At(Ratio.FromDecimalFractions(share)), Length.FromMillimeters(intake), Length.FromMillimeters(length));
            }
            catch (ConstructionException refusal) when (Refusals.HasNoRoom(refusal))
            {
                // No room for this one: another dart, a corner or the other side of the panel is in its way.
            }
        }

        return panel;
    }

    /// <summary>Whether the outline is one: now and then a free one crosses itself, and making it is refused.</summary>
    internal bool IsPossible()
    {
        try
        {
            _ = Make();
            return true;
        }
        catch (ConstructionException e) when (e.Code == DiagnosticCode.OutlineWouldCross)
        {
            return false;
        }
    }

    public override string ToString() => $"{(Corners == 0 ? "bodice" : Corners + " corners")}, {DartCount} darts, mirrored {Mirrored}: {Make().Describe()}";

    private static (string, CurvePath)[] Bodice(Func<double, double, double> between, Func<double, double, Point2D> at)
    {
        double waist = between(150, 260);
        double side = between(150, 240);
        double chest = waist + between(20, 70);
        double shoulderIn = between(10, 60);
        double height = side + between(140, 220);
        double neck = between(55, 90);
        double neckDrop = between(20, 110);
        double shoulderDrop = between(20, 60);
        double waistRise = between(-20, 20);
        Point2D tip = at(chest - shoulderIn - between(10, 30), height - shoulderDrop);
        Point2D neckPoint = at(neck, height);
        Point2D neckCentre = at(0, height - neckDrop);
        Point2D underarm = at(chest, side);
        Point2D sideWaist = at(waist, waistRise);
        return
        [
            ("waist", CurvePath.From(at(0, 0)).CurveTo(at(waist * 0.3, 0), at(waist * 0.7, waistRise), sideWaist)),
            ("side", CurvePath.From(sideWaist).LineTo(underarm)),
            ("armhole", CurvePath.From(underarm).CurveTo(
                at(chest - (shoulderIn * 1.2), side + (0.03 * height)), at(chest - (shoulderIn * 1.5), side + ((height - side) * 0.4)), tip)),
            ("shoulder", CurvePath.From(tip).LineTo(neckPoint)),
            ("neckline", CurvePath.From(neckPoint).CurveTo(at(neck * 0.95, height - (neckDrop * 0.55)), at(neck * 0.55, height - neckDrop), neckCentre)),
            ("centre", CurvePath.From(neckCentre).LineTo(at(0, 0))),
        ];
    }

    // Corners in order around a middle point, so the outline is simple; edges straight, bent, arcs, or straight and then curved.
    private (string, CurvePath)[] Free(Func<double, double, double> between, Func<double, double, Point2D> at)
    {
        var corners = new Point2D[Corners];
        for (int i = 0; i < Corners; i++)
        {
            double angle = 2 * Math.PI * (i + between(0, 0.5)) / Corners;
            double reach = between(160, 300);
            corners[i] = at(reach * Math.Cos(angle), reach * Math.Sin(angle));
        }

        var edges = new (string, CurvePath)[Corners];
        for (int i = 0; i < Corners; i++)
        {
            Point2D from = corners[i];
            Point2D to = corners[(i + 1) % Corners];
            int kind = (int)between(0, 3.999);
            double bulge = between(-0.09, 0.09);
            bulge += 0.01 * Math.Sign(bulge);
            Vector2D chord = to - from;
            Vector2D left = chord.Rotated(Angle.FromDegrees(90));
            edges[i] = ("edge " + (i + 1), kind switch
            {
                0 => CurvePath.From(from).LineTo(to),
                1 => CurvePath.From(from).CurveTo(from + (chord * 0.3) + (left * bulge), from + (chord * 0.7) + (left * bulge), to),

                // An arc over a chord c whose centre lies c / (8 bulge) to the right of its middle.
                2 => CurvePath.From(from).ArcAround(from + (chord * 0.5) - (left * (1 / (8 * bulge))), Angle.FromRadians(-2 * Math.Atan(4 * bulge))),
                _ => CurvePath.From(from).LineTo(from + (chord * 0.4)).CurveTo(from + (chord * 0.6), from + (chord * 0.8) + (left * bulge), to),
            });
        }

        return edges;
    }
}

internal static class PanelDescription
{
    /// <summary>Enough to draw a failing case by hand.</summary>
    internal static string Describe(this Panel panel) => string.Join(
        "; ",
        panel.Edges.Select(e => $"{e.Name} {e.SewnLength.Millimeters:0.0} mm from {e.Start}, {e.Darts.Count} darts"));
}
