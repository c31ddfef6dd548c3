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
            // A minus sign is taken for a slip.
            var turned = slope.Thousandths < 0 ? -slope : slope;
            return new BondRefusal($"planks that slope {slope}", "a slope of more than 0° and less than 90°", [.. turned.Thousandths is > 0 and < Angle.QuarterTurn ? [Sloping(turned)] : Array.Empty<BondOffer>(), .. Under(turned)]);
        }

        if (tiles.Products.Count > 1 && tiles.Products[1] is { } other && (other.Width, other.Height) != (tile.Width, tile.Height))
        {
            return new BondRefusal(
                $"\"{other.Name}\", {tiles.Say(other.Width)} by {tiles.Say(other.Height)}", "planks of one size sloping up and down",
                [tiles.Offer($"{tiles.Say(tile.Width)} by {tiles.Say(tile.Height)}", 1, tile.Width, tile.Height)]);
        }

        var heading = Heading.Of(slope);
        var (width, rise) = (Grid.Nearest(tile.Width.Steps * heading.Cos), Grid.Nearest(tile.Width.Steps * heading.Sin));
        var (end, pitch) = (Grid.Nearest(tile.Height.Steps / heading.Cos), Grid.Nearest((tile.Height + joint).Steps / heading.Cos));
        if ((rise + end).Steps > ConvexClip.MostSteps)
        {
            return new BondRefusal(
                $"planks that stand {LengthText.Nearest(rise + end, tiles.Tape)} high from the foot of one end to the head of the other", $"planks that stand {LengthText.Down(Length.FromSteps(ConvexClip.MostSteps), tiles.Tape)} high at the most",
                Under(slope));
        }

        var (right, far) = (width + joint, (width * 2) + joint);
        Point[] up = [new(Length.Zero, Length.Zero), new(width, rise), new(width, rise + end), new(Length.Zero, end)];
        Point[] down = [new(right, rise), new(far, Length.Zero), new(far, end), new(right, rise + end)];
        return new Bond(
            new(new(right * 2, Length.Zero), new(Length.Zero, pitch)),
            [new(new(up.ToSequence())) { Lies = slope }, new(new(down.ToSequence()), tiles.Products.Count > 1 ? 1 : 0) { Lies = -slope }], Lay.Level);

        // The steeper, the higher they stand.
        IEnumerable<BondOffer> Under(Angle than) =>
            Enumerable.Range(1, 89).Reverse().Select(degrees => Angle.FromDegrees(degrees)).Where(angle => angle.Thousandths <= Math.Max(than.Thousandths, 1000)).Select(Sloping);

        BondOffer Sloping(Angle angle) => new($"{angle}") { Request = request with { Slope = angle } };
    }
}
