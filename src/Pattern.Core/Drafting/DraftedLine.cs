using System.Threading;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Drafting;

/// <summary>A straight line or curve drawn on the sheet, from one landmark to another. What the sheet's verbs return, and what later verbs start from.</summary>
/// <remarks>Immutable. It lies where it was drawn, whatever truing makes of the seam later.</remarks>
public sealed class DraftedLine
{
    private readonly DraftingSheet _sheet;
    private readonly PathSegment _only;
    private readonly short _from;
    private readonly short _to;
    private CurvePath? _path;

    internal DraftedLine(DraftingSheet sheet, LineName name, in PathSegment only, in Landmark from, in Landmark to)
    {
        _sheet = sheet;
        Name = name;
        _only = only;
        _from = (short)from.Index;
        _to = (short)to.Index;
    }

    internal DraftedLine(DraftingSheet sheet, LineName name, CurvePath path, in Landmark from, in Landmark to)
        : this(sheet, name, path.SegmentsRaw[0], from, to)
    {
        IsOneSegment = path.SegmentsRaw.Length == 1;
        _path = path;
    }

    private DraftedLine(DraftingSheet sheet, DraftedLine from)
    {
        _sheet = sheet;
        Name = from.Name;
        _only = from._only;
        _from = from._from;
        _to = from._to;
        _path = from._path;
        IsOneSegment = from.IsOneSegment;
    }

    /// <summary>What the line is called, such as "lower hip line".</summary>
    public LineName Name { get; }

    /// <summary>What the line is for.</summary>
    public ConstructionRole Role => Name.Role;

    /// <summary>Where it lies, from its first landmark to its last.</summary>
    public CurvePath Path => Volatile.Read(ref _path) ?? (_path = CurvePath.Trusted(_only));

    /// <summary>The landmark that it begins in.</summary>
    public Landmark From => _sheet.Landmarks[_from];

    /// <summary>The landmark that it ends in.</summary>
    public Landmark To => _sheet.Landmarks[_to];

    /// <summary>How long it is, along itself.</summary>
    public Length Length => Length.FromMillimeters(LengthMm());

    internal bool IsOneSegment { get; } = true;

    /// <summary>The cubic, for a method that knows that it drew one.</summary>
    internal CubicBezier CubicRaw => _only.CubicRaw;

    internal PathSegment OnlyRaw => _only;

    /// <summary>The same line on a sheet that goes on from its own.</summary>
    internal DraftedLine On(DraftingSheet sheet) => new(sheet, this);

    /// <summary>Name and ends.</summary>
    public override string ToString() => Name.Text + " from " + From.Name.Text + " to " + To.Name.Text;

    internal double LengthMm() => IsOneSegment ? _only.LengthMm() : Path.LengthMm;

    internal bool IsOn(DraftingSheet sheet) => ReferenceEquals(_sheet, sheet);

    internal bool Touches(in Landmark landmark) => landmark.Index == _from || landmark.Index == _to;

    /// <summary>The direction of the line in its end of that landmark, leading on along the line.</summary>
    internal bool TryDirectionAt(in Landmark end, out Direction direction)
    {
        if (IsOneSegment)
        {
            return _only.TryDirectionAtRaw(end.Index == _from ? 0 : 1, out direction);
        }

        PathSegment[] segments = Path.SegmentsRaw;
        return end.Index == _from ? segments[0].TryDirectionAtRaw(0, out direction) : segments[segments.Length - 1].TryDirectionAtRaw(1, out direction);
    }

    /// <summary>Where a line without ends crosses this one nearest to a point: how far along this line, in millimetres.</summary>
    internal bool TryCross(in Line line, in Point2D near, out Point2D place, out double alongMm)
    {
        double least = double.PositiveInfinity;
        place = default;
        alongMm = 0;
        if (IsOneSegment && _only.Kind == PathSegmentKind.Cubic)
        {
            CubicBezier cubic = _only.CubicRaw;
            CurveIntersections hits = cubic.IntersectionsWith(line);
            double parameter = 0;
            for (int i = 0; i < hits.Count; i++)
            {
                Point2D point = cubic.PointAtRaw(hits.FirstRaw(i));
                if (point.DistanceMm(near) < least)
                {
                    least = point.DistanceMm(near);
                    place = point;
                    parameter = hits.FirstRaw(i);
                }
            }

            alongMm = cubic.LengthMm(0, parameter);
            return hits.Count > 0;
        }

        CurvePath path = Path;
        foreach (PathIntersection hit in path.IntersectionsWith(line).Points)
        {
            if (hit.Point.DistanceMm(near) < least)
            {
                least = hit.Point.DistanceMm(near);
                place = hit.Point;
                alongMm = path.LengthToMm(new PathLocation(hit.FirstSegment, hit.FirstParameter, place, 0));
            }
        }

        return least < double.PositiveInfinity;
    }
}
