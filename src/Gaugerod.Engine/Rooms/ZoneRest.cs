using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>What zones have left of a face so far, each side of it knowing what lies beyond.</summary>
internal sealed class ZoneRest
{
    private readonly FinishedFace _whole;
    private readonly Tape _tape;

    // What each tag of a side stands for: first the face's own edges, then what zones add.
    private readonly List<FieldEdge> _edges;

    public ZoneRest(FinishedFace whole, Tape tape)
    {
        (_whole, _tape, _edges) = (whole, tape, [.. whole.Edges]);
        Rings = whole.TaggedRings();
    }

    /// <summary>Its rings, outlines counter-clockwise and holes clockwise.</summary>
    public IReadOnlyList<TaggedCorner[]> Rings { get; set; }

    /// <summary>The holes in it.</summary>
    public IEnumerable<TaggedCorner[]> Holes => Rings.Where(ring => !IsOutline(ring));

    /// <summary>Rings as a field of their own under a name; null when they are in no or in several parts.</summary>
    public FinishedFace? Field(string name, IReadOnlyList<TaggedCorner[]> rings) => ZoneField.Of(_whole, name, rings, _edges);

    /// <summary>The box around it.</summary>
    public Box Bounds() => Box.Around(Rings.SelectMany(ring => ring).Select(node => node.Point));

    /// <summary>A new tag for sides at which the tile of another zone begins.</summary>
    public int Tag(string name)
    {
        _edges.Add(new(default, default, name, EdgeKind.Zone));
        return _edges.Count - 1;
    }

    /// <summary>The zone that what is left ends at, at a height; empty where that is the face's own edge.</summary>
    public string Which(Length height)
    {
        var sides = Rings.SelectMany(ring => ring.Select((node, i) => (node, Next: ring[(i + 1) % ring.Length])));
        var end = sides.Where(side => side.node.Y == height.Steps && side.Next.Y == height.Steps).Select(side => _edges[side.node.Tag]).FirstOrDefault(edge => edge.Kind == EdgeKind.Zone);
        return end.Name is null ? "" : $", where \"{end.Name}\" is";
    }

    /// <summary>What an edge is of, in words.</summary>
    public static string Named(FieldEdge edge) => edge.Kind == EdgeKind.Zone ? $"the zone \"{edge.Name}\"" : edge.Name.Split('.') is [var thing, _] ? $"\"{thing}\"" : $"the edge \"{edge.Name}\"";

    private static bool IsOutline(TaggedCorner[] ring) => Plain(ring).DoubledArea > 0;

    private static Ring Plain(TaggedCorner[] ring) => new(ring.Select(node => node.Point).ToSequence());

    /// <summary>What of the rest lies between two heights.</summary>
    public IReadOnlyList<TaggedCorner[]> Between(Length from, Length to, int tag)
    {
        if (from >= to) return [];
        var bounds = Bounds();
        var beyond = Length.FromMillimetres(1);
        var cut = BoxClip.Clip(Rings, new(bounds.Left - beyond, from, bounds.Right + beyond, to));
        return [.. cut.Select(ring => Array.ConvertAll(ring, node => node.Tag is BoxClip.Bottom or BoxClip.Top ? node with { Tag = tag } : node))];
    }

    /// <summary>What keeps a rug from lying where its ring is, in words that go on from "with tile all round it"; null when nothing does.</summary>
    public string? InTheWay(Ring around)
    {
        foreach (var ring in Rings)
        {
            if (RingChecks.FirstMeeting(around, Plain(ring)) is var (_, side)) return $"; {Named(_edges[ring[side].Tag])} is in the way";
        }

        var corner = around.Points[0];
        if (Rings.FirstOrDefault(ring => !IsOutline(ring) && RingChecks.Locate(Plain(ring), corner) == Whereabouts.Inside) is { } over) return $"; {Named(_edges[over[0].Tag])} is in the way";
        if (Rings.Any(ring => IsOutline(ring) && RingChecks.Locate(Plain(ring), corner) == Whereabouts.Inside)) return null;
        var bounds = Bounds();
        return $"; its tile goes from {Say(bounds.Left)} to {Say(bounds.Right)} across and from {Say(bounds.Bottom)} to {Say(bounds.Top)} up";
    }

    private string Say(Length length) => LengthText.Finer(length, _tape);
}
