namespace Pattern.Core.Geometry;

/// <summary>Receives a path piece by piece: implement it to hand curves to another program's drawing interface.</summary>
/// <remarks>Coordinates are plain numbers in the unit that the caller of <c>WriteTo</c> chose; y points up. Nothing is
/// allocated on the way. A struct that implements it is never boxed by the generic overloads.</remarks>
public interface IPathSink
{
    /// <summary>Begins a path.</summary>
    /// <param name="x">Start, to the right.</param>
    /// <param name="y">Start, up.</param>
    void MoveTo(double x, double y);

    /// <summary>Goes on with a straight line.</summary>
    /// <param name="x">End, to the right.</param>
    /// <param name="y">End, up.</param>
    void LineTo(double x, double y);

    /// <summary>Goes on with a cubic Bezier curve.</summary>
    /// <param name="startControlX">First control point, to the right.</param>
    /// <param name="startControlY">First control point, up.</param>
    /// <param name="endControlX">Second control point, to the right.</param>
    /// <param name="endControlY">Second control point, up.</param>
    /// <param name="x">End, to the right.</param>
    /// <param name="y">End, up.</param>
    void CubicTo(double startControlX, double startControlY, double endControlX, double endControlY, double x, double y);

    /// <summary>Goes on with a circular arc; only called where <see cref="ArcOutput.Arcs"/> was asked for.</summary>
    /// <param name="centreX">Centre, to the right.</param>
    /// <param name="centreY">Centre, up.</param>
    /// <param name="radius">Radius.</param>
    /// <param name="startAngle">From the centre to the start, in radians counter-clockwise from the right.</param>
    /// <param name="sweep">How far round, in radians; counter-clockwise is positive.</param>
    /// <param name="x">End, to the right.</param>
    /// <param name="y">End, up.</param>
    void ArcTo(double centreX, double centreY, double radius, double startAngle, double sweep, double x, double y);

    /// <summary>Joins the end to the start; called last, on closed paths only.</summary>
    void Close();
}
