using System;
using System.Collections.Generic;
using System.Globalization;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>A piece in a pattern file: its panel, all that was said about it, and for other programs the lines that it draws.</summary>
internal static class PieceJson
{
    private const string Day = "yyyy-MM-dd";

    internal static void Write(JsonWriter json, PatternPiece piece)
    {
        PieceSettings said = piece.Settings;
        json.Begin('{').Name("name").Text(said.Name?.Text);
        json.Name("panel");
        PanelJson.Write(json, piece.Half);
        json.Name("allowance").Number(said.DefaultMm);
        json.Name("allowances").RequireEntries(said.Allowances.Length);
        json.Begin('[');
        foreach ((EdgeName edge, double mm) in said.Allowances)
        {
            json.Begin('{').Name("edge").Text(edge.Text);
            json.Name("allowance").Number(mm);
            json.End('}');
        }

        json.End(']').Name("corners").RequireEntries(said.Corners.Length);
        json.Begin('[');
        foreach ((EdgeName across, EdgeName along, Corner corner) in said.Corners)
        {
            json.Begin('{').Name("across").Text(across.Text);
            json.Name("along").Text(along.Text);
            json.Name("corner").Text(JsonWords.Corners.WordOf(corner));
            json.End('}');
        }

        json.End(']').Name("fold").Text(said.Fold?.Text);
        json.Name("unfolded").Flag(said.IsUnfolded);
        json.Name("internalLines").RequireEntries(said.InternalLines.Length);
        json.Begin('[');
        foreach (InternalLine line in said.InternalLines)
        {
            json.Begin('{').Name("name").Text(line.Name);
            json.Name("kind").Text(JsonWords.LineKinds.WordOf(line.Kind));
            json.Name("closed").Flag(line.Path.IsClosed);
            json.Name("path");
            PathJson.Write(json, line.Path);
            json.End('}');
        }

        json.End(']').Name("cuts").RequireEntries(said.Cuts.Length);
        json.Begin('[');
        foreach (CutCount cut in said.Cuts)
        {
            json.Begin('{').Name("count").Whole(cut.Count);
            json.Name("cloth").Text(cut.Cloth.Text);
            json.End('}');
        }

        json.End(']').Name("label");
        Write(json, said.Label);
        json.Name("tape").Text(said.Tape is { } tape ? JsonWords.Tapes.WordOf(tape) : null);
        json.Name("drawn");
        DrawnJson.Write(json, piece);
        json.End('}');
    }

    internal static PatternPiece Read(JsonValue value)
    {
        JsonObject said = value.Object("name", "panel", "allowance", "allowances", "corners", "fold", "unfolded", "internalLines", "cuts", "label", "tape", "drawn");
        var piece = new Saying<PatternPiece>(PatternPiece.From(PanelJson.Read(said["panel"])));
        if (!said["name"].IsNull)
        {
            PanelName name = said["name"].Name(PanelName.Of);
            piece.Say(said["name"], p => p.WithName(name));
        }

        piece.Say(said["allowance"], (p, allowance) => p.WithAllowance(allowance));
        if (!said["fold"].IsNull)
        {
            EdgeName fold = said["fold"].Name(EdgeName.Of);
            piece.Say(said["fold"], p => p.CutOnFold(fold));
        }

        // After the fold, which makes the names of mirrored edges known.
        if (said["unfolded"].Flag())
        {
            piece.Say(said["unfolded"], p => p.Unfolded());
        }

        ReadAllowances(said["allowances"], piece);
        ReadCorners(said["corners"], piece);
        foreach (JsonValue entry in said["internalLines"].List())
        {
            JsonObject line = entry.Object("name", "kind", "closed", "path");
            string name = line["name"].Text();
            InternalLineKind kind = line["kind"].Choice(JsonWords.LineKinds);
            CurvePath path = PathJson.Read(line["path"], line["closed"].Flag());
            piece.Say(line["name"], p => p.WithInternalLine(name, kind, path));
        }

        ReadCuts(said["cuts"], piece);
        if (!said["label"].IsNull)
        {
            PieceLabel label = Label(said["label"]);
            piece.Say(said["label"], p => p.WithLabel(label));
        }

        if (!said["tape"].IsNull)
        {
            TapeStep tape = said["tape"].Choice(JsonWords.Tapes);
            piece.Say(said["tape"], p => p.WithTape(tape));
        }

        DrawnJson.Check(said["drawn"], piece.Said);
        return piece.Said;
    }

    private static void ReadAllowances(JsonValue value, Saying<PatternPiece> piece)
    {
        var edges = new HashSet<EdgeName>();
        foreach (JsonValue entry in value.List())
        {
            JsonObject allowance = entry.Object("edge", "allowance");
            EdgeName edge = allowance["edge"].NameOnce(EdgeName.Of, edges);
            piece.Say(allowance["allowance"], (p, width) => p.WithAllowance(edge, width));
        }
    }

    private static void ReadCorners(JsonValue value, Saying<PatternPiece> piece)
    {
        var corners = new HashSet<(EdgeName, EdgeName)>();
        foreach (JsonValue entry in value.List())
        {
            JsonObject said = entry.Object("across", "along", "corner");
            EdgeName across = said["across"].Name(EdgeName.Of);
            EdgeName along = said["along"].Name(EdgeName.Of);
            Corner corner = said["corner"].Choice(JsonWords.Corners);
            if (!corners.Add((across, along)) || (across != along && !corners.Add((along, across))))
            {
                throw entry.Fault(DiagnosticCode.JsonSaidTwice, $"the corner of {across} and {along} again", "once");
            }

            piece.Say(entry, p => p.WithCorner(across, along, corner));
        }
    }

    private static void ReadCuts(JsonValue value, Saying<PatternPiece> piece)
    {
        var cloths = new HashSet<ClothName>();
        foreach (JsonValue entry in value.List())
        {
            JsonObject cut = entry.Object("count", "cloth");
            ClothName cloth = cut["cloth"].NameOnce(ClothName.Of, cloths);
            int count = cut["count"].Whole(1, PatternPiece.MostCut);
            piece.Say(entry, p => p.Cut(count, cloth));
        }
    }

    private static void Write(JsonWriter json, PieceLabel? label)
    {
        if (label is null)
        {
            json.Null();
            return;
        }

        json.Begin('{').Name("garment").Text(label.Garment);
        json.Name("wearer").Text(label.Wearer);
        json.Name("size").Text(label.Size);
        json.Name("date").Text(label.Date?.ToString(Day, CultureInfo.InvariantCulture));
        json.Name("notes").RequireEntries(label.Notes.Count);
        json.Begin('[');
        foreach (string note in label.Notes)
        {
            json.Text(note);
        }

        json.End(']').End('}');
    }

    private static PieceLabel Label(JsonValue value)
    {
        JsonObject said = value.Object("garment", "wearer", "size", "date", "notes");
        var label = new Saying<PieceLabel>(said["garment"].Name(PieceLabel.For));
        label.SayTextUnlessNull(said["wearer"], (l, wearer) => l.ForWhom(wearer));
        label.SayTextUnlessNull(said["size"], (l, size) => l.WithSize(size));
        if (!said["date"].IsNull)
        {
            DateTime day = DateTime.TryParseExact(said["date"].Text(), Day, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime read)
                ? read
                : throw said["date"].Fault(DiagnosticCode.JsonValueWrong, said["date"].Described(), "a day such as 2026-03-14");
            label.Say(said["date"], l => l.Dated(day));
        }

        foreach (JsonValue note in said["notes"].List())
        {
            label.SayText(note, (l, text) => l.WithNote(text));
        }

        return label.Said;
    }
}
