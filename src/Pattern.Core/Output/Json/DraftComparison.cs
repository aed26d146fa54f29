using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>Whether a block that was drafted anew has the panels that a file says it has.</summary>
internal static class DraftComparison
{
    private const string Step = "drafting anew from a file";

    internal static void RefuseDifference(Block read, Block drafted)
    {
        RequireSame("the panels", "block", read.Panels.Select(panel => panel.Name.Text), drafted.Panels.Select(panel => panel.Name.Text));
        for (int i = 0; i < read.Panels.Count; i++)
        {
            RefuseDifference(read.Panels[i], drafted.Panels[i]);
        }
    }

    private static void RefuseDifference(Panel read, Panel drafted)
    {
        RequireSame("the edges of panel " + read.Name, read.Name.Text, read.Edges.Select(Described), drafted.Edges.Select(Described));
        RequireSame("the notches of panel " + read.Name, read.Name.Text, read.Notches.Select(Described), drafted.Notches.Select(Described));
        RequireSame("the landmarks of panel " + read.Name, read.Name.Text, read.Landmarks.Select(Described), drafted.Landmarks.Select(Described));
        RequireSame("the inside darts of panel " + read.Name, read.Name.Text, read.InsideDarts.Select(_ => "dart"), drafted.InsideDarts.Select(_ => "dart"));
        for (int e = 0; e < read.EdgesRaw.Length; e++)
        {
            PanelEdge edge = read.EdgesRaw[e];
            PanelEdge again = drafted.EdgesRaw[e];
            for (int i = 0; i < edge.Stretches.Count; i++)
            {
                RequireNear(read, "edge " + edge.Name.Text, PathComparison.ApartMm(edge.Stretches[i], again.Stretches[i]));
            }

            for (int i = 0; i < edge.Darts.Count; i++)
            {
                RequireNear(read, edge.Darts[i].Name.ToString(), ApartMm(Points(edge.Darts[i]), Points(again.Darts[i])));
            }
        }

        RequireNear(read, "the grainline", ApartMm([read.Grainline.Start, read.Grainline.End], [drafted.Grainline.Start, drafted.Grainline.End]));
        RequireNear(read, "a notch", ApartMm(read.Notches.Select(notch => notch.Position), drafted.Notches.Select(notch => notch.Position)));
        RequireNear(read, "a landmark", ApartMm(read.Landmarks.Select(mark => mark.Position), drafted.Landmarks.Select(mark => mark.Position)));
        RequireNear(read, "an inside dart", ApartMm(read.InsideDarts.SelectMany(dart => dart.Corners()), drafted.InsideDarts.SelectMany(dart => dart.Corners())));
    }

    private static string Described(PanelEdge edge)
        => $"{edge.Name}, {edge.Role}, {edge.Darts.Count} darts" + string.Concat(edge.Darts.Select(dart => ", " + Described(dart)));

    private static string Described(Dart dart)
        => (dart.IsTuck ? "a tuck of " + JsonValue.Number(dart.Shape.TuckMm) + " mm " : string.Empty) + "pressed toward the " + JsonWords.Ways.WordOf(dart.PressedToward);

    private static string Described(Landmark mark) => mark.Name.Text + (mark.Kind == LandmarkKind.Point ? string.Empty : ", " + JsonWords.LandmarkKinds.WordOf(mark.Kind));

    private static string Described(Notch notch) => notch.Edge.Text + " " + JsonValue.Number(notch.Count);

    private static Point2D[] Points(Dart dart) => [dart.StartLeg, dart.Apex, dart.EndLeg];

    private static double ApartMm(IEnumerable<Point2D> read, IEnumerable<Point2D> drafted)
        => read.Zip(drafted, (one, other) => one.DistanceMm(other)).DefaultIfEmpty(0).Max();

    private static void RequireNear(Panel panel, string what, double apartMm)
    {
        if (apartMm <= PathComparison.AllowedMm)
        {
            return;
        }

        Length apart = Length.FromMillimeters(apartMm);
        Length allowed = Length.FromMillimeters(PathComparison.AllowedMm);
        throw new ConstructionException(DiagnosticCode.DraftDiffers, what + " of panel " + panel.Name, apart, allowed)
        {
            Step = Step,
            Landmark = panel.Name.Text,
            Measured = apart,
            Allowed = allowed,
        };
    }

    private static void RequireSame(string what, string landmark, IEnumerable<string> read, IEnumerable<string> drafted)
    {
        string file = string.Join("; ", read);
        string again = string.Join("; ", drafted);
        if (file != again)
        {
            throw new ConstructionException(DiagnosticCode.DraftDiffers, what, "being " + again, "what the file has: " + file) { Step = Step, Landmark = landmark };
        }
    }
}
