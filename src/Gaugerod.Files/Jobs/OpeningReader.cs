using Gaugerod.Engine;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads an opening, given as a rectangle or by its outline.</summary>
internal static class OpeningReader
{
    private static readonly string[] Sides = ["bottom", "right", "top", "left"];

    private static readonly string[] BoxFields = ["left", "bottom", "width", "height"];

    public static Opening? Read(Entry entry, Values values, Uniques names, HeightBase heights)
    {
        if (Fields.Group(entry, values) is not { } group) return null;
        var meant = group.Members.Where(m => m.Value.Value is not Entry.Nothing).Select(m => Near.Of(m.Key, [.. Forms.RectangleOpening.Names, "outline"])).ToList();
        var outlined = meant.Contains("outline");
        if (outlined && meant.Any(BoxFields.Contains))
        {
            values.Log.AddSaid(group, $"both \"outline\" and {Values.AllOf(BoxFields.Where(meant.Contains))}", "one of them", $"{Values.AllOf(BoxFields)} for an upright rectangle, \"outline\" for any other shape");
            return null;
        }

        if (Fields.Open(group, outlined ? Forms.OutlineOpening : Forms.RectangleOpening, values) is not { } fields) return null;
        var name = names.Take(fields["name"], values);

        // A frame or a niche's own lining: a soft joint, unless the file says otherwise.
        var usual = EdgeReader.Read(fields["edge"], Forms.Edge, new Edge("edge", EdgeKind.Fixture), values);
        var under = heights.Under(fields);
        return outlined ? Outlined(fields, usual, name, under) : Rectangle(fields, usual, name, under);
    }

    private static Opening? Outlined(Fields fields, Edge usual, string? name, Length? under)
    {
        var drawn = RingReader.Read(fields["outline"], fields.Values);
        var edges = EdgeListReader.Read(fields, drawn.Corners, Forms.OpeningEdge, usual, new Uniques("the opening's edges", parts: true));
        return drawn.Ring is not { } ring || edges is null || name is null || under is not { } line
            ? null
            : new Opening(name, new(ring.Points.Select(p => p.Moved(Length.Zero, line)).ToSequence()), drawn.Each(edges));
    }

    private static Opening? Rectangle(Fields fields, Edge usual, string? name, Length? under)
    {
        var (left, bottom) = (fields.Length("left", LengthRange.Position), fields.Length("bottom", LengthRange.Position));
        var (width, height) = (fields.Length("width", LengthRange.Size), fields.Length("height", LengthRange.Size));
        var sides = Fields.Open(fields["edges"], Forms.OpeningSides, fields.Values);
        var edges = Sides.Select(side => EdgeReader.Read(sides?[side], Forms.Edge, usual with { Name = side }, fields.Values)).ToSequence();
        if (name is null || left is not { } l || bottom is not { } b || width is not { } w || height is not { } h || under is not { } line) return null;
        var depth = fields.Length("depth", LengthRange.NicheDepth);
        if ((depth is null) != (fields["depth"] is null)) return null;
        var (range, understood) = Range(fields["range"], new(l, b + line, l + w, b + line + h), line, fields.Values);
        return understood ? new Opening(name, Ring.Of(new Box(l, b + line, l + w, b + line + h)), edges) { Range = range, Depth = depth } : null;
    }

    private static (OpeningRange? Range, bool Understood) Range(Entry? entry, Box box, Length under, Values values)
    {
        if (entry is null) return (null, true);
        if (Fields.Open(entry, Forms.OpeningRange, values) is not { } fields || RangeReader.IsEmpty(entry, fields, Forms.OpeningRange)) return (null, false);
        var (left, one) = RangeReader.Read(fields["left"], box.Left, Length.Zero, values);
        var (bottom, two) = RangeReader.Read(fields["bottom"], box.Bottom, under, values);
        var (width, three) = RangeReader.Read(fields["width"], box.Width, Length.Zero, values, isSize: true);
        var (height, four) = RangeReader.Read(fields["height"], box.Height, Length.Zero, values, isSize: true);
        var (studs, five) = Studs(fields["studs"], box, values);
        return one && two && three && four && five ? (new(left, bottom, width, height) { Studs = studs, Under = under }, true) : (null, false);
    }

    /// <summary>The clear space between two studs, which holds the opening as it is asked.</summary>
    private static (Span? Studs, bool Understood) Studs(Entry? entry, Box box, Values values)
    {
        var (studs, understood) = RangeReader.Read(entry, box.Left, Length.Zero, values);
        if (studs is null || studs.Holds(box.Right)) return (studs, understood);
        values.Log.AddSaid(
            entry!, $"studs with {LengthText.Finer(studs.Least, values.Tape)} to {LengthText.Finer(studs.Most, values.Tape)} clear between them",
            $"a clear space that holds the opening as it is asked, up to {LengthText.Finer(box.Right, values.Tape)}",
            $"[{LengthText.Finer(studs.Least, values.Tape)}, {LengthText.Finer(box.Right, values.Tape)}]",
            [Mend.Of(entry!.Path, studs.Least, box.Right, values.Tape)]);
        return (null, false);
    }
}
