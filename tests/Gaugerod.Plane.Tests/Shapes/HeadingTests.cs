using CsCheck;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;

namespace Gaugerod.Plane.Tests.Shapes;

/// <summary>Sine and cosine, judged by series summed in decimals of 28 places and by the roots that geometry knows, and the turns made with them.</summary>
public sealed class HeadingTests
{
    private const decimal Pi = 3.1415926535897932384626433833m;

    private static readonly Gen<Angle> Angles = Gen.Int[-720_000, 720_000].Select(Angle.FromThousandths);

    // A place up to 300 m away: ten halls.
    private static readonly Gen<Point> Places = Gen.Select(Gen.Long[-960_000_000, 960_000_000], Gen.Long[-960_000_000, 960_000_000]).Select(Point.FromSteps);

    [Fact]
    public void Every_angle_of_a_full_turn_has_the_sine_and_cosine_of_the_series()
    {
        for (var thousandths = 0; thousandths < 360_000; thousandths += Cases.IsLong ? 1 : 7)
        {
            var (heading, (cos, sin)) = (Heading.Of(Angle.FromThousandths(thousandths)), Reference(thousandths));
            Assert.InRange(Math.Abs(Exactly(heading.Cos) - cos), 0, 2.5e-16m);
            Assert.InRange(Math.Abs(Exactly(heading.Sin) - sin), 0, 2.5e-16m);
        }
    }

    /// <summary>The sides of the regular triangle, square, pentagon and twelve-sided figure (Euclid, Elements, book 4 and 13; from memory).</summary>
    [Theory]
    [InlineData(18, 5, -1, 1, 4)]
    [InlineData(30, 0, 1, 0, 2)]
    [InlineData(45, 2, 0, 1, 2)]
    [InlineData(54, 5, 1, 1, 4)]
    [InlineData(60, 3, 0, 1, 2)]
    public void Known_angles_have_their_known_sines(int degrees, int root, int more, int times, int over)
    {
        var sine = ((Math.Sqrt(root) * times) + more) / over;
        Assert.Equal(sine, Heading.Of(Angle.FromDegrees(degrees)).Sin, 2e-16);
        Assert.Equal(sine, Heading.Of(Angle.FromDegrees(90 - degrees)).Cos, 2e-16);
        Assert.Equal(-sine, Heading.Of(Angle.FromDegrees(-degrees)).Sin, 2e-16);
    }

    [Fact]
    public void Quarter_turns_are_exact() => Places.Each(
        place =>
        {
            var (x, y) = (place.X, place.Y);
            Assert.Equal(new Point(x, y), Heading.Of(Angle.FromDegrees(-360)).Turn(place));
            Assert.Equal(new Point(-y, x), Heading.Of(Angle.FromDegrees(90)).Turn(place));
            Assert.Equal(new Point(-x, -y), Heading.Of(Angle.FromDegrees(540)).Turn(place));
            Assert.Equal(new Point(y, -x), Heading.Of(Angle.FromDegrees(270)).Turn(place));
            Assert.Equal(new Point(y, -x), Heading.Of(Angle.FromDegrees(90)).Back(place));
        },
        iter: 100);

    [Fact]
    public void A_turned_place_is_the_nearest_step_to_its_true_one() => Gen.Select(Angles, Places).Each(
        (angle, place) =>
        {
            var (cos, sin) = Reference(((angle.Thousandths % 360_000) + 360_000) % 360_000);
            var (x, y, turned) = (place.X.Steps, place.Y.Steps, Heading.Of(angle).Turn(place));
            Assert.InRange(Math.Abs(turned.X.Steps - ((x * cos) - (y * sin))), 0, 0.50001m);
            Assert.InRange(Math.Abs(turned.Y.Steps - ((x * sin) + (y * cos))), 0, 0.50001m);
        },
        iter: 5_000);

    [Fact]
    public void A_place_turned_and_turned_back_is_within_a_step() => Gen.Select(Angles, Places).Each(
        (angle, place) =>
        {
            var back = Heading.Of(angle).Back(Heading.Of(angle).Turn(place));
            Assert.InRange((back.X - place.X).Abs().Steps, 0, 1);
            Assert.InRange((back.Y - place.Y).Abs().Steps, 0, 1);
        },
        iter: 20_000);

    [Fact]
    public void A_full_turn_more_is_the_same_heading() => Angles.Each(
        angle =>
        {
            Assert.Equal(Heading.Of(angle), Heading.Of(angle + Angle.FromDegrees(360)));
            Assert.Equal(angle.IsSquare, Heading.Of(angle).IsSquare);
        },
        iter: 500);

    /// <summary>
    /// Every bit of every sine and cosine, gathered. The number comes of the same sums written down in another language; another
    /// here means that another machine would draw another plan.
    /// </summary>
    [Fact]
    public void The_same_angle_has_the_same_bits_on_any_machine()
    {
        var sum = 0UL;
        for (var thousandths = 0; thousandths < 360_000; thousandths++)
        {
            var heading = Heading.Of(Angle.FromThousandths(thousandths));
            foreach (var value in new[] { heading.Cos, heading.Sin })
            {
                sum = unchecked(((sum ^ BitConverter.DoubleToUInt64Bits(value)) * 1099511628211) + 1);
            }
        }

        Assert.Equal(3201063217026506288UL, sum);
    }

    /// <summary>A number of at most one, all its bits kept: a plain conversion keeps 15 digits.</summary>
    private static decimal Exactly(double value) => (decimal)(long)(value * (1L << 60)) / (1L << 60);

    private static (decimal Cos, decimal Sin) Reference(int thousandths)
    {
        // To within an eighth of a turn of a whole quarter, where the series end soon.
        var quarters = ((thousandths + 45_000) / 90_000) % 4;
        var x = (thousandths - (((thousandths + 45_000) / 90_000) * 90_000)) * Pi / 180_000m;
        var (cos, sin, term) = (0m, 0m, 1m);
        for (var n = 0; n < 30; n++)
        {
            if (n % 2 == 0) cos += n % 4 == 0 ? term : -term;
            else sin += n % 4 == 1 ? term : -term;
            term *= x / (n + 1);
        }

        return quarters switch { 0 => (cos, sin), 1 => (-sin, cos), 2 => (-cos, -sin), _ => (sin, -cos) };
    }
}
