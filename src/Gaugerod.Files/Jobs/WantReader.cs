using Gaugerod.Engine.Lines;
using Gaugerod.Files.Json;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads a want of a run.</summary>
internal sealed class WantReader(Values values, KnownNames names, IReadOnlyList<string?> faces)
{
    private const int HeaviestWish = 1000;

    private static readonly (string Want, Form Form)[] Known =
    [
        ("joint", Forms.JointWant), ("at least", Forms.AtLeastWant), ("centred", Forms.CentredWant), ("hole", Forms.HoleWant), ("in line", Forms.InLineWant), ("equal", Forms.EqualWant), ("full course", Forms.FullCourseWant),
    ];

    public static IEnumerable<string> Wants => Known.Select(k => k.Want);

    public Want? Read(Entry entry)
    {
        if (Fields.Group(entry, values) is not { } group) return null;
        var want = group.Members.TryGetValue("want", out var member) ? member.Value : null;
        var word = (want as Entry.Text)?.Value;
        var (_, form) = Array.Find(Known, k => string.Equals(k.Want, word, StringComparison.Ordinal));
        if (form is null)
        {
            if (want is null) values.Log.Add(group.At, group.PathTo("want"), "nothing", Values.OneOf(Wants));
            else values.Log.Add(want, Values.OneOf(Wants), Values.Quoted(Near.Of(word ?? "", Wants)));
            return null;
        }

        var fields = Fields.Open(group, form, values)!;
        var must = values.Truth(fields["must"]) ?? false;
        var weight = values.Whole(fields["weight"], 1, HeaviestWish) ?? 1;
        if (must && fields["weight"] is { } heavy) values.Log.AddSaid(heavy, "a weight on a must", "a must, which counts before all wishes, or a wish with a weight", "leave \"weight\" out");
        var face = KnownNames.FaceOf(faces, fields["face"], values);
        return word switch
        {
            "joint" => Joint(fields, face, must, weight),
            "at least" => AtLeast(fields, face, must, weight),
            "centred" => Centred(fields, face, must, weight),
            "in line" => face is null || fields.Name("with") is not { } with ? null : new Want.InLine(face, with, null, must, weight),
            "hole" => Hole(fields, face, must, weight),
            "equal" => Equal(fields, face, must, weight),
            _ => names.Edge(face, fields["edge"], values) is { } edge ? new Want.FullCourse(edge, must, weight) : null,
        };
    }

    private Want? Joint(Fields fields, string? face, bool must, int weight)
    {
        var height = fields.Length("height", LengthRange.Position);
        var edge = names.Edge(face, fields["edge"], values);
        if (!OneOf(fields, "height", "edge") || face is null) return null;
        if (fields["height"] is not null) return height + names.HeightsOf(face).Under(fields) is { } at ? new Want.JointAtHeight(face, at, must, weight) : null;
        if (fields["heightsFrom"] is { } from) values.Log.AddSaid(from, "\"heightsFrom\" beside an edge", "it only with a \"height\"", "leave it out");
        return edge is null ? null : new Want.JointOnEdge(edge, must, weight);
    }

    private Want.AtLeast? AtLeast(Fields fields, string? face, bool must, int weight)
    {
        var edge = names.Edge(face, fields["edge"], values);
        var (size, part) = (fields.Length("size", LengthRange.Cut), values.Part(fields["part"], "a want of a \"full course\" along the edge"));
        return OneOf(fields, "size", "part") && edge is not null && (size is not null || part is not null) ? new Want.AtLeast(edge, size, part, must, weight) : null;
    }

    private Want.Centred? Centred(Fields fields, string? face, bool must, int weight)
    {
        var opening = names.Opening(face, fields["opening"], values);
        var on = fields.Word("on", Words.Centres, CentreOn.Either);
        return face is null ? null : new Want.Centred(face, opening, on, must, weight);
    }

    private Want.HoleOn? Hole(Fields fields, string? face, bool must, int weight)
    {
        var hole = names.Hole(face, fields["hole"], values);
        var on = fields.Word("on", Words.Centres, CentreOn.Either);
        return face is null || hole is null ? null : new Want.HoleOn(face, hole, on, must, weight);
    }

    private Want.EqualCuts? Equal(Fields fields, string? face, bool must, int weight)
    {
        var one = names.Edge(face, fields["edge"], values);
        if (Fields.Open(fields["and"], Forms.EdgeRef, values) is not { } and) return null;
        var otherFace = and["face"] is { } entry ? KnownNames.FaceOf(faces, entry, values) : face;
        var other = names.Edge(otherFace, and["edge"], values);
        if (one is null || other is null) return null;
        if (one != other) return new Want.EqualCuts(one, other, must, weight);
        values.Log.AddSaid(and.Entry, "the same edge twice", "two edges");
        return null;
    }

    private bool OneOf(Fields fields, string one, string other)
    {
        if (fields[one] is null == fields[other] is null)
        {
            values.Log.AddSaid(fields.Entry, fields[one] is null ? $"neither \"{one}\" nor \"{other}\"" : $"both \"{one}\" and \"{other}\"", "one of them");
            return false;
        }

        return true;
    }
}
