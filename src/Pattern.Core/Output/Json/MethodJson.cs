using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Output;

/// <summary>The drafting method and its options in a pattern file.</summary>
internal static class MethodJson
{
    private const string Skirt = "skirt block";

    internal static void Write(JsonWriter json, SkirtOptions options)
    {
        json.Begin('{').Name("name").Text(Skirt);
        json.Name("options").Begin('{');
        json.Name("shaping");
        Write(json, options.Table);
        json.Name("waistEase").Number(options.WaistEaseMm);
        json.Name("hipEase").Number(options.HipEaseMm);
        json.Name("length").Number(options.LengthMm);
        json.Name("levels").Begin('{').Name("yoke").Number(options.Levels.GivenYokeMm);
        json.Name("upperHip").Number(options.Levels.GivenUpperHipMm);
        json.Name("lowerHip").Number(options.Levels.GivenLowerHipMm);
        json.End('}').Name("sideLift").Number(options.SideLiftMm);
        json.Name("centreBackLift").Number(options.CentreBackLiftMm);
        json.Name("centreFrontDrop").Number(options.CentreFrontDropMm);
        json.Name("frontDarts");
        Write(json, options.FrontDarts);
        json.Name("backDarts");
        Write(json, options.BackDarts);
        json.Name("largestDart").Number(options.LargestDartMm);
        json.Name("smallestDart").Number(options.SmallestDartMm);
        json.Name("largestSideShaping").Number(options.LargestSideShapingMm);
        json.Name("fit").Begin('{').Name("sideHem").Number(options.Fit.SideHemMm);
        json.Name("centreBackHem").Number(options.Fit.CentreBackHemMm);
        json.Name("centreBackWaist").Number(options.Fit.CentreBackWaistMm);
        json.Name("centreBackBlend").Text(JsonWords.Blends.WordOf(options.Fit.CentreBackBlend));
        json.End('}').Name("waistline").Text(JsonWords.Waistlines.WordOf(options.Waistline));
        json.End('}').End('}');
    }

    /// <summary>The builder that says everything as the file does. Each option goes in by the door that a caller uses, so that ranges are checked there.</summary>
    internal static SkirtBlockBuilder Read(JsonValue value, BodyMeasurements body)
    {
        JsonObject method = value.Object("name", "options");
        if (method["name"].Text() != Skirt)
        {
            throw method["name"].Fault(DiagnosticCode.JsonValueWrong, method["name"].Described(), Skirt);
        }

        JsonObject options = method["options"].Object(
            "shaping", "waistEase", "hipEase", "length", "levels", "sideLift", "centreBackLift", "centreFrontDrop", "frontDarts", "backDarts",
            "largestDart", "smallestDart", "largestSideShaping", "fit", "waistline");
        var builder = new Saying<SkirtBlockBuilder>(SkirtBlock.For(body).ShapedBy(Table(options["shaping"])));
        builder.Say(options["waistEase"], (b, ease) => b.WithWaistEase(ease));
        builder.Say(options["hipEase"], (b, ease) => b.WithHipEase(ease));
        builder.Say(options["length"], (b, length) => b.WithLength(length));
        builder.SayUnlessNull(options["sideLift"], (b, lift) => b.WithSideLift(lift));
        builder.SayUnlessNull(options["centreBackLift"], (b, lift) => b.WithCentreBackLift(lift));
        builder.SayUnlessNull(options["centreFrontDrop"], (b, drop) => b.WithCentreFrontDrop(drop));
        builder.Say(options["largestDart"], (b, intake) => b.WithLargestDart(intake));
        builder.Say(options["smallestDart"], (b, intake) => b.WithSmallestDart(intake));
        builder.Say(options["largestSideShaping"], (b, shaping) => b.WithLargestSideShaping(shaping));
        return builder.Said
            .WithLevels(Levels(options["levels"]))
            .WithFrontDarts(Darts(options["frontDarts"]))
            .WithBackDarts(Darts(options["backDarts"]))
            .Fitted(Fit(options["fit"]))
            .WithWaistline(options["waistline"].Choice(JsonWords.Waistlines));
    }

    private static void Write(JsonWriter json, DartPlan plan)
    {
        json.Begin('{').Name("count").Number(plan.Count);
        json.Name("intake").Number(plan.IntakeMm);
        json.Name("length").Number(plan.LengthMm);
        json.Name("shortening").Number(plan.GivenShorteningMm);
        json.End('}');
    }

