using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Measurement;

/// <summary>What is measured on a body: the key of one measurement, with its term and the range that human bodies measure.</summary>
/// <remarks>Terms are those of ISO 8559-1:2017 where it has one, with its clause where we know it. The range is no size table: it takes in small children and
/// the largest adults with a margin, and only stops a slip of the tape, the pen or the unit. Two keys are equal when their terms are.</remarks>
public sealed class BodyMeasurement : IEquatable<BodyMeasurement>
{
    private const double LargestMm = 10_000.0;

    private static readonly List<BodyMeasurement> Listed = [];

    // Of the library's own; those that somebody defined come after all of them.
    private readonly int _order;

    private BodyMeasurement(string term, MeasurementKind kind, string? clause, double leastMm, double mostMm, int order)
    {
        Term = term;
        Kind = kind;
        Clause = clause;
        LeastMm = leastMm;
        MostMm = mostMm;
        _order = order;
    }

    /// <summary>Around the natural waist.</summary>
    public static BodyMeasurement WaistGirth { get; } = Girth("waist girth", "5.3.10", 400, 1800);

    /// <summary>Around the body between waist and hip, over the top of the hip bones.</summary>
    public static BodyMeasurement TopHipGirth { get; } = Girth("top hip girth", "5.3.12", 400, 1950);

    /// <summary>Around the fullest part of the seat.</summary>
    public static BodyMeasurement HipGirth { get; } = Girth("hip girth", "5.3.13", 500, 2000);

    /// <summary>Around the widest place between waist and crotch, wherever that is.</summary>
    public static BodyMeasurement MaximumHipGirth { get; } = Girth("maximum hip girth", "5.3.14", 500, 2100);

    /// <summary>Around the bust, over the bust points.</summary>
    public static BodyMeasurement BustGirth { get; } = Girth("bust girth", "5.3.4", 400, 2000);

    /// <summary>Around the chest, under the arms.</summary>
    public static BodyMeasurement ChestGirth { get; } = Girth("chest girth", "5.3.6", 400, 1900);

    /// <summary>Around the chest, above the bust.</summary>
    public static BodyMeasurement UpperChestGirth { get; } = Girth("upper chest girth", "5.3.7", 400, 1900);

    /// <summary>Around the body just under the bust.</summary>
    public static BodyMeasurement UnderBustGirth { get; } = Girth("under bust girth", "5.3.8", 380, 1800);

    /// <summary>Around the neck.</summary>
    public static BodyMeasurement NeckGirth { get; } = Girth("neck girth", "5.3.2", 180, 750);

    /// <summary>Around the base of the neck, where a plain neckline runs.</summary>
    public static BodyMeasurement NeckBaseGirth { get; } = Girth("neck base girth", "5.3.3", 200, 850);

    /// <summary>Around the arm where it joins the body.</summary>
    public static BodyMeasurement ArmscyeGirth { get; } = Girth("armscye girth", "5.3.15", 180, 900);

    /// <summary>Around the fullest part of the upper arm.</summary>
    public static BodyMeasurement UpperArmGirth { get; } = Girth("upper-arm girth", "5.3.16", 100, 800);

    /// <summary>Around the bent elbow.</summary>
    public static BodyMeasurement ElbowGirth { get; } = Girth("elbow girth", null, 100, 600);

    /// <summary>Around the wrist.</summary>
    public static BodyMeasurement WristGirth { get; } = Girth("wrist girth", "5.3.19", 80, 350);

    /// <summary>Around the hand at its widest.</summary>
    public static BodyMeasurement HandGirth { get; } = Girth("hand girth", "5.5.1", 90, 400);

    /// <summary>Around the fullest part of the thigh.</summary>
    public static BodyMeasurement ThighGirth { get; } = Girth("thigh girth", "5.3.20", 200, 1250);

    /// <summary>Around the thigh, halfway to the knee.</summary>
    public static BodyMeasurement MidThighGirth { get; } = Girth("mid-thigh girth", "5.3.21", 180, 1150);

    /// <summary>Around the knee.</summary>
    public static BodyMeasurement KneeGirth { get; } = Girth("knee girth", "5.3.22", 150, 900);

    /// <summary>Around the fullest part of the calf.</summary>
    public static BodyMeasurement CalfGirth { get; } = Girth("calf girth", "5.3.24", 120, 850);

