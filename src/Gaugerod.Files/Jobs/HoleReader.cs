using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads a hole: by its place on the face, or by the spot of the survey that it stands at.</summary>
internal static class HoleReader
{
    public static Hole? Read(Entry entry, Values values, Uniques names, HeightBase heights, FaceShape? shape)
    {
        if (Fields.Open(entry, Forms.Hole, values) is not { } fields) return null;
        var name = names.Take(fields["name"], values);
        var (spot, understood) = Spot(fields, shape);
        var (x, y) = spot is null && understood ? Place(fields, heights) : (null, null);
        var diameter = fields.Length("diameter", LengthRange.Bore);
        var clearance = fields.Length("clearance", LengthRange.Layer, Length.Zero);
        var edgeClear = fields.Length("edgeClear", LengthRange.Layer);
        return name is null || !understood || (spot is null && (x is null || y is null)) || diameter is not { } across
            ? null
            : new Hole(name, spot is null ? new Point(x!.Value, y!.Value) : default, across + (clearance * 2)) { Spot = spot, Clearance = clearance, EdgeClear = edgeClear };
    }

    private static (Length? X, Length? Y) Place(Fields fields, HeightBase heights)
    {
        foreach (var name in new[] { "x", "y" })
        {
            if (fields[name] is null) fields.Missing(name, "a length such as \"40 1/2\"");
        }

        var (x, y) = (fields.Length("x", LengthRange.Position), fields.Length("y", LengthRange.Position));
        return heights.Under(fields) is { } line ? (x, y + line) : (null, null);
    }

    private static (string? Spot, bool Understood) Spot(Fields fields, FaceShape? shape)
    {
        if (fields["spot"] is not { } entry) return (null, true);
        var values = fields.Values;
        if (shape is not null and not FaceShape.Surveyed)
        {
            values.Log.AddSaid(entry, "a spot on a face that was not surveyed", "\"x\" and \"y\"", "\"x\" and \"y\"");
            return (null, false);
        }

        if (fields["x"] is not null || fields["y"] is not null)
        {
            values.Log.AddSaid(entry, "a spot beside \"x\" or \"y\"", "one of them: what the survey settles, or a place measured on the face", "\"spot\" alone");
            return (null, false);
        }

        var name = shape is FaceShape.Surveyed { Survey: var survey } ? KnownNames.Known(entry, values, "a spot of this face's survey", survey.Spots) : values.Name(entry);
        return (name, name is not null);
    }
}
