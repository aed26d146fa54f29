using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>A block in a pattern file: points and lines as drafted and as trued, panels, seams.</summary>
/// <remarks>Nothing is drafted anew when it is read. What hangs on the method alone is not kept: steps, checks other than the seams, alternatives, what truing changed.</remarks>
internal static class BlockJson
{
    internal static void Write(JsonWriter json, Block block)
    {
        BlockLines drafted = block.Drafted;
        BlockLines trued = block.Trued;
        json.Name("designs").RequireEntries(block.Designs.Count);
        json.Begin('[');
        foreach (DesignDescription design in block.Designs)
        {
            DesignJson.Write(json, design);
        }

        json.End(']').Name("landmarks").RequireEntries(drafted.Landmarks.Count);
        json.Begin('[');
        for (int i = 0; i < drafted.Landmarks.Count; i++)
        {
            Landmark landmark = drafted.Landmarks[i];
            json.Begin('{').Name("name").Text(landmark.Name.Text);
            json.Name("kind").Text(JsonWords.LandmarkKinds.WordOf(landmark.Kind));
            json.Name("drafted").Point(landmark.Position);
            json.Name("trued").Point(trued.Landmarks[i].Position);
            json.End('}');
        }

        json.End(']').Name("lines").RequireEntries(drafted.Lines.Count);
        json.Begin('[');
        int next = 0;
        foreach (BlockLine line in drafted.Lines)
        {
            json.Begin('{').Name("name").Text(line.Name.Text);
            json.Name("role").Text(JsonWords.LineRoles.WordOf(line.Role));
            json.Name("closed").Flag(line.Path.IsClosed);
            json.Name("drafted");
            PathJson.Write(json, line.Path);
            json.Name("trued");
            if (line.Role == ConstructionRole.HandDrawn)
            {
                json.Null();
            }
            else
            {
                PathJson.Write(json, trued.Lines[next++].Path);
            }

            json.End('}');
        }

        json.End(']').Name("panels").RequireEntries(block.Panels.Count);
        json.Begin('[');
        foreach (Panel panel in block.Panels)
        {
            PanelJson.Write(json, panel);
        }

        json.End(']').Name("times").Begin('[');
        foreach (Panel panel in block.Panels)
        {
            json.Whole(block.TimesOf(panel.Name));
        }

        json.End(']').Name("seams").RequireEntries(block.Seams.Seams.Count);
        json.Begin('[');
        foreach (Seam seam in block.Seams.Seams)
        {
            SeamJson.Write(json, seam);
        }

        json.End(']');
    }

    internal static Block Read(BodyMeasurements body, MethodCatalogue catalogue, JsonObject said)
    {
        ReadMethod method = MethodJson.Read(said["method"], catalogue);
        DesignDescription[] designs = said["designs"].List(entry => DesignJson.Read(entry, catalogue, body));
        JsonObject[] marks = said["landmarks"].List(entry => entry.Object("name", "kind", "drafted", "trued"));
        JsonObject[] lines = said["lines"].List(entry => entry.Object("name", "role", "closed", "drafted", "trued"));
        var names = new HashSet<LandmarkName>();
        var record = new BlockRecord(body)
        {
            Method = method.Method,
            Values = method.Values,
            Description = method.Description,
            Landmarks = [.. marks.Select(mark => new Landmark(mark["name"].NameOnce(LandmarkName.Of, names), PathJson.Point(mark["drafted"]), mark["kind"].Choice(JsonWords.LandmarkKinds)))],
            ReadLines = [.. lines.Select(Line)],
        };
        for (int i = 0; i < marks.Length; i++)
        {
            Point2D trued = PathJson.Point(marks[i]["trued"]);
            if (trued != record.Landmarks[i].Position)
            {
                record.Moved.Add((record.Landmarks[i].Name, trued));
            }
        }

        var panelNames = new HashSet<PanelName>();
        Panel[] panels = said["panels"].List(
            entry =>
            {
                Panel panel = PanelJson.Read(entry);
                return panelNames.Add(panel.Name) ? panel : throw entry.Fault(DiagnosticCode.JsonSaidTwice, "panel " + panel.Name + " again", "once");
            },
            1);
        record.Times = said["times"].List(entry => entry.Whole(1, 99), panels.Length, panels.Length);
        record.Designs = designs;
        SeamPlan plan = SeamPlan.Of(said["seams"].List(SeamJson.Read));
        record.Seams = plan;
        record.Remarks.AddRange(method.Remarks);
        record.Promises.Add(new BlockPromise(BlockRecord.SeamsPromise, list => plan.Check(list, list.PanelsRaw)));
        Advice notRun = NotChecked(method, designs);
        record.Promises.Add(new BlockPromise(string.Empty, list => list.Advise(notRun, "checks of the method", "block", 0, FindingRelation.AtLeast, 1)));
        var block = new Block(record, panels);
        RequireTrued(block.Trued, marks, lines);
        return block;
    }

    private static BlockLine Line(JsonObject said)
    {
        ConstructionRole role = said["role"].Choice(JsonWords.LineRoles);
        return new BlockLine(said["name"].Name(text => LineName.Of(text, role)), PathJson.Read(said["drafted"], said["closed"].Flag()));
    }

    // A landmark that a panel carries stands where it has it, and a straight guide goes with its landmarks: a file that says otherwise contradicts itself.
    private static void RequireTrued(BlockLines trued, JsonObject[] marks, JsonObject[] lines)
    {
        for (int i = 0; i < marks.Length; i++)
        {
            Point2D stands = trued.Landmarks[i].Position;
            if (PathJson.Point(marks[i]["trued"]) != stands)
            {
                throw marks[i]["trued"].Fault(DiagnosticCode.JsonTruedDiffers, marks[i]["trued"].Described(), stands.ToString());
            }
        }

        int next = 0;
        foreach (JsonObject line in lines)
        {
            JsonValue said = line["trued"];
            bool isHandDrawn = line["role"].Choice(JsonWords.LineRoles) == ConstructionRole.HandDrawn;
            if (isHandDrawn ? !said.IsNull : said.IsNull || !PathJson.Read(said).SegmentsRaw.SequenceEqual(trued.Lines[next].Path.SegmentsRaw))
            {
                throw said.Fault(DiagnosticCode.JsonTruedDiffers, said.Described(), isHandDrawn ? "null, since a line drawn by hand becomes an edge" : "the line between its landmarks as trued");
            }

            next += isHandDrawn ? 0 : 1;
        }
    }

    private static Advice NotChecked(ReadMethod method, DesignDescription[] designs)
    {
        string[] unknown = [.. designs.Where(design => design.Choice is null).Select(design => design.ToString())];
        if (method.Method is null)
        {
            string other = method.OtherVersion is { } known ? ", only its version " + known : string.Empty;
            return NotKnown(method.Description + " is not known here" + other);
        }

        return unknown.Length > 0
            ? NotKnown("the design " + string.Join(" and ", unknown) + " is not known here")
            : Advice.Of("The checks of the method were not run: the block was read from a file.", "Draft it again to run them.");
    }

    private static Advice NotKnown(string what)
        => Advice.Of($"The checks of the method were not run: {what}.", "Read the file with a catalogue that knows it, and draft it again.");
}