    /// <summary>Around the ankle.</summary>
    public static BodyMeasurement AnkleGirth { get; } = Girth("ankle girth", null, 100, 550);

    /// <summary>Down the side from the waist to the fullest part of the seat.</summary>
    public static BodyMeasurement WaistToHip { get; } = Length("waist to hip", null, 60, 400);

    /// <summary>Sitting, from the waist to the seat of the chair.</summary>
    public static BodyMeasurement BodyRise { get; } = Length("body rise", null, 110, 550);

    /// <summary>From the waist at centre front, between the legs, to the waist at centre back.</summary>
    public static BodyMeasurement TotalCrotchLength { get; } = Length("total crotch length", "5.4.18", 280, 1500);

    /// <summary>Down the side of the leg from the waist to the floor.</summary>
    public static BodyMeasurement OutsideLegLength { get; } = Length("outside leg length", null, 250, 1600);

    /// <summary>From the back neck point down the centre back to the waist.</summary>
    public static BodyMeasurement BackNeckPointToWaist { get; } = Length("back neck point to waist", "5.4.5", 150, 700);

    /// <summary>From the front neck point down the centre front to the waist.</summary>
    public static BodyMeasurement FrontNeckPointToWaist { get; } = Length("front neck point to waist", "5.4.8", 120, 700);

    /// <summary>From the side neck point over the bust to the waist.</summary>
    public static BodyMeasurement SideNeckPointToWaist { get; } = Length("side neck point to waist", null, 170, 800);

    /// <summary>From the side neck point to the bust point.</summary>
    public static BodyMeasurement SideNeckPointToBustPoint { get; } = Length("side neck point to bust point", null, 80, 600);

    /// <summary>From the back neck point down to the level of the armpits.</summary>
    public static BodyMeasurement ScyeDepthLength { get; } = Length("scye depth length", "5.4.6", 70, 450);

    /// <summary>From the side neck point to the shoulder point.</summary>
    public static BodyMeasurement ShoulderLength { get; } = Length("shoulder length", "5.4.1", 40, 280);

    /// <summary>From shoulder point to shoulder point through the back neck point.</summary>
    public static BodyMeasurement AcrossBackShoulderWidth { get; } = Width("across back shoulder width", "5.4.3", 170, 750);

    /// <summary>Across the back from armscye to armscye.</summary>
    public static BodyMeasurement AcrossBackWidth { get; } = Width("across back width", null, 150, 750);

    /// <summary>Across the front from armscye to armscye.</summary>
    public static BodyMeasurement AcrossFrontWidth { get; } = Width("across front width", "5.4.7", 140, 700);

    /// <summary>From bust point to bust point.</summary>
    public static BodyMeasurement BustPointToBustPointWidth { get; } = Width("bust point to bust point width", null, 80, 500);

    /// <summary>From the shoulder point to the bent elbow.</summary>
    public static BodyMeasurement UpperArmLength { get; } = Length("upper arm length", null, 90, 600);

    /// <summary>From the shoulder point over the bent elbow to the wrist.</summary>
    public static BodyMeasurement OuterArmLength { get; } = Length("outer arm length", "5.7.8", 180, 1000);

    /// <summary>From the back neck point over shoulder and elbow to the wrist.</summary>
    public static BodyMeasurement BackNeckPointToWristLength { get; } = Length("back neck point to wrist length", "5.4.17", 250, 1250);

    /// <summary>From the crotch to the floor.</summary>
    public static BodyMeasurement InsideLegHeight { get; } = Height("inside leg height", "5.1.15", 150, 1300);

    /// <summary>From the waist to the floor.</summary>
    public static BodyMeasurement WaistHeight { get; } = Height("waist height", null, 250, 1600);

    /// <summary>From the fullest part of the seat to the floor.</summary>
    public static BodyMeasurement HipHeight { get; } = Height("hip height", null, 180, 1400);

    /// <summary>From the knee to the floor.</summary>
    public static BodyMeasurement KneeHeight { get; } = Height("knee height", null, 90, 850);

    /// <summary>From the top of the head to the floor, without shoes.</summary>
    public static BodyMeasurement Stature { get; } = Height("stature", "5.1.1", 500, 2500);

    /// <summary>Every measurement that the library knows, in the order in which it lists them.</summary>
    public static IReadOnlyList<BodyMeasurement> All { get; } = Listed.AsReadOnly();

