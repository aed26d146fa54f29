using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>Collects findings. Measures finished panels only, so a check never repeats the arithmetic that drew them.</summary>
internal sealed class CheckList
{
    /// <summary>Computed work holds a hundredth of a millimetre and of a degree.</summary>
    internal const double ToleranceMm = 0.01;

    internal const double ToleranceRad = 0.01 * Math.PI / 180;

    private readonly List<Finding> _findings;

    internal CheckList(int expected = 40) => _findings = new List<Finding>(expected);

    internal void Length(string check, string place, double measuredMm, double targetMm)
        => _findings.Add(new Finding(check, place, FindingKind.Length, FindingRelation.Equal, measuredMm, targetMm, ToleranceMm));

    internal void LengthAtLeast(string check, string place, double measuredMm, double leastMm, double toleranceMm = 0)
        => _findings.Add(new Finding(check, place, FindingKind.Length, FindingRelation.AtLeast, measuredMm, leastMm, toleranceMm));

    internal void LengthAtMost(string check, string place, double measuredMm, double mostMm)
        => _findings.Add(new Finding(check, place, FindingKind.Length, FindingRelation.AtMost, measuredMm, mostMm, ToleranceMm));

    internal void Angle(string check, string place, double measuredRad, double targetRad, double toleranceRad = ToleranceRad)
        => _findings.Add(new Finding(check, place, FindingKind.Angle, FindingRelation.Equal, measuredRad, targetRad, toleranceRad));

    internal void Count(string check, string place, int measured, int target)
        => _findings.Add(new Finding(check, place, FindingKind.Count, FindingRelation.Equal, measured, target, 0));

    /// <summary>The angle inside the panel between the end of one edge and the start of the next.</summary>
    internal static double CornerRad(CurvePath arriving, CurvePath leaving)
        => Math.Abs(arriving.EndDirection.Reversed.TurnRadTo(leaving.StartDirection));

    /// <summary>The corner that is left in the seam line when a dart is closed; zero where it is smooth.</summary>
    internal static double CornerAcrossDartRad(PanelEdge edge, int dart)
    {
        Direction before = edge.Stretches[dart].EndDirection;
        Direction after = edge.Stretches[dart + 1].StartDirection.Transformed(edge.Darts[dart].Closing());
        return Math.Abs(before.TurnRadTo(after));
    }

    /// <summary>How far a dart's cap, folded over the fold line and over the near leg, lies off the seam line that it is pressed onto.</summary>
    internal static double CapOffSeamMm(PanelEdge edge, int index)
    {
        Dart dart = edge.Darts[index];
        PathSegment[] cap = dart.Cap.SegmentsRaw;
        bool fromCentre = dart.PressedToward == Toward.Centre;
        CurvePath seam = edge.PressedOnto(index);
        Transform2D overLeg = Transform2D.Mirror(Line.Through(dart.Apex, fromCentre ? dart.CentreLeg : dart.SideLeg));
        Transform2D overFold = Transform2D.Mirror(Line.Through(dart.Apex, dart.MiddleOfIntake)).Then(overLeg);

        // The middle of every segment, and the fold itself: segments are exact images, so a cap that is off anywhere is off there.
        double off = seam.ClosestTo(overLeg.Apply(cap[(cap.Length / 2) - 1].End)).DistanceMm;
        for (int i = 0; i < cap.Length; i++)
        {
            bool near = i < cap.Length / 2 == fromCentre;
            off = Math.Max(off, seam.ClosestTo((near ? overLeg : overFold).Apply(cap[i].PointAtRaw(0.5))).DistanceMm);
        }

        return off;
    }

    internal CheckReport ToReport() => new(_findings.ToArray());
}
