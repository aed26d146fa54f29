using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>Measures panels and collects what it finds: checks, which hold or fail, and advice.</summary>
/// <remarks>Ask the list for its panels, and measure nothing else: the same checks are run again whenever the panels of a block were changed. Not for use from several
/// threads at once.</remarks>
public sealed class CheckList
{
    /// <summary>Computed work holds a hundredth of a millimetre and of a degree.</summary>
    internal const double ToleranceMm = 0.01;

    internal const double ToleranceRad = 0.01 * Math.PI / 180;

    private readonly Panel[] _panels;
    private Finding[] _findings;
    private int _count;

    internal CheckList(int expected = 40)
        : this([], expected)
    {
    }

    internal CheckList(Panel[] panels, int expected = 40)
    {
        _panels = panels;
        _findings = new Finding[Math.Max(expected, 4)];
    }

    /// <summary>The panels to measure.</summary>
    public IReadOnlyList<Panel> Panels => _panels;

    internal Panel[] PanelsRaw => _panels;

    /// <summary>Returns the panel of that name.</summary>
    /// <exception cref="ConstructionException">It is not among the panels.</exception>
    [Pure]
    public Panel FindPanel(PanelName name) => PanelErrors.Find(_panels, name);

    /// <summary>Checks that a length is what it should be, within 0.01 mm.</summary>
    /// <param name="check">What is measured, in lower case words, such as <c>closed waist</c>.</param>
    /// <param name="place">The panel, or <c>block</c> where the check spans several.</param>
    /// <param name="measured">What was measured.</param>
    /// <param name="target">What it should be.</param>
    public void Length(string check, string place, Length measured, Length target)
        => Add(check, place, FindingKind.Length, FindingRelation.Equal, measured.Millimeters, target.Millimeters, ToleranceMm);

    /// <summary>Checks that a length is not less than it should be.</summary>
    /// <inheritdoc cref="Length(string, string, UnitsNet.Length, UnitsNet.Length)"/>
    public void LengthAtLeast(string check, string place, Length measured, Length target)
        => Add(check, place, FindingKind.Length, FindingRelation.AtLeast, measured.Millimeters, target.Millimeters, ToleranceMm);

    /// <summary>Checks that a length is not more than it should be.</summary>
    /// <inheritdoc cref="Length(string, string, UnitsNet.Length, UnitsNet.Length)"/>
    public void LengthAtMost(string check, string place, Length measured, Length target)
        => Add(check, place, FindingKind.Length, FindingRelation.AtMost, measured.Millimeters, target.Millimeters, ToleranceMm);

    /// <summary>Checks that an angle is what it should be, within 0.01 degrees.</summary>
    /// <inheritdoc cref="Length(string, string, UnitsNet.Length, UnitsNet.Length)"/>
    public void Angle(string check, string place, Angle measured, Angle target)
        => Add(check, place, FindingKind.Angle, FindingRelation.Equal, measured.Radians, target.Radians, ToleranceRad);

    /// <summary>Checks that an angle is not less than it should be.</summary>
    /// <inheritdoc cref="Length(string, string, UnitsNet.Length, UnitsNet.Length)"/>
    public void AngleAtLeast(string check, string place, Angle measured, Angle target)
        => Add(check, place, FindingKind.Angle, FindingRelation.AtLeast, measured.Radians, target.Radians, ToleranceRad);

    /// <summary>Checks that an angle is not more than it should be.</summary>
    /// <inheritdoc cref="Length(string, string, UnitsNet.Length, UnitsNet.Length)"/>
    public void AngleAtMost(string check, string place, Angle measured, Angle target)
        => Add(check, place, FindingKind.Angle, FindingRelation.AtMost, measured.Radians, target.Radians, ToleranceRad);

    /// <summary>Checks that a number of things is what it should be.</summary>
    /// <inheritdoc cref="Length(string, string, UnitsNet.Length, UnitsNet.Length)"/>
    public void Count(string check, string place, int measured, int target)
        => Add(check, place, FindingKind.Count, FindingRelation.Equal, measured, target, 0);

    /// <summary>Checks that a number of things is not less than it should be.</summary>
    /// <inheritdoc cref="Length(string, string, UnitsNet.Length, UnitsNet.Length)"/>
    public void CountAtLeast(string check, string place, int measured, int target)
        => Add(check, place, FindingKind.Count, FindingRelation.AtLeast, measured, target, 0);

    /// <summary>Checks that a number of things is not more than it should be.</summary>
    /// <inheritdoc cref="Length(string, string, UnitsNet.Length, UnitsNet.Length)"/>
    public void CountAtMost(string check, string place, int measured, int target)
        => Add(check, place, FindingKind.Count, FindingRelation.AtMost, measured, target, 0);