    /// <summary>The term: <c>waist girth</c>.</summary>
    public string Term { get; }

    /// <summary>How it is taken.</summary>
    public MeasurementKind Kind { get; }

    /// <summary>The clause of ISO 8559-1:2017 that defines it, or null where we do not know one.</summary>
    /// <value>From secondary sources; check it against the standard before quoting it.</value>
    public string? Clause { get; }

    /// <summary>The least that is believed; itself included.</summary>
    public UnitsNet.Length LeastPlausible => UnitsNet.Length.FromMillimeters(LeastMm);

    /// <summary>The most that is believed; itself included.</summary>
    public UnitsNet.Length MostPlausible => UnitsNet.Length.FromMillimeters(MostMm);

    internal double LeastMm { get; }

    internal double MostMm { get; }

    /// <summary>A measurement of your own, for a method that needs one the library does not know: <c>head girth</c>.</summary>
    /// <param name="term">What the trade calls it, in lower case by custom; it may not be one of <see cref="All"/>.</param>
    /// <param name="kind">How it is taken.</param>
    /// <param name="leastPlausible">The least that is believed; more than nothing.</param>
    /// <param name="mostPlausible">The most that is believed; at least that, up to 10 m.</param>
    /// <exception cref="ArgumentException">The term is empty or known already, or the kind or the range is wrong.</exception>
    [Pure]
    public static BodyMeasurement Define(string term, MeasurementKind kind, UnitsNet.Length leastPlausible, UnitsNet.Length mostPlausible)
    {
        if (TryFind(Guard.Name(term, nameof(term)), out _))
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.BodyMeasurementKnown, term), nameof(term));
        }

        if (kind is < MeasurementKind.Girth or > MeasurementKind.Width)
        {
            throw new ArgumentOutOfRangeException(nameof(kind), MessageRegistry.Format(DiagnosticCode.ChoiceUnknown, nameof(kind), kind));
        }

        double leastMm = Guard.Millimetres(leastPlausible, double.Epsilon, LargestMm, nameof(leastPlausible));
        return new BodyMeasurement(term, kind, null, leastMm, Guard.Millimetres(mostPlausible, leastMm, LargestMm, nameof(mostPlausible)), int.MaxValue);
    }

    /// <summary>Looks for a measurement of <see cref="All"/> by its term, whatever the case.</summary>
    /// <param name="term">For example <c>waist girth</c>.</param>
    /// <param name="found">The measurement, or null where there is none of that term.</param>
    /// <returns>Whether there is one.</returns>
    public static bool TryFind(string term, [NotNullWhen(true)] out BodyMeasurement? found)
    {
        Guard.NotNull(term, nameof(term));
        found = Listed.Find(key => string.Equals(key.Term, term, StringComparison.OrdinalIgnoreCase));
        return found is not null;
    }

    /// <inheritdoc/>
    public bool Equals(BodyMeasurement? other) => ReferenceEquals(this, other) || (other is not null && string.Equals(Term, other.Term, StringComparison.OrdinalIgnoreCase));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as BodyMeasurement);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.OrdinalIgnoreCase.GetHashCode(Term);

    /// <summary>The term.</summary>
    public override string ToString() => Term;

    internal bool StandsBefore(BodyMeasurement other)
        => _order != other._order ? _order < other._order : string.CompareOrdinal(Term, other.Term) < 0;

    internal bool IsPlausible(double valueMm) => valueMm >= LeastMm && valueMm <= MostMm;

    private static BodyMeasurement Girth(string term, string? clause, double leastMm, double mostMm) => List(term, MeasurementKind.Girth, clause, leastMm, mostMm);

    private static BodyMeasurement Length(string term, string? clause, double leastMm, double mostMm) => List(term, MeasurementKind.Length, clause, leastMm, mostMm);

    private static BodyMeasurement Width(string term, string? clause, double leastMm, double mostMm) => List(term, MeasurementKind.Width, clause, leastMm, mostMm);

    private static BodyMeasurement Height(string term, string? clause, double leastMm, double mostMm) => List(term, MeasurementKind.Height, clause, leastMm, mostMm);

    private static BodyMeasurement List(string term, MeasurementKind kind, string? clause, double leastMm, double mostMm)
    {
        var key = new BodyMeasurement(term, kind, clause, leastMm, mostMm, Listed.Count);
        Listed.Add(key);
        return key;
    }
}
