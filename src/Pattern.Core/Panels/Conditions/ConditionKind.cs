namespace Pattern.Core.Panels;

/// <summary>What a <see cref="Condition"/> asks.</summary>
internal enum ConditionKind
{
    SewnLength,
    Sewn,
    JoinedAngle,
    SmoothOverDarts,
    LegsEqual,
    Intake,
    Inside,
}
