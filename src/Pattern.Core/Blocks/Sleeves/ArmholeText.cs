using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Blocks;

/// <summary>An armhole as lines of text, so that a file keeps what a sleeve was set into: every line and curve of its front and back, and the notches. Millimetres, to the last bit.</summary>
internal static class ArmholeText
{
    /// <summary>Says that there is no armhole yet.</summary>
    internal const string None = "none";

    private const string Front = "front";
    private const string Back = "back";
    private const int MostLines = 2000;
    private const double FarthestMm = 1e6;

    internal static string Write(Armhole? armhole)
    {
        if (armhole is null)
        {
            return None;
        }

        var text = new StringBuilder();
        Write(text, Front, armhole.FrontHalf);
        Write(text.Append('\n'), Back, armhole.BackHalf);
        return text.ToString();
    }

    /// <summary>Null where the text says that there is none.</summary>
    /// <exception cref="FormatException">The text is no armhole.</exception>
    internal static Armhole? Read(string text)
    {
        if (text == None)
        {
            return null;
        }

        string[] lines = text.Split('\n');
        if (lines.Length > MostLines)
        {
            throw Wrong(MostLines + 1, lines.Length.ToString(CultureInfo.InvariantCulture) + " lines", "at most " + MostLines.ToString(CultureInfo.InvariantCulture) + " lines");
        }

        int next = 0;
        ArmholeHalf front = ReadHalf(lines, ref next, Front);
        ArmholeHalf back = ReadHalf(lines, ref next, Back);
        return next == lines.Length ? new Armhole(front, back) : throw Wrong(next + 1, lines[next], "the end");
    }

    private static void Write(StringBuilder text, string half, ArmholeHalf side)
    {
        Point2D start = side.Path.Start;
        Line(text, half, start.XMm, start.YMm);
        foreach (PathSegment segment in side.Path.SegmentsRaw)
        {
            text.Append('\n');
            if (segment.Kind == PathSegmentKind.Line)
            {
                Line(text, "line", segment.End.XMm, segment.End.YMm);
            }
            else if (segment.Kind == PathSegmentKind.Cubic)
            {
                CubicBezier cubic = segment.CubicRaw;
                Line(text, "curve", cubic.X1, cubic.Y1, cubic.X2, cubic.Y2, cubic.X3, cubic.Y3);
            }
            else
            {
                CircularArc arc = segment.ArcRaw;
                Line(text, "arc", arc.CentreXMm, arc.CentreYMm, arc.RadiusMm, arc.StartRad, arc.SweepRad);
            }
        }

        foreach (ArmholeNotch notch in side.Notches)
        {
            Line(text.Append('\n'), "notch", notch.FromSideMm, notch.Count);
        }
    }

    private static void Line(StringBuilder text, string word, params double[] numbers)
    {
        text.Append(word);
        foreach (double number in numbers)
        {
            text.Append(' ').Append(number.ToString("R", CultureInfo.InvariantCulture));
        }
    }

    private static ArmholeHalf ReadHalf(string[] lines, ref int next, string half)
    {
        double[] start = Numbers(lines, ref next, half, 2);
        var at = new Point2D(start[0], start[1]);
        var segments = new List<PathSegment>();
        var notches = new List<ArmholeNotch>();
        int began = next;
        while (next < lines.Length && !lines[next].StartsWith(Back, StringComparison.Ordinal))
        {
            string word = lines[next].Split(' ')[0];
            if (word == "notch")
            {
                double[] notch = Numbers(lines, ref next, word, 2);
                notches.Add(notch[1] is 1 or 2 or 3 ? new ArmholeNotch(notch[0], (int)notch[1]) : throw Wrong(next, lines[next - 1], "1 to 3 cuts"));
                continue;
            }

            if (notches.Count > 0)
            {
                throw Wrong(next + 1, lines[next], "a notch");
            }

            PathSegment segment = ReadSegment(lines, ref next, word, at);
            segments.Add(segment);
            at = segment.End;
        }

        try
        {
            CurvePath path = Armhole.Checked(CurvePath.FromSegments(segments), half);
            double beforeMm = 0;
            foreach (ArmholeNotch notch in notches)
            {
                if (!(notch.FromSideMm > beforeMm && notch.FromSideMm < path.LengthMm))
                {
                    throw Wrong(next, "a notch " + notch.FromSideMm.ToString("0.###", CultureInfo.InvariantCulture) + " mm along", "notches in order along the armhole");
                }

                beforeMm = notch.FromSideMm;
            }

            return notches.Count > 0 ? new ArmholeHalf(path, [.. notches]) : throw Wrong(next, half, "a notch");
        }
        catch (Exception e) when (e is ArgumentException or ConstructionException)
        {
            throw Wrong(began, half, "one open line, 40 to 1000 mm long");
        }
    }

    private static PathSegment ReadSegment(string[] lines, ref int next, string word, in Point2D at)
    {
        switch (word)
        {
            case "line":
                double[] to = Numbers(lines, ref next, word, 2);
                return PathSegment.FromLine(new LineSegment(at, new Point2D(to[0], to[1])));
            case "curve":
                double[] c = Numbers(lines, ref next, word, 6);
                return PathSegment.FromCubic(new CubicBezier(at.XMm, at.YMm, c[0], c[1], c[2], c[3], c[4], c[5]));
            case "arc":
                double[] arc = Numbers(lines, ref next, word, 5);
                return arc[2] > 0 && Math.Abs(arc[4]) <= 2 * Math.PI
                    ? PathSegment.FromArc(new CircularArc(arc[0], arc[1], arc[2], arc[3], arc[4]))
                    : throw Wrong(next, lines[next - 1], "an arc of a circle, once round at most");
            default:
                throw Wrong(next + 1, lines[next], "line, curve, arc, notch or " + Back);
        }
    }

    private static double[] Numbers(string[] lines, ref int next, string word, int count)
    {
        string line = next < lines.Length ? lines[next] : "the end";
        string[] parts = line.Split(' ');
        var numbers = new double[count];
        bool isRight = parts[0] == word && parts.Length == count + 1;
        for (int i = 0; isRight && i < count; i++)
        {
            isRight = double.TryParse(parts[i + 1], NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[i]) && Math.Abs(numbers[i]) <= FarthestMm;
        }

        next++;
        return isRight ? numbers : throw Wrong(next, line, word + " and " + count.ToString(CultureInfo.InvariantCulture) + " numbers");
    }

    private static FormatException Wrong(int line, string found, string expected)
        => new(MessageRegistry.Format(DiagnosticCode.ArmholeTextWrong, line, Guard.Echo(found, 60), expected));
}
