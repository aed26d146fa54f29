using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Styling;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using Xunit.Abstractions;

namespace Pattern.Core.Tests.Styling;

/// <summary>Darts of a bodice turned, split and eased; measured with chords between many points, and angles between chords.</summary>
public class DartTurnTests(ITestOutputHelper output)
{
    private static readonly Arbitrary<BodyMeasurements> AnyBody = BodiceBodies.Any.ToArbitrary();

    private static readonly Dictionary<string, Func<Block, Block>> Designs = new()
    {
        ["shoulder"] = block => block.BustDartTo(BustDartPlace.Shoulder),
        ["neckline"] = block => block.BustDartTo(BustDartPlace.Neckline),
        ["armhole"] = block => block.BustDartTo(BustDartPlace.Armhole),
        ["low on the side"] = block => block.BustDartTo(BustDartPlace.Side, along: Ratio.FromPercent(80)),
        ["waist"] = block => block.BustDartTo(BustDartPlace.Waist),
        ["centre front"] = block => block.BustDartTo(BustDartPlace.CentreFront),
        ["half to the shoulder"] = block => block.BustDartTo(BustDartPlace.Shoulder, Ratio.FromPercent(50)),
        ["waist dart to the side"] = block => block.WaistDartTo(BustDartPlace.Side),
        ["all to the armhole"] = block => block.BustDartTo(BustDartPlace.Waist).WaistDartTo(BustDartPlace.Armhole),
        ["split"] = block => block.BustDartSplit(),
        ["back to the neckline"] = block => block.ShoulderDartTo(ShoulderDartPlace.Neckline),
        ["back to the armhole"] = block => block.ShoulderDartTo(ShoulderDartPlace.Armhole),
        ["back eased"] = block => block.ShoulderDartEased(),
    };

    public static TheoryData<string> Names => new(Designs.Keys);

