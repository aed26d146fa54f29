namespace Pattern.Core.Sizing;

/// <summary>What was changed to see what moves.</summary>
public enum WhatIfKind
{
    /// <summary>A body measurement.</summary>
    Measurement,

    /// <summary>A setting of the method.</summary>
    Setting,

    /// <summary>A setting of a design that the block went through.</summary>
    DesignSetting,
}
