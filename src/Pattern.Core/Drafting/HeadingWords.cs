namespace Pattern.Core.Drafting;

/// <summary>Sides of the sheet as a drafter says them.</summary>
internal static class HeadingWords
{
    internal static string Of(SheetSide side) => side switch
    {
        SheetSide.Left => "to the left",
        SheetSide.Right => "to the right",
        SheetSide.Above => "upward",
        _ => "downward",
    };

    internal static string WhichOf(SheetSide side) => side switch
    {
        SheetSide.Left => "the one to the left",
        SheetSide.Right => "the one to the right",
        SheetSide.Above => "the upper one",
        _ => "the lower one",
    };
}
