using Gaugerod.Plane.Measure;

namespace Gaugerod.Plane.Tests.Measure;

public sealed class AngleTests
{
    [Theory]
    [InlineData(0, "0°")]
    [InlineData(45_000, "45°")]
    [InlineData(22_500, "22.5°")]
    [InlineData(-1, "-0.001°")]
    [InlineData(123_456, "123.456°")]
    public void An_angle_is_said_in_degrees(int thousandths, string said) => Assert.Equal(said, Angle.FromThousandths(thousandths).ToString());

    [Fact]
    public void Angles_add_up_and_turn_round()
    {
        Assert.Equal(Angle.FromDegrees(30), Angle.FromDegrees(50) + -Angle.FromDegrees(20));
        Assert.Equal(Angle.Zero, default);
        Assert.Equal(12.345m, Angle.FromThousandths(12_345).Degrees);
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(-270_000, true)]
    [InlineData(450_000, true)]
    [InlineData(89_999, false)]
    public void Whole_quarters_are_square(int thousandths, bool square) => Assert.Equal(square, Angle.FromThousandths(thousandths).IsSquare);

    [Fact]
    public void What_does_not_fit_is_no_angle() => Assert.Throws<OverflowException>(() => Angle.FromDegrees(3_000_000));
}
