using System.Text.Json;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Plans;

/// <summary>Writes what to buy by the pack.</summary>
internal static class SupplyWriter
{
    public static void Write(Utf8JsonWriter json, SupplyLine line)
    {
        json.WriteStartObject();
        json.WriteString("item", line.Supply.Name);
        json.WriteString("kind", Words.SupplyKinds.Say(line.Supply.Kind));
        json.WriteNumber("need", Litres(line.Litres));
        json.WriteString("unit", "l");
        json.WriteNumber("pack", Litres(line.Supply.Makes));
        json.WriteString("called", line.Supply.Pack);
        json.WriteNumber("packs", line.Packs);
        json.WriteNumber("over", Litres(line.Over));
        json.WriteNumber("loss", line.Supply.LossPercent);
        json.WriteList("uses", line.Uses, use => Write(json, use));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, SupplyUse use)
    {
        json.WriteStartObject();
        json.WriteString("run", use.Run);
        json.WriteNumber("need", Litres(use.Litres));
        json.WriteString("basis", use.How);
        json.WriteEndObject();
    }

    // To a millilitre: what any machine reckons alike.
    private static double Litres(double litres) => Math.Round(litres, 3);
}
