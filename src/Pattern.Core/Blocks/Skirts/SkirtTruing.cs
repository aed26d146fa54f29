using System;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>Trues the hand draft: exact waistlines, side seams that match, a hem without corners. Makes the panels.</summary>
internal sealed class SkirtTruing
{
    // A hem that comes in is level up to here and sweeps to the side seam from here on: parts of the narrower panel's hem. A sweep takes
    // three parts, so two of them leave a quarter of the hem level.
    private const int SweepParts = 8;

    private readonly SkirtDraft _draft;
    private readonly double _sideLengthMm;
    private readonly double _sweepMm;
    private readonly Landmark[] _moved;
    private int _movedCount;

    private SkirtTruing(SkirtDraft draft)
    {
        _draft = draft;

        // Both side seams take the mean of what the hand drew: the least change for both.
        _sideLengthMm = (draft.Back.HandSideLengthMm + draft.Front.HandSideLengthMm) / 2;
        _sweepMm = Math.Min(HemWidth(draft.Back), HemWidth(draft.Front)) / SweepParts;
        BackWaist = TrueWaist(draft.Back);
        FrontWaist = TrueWaist(draft.Front);
        Back = ToPanel(draft.Back, BackWaist, notchCount: 2);
        Front = ToPanel(draft.Front, FrontWaist, notchCount: 1);
        Changes = ListChanges();
        _moved = new Landmark[2 + (2 * (draft.Back.Wedges.Length + draft.Front.Wedges.Length))];
        Record();
    }

    internal WaistTruing BackWaist { get; }

    internal WaistTruing FrontWaist { get; }

    internal Panel Back { get; }

    internal Panel Front { get; }

    internal TruingChange[] Changes { get; }

    /// <summary>The landmarks that truing moved, where it put them.</summary>
    internal Landmark[] Moved => _moved;

    internal static SkirtTruing True(SkirtDraft draft) => new(draft);

    private static double HemWidth(SkirtQuarter quarter) => Math.Abs(quarter.SideHem.Position.XMm - quarter.CentreHem.Position.XMm);

    private WaistTruing TrueWaist(SkirtQuarter quarter) => WaistTruing.Solve(
        new WaistTarget(
            quarter.CentreWaist.Position,
            quarter.LeavingCentre,
            _draft.SideUpperHip,
            quarter.SideWaist.Position,
            _draft.WaistTargetMm / 4,
            _sideLengthMm),
        quarter.Wedges);

    private Panel ToPanel(SkirtQuarter quarter, WaistTruing waist, int notchCount)
    {
        PanelEdge waistEdge = waist.ToEdge(EdgeName.Waist, EdgeRole.Opening);
        foreach (Dart dart in waistEdge.Darts)
        {
            // A dart that cannot be folded onto its own seam line is refused here, not when somebody draws it.
            _ = dart.Cap;
        }

        CubicBezier? sideBelow = quarter.SideSeamBelow is { } below ? Swept(below) : null;
        CubicBezier? centreBelow = quarter.CentreSeamBelow is { } centre ? Swept(centre) : null;
        Point2D sideHem = sideBelow?.End ?? quarter.SideHem.Position;
        Point2D centreHem = centreBelow?.End ?? quarter.CentreHem.Position;

        CurvePath side = CurvePath.Trusted(
            [
                PathSegment.FromCubic(waist.Side.Reversed()),
                Line(_draft.SideUpperHip, _draft.SideLowerHip),
                sideBelow is { } curve ? PathSegment.FromCubic(curve) : Line(_draft.SideLowerHip, sideHem),
            ],
            isClosed: false);
        double hipFromWaistMm = waist.Side.LengthMm() + (_draft.SideUpperHip.YMm - _draft.SideLowerHip.YMm);

        return new Panel(
            quarter.Names.Panel,
            [
                waistEdge,
                new PanelEdge(EdgeName.SideSeam, EdgeRole.Seam, side),
                new PanelEdge(EdgeName.Hem, EdgeRole.Hem, Hem(quarter, sideHem, sideBelow, centreHem, centreBelow)),
                new PanelEdge(EdgeName.Centre, EdgeRole.Centre, Centre(quarter, centreHem, centreBelow)),
            ],
            new PanelFeatures(
                Grainline(quarter),
                [new Notch(EdgeName.SideSeam, _draft.SideLowerHip, hipFromWaistMm, notchCount)],
                [
                    quarter.CentreWaist,
                    quarter.SideWaist.At(waistEdge.End),
                    new Landmark(SkirtNames.SideLowerHip, _draft.SideLowerHip),
                    quarter.CentreLowerHip,
                ],
                []));
    }

