using System;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>One place in a tiling: what part of the drawing its sheet shows. Immutable.</summary>
public sealed class TiledSheet
{
    private const int Letters = 26;

    internal TiledSheet(int row, int column, in BoundingBox cell, in BoundingBox window, bool isEmpty)
    {
        Row = row;
        Column = column;
        Cell = cell;
        Window = window;
        IsEmpty = isEmpty;
        ColumnName = NameOfColumn(column);
        Name = FormattableString.Invariant($"{row}{ColumnName}");
    }

    /// <summary>The row, from the top, starting at 1.</summary>
    public int Row { get; }

    /// <summary>The column, from the left, starting at 1.</summary>
    public int Column { get; }

    /// <summary>The column as letters: A, B, ... Z, AA.</summary>
    public string ColumnName { get; }

    /// <summary>Row and column: <c>2C</c>. The number comes first, so that no sheet has the name of a paper size.</summary>
    public string Name { get; }

    /// <summary>The part of the drawing that is seen on this sheet when all are joined, in the drawing's coordinates: up to the next sheet's cut edge.</summary>
    public BoundingBox Cell { get; }

    /// <summary>The part of the drawing that is printed on this sheet, in the drawing's coordinates: the cell, and the strip below its neighbours.</summary>
    public BoundingBox Window { get; }

    /// <summary>Whether the cell holds no line, dot or letter, so that the sheet is left out.</summary>
    public bool IsEmpty { get; }

    /// <summary>Returns <see cref="Name"/>.</summary>
    public override string ToString() => Name;

    // As the columns of a ledger: after Z comes AA.
    private static string NameOfColumn(int column)
    {
        string name = string.Empty;
        for (int rest = column; rest > 0; rest = (rest - 1) / Letters)
        {
            name = (char)('A' + ((rest - 1) % Letters)) + name;
        }

        return name;
    }
}
