using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads where a face bends.</summary>
internal static class FallsReader
{
    private const int MostLines = 12;

    /// <summary>The falls, null for none, and whether what stands there could be read.</summary>
    public static (Falls? Falls, bool Understood) Read(Entry? entry, Values values, IReadOnlyList<Hole?> holes)
    {
        if (entry is null) return (null, true);
        if (Fields.Open(entry, Forms.Falls, values) is not { } fields) return (null, false);
        var drain = fields["to"] is { } to ? KnownNames.Hole(holes, to, values) : null;
        var lines = fields.Items("lines").Select(item => Line(item, values)).ToList();
        if (lines.Count > MostLines) values.Log.AddSaid(fields["lines"]!, $"{Values.Number(lines.Count)} folds", $"at most {Values.Number(MostLines)} folds");
        if (fields["to"] is null && lines.Count == 0) values.Log.AddSaid(entry, "falls with neither \"to\" nor \"lines\"", "one of them", "\"to\": the drain's name");
        return (fields["to"] is not null && drain is null) || lines.Contains(null) || lines.Count > MostLines || (fields["to"] is null && lines.Count == 0)
            ? (null, false)
            : (new(drain, lines.OfType<FoldLine>().ToSequence()), true);
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
