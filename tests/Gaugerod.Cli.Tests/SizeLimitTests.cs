using Gaugerod.Cli.Reading;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Cli.Tests;

/// <summary>10,000 pieces is this project's own limit: common practice, no source.</summary>
public sealed class SizeLimitTests
{
    [Theory]
    [InlineData(9_900, 99, false)]
    [InlineData(9_900, 101, false)]
    [InlineData(10_100, 100, true)]
    public void A_wall_of_more_than_ten_thousand_tiles_is_stopped(int widthMm, int tilesHigh, bool stopped)
    {
        // Tiles of 97 mm with a joint of 3 mm: 100 mm a step, so a wall's tiles can be counted by eye.
        Assert.Equal(stopped, SizeLimit.Check(Job(Wall(widthMm, tilesHigh * 100))).Count == 1);
        Assert.Equal(stopped, SizeLimit.Check(Job(Readings(widthMm, tilesHigh * 100))).Count == 1);
    }

    [Fact]
    public void The_fault_says_how_many_and_what_would_do()
    {
        var fault = Assert.Single(SizeLimit.Check(Job(Wall(20_000, 20_000))));
        Assert.Equal("about 40000 pieces", fault.Found);
        Assert.Contains("--large", fault.Nearest, StringComparison.Ordinal);
    }

    [Fact]
    public void A_face_that_no_run_tiles_does_not_count() =>
        Assert.Empty(SizeLimit.Check(Job(Wall(20_000, 20_000)) with { Runs = [] }));

    private static FaceShape Wall(int width, int height) =>
        new FaceShape.Outline(Ring.Of(new(Length.Zero, Length.Zero, Length.FromMillimetres(width), Length.FromMillimetres(height))), [], Length.Zero);

    private static FaceShape Readings(int width, int height)
    {
        Edge any = new("any", EdgeKind.Free);
        return new FaceShape.Read(
            new(new(Length.FromMillimetres(width), null, null), new(Length.FromMillimetres(height), null), null, new(null, null)), any, any, any, any, []);
    }

    private static Job Job(FaceShape shape) => new(
        "Wall", null, Tape.Millimetres, Paper.A4, Length.Zero,
        [new("Tile", Length.FromMillimetres(97), Length.FromMillimetres(97), Length.Zero)],
        [new("back", shape, [], [])],
        [new(
            "Walls", "Tile", ["back"], new BondRequest.Grid(Lay.Level), Corners.Wrap, JointRange.Only(Length.FromMillimetres(3)),
            null, new(null, Length.FromMillimetres(50), HalfTile: true), [], [])]);
}
