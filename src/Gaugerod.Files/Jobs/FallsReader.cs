using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads where a face bends, and the bed that makes it fall.</summary>
internal static class FallsReader
{
    private const int MostLines = 12, MostDrains = 12;

    // What says nothing without a bed.
    private static readonly string[] s_ofBed = ["drains", "toward", "fall", "perimeter", "curb", "threshold", "density", "bag"];

    /// <summary>The falls, null for none, and whether what stands there could be read.</summary>
    public static (Falls? Falls, bool Understood) Read(Entry? entry, Values values, IReadOnlyList<Hole?> holes)
    {
        if (entry is null) return (null, true);
        if (Fields.Open(entry, Forms.Falls, values) is not { } fields) return (null, false);
        var drain = fields["to"] is { } to ? KnownNames.Hole(holes, to, values) : null;
        var lines = fields.Items("lines").Select(item => Line(item, values)).ToList();
        if (lines.Count > MostLines) values.Log.AddSaid(fields["lines"]!, $"{Values.Number(lines.Count)} folds", $"at most {Values.Number(MostLines)} folds");
        var nothing = fields["to"] is null && lines.Count == 0 && fields["drains"] is null && fields["toward"] is null;
        if (nothing) values.Log.AddSaid(entry, "falls with neither \"to\" nor \"lines\", \"drains\" or \"toward\"", "one of them", "\"to\": the drain's name");
        var (bed, understood) = nothing ? (null, false) : Bed(fields, drain is not null || fields["to"] is not null, holes);
        return !understood || (fields["to"] is not null && drain is null) || lines.Contains(null) || lines.Count > MostLines
            ? (null, false)
            : (new(drain, lines.OfType<FoldLine>().ToSequence()) { Bed = bed }, true);
    }

    private static (BedRequest? Bed, bool Understood) Bed(Fields fields, bool hasDrain, IReadOnlyList<Hole?> holes)
    {
        var values = fields.Values;
        if (fields["least"] is null)
        {
            if (s_ofBed.FirstOrDefault(name => fields[name] is not null) is not { } lone) return (null, true);
            values.Log.AddSaid(fields.Entry, $"\"{lone}\" without \"least\"", "how thick the bed is at the drain", values.Example("\"least\": \"1 1/2\", or 0 where it feathers out"));
            return (null, false);
        }

        if (hasDrain && fields["drains"] is { } both)
        {
            values.Log.AddSaid(both, "drains beside the one in \"to\"", "\"to\", a drain that folds are cut to, or \"drains\", without such folds", "one of the two");
            return (null, false);
        }

        if (fields["toward"] is { } toward && (hasDrain || fields["drains"] is not null))
        {
            values.Log.AddSaid(toward, "an edge to fall to beside drains", "\"toward\", the edge that water runs off over, or drains", "one of the two");
            return (null, false);
        }

        if (!hasDrain && fields["drains"] is null && fields["toward"] is null)
        {
            values.Log.AddSaid(fields.Entry, "a bed without a drain", "\"to\", \"drains\" or \"toward\"", "\"to\": the drain's name");
            return (null, false);
        }

        var items = fields.Items("drains", atLeast: 1);
        if (items.Count > MostDrains) values.Log.AddSaid(fields["drains"]!, $"{Values.Number(items.Count)} drains", $"at most {Values.Number(MostDrains)}");
        var drains = fields["toward"] is null ? items.Select(item => Drain(item, values, holes)).ToList() : [fields.Name("toward") is { } edge ? new(null, null) { Edge = edge } : null];
        var least = fields.Length("least", LengthRange.Bed);
        var fall = fields["fall"] is { } said ? FallText.Read(said, values) : Fall.Usual;
        // Beside a channel a level edge is a rare wish.
        var usual = drains.Exists(drain => drain is { Hole: null }) ? Perimeter.Constant : Perimeter.Level;
        var (perimeter, curb, threshold) = (fields.Word("perimeter", Words.Perimeters, usual), fields.Length("curb", LengthRange.Cut), fields.Length("threshold", LengthRange.Cut));
        var (density, bag) = (AmountText.Density(fields["density"], values), Bag(fields["bag"], values));
        var lost = (fields["curb"] is not null && curb is null) || (fields["threshold"] is not null && threshold is null)
            || (fields["density"] is not null && density is null) || (fields["bag"] is not null && bag is null) || (fields["drains"] is not null && items.Count is 0 or > MostDrains);
        return lost || drains.Contains(null) || least is not { } thick || fall is not { } falls
            ? (null, false)
            : (new(thick) { Fall = falls, Perimeter = perimeter, Drains = drains.OfType<DrainAt>().ToSequence(), Curb = curb, Threshold = threshold, Density = density, Bag = bag }, true);
    }

    private static DrainAt? Drain(Entry item, Values values, IReadOnlyList<Hole?> holes)
    {
        if (item is Entry.List) return Line(item, values) is { } line ? new(null, line) : null;
        return KnownNames.Hole(holes, item, values) is { } name ? new(name, null) : null;
    }

    private static BagOfMix? Bag(Entry? entry, Values values)
    {
        if (Fields.Open(entry, MixForms.Bag, values) is not { } fields) return null;
        var (name, litres, sand) = (fields["name"] is null ? null : fields.Name(), AmountText.Yield(fields["yield"], values), Sand(fields["sand"], values));
        return litres is not { } made || (fields["name"] is not null && name is null) || (fields["sand"] is not null && sand is null) ? null : new(name, made) { Sand = sand };
    }

    private static MoreSand? Sand(Entry? entry, Values values)
    {
        if (Fields.Open(entry, MixForms.Sand, values) is not { } fields) return null;
        var (weight, has, wanted) = (AmountText.Weight(fields["weight"], values), values.Whole(fields["from"], 1, 10), values.Whole(fields["to"], 2, 12));
        if (weight is not { } kilograms || has is not { } from || wanted is not { } to) return null;
        if (to > from) return new(kilograms, from, to);
        values.Log.AddSaid(fields["to"]!, $"{Values.Number(to)} parts of sand, of a bag that has {Values.Number(from)}", "more sand than the bag has; cement is not taken out of it", Values.Number(from + 1));
        return null;
    }

    private static FoldLine? Line(Entry entry, Values values)
    {
        if (entry is not Entry.List { Items: [Entry.List { Items: [var x, var y] }, Entry.List { Items: [var x2, var y2] }] })
        {
            values.Log.Add(entry, "a line [[x, y], [x, y]]");
            return null;
        }

        var (right, up) = (values.Length(x, LengthRange.Position), values.Length(y, LengthRange.Position));
        var (right2, up2) = (values.Length(x2, LengthRange.Position), values.Length(y2, LengthRange.Position));
        if (right is not { } r || up is not { } u || right2 is not { } r2 || up2 is not { } u2) return null;
        if (r != r2 || u != u2) return new(new Point(r, u), new Point(r2, u2));
        values.Log.AddSaid(entry, "a line from a place to itself", "two places on the fold");
        return null;
    }
}
