using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;

namespace Gaugerod.Files.Jobs;

/// <summary>What runs and wants may refer to.</summary>
internal sealed class KnownNames(IReadOnlyList<string?> products, IReadOnlyList<FaceEntry> faces)
{
    public string? Product(Entry? entry, Values values) => Known(entry, values, "a product of this job", products);

    public string? Face(Entry? entry, Values values) => Known(entry, values, "a face of this job", faces.SelectMany(f => f.Zones.Prepend(f.Name)));

    /// <summary>A face among those of a run.</summary>
    public static string? FaceOf(IReadOnlyList<string?> run, Entry? entry, Values values)
    {
        // A strip of a border is called by the border's name and the side's; which strips there are only the engine knows.
        var strip = entry is Entry.Text { Value: var said } && run.Any(name => name is not null && said.StartsWith(name + " ", StringComparison.Ordinal));
        return strip ? values.Name(entry) : Known(entry, values, "a face of this run", run);
    }

    public EdgeRef? Edge(string? face, Entry? entry, Values values)
    {
        if (face is null || entry is null) return null;
        var name = FaceNamed(face) is { } known
            ? Known(entry, values, $"an edge of {face}", EdgesOf(known))
            : values.Name(entry);
        return name is null ? null : new EdgeRef(face, name);
    }

    /// <summary>Where heights on a face may count from; nothing is missing on a face that could not be read.</summary>
    public HeightBase HeightsOf(string face) => FaceNamed(face) is { } known ? HeightBase.Of(known) : new(null, Missing: false);

    public string? Opening(string? face, Entry? entry, Values values)
    {
        if (face is null || entry is null) return null;
        return FaceNamed(face) is { } known
            ? Known(entry, values, $"an opening of {face}", known.Openings.Select(o => o.Name))
            : values.Name(entry);
    }

    /// <summary>A hole among those read of a face.</summary>
    public static string? Hole(IReadOnlyList<Hole?> holes, Entry? entry, Values values) => Known(entry, values, "a hole of this face", holes.Select(hole => hole?.Name));

    public string? Hole(string? face, Entry? entry, Values values)
    {
        if (face is null || entry is null) return null;
        return FaceNamed(face) is { } known
            ? Known(entry, values, $"a hole of {face}", known.Holes.Select(hole => hole.Name))
            : values.Name(entry);
    }

    /// <summary>The names of a face's edges, as the engine gives them.</summary>
    public static IEnumerable<string> EdgesOf(Face face)
    {
        var own = face.Shape switch
        {
            FaceShape.Outline outline => outline.Edges.Select(e => e.Name),
            FaceShape.Surveyed surveyed => surveyed.Edges.Select(e => e.Name),
            FaceShape.Read read =>
                new[] { read.Foot.Name, read.Right.Name, read.Head.Name, read.Left.Name }
                    .Concat(read.Fixtures.SelectMany(f => new[] { f.Name, f.Name + ".left", f.Name + ".right" })),
            _ => throw new ArgumentException("A face is given by its outline, by readings or by a survey.", nameof(face)),
        };
        return own.Concat(face.Openings.SelectMany(o => o.Edges.Select(e => $"{o.Name}.{e.Name}"))).Distinct(StringComparer.Ordinal);
    }

    private Face? FaceNamed(string name) => faces.FirstOrDefault(f => string.Equals(f.Name, name, StringComparison.Ordinal))?.Face;

    public static string? Known(Entry? entry, Values values, string what, IEnumerable<string?> names)
    {
        if (values.Name(entry) is not { } name) return null;
        var known = names.ToList();

        // One of the others has no readable name: it may be the one that is meant.
        if (known.Contains(name) || known.Contains(null)) return name;
        var all = known.OfType<string>().ToList();
        values.Log.Add(entry!, all.Count == 0 ? $"{what}, of which there is none" : $"{what}: {Values.OneOf(all)}", Values.Quoted(Near.Of(name, all)));
        return null;
    }
}
