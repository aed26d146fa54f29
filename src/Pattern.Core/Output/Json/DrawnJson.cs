using System;
using System.Collections.Generic;
using System.Globalization;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>The lines that a piece draws, for programs that cannot draw them. Reading takes nothing from them, but refuses lines of another piece.</summary>
internal static class DrawnJson
{
    internal static void Write(JsonWriter json, PatternPiece piece)
    {
        json.Begin('{').Name("cutLine");
        PathJson.Write(json, piece.CutLine);
        json.Name("seamLine");
        PathJson.Write(json, piece.SeamLine);
        json.Name("foldLine");
        if (piece.FoldLine is { } fold)
        {
            json.Line(fold);
        }
        else
        {
            json.Null();
        }

        json.Name("notches").RequireEntries(piece.Notches.Count);
        json.Begin('[');
        foreach (PieceNotch notch in piece.Notches)
        {
            json.Begin('{').Name("kind").Text(JsonWords.NotchKinds.WordOf(notch.Kind));
            json.Name("edge").Text(notch.Edge.Text);
            json.Name("onSeam").Point(notch.OnSeam);
            json.Name("cuts");
            Write(json, notch.Cuts);
            json.End('}');
        }

        json.End(']').Name("darts").RequireEntries(piece.Darts.Count);
        json.Begin('[');
        foreach (PieceDart dart in piece.Darts)
        {
            json.Begin('{').Name("edge").Text(dart.Name?.Edge.Text);
            json.Name("number").Number(dart.Name?.Number);
            json.Name("legs");
            Write(json, dart.Legs);
            json.Name("foldLine").Line(dart.FoldLine);
            json.Name("drillHoles").Begin('[');
            foreach (Point2D hole in dart.DrillHoles)
            {
                json.Point(hole);
            }

            json.End(']').End('}');
        }

        json.End(']').Name("internalLines").RequireEntries(piece.InternalLines.Count);
        json.Begin('[');
        foreach (InternalLine line in piece.InternalLines)
        {
            json.Begin('{').Name("name").Text(line.Name);
            json.Name("path");
            PathJson.Write(json, line.Path);
            json.End('}');
        }

        json.End(']').End('}');
    }

    internal static void Check(JsonValue value, PatternPiece piece)
    {
        JsonObject drawn = value.Object("cutLine", "seamLine", "foldLine", "notches", "darts", "internalLines");
        CurvePath cutLine = value.Make(() => piece.CutLine);
        CheckPath(drawn["cutLine"], cutLine);
        CheckPath(drawn["seamLine"], piece.SeamLine);
        if (piece.FoldLine is { } fold)
        {
            CheckLine(drawn["foldLine"], fold);
        }
        else if (!drawn["foldLine"].IsNull)
        {
            throw drawn["foldLine"].Fault(DiagnosticCode.JsonDrawnDiffers, drawn["foldLine"].Described(), "null, since no edge lies on the fold");
        }

        CheckList(drawn["notches"], piece.Notches, CheckNotch);
        CheckList(drawn["darts"], piece.Darts, CheckDart);
        CheckList(drawn["internalLines"], piece.InternalLines, (entry, line) =>
        {
            JsonObject said = entry.Object("name", "path");
            CheckText(said["name"], line.Name);
            CheckPath(said["path"], line.Path);
        });
    }

    private static void Write(JsonWriter json, IReadOnlyList<LineSegment> lines)
    {
        json.Begin('[');
        foreach (LineSegment line in lines)
        {
            json.Line(line);
        }

        json.End(']');
    }

    private static void CheckNotch(JsonValue entry, PieceNotch notch)
    {
        JsonObject said = entry.Object("kind", "edge", "onSeam", "cuts");
        CheckText(said["kind"], JsonWords.NotchKinds.WordOf(notch.Kind));
        CheckText(said["edge"], notch.Edge.Text);
        CheckPoint(said["onSeam"], notch.OnSeam);
        CheckList(said["cuts"], notch.Cuts, (line, cut) => CheckLine(line, cut));
    }

    private static void CheckDart(JsonValue entry, PieceDart dart)
    {
        JsonObject said = entry.Object("edge", "number", "legs", "foldLine", "drillHoles");
        if (dart.Name is { } name)
        {
            CheckText(said["edge"], name.Edge.Text);
            if (said["number"].Whole(1, JsonLimits.Entries) != name.Number)
            {
                throw said["number"].Fault(DiagnosticCode.JsonDrawnDiffers, said["number"].Described(), name.Number.ToString(CultureInfo.InvariantCulture));
            }
        }
        else if (!said["edge"].IsNull || !said["number"].IsNull)
        {
            throw entry.Fault(DiagnosticCode.JsonDrawnDiffers, "an edge or a number", "null for both, since the dart lies inside the panel");
        }

        CheckList(said["legs"], dart.Legs, (line, leg) => CheckLine(line, leg));
        CheckLine(said["foldLine"], dart.FoldLine);
        CheckList(said["drillHoles"], dart.DrillHoles, (point, hole) => CheckPoint(point, hole));
    }

    private static void CheckList<T>(JsonValue value, IReadOnlyList<T> drawn, Action<JsonValue, T> check)
    {
        JsonValue[] said = value.List();
        if (said.Length != drawn.Count)
        {
            throw value.Fault(DiagnosticCode.JsonDrawnDiffers, value.Described(), "a list of " + drawn.Count.ToString(CultureInfo.InvariantCulture));
        }

        for (int i = 0; i < said.Length; i++)
        {
            check(said[i], drawn[i]);
        }
    }

    private static void CheckText(JsonValue value, string drawn)
    {
        if (value.Text() != drawn)
        {
            throw value.Fault(DiagnosticCode.JsonDrawnDiffers, value.Described(), drawn);
        }
    }

    private static void CheckPath(JsonValue value, CurvePath drawn)
    {
        CurvePath said = PathJson.Read(value, drawn.IsClosed);
        double apart = PathComparison.ApartMm(said, drawn);
        if (!(apart <= PathComparison.AllowedMm))
        {
            throw Apart(value, "a path", apart);
        }
    }

    private static void CheckLine(JsonValue value, in LineSegment drawn)
    {
        LineSegment said = PathJson.Line(value);
        double apart = Math.Max(said.Start.DistanceMm(drawn.Start), said.End.DistanceMm(drawn.End));
        if (!(apart <= PathComparison.AllowedMm))
        {
            throw Apart(value, "a line", apart);
        }
    }

    private static void CheckPoint(JsonValue value, in Point2D drawn)
    {
        double apart = PathJson.Point(value).DistanceMm(drawn);
        if (!(apart <= PathComparison.AllowedMm))
        {
            throw Apart(value, "a point", apart);
        }
    }

    private static DocumentFormatException Apart(JsonValue value, string what, double apartMm) => value.Fault(
        DiagnosticCode.JsonDrawnDiffers,
        what,
        JsonValue.Number(apartMm) + " mm away, allowed are " + JsonValue.Number(PathComparison.AllowedMm) + " mm");
}
