using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>One seam of a plan in a pattern file.</summary>
internal static class SeamJson
{
    internal static void Write(JsonWriter json, Seam seam)
    {
        json.Begin('{').Name("name").Text(seam.Name);
        json.Name("stretches").RequireEntries(seam.StretchNames.Count);
        json.Begin('[');
        foreach (string stretch in seam.StretchNames)
        {
            json.Text(stretch);
        }

        json.End(']').Name("first");
        Write(json, seam.First, seam.FirstFrom, seam.FirstTo);
        json.Name("second");
        if (seam.IsToMirrorImage)
        {
            json.Null();
        }
        else
        {
            Write(json, seam.Second, seam.SecondFrom, seam.SecondTo);
        }

        json.Name("run").Text(JsonWords.Runs.WordOf(seam.Run));
        json.Name("ease").Number(seam.EaseMm);
        json.Name("easeSpan");
        if (seam.EaseSpan is { } span)
        {
            json.Begin('{').Name("on").Text(span.OnFirst ? "first" : "second");
            json.Name("from");
            Write(json, span.From);
            json.Name("to");
            Write(json, span.To);
            json.End('}');
        }
        else
        {
            json.Null();
        }

        json.End('}');
    }

    internal static Seam Read(JsonValue value)
    {
        JsonObject said = value.Object("name", "stretches", "first", "second", "run", "ease", "easeSpan");
        (EdgeOf First, SeamMark From, SeamMark To) first = Edge(said["first"]);
        bool isToMirrorImage = said["second"].IsNull;
        (EdgeOf Second, SeamMark From, SeamMark To) second = isToMirrorImage ? first : Edge(said["second"]);
        string name = said["name"].Text();
        string[] stretches = said["stretches"].List(stretch => stretch.Name(text => Guard.Name(text, "stretch")));
        Seam plain = said["second"].Make(() => isToMirrorImage ? Seam.ToMirrorImage(first.First) : Seam.Between(first.First, second.Second));
        var seam = new Saying<Seam>(said["name"].Make(() => plain.Named(name, stretches))
            .OverFirst(first.From, first.To)
            .OverSecond(second.From, second.To)
            .Running(said["run"].Choice(JsonWords.Runs)));
        seam.Say(said["ease"], (s, ease) => s.WithEase(ease));
        if (said["easeSpan"].IsNull)
        {
            return seam.Said;
        }

        JsonObject span = said["easeSpan"].Object("on", "from", "to");
        string on = span["on"].Text();
        return on is "first" or "second"
            ? seam.Said.WithEaseBetween(seam.Said.Ease, Mark(span["from"]), Mark(span["to"]), on == "first")
            : throw span["on"].Fault(DiagnosticCode.JsonValueWrong, span["on"].Described(), "first, second");
    }

    private static void Write(JsonWriter json, EdgeOf edge, SeamMark from, SeamMark to)
    {
        json.Begin('{').Name("panel").Text(edge.PanelName.Text);
        json.Name("edge").Text(edge.EdgeName.Text);
        json.Name("from");
        Write(json, from);
        json.Name("to");
        Write(json, to);
        json.End('}');
    }

    private static void Write(JsonWriter json, SeamMark mark)
    {
        json.Begin('{').Name("mark").Text(JsonWords.Marks.WordOf(mark.Kind));
        json.Name("value").Number(mark.Value);
        json.End('}');
    }

    private static (EdgeOf Edge, SeamMark From, SeamMark To) Edge(JsonValue value)
    {
        JsonObject said = value.Object("panel", "edge", "from", "to");
        return (EdgeOf.Panel(said["panel"].Name(PanelName.Of), said["edge"].Name(EdgeName.Of)), Mark(said["from"]), Mark(said["to"]));
    }

    private static SeamMark Mark(JsonValue value)
    {
        JsonObject said = value.Object("mark", "value");
        SeamMarkKind kind = said["mark"].Choice(JsonWords.Marks);
        switch (kind)
        {
            case SeamMarkKind.Notch:
                int number = said["value"].Whole(1, SeamMark.MostNotches);
                return SeamMark.Notch(number);
            case SeamMarkKind.Distance:
                UnitsNet.Length distance = said["value"].Length();
                return said["value"].Make(() => SeamMark.At(distance));
            default:
                return said["value"].IsNull
                    ? kind == SeamMarkKind.End ? SeamMark.End : SeamMark.Start
                    : throw said["value"].Fault(DiagnosticCode.JsonValueWrong, said["value"].Described(), "null at an end of the edge");
        }
    }
}
