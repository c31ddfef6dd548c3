using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads a zone of a face.</summary>
internal static class ZoneReader
{
    private static readonly string[] s_kinds = [.. Forms.Zones.Select(form => form.Name)];

    public static Zone? Read(Entry entry, Values values, Uniques faceNames, Uniques parts, HeightBase heights)
    {
        if (Fields.Group(entry, values) is not { } group) return null;
        var kind = group.Members.TryGetValue("kind", out var member) ? member.Value : null;
        var word = (kind as Entry.Text)?.Value;
        if (Forms.Zones.FirstOrDefault(form => string.Equals(form.Name, word, StringComparison.Ordinal)) is not { } known)
        {
            if (kind is null) values.Log.Add(group.At, group.PathTo("kind"), "nothing", Values.OneOf(s_kinds));
            else values.Log.Add(kind, Values.OneOf(s_kinds), Values.Quoted(Near.Of(word ?? "", s_kinds)));
            return null;
        }

        if (Fields.Open(group, known, values) is not { } fields) return null;
        // Wants call a face's edges and its zones alike: one that is called like an edge would be taken for it.
        var own = (fields["name"] as Entry.Text)?.Value is { } given && parts.Refuses(given) ? parts : faceNames;
        var (name, joint) = (own.Take(fields["name"], values), values.Length(fields["joint"], LengthRange.Joint));
        var zone = known == Forms.BandZone ? Band(fields, name, joint, heights) : known == Forms.RugZone ? Rug(fields, name, heights) : Border(fields, name);
        return zone is null ? null : zone with { Joint = joint };
    }

    private static Zone? Band(Fields fields, string? name, Length? joint, HeightBase heights)
    {
        var trimmed = TrimReader.Read(fields["trim"], fields.Values);
        var (from, to) = (fields.Length("from", LengthRange.Position), fields.Length("to", LengthRange.Position));
        if (name is null || from is not { } f || heights.Under(fields) is not { } under) return null;
        var (range, understood) = RangeReader.Read(fields["range"], f + under, under, fields.Values);
        // A band of trim is as high as the trim, between the middles of its joints.
        if (to is null && fields.Values.Trims.Width(trimmed) is { } width) to = f + width + (joint ?? fields.Values.Trims.EdgeJoint);
        return understood ? new Zone.Strip(name, f + under, to + under) { Range = range, ReadFrom = under, Trimmed = trimmed } : null;
    }

    private static Zone? Rug(Fields fields, string? name, HeightBase heights)
    {
        var (left, bottom) = (fields.Length("left", LengthRange.Position), fields.Length("bottom", LengthRange.Position));
        var (width, height) = (fields.Length("width", LengthRange.Size), fields.Length("height", LengthRange.Size));
        return name is not null && left is { } l && bottom is { } b && width is { } w && height is { } h && heights.Under(fields) is { } under
            ? new Zone.Rug(name, new Box(l, b + under, l + w, b + under + h)) { ReadFrom = under }
            : null;
    }

    private static Zone? Border(Fields fields, string? name)
    {
        var (width, mitred) = (fields.Length("width", LengthRange.Size), fields.Word("corners", Words.BorderCorners, true));
        return name is not null && width is { } w ? new Zone.Border(name, w, mitred) : null;
    }
}
