using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads readings of how flat a face is.</summary>
internal static class FlatnessReader
{
    private const int MostReadings = 1600, MostPoints = 200, MostLaid = 100, Fewest = 3;

    /// <summary>The readings, null for none, and whether what stands there could be read.</summary>
    /// <param name="entry">What stands there.</param>
    /// <param name="values">Takes what is wrong.</param>
    /// <param name="isFloor">Whether the face is a floor, where nothing is said.</param>
    public static (FlatReadings? Readings, bool Understood) Read(Entry? entry, Values values, bool isFloor)
    {
        if (entry is null) return (null, true);
        if (Fields.Open(entry, Forms.FlatnessOf, values) is not { } fields) return (null, false);
        var (grid, single) = Grid(fields["grid"], values);
        var points = fields.Items("points").Select(item => Reading(item, values)).ToList();
        var laid = fields.Items("straightedge").Select(item => Laid(item, values)).ToList();
        Most(fields["points"], points.Count, MostPoints);
        Most(fields["straightedge"], laid.Count, MostLaid);
        if (fields["grid"] is null && laid.Count == 0 && points.Count < Fewest) values.Log.AddSaid(entry, points.Count == 0 ? "flatness without readings" : $"{Values.Number(points.Count)} points", "a \"grid\", \"straightedge\" gaps, or three \"points\" or more");
        return (fields["grid"] is not null && grid is null && single is null) || points.Contains(null) || laid.Contains(null)
            ? (null, false)
            : (new() { IsFloor = fields.Word("of", Words.FlatKinds, isFloor), Grid = grid, Points = points.OfType<FlatReading>().Concat(single ?? []).ToSequence(), Laid = laid.OfType<LaidStraightedge>().ToSequence() }, true);

        void Most(Entry? list, int count, int most)
        {
            if (list is not null && count > most) values.Log.AddSaid(list, $"{Values.Number(count)} of them", $"at most {Values.Number(most)}");
        }
    }

    /// <summary>A grid; or, where some of its places could not be read, under a flange say, what was read on it as single readings.</summary>
    private static (FlatGrid? Grid, IReadOnlyList<FlatReading>? Single) Grid(Entry? entry, Values values)
    {
        if (Fields.Open(entry, Forms.FlatGrid, values) is not { } fields) return (null, null);
        var from = CornerReader.Place(fields["from"], values);
        var (right, up) = fields["step"] is Entry.List { Items: [var one, var other] }
            ? (values.Length(one, LengthRange.Size), values.Length(other, LengthRange.Size))
            : (fields.Length("step", LengthRange.Size), fields.Length("step", LengthRange.Size));
        if (Which(fields, "heights", "gaps") is not var (name, sign)) return (null, null);
        var lists = fields.Items(name);
        var rows = lists.Select(row => Row(row, sign, values)).ToList();
        if (rows.Contains(null) || fields[name] is not Entry.List || from is not { } first || right is not { } x || up is not { } y) return (null, null);
        if (rows.Count < 2 || rows[0]!.Count < 2 || rows.Count * rows[0]!.Count > MostReadings)
        {
            values.Log.AddSaid(fields[name]!, $"a grid of {Values.Number(rows.Count)} rows of {Values.Number(rows.Count == 0 ? 0 : rows[0]!.Count)}", $"two rows of two readings or more, at most {Values.Number(MostReadings)} in all");
            return (null, null);
        }

        if (rows.FindIndex(row => row!.Count != rows[0]!.Count) is var odd && odd > 0)
        {
            values.Log.AddSaid(lists[odd], $"a row of {Values.Number(rows[odd]!.Count)} readings", $"rows all as long as the first, {Values.Number(rows[0]!.Count)}");
            return (null, null);
        }

        if (!rows.Exists(row => row!.Contains(null))) return (new(first, x, y, rows.Select(row => row!.Select(read => read!.Value).ToSequence()).ToSequence()), null);
        var single = rows.SelectMany((row, r) => row!.Select((read, c) => (Read: read, At: new Plane.Shapes.Point(first.X + (x * c), first.Y + (y * r))))).Where(one => one.Read is not null)
            .Select(one => new FlatReading(one.At, one.Read!.Value)).ToList();
        if (single.Count is >= Fewest and <= MostPoints) return (null, single);
        values.Log.AddSaid(
            fields[name]!, $"a grid with {Values.Number(single.Count)} readings and some left out",
            single.Count < Fewest ? "three readings or more" : $"at most {Values.Number(MostPoints)} readings where some are left out, or none left out");
        return (null, null);
    }

    /// <summary>A row; null in it for what could not be read there.</summary>
    private static List<Length?>? Row(Entry entry, int sign, Values values)
    {
        if (entry is not Entry.List list)
        {
            values.Log.Add(entry, "a row of readings [ , ]");
            return null;
        }

        var (row, understood) = (new List<Length?>(), true);
        foreach (var item in list.Items)
        {
            var isLeftOut = item is Entry.Nothing or Entry.Text { Value: "" };
            var read = isLeftOut ? null : values.Length(item, LengthRange.Line);
            understood &= isLeftOut || read is not null;
            row.Add(sign < 0 ? -read : read);
        }

        return understood ? row : null;
    }

    private static FlatReading? Reading(Entry item, Values values)
    {
        if (Fields.Open(item, Forms.FlatPoint, values) is not { } fields) return null;
        var at = CornerReader.Place(fields["at"], values);
        if (Which(fields, "height", "gap") is not var (name, sign)) return null;
        return at is { } place && fields.Length(name, LengthRange.Line) is { } read ? new(place, sign < 0 ? -read : read) : null;
    }

    private static LaidStraightedge? Laid(Entry item, Values values)
    {
        if (Fields.Open(item, Forms.FlatLaid, values) is not { } fields) return null;
        var (from, to) = (CornerReader.Place(fields["from"], values), CornerReader.Place(fields["to"], values));
        var gaps = fields.Items("gaps").Select(gap => values.Length(gap, LengthRange.OutOfFlat)).ToList();
        if (fields["gaps"] is Entry.List && gaps.Count is < Fewest or > 100)
        {
            values.Log.AddSaid(fields["gaps"]!, $"{Values.Number(gaps.Count)} gaps", "3 to 100 gaps, evenly from one end to the other");
            return null;
        }

        if (from is { } one && one == to)
        {
            values.Log.AddSaid(fields["to"]!, "the place it begins at", "where the last gap was read");
            return null;
        }

        return from is not { } begin || to is not { } end || gaps.Count == 0 || gaps.Contains(null) ? null : new(begin, end, gaps.Select(gap => gap!.Value).ToSequence());
    }

    /// <summary>Whether heights over a level line were read, or gaps down from one; null, and a fault, for neither and for both.</summary>
    private static (string Name, int Sign)? Which(Fields fields, string heights, string gaps)
    {
        if (fields[heights] is not null && fields[gaps] is null) return (heights, 1);
        if (fields[gaps] is not null && fields[heights] is null) return (gaps, -1);
        var both = fields[gaps] is not null;
        fields.Values.Log.AddSaid(fields.Entry, both ? $"both {Values.AllOf([heights, gaps])}" : $"neither \"{heights}\" nor \"{gaps}\"", $"one of them: \"{heights}\" over a level line, minus below it, or \"{gaps}\" from a line down to the face");
        return null;
    }
}
