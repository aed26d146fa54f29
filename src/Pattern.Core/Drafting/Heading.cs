using System;
using System.Globalization;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;

namespace Pattern.Core.Drafting;

/// <summary>A direction as a drafter says it.</summary>
internal sealed class Heading(Direction direction)
{
    // Finer than any protractor, coarser than the last bits of a sine.
    private const double ExactDegrees = 1e-7;

    internal string Say(Phrasebook book)
    {
        double degrees = direction.AngleRad * 180 / Math.PI;
        double fromLevel = Math.Abs(degrees) > 90 ? 180 - Math.Abs(degrees) : Math.Abs(degrees);
        if (90 - fromLevel < ExactDegrees)
        {
            return book.Say(degrees > 0 ? "straight up" : "straight down");
        }

        string across = Math.Abs(degrees) > 90 ? "to the left" : "to the right";
        return fromLevel < ExactDegrees
            ? book.Say("level " + across)
            : book.Say(across + (degrees > 0 ? ", {degrees} degrees up" : ", {degrees} degrees down"), ("degrees", fromLevel.ToString("0.##", CultureInfo.InvariantCulture)));
    }

    /// <summary>In English.</summary>
    public override string ToString() => Say(Phrasebook.English);
}
