using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads a fixture at a wall's foot or head.</summary>
internal static class FixtureReader
{
    public static Fixture? Read(Entry entry, Values values, Uniques names, HeightBase heights)
    {
        if (Fields.Open(entry, Forms.Fixture, values) is not { } fields) return null;
        var name = names.Take(fields["name"], values);
        var atHead = fields.Word("at", Words.FixtureEnds, false);
        var from = fields.Length("from", LengthRange.Position, Length.Zero);
        var to = fields.Length("to", LengthRange.Position);
        if (to is { } end && end <= from && fields["to"] is { } toEntry) values.Log.Add(toEntry, "a distance from the left corner that is greater than \"from\"");

        var (left, right) = Heights(fields);
        var under = heights.Under(fields);
        var usual = new Edge(name ?? "", EdgeKind.Fixture);
        var edge = EdgeReader.Read(fields["edge"], Forms.Edge, usual, values);
        var side = EdgeReader.Read(fields["side"], Forms.Edge, usual, values);
        if (name is null || left is not { } l || right is not { } r || under is not { } line) return null;
        var (range, understood) = Range(fields["range"], l + line, line, fields, from, to);
        return understood ? new Fixture(name, atHead, from, to, l + line, r + line, edge, side) { Range = range } : null;
    }

    /// <summary>Two lengths are its height's; a group has the height's, and those of its ends.</summary>
    private static (FixtureRange? Range, bool Understood) Range(Entry? entry, Length left, Length line, Fields fixture, Length from, Length? to)
    {
        var values = fixture.Values;
        if (entry is null) return (null, true);
        if (entry is not Entry.Group)
        {
            var (only, read) = RangeReader.Read(entry, left, line, values);
            return (only is null ? null : new(only, null, null), read);
        }

        if (Fields.Open(entry, Forms.FixtureRange, values) is not { } fields) return (null, false);
        foreach (var end in new[] { "from", "to" })
        {
            if (fields[end] is not { } given || fixture[end] is not null) continue;
            values.Log.AddSaid(given, $"a range for \"{end}\"", $"\"{end}\" of the fixture as well, a length within the range", "leave the range out: it reaches the corner");
            return (null, false);
        }

        var (height, one) = RangeReader.Read(fields["height"], left, line, values);
        var (begins, two) = RangeReader.Read(fields["from"], from, Length.Zero, values);
        var (ends, three) = RangeReader.Read(fields["to"], to ?? Length.Zero, Length.Zero, values);
        if (!one || !two || !three) return (null, false);
        if (begins is null && ends is null) return (new(height, null, null), true);
        if ((begins?.Most ?? from) < (ends?.Least ?? to ?? Length.FromSteps(long.MaxValue))) return (new(height, begins, ends), true);
        values.Log.Add((fields["to"] ?? fields["from"])!, "ranges in which the fixture always ends right of where it begins");
        return (null, false);
    }

    private static (Length? Left, Length? Right) Heights(Fields fields)
    {
        var height = fields.Length("height", LengthRange.Position);
        var (left, right) = (fields.Length("heightLeft", LengthRange.Position), fields.Length("heightRight", LengthRange.Position));
        if (fields["height"] is { } entry && (fields["heightLeft"] ?? fields["heightRight"]) is not null)
        {
            fields.Values.Log.AddSaid(entry, "\"height\" beside \"heightLeft\" or \"heightRight\"", "one height, or one at each end", "leave \"height\" out");
        }
        else if (fields["height"] is null)
        {
            if (fields["heightLeft"] is null && fields["heightRight"] is null) fields.Missing("height", "a length such as \"18\", or heightLeft and heightRight");
            else if (fields["heightLeft"] is null) fields.Missing("heightLeft", "the height at the left end too");
            else if (fields["heightRight"] is null) fields.Missing("heightRight", "the height at the right end too");
        }

        return (height ?? left, height ?? right);
    }
}
