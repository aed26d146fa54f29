using Pattern.Core.Diagnostics;

namespace Pattern.Core.Panels;

/// <summary>Begins constructions: curves that are drawn whole from a few unknowns, until they measure what they have to.</summary>
/// <remarks>A construction gives sweet curves by the way it draws; truing only finds its unknowns. A waist in one sweep across its darts and a sleeve cap from height and crown
/// are constructions; what has no construction, such as corners and joins, is trued by a <see cref="TruingPlan"/>.</remarks>
public static class Construction
{
    /// <summary>Begins a construction.</summary>
    /// <typeparam name="TGiven">What the method has drawn so far.</typeparam>
    /// <typeparam name="TDrawn">What is drawn.</typeparam>
    /// <param name="name">What it is called, in messages.</param>
    /// <param name="draw">Draws. Where nothing can be drawn it throws <see cref="ConstructionException"/>, and the search steps back.</param>
    public static Construction<TGiven, TDrawn> Of<TGiven, TDrawn>(string name, ConstructionDrawing<TGiven, TDrawn> draw)
        => new(Guard.Name(name, nameof(name)), Guard.NotNull(draw, nameof(draw)));
}
