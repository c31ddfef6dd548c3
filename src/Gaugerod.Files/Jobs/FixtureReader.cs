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
        var (range, understood) = RangeReader.Read(fields["range"], l + line, line, values);
        return understood ? new Fixture(name, atHead, from, to, l + line, r + line, edge, side) { Range = range } : null;
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
