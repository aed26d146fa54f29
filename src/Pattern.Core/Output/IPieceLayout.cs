namespace Pattern.Core.Output;

/// <summary>Pieces that can be laid side by side in any width, as on tables of several sizes.</summary>
internal interface IPieceLayout
{
    /// <summary>The pieces without the words that are placed among them: enough to see what paper they take.</summary>
    /// <param name="widthMm">What they lie in, without margins.</param>
    Drawing Outline(double widthMm);

    /// <summary>The whole drawing.</summary>
    /// <param name="widthMm">What the pieces lie in, without margins.</param>
    Drawing Draw(double widthMm);
}
