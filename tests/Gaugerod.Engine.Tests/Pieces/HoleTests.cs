using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Pieces;

public sealed class HoleTests
{
    /// <summary>Found by random rooms: two rings that cross cannot be cut out of a tile one by one.</summary>
    [Theory]
    [InlineData(630, 600, 40)]
    [InlineData(600, 600, 10)]
    public void Two_holes_that_meet_are_refused_and_both_are_named(long x, long y, long diameter)
    {
        Sequence<Hole> holes = [new("valve", At(600, 600), Mm(60)), new("pipe", At(x, y), Mm(diameter))];

        var fault = Assert.Single(Finish(Read("wall", holes: holes)).Faults);

        Assert.Equal("faces[0].holes[1]", fault.Path);
        Assert.Contains("'pipe' running into 'valve'", fault.Found);
    }

    [Fact]
    public void Two_holes_with_tile_between_them_are_drilled() =>
        Assert.Empty(Finish(Read("wall", holes: [new("valve", At(600, 600), Mm(60)), new("pipe", At(660, 600), Mm(50))])).Faults);
}
