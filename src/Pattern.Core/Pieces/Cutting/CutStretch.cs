using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Pieces;

/// <summary>The line beside one stretch of an edge. At a free end of the edge it runs straight on, for the corner to end it where it should.</summary>
internal sealed class CutStretch
{
    private readonly bool _isExtendedAtStart;
    private readonly bool _isExtendedAtEnd;

    internal CutStretch(CurvePath path, bool isExtendedAtStart, bool isExtendedAtEnd)
    {
        Path = path;

        // A dart near the end of its edge may have its leg beyond it: then what runs on is all there is.
        bool isMore = path.SegmentsRaw.Length > 1;
        _isExtendedAtStart = isExtendedAtStart && isMore;
        _isExtendedAtEnd = isExtendedAtEnd && isMore;
        From = PathSpot.StartOf(path);
        To = PathSpot.EndOf(path);
    }

    internal CurvePath Path { get; }

    /// <summary>Where the corner before it lets it begin.</summary>
    internal PathSpot From { get; set; }

    /// <summary>Where the corner after it lets it end.</summary>
    internal PathSpot To { get; set; }

    internal bool HasVanished => !From.IsBefore(To) || PathSpot.Between(Path, From, To).Count == 0;

    /// <summary>The end of the line beside the stretch, before it runs on.</summary>
    internal PathSpot EndBeside => _isExtendedAtEnd ? new(Path.SegmentsRaw.Length - 2, 1) : PathSpot.EndOf(Path);

    /// <summary>The start of the line beside the stretch, after what runs on before it.</summary>
    internal PathSpot StartBeside => _isExtendedAtStart ? new(1, 0) : PathSpot.StartOf(Path);

    internal Point2D At(PathSpot spot) => Path.SegmentsRaw[spot.Segment].PointAtRaw(spot.T);

    /// <summary>What can meet the next edge: without what runs on before its start. The offset leads from its segments to those of the path.</summary>
    internal CurvePath Tail(out int offset)
    {
        offset = _isExtendedAtStart ? 1 : 0;
        return Part(offset, Path.SegmentsRaw.Length);
    }

    /// <summary>What can meet the edge before: without what runs on after its end.</summary>
    internal CurvePath Head() => Part(0, Path.SegmentsRaw.Length - (_isExtendedAtEnd ? 1 : 0));

    /// <summary>What the corners leave of it, a straight continuation of a straight line made one with it.</summary>
    internal List<PathSegment> Trimmed()
    {
        List<PathSegment> part = PathSpot.Between(Path, From, To);
        if (_isExtendedAtStart && From.Segment == 0 && part.Count > 1)
        {
            Merge(part, 0);
        }

        if (_isExtendedAtEnd && To.Segment == Path.SegmentsRaw.Length - 1 && part.Count > 1)
        {
            Merge(part, part.Count - 2);
        }

        return part;
    }

    private CurvePath Part(int from, int to)
    {
        var segments = new PathSegment[to - from];
        System.Array.Copy(Path.SegmentsRaw, from, segments, 0, segments.Length);
        return CurvePath.Trusted(segments, isClosed: false);
    }

    private static void Merge(List<PathSegment> part, int index)
    {
        if (part[index].Kind == PathSegmentKind.Line && part[index + 1].Kind == PathSegmentKind.Line)
        {
            part[index] = PathSegment.FromLine(new LineSegment(part[index].Start, part[index + 1].End));
            part.RemoveAt(index + 1);
        }
    }
}
