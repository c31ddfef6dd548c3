using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>A job of one true wall with square tiles, planned through the front door.</summary>
internal static class OneWall
{
    public static Job Job(
        Length width, Length height, Length gap, Length tile, JointRange joint, Tape tape, Sequence<Want>? wants = null, Limits? limits = null,
        Sequence<Opening>? openings = null, BondRequest? bond = null, Length? depth = null)
    {
        static Edge Side(string name, EdgeKind kind) => new(name, kind);
        var half = Length.FromSteps(height.Steps / 2);
        var readings = new FaceReadings(new(width, null, null), new(height, null), new(half, half), new(Length.Zero, Length.Zero));
        var wall = new Face(
            "wall", new FaceShape.Read(
                readings, Side("foot", EdgeKind.Floor), Side("right", EdgeKind.InsideCorner), Side("head", EdgeKind.Ceiling), Side("left", EdgeKind.InsideCorner), []),
            openings ?? [], []);
        var run = new RunRequest(
            "wall", "tile", ["wall"], bond ?? new BondRequest.Grid(Lay.Level), Corners.Wrap, joint, null,
            limits ?? new(null, Length.FromMillimetres(50), HalfTile: true), wants ?? [],
            [Criterion.Musts, Criterion.Wishes, Criterion.Slivers, Criterion.Smallest, Criterion.Mirror, Criterion.Cuts, Criterion.Tiles]);
        return new("one wall", null, tape, Paper.A4, gap, [new("tile", tile, depth ?? tile, Length.FromMillimetres(8)) { Kerf = Length.FromMillimetres(2) }], [wall], [run]);
    }

    public static RunPlan Plan(Job job)
    {
        Assert.Empty(JobCheck.Check(job));
        return Assert.Single(Planner.Plan(job).Runs);
    }

    /// <summary>The pieces of each course from left to right.</summary>
    public static List<List<Piece>> Courses(this RunPlan plan) =>
        [.. Assert.Single(plan.Faces).Pieces.GroupBy(piece => piece.Cell.Bottom).OrderBy(course => course.Key).Select(course => course.OrderBy(piece => piece.Cell.Left).ToList())];

    public static Placing Placing(this RunPlan plan) => Assert.Single(plan.Best.Faces);
}
