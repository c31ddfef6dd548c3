using System.Text.Json;
using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Plans;

/// <summary>Writes what goes under the tile: beds that fall, and how flat faces are.</summary>
internal static class PrepWriter
{
    public static void Write(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartObject("prep");
        if (plan.Beds.Count > 0) json.WriteList("beds", plan.Beds, bed => Write(json, bed));
        if (plan.Flat.Count > 0) json.WriteList("flatness", plan.Flat, flat => Write(json, flat));
        if (plan.Boards.Faces.Count > 0) BoardWriter.Write(json, plan.Boards);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Bed bed)
    {
        json.WriteStartObject();
        json.WriteString("face", bed.Face);
        json.WriteString("perimeter", Words.Perimeters.Say(bed.Request.Perimeter));
        json.WriteList("drains", bed.Drains, drain => Write(json, drain));
        json.WriteNumber("area", Math.Round(bed.Area));
        json.WriteNumber("litres", Math.Round(bed.Volume / 1e6, 3));
        json.WriteNumber("kilograms", Math.Round(bed.Kilograms, 1));
        if (bed.Bags is { } bags) json.WriteNumber("bags", bags);
        else json.WriteNull("bags");
        if (bed.Sand is { } sand) json.WriteNumber("sand", Math.Round(sand, 1));
        json.WriteLength("least", bed.Least);
        json.WriteLength("greatest", bed.Greatest);
        json.WriteLength("farthest", bed.Farthest);
        json.WriteNumber("leastFall", Math.Round(bed.LeastFall, 5));
        json.WriteNumber("greatestFall", Math.Round(bed.GreatestFall, 5));
        json.WriteString("steepestFrom", bed.SteepestFrom);
        json.WriteList("ways", bed.Ways, way => Write(json, way));
        json.WriteList("stakes", bed.Stakes, stake => Write(json, stake));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, FoldLine drain)
    {
        json.WriteStartObject();
        json.WritePoint("from", drain.From);
        json.WritePoint("to", drain.To);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, BedWay way)
    {
        json.WriteStartObject();
        json.WriteString("to", way.To);
        json.WritePoint("from", way.From);
        json.WritePoint("at", way.At);
        json.WriteNumber("fall", Math.Round(way.Fall, 5));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Stake stake)
    {
        json.WriteStartObject();
        json.WriteString("on", stake.On);
        json.WriteLength("along", stake.Along);
        json.WritePoint("at", stake.Place);
        json.WriteLength("over", stake.Over);
        json.WriteLength("thickness", stake.Thickness);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, FlatFace flat)
    {
        json.WriteStartObject();
        json.WriteString("face", flat.Face);
        json.WriteNumber("slopeRight", Math.Round(flat.Slope.Right, 6));
        json.WriteNumber("slopeUp", Math.Round(flat.Slope.Up, 6));
        json.WriteList("readings", flat.Spots, spot => Write(json, spot));
        json.WriteList("straightedges", flat.Gaps, gap => Write(json, gap));
        Write(json, "toLimit", flat.ToLimit);
        Write(json, "toHighs", flat.ToHighs);
        Write(json, "toStraightedges", flat.ToStraightedges);
        json.WriteLengths("fills", flat.Fills);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, FlatSpot spot)
    {
        json.WriteStartObject();
        json.WritePoint("at", spot.At);
        json.WriteLength("out", spot.Out);
        json.WriteLength("off", spot.Off);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, WorstGap gap)
    {
        json.WriteStartObject();
        json.WriteLength("over", gap.Over);
        json.WriteLength("hollow", gap.Hollow);
        json.WriteLength("hump", gap.Hump);
        json.WritePoint("from", gap.From);
        json.WritePoint("to", gap.To);
        json.WritePoint("at", gap.At);
        json.WriteLength("limit", gap.Limit?.Most);
        json.WriteBoolean("within", gap.IsWithin);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, Levelling? level)
    {
        if (level is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteNumber("area", Math.Round(level.Area));
        json.WriteNumber("litres", Math.Round(level.Volume / 1e6, 3));
        json.WriteLength("deepest", level.Deepest);
        json.WriteLength("grind", level.Grind);
        json.WriteEndObject();
    }
}
