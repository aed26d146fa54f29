using System;
using System.Linq;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>The sheath: the bodice, carried on from its waist to the hem, its waist darts pointed at both ends.</summary>
internal sealed class SheathDraft
{
    // So far to either side the corner of the side seam at the waist is rounded off.
    private const double RoundedMm = 40;

    private const double EqualMm = 1e-7;
    private const int MostTries = 40;

    private readonly BlockDraft _draft;
    private readonly double _depthMm;
    private readonly double _lengthMm;

    private SheathDraft(BlockDraft draft, BodiceDraft bodice, WorkedLength hip)
    {
        _draft = draft;
        Bodice = bodice;
        SkirtCustoms customs = SkirtCustoms.Of(draft.Body.Unit);
        WorkedLength depth = SkirtDepths.Of(draft.Body, new SkirtLevels(), customs).LowerHip;
        _depthMm = depth.ValueMm;
        Length = draft.Take(GownSettings.SkirtLength);
        _lengthMm = Length.ValueMm;
        HipTarget = (hip + draft.Take(GownSettings.SkirtEase)).Named("hip with its ease");
        if (_lengthMm < _depthMm + 20)
        {
            throw draft.Refusal("The sheath ends above the hip.", Length.Value, UnitsNet.Length.FromMillimeters(_depthMm + 20));
        }
    }

    internal BodiceDraft Bodice { get; }

    internal WorkedLength HipTarget { get; }

    internal WorkedLength Length { get; }

    internal SleeveBlock? Sleeve { get; private set; }

    internal static SheathDraft Draw(BlockDraft draft)
    {
        // A double-pointed dart wider than this does not lie flat at the waist; trade facts: 1 1/4 in.
        var bodice = BodiceDraft.Draw(draft, WorkedLength.Given("widest double dart", TapeStep.For(draft.Body.Unit).IsMetric ? UnitsNet.Length.FromCentimeters(3.2) : Tape.Inches("1 1/4")));
        (Panel back, Panel front) = BodiceTruing.Trued(bodice, draft);
        var sheath = new SheathDraft(draft, bodice, GownDraft.TakeHip(draft, bodice.Body));
        sheath.Carry(back, front);
        return sheath;
    }

    private void Carry(Panel back, Panel front)
    {
        // The front is wider at the hip by as much as at the armhole: so both sides have the same shape, and are as long.
        WorkedLength quarter = HipTarget.Quarter();
        WorkedLength wider = (Bodice.FrontWidth - Bodice.BackWidth).Half();
        DraftingSheet sheet = _draft.Sheet;
        sheet.Note("Leave out the seam at the waist: carry centre back and centre front straight down from the waist level: {0}.", Length);
        sheet.Note("At the hip, {0} below the waist, lay off from CB {1}, and from CF {2}.", WorkedLength.Given("hip depth", UnitsNet.Length.FromMillimeters(_depthMm)), quarter - wider, quarter + wider);
        sheet.Note("Draw each side seam on from the waist to the hip, straight down into it and rounded off at the waist, and straight down to the hem. Walk one along the other: both are as long.");
        double backHipMm = (quarter - wider).ValueMm;
        double frontHipMm = Bodice.CentreFrontWaist.Position.XMm - (quarter + wider).ValueMm;
        double backMore = 0;
        double frontMore = 0;
        for (int i = 0; i < MostTries; i++)
        {
            CurvePath backSide = Side(back, backHipMm, backMore);
            CurvePath frontSide = Side(front, frontHipMm, frontMore);
            double offMm = Closed(back, backSide) - Closed(front, frontSide);
            if (Math.Abs(offMm) <= EqualMm)
            {
                Panel sheathBack = Carried(back, backSide, hand: 1);
                Panel sheathFront = Carried(front, frontSide, hand: -1);
                _draft.Add(sheathBack, 2);
                _draft.Add(sheathFront, 2);
                Sleeve = GownSleeve.Add(_draft, _draft.Body, sheathBack, sheathFront);
                return;
            }

            (backMore, frontMore) = offMm > 0 ? (backMore, frontMore + offMm) : (backMore - offMm, frontMore);
        }

        throw _draft.Refusal("The side seams of back and front cannot be made equal below the waist.", UnitsNet.Length.FromMillimeters(EqualMm), UnitsNet.Length.Zero);
    }

