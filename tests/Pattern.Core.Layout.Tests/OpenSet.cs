using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Layout.Tests;

/// <summary>One of the open test sets: see Data/README.md.</summary>
internal sealed class OpenSet
{
    private OpenSet(string name, string[] row)
    {
        Width = double.Parse(row[1], CultureInfo.InvariantCulture);
        Rotations = [.. row[2].Split(' ').Select(turn => double.Parse(turn, CultureInfo.InvariantCulture))];
        Count = int.Parse(row[3], CultureInfo.InvariantCulture);
        TotalArea = double.Parse(row[4], CultureInfo.InvariantCulture);
        BestKnown = double.Parse(row[5], CultureInfo.InvariantCulture);
        Text = Read(name + ".csv");
        Pieces = LayPiece.FromCsv(Text, LengthUnit.Centimeter);
    }

    internal double Width { get; }

    internal double[] Rotations { get; }

    internal int Count { get; }

    internal double TotalArea { get; }

    internal double BestKnown { get; }

    internal string Text { get; }

    internal IReadOnlyList<LayPiece> Pieces { get; }

    internal Cloth Cloth => Cloth.Wide(Length.FromCentimeters(Width)).WithTurns([.. Rotations.Select(turn => Angle.FromDegrees(turn))]);

    internal static OpenSet Named(string name)
        => new(name, Read("sets.csv").Split('\n').Select(line => line.Trim().Split(',')).Single(row => row[0] == name));

    private static string Read(string file) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", file));
}
