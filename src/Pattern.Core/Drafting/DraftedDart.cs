using System;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Drafting;

/// <summary>A dart as drawn by hand on a line of the sheet. Immutable.</summary>
/// <remarks>Half the intake lies either side of its middle, measured square to the line from the middle to the apex. Where the line it stands on bends or slopes,
/// one leg comes out longer than the other: truing makes them equal.</remarks>
public sealed class DraftedDart
{
    private readonly double _firstAlongMm;
    private readonly double _secondAlongMm;

    internal DraftedDart(DraftedLine line, in Landmark middle, in Landmark apex, in DartLegs legs)
    {
        Line = line;
        Middle = middle;
        Apex = apex;
        IntakeMm = 2 * legs.HalfMm;
        FirstLeg = legs.First;
        SecondLeg = legs.Second;
        _firstAlongMm = legs.FirstAlongMm;
        _secondAlongMm = legs.SecondAlongMm;
    }

    /// <summary>The line that it stands on.</summary>
    public DraftedLine Line { get; }

    /// <summary>The middle of its intake, on that line.</summary>
    public Landmark Middle { get; }

    /// <summary>The point in which it ends.</summary>
    public Landmark Apex { get; }

    /// <summary>Where the leg begins that the line reaches first.</summary>
    public Point2D FirstLeg { get; }

    /// <summary>Where the other leg begins.</summary>
    public Point2D SecondLeg { get; }

    /// <summary>The width as it was laid off, square to the middle of the dart.</summary>
    public Length Intake => Length.FromMillimeters(IntakeMm);

    /// <summary>How much longer one leg is than the other; zero or more.</summary>
    public Length LegDifference => Length.FromMillimeters(LegDifferenceMm);

    /// <summary>What the dart is called: <c>back dart 1</c> where its middle is <c>back dart 1 centre</c>, else <c>the dart at</c> its middle.</summary>
    public override string ToString() => NameOf(Middle.Name);

    internal static string NameOf(LandmarkName middle) => NameOf(middle, Phrasebook.English);

    internal static string NameOf(LandmarkName middle, Phrasebook book)
    {
        const string Centre = " centre";
        string text = middle.Text;
        return text.EndsWith(Centre, StringComparison.Ordinal)
            ? book.Say(text.Substring(0, text.Length - Centre.Length))
            : book.Say("the dart at {middle}", ("middle", book.Say(text)));
    }

    internal double IntakeMm { get; }

    internal double LegDifferenceMm => Math.Abs(Apex.Position.DistanceMm(FirstLeg) - Apex.Position.DistanceMm(SecondLeg));

    /// <summary>The part of the line that folding the dart takes away.</summary>
    internal double AlongMm => _secondAlongMm - _firstAlongMm;
}

/// <summary>Half the intake of a dart, and where its legs meet their line, in the order of the line.</summary>
internal readonly record struct DartLegs(double HalfMm, Point2D First, double FirstAlongMm, Point2D Second, double SecondAlongMm);
