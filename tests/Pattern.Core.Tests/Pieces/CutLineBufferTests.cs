using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Distance;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Blocks;
using Pattern.Core.Tests.Panels;
using UnitsNet;
using static Pattern.Core.Tests.Pieces.SamplePieces;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace Pattern.Core.Tests.Pieces;

/// <summary>Cut lines against the buffer that NetTopologySuite draws around the seam line.</summary>
/// <remarks>
/// <para>How far apart they may be: our parallels are fitted within 0.001 mm, and the straight lines that stand for seam line and cut line keep within 0.0001 mm each.
/// A buffer of straight lines turns its corners by the directions of the last ones, which differ from the tangent by the square root of
/// 2 x 0.0001 / radius: at the point of a mitre 20 mm long, 0.04 mm and more. So each segment begins and ends with a step along its tangent, and the buffer must
/// not drop these steps again to simplify its input: what is left there is step squared / (2 x radius), nothing. Together 0.0012 mm; twice that
/// where two parallels cross at a corner that points in, which none of these panels has sharper than 60 degrees.</para>
/// <para>Areas then differ by far less than that times the perimeter, as a fitted parallel lies to either side of the true one.</para>
/// </remarks>
public class CutLineBufferTests
{
    private const double ApartMm = 0.0024;
    private const double AreaShare = 1e-5;
    private const double FlatMm = 0.0001;
    private const double TangentStepMm = 0.001;

    // The rule of Corner: a point more than four allowances away is cut off, one allowance beyond the corner.
    private static readonly double SharpDegrees = 2 * Math.Asin(0.25) * 180 / Math.PI;

    [Property(MaxTest = 100)]
    public Property CutLine_OfAnyPanelWithoutDarts_AgreesWithABufferOfTheSeamLine() => Prop.ForAll(
        AnyPanel.Recipes.ToArbitrary(),
        Bodies.Range(3, 25).ToArbitrary(),
        (recipe, allowance) =>
        {
            Panel panel = (recipe with { DartCount = 0 }).Make();
            if (Corners(panel).All(corner => Math.Abs(corner.InsideDegrees - SharpDegrees) > 0.1))
            {
                Compare(panel, allowance);
            }
        });

    // The buffer knows nothing of darts. Where one is folded, another test folds it; everywhere else the two lines are the same.
    [Property(MaxTest = 40)]
    public Property CutLine_OfAnySkirt_AgreesWithABufferOfTheSeamLineBesideItsDarts() => Prop.ForAll(CutLineTests.Skirts, any =>
    {
        Compare(any.Block.Back, any.AllowancesMm[0]);
        Compare(any.Block.Front, any.AllowancesMm[0]);
    });

    private static void Compare(Panel panel, double allowanceMm)
    {
        PatternPiece piece = PatternPiece.From(panel).WithAllowance(Mm(allowanceMm));
        CurvePath cutLine;
        try
        {
            cutLine = piece.CutLine;
        }
        catch (ConstructionException refusal) when (IsOfACutLine(refusal))
        {
            // What is refused, and that it is rare, is for other tests.
            return;
        }

        Polygon seam = Polygon(piece.SeamLine);
        Polygon cut = Polygon(cutLine);
        Shape buffer = seam.Buffer(allowanceMm, new BufferParameters { JoinStyle = JoinStyle.Mitre, MitreLimit = 1000, SimplifyFactor = 0 });
        foreach ((Point2D at, Direction outward, double inside) in Corners(panel))
        {
            buffer = inside < SharpDegrees ? Without(buffer, HalfPlane(at + outward.TimesMm(allowanceMm), outward)) : buffer;
        }

        Shape darts = AroundDarts(panel, allowanceMm);
        double boundMm = ApartMm + (Corners(panel).Max(corner => Unjoined(180 - corner.InsideDegrees)) * allowanceMm);
        AssertNear(cut, buffer, darts, boundMm);
        AssertNear(buffer, cut, darts, boundMm);
        Assert.Equal(1, Without(cut, darts).Area / Without(buffer, darts).Area, AreaShare);
        Assert.Equal(cut.Area, piece.CutArea.SquareMillimeters, FlatMm * cut.ExteriorRing.Length);
        Assert.Equal(cut.ExteriorRing.Length, piece.CutPerimeter.Millimeters, 0.01);
        Assert.Equal(seam.ExteriorRing.Length, piece.SeamPerimeter.Millimeters, 0.01);
    }

