namespace Pattern.Core.Sizing;

/// <summary>What came of drafting for one body.</summary>
public enum TrialOutcome
{
    /// <summary>Drafted, and every check holds.</summary>
    Passed,

    /// <summary>Drafted, but a check does not hold; or the method broke off without a reason.</summary>
    Failed,

    /// <summary>The method declines this body, with its reason.</summary>
    Refused,

    /// <summary>The row of the table is no body.</summary>
    BadRow,
}
