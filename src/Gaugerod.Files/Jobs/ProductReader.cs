using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads a tile as it is bought.</summary>
internal static class ProductReader
{
    private const int MostTiles = 100_000;

    // More open boxes than this stand in the way, and spread a shade no further.
    private const int MostOpen = 12;

    public static (string? Name, Product? Product) Read(Entry entry, Values values, Uniques names)
    {
        if (Fields.Open(entry, Forms.Product, values) is not { } fields) return (null, null);
        var name = names.Take(fields["name"], values);
        var (width, height) = (fields.Length("width", LengthRange.TileSide), fields.Length("height", LengthRange.TileSide));

        // What a continuous wet-saw blade usually takes; from memory, to be found in a blade's own data.
        var kerf = values.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 16) : Length.FromSteps(5120);
        var snaps = Snaps(fields, values);
        var product = new Product(name ?? "", width ?? Length.Zero, height ?? Length.Zero, fields.Length("thickness", LengthRange.Layer, Length.Zero))
        {
            BondCoat = fields.Length("bondCoat", LengthRange.Layer, Length.Zero),
            PerBox = values.Whole(fields["perBox"], 1, MostTiles) ?? 1,
            Turning = fields.Word("turn", Words.Turns, Turning.Free),
            Grain = values.Word(fields["grain"], Words.Grains),
            Blend = Blend(fields, values),
            Class = values.Word(fields["class"], Words.Classes),
            Variation = fields.Length("variation", LengthRange.Tolerance),
            Warpage = fields.Length("warpage", LengthRange.Tolerance),
            Kerf = fields.Length("kerf", LengthRange.Kerf, snaps is null ? kerf : Length.Zero),
            Snaps = snaps,
            Breakage = Extra(fields, "breakage"),
            Spares = Extra(fields, "spares"),
            FlatPercent = values.Whole(fields["flatPercent"], 0, 100),
        };
        return (name, name is null || width is null || height is null ? null : product);
    }

    /// <summary>So many on top of what the plan takes; none where none are said.</summary>
    public static int Extra(Fields fields, string name) => fields.Values.Whole(fields[name], 0, MostTiles) ?? 0;

    /// <summary>The least strip of a tile that is snapped; null where it is sawn. 10 mm or 3/8 in where none is said: common practice, no source.</summary>
    private static Length? Snaps(Fields fields, Values values)
    {
        var isSnapped = fields.Word("cut", Words.Cutters, false);
        var least = fields.Length("leastStrip", LengthRange.Strip);
        if (!isSnapped && fields["leastStrip"] is { } strip) values.Log.AddSaid(strip, "a least strip of a tile that is sawn", "\"cut\": \"snap\" beside it, or no least strip");
        if (isSnapped && fields["kerf"] is { } blade) values.Log.AddSaid(blade, "what a blade takes of a tile that is snapped", "\"cut\": \"wet saw\", or no kerf");
        return isSnapped ? least ?? (values.Unit == LengthUnit.Inch ? Length.FromInches(0, 3, 8) : Length.FromMillimetres(10)) : null;
    }

    private static int? Blend(Fields fields, Values values)
    {
        if (values.Whole(fields["blend"], 2, MostOpen) is not { } open) return null;
        if (fields["perBox"] is null) values.Log.AddSaid(fields["blend"]!, "boxes to be taken in turn, and not how many tiles are in a box", "\"perBox\" beside it");
        return open;
    }
}
