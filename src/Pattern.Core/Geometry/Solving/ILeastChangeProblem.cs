namespace Pattern.Core.Geometry;

/// <summary>Equations in a few unknowns, as <see cref="LeastChange"/> solves them.</summary>
/// <remarks>Unknowns and residuals are millimetres; a turn counts as <see cref="LeastChange.MmPerRad"/> millimetres per radian, so that both weigh alike
/// on a piece of cloth.</remarks>
internal interface ILeastChangeProblem
{
    /// <summary>Whether <see cref="Slopes"/> answers; where not, slopes are taken by differences and kept up by secants.</summary>
    bool KnowsSlopes { get; }

    /// <summary>Says by how much each equation is off; false where nothing can be drawn from these unknowns.</summary>
    bool TryMeasure(double[] unknowns, double[] residuals);

    /// <summary>Slopes to begin with where they are not known but well guessed; false where nothing is guessed.</summary>
    bool TryGuessSlopes(double[] slopes);

    /// <summary>How each equation changes with each unknown, where it was measured last: row after row.</summary>
    void Slopes(double[] slopes);
}
