using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>Where the tape lies for each measurement that the library knows.</summary>
/// <remarks>Terms and landmarks after ISO 8559-1:2017 as secondary sources give them; the sentences are ours, common practice. Heights on the figure are hundredths of the stature.</remarks>
internal static class MeasuringPlaces
{
    private static readonly Dictionary<string, MeasuringPlace> Places = new(StringComparer.OrdinalIgnoreCase)
    {
        ["waist girth"] = Girth("Around the natural waist, level. It is where the trunk is narrowest, or where it creases when one bends sideways: tie a cord or an elastic there and leave it for all other measurements.", 62.5, 6.9),
        ["top hip girth"] = Girth("Around the body over the top of the hip bones, level, about half-way from the waist to the fullest part of the seat.", 57, 8.6),
        ["hip girth"] = Girth("Around the fullest part of the seat, level. Look from the side to find it, and stand with the feet together.", 51.5, 9.7),
        ["maximum hip girth"] = Girth("Around the widest place between waist and crotch, level, wherever that is: slide the tape down until it shows the most.", 49.5, 9.6),
        ["bust girth"] = Girth("Around the bust over both bust points, level in front and behind, under the arms.", 72, 8.3),
        ["chest girth"] = Girth("Around the chest close under the arms, level.", 74, 8.5),
        ["upper chest girth"] = Girth("Around the chest above the bust, under the arms and over the shoulder blades.", 75.5, 8.7),
        ["under bust girth"] = Girth("Around the body just under the bust, level.", 68.5, 7.8),
        ["neck girth"] = Girth("Around the neck, just below the throat.", 86, 2.9),
        ["neck base girth"] = Girth("Around the base of the neck, over the back neck point and both side neck points to the pit of the neck: where a plain neckline runs.", 84, 3.4),
        ["armscye girth"] = Both("Around the arm where it joins the body: over the shoulder point and through under the arm, the arm hanging.", Line(9.8, 81.5, 9.2, 78, 8.7, 74.5), Line(9.8, 81.5, 9.2, 78, 8.7, 74.5)),
        ["upper-arm girth"] = Arm("Around the upper arm where it is fullest, the arm hanging.", 71, 9.9, 12.5),
        ["elbow girth"] = Arm("Around the bent elbow, over its point.", 63, 11.2, 13),
        ["wrist girth"] = Arm("Around the wrist, over the bone.", 51, 12.8, 14.2),
        ["hand girth"] = Arm("Around the hand over the knuckles, the thumb laid in.", 46.5, 12.9, 15),
        ["thigh girth"] = Leg("Around the thigh high up, level, just below the crotch.", 45, 0.6, 9.3),
        ["mid-thigh girth"] = Leg("Around the thigh half-way from crotch to knee, level.", 38, 1.2, 8.3),
        ["knee girth"] = Leg("Around the knee over the middle of the kneecap, the leg straight.", 28, 2.2, 6.2),
        ["calf girth"] = Leg("Around the calf where it is fullest.", 21, 2.2, 6.3),
        ["ankle girth"] = Leg("Around the ankle, over the bones.", 5, 2.4, 4.2),
        ["waist to hip"] = Both("At the side, from the waist cord down over the curve of the body to the level of the fullest part of the seat.", Line(6.9, 62.5, 8.6, 57, 9.7, 51.5), Line(6.9, 62.5, 8.6, 57, 9.7, 51.5)),
        ["body rise"] = Both("Seated upright on a hard chair: at the side, from the waist cord straight down to the chair.", Line(8, 62.5, 10.6, 47), []),
        ["total crotch length"] = Both("From the waist cord in front, between the legs, to the waist cord behind.", Line(0, 62.5, 0, 46.5), Line(0, 62.5, 0, 46.5)),
        ["outside leg length"] = Both("At the side, from the waist cord over the hip and then straight down to the floor.", Line(6.9, 62.5, 9.7, 51.5, 9.7, 0), []),
        ["back neck point to waist"] = Both("From the bone at the base of the neck down the spine to the waist cord.", [], Line(0, 84.5, 0, 62.5)),
        ["front neck point to waist"] = Both("From the pit of the neck straight down to the waist cord.", Line(0, 83, 0, 62.5), []),
        ["side neck point to waist"] = Both("From the side of the neck, where the shoulder seam begins, over the bust point straight down to the waist cord.", Line(3.2, 84.5, 4.2, 72, 4.2, 62.5), []),
        ["side neck point to bust point"] = Both("From the side of the neck, where the shoulder seam begins, to the bust point.", Line(3.2, 84.5, 4.2, 72), []),
        ["scye depth length"] = Both("From the bone at the base of the neck down the spine to the level of the armpits.", [], Line(0, 84.5, 0, 74.5)),
        ["shoulder length"] = Both("From the side of the neck along the shoulder to the shoulder point, the bone at its end.", Line(3.2, 84.5, 9.8, 81.5), Line(3.2, 84.5, 9.8, 81.5)),
        ["across back shoulder width"] = Both("Across the back from shoulder point to shoulder point, over the bone at the base of the neck.", [], Line(-9.8, 81.5, 0, 84, 9.8, 81.5)),
        ["across back width"] = Both("Across the back from armhole to armhole, half-way between shoulder and armpit, level.", [], Line(-8.6, 77.5, 8.6, 77.5)),
        ["across front width"] = Both("Across the front from armhole to armhole, half-way between shoulder and armpit, level.", Line(-8.4, 77.5, 8.4, 77.5), []),
        ["bust point to bust point width"] = Both("Straight from bust point to bust point.", Line(-4.2, 72, 4.2, 72), []),
        ["upper arm length"] = Both("From the shoulder point down the outside of the arm to the point of the elbow, the arm a little bent.", Line(10.2, 81.3, 12.2, 73, 13, 63), []),
        ["outer arm length"] = Both("From the shoulder point down the outside of the arm, over the bent elbow, to the bone of the wrist.", Line(10.2, 81.3, 12.2, 73, 13, 63, 14.2, 51), []),
        ["back neck point to wrist length"] = Both("From the bone at the base of the neck over the shoulder point and the bent elbow to the bone of the wrist.", [], Line(0, 84.5, 10, 81.5, 12.2, 73, 13, 63, 14.2, 51)),
        ["inside leg height"] = Both("From the crotch straight down to the floor, on the inside of the leg. Held by the person herself at the top.", Line(0, 46.5, 0, 0), []),
        ["waist height"] = Height("From the waist cord straight down to the floor.", 62.5),
        ["hip height"] = Height("From the level of the fullest part of the seat straight down to the floor.", 51.5),
        ["knee height"] = Height("From the middle of the kneecap straight down to the floor.", 28),
        ["stature"] = Height("From the floor to the top of the head, without shoes, back to a wall: lay a book flat on the head.", 100),
    };

