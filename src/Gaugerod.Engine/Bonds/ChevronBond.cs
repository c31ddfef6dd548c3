using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bonds;

/// <summary>
/// Columns of planks that slope up, then of planks that slope down, their ends mitred plumb. A plank with a long side L and
/// a width W at a slope a stands L cos a wide and W / cos a high at its ends; from one to the next above it is
/// (W + j) / cos a. The second column is the first in a mirror on the joint between them.
/// </summary>
internal static class ChevronBond
{
    public static BondMaking Make(BondRequest.Chevron request, BondTiles tiles)
    {
        var (tile, joint, slope) = (tiles.Tile, tiles.Joint, request.Slope);
        if (slope.Thousandths is <= 0 or >= Angle.QuarterTurn)
        {
            return new BondRefusal($"planks that slope {slope}", "a slope of more than 0° and less than 90°", "45°");
        }

        if (tiles.Products.Count > 1 && tiles.Products[1] is { } other && (other.Width, other.Height) != (tile.Width, tile.Height))
        {
            return new BondRefusal(
                $"\"{other.Name}\", {tiles.Say(other.Width)} by {tiles.Say(other.Height)}", "planks of one size sloping up and down",
                $"{tiles.Say(tile.Width)} by {tiles.Say(tile.Height)}");
        }

        var heading = Heading.Of(slope);
        var (width, rise) = (Grid.Nearest(tile.Width.Steps * heading.Cos), Grid.Nearest(tile.Width.Steps * heading.Sin));
        var (end, pitch) = (Grid.Nearest(tile.Height.Steps / heading.Cos), Grid.Nearest((tile.Height + joint).Steps / heading.Cos));
        if ((rise + end).Steps > ConvexClip.MostSteps)
        {
            return new BondRefusal(
                $"planks that stand {tiles.Say(rise + end)} high from the foot of one end to the head of the other", "planks that stand 5 m high at the most",
                Stands(tile, Angle.FromDegrees(45)) <= ConvexClip.MostSteps ? "45°" : "shorter or narrower planks");
        }

        var (right, far) = (width + joint, (width * 2) + joint);
        Point[] up = [new(Length.Zero, Length.Zero), new(width, rise), new(width, rise + end), new(Length.Zero, end)];
        Point[] down = [new(right, rise), new(far, Length.Zero), new(far, end), new(right, rise + end)];
        return new Bond(
            new(new(right * 2, Length.Zero), new(Length.Zero, pitch)),
            [new(new(up.ToSequence())) { Lies = slope }, new(new(down.ToSequence()), tiles.Products.Count > 1 ? 1 : 0) { Lies = -slope }], Lay.Level);
    }

    private static double Stands(Product tile, Angle slope)
    {
        var heading = Heading.Of(slope);
        return (tile.Width.Steps * heading.Sin) + (tile.Height.Steps / heading.Cos);
    }
}
