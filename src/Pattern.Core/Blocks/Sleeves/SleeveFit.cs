namespace Pattern.Core.Blocks;

/// <summary>How close a sleeve lies to the arm.</summary>
public enum SleeveFit
{
    /// <summary>A narrow sleeve with a high head: it hangs clean.</summary>
    Close,

    /// <summary>A wider sleeve with a lower head and little to ease in: the arm lifts freely.</summary>
    Easy,
}