    internal static IReadOnlyDictionary<string, MeasuringPlace> All => Places;

    // The tape around the body, seen to dip a little, as a ring does from slightly above.
    private static MeasuringPlace Girth(string words, double height, double half) => new(words, [Ring(-half, half, height)], [Ring(-half, half, height)]);

    private static MeasuringPlace Arm(string words, double height, double inner, double outer) => new(words, [Ring(inner, outer, height)], []);

    private static MeasuringPlace Leg(string words, double height, double inner, double outer) => new(words, [Ring(inner, outer, height)], []);

    private static MeasuringPlace Height(string words, double height) => new(words, [Straight(17, height, 17, 0), Straight(15.8, height, 18.2, height), Straight(15.8, 0, 18.2, 0)], []);

    private static MeasuringPlace Both(string words, double[] front, double[] back) => new(words, Paths(front), Paths(back));

    private static double[] Line(params double[] points) => points;

    private static CurvePath[] Paths(double[] points)
    {
        if (points.Length == 0)
        {
            return [];
        }

        Point2D[] through = [.. Enumerable.Range(0, points.Length / 2).Select(i => new Point2D(points[2 * i], points[(2 * i) + 1]))];
        return [through.Length == 2 ? CurvePath.FromLine(new LineSegment(through[0], through[1])) : CurvePath.Through(through, null, null)];
    }

    private static CurvePath Ring(double left, double right, double height)
        => CurvePath.Through([new Point2D(left, height), new Point2D((left + right) / 2, height - ((right - left) / 20)), new Point2D(right, height)], null, null);

    private static CurvePath Straight(double fromX, double fromY, double toX, double toY) => CurvePath.FromLine(new LineSegment(new Point2D(fromX, fromY), new Point2D(toX, toY)));
}
