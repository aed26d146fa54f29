using System;

namespace Pattern.Core.Panels;

/// <summary>Names one dart of one panel: <c>EdgeOf.Panel(PanelName.Back, EdgeName.Waist).Dart(1)</c>.</summary>
public readonly struct DartOf : IEquatable<DartOf>
{
    internal DartOf(PanelName panel, DartName dart)
    {
        PanelName = panel;
        DartName = dart;
    }

    /// <summary>The panel.</summary>
    public PanelName PanelName { get; }

    /// <summary>The dart on it.</summary>
    public DartName DartName { get; }

    /// <inheritdoc/>
    public bool Equals(DartOf other) => PanelName == other.PanelName && DartName == other.DartName;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is DartOf other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((PanelName.GetHashCode() * 397) ^ DartName.GetHashCode());

    /// <summary>Such as <c>back waist dart 1</c>.</summary>
    public override string ToString() => PanelName.Text + " " + DartName;

    /// <summary>Whether both name the same dart of the same panel.</summary>
    public static bool operator ==(DartOf left, DartOf right) => left.Equals(right);

    /// <summary>Whether they name different darts.</summary>
    public static bool operator !=(DartOf left, DartOf right) => !left.Equals(right);
}
