using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>What is done after darts of the front were turned about the bust point: they are given the points that they are sewn to, the lines that were cut are drawn anew, and what holds is promised.</summary>
/// <remarks>Turned paper has a corner where a dart was closed and where one was opened, since it was cut to the bust point and is sewn to a point before it: those lines are drawn anew,
/// each as long as it was.</remarks>
internal sealed class FrontTurn(DesignDraft work, BodiceStock stock)
{
    // Common practice, no source: a wider wedge is a cone that no cloth follows, and cannot be folded.
    internal const double MostAngleDeg = 60;

    // Common practice, no source: less cannot be stitched to a point.
    internal const double LeastLegMm = 30;

    // Common practice, no source: nearer to each other, or to a corner, two seams lie in one heap.
    internal const double LeastApartMm = 10;

    private const double LegMm = 1e-3;
    private const int MostTries = 12;
    private const double SmoothRad = 1e-6;
    private static readonly EdgeName[] Sewn = [EdgeName.Neckline, EdgeName.Shoulder, EdgeName.Armhole, EdgeName.SideSeam, EdgeName.Waist, EdgeName.Centre];

    /// <summary>Finishes the front and puts it in its place.</summary>
    /// <param name="full">The front as it was turned, its darts reaching the bust point.</param>
    /// <param name="standsOffMm">How far the darts of an edge end before it.</param>
    internal Panel Finish(Panel full, Func<EdgeName, double> standsOffMm)
    {
        Panel front = Pointed(full, standsOffMm);
        RefuseWideOrCrowded(front, full);
        front = DartFolds.Folding(work, Trued(front, full, standsOffMm));
        work.Replace(new TurnedPanel(front, full, stock.DraftedFront));
        Promise(full);
        BodiceStock.KeepLines(work);
        return front;
    }

    /// <summary>The front with its lines smooth when its darts are closed up to the bust point, as for a seam through it.</summary>
    internal Panel TruedAtFullLength(Panel full)
    {
        RefuseWideOrCrowded(full, full);
        return Trued(full, full, _ => 0);
    }

    // From the front as it was turned: each dart to the point that it is sewn to.
    private Panel Pointed(Panel full, Func<EdgeName, double> standsOffMm)
    {
        Panel front = full;
        foreach (Dart dart in stock.AtBustPoint(full).ToArray())
        {
            double lengthMm = dart.LengthMm - standsOffMm(dart.Name.Edge);
            if (lengthMm < LeastLegMm)
            {
                throw work.Refusal(FormattableString.Invariant(
                    $"The {dart.Name} would be {lengthMm:0} mm long, and {LeastLegMm:0} mm is the least that can be stitched to a point. Let it stand off the bust point by {Math.Max(0, dart.LengthMm - LeastLegMm):0} mm or less."));
            }

            front = front.WithDartLength(dart.Name, Length.FromMillimeters(lengthMm)).WithDartPressed(dart.Name, Pressed(dart.Name.Edge));
        }

        return front;
    }

    // Common practice: towards the centre, or down.
    private static Toward Pressed(EdgeName edge)
        => edge == EdgeName.Shoulder || edge == EdgeName.Neckline || edge == EdgeName.Centre ? Toward.Start : Toward.End;

    private void RefuseWideOrCrowded(Panel front, Panel full)
    {
        foreach (Dart dart in stock.AtBustPoint(full))
        {
            double degrees = dart.AngleRad * 180 / Math.PI;
            if (degrees > MostAngleDeg)
            {
                throw work.Refusal(FormattableString.Invariant(
                    $"The {dart.Name} would open by {degrees:0.#} degrees at the bust point, and {MostAngleDeg:0} is the most that cloth takes in one dart. Turn a part of it, or cut a seam through the bust point."));
            }
        }

        foreach (PanelEdge edge in front.Edges.Where(edge => edge.Darts.Count > 0))
        {
            for (int i = 0; i < edge.StretchesRaw.Length; i++)
            {
                double stretchMm = edge.StretchesRaw[i].LengthMm;
                if (stretchMm < LeastApartMm && edge.Darts.Count != stock.DraftedFront.FindEdge(edge.Name).Darts.Count)
                {
                    string between = i == 0 || i == edge.Darts.Count ? "the end of the edge" : "the dart beside it";
                    throw work.Refusal(FormattableString.Invariant(
                        $"A dart on the {edge.Name} would stand {stretchMm:0.#} mm from {between}, and {LeastApartMm:0} mm is the least that can be sewn there. Choose another place along the edge."));
                }
            }
        }
    }

    // Lines that are smooth already stay as they are, so that a dart that is turned back leaves the block as it was.
    private Panel Trued(Panel front, Panel full, Func<EdgeName, double> standsOffMm)
    {
        EdgeName[] rough = [.. Sewn.Where(name => IsRough(front.FindEdge(name)))];
        if (rough.Length == 0)
        {
            return front;
        }

        try
        {
            Panel trued = True(full, standsOffMm, rough);
            foreach (EdgeName name in rough)
            {
                work.Sheet.Note("Fold the darts closed and draw the front {0} anew: one line without a corner, as long as before: {1}.", name.Text, WorkedLength.GivenMm(null, trued.FindEdge(name).SewnLengthMm()));
            }

            work.Sheet.Because("The paper was cut to the bust point, and the dart is sewn to a point before it: the line has a corner there until it is drawn anew.");
            return trued;
        }
        catch (ConstructionException refusal) when (refusal.Code != DiagnosticCode.DesignRefused)
        {
            throw work.Refusal("The line of its front cannot be drawn anew without a corner there. Choose another place along the edge, or turn a part of the dart. " + refusal.Message);
        }
    }

