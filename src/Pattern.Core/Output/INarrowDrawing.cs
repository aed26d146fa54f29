namespace Pattern.Core.Output;

/// <summary>A drawing that can be drawn narrower, with the names beside it inside: for paper that it would else just not fit on.</summary>
internal interface INarrowDrawing
{
    /// <summary>The same lines, the names among them.</summary>
    Drawing Draw();
}
