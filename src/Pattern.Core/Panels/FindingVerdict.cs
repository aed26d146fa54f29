namespace Pattern.Core.Panels;

/// <summary>What a finding means for whoever wants to cut.</summary>
public enum FindingVerdict
{
    /// <summary>The check holds.</summary>
    Passed,

    /// <summary>The check fails: do not cut.</summary>
    Failed,

    /// <summary>No check: drawn as asked for, and a cutter would look twice.</summary>
    Advice,
}
