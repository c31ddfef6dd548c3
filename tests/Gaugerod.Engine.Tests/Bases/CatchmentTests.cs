using Gaugerod.Engine.Bases;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Bases;

/// <summary>What runs to a drain, against closed forms and against brute force.</summary>
public sealed class CatchmentTests
{
    [Fact]
    public void The_mean_way_to_the_middle_of_a_square_is_what_the_books_say()
    {
        var square = new RandomFloor([(0, 0), (1000, 0), (1000, 1000), (0, 1000)], [], [((500, 500), (500, 500))]);
        // (sqrt 2 + ln(1 + sqrt 2)) / 6 of the side cubed: mean distance of a place in a square from its middle.
        Assert.Equal((Math.Sqrt(2) + Math.Log(1 + Math.Sqrt(2))) / 6 * 1e9, new Catchment(square.Paths).Ways, 1e-3);
    }

    [Fact]
    public void The_sum_over_any_floor_seen_whole_is_the_signed_sum_over_its_sides() => RandomFloors.Any(0, 1, channels: false).Each(
        floor =>
        {
            var caught = new Catchment(floor.Paths);
            Assert.Equal(floor.Polygon.Area, caught.Fanned + caught.Hidden, 1e-9 * floor.Polygon.Area);
            if (caught.Hidden > 0) return;
            var (sum, at, ring) = (0.0, floor.Drains[0].A, floor.Outline);
            for (var i = 0; i < ring.Length; i++)
            {
                var ((x, y), (x2, y2)) = (ring[i], ring[(i + 1) % ring.Length]);
                var (dx, dy, length) = (x2 - x, y2 - y, Math.Sqrt(((x2 - x) * (x2 - x)) + ((y2 - y) * (y2 - y))));
                // To the left of the side the distance counts plus, cubed without its sign.
                var off = ((dx * (at.Y - y)) - (dy * (at.X - x))) / length;
                if (Math.Abs(off) < 1e-9) continue;
                var (from, to) = ((((x - at.X) * dx) + ((y - at.Y) * dy)) / length, (((x2 - at.X) * dx) + ((y2 - at.Y) * dy)) / length);
                sum += Math.Sign(off) * Math.Pow(Math.Abs(off), 3) / 6 * (F(to / Math.Abs(off)) - F(from / Math.Abs(off)));
            }

            Assert.Equal(sum, caught.Ways, 1e-9 * sum);

            static double F(double t) => (t * Math.Sqrt(1 + (t * t))) + Math.Asinh(t);
        }, iter: 600);

    [Fact]
    public void What_a_drain_does_not_see_is_as_far_as_the_way_round_the_corner() => RandomFloors.Any(0, 1, channels: false).Each(floor => Holds(floor, 5e-4), iter: 200);

    [Fact]
    public void Several_drains_and_things_that_stand_on_the_floor_share_it_along_ridges() => RandomFloors.Any(3, 3, channels: true).Each(floor => Holds(floor, 5e-4), iter: 300);

    private static void Holds(RandomFloor floor, double within)
    {
        var (paths, walked) = (floor.Paths, floor.Walked);
        var caught = new Catchment(paths);
        Assert.Equal(walked.Area, caught.Fanned + caught.Beside + caught.Hidden, 1e-9 * walked.Area);
        var sum = walked.Sum(walked.Way, 4);
        Assert.Equal(sum, caught.Ways, within * sum);
        Assert.True(caught.Farthest >= walked.Farthest() - 1e-3, $"{caught.Farthest} but a corner is {walked.Farthest()} away");
        var middle = floor.Polygon.InteriorPoint.Coordinate;
        Assert.Equal(walked.Way(new(middle.X + 0.01, middle.Y + 0.013)), paths.From(new(middle.X + 0.01, middle.Y + 0.013)), 1e-6);
    }
}
