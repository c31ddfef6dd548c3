using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bonds;

/// <summary>
/// Eight-sided tiles on a square grid, a small square set on its point where four meet. An octagon's cut corner takes c off
/// each side; the square of side d then has a joint of (j + c) / √2 - d / 2 around it, which equals j when
/// c = d / √2 + (√2 - 1) j. Without joints the square is d² of every S².
/// </summary>
internal static class OctagonBond
{
    private static readonly double s_root = Math.Sqrt(2);

    public static BondMaking Make(BondRequest.Octagon request, BondTiles tiles)
    {
        var (tile, dot, joint) = (tiles.Tile, tiles.Products[1], tiles.Joint);
        if ((Squares.Refusal(tiles, tile) ?? Squares.Refusal(tiles, dot)) is { } uneven) return uneven;
        var (s, d) = (tile.Width, dot.Width);
        var corner = request.Corner ?? Corner(d, joint);
        if (corner <= Length.Zero || corner * 2 >= s)
        {
            return request.Corner is null
                ? new BondRefusal($"a square of {tiles.Say(d)} between octagons of {tiles.Say(s)}", "an octagon whose corners leave something of every side", [.. SmallerSquare(), Larger()])
                : new BondRefusal(
                    $"corners that take {tiles.Say(corner)} off each side", $"corners that take something, and less than half of the octagon's {tiles.Say(s)}", [Alike(), .. SmallerSquare(), Larger()]);
        }

        var around = Grid.Nearest(((joint.Steps + corner.Steps) / s_root) - (d.Steps / 2.0));
        if (!tiles.Allows(around))
        {
            // Where the joints alone fill what the corners leave, no square fits.
            var fits = tiles.Under(Grid.Nearest(s_root * (corner.Steps - ((s_root - 1) * joint.Steps))));
            return new BondRefusal(
                around.IsNegative ? $"a square of {tiles.Say(d)}, which runs {tiles.Say(around.Abs())} over the octagons round it" : $"a square of {tiles.Say(d)}, which leaves a joint of {tiles.Say(around)} to the octagons",
                tiles.Range.Least == tiles.Range.Most ? $"a square that leaves a joint of {tiles.Say(joint)}" : $"a square that leaves a joint from {tiles.Say(tiles.Range.Least)} to {tiles.Say(tiles.Range.Most)}",
                [tiles.Offer($"a square of {tiles.Say(fits)}", 1, fits, fits), Alike(), .. SmallerSquare(), Larger()]);
        }

        // Where four octagons meet; the square's points stand half its diagonal from there.
        var (step, meet, reach) = (s + joint, s + Length.FromSteps(joint.Steps / 2), Grid.Nearest(d.Steps / s_root));
        Point[] octagon =
        [
            new(corner, Length.Zero), new(s - corner, Length.Zero), new(s, corner), new(s, s - corner),
            new(s - corner, s), new(corner, s), new(Length.Zero, s - corner), new(Length.Zero, corner),
        ];
        Point[] square = [new(meet, meet - reach), new(meet + reach, meet), new(meet, meet + reach), new(meet - reach, meet)];
        return new Bond(
            new(new(step, Length.Zero), new(Length.Zero, step)),
            [new(new(octagon.ToSequence())), new(new(square.ToSequence()), 1) { Lies = Angle.FromDegrees(45) }], Lay.Level);

        BondOffer Alike() => new($"corners that take {tiles.Say(Corner(d, joint))} off each side") { Request = request with { Corner = Corner(d, joint) } };

        // The largest square between octagons of this size, all joints alike.
        IEnumerable<BondOffer> SmallerSquare()
        {
            var most = Grid.Nearest((s.Steps / s_root) - (s_root * (s_root - 1) * joint.Steps));
            foreach (var side in new[] { tiles.Tape.Down(most - Length.FromSteps(4)), tiles.Under(most - Length.FromSteps(4)) })
            {
                yield return tiles.Offer($"a square of {tiles.Say(side)}{Usual()}", 1, side, side) with { Request = request with { Corner = null } };
            }
        }

        // The least octagon round this square.
        BondOffer Larger()
        {
            var side = tiles.Over(Corner(d, joint) * 2);
            return tiles.Offer($"an octagon of {tiles.Say(side)} both ways{Usual()}", 0, side, side) with { Request = request with { Corner = null } };
        }

        string Usual() => request.Corner is null ? "" : ", its corners left out";
    }

    /// <summary>The corner that leaves a square the same joint that the octagons have.</summary>
    private static Length Corner(Length square, Length joint) => Grid.Nearest((square.Steps / s_root) + ((s_root - 1) * joint.Steps));
}
