using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Tests.Drawings;

public sealed class FaceMapTests
{
    [Fact]
    public void A_metre_of_wall_at_1_to_10_is_100_mm_of_paper_and_up_is_up()
    {
        var map = new FaceMap(10, new(20, 200));
        var spot = map.At(new(Length.FromMillimetres(1000), Length.FromMillimetres(500)));
        Assert.Equal(120, spot.X, 9);
        Assert.Equal(150, spot.Y, 9);
    }

    [Theory]
    [InlineData(1800, 10)]
    [InlineData(1801, 12)]
    [InlineData(360, 2)]
    [InlineData(90000, 200)]
    public void The_largest_scale_that_fits_is_taken(long millimetres, int scale) =>
        Assert.Equal(scale, FaceMap.ScaleFor(Length.FromMillimetres(millimetres), Length.FromMillimetres(100), 180, 100));
}
