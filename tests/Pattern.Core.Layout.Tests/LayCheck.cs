using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using NetTopologySuite.Geometries;

namespace Pattern.Core.Layout.Tests;

/// <summary>Judges a lay from the texts that went in and came out, by polygon intersection of a reference library: nothing of the search is used.</summary>
internal static class LayCheck
{
    // The rule of the open sets: Data/README.md.
    private const double MostOverlap = 1e-4;
    private const double InsideBy = 1e-6;

    /// <summary>What is wrong with the places of pieces, in the unit of both texts.</summary>
    internal static IReadOnlyList<string> Faults(string pieces, string places, double width, double length, IReadOnlyList<double> rotations)
    {
        Dictionary<string, (int Quantity, Coordinate[] Corners)> known = pieces.Split('\n').Skip(1).Select(line => line.Trim().Split(',')).Where(row => row.Length == 5)
            .GroupBy(row => row[0])
            .ToDictionary(group => group.Key, group => (int.Parse(group.First()[1], CultureInfo.InvariantCulture), group.Select(row => new Coordinate(Number(row[3]), Number(row[4]))).ToArray()));
        string[][] rows = [.. places.Split('\n').Skip(1).Where(line => line.Length > 0).Select(line => line.Split(','))];
        var faults = new List<string>();
        foreach ((string piece, (int quantity, _)) in known)
        {
            int[] copies = [.. rows.Where(row => row[0] == piece).Select(row => int.Parse(row[1], CultureInfo.InvariantCulture)).Order()];
            if (!copies.SequenceEqual(Enumerable.Range(1, quantity)))
            {
                faults.Add($"piece {piece}: copies {string.Join(" ", copies)} of {quantity}");
            }
        }

        faults.AddRange(rows.Where(row => !known.ContainsKey(row[0])).Select(row => $"piece {row[0]} is unknown"));
        faults.AddRange(rows.Where(row => !rotations.Any(turn => Math.Abs(turn - Number(row[4])) < 1e-9)).Select(row => $"piece {row[0]} is turned {row[4]}"));
        Polygon[] laid = [.. rows.Where(row => known.ContainsKey(row[0])).Select(row => Place(known[row[0]].Corners, Number(row[2]), Number(row[3]), Number(row[4])))];
        return [.. faults, .. Faults(laid, width, length)];
    }

    /// <summary>What is wrong with polygons on a strip.</summary>
    internal static IEnumerable<string> Faults(Polygon[] laid, double width, double length)
    {
        for (int i = 0; i < laid.Length; i++)
        {
            Envelope box = laid[i].EnvelopeInternal;
            if (box.MinX < -InsideBy || box.MinY < -InsideBy || box.MaxX > length + InsideBy || box.MaxY > width + InsideBy)
            {
                yield return $"{i} lies off the cloth: {box}";
            }

            for (int j = 0; j < i; j++)
            {
                if (box.Intersects(laid[j].EnvelopeInternal))
                {
                    double overlap = laid[i].Intersection(laid[j]).Area;
                    if (overlap > MostOverlap * Math.Min(laid[i].Area, laid[j].Area))
                    {
                        yield return $"{i} and {j} overlap by {overlap}";
                    }
                }
            }
        }
    }

    private static Polygon Place(Coordinate[] corners, double x, double y, double degrees)
    {
        double cosine = Math.Cos(degrees * Math.PI / 180);
        double sine = Math.Sin(degrees * Math.PI / 180);
        Coordinate[] placed = [.. corners.Select(corner => new Coordinate((corner.X * cosine) - (corner.Y * sine) + x, (corner.X * sine) + (corner.Y * cosine) + y))];
        return new Polygon(new LinearRing([.. placed, placed[0].Copy()]));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
