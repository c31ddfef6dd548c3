using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads which beds the edges of a face stand on. Whether there are such beds is known when all faces are read.</summary>
internal static class BedsReader
{
    private const int Most = 12;

    /// <summary>The beds; null where one of them could not be read.</summary>
    public static Sequence<OnBed>? Read(Fields face)
    {
        var (values, items) = (face.Values, face.Items("beds"));
        if (items.Count > Most) values.Log.AddSaid(face["beds"]!, $"{Values.Number(items.Count)} beds", $"at most {Values.Number(Most)}");
        var beds = items.Select(item => One(item, values)).ToList();
        return beds.Contains(null) || items.Count > Most || (face["beds"] is not null and not Entry.List) ? null : beds.OfType<OnBed>().ToSequence();
    }

    private static OnBed? One(Entry item, Values values)
    {
        if (Fields.Open(item, Forms.OnBed, values) is not { } fields) return null;
        var (side, floor, edge) = (fields["side"] is null ? "foot" : fields.Name("side"), fields.Name("floor"), fields.Name("edge"));
        var (from, lowest) = (fields.Length("from", LengthRange.Position), fields.Length("lowest", LengthRange.Position));
        var lost = (fields["from"] is not null && from is null) || (fields["lowest"] is not null && lowest is null);
        return lost || side is null || floor is null || edge is null ? null : new(side, floor, edge) { From = from, Lowest = lowest };
    }
}