    // The last stretch of the side, from underarm or bust dart over waist and hip to the hem.
    private CurvePath Side(Panel bodice, double hipMm, double moreMm)
    {
        PanelEdge side = bodice.FindEdge(EdgeName.SideSeam);
        CurvePath above = side.StretchesRaw[side.StretchesRaw.Length - 1];
        Point2D waist = above.End;
        var hip = new Point2D(hipMm, -_depthMm);
        CubicBezier curve = CubicBezier.InOneSweep(waist, Direction.Down, hip, Direction.Down);
        curve = moreMm > 0 ? CubicBezier.BetweenWithLength(waist, Direction.Down, hip, Direction.Down, UnitsNet.Length.FromMillimeters(curve.LengthMm() + moreMm)) : curve;
        CurvePath below = CurvePath.Trusted(PathSegment.FromCubic(curve));
        double reachMm = Math.Min(RoundedMm, Math.Min(above.LengthMm, below.LengthMm) / 3);
        CurvePath before = above.SubPathMm(0, above.LengthMm - reachMm);
        CurvePath after = below.SubPathMm(reachMm, below.LengthMm);
        CubicBezier round = CubicBezier.InOneSweep(before.End, before.EndDirection, after.Start, after.StartDirection);
        CurvePath path = before.Then(CurvePath.Trusted(PathSegment.FromCubic(round))).Then(after);
        return path.Then(CurvePath.FromLine(new LineSegment(hip, new Point2D(hipMm, -_lengthMm))));
    }

    private static double Closed(Panel bodice, CurvePath last)
    {
        CurvePath[] stretches = bodice.FindEdge(EdgeName.SideSeam).StretchesRaw;
        return stretches.Take(stretches.Length - 1).Sum(stretch => stretch.LengthMm) + last.LengthMm;
    }

    private Panel Carried(Panel bodice, CurvePath last, int hand)
    {
        PanelEdge side = bodice.FindEdge(EdgeName.SideSeam);
        CurvePath[] stretches = [.. side.StretchesRaw];
        stretches[stretches.Length - 1] = last;
        double centreMm = bodice.FindEdge(EdgeName.Centre).Start.XMm;
        Point2D neck = bodice.FindEdge(EdgeName.Centre).End;
        var hem = new Point2D(centreMm, -_lengthMm);
        var sideEdge = new PanelEdge(EdgeName.SideSeam, EdgeRole.Seam, stretches, [.. side.DartsRaw.Select(dart => dart.Shape)]);
        PathLocation hip = last.ClosestTo(new Point2D(last.End.XMm, -_depthMm));
        double hipMm = Closed(bodice, last) - last.LengthMm + last.LengthToMm(hip);
        Notch[] notches = [.. bodice.Notches.Where(notch => notch.Edge == EdgeName.Armhole), new Notch(EdgeName.SideSeam, hip.Point, hipMm, hand > 0 ? 2 : 1)];
        double xMm = centreMm + (hand * _lengthMm / 8);
        var grain = new LineSegment(new Point2D(xMm, -_depthMm / 2), new Point2D(xMm, -_lengthMm * 0.8));
        return new Panel(
            bodice.Name,
            [
                bodice.FindEdge(EdgeName.Neckline),
                bodice.FindEdge(EdgeName.Shoulder),
                bodice.FindEdge(EdgeName.Armhole),
                sideEdge,
                new PanelEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromLine(new LineSegment(last.End, hem))),
                new PanelEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.FromLine(new LineSegment(hem, neck))),
            ],
            new PanelFeatures(grain, notches, [.. bodice.Landmarks.Where(landmark => landmark.Position.YMm > 1)], DoubleDart(bodice, last, centreMm, hand)));
    }

    // As wide as leaves the quarter waist between centre and side; up to the point of the bodice, down to that of a skirt.
    private InsideDart[] DoubleDart(Panel bodice, CurvePath last, double centreMm, int hand)
    {
        PanelEdge waist = bodice.FindEdge(EdgeName.Waist);
        if (waist.DartsRaw.Length != 1)
        {
            return [];
        }

        SkirtCustoms customs = SkirtCustoms.Of(_draft.Body.Unit);
        Dart dart = waist.DartsRaw[0];
        double intakeMm = SheathChecks.WaistMm(last, centreMm) - Bodice.QuarterWaist.ValueMm;
        var middle = new Point2D(dart.Apex.XMm, 0);
        double downMm = Math.Min((hand > 0 ? customs.BackDart : customs.FrontDart).ValueMm, _depthMm - 20);
        _draft.Sheet.Note(
            "On the " + bodice.Name.Text + " draw the waist dart with two points: {0} wide at the waist level, up to the point of the bodice, and {1} down.",
            WorkedLength.Drawn("dart", UnitsNet.Length.FromMillimeters(intakeMm)),
            WorkedLength.Given("dart below the waist", UnitsNet.Length.FromMillimeters(downMm)));
        return
        [
            new InsideDart(
                dart.Apex,
                new Point2D(dart.Apex.XMm, -downMm),
                middle + Direction.Right.TimesMm(intakeMm / 2),
                middle + Direction.Left.TimesMm(intakeMm / 2)),
        ];
    }
}
