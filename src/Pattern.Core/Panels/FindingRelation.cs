namespace Pattern.Core.Panels;

/// <summary>How what was measured has to stand to its target.</summary>
public enum FindingRelation
{
    /// <summary>Equal, within the tolerance either way.</summary>
    Equal,

    /// <summary>Not less than the target, within the tolerance.</summary>
    AtLeast,

    /// <summary>Not more than the target, within the tolerance.</summary>
    AtMost,
}
