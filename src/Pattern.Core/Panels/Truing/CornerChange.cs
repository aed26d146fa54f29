using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>An angle that truing changed.</summary>
public sealed class CornerChange
{
    internal CornerChange(string what, string place, double beforeRad, double afterRad)
    {
        What = what;
        Place = place;
        BeforeRad = beforeRad;
        AfterRad = afterRad;
    }

    /// <summary>Which angle, in lower case words, such as <c>corner at start</c>, <c>dart 1, closed</c> or <c>joined line</c>.</summary>
    public string What { get; }

    /// <summary>The panel and edge, or the edges that meet there.</summary>
    public string Place { get; }

    /// <summary>Before truing, measured inside the panel; 180 degrees is no corner.</summary>
    public Angle Before => Angle.FromRadians(BeforeRad);

    /// <summary>After truing.</summary>
    public Angle After => Angle.FromRadians(AfterRad);

    internal double BeforeRad { get; }

    internal double AfterRad { get; }
}
