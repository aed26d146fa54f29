using System;
using System.Globalization;
using Pattern.Core.Geometry;

namespace Pattern.Core.Drafting;

/// <summary>Directions as a drafter says them.</summary>
internal static class HeadingWords
{
    // Finer than any protractor, coarser than the last bits of a sine.
    private const double ExactDegrees = 1e-7;

    internal static string Of(SheetSide side) => side switch
    {
        SheetSide.Left => "to the left",
        SheetSide.Right => "to the right",
        SheetSide.Above => "upward",
        _ => "downward",
    };

    internal static string WhichOf(SheetSide side) => side switch
    {
        SheetSide.Left => "the one to the left",
        SheetSide.Right => "the one to the right",
        SheetSide.Above => "the upper one",
        _ => "the lower one",
    };

    internal static string Of(Direction direction)
    {
        double degrees = direction.AngleRad * 180 / Math.PI;
        double fromLevel = Math.Abs(degrees) > 90 ? 180 - Math.Abs(degrees) : Math.Abs(degrees);
        if (90 - fromLevel < ExactDegrees)
        {
            return degrees > 0 ? "straight up" : "straight down";
        }

        string across = Math.Abs(degrees) > 90 ? "to the left" : "to the right";
        return fromLevel < ExactDegrees
            ? "level " + across
            : across + ", " + fromLevel.ToString("0.##", CultureInfo.InvariantCulture) + (degrees > 0 ? " degrees up" : " degrees down");
    }
}
