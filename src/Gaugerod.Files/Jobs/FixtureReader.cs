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
            return (only is null ? null : new(only, null, null) { Under = line }, read);
        }

        if (Fields.Open(entry, Forms.FixtureRange, values) is not { } fields || RangeReader.IsEmpty(entry, fields, Forms.FixtureRange)) return (null, false);
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
        if (begins is null && ends is null) return (new(height, null, null) { Under = line }, true);
        if ((begins?.Most ?? from) < (ends?.Least ?? to ?? Length.FromSteps(long.MaxValue))) return (new(height, begins, ends) { Under = line }, true);
        var (wide, nearest) = Apart(begins, from, ends, to, values.Tape);
        values.Log.AddSaid((fields["to"] ?? fields["from"])!, wide, "ranges in which the fixture always ends right of where it begins", nearest);
        return (null, false);
    }

    /// <summary>Ranges that reach over each other, and the nearest that do not: cut back where what is asked leaves most room.</summary>
    private static (string Found, string Nearest) Apart(Span? begins, Length from, Span? ends, Length? to, Tape tape)
    {
        var (first, last) = (begins ?? new(from, from), ends ?? new(to ?? from, to ?? from));
        // It may begin up to here and ends beyond: as far right as it may begin, but left of where it is asked to end.
        var until = Length.Min(first.Most, (to ?? last.Most) - tape.Mark);
        if (until < from) until = from;
        var beyond = Length.Min(Length.Max(last.Least, until + tape.Mark), to ?? last.Most);
        var found = $"a fixture that may begin {Say(first.Most)} and end {Say(last.Least)} from the left";
        string[] parts =
        [
            .. begins is null || until == first.Most ? (string[])[] : [$"\"from\": [{Say(first.Least)}, {Say(until)}]"],
            .. ends is null || beyond == last.Least ? (string[])[] : [$"\"to\": [{Say(beyond)}, {Say(last.Most)}]"],
        ];
        return (found, string.Join(", ", parts));

        string Say(Length length) => LengthText.Finer(length, tape);
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
