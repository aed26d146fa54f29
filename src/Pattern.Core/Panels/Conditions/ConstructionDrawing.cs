namespace Pattern.Core.Panels;

/// <summary>Draws from what is given and from a few unknowns.</summary>
/// <typeparam name="TGiven">What the method has drawn so far, such as points and lengths.</typeparam>
/// <typeparam name="TDrawn">What is drawn: a curve, a record of several.</typeparam>
/// <param name="given">What is given.</param>
/// <param name="unknowns">The unknowns, as they stand in this drawing.</param>
public delegate TDrawn ConstructionDrawing<in TGiven, out TDrawn>(TGiven given, ConstructionUnknowns unknowns);
