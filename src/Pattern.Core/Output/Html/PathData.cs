using System;
using System.Text;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>Writes a path as the data of a small picture. Half of the last figure is far below what the picture shows: more figures would only be bytes.</summary>
internal readonly struct PathData(StringBuilder text, double left, double top, int decimals) : IPathSink
{
    public void MoveTo(double x, double y) => Point('M', x, y);

    public void LineTo(double x, double y) => Point('L', x, y);

    public void CubicTo(double startControlX, double startControlY, double endControlX, double endControlY, double x, double y)
    {
        Point('C', startControlX, startControlY);
        Point(' ', endControlX, endControlY);
        Point(' ', x, y);
    }

    public void ArcTo(double centreX, double centreY, double radius, double startAngle, double sweep, double x, double y) => LineTo(x, y);

    public void Close() => text.Append('Z');

    private void Point(char before, double x, double y) => text.Append(before).Number(Math.Round(x - left, decimals)).Append(' ').Number(Math.Round(top - y, decimals));
}
