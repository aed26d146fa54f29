using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>What every design of a bodice starts from: the block's back and front, the bust point, and the front with its darts at their full length.</summary>
internal sealed class BodiceStock
{
    // A dart whose middle line passes the bust point by more than this points elsewhere.
    private const double PointsMm = 0.01;

    private static readonly EdgeName[] Around = [EdgeName.Neckline, EdgeName.Shoulder, EdgeName.Armhole, EdgeName.SideSeam, EdgeName.Waist, EdgeName.Centre];

    private BodiceStock(DesignDraft work, BodiceDraft hand, Panel back, Panel front, TurnedPanel? turnedBack, TurnedPanel? turned, in Point2D bustPoint)
    {
        Hand = hand;
        Back = back;
        Front = front;
        BustPoint = bustPoint;
        DraftedBack = turnedBack?.Drafted ?? back;
        DraftedFront = turned?.Drafted ?? front;
        FullFront = turned?.Full ?? AtFullLength(work, front, bustPoint);
    }

    internal BodiceDraft Hand { get; }

    internal Panel Back { get; }

    /// <summary>The front as it is sewn: its darts stand off the bust point.</summary>
    internal Panel Front { get; }

    /// <summary>The back before its dart was turned.</summary>
    internal Panel DraftedBack { get; }

    /// <summary>The front before a dart was turned.</summary>
    internal Panel DraftedFront { get; }

    /// <summary>The front with each dart that points at the bust point reaching it.</summary>
    internal Panel FullFront { get; }

    internal Point2D BustPoint { get; }

    /// <summary>Reads the block.</summary>
    /// <exception cref="ConstructionException">It is no bodice, or a design has cut its panels apart.</exception>
    internal static BodiceStock Of(DesignDraft work)
    {
        BodiceDraft hand = work.Source.Record.Own as BodiceDraft
            ?? throw work.Refusal("It is a design of a bodice. Draft a bodice block with this library, and begin with that.");
        Panel back = Whole(work, PanelName.Back);
        Panel front = Whole(work, PanelName.Front);
        Landmark? bustPoint = front.Landmarks.Where(landmark => landmark.Name.Equals(BodiceNames.BustPoint)).Select(landmark => (Landmark?)landmark).FirstOrDefault();
        return new BodiceStock(work, hand, back, front, work.FindTurned(back), work.FindTurned(front), (bustPoint ?? throw work.Refusal("Its front has no bust point to turn a dart about.")).Position);
    }

    /// <summary>The darts of a front that reach the bust point.</summary>
    internal IEnumerable<Dart> AtBustPoint(Panel full) => full.Darts.Where(dart => dart.Apex.DistanceMm(BustPoint) <= PointsMm);

    /// <summary>How far the darts of an edge that point at the bust point end before it; null where there is none.</summary>
    internal double? StandsOffMm(EdgeName edge)
    {
        double? off = null;
        foreach (Dart full in AtBustPoint(FullFront).Where(dart => dart.Name.Edge == edge))
        {
            off = Front.FindDart(full.Name).Apex.DistanceMm(BustPoint);
        }

        return off;
    }

    /// <summary>Promises anew what the block measures straight across: where a dart was turned, the panel does not lie there any more.</summary>
    internal void PromiseAsDrafted(DesignDraft work)
    {
        BodiceDraft hand = Hand;
        var before = new CheckList([DraftedBack, DraftedFront]);
        bool isBackAsDrafted = ReferenceEquals(work.FindPanel(PanelName.Back).EdgesRaw, DraftedBack.EdgesRaw);
        bool isFrontAsDrafted = ReferenceEquals(work.FindPanel(PanelName.Front).EdgesRaw, DraftedFront.EdgesRaw);
        work.Check("widths", list =>
        {
            var checks = new BodiceChecks(hand);
            checks.CheckHalfBack(list);
            if (isBackAsDrafted)
            {
                checks.CheckAcrossBack(list);
            }

            if (isFrontAsDrafted)
            {
                checks.CheckAcrossFront(list);
            }
        });
        work.Check("advice", list => BodiceAdvice.Give(list, hand, before));
    }

    /// <summary>Shows the levels and the frame of the block further on.</summary>
    internal static void KeepLines(DesignDraft work)
    {
        foreach (BlockLine line in work.Source.Trued.Lines.Where(line => line.Role is ConstructionRole.Level or ConstructionRole.Frame))
        {
            work.Show(line.Name, line.Path);
        }
    }

    private static Panel Whole(DesignDraft work, PanelName name)
    {
        Panel? panel = work.Panels.FirstOrDefault(one => one.Name == name);
        return panel is not null && panel.Edges.Count == Around.Length && Around.All(edge => panel.TryFindEdge(edge, out _))
            ? panel
            : throw work.Refusal("Another design has cut its panels apart. Turn its darts first, and cut it then.");
    }

    private static Panel AtFullLength(DesignDraft work, Panel front, in Point2D bustPoint)
    {
        try
        {
            foreach (Dart dart in front.Darts.ToArray())
            {
                Vector2D along = dart.MiddleOfIntake.DirectionTo(dart.Apex).TimesMm(1);
                Vector2D way = bustPoint - dart.MiddleOfIntake;
                double reachMm = along.DotMm2(way);
                if (reachMm >= dart.LengthMm - PointsMm && Math.Abs(along.CrossMm2(way)) <= PointsMm)
                {
                    front = front.WithDartLength(dart.Name, Length.FromMillimeters(reachMm));
                }
            }

            return front;
        }
        catch (ConstructionException refusal)
        {
            throw work.Refusal("Its darts meet each other or an edge on the way to the bust point, and cannot be turned about it. " + refusal.Message);
        }
    }
}
