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
        json.WriteString("kind", line.Supply.Kind == SupplyKind.Mix ? "mix" : Words.SupplyKinds.Say(line.Supply.Kind));
        json.WriteNumber("need", Round(line.Amount));
        json.WriteString("unit", Unit(line.Supply.Measure));
        json.WriteNumber("pack", Round(line.Supply.Makes));
        json.WriteString("called", line.Supply.Pack);
        json.WriteNumber("packs", line.Packs);
        json.WriteNumber("over", Round(line.Over));
        json.WriteNumber("loss", line.Supply.LossPercent);
        json.WriteList("uses", line.Uses, use => Write(json, use));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, SupplyUse use)
    {
        json.WriteStartObject();
        json.WriteString("where", use.Where);
        json.WriteNumber("need", Round(use.Amount));
        json.WriteString("basis", use.How);
        json.WriteEndObject();
    }

    private static string Unit(SupplyMeasure measure) => measure switch
    {
        SupplyMeasure.Length => "m",
        SupplyMeasure.Area => "m2",
        SupplyMeasure.Count => "pieces",
        _ => "l",
    };

    // To a millilitre: what any machine reckons alike.
    private static double Round(double amount) => Math.Round(amount, 3);
}
