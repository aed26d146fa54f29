namespace Pattern.Core.Panels;

/// <summary>What a <see cref="Movable"/> moves.</summary>
internal enum MovableKind
{
    Corner,
    Handles,
    Dart,
    Legs,
    Notch,
    OneSweep,
}
