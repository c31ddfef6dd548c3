using System.Text.Json;
using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Plans;

/// <summary>Writes which tile every piece comes from, and why no fewer would do.</summary>
internal static class CuttingWriter
{
    public static void Write(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartObject("cutting");
        json.WriteList("products", plan.Cutting, product =>
            WriteProduct(json, plan.Job, product, plan.Boxes.FirstOrDefault(boxes => string.Equals(boxes.Product, product.Product, StringComparison.Ordinal))));
        json.WriteEndObject();
    }

    private static void WriteProduct(Utf8JsonWriter json, Job job, ProductCutting all, BoxPlan? boxes)
    {
        var (cutting, later) = CutOrder.Of(job, all);
        json.WriteStartObject();
        json.WriteString("product", cutting.Product);
        json.WriteNumber("bought", cutting.Bought);
        json.WriteNumber("lowerBound", cutting.LowerBound);
        json.WriteBoolean("proved", cutting.Proved);
        json.WriteNumber("alone", cutting.Alone);
        json.WriteList("proofs", cutting.Proofs, proof => WriteProof(json, proof));
        json.WriteList("weighings", cutting.Weighings, proof => WriteWeighing(json, proof));
        if (cutting.Fewest is { } fewest) WriteCost(json, "fewest", fewest);
        if (cutting.Simple is { } simple) WriteCost(json, "simple", simple);
        WriteOrder(json, cutting.Settings, cutting.ByHand);
        if (later.Count > 0)
        {
            json.WriteList("later", later, waits =>
            {
                json.WriteStartObject();
                json.WriteString("for", waits.For);
                WriteOrder(json, waits.Settings, waits.ByHand);
                json.WriteEndObject();
            });
        }

        if (boxes is not null) WriteBlend(json, boxes);
        json.WriteList("tiles", cutting.Tiles, tile => WriteTile(json, tile));
        json.WriteEndObject();
    }

    private static void WriteOrder(Utf8JsonWriter json, Sequence<SawSetting> settings, Sequence<string> byHand)
    {
        json.WriteList("settings", settings, setting =>
        {
            json.WriteStartObject();
            json.WriteLength("fence", setting.Fence);
            json.WriteString("along", setting.Across ? "width" : "height");
            json.WriteNames("pieces", setting.Pieces);
            if (setting.Parts.Count > 0) json.WriteList("parts", setting.Parts, json.WriteNumberValue);
            json.WriteEndObject();
        });
        json.WriteNames("byHand", byHand);
    }

    private static void WriteProof(Utf8JsonWriter json, PairingProof proof)
    {
        json.WriteStartObject();
        json.WriteString("pool", proof.Pool);
        json.WriteNumber("pieces", proof.Pieces);
        json.WriteNumber("removed", proof.Removed);
        json.WriteNumber("oddGroups", proof.OddGroups);
        json.WriteNumber("tiles", proof.Tiles);
        json.WriteString("reckoned", proof.AtTheMiddle ? "at the middle" : "at the longer end");
        json.WriteEndObject();
    }

    private static void WriteWeighing(Utf8JsonWriter json, WeighingProof proof)
    {
        json.WriteStartObject();
        json.WriteNumber("heaviest", proof.Heaviest);
        json.WriteNumber("tiles", proof.Tiles);
        json.WriteNumber("tried", proof.Tried);
        json.WriteList("kinds", proof.Kinds, kind =>
        {
            json.WriteStartObject();
            json.WriteNumber("weight", kind.Weight);
            json.WriteNames("pieces", kind.Pieces);
            json.WriteEndObject();
        });
        json.WriteEndObject();
    }

    private static void WriteCost(Utf8JsonWriter json, string name, CuttingCost cost)
    {
        json.WriteStartObject(name);
        json.WriteNumber("tiles", cost.Tiles);
        json.WriteNumber("settings", cost.Settings);
        json.WriteNumber("laidBy", cost.LaidBy);
        json.WriteNumber("cuts", cost.Cuts);
        json.WriteNumber("left", cost.Left);
        json.WriteEndObject();
    }

    private static void WriteBlend(Utf8JsonWriter json, BoxPlan boxes)
    {
        json.WriteStartObject("blend");
        json.WriteNumber("open", boxes.Open);
        json.WriteNumber("boxes", boxes.Boxes);
        json.WriteNumber("perBox", boxes.PerBox);
        json.WriteNumber("joints", boxes.Joints);
        json.WriteNumber("alike", boxes.Alike);
        json.WriteEndObject();
    }

    private static void WriteTile(Utf8JsonWriter json, CutTile tile)
    {
        json.WriteStartObject();
        json.WriteNumber("number", tile.Number);
        if (tile.Box is { } box) json.WriteNumber("box", box);
        json.WriteList("pieces", tile.Pieces, piece =>
        {
            json.WriteStartObject();
            json.WriteString("id", piece.Id);
            json.WriteRing("at", piece.At);
            json.WriteNumber("quarters", piece.Turned);
            json.WriteEndObject();
        });
        if (tile.Nests) json.WriteBoolean("nests", true);
        if (tile.Cuts.Count > 0) json.WriteList("cuts", tile.Cuts, cut => WriteCut(json, cut));
        if (tile.Left.Count > 0) json.WriteRings("left", tile.Left.Select(Ring.Of).ToSequence());
        json.WriteEndObject();
    }

    private static void WriteCut(Utf8JsonWriter json, SawCut cut)
    {
        json.WriteStartObject();
        json.WriteString("along", cut.Upright ? "width" : "height");
        json.WriteLength("at", cut.At);
        json.WriteLength("fence", cut.Fence);
        json.WriteString("against", (cut.Upright, cut.FromFar) switch { (true, false) => "left", (true, true) => "right", (false, false) => "bottom", _ => "top" });
        json.WriteRing("over", Ring.Of(cut.Over));
        json.WriteEndObject();
    }
}