    [Theory]
    [MemberData(nameof(Names))]
    public void Design_BodyOfTheHandbook_PassesEveryCheckAndItsPiecesToo(string name)
    {
        Block bodice = Designs[name](BodiceBlock.For(BodiceBodies.Handbook).Draft());
        foreach (Step step in bodice.Steps.Skip(bodice.Steps.Count - 8))
        {
            output.WriteLine(step.ToString());
        }

        Assert.True(bodice.Report.Passed, bodice.Report.ToString());
        PieceSet pieces = BodicePattern.From(bodice);
        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Design_WomenOfAnsur_PassesEveryCheckOrIsRefusedWithItsReason(string name)
    {
        int passed = 0;
        var refused = new List<string>();
        foreach (BodyMeasurements body in BodiceBodies.Ansur.Where((_, i) => i % 40 == 1))
        {
            try
            {
                Block bodice = Designs[name](BodiceBlock.For(body).Draft());
                Assert.True(bodice.Report.Passed, body + "\n" + bodice.Report);
                passed++;
            }
            catch (ConstructionException e) when (e.Code is DiagnosticCode.DesignRefused or DiagnosticCode.MethodDeclines)
            {
                refused.Add(e.Message);
            }
        }

        output.WriteLine($"{passed} passed, {refused.Count} refused");
        foreach (string reason in refused.GroupBy(reason => reason).Select(same => same.Count() + " x " + same.Key))
        {
            output.WriteLine(reason);
        }

        Assert.True(passed >= 40, string.Join("\n", refused));
    }

    // Common knowledge of every dart: it points at what it shapes. The handbook's block (from memory) has both at the bust point.
    [Fact]
    public void Draft_WomenOfAnsur_BothDartsOfTheFrontPointAtTheBustPoint()
    {
        foreach (BodyMeasurements body in BodiceBodies.Ansur.Where((_, i) => i % 40 == 1))
        {
            BodiceBlock bodice = BodiceBlock.For(body).Draft();
            foreach (DartName name in bodice.Front.Darts.Select(dart => dart.Name).Where(name => name.Number == 1))
            {
                Assert.InRange(PassesByMm(bodice.Front.FindDart(name), bodice.BustPoint), 0, 0.01);
            }
        }
    }

    // Closed form, the pivot: a wedge of the angle a opens by 2 d sin(a / 2) at the distance d.
    [Theory]
    [InlineData(BustDartPlace.Shoulder)]
    [InlineData(BustDartPlace.Neckline)]
    [InlineData(BustDartPlace.Armhole)]
    [InlineData(BustDartPlace.CentreFront)]
    public void BustDartTo_AnyEdge_OpensByTheChordOfTheSameAngle(BustDartPlace to)
    {
        BodiceBlock block = BodiceBlock.For(BodiceBodies.Handbook).Draft();
        double angle = AngleAt(block.BustPoint, block.Front.FindDart(EdgeName.SideSeam.Dart(1)));
        Panel front = block.BustDartTo(to).FindPanel(PanelName.Front);
        Dart dart = front.Darts.Single(one => one.Name.Edge != EdgeName.Waist);
        double reach = Distance(block.BustPoint, dart.StartLeg);
        Assert.Equal(2 * reach * Math.Sin(angle / 2), Distance(dart.StartLeg, dart.EndLeg), 0.01);
        Assert.Equal(reach, Distance(block.BustPoint, dart.EndLeg), 0.01);
        Assert.InRange(PassesByMm(dart, block.BustPoint), 0, 0.01);
        Assert.Equal(880 / 30.0, Distance(block.BustPoint, dart.Apex), 0.01);
    }

    [Fact]
    public void BustDartTo_Waist_MakesOneDartOfBothAngles()
    {
        BodiceBlock block = BodiceBlock.For(BodiceBodies.Handbook).Draft();
        Block bodice = block.BustDartTo(BustDartPlace.Waist);
        Dart one = bodice.FindPanel(PanelName.Front).Darts.Single();
        Assert.Equal(block.Front.Darts.Sum(dart => AngleAt(block.BustPoint, dart)), AngleAt(block.BustPoint, one), 1e-5);
    }

    // Those of the survey who have a bust dart and get this design at all; both lines and points.
    [Theory]
    [InlineData(BustDartPlace.Shoulder)]
    [InlineData(BustDartPlace.Armhole)]
    [InlineData(BustDartPlace.CentreFront)]
    public void BustDartTo_ThereAndBack_RestoresTheFront(BustDartPlace to)
    {
        foreach (BodyMeasurements body in BodiceBodies.Ansur.Where((_, i) => i % 100 == 3))
        {
            BodiceBlock block = BodiceBlock.For(body).Draft();
            Block away;
            try
            {
                away = block.BustDartTo(to);
            }
            catch (ConstructionException e) when (e.Code == DiagnosticCode.DesignRefused)
            {
                continue;
            }

            AssertSame(block.Front, away.BustDartTo(BustDartPlace.Side).FindPanel(PanelName.Front));
        }
    }

    [Fact]
    public void WaistDartTo_TheShareThatCameFromTheSide_RestoresTheFront()
    {
        BodiceBlock block = BodiceBlock.For(BodiceBodies.Handbook).Draft();
        double side = AngleAt(block.BustPoint, block.Front.FindDart(EdgeName.SideSeam.Dart(1)));
        double waist = AngleAt(block.BustPoint, block.Front.FindDart(EdgeName.Waist.Dart(1)));
        Block back = block.BustDartTo(BustDartPlace.Waist).WaistDartTo(BustDartPlace.Side, Ratio.FromDecimalFractions(side / (side + waist)));
        AssertSame(block.Front, back.FindPanel(PanelName.Front));
    }

    [Property(MaxTest = 60)]
    public Property BustDartTo_AnyBodyPlaceAndShare_KeepsAngleLengthsAndArea() => Prop.ForAll(
        AnyBody,
        Gen.Elements(Enum.GetValues<BustDartPlace>()).ToArbitrary(),
        Bodies.Range(0.1, 1).ToArbitrary(),
        (body, to, share) =>
        {
            BodiceBlock block;
            try
            {
                block = BodiceBlock.For(body).Draft();
            }
            catch (ConstructionException)
            {
                return true.Label("no block");
            }

            Block bodice;
            try
            {
                bodice = block.BustDartTo(to, Ratio.FromDecimalFractions(share));
            }
            catch (ConstructionException e) when (e.Code == DiagnosticCode.DesignRefused)
            {
                return true.Label("refused");
            }

            Panel was = block.Front;
            Panel now = bodice.FindPanel(PanelName.Front);
            double before = was.Darts.Where(dart => PassesByMm(dart, block.BustPoint) < 1).Sum(dart => AngleAt(block.BustPoint, dart));
            double after = now.Darts.Where(dart => PassesByMm(dart, block.BustPoint) < 1).Sum(dart => AngleAt(block.BustPoint, dart));
            double longer = Edges.Max(edge => Math.Abs(Sewn.LengthMm(was.FindEdge(edge)) - Sewn.LengthMm(now.FindEdge(edge))));

            // What rounding a line off adds or takes is a sliver along the edges that were drawn anew, less than 3 mm high.
            EdgeName[] drawnAnew = to switch
            {
                BustDartPlace.Shoulder => [EdgeName.Shoulder, EdgeName.Armhole],
                BustDartPlace.Neckline => [EdgeName.Neckline],
                BustDartPlace.Armhole => [EdgeName.Armhole],
                BustDartPlace.CentreFront => [EdgeName.Waist, EdgeName.SideSeam, EdgeName.Centre],
                _ => [EdgeName.Waist, EdgeName.SideSeam],
            };
            double sliver = 3 * drawnAnew.Sum(edge => Sewn.LengthMm(was.FindEdge(edge)));
            double area = Math.Abs(AreaOutsideMm2(was, block.BustPoint) - AreaOutsideMm2(now, block.BustPoint));
            double backSame = Edges.Max(edge => Math.Abs(Sewn.LengthMm(block.Back.FindEdge(edge)) - Sewn.LengthMm(bodice.FindPanel(PanelName.Back).FindEdge(edge))));
            return (bodice.Report.Passed && Math.Abs(before - after) < 1e-4 && longer < 0.01 && area < sliver && backSame == 0)
                .Label(FormattableString.Invariant($"{to} {share}: angle {before} {after}, length {longer}, area {area} of {sliver}, {string.Join("; ", bodice.Report.Failures)}"));
        });

    // A4: 0.5 to 1 cm of shoulder is eased instead of the dart (common practice, no source).
    [Fact]
    public void ShoulderDartEased_BodyOfTheHandbook_EasesWhatClothTakes()
    {
        BodiceBlock block = BodiceBlock.For(BodiceBodies.Handbook).Draft();
        Block eased = block.ShoulderDartEased();
        Panel back = eased.FindPanel(PanelName.Back);
        Assert.DoesNotContain(back.Darts, dart => dart.Name.Edge != EdgeName.Waist);
        Assert.InRange(Sewn.LengthMm(back.FindEdge(EdgeName.Shoulder)) - Sewn.LengthMm(eased.FindPanel(PanelName.Front).FindEdge(EdgeName.Shoulder)), 5, 10);
        ConstructionException refusal = Assert.Throws<ConstructionException>(() => block.ShoulderDartEased(Ratio.FromPercent(100)));
        Assert.Equal(DiagnosticCode.DesignRefused, refusal.Code);
        Assert.Contains("6 mm is the most", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Refusals_SayWhyAndWhatToDo()
    {
        BodiceBlock block = BodiceBlock.For(BodiceBodies.Handbook).Draft();
        AssertRefused("stands there already", () => block.BustDartTo(BustDartPlace.Side));
        AssertRefused("least that can be stitched to a point", () => BodiceBlock.For(BodiceBodies.Centimetres(66, 54)).Draft().BustDartTo(BustDartPlace.CentreFront, standsOff: Length.FromCentimeters(10)));
        AssertRefused("least that can be sewn there", () => block.BustDartTo(BustDartPlace.Shoulder, along: Ratio.FromPercent(2)));
        AssertRefused("no room for 4 darts", () => block.BustDartTo(BustDartPlace.Shoulder).BustDartSplit(4, Length.FromCentimeters(5)));
        AssertRefused("design of a bodice", () => SkirtBlock.For(Bodies.Example).Draft().BustDartTo(BustDartPlace.Side));
        AssertRefused("no shoulder dart", () => BodiceBlock.For(BodiceBodies.Handbook).WithBackShoulder(BackShoulder.Eased).Draft().ShoulderDartTo(ShoulderDartPlace.Neckline));

        // A front as long as the back has no bust dart.
        BodyMeasurements flat = BodiceBodies.Handbook.With(BodyMeasurement.BackNeckPointToWaist, "43").With(BodyMeasurement.SideNeckPointToWaist, "36.5");
        AssertRefused("no bust dart", () => BodiceBlock.For(flat).Draft().BustDartTo(BustDartPlace.Shoulder));
    }

    [Fact]
    public void ToBuilder_AnotherBody_TurnsItsDartAsWell()
    {
        Block turned = BodiceBlock.For(BodiceBodies.Handbook).Draft().BustDartTo(BustDartPlace.Shoulder);
        Block other = turned.ToBuilder().For(BodiceBodies.Centimetres(96, 76)).Draft();
        Assert.Single(other.FindPanel(PanelName.Front).FindEdge(EdgeName.Shoulder).Darts);
        Assert.True(other.Report.Passed, other.Report.ToString());
    }

    private static readonly EdgeName[] Edges = [EdgeName.Neckline, EdgeName.Shoulder, EdgeName.Armhole, EdgeName.SideSeam, EdgeName.Waist];

    private static void AssertRefused(string reason, Func<Block> make)
    {
        ConstructionException refusal = Assert.Throws<ConstructionException>(() => make());
        Assert.Equal(DiagnosticCode.DesignRefused, refusal.Code);
        Assert.Contains(reason, refusal.Message, StringComparison.Ordinal);
    }

    // What a cutter sees before any figure: a line that was smooth on the block has no corner after a dart was turned, neither where its parts meet nor where a closed dart brings two of them together.
    // Armhole, neckline and waist are looked at by the directions of the drawn parts, not by the report.
    [Theory]
    [MemberData(nameof(Names))]
    public void Design_WomenOfAnsur_HasNoCornerInsideALine(string name)
    {
        int drawn = 0;
        foreach (BodyMeasurements body in BodiceBodies.Ansur.Where((_, i) => i % 100 == 3).Append(BodiceBodies.Handbook))
        {
            Block bodice;
            try
            {
                bodice = Designs[name](BodiceBlock.For(body).Draft());
            }
            catch (ConstructionException e) when (e.Code is DiagnosticCode.DesignRefused or DiagnosticCode.MethodDeclines)
            {
                continue;
            }

            drawn++;
            foreach (Panel panel in bodice.Panels)
            {
                foreach (PanelEdge edge in panel.Edges)
                {
                    Assert.True(SharpestCornerDegrees(edge) < 0.1, $"{body}: {panel.Name} {edge.Name}, {SharpestCornerDegrees(edge):0.00} degrees");
                }
            }
        }

        Assert.InRange(drawn, 15, 30);
    }

    internal static double SharpestCornerDegrees(PanelEdge edge) => edge.Stretches.SelectMany(stretch => stretch.Segments.Zip(stretch.Segments.Skip(1), (one, next) =>
    {
        Direction a = one.EndDirection;
        Direction b = next.StartDirection;
        return Math.Abs(Math.Atan2((a.X * b.Y) - (a.Y * b.X), (a.X * b.X) + (a.Y * b.Y))) * 180 / Math.PI;
    })).DefaultIfEmpty(0).Max();

    private static void AssertSame(Panel expected, Panel now)
    {
        Assert.Equal(expected.Darts.Count(), now.Darts.Count());
        foreach ((Dart one, Dart other) in expected.Darts.Zip(now.Darts))
        {
            Assert.InRange(new[] { Distance(one.Apex, other.Apex), Distance(one.StartLeg, other.StartLeg), Distance(one.EndLeg, other.EndLeg) }.Max(), 0, 0.01);
        }

        foreach (EdgeName edge in Edges.Append(EdgeName.Centre))
        {
            (double X, double Y)[] was = [.. Sewn.Stretches(expected.FindEdge(edge)).SelectMany(points => points)];
            (double X, double Y)[] is_ = [.. Sewn.Stretches(now.FindEdge(edge)).SelectMany(points => points)];
            foreach ((double X, double Y) point in is_.Where((_, i) => i % 25 == 0))
            {
                Assert.InRange(was.Zip(was.Skip(1), (a, b) => OffMm(a, b, point)).Min(), 0, 0.01);
            }
        }
    }

    private static double OffMm((double X, double Y) a, (double X, double Y) b, (double X, double Y) p)
    {
        (double x, double y) = (b.X - a.X, b.Y - a.Y);
        double t = Math.Clamp((((p.X - a.X) * x) + ((p.Y - a.Y) * y)) / Math.Max(1e-30, (x * x) + (y * y)), 0, 1);
        return Math.Sqrt(Math.Pow(p.X - a.X - (t * x), 2) + Math.Pow(p.Y - a.Y - (t * y), 2));
    }

    // The panel with every wedge taken out up to the bust point: by points along its edges, darts that reach it left out.
    private static double AreaOutsideMm2(Panel panel, Point2D bustPoint)
    {
        var points = new List<(double X, double Y)>();
        foreach (PanelEdge edge in panel.Edges)
        {
            (double X, double Y)[][] stretches = [.. Sewn.Stretches(edge)];
            for (int i = 0; i < stretches.Length; i++)
            {
                points.AddRange(stretches[i]);
                if (i < edge.Darts.Count)
                {
                    Dart dart = edge.Darts[i];
                    Point2D point = PassesByMm(dart, bustPoint) < 1 ? bustPoint : dart.Apex;
                    points.Add((point.X.Millimeters, point.Y.Millimeters));
                }
            }
        }

        double twice = 0;
        for (int i = 0; i < points.Count; i++)
        {
            (double X, double Y) a = points[i];
            (double X, double Y) b = points[(i + 1) % points.Count];
            twice += (a.X * b.Y) - (b.X * a.Y);
        }

        return Math.Abs(twice) / 2;
    }

    private static double PassesByMm(Dart dart, Point2D point)
    {
        (double x, double y) = (dart.Apex.X.Millimeters - dart.MiddleOfIntake.X.Millimeters, dart.Apex.Y.Millimeters - dart.MiddleOfIntake.Y.Millimeters);
        (double px, double py) = (point.X.Millimeters - dart.MiddleOfIntake.X.Millimeters, point.Y.Millimeters - dart.MiddleOfIntake.Y.Millimeters);
        return Math.Abs((x * py) - (y * px)) / Math.Sqrt((x * x) + (y * y));
    }

    private static double AngleAt(Point2D point, Dart dart)
        => 2 * Math.Asin(Distance(dart.StartLeg, dart.EndLeg) / (Distance(point, dart.StartLeg) + Distance(point, dart.EndLeg)));

    private static double Distance(Point2D a, Point2D b) => a.DistanceTo(b).Millimeters;
}
