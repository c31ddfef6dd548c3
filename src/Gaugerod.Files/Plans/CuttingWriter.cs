using System.Text.Json;
using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;

namespace Gaugerod.Files.Plans;

/// <summary>Writes which tile every piece comes from, and why no fewer would do.</summary>
internal static class CuttingWriter
{
    public static void Write(Utf8JsonWriter json, Sequence<ProductCutting> cutting, Sequence<BoxPlan> boxes)
    {
        json.WriteStartObject("cutting");
        json.WriteList("products", cutting, product =>
            WriteProduct(json, product, boxes.FirstOrDefault(plan => string.Equals(plan.Product, product.Product, StringComparison.Ordinal))));
        json.WriteEndObject();
    }

    private static void WriteProduct(Utf8JsonWriter json, ProductCutting cutting, BoxPlan? boxes)
    {
        json.WriteStartObject();
        json.WriteString("product", cutting.Product);
        json.WriteNumber("bought", cutting.Bought);
        json.WriteNumber("lowerBound", cutting.LowerBound);
        json.WriteBoolean("proved", cutting.Proved);
        json.WriteList("proofs", cutting.Proofs, proof => WriteProof(json, proof));
        json.WriteList("settings", cutting.Settings, setting =>
        {
            json.WriteStartObject();
            json.WriteLength("fence", setting.Fence);
            json.WriteString("along", setting.Across ? "width" : "height");
            json.WriteNames("pieces", setting.Pieces);
            json.WriteEndObject();
        });
        json.WriteNames("byHand", cutting.ByHand);
        if (boxes is not null) WriteBlend(json, boxes);
        json.WriteList("tiles", cutting.Tiles, tile => WriteTile(json, tile));
        json.WriteEndObject();
    }

    private static void WriteProof(Utf8JsonWriter json, PairingProof proof)
    {
        json.WriteStartObject();
        json.WriteString("pool", proof.Pool);
        json.WriteNumber("pieces", proof.Pieces);
        json.WriteNumber("removed", proof.Removed);
        json.WriteNumber("oddGroups", proof.OddGroups);
        json.WriteNumber("tiles", proof.Tiles);
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
        json.WriteEndObject();
    }
}
