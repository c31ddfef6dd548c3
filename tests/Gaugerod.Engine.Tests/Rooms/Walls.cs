using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rooms;

/// <summary>Walls for hand sketches: 3 mm edge joints, tile and bond coat 12 mm.</summary>
internal static class Walls
{
    public static readonly Length Joint = Mm(3);
    public static readonly Length BuildUp = Mm(12);

    public static Edge Floor { get; } = new("foot", EdgeKind.Floor);

    public static Edge Ceiling { get; } = new("head", EdgeKind.Ceiling);

    public static Edge Inside(string name) => new(name, EdgeKind.InsideCorner);

    public static Edge Outside(string name, CornerFinish? finish = null) => new(name, EdgeKind.OutsideCorner) { Finish = finish };

    public static Edge Free(string name) => new(name, EdgeKind.Free);

    public static Edge Stop(string name) => new(name, EdgeKind.Fixture);

    /// <summary>A true wall given by readings; inside corners unless said otherwise.</summary>
    /// <summary>So many edges that tile stops at, numbered.</summary>
    public static Sequence<Edge> Stops(int count) => Enumerable.Range(0, count).Select(i => Stop($"stop {i}")).ToSequence();

    public static Face Read(
        string name, long width = 900, long height = 2400, Edge? foot = null, Edge? right = null, Edge? head = null, Edge? left = null,
        FaceReadings? readings = null, Sequence<Fixture>? fixtures = null, Sequence<Opening>? openings = null, Sequence<Hole>? holes = null) =>
        new(
            name,
            new FaceShape.Read(
                readings ?? TrueWall(width, height), foot ?? Floor, right ?? Inside("right"), head ?? Ceiling, left ?? Inside("left"), fixtures ?? []),
            openings ?? [], holes ?? []);

    /// <summary>A face given by its corners.</summary>
    public static Face Given(string name, (long X, long Y)[] ring, params Edge[] edges) =>
        new(name, new FaceShape.Outline(RingMm(ring), edges.ToSequence(), default), [], []);

    public static Fixture Box(string name, long from, long? to, long height, bool atHead = false) =>
        new(name, atHead, Mm(from), to is { } t ? Mm(t) : null, Mm(height), Mm(height), Stop(name), Stop("side"));

    public static Opening Window(string name, long left, long bottom, long right, long top, Func<string, Edge>? edge = null) =>
        new(
            name, RingMm((left, bottom), (right, bottom), (right, top), (left, top)),
            new[] { "bottom", "right", "top", "left" }.Select(edge ?? Stop).ToSequence());

    public static FinishedRun Finish(params Face[] faces) => Finish(null, faces);

    public static FinishedRun Finish(string? through, params Face[] faces) => RoomBuilder.Finish(new(
        "runs[0]", faces.Select((face, i) => new NumberedFace(i, face)).ToSequence(), BuildUp, through, Joint, Tape.Millimetres));

    /// <summary>The finished faces of a run that has no faults.</summary>
    public static Sequence<FinishedFace> Sound(FinishedRun run)
    {
        Assert.Empty(run.Faults);
        return run.Faces;
    }

    public static FinishedFace One(Face face) => Assert.Single(Sound(Finish(face)));
}
