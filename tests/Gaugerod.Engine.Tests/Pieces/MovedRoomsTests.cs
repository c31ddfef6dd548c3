using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Pieces;

/// <summary>
/// The same room stood elsewhere, seen in a mirror or turned over its diagonal has the same pieces, moved, mirrored or
/// turned over. A crossing in the middle of two steps is rounded up, whichever way up is, so slanted sides may come out a
/// step apart.
/// </summary>
public sealed class MovedRoomsTests
{
    private static readonly Gen<(RandomRun Run, Spot Spot)> Cases = Gen.Select(RandomRooms.Any, Spot.Random);

    [Fact]
    public void Room_and_placing_moved_together_move_the_pieces() => Gen.Select(Cases, Gen.Long[-900_000, 900_000], Gen.Long[-900_000, 900_000]).Each(
        (given, right, up) =>
        {
            var (face, bond, x, y) = Of(given);
            Point Moved(Point p) => p.Moved(Length.FromSteps(right), Length.FromSteps(up));
            Same(Cut(face, bond, x, y, given.Run), Cut(Mapped(face, Moved, turnsOver: false), bond, x + right, y + up, given.Run), Moved, slack: 0);
        },
        iter: 300);

    [Fact]
    public void Room_and_bond_in_a_mirror_mirror_the_pieces() => Cases.Each(
        given =>
        {
            var (face, bond, x, y) = Of(given);
            static Point Mirrored(Point p) => new(-p.X, p.Y);
            var width = bond.Lay == Lay.Level ? given.Run.Product.Width.Steps : given.Run.Product.Height.Steps;
            Same(Cut(face, bond, x, y, given.Run), Cut(Mapped(face, Mirrored, turnsOver: true), InMirror(bond), -x - width, y, given.Run), Mirrored, Slack(face));
        },
        iter: 300);

    [Fact]
    public void A_placing_a_repeat_of_the_bond_further_on_lays_the_same_pieces() => Gen.Select(Cases, Gen.Int[-2, 2], Gen.Int[-2, 2]).Each(
        (given, along, across) =>
        {
            var (face, bond, x, y) = Of(given);
            var (first, second) = (bond.Lattice.First, bond.Lattice.Second);
            var (u, v) = ((first.Along.Steps * along) + (second.Along.Steps * across), (first.Across.Steps * along) + (second.Across.Steps * across));
            if (bond.Lay == Lay.Upright) (u, v) = (v, u);
            Same(Cut(face, bond, x, y, given.Run), Cut(face, bond, x + u, y + v, given.Run), p => p, slack: 0);
        },
        iter: 300);

    [Fact]
    public void A_bond_laid_upright_is_the_level_one_on_the_room_turned_over_its_diagonal() => Cases.Each(
        given =>
        {
            var (face, bond, x, y) = Of(given);
            var other = bond with { Lay = bond.Lay == Lay.Level ? Lay.Upright : Lay.Level };
            static Point Turned(Point p) => new(p.Y, p.X);
            Same(Cut(face, bond, x, y, given.Run), Cut(Mapped(face, Turned, turnsOver: true), other, y, x, given.Run), Turned, Slack(face));
        },
        iter: 300);

    private static (FinishedFace Face, Bond Bond, long X, long Y) Of((RandomRun Run, Spot Spot) given)
    {
        // Holes are drawn round from their own right, so a mirrored hole has other corners: they are left out here.
        var face = given.Run.Faces[0] with { Holes = [] };
        var (x, y) = given.Spot.On(face, given.Run.Product);
        return (face, given.Run.Laid, x, y);
    }

    private static long Slack(FinishedFace face) => face.Edges.All(e => e.From.X == e.To.X || e.From.Y == e.To.Y) ? 0 : 1;

    private static Sequence<Piece> Cut(FinishedFace face, Bond bond, long x, long y, RandomRun run) =>
        PieceCutter.Cut(FieldRings.Of(face), bond, new(Length.FromSteps(x), Length.FromSteps(y), run.Joint), run.Product, Tape.Millimetres, "A");

    private static void Same(Sequence<Piece> before, Sequence<Piece> after, Func<Point, Point> map, long slack)
    {
        // A piece no wider than a few steps comes and goes with the rounding of its corners.
        bool IsSure(Piece piece) => slack == 0 || (piece.Width.Steps > 4 && piece.Height.Steps > 4 && piece.Outline.DoubledArea > 8 * (piece.Width + piece.Height).Steps);
        var there = after.ToLookup(piece => piece.Cell);
        Assert.Equal(before.Count(IsSure), after.Count(IsSure));
        foreach (var piece in before.Where(IsSure))
        {
            var cell = Box.Around(piece.Cell.Corners().Select(map));
            Assert.Contains(there[cell], other => SameRing(piece.Outline, other.Outline, map, slack) && piece.Inner.Count == other.Inner.Count);
        }
    }

    private static bool SameRing(Ring ring, Ring other, Func<Point, Point> map, long slack)
    {
        var (mine, theirs) = (ring.Points.Select(map).ToList(), other.Points);
        if (slack == 0) return mine.Count == theirs.Count && mine.ToHashSet().SetEquals(theirs);
        var (one, two) = (Judge.Shape(new Ring(mine.ToSequence()), []), Judge.Shape(other, []));
        return one.SymmetricDifference(two).Area <= slack * (Judge.SlantedLength(one) + Judge.SlantedLength(two));
    }

    private static FinishedFace Mapped(FinishedFace face, Func<Point, Point> map, bool turnsOver)
    {
        Ring Map(Ring ring) => turnsOver ? new Ring(ring.Points.Select(map).ToSequence()).Reversed() : new(ring.Points.Select(map).ToSequence());
        var rings = new List<List<FieldEdge>>();
        List<FieldEdge> ring = [];
        foreach (var edge in face.Edges)
        {
            ring.Add(turnsOver ? edge with { From = map(edge.To), To = map(edge.From) } : edge with { From = map(edge.From), To = map(edge.To) });
            if (edge.To != (turnsOver ? face.Edges[rings.Sum(r => r.Count)].From : face.Edges[rings.Sum(r => r.Count)].From)) continue;
            if (turnsOver) ring.Reverse();
            rings.Add(ring);
            ring = [];
        }

        return face with
        {
            Outline = Map(face.Outline),
            Field = new(Map(face.Field.Outer), face.Field.Inner.Select(Map).ToSequence()),
            Edges = rings.SelectMany(r => r).ToSequence(),
        };
    }

    /// <summary>The bond with left and right exchanged; courses that go along from left to right now go from right to left.</summary>
    private static Bond InMirror(Bond bond) => bond.Lay == Lay.Level
        ? bond with
        {
            Lattice = bond.Lattice with { Second = bond.Lattice.Second with { Along = -bond.Lattice.Second.Along } },
            Motif = bond.Motif.Select(tile => BondTile.At(-tile.Cell.Left, tile.Cell.Bottom, tile.Cell.Width, tile.Cell.Height) with { Row = tile.Row }).ToSequence(),
        }
        : MirroredUpright(bond);

    /// <summary>Upright courses stand side by side: in the mirror the next course is the one before, which steps the other way.</summary>
    private static Bond MirroredUpright(Bond bond)
    {
        var second = bond.Lattice.Second with { Along = -bond.Lattice.Second.Along };
        // Two courses by turns are the same two the other way round.
        return bond with { Lattice = bond.Lattice with { Second = second } };
    }
}