    // Null is the library's own law; the only other kind is a table of rows.
    private static void Write(JsonWriter json, ShapingTable table)
    {
        if (table is not TabulatedShaping rows)
        {
            json.Begin('{').Name("law").Text("proportional");
            json.Name("table").Null();
            json.End('}');
            return;
        }

        json.Begin('{').Name("law").Null();
        json.Name("table").Begin('{').Name("name").Text(rows.Name);
        json.Name("unit").Text(JsonWords.Units.WordOf(rows.Unit));
        json.Name("lookup").Text(JsonWords.Lookups.WordOf(rows.Lookup));
        json.Name("outside").Text(JsonWords.Outside.WordOf(rows.OutsideRule));
        json.Name("rows").RequireEntries(rows.Rows.Count);
        json.Begin('[');
        foreach (ShapingRow row in rows.Rows)
        {
            json.Begin('{').Name("difference").Number(row.DifferenceMm);
            json.Name("backWider").Number(row.BackWiderMm);
            json.Name("frontDart").Number(row.FrontDartMm);
            json.Name("backDart").Number(row.BackDartMm);
            json.Name("frontDrop").Number(row.FrontDropMm);
            json.End('}');
        }

        json.End(']').End('}').End('}');
    }

    private static ShapingTable Table(JsonValue value)
    {
        JsonObject shaping = value.Object("law", "table");
        JsonValue law = shaping["law"];
        if (shaping["table"].IsNull)
        {
            return law.Text() == "proportional" ? ShapingTable.Proportional : throw law.Fault(DiagnosticCode.JsonValueWrong, law.Described(), "proportional");
        }

        if (!law.IsNull)
        {
            throw law.Fault(DiagnosticCode.JsonValueWrong, law.Described(), "null where there is a table");
        }

        JsonObject said = shaping["table"].Object("name", "unit", "lookup", "outside", "rows");
        LengthUnit unit = said["unit"].Choice(JsonWords.Units);
        string name = said["name"].Text();
        TabulatedShaping table = said["name"].Make(() => ShapingTable.In(unit).Named(name))
            .ReadBy(said["lookup"].Choice(JsonWords.Lookups))
            .Outside(said["outside"].Choice(JsonWords.Outside));
        foreach (JsonValue line in said["rows"].List())
        {
            JsonObject row = line.Object("difference", "backWider", "frontDart", "backDart", "frontDrop");
            (Length difference, Length wider) = (row["difference"].Length(), row["backWider"].Length());
            (Length front, Length back, Length drop) = (row["frontDart"].Length(), row["backDart"].Length(), row["frontDrop"].Length());
            TabulatedShaping before = table;
            table = line.Make(() => before.Row(difference, wider, front, back, drop));
        }

        return table;
    }

    private static SkirtLevels Levels(JsonValue value)
    {
        JsonObject levels = value.Object("yoke", "upperHip", "lowerHip");
        var read = new Saying<SkirtLevels>(new SkirtLevels());
        read.SayUnlessNull(levels["yoke"], (l, depth) => l with { Yoke = depth });
        read.SayUnlessNull(levels["upperHip"], (l, depth) => l with { UpperHip = depth });
        read.SayUnlessNull(levels["lowerHip"], (l, depth) => l with { LowerHip = depth });
        return read.Said;
    }

    private static DartPlan Darts(JsonValue value)
    {
        JsonObject plan = value.Object("count", "intake", "length", "shortening");
        var read = new Saying<DartPlan>(plan["count"].IsNull ? new DartPlan() : new DartPlan { Count = plan["count"].Whole(0, DartPlan.MostDarts) });
        read.SayUnlessNull(plan["intake"], (p, intake) => p with { Intake = intake });
        read.SayUnlessNull(plan["length"], (p, length) => p with { Length = length });
        read.SayUnlessNull(plan["shortening"], (p, shortening) => p with { Shortening = shortening });
        return read.Said;
    }

    private static SkirtFit Fit(JsonValue value)
    {
        JsonObject fit = value.Object("sideHem", "centreBackHem", "centreBackWaist", "centreBackBlend");
        var read = new Saying<SkirtFit>(SkirtFit.Straight with { CentreBackBlend = fit["centreBackBlend"].Choice(JsonWords.Blends) });
        read.Say(fit["sideHem"], (f, width) => f with { SideHem = width });
        read.Say(fit["centreBackHem"], (f, width) => f with { CentreBackHem = width });
        read.Say(fit["centreBackWaist"], (f, width) => f with { CentreBackWaist = width });
        return read.Said;
    }
}