    /// <summary>Gives advice on a length that was drawn as asked for; neither passes nor fails.</summary>
    /// <param name="advice">Why a cutter would look twice, and what would help.</param>
    /// <param name="check">What is measured, in lower case words.</param>
    /// <param name="place">The panel, or <c>block</c>.</param>
    /// <param name="measured">What was measured.</param>
    /// <param name="relation">How it would usually stand to <paramref name="usual"/>.</param>
    /// <param name="usual">What is usual.</param>
    public void Advise(Advice advice, string check, string place, Length measured, FindingRelation relation, Length usual)
        => Advise(advice, check, place, FindingKind.Length, measured.Millimeters, relation, usual.Millimeters);

    /// <summary>Gives advice on an angle that was drawn as asked for; neither passes nor fails.</summary>
    /// <inheritdoc cref="Advise(Advice, string, string, UnitsNet.Length, FindingRelation, UnitsNet.Length)"/>
    public void Advise(Advice advice, string check, string place, Angle measured, FindingRelation relation, Angle usual)
        => Advise(advice, check, place, FindingKind.Angle, measured.Radians, relation, usual.Radians);

    /// <summary>Gives advice on a number of things; neither passes nor fails.</summary>
    /// <inheritdoc cref="Advise(Advice, string, string, UnitsNet.Length, FindingRelation, UnitsNet.Length)"/>
    public void Advise(Advice advice, string check, string place, int measured, FindingRelation relation, int usual)
        => Advise(advice, check, place, FindingKind.Count, measured, relation, usual);

    internal void Length(string check, string place, double measuredMm, double targetMm)
        => Keep(new Finding(check, place, FindingKind.Length, FindingRelation.Equal, measuredMm, targetMm, ToleranceMm));

    internal void LengthAtLeast(string check, string place, double measuredMm, double leastMm, double toleranceMm = 0)
        => Keep(new Finding(check, place, FindingKind.Length, FindingRelation.AtLeast, measuredMm, leastMm, toleranceMm));

    internal void LengthAtMost(string check, string place, double measuredMm, double mostMm)
        => Keep(new Finding(check, place, FindingKind.Length, FindingRelation.AtMost, measuredMm, mostMm, ToleranceMm));

    internal void Angle(string check, string place, double measuredRad, double targetRad, double toleranceRad = ToleranceRad)
        => Keep(new Finding(check, place, FindingKind.Angle, FindingRelation.Equal, measuredRad, targetRad, toleranceRad));

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
        bool fromStart = dart.PressedToward == Toward.Start;
        CurvePath seam = edge.PressedOnto(index);
        Transform2D overLeg = Transform2D.Mirror(Line.Through(dart.Apex, fromStart ? dart.StartLeg : dart.EndLeg));
        Transform2D overFold = Transform2D.Mirror(Line.Through(dart.Apex, dart.MiddleOfIntake)).Then(overLeg);

        // The middle of every segment, and the fold itself: segments are exact images, so a cap that is off anywhere is off there.
        double off = seam.ClosestTo(overLeg.Apply(cap[(cap.Length / 2) - 1].End)).DistanceMm;
        for (int i = 0; i < cap.Length; i++)
        {
            bool near = i < cap.Length / 2 == fromStart;
            off = Math.Max(off, seam.ClosestTo((near ? overLeg : overFold).Apply(cap[i].PointAtRaw(0.5))).DistanceMm);
        }

        return off;
    }

    internal CheckReport ToReport()
    {
        Array.Resize(ref _findings, _count);
        return new CheckReport(_findings);
    }

    private void Keep(Finding finding)
    {
        if (_count == _findings.Length)
        {
            Array.Resize(ref _findings, Math.Max(2 * _count, 4));
        }

        _findings[_count++] = finding;
    }

    private void Advise(Advice advice, string check, string place, FindingKind kind, double measured, FindingRelation relation, double usual)
        => Keep(new Finding(
            Guard.NotNull(advice, nameof(advice)), Guard.Name(check, nameof(check)), Guard.Name(place, nameof(place)), kind, (FindingRelation)Guard.Choice((int)relation, 3, nameof(relation)), measured, usual));

    private void Add(string check, string place, FindingKind kind, FindingRelation relation, double measured, double target, double tolerance)
        => Keep(new Finding(Guard.Name(check, nameof(check)), Guard.Name(place, nameof(place)), kind, relation, measured, target, tolerance));

    /// <summary>What is measured.</summary>
    public override string ToString()
        => "checks of " + string.Join(", ", _panels.Select(panel => panel.Name.Text));
}
