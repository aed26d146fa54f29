namespace Pattern.Core.Diagnostics;

/// <summary>How much a message weighs.</summary>
public enum Severity
{
    /// <summary>Something worth knowing; the work is right.</summary>
    Note,

    /// <summary>Drawn, but not as asked; the work can still be looked at.</summary>
    Warning,

    /// <summary>Nothing was made, or what was made must not be cut.</summary>
    Error,
}
