using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Pieces;
using UnitsNet;

namespace Pattern.Core.Layout;

/// <summary>Lays pieces on cloth.</summary>
public static class ClothLaying
{
    // Outlines that overlap by less than this touch: with it, pieces that fit exactly fit for a machine too.
    private const double TouchMm = 1e-6;

    /// <summary>Lays the pieces that are cut from one cloth.</summary>
    /// <remarks>On open cloth a piece that lies on the fold is laid whole, and of two or more that do not, every second one is laid as the mirror image. On folded cloth a piece on the
    /// fold lies there, and of the others each is laid once for two; where one alone is needed, a second is cut that nobody asked for: see <see cref="ClothLay.Spares"/>. The
    /// grainline of each piece lies along the cloth, its beginning at the beginning of the cloth. Curves are kept apart by outlines of straight lines around them, at most 1 mm
    /// outside, and 0.1 mm of room, so that no two cut lines cross.</remarks>
    /// <param name="pieces">The pieces.</param>
    /// <param name="cloth">The cloth as it lies.</param>
    /// <param name="from">Which cloth of the cut list; pieces cut from others are left out. Main cloth by default.</param>
    /// <param name="effort">How long to search; <see cref="LayEffort.Usual"/> by default.</param>
    /// <param name="progress">Hears of every shorter lay.</param>
    /// <param name="cancellation">Breaks the search off without a result.</param>
    /// <exception cref="ConstructionException">No piece is cut from the cloth, one is wider than it, has a fold that does not run along the grain, or cannot be drawn.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are more than 500 to lay.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    /// <example><code>
    /// PieceSet pieces = SkirtPattern.From(SkirtBlock.For(body).Draft());
    /// ClothLay lay = pieces.LayOn(Cloth.Wide(Length.FromCentimeters(140)).Napped());
    /// Drawing sheet = lay.Draw();
    /// </code></example>
    public static ClothLay LayOn(
        this PieceSet pieces,
        Cloth cloth,
        ClothName from = default,
        LayEffort? effort = null,
        IProgress<LayProgress>? progress = null,
        CancellationToken cancellation = default)
    {
        Guard.NotNull(cloth, nameof(cloth));
        var toLay = new List<LayPiece>();
        var spares = new List<string>();
        foreach (PatternPiece piece in Guard.NotNull(pieces, nameof(pieces)).Pieces)
        {
            foreach (CutCount cut in piece.Cuts.Where(cut => cut.Cloth == from))
            {
                toLay.Add(cloth.IsFolded ? OfFolded(piece, cut.Count, spares) : OfOpen(piece, cut.Count));
            }
        }

        return toLay.Count > 0
            ? LayOn(toLay, cloth, effort, progress, cancellation, spares)
            : throw new ConstructionException(DiagnosticCode.LayNothing, from) { Step = "laying pieces on the cloth", Landmark = from.Text };
    }

    /// <summary>Lays outlines from elsewhere, each as often as it says.</summary>
    /// <remarks>Straight-sided outlines are laid to touch. Their x axis is the grain.</remarks>
    /// <param name="pieces">The pieces: 1 or more, 500 copies together at the most.</param>
    /// <param name="cloth">The cloth as it lies.</param>
    /// <param name="effort">How long to search; <see cref="LayEffort.Usual"/> by default.</param>
    /// <param name="progress">Hears of every shorter lay.</param>
    /// <param name="cancellation">Breaks the search off without a result.</param>
    /// <exception cref="ConstructionException">A piece is wider than the cloth.</exception>
    /// <exception cref="ArgumentException">There are no pieces, or too many.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static ClothLay LayOn(
        this IEnumerable<LayPiece> pieces,
        Cloth cloth,
        LayEffort? effort = null,
        IProgress<LayProgress>? progress = null,
        CancellationToken cancellation = default)
    {
        LayPiece[] toLay = [.. Guard.NotNull(pieces, nameof(pieces)).Select(piece => Guard.NotNull(piece, nameof(pieces)))];
        return LayOn(toLay, Guard.NotNull(cloth, nameof(cloth)), effort, progress, cancellation, []);
    }

    private static LayPiece OfOpen(PatternPiece piece, int count)
    {
        bool isWhole = piece.FoldLine is not null || piece.Settings.IsUnfolded;
        int mirrored = isWhole ? 0 : count / 2;
        return LayPiece.From(piece.FoldLine is null ? piece : piece.Unfolded(), count - mirrored, mirrored);
    }

    private static LayPiece OfFolded(PatternPiece piece, int count, List<string> spares)
    {
        if (piece.FoldLine is not null)
        {
            return LayPiece.From(piece, count, 0);
        }

        if (count % 2 == 1)
        {
            spares.Add(piece.Name.Text);
        }

        return LayPiece.From(piece, (count + 1) / 2, 0);
    }

    private static ClothLay LayOn(
        IReadOnlyList<LayPiece> pieces, Cloth cloth, LayEffort? effort, IProgress<LayProgress>? progress, CancellationToken cancellation, IReadOnlyList<string> spares)
    {
        _ = Guard.InRange(pieces.Sum(piece => piece.Count + piece.MirroredCount), 1, LayPiece.MostCopies, nameof(pieces));
        bool isExact = pieces.All(piece => piece.IsExact);
        var shapes = new LayShapes(pieces, cloth);
        var task = new LayTask(shapes.Shapes, shapes.Copies, cloth.UsableWidthMm, cloth.GapMm + (isExact ? 0 : 2 * LayShapes.FlatMm) - TouchMm);
        double boundMm = LayBound.LengthMm(task, isExact);
        void Found(double lengthMm, long moves) => progress?.Report(new LayProgress(lengthMm, boundMm, task.AreaMm2 / (lengthMm * task.WidthMm), (int)moves));
        var limit = new LayLimit(effort ?? LayEffort.Usual, Found, cancellation);
        Arrangement found = new LaySearch(task, (effort ?? LayEffort.Usual).Seed, boundMm, limit).Run();
        // What counts as touching may gain a millionth of a millimetre here and there; no lay is shorter than the bound for it.
        return new ClothLay(cloth, Placed(pieces, task, found), Math.Max(found.LengthMm, boundMm), boundMm, task.AreaMm2, spares, (int)limit.Moves);
    }

    private static LaidPiece[] Placed(IReadOnlyList<LayPiece> pieces, LayTask task, Arrangement found)
    {
        var counted = new Dictionary<(int Piece, bool IsMirrored), int>();
        var placed = new LaidPiece[task.Copies.Length];
        for (int i = 0; i < placed.Length; i++)
        {
            LayShape shape = task.Shapes[found.Shape[i]];
            var kind = (shape.Piece, shape.IsMirrored);
            counted.TryGetValue(kind, out int copy);
            counted[kind] = ++copy;
            Transform2D place = LayShapes.Turned(shape.IsMirrored, shape.TurnRad).Then(Transform2D.Translation(Vector2D.FromMillimeters(found.X[i], found.Y[i])));
            placed[i] = new LaidPiece(pieces[shape.Piece], copy, shape.IsMirrored, shape.IsOnFold, shape.TurnRad, place);
        }

        return placed;
    }
}
