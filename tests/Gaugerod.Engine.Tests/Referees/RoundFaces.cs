using CsCheck;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>Faces with arcs: an arched head, a corner that is rounded or cut out round, a round column in the middle.</summary>
internal static class RoundFaces
{
    public static Gen<Face> Any(int least, int most) =>
        from size in Gen.Select(Gen.Long[least, most], Gen.Long[least, most])
        from part in Gen.Long[15, 45]
        from hollow in Gen.Bool
        from head in Gen.Long[0, 45]
        from column in Gen.Select(Gen.Bool, Gen.Long[30, 120])
        select Draw(size.Item1, size.Item2, part, hollow, head, column.Item1 ? column.Item2 : 0);

    /// <summary>A wall whose foot and head bend by up to 1 in 10, up or down.</summary>
    public static Gen<Face> Shallow(int least, int most) =>
        from size in Gen.Select(Gen.Long[least, most], Gen.Long[least, most])
        from at in Gen.Select(Gen.Long[20, 80], Gen.Long[20, 80])
        from bend in Gen.Select(Gen.Long[-20, 20], Gen.Long[-20, 20])
        let foot = size.Item1 * at.Item1 / 100
        let head = size.Item1 * at.Item2 / 100
        select Given(
            "shallow", [(0, 0), (foot, Math.Min(foot, size.Item1 - foot) * bend.Item1 / 200), (size.Item1, 0), (size.Item1, size.Item2), (head, size.Item2 + (Math.Min(head, size.Item1 - head) * bend.Item2 / 200)), (0, size.Item2)],
            [.. Stops(6)]);

    public static Opening Column(string name, long x, long y, long radius, Edge edge)
    {
        var ring = Circle(x, y, radius);
        return new(name, ring, Every(ring, edge));
    }

    public static Ring Circle(long x, long y, long radius)
    {
        var (left, right) = (At(x - radius, y), At(x + radius, y));
        return new([left, .. Arc.Of(left, At(x, y - radius), right)!.Corners(), right, .. Arc.Of(right, At(x, y + radius), left)!.Corners()]);
    }

    public static Sequence<Edge> Every(Ring ring, Edge edge) => Enumerable.Repeat(edge, ring.Points.Count).ToSequence();

    private static Face Draw(long width, long height, long part, bool hollow, long head, long column)
    {
        // A corner of the foot goes round, outward or inward; the head rises in an arc.
        var radius = Math.Min(width, height) * part / 100;
        var inward = (long)(radius * Math.Sqrt(0.5));
        var way = hollow ? At(inward, inward) : At(radius - inward, radius - inward);
        var corner = Arc.Of(At(0, radius), way, At(radius, 0))!;
        var points = new List<Point> { At(radius, 0), At(width, 0), At(width, height) };
        var edges = new List<Edge> { Stop("foot"), Stop("right") };
        var arched = head * width / 100;
        if (arched > 0)
        {
            var arch = Arc.Of(At(width, height), At(width / 2, height + arched), At(0, height))!;
            points.AddRange(arch.Corners());
            edges.AddRange(Enumerable.Repeat(Stop("arch"), arch.Chords));
        }
        else
        {
            edges.Add(Stop("head"));
        }

        points.AddRange([At(0, height), At(0, radius), .. corner.Corners()]);
        edges.AddRange([Stop("left"), .. Enumerable.Repeat(Stop("round"), corner.Chords)]);
        var round = column == 0 ? Sequence.Of<Opening>([]) : Sequence.Of<Opening>([Column("column", width * 2 / 3, height * 2 / 3, column, Stop("side"))]);
        return new("round", new FaceShape.Outline(new(points.ToSequence()), edges.ToSequence(), default), round, []);
    }
}