    /// <summary>Lengthens a seam that comes in until a hem square to it sweeps smoothly into the level hem.</summary>
    private CubicBezier Swept(CubicBezier below)
    {
        double level = below.Y3;
        CubicBezier swept = below;
        for (int i = 0; i < 50; i++)
        {
            Direction down = swept.EndDirection;
            double missing = (swept.Y3 - level) + (_sweepMm * Math.Abs(down.X));
            if (Math.Abs(missing) < 1e-11)
            {
                break;
            }

            swept = HipCurves.GoOnMm(swept, missing / -down.Y);
        }

        return swept;
    }

    private CurvePath Hem(SkirtQuarter quarter, Point2D sideHem, CubicBezier? sideBelow, Point2D centreHem, CubicBezier? centreBelow)
    {
        double level = quarter.CentreHem.Position.YMm;
        int count = 1 + (sideBelow is null ? 0 : 1) + (centreBelow is null ? 0 : 1);
        var segments = new PathSegment[count];
        int next = 0;
        Point2D from = sideHem;
        Point2D to = centreHem;
        if (sideBelow is { } side)
        {
            CubicBezier sweep = Sweep(side, -quarter.Hand, level);
            segments[next++] = PathSegment.FromCubic(sweep);
            from = sweep.End;
        }

        CubicBezier? atCentre = centreBelow is { } centre ? Sweep(centre, quarter.Hand, level).Reversed() : null;
        to = atCentre?.Start ?? to;
        segments[next++] = Line(from, to);
        if (atCentre is { } last)
        {
            segments[next] = PathSegment.FromCubic(last);
        }

        return CurvePath.Trusted(segments, isClosed: false);
    }

    // Square to the seam at its end, then along the level hem: three control points of four lie on it, so the curve joins it without a bend.
    private CubicBezier Sweep(in CubicBezier seam, double across, double level)
    {
        Direction down = seam.EndDirection;
        Direction square = across > 0 == down.Y < 0 ? down.TurnedLeft : down.TurnedRight;
        Point2D corner = seam.End;
        double firstX = corner.XMm + (square.X * _sweepMm);
        return new CubicBezier(
            corner, new Point2D(firstX, level), new Point2D(firstX + (across * _sweepMm), level), new Point2D(firstX + (2 * across * _sweepMm), level));
    }

    private static CurvePath Centre(SkirtQuarter quarter, Point2D centreHem, CubicBezier? below)
    {
        Point2D waist = quarter.CentreWaist.Position;
        if (below is null && quarter.CentreSeam is null)
        {
            return CurvePath.FromLine(new LineSegment(centreHem, waist));
        }

        Point2D lower = quarter.CentreLowerHip.Position;
        Point2D upper = quarter.CentreUpperHip.Position;
        return CurvePath.Trusted(
            [
                below is { } curve ? PathSegment.FromCubic(curve.Reversed()) : Line(centreHem, lower),
                Line(lower, upper),
                quarter.CentreSeam is { } above ? PathSegment.FromCubic(above) : Line(upper, waist),
            ],
            isClosed: false);
    }

    // Parallel to the centre line, in the middle of the panel and clear of hip line and hem.
    private static LineSegment Grainline(SkirtQuarter quarter)
    {
        double x = quarter.CentreLowerHip.Position.XMm + (quarter.Hand * quarter.HipWidth.ValueMm * 0.5);
        double top = quarter.CentreLowerHip.Position.YMm;
        double bottom = quarter.CentreHem.Position.YMm;
        double clear = (top - bottom) * 0.15;
        return new LineSegment(new Point2D(x, top - clear), new Point2D(x, bottom + clear));
    }

