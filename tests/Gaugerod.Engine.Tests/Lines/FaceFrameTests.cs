using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using static Gaugerod.Engine.Tests.Rooms.Walls;

namespace Gaugerod.Engine.Tests.Lines;

public sealed class FaceFrameTests
{
    /// <summary>A bench and a bath of one height, side by side: two edges in one line are one side of the field's ring.</summary>
    [Theory]
    [InlineData(Lay.Level)]
    [InlineData(Lay.Upright)]
    public void A_wall_over_two_fixtures_of_one_height_still_has_its_left_and_its_right_side(Lay lay)
    {
        var face = One(Read("wall", fixtures: [Box("bench", 0, 400, 450), Box("bath", 400, null, 450)]));
        var frame = FaceFrame.Of(face, lay);

        Assert.Equal("left", face.Edges[Assert.Single(frame.LeftEdges)].Name);
        Assert.Equal("right", face.Edges[Assert.Single(frame.RightEdges)].Name);
    }
}
