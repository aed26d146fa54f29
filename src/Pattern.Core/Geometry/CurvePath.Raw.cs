using System.Collections.Generic;

namespace Pattern.Core.Geometry;

/// <content>What upper floors call with lengths in millimetres that they know to lie on the path.</content>
public sealed partial class CurvePath
{
    /// <summary>Trusted: both lengths lie on the path and differ; only a closed path runs over its start.</summary>
    internal CurvePath SubPathMm(double fromMm, double toMm)
    {
        var parts = new List<PathSegment>();
        if (toMm > fromMm)
        {
            AddPart(fromMm, toMm, parts);
        }
        else
        {
            AddPart(fromMm, LengthMm, parts);
            AddPart(0, toMm, parts);
        }

        if (parts.Count == 0)
        {
            parts.Add(PathSegment.FromLine(new LineSegment(PointAtMm(fromMm), PointAtMm(toMm))));
        }

        return new CurvePath(parts.ToArray(), isClosed: false);
    }

    /// <summary>The same path turned and fitted about its end, so that it starts elsewhere.</summary>
    internal CurvePath WithStartMovedTo(in Point2D start)
    {
        Vector2D was = Start - End;
        Vector2D now = start - End;
        double squared = was.DotMm2(was);

        // The similarity about the end that carries one vector onto the other, as a complex quotient.
        double cosine = was.DotMm2(now) / squared;
        double sine = was.CrossMm2(now) / squared;
        return Transformed(Transform2D.Similarity(End, cosine, sine));
    }

    /// <summary>The length of the path up to a place on it.</summary>
    internal double LengthToMm(in PathLocation location)
        => LengthsMm[location.SegmentIndex] + _segments[location.SegmentIndex].SubSegmentLengthMm(location.Parameter);

    internal Point2D PointAtMm(double distanceMm)
    {
        int index = Locate(distanceMm, out double t);
        return _segments[index].PointAtRaw(t);
    }
}