    private TruingChange[] ListChanges()
    {
        SkirtQuarter back = _draft.Back;
        SkirtQuarter front = _draft.Front;
        double quarter = _draft.WaistTargetMm / 4;
        double Sewn(Panel panel) => panel.FindEdge(EdgeName.Waist).SewnLengthMm();
        double Legs(Panel panel) => Largest(panel, d => Math.Abs(d.LegLengthMm(Toward.Centre) - d.LegLengthMm(Toward.Side)));
        return
        [
            new TruingChange("closed waist", "block", 2 * (back.HandClosedWaistMm + front.HandClosedWaistMm), 2 * (Sewn(Back) + Sewn(Front)), _draft.WaistTargetMm),
            new TruingChange("closed waist", "back", back.HandClosedWaistMm, Sewn(Back), quarter),
            new TruingChange("closed waist", "front", front.HandClosedWaistMm, Sewn(Front), quarter),
            new TruingChange("side seam, upper hip to waist, back less front", "block", back.HandSideLengthMm - front.HandSideLengthMm, BackWaist.Side.LengthMm() - FrontWaist.Side.LengthMm(), 0),
            new TruingChange("side seam, upper hip to waist", "back", back.HandSideLengthMm, BackWaist.Side.LengthMm(), _sideLengthMm),
            new TruingChange("side seam, upper hip to waist", "front", front.HandSideLengthMm, FrontWaist.Side.LengthMm(), _sideLengthMm),
            new TruingChange("dart legs, longer less shorter", "back", back.HandLegDifferenceMm, Legs(Back), 0),
            new TruingChange("dart legs, longer less shorter", "front", front.HandLegDifferenceMm, Legs(Front), 0),
        ];
    }

    private static double Largest(Panel panel, Func<Dart, double> measure)
    {
        double largest = 0;
        foreach (Dart dart in panel.FindEdge(EdgeName.Waist).Darts)
        {
            largest = Math.Max(largest, measure(dart));
        }

        return largest;
    }

    private void Record()
    {
        Record(_draft.Back, Back);
        Record(_draft.Front, Front);
    }

    private void Record(SkirtQuarter quarter, Panel panel)
    {
        DraftingSheet sheet = _draft.Sheet;
        string name = panel.Name.Text;
        PanelEdge waist = panel.FindEdge(EdgeName.Waist);
        sheet.Note(
            "True the {0} waistline with its darts closed: {1}, {2}.",
            name,
            WorkedLength.DrawnMm("by hand", quarter.HandClosedWaistMm),
            WorkedLength.DrawnMm("trued", waist.SewnLengthMm()));
        sheet.Note(
            "True the {0} side seam from the upper hip to the waist: {1}, {2}, the same on back and front. {3} has {4}.",
            name,
            WorkedLength.DrawnMm("by hand", quarter.HandSideLengthMm),
            WorkedLength.DrawnMm("trued", _sideLengthMm),
            quarter.SideWaist,
            WorkedLength.DrawnMm("moved", quarter.SideWaist.Position.DistanceMm(waist.End)));
        _moved[_movedCount++] = quarter.SideWaist.At(waist.End);
        foreach (Dart dart in waist.Darts)
        {
            DartNames names = quarter.Names.Darts[dart.Number - 1];
            Landmark middle = sheet.Find(names.Middle);
            Landmark apex = sheet.Find(names.Apex);
            sheet.Note(
                "Draw the legs of {0} again, both equal, from the trued waistline to {1}, which has {2}.",
                middle,
                apex,
                WorkedLength.DrawnMm("moved", apex.Position.DistanceMm(dart.Apex)));
            _moved[_movedCount++] = middle.At(dart.MiddleOfIntake);
            _moved[_movedCount++] = apex.At(dart.Apex);
        }

        if (quarter.SideSeamBelow is not null || quarter.CentreSeamBelow is not null)
        {
            sheet.Note("Sweep the {0} hem until it meets its seams square. Leave a slit, vent or pleat: a hem that comes in gives no room to walk.", name);
        }
    }

    private static PathSegment Line(in Point2D from, in Point2D to) => PathSegment.FromLine(new LineSegment(from, to));
}
