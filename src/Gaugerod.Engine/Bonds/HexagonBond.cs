using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bonds;

/// <summary>
/// Six-sided tiles, points up: upright flats w apart, points a height h apart, each point standing p out beyond the flats'
/// ends; regular when p = w / (2 √3). Let out by half a joint on every side they leave nothing between them: the steps are
/// (w + j, 0) and ((w + j) / 2, r), where r = h - p + j (√(p² + w²/4) - p/2) / (w/2) is from one row to the next.
/// </summary>
internal static class HexagonBond
{
    // Far finer than a tile is made, and yet it refuses a square taken for a hexagon.
    private static readonly Length s_near = Length.FromMillimetres(1);

    public static BondMaking Make(BondRequest.Hexagon request, BondTiles tiles)
    {
        var (w, h, j) = (tiles.Tile.Width, tiles.Tile.Height, tiles.Joint);
        var regular = Grid.Nearest(w.Steps / (2 * Math.Sqrt(3)));
        var across = Grid.Nearest(h.Steps * Math.Sqrt(3) / 2);
        if (request.Point is null && (h - Grid.Nearest(w.Steps * 2 / Math.Sqrt(3))).Abs() > s_near)
        {
            return new BondRefusal(
                $"a tile {tiles.Say(w)} across the flats and {tiles.Say(h)} from point to point",
                "a regular hexagon, or how far a point stands out beyond the flats (\"point\") said too", [
                    tiles.Offer($"a height of {tiles.Say(regular * 4)}", 0, null, regular * 4),
                    tiles.Offer($"a width of {tiles.Say(across)}", 0, across, null),
                ]);
        }

        var p = request.Point ?? regular;
        if (p <= Length.Zero || p * 2 >= h)
        {
            Length[] nearest = p <= Length.Zero ? [Length.Min(regular, Length.FromSteps(h.Steps / 4))] : [tiles.Tape.Down(Length.FromSteps(h.Steps / 2) - Length.FromSteps(1)), tiles.Under(Length.FromSteps(h.Steps / 2))];
            return new BondRefusal(
                $"points that stand out {tiles.Say(p)}", $"points that stand out by something, and less than half of the tile's height of {tiles.Say(h)}",
                nearest.Select(point => new BondOffer(tiles.Say(point)) { Request = request with { Point = point } }));
        }

        var half = w.Steps / 2.0;
        var row = h - p + Grid.Nearest(j.Steps * (Math.Sqrt(((double)p.Steps * p.Steps) + (half * half)) - (p.Steps / 2.0)) / half);
        var (step, middle) = (w + j, Length.FromSteps(w.Steps / 2));
        Point[] corners = [new(middle, Length.Zero), new(w, p), new(w, h - p), new(middle, h), new(Length.Zero, h - p), new(Length.Zero, p)];
        var (first, second) = (new Repeat(step, Length.Zero), new Repeat(Length.FromSteps(step.Steps / 2), row));
        if (request.PointedUp) return new Bond(new(first, second), [new(new(corners.ToSequence()))], Lay.Level);

        // Turned over its diagonal, and run the other way so as to go round counter-clockwise again.
        var turned = new Ring(corners.Reverse().Select(corner => corner.Transposed()).ToSequence());
        return new Bond(new(new(second.Across, second.Along), new(first.Across, first.Along)), [new(turned) { Lies = Angle.FromThousandths(Angle.QuarterTurn) }], Lay.Level);
    }
}
