namespace Pattern.Core.Sizing;

/// <summary>One measurement or setting, changed by so much either way, and what came of drafting again. Immutable.</summary>
public sealed class WhatIfChange
{
    internal WhatIfChange(WhatIfKind kind, string name, string by, string? moreRefusal, string? lessRefusal, bool isMoreOtherwise, bool isLessOtherwise, bool isChoice)
    {
        IsChoice = isChoice;
        Kind = kind;
        Name = name;
        By = by;
        MoreRefusal = moreRefusal;
        LessRefusal = lessRefusal;
        IsMoreDraftedOtherwise = isMoreOtherwise;
        IsLessDraftedOtherwise = isLessOtherwise;
    }

    /// <summary>What was changed.</summary>
    public WhatIfKind Kind { get; }

    /// <summary>The measurement or the setting; for a choice also the word that was chosen instead.</summary>
    public string Name { get; }

    /// <summary>By how much, such as <c>1/2 in</c>, <c>1</c>, <c>1 degree</c>; for a choice the word that it was before.</summary>
    public string By { get; }

    /// <summary>Why nothing, or nothing right, could be drafted with more of it; null where it was.</summary>
    public string? MoreRefusal { get; }

    /// <summary>Why nothing, or nothing right, could be drafted with less of it; null where it was, and for a choice, which has no less.</summary>
    public string? LessRefusal { get; }

    /// <summary>Whether with more of it the draft took other steps: a dart more, a row of the table further. What moves then jumps, and half of the change does not move it by half.</summary>
    public bool IsMoreDraftedOtherwise { get; }

    /// <summary>Whether with less of it the draft took other steps.</summary>
    public bool IsLessDraftedOtherwise { get; }

    /// <summary>Whether another word was chosen, so that there is neither more nor less.</summary>
    internal bool IsChoice { get; }

    /// <summary>What was changed and by how much.</summary>
    public override string ToString() => Name + (IsChoice ? " instead of " : " by ") + By;
}