    // A line drawn in one sweep moves the legs along the lines to the sewn point. They are laid off anew from the bust point, as far from it as the sweep left them, until they stay: so the
    // wedge there is what it was.
    private Panel True(Panel full, Func<EdgeName, double> standsOffMm, EdgeName[] rough)
    {
        Panel laid = full;
        Panel trued = True(Pointed(laid, standsOffMm), full, rough);
        for (int i = 0; i < MostTries; i++)
        {
            double movedMm = 0;
            foreach (DartName name in stock.AtBustPoint(full).Select(dart => dart.Name).Where(name => IsSwept(name.Edge)))
            {
                double legMm = trued.FindDart(name).StartLeg.DistanceMm(stock.BustPoint);
                movedMm = Math.Max(movedMm, Math.Abs(legMm - laid.FindDart(name).LegLengthMm(Toward.Start)));
                laid = laid.WithLegLengthMm(name, legMm);
            }

            if (movedMm < LegMm)
            {
                return trued;
            }

            trued = True(Pointed(laid, standsOffMm), full, rough);
        }

        return trued;
    }

    private static Panel True(Panel front, Panel full, EdgeName[] rough)
    {
        var bends = new HashSet<EdgeName>(rough.Where(name => !IsSwept(name)));
        foreach (EdgeName name in bends)
        {
            front = front.TrueEdge(name, new EdgeTruing { Line = TruedLine.Blended }).Panel;
        }

        var sweeps = new HashSet<EdgeName>(rough.Where(IsSwept));
        var corners = new List<EdgeName>();
        if (sweeps.Contains(EdgeName.Shoulder))
        {
            bends.Add(EdgeName.Armhole);
            corners.Add(EdgeName.Shoulder);
        }

        if (sweeps.Contains(EdgeName.Centre))
        {
            sweeps.Add(EdgeName.Waist);
            corners.Add(EdgeName.Waist);
        }

        if (sweeps.Contains(EdgeName.SideSeam) || sweeps.Contains(EdgeName.Waist))
        {
            sweeps.Add(EdgeName.SideSeam);
            sweeps.Add(EdgeName.Waist);
            corners.Add(EdgeName.SideSeam);
        }

        EdgeName[] drawn = [.. Sewn.Where(name => sweeps.Contains(name) || bends.Contains(name))];
        Movable[] moves =
        [
            .. drawn.Where(sweeps.Contains).Select(name => Movable.OneSweep(Of(name), Angle.FromDegrees(1)).KeepingDirections()),
            .. drawn.Where(bends.Contains).Select(name => Movable.Handles(Of(name), Length.FromCentimeters(3)).KeepingDirections()),
            .. corners.Select(name => Movable.Corner(Of(name).AtEnd, Length.FromCentimeters(1))),
        ];
        Condition[] conditions = [.. drawn.Select(name => Condition.SewnLength(WorkedLength.GivenMm(name.Text, full.FindEdge(name).SewnLengthMm()), Of(name)))];
        return TruingPlan.Empty.MayMove(moves).MustHold(conditions).True(front).Find(PanelName.Front);

        static EdgeOf Of(EdgeName name) => EdgeOf.Panel(PanelName.Front, name);
    }

    private static bool IsSwept(EdgeName name) => name != EdgeName.Neckline && name != EdgeName.Armhole;

    private static bool IsRough(PanelEdge edge)
    {
        for (int i = 0; i < edge.Darts.Count; i++)
        {
            if (CheckList.CornerAcrossDartRad(edge, i) > SmoothRad)
            {
                return true;
            }
        }

        return edge.StretchesRaw.Any(stretch => SkirtPromises.SharpestCornerRad(stretch) > SmoothRad);
    }

    private void Promise(Panel full)
    {
        Panel drafted = stock.DraftedFront;
        (EdgeName Edge, double Mm)[] lengths = [.. Sewn.Where(name => name != EdgeName.Centre).Select(name => (name, drafted.FindEdge(name).SewnLengthMm()))];
        Point2D bustPoint = stock.BustPoint;
        double anglesRad = stock.AtBustPoint(full).Sum(dart => dart.AngleRad);
        DartName[] pointing = [.. stock.AtBustPoint(full).Select(dart => dart.Name)];
        stock.PromiseAsDrafted(work);
        work.Check("turned darts", list =>
        {
            Panel now = list.FindPanel(PanelName.Front);
            double openRad = 0;
            foreach (DartName name in pointing)
            {
                Dart dart = now.FindDart(name);
                Vector2D start = dart.StartLeg - bustPoint;
                Vector2D end = dart.EndLeg - bustPoint;
                openRad += Math.Abs(Math.Atan2(start.CrossMm2(end), start.DotMm2(end)));
                list.Length(name + " points past the bust point by", "front", Math.Abs(dart.MiddleOfIntake.DirectionTo(dart.Apex).TimesMm(1).CrossMm2(bustPoint - dart.Apex)), 0);
            }

            list.Angle("darts together, seen from the bust point", "front", openRad, anglesRad);
            foreach ((EdgeName edge, double mm) in lengths)
            {
                list.Length("sewn " + edge, "front", now.FindEdge(edge).SewnLengthMm(), mm);
            }
        });
    }
}
