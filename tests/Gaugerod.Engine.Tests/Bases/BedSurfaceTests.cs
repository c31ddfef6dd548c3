using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Bases;

/// <summary>The height of a bed at any place, added up by brute force, comes to its volume.</summary>
public sealed class BedSurfaceTests
{
    [Fact]
    public void A_bed_with_a_level_edge_holds_what_its_heights_add_up_to_wherever_drains_see_the_whole_floor() => RandomFloors.Any(1, 3, channels: true).Each(
        floor =>
        {
            var surface = new BedSurface(floor.Paths, Perimeter.Level, Fall.Usual);
            if (surface.Catchment.Hidden > 0) return;
            var sum = floor.Walked.Sum(place => surface.At(new(place.X, place.Y)), 5);
            // Beside a drain near a wall, and past a corner that all but hides the floor, heights rise like a step.
            Assert.Equal(surface.Volume, sum, 2e-3 * surface.Volume);
            Assert.True(surface.Falls.Most >= surface.Falls.Least - 1e-9);
            var paths = floor.Paths;
            Assert.All(floor.Open.Corners, corner => Assert.InRange(surface.At(corner), -1e-9, surface.Rise + 1e-9));
        }, iter: 200);

    [Fact]
    public void The_mean_over_a_level_edge_is_two_thirds_of_the_rise_wherever_the_drain_is() => RandomFloors.Any(0, 1, channels: false).Each(
        floor =>
        {
            var surface = new BedSurface(floor.Paths, Perimeter.Level, Fall.Usual);
            if (surface.Catchment.Hidden > 0) return;
            // By prisms: from the drain to each side a triangle, two of its corners at the rise.
            var (x, y) = floor.Drains[0].A;
            var prisms = floor.Outline.Zip(floor.Outline.Skip(1).Append(floor.Outline[0])).Sum(side => Math.Abs(((side.First.X - x) * (side.Second.Y - y)) - ((side.Second.X - x) * (side.First.Y - y))) / 2.0 * (2 * surface.Rise / 3));
            Assert.Equal(prisms, surface.Volume, 1e-6 * prisms);
            Assert.Equal(floor.Outline.Max(corner => Math.Sqrt(((corner.X - x) * (corner.X - x)) + ((corner.Y - y) * (corner.Y - y)))) / 48, surface.Rise, 1e-6);
        }, iter: 400);

    [Fact]
    public void No_place_of_a_bed_with_a_constant_fall_stands_higher_than_its_rise() => RandomFloors.Any(3, 3, channels: true).Each(
        floor =>
        {
            var surface = new BedSurface(floor.Paths, Perimeter.Constant, Fall.Usual);
            Assert.All(floor.Open.Corners, corner => Assert.InRange(surface.At(corner), 0, surface.Rise + 1e-6));
            // Anywhere, between ridges too.
            floor.Walked.Sum(
                place =>
                {
                    Assert.True(surface.At(new(place.X, place.Y)) <= surface.Rise + (1e-4 * surface.Rise));
                    return 0;
                }, 2);
        }, iter: 200);
}
