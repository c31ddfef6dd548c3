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
            var (found, nearest) = request.Corner is null
                ? ($"a square of {tiles.Say(d)} between octagons of {tiles.Say(s)}", $"a square under {tiles.Say(Grid.Nearest((s.Steps / s_root) - (s_root * (s_root - 1) * joint.Steps)))}")
                : ($"corners that take {tiles.Say(corner)} off each side", $"less than {tiles.Say(Length.FromSteps(s.Steps / 2))}");
            return new BondRefusal(found, "an octagon whose corners leave something of every side", nearest);
        }

        var around = Grid.Nearest(((joint.Steps + corner.Steps) / s_root) - (d.Steps / 2.0));
        if (!tiles.Allows(around))
        {
            // Where the joints alone fill what the corners leave, no square fits.
            var fits = Grid.Nearest(s_root * (corner.Steps - ((s_root - 1) * joint.Steps)));
            return new BondRefusal(
                $"a square of {tiles.Say(d)}, which leaves a joint of {tiles.Say(around)} to the octagons",
                "a square that leaves a joint that is allowed",
                fits > Length.Zero ? $"a square of {tiles.Say(fits)}" : $"corners that take {tiles.Say(Corner(d, joint))} off each side");
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
    }

    /// <summary>The corner that leaves a square the same joint that the octagons have.</summary>
    private static Length Corner(Length square, Length joint) => Grid.Nearest((square.Steps / s_root) + ((s_root - 1) * joint.Steps));
}