    // A dart's fold ends where its leg, drawn on, meets the cut line: with legs that lean up to 40 degrees, within 1.3 allowances of its cap.
    private static Shape AroundDarts(Panel panel, double allowanceMm) => panel.Edges.SelectMany(edge => edge.Darts)
        .Select(dart => GeometryFactory.Default.CreateLineString([.. dart.Cap.Flatten(Mm(FlatMm)).Select(On)]).Buffer(1.3 * allowanceMm))
        .Aggregate((Shape)GeometryFactory.Default.CreatePolygon(), (all, one) => all.Union(one));

    // What the buffer lacks at a corner where the sides turn by less than a twentieth of a radian: it makes no joint there, but cuts across, by versine of the turn.
    private static double Unjoined(double turnDegrees) => turnDegrees is > 0 and < 0.05 * 180 / Math.PI ? 1 - Math.Cos(turnDegrees * Math.PI / 180) : 0;

    private static void AssertNear(Shape shape, Shape other, Shape except, double boundMm)
    {
        var line = new IndexedFacetDistance(other.Boundary);
        foreach (Point point in shape.Coordinates.Select(c => GeometryFactory.Default.CreatePoint(c)))
        {
            double apartMm = line.Distance(point);
            Assert.True(apartMm <= boundMm || except.Contains(point), $"{apartMm} mm apart at {point}, allowed {boundMm} mm");
        }
    }

    private static Shape Without(Shape shape, Shape other) => OverlayNGRobust.Overlay(shape, other, SpatialFunction.Difference);

    private static Polygon HalfPlane(Point2D edge, Direction outward)
    {
        Vector2D side = outward.TurnedLeft.TimesMm(1000);
        Point2D far = edge + outward.TimesMm(5000);
        return GeometryFactory.Default.CreatePolygon([On(edge + side), On(edge - side), On(far - side), On(far + side), On(edge + side)]);
    }

    private static IEnumerable<(Point2D At, Direction Outward, double InsideDegrees)> Corners(Panel panel)
    {
        double hand = Math.Sign(panel.SeamOutline().SignedArea.SquareMillimeters);
        for (int i = 0; i < panel.Edges.Count; i++)
        {
            Direction arriving = panel.Edges[i].Stretches[^1].EndDirection;
            PanelEdge next = panel.Edges[(i + 1) % panel.Edges.Count];
            Angle turn = arriving.AngleTo(next.Stretches[0].StartDirection);
            Direction middle = arriving.Turned(turn / 2);
            yield return (next.Start, hand > 0 ? middle.TurnedRight : middle.TurnedLeft, 180 - (hand * turn.Degrees));
        }
    }

    private static Polygon Polygon(CurvePath path)
    {
        var ring = new List<Coordinate>();
        foreach (PathSegment segment in path.Segments)
        {
            ring.Add(On(segment.Start));
            if (segment.Start.DistanceMm(segment.End) > 4 * TangentStepMm)
            {
                Point2D[] vertices = CurvePath.FromSegments([segment]).Flatten(Mm(FlatMm));
                ring.Add(On(segment.Start + segment.StartDirection.TimesMm(TangentStepMm)));
                ring.AddRange(vertices.Where(p => Math.Min(p.DistanceMm(segment.Start), p.DistanceMm(segment.End)) > 2 * TangentStepMm).Select(On));
                ring.Add(On(segment.End - segment.EndDirection.TimesMm(TangentStepMm)));
            }
        }

        // Ends that differ by rounding alone would have a direction of their own.
        return GeometryFactory.Default.CreatePolygon([.. ring, ring[0]]);
    }

    private static Coordinate On(Point2D p) => new(p.X.Millimeters, p.Y.Millimeters);
}
