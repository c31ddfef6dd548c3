using CsCheck;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rooms;

/// <summary>A face cut into zones, judged by NetTopologySuite: the zones lie in the field, apart by their joints, and nothing else of it is lost.</summary>
public sealed class ZoneTests
{
    /// <summary>A corner that is on no mark comes back to the nearest step, on either side of a joint.</summary>
    private const double Off = 2;

    private static readonly Gen<(Face Face, Zone[] Zones)> Cases =
        from face in Gen.Frequency((2, RandomFaces.Square(900, 2000)), (3, RandomFaces.Crooked(900, 2000)), (1, RandomFaces.Read))
        from joint in Gen.Long[1, 6].Nullable()
        from border in Gen.Select(Gen.Bool, Gen.Int[30, 150], Gen.Bool)
        from band in Gen.Select(Gen.Bool, Gen.Int[300, 900], Gen.Int[40, 300])
        from rug in Gen.Select(Gen.Bool, Gen.Int[200, 600], Gen.Int[200, 600], Gen.Int[80, 500])
        select (face, Drawn(joint, border, band, rug));

    private int _cut;

    [Fact]
    public void Zones_lie_in_the_field_apart_by_their_joints_and_with_the_joints_they_fill_it()
    {
        Cases.Each(Check, iter: 800);
        Assert.InRange(_cut, 200, int.MaxValue);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_frame_round_a_floor_with_a_step_has_a_strip_a_side_that_meets_the_next_with_a_joint_between(bool mitred)
    {
        // Six sides, one corner that points into the floor.
        var parts = Cut(Step, new Zone.Border("frame", Mm(100), mitred) { Joint = Mm(4) });
        var strips = parts.Where(part => part.IsStrip).ToList();
        Assert.Equal(["frame side 0", "frame side 1", "frame side 2", "frame side 3", "frame side 4", "frame side 5"], strips.Select(strip => strip.Face.Name));
        Assert.Equal([0, 90_000, 180_000, 90_000, 180_000, -90_000], strips.Select(strip => strip.Turn.Thousandths));
        var shapes = strips.ConvertAll(strip => Judge.Shape(strip.Face.Field.Outer, []));
        for (var i = 0; i < 6; i++)
        {
            // Shared corners: each strip is 4 mm from the next, within the rounding of a mitre.
            Assert.InRange(shapes[i].Distance(shapes[(i + 1) % 6]), (4 * 3200) - Off, (4 * 3200) + Off);
        }

        Assert.All(strips, strip => Assert.Equal(Mm(98), Depth(strip.Face)));
    }

    [Fact]
    public void A_butted_frame_fills_every_corner_with_one_strips_end()
    {
        // 1000 by 600 mm of tile; strips 98 mm wide, 4 mm joints: each runs to the outer edge at its end, and begins a joint after the one before it.
        var parts = Cut(Given("floor", [(0, 0), (1006, 0), (1006, 606), (0, 606)], Sides(4)), new Zone.Border("frame", Mm(100), Mitred: false) { Joint = Mm(4) });
        var boxes = parts.Where(part => part.IsStrip).Select(part => part.Face.Field.Outer.Bounds).ToList();
        Assert.Equal(
            [(898L, 98L), (98L, 498L), (898L, 98L), (98L, 498L)],
            boxes.Select(box => (box.Width.Steps / 3200, box.Height.Steps / 3200)));
        // What is left: 1000 - 2 x 102 by 600 - 2 x 102.
        var rest = Assert.Single(parts, part => !part.IsStrip).Face.Field.Outer.Bounds;
        Assert.Equal((Mm(796), Mm(396)), (rest.Width, rest.Height));
    }

    [Fact]
    public void A_rug_keeps_an_opening_that_stands_in_it_and_the_floor_round_it_does_not()
    {
        var face = Given("floor", [(0, 0), (2000, 0), (2000, 1500), (0, 1500)], Sides(4)) with { Openings = [Window("pillar", 900, 600, 1100, 800)] };
        var parts = Cut(face, new Zone.Rug("rug", new(Mm(500), Mm(300), Mm(1500), Mm(1100))) { Joint = Mm(4) });
        Assert.Equal(["rug", "floor"], parts.Select(part => part.Zone));
        Assert.Equal(996L * 796 - (206 * 206), (long)(Area(parts[0].Face) / 10_240_000));
        Assert.Single(parts[0].Face.Field.Inner);
        Assert.Single(parts[1].Face.Field.Inner);
        Assert.Equal(["pillar.bottom", "pillar.left", "pillar.right", "pillar.top"], parts[0].Face.Edges.Select(edge => edge.Name).Where(name => name.StartsWith("pillar", StringComparison.Ordinal)).Order());
        Assert.Equal(4, parts[0].Face.Edges.Count(edge => edge.Name == "floor"));
        Assert.Equal(4, parts[1].Face.Edges.Count(edge => edge.Name == "rug"));
        Assert.DoesNotContain(parts[1].Face.Edges, edge => edge.Name.StartsWith("pillar", StringComparison.Ordinal));
    }

    private void Check((Face Face, Zone[] Zones) given)
    {
        var run = Walls.Finish(given.Face);
        if (run.Faults.Count > 0) return;
        var remarks = new Remarks(Tape.Millimetres);
        var parts = ZoneCutter.Cut(run.Faces[0], given.Zones.ToSequence(), "faces[0]", Mm(3), remarks);
        Assert.Equal(remarks.Faults.Count > 0, parts.Count == 0);
        if (parts.Count == 0) return;
        _ = Interlocked.Increment(ref _cut);

        var whole = new Judge(run.Faces[0].Field).Field;
        var shapes = parts.Select(part => Judge.Shape(part.Face.Field.Outer, part.Face.Field.Inner)).ToList();
        var told = string.Join('\n', shapes.Select((shape, i) => $"{parts[i].Face.Name} {shape}"));
        var joint = (given.Zones[0].Joint ?? Mm(3)).Steps;
        for (var i = 0; i < shapes.Count; i++)
        {
            Assert.True(shapes[i].IsValid, told);
            Assert.True(shapes[i].Difference(whole.Buffer(Off)).IsEmpty, told);
            for (var j = 0; j < i; j++) Assert.True(shapes[i].Distance(shapes[j]) >= joint - Off, $"{shapes[i].Distance(shapes[j])} for {joint}\n{told}");
        }

        // What is in no zone is joint: half of the zones' edges long at the most, and nowhere much wider than one but where a mitre meets it.
        var rest = whole.Difference(Judge.Many(shapes));
        Assert.True(rest.Buffer(-(joint * 1.2) - Off).IsEmpty, $"{rest.Buffer(-(joint * 1.2) - Off)}\n{told}");
        Assert.InRange(rest.Area, 0, joint * 0.75 * shapes.Sum(shape => shape.Length));
        Assert.InRange(shapes.Sum(shape => shape.Area) + rest.Area, whole.Area - (Off * whole.Length), whole.Area + (Off * whole.Length));
    }

    private static Zone[] Drawn(long? joint, (bool Here, int Width, bool Mitred) border, (bool Here, int From, int High) band, (bool Here, int Left, int Bottom, int Size) rug)
    {
        Length? half = joint is { } mm ? Mm(mm) : null;
        var zones = new List<Zone>();
        if (border.Here) zones.Add(new Zone.Border("frame", Mm(border.Width), border.Mitred));
        if (rug.Here) zones.Add(new Zone.Rug("rug", new(Mm(rug.Left), Mm(rug.Bottom), Mm(rug.Left + rug.Size), Mm(rug.Bottom + rug.Size))));
        // A band parts a face: what is above it is a zone too.
        if (band.Here || zones.Count == 0) zones.AddRange([new Zone.Strip("upper", Mm(band.From + band.High), null), new Zone.Strip("band", Mm(band.From), null)]);
        return [.. zones.Select(zone => zone with { Joint = half })];
    }

    private static IReadOnlyList<ZonePart> Cut(Face face, params Zone[] zones)
    {
        var remarks = new Remarks(Tape.Millimetres);
        var parts = ZoneCutter.Cut(One(face), zones.ToSequence(), "faces[0]", Mm(3), remarks);
        Assert.Empty(remarks.Faults);
        return parts;
    }

    private static Face Step => Given("floor", [(0, 0), (2000, 0), (2000, 1200), (1200, 1200), (1200, 1800), (0, 1800)], Sides(6));

    private static Edge[] Sides(int count) => [.. Enumerable.Range(0, count).Select(i => Stop($"side {i}"))];

    private static double Area(FinishedFace face) => Judge.Shape(face.Field.Outer, face.Field.Inner).Area;

    private static Length Depth(FinishedFace strip) => Length.Min(strip.Field.Outer.Bounds.Width, strip.Field.Outer.Bounds.Height);
}
