using Gaugerod.Engine;
using Gaugerod.Engine.Cutting;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads what is asked of the cutting.</summary>
internal static class CuttingReader
{
    public static CuttingAims Read(Entry? entry, Values values)
    {
        var usual = CuttingAims.Usual with { Keep = values.Unit == LengthUnit.Inch ? Length.FromInches(2) : CuttingAims.Usual.Keep };
        if (entry is null || Fields.Open(entry, Forms.Cutting, values) is not { } fields) return usual;
        return new(Order(fields, values), fields.Length("fence", LengthRange.Tolerance, Length.Zero), fields.Length("keep", LengthRange.Cut, usual.Keep));
    }

    // What is left out follows in the usual order.
    private static Sequence<CuttingAim> Order(Fields fields, Values values)
    {
        var (order, again) = (new List<CuttingAim>(), new List<(Entry Item, CuttingAim Aim)>());
        foreach (var item in fields.Items("order"))
        {
            if (values.Word(item, Words.CuttingAims) is not { } aim) continue;
            if (order.Contains(aim)) again.Add((item, aim));
            else order.Add(aim);
        }

        foreach (var (item, aim) in again)
        {
            var once = new Mend(fields["order"]!.Path, $"[{string.Join(", ", order.Select(one => Values.Quoted(Words.CuttingAims.Say(one))))}]");
            values.Log.AddSaid(item, $"\"{Words.CuttingAims.Say(aim)}\" a second time", "each word of the order once", $"leave it out: {once.Value}", [once]);
        }

        return [.. order, .. CuttingAims.Usual.Order.Except(order)];
    }
}
