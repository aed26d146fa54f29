using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>How strongly a picture of a lesson shows a line. Weight and dashes alone tell them apart.</summary>
internal enum LessonStroke
{
    Earlier,
    New,
    Leader,
    Seam,
    Dart,
    Level,
    Body,
    Tape,
}

/// <summary>Lines of one kind on a picture. Lines that a later picture shows again stand in a common list; the others stand here.</summary>
internal sealed class LessonLines(LessonStroke stroke)
{
    internal LessonStroke Stroke { get; } = stroke;

    /// <summary>The first of the common lines that are shown, and how many are.</summary>
    internal (int From, int Count) Common { get; init; }

    internal IReadOnlyList<CurvePath> Own { get; init; } = [];
}

/// <summary>A point of a picture: full where it is marked now, a ring where something starts from it.</summary>
internal readonly record struct LessonPoint(Point2D Position, bool IsFull);

/// <summary>A picture of a lesson at its size on paper, in no file format. The upper left corner is the origin; x runs to the right and y up. Immutable.</summary>
internal sealed class LessonPicture
{
    internal const double PointMm = 1.5;
    private const double HoleMm = 0.9;

    internal LessonPicture(string words, double widthMm, double heightMm, IReadOnlyList<CurvePath> common, IReadOnlyList<LessonLines> lines, IReadOnlyList<LessonPoint> points, IReadOnlyList<TextMark> names)
    {
        Words = words;
        WidthMm = widthMm;
        HeightMm = heightMm;
        Common = common;
        Lines = lines;
        Points = points;
        Names = names;
    }

    /// <summary>What it shows, for who cannot see it.</summary>
    internal string Words { get; }

    internal double WidthMm { get; }

    internal double HeightMm { get; }

    /// <summary>The lines that pictures of one sheet share.</summary>
    internal IReadOnlyList<CurvePath> Common { get; }

    internal IReadOnlyList<LessonLines> Lines { get; }

    internal IReadOnlyList<LessonPoint> Points { get; }

    internal IReadOnlyList<TextMark> Names { get; }

    /// <summary>The picture as a drawing of its own.</summary>
    internal Drawing ToDrawing(string title) => Drawing.Of(title, Words, new BoundingBox(0, -HeightMm, WidthMm, 0), [DrawingLayer.Of(LayerName.Lesson, Marks(Point2D.Origin, 1))]);

    /// <summary>The marks of the picture, its upper left corner there, so many times as large; lines keep their weight.</summary>
    internal IEnumerable<DrawingMark> Marks(Point2D corner, double scale)
    {
        Transform2D move = Transform2D.Scaling(Point2D.Origin, Ratio.FromDecimalFractions(scale)).Then(Transform2D.Translation(corner - Point2D.Origin));
        foreach (LessonLines lines in Lines)
        {
            LineRole role = RoleOf(lines.Stroke);
            foreach (CurvePath path in Common.Skip(lines.Common.From).Take(lines.Common.Count).Concat(lines.Own))
            {
                yield return new PathMark(path.Transformed(move), role);
            }
        }

        foreach (LessonPoint point in Points)
        {
            yield return new PointMark(move.Apply(point.Position), PointMm, Ink.Strong);
            if (!point.IsFull)
            {
                yield return new PointMark(move.Apply(point.Position), HoleMm, Ink.Paper);
            }
        }

        foreach (TextMark name in Names)
        {
            yield return new TextMark(name.Text, move.Apply(name.Anchor), scale * name.SizeMm, name.AngleRad, name.Alignment, name.Weight, name.Ink);
        }
    }

    private static LineRole RoleOf(LessonStroke stroke) => stroke switch
    {
        LessonStroke.New or LessonStroke.Tape => LineRole.LessonNew,
        LessonStroke.Earlier or LessonStroke.Body => LineRole.LessonEarlier,
        LessonStroke.Seam => LineRole.LessonSeam,
        LessonStroke.Dart => LineRole.LessonDart,
        LessonStroke.Level => LineRole.LessonLevel,
        _ => LineRole.Leader,
    };
}
