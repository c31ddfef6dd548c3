using CsCheck;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using NetTopologySuite.Geometries;
using Point = Gaugerod.Plane.Shapes.Point;
using Polygon = NetTopologySuite.Geometries.Polygon;

namespace Gaugerod.Engine.Tests.Pieces;

/// <summary>
/// The same room stood elsewhere or turned has the same pieces, moved or turned; a room divided by a line has as much tile in
/// its two parts as in one. Holes are drawn round from their own right, so a turned hole has other corners: where the
/// room is turned they are left out.
/// </summary>
public sealed class TurnedRoomsTests
{
    [Fact]
    public void Room_and_bond_moved_together_move_the_pieces() => Gen.Select(RandomFields.Any, Gen.Long[-900_000, 900_000], Gen.Long[-900_000, 900_000]).Each(
        (on, along, across) =>
        {
            // Whole steps as the bond lies; on the face whole steps too only where the bond stands square.
            var square = Of(on.Face, on, Angle.FromThousandths(on.Turn.Thousandths / Angle.QuarterTurn * Angle.QuarterTurn), on.U, on.V);
            var by = Heading.Of(square.Turn).Turn(Point.FromSteps(along, across));
            Point Moved(Point p) => p.Moved(by.X, by.Y);
            var moved = Of(Mapped(square.Face, Moved), square, square.Turn, square.U + along, square.V + across);
            Assert.Equal(Outlines(square.Pieces(), Moved), Outlines(moved.Pieces(), p => p));
            Assert.Equal(square.Pieces().Select(piece => piece.Id), moved.Pieces().Select(piece => piece.Id));
        },
        iter: 300);

    [Fact]
    public void A_placing_a_repeat_further_on_lays_the_same_pieces() => Gen.Select(RandomFields.Any, Gen.Int[-2, 2], Gen.Int[-2, 2]).Each(
        (on, first, second) =>
        {
            var (a, b) = (on.Given.Bond.Lattice.First, on.Given.Bond.Lattice.Second);
            var other = on with
            {
                U = on.U + (a.Along.Steps * first) + (b.Along.Steps * second),
                V = on.V + (a.Across.Steps * first) + (b.Across.Steps * second),
            };
            Assert.Equal(Outlines(on.Pieces(), p => p), Outlines(other.Pieces(), p => p));
        },
        iter: 300);

    [Fact]
    public void Room_and_bond_turned_by_a_quarter_turn_the_pieces() => RandomFields.Any.Each(
        given =>
        {
            var on = Of(given.Face with { Holes = [], Unrolled = default, Raised = default }, given, given.Turn, given.U, given.V);
            static Point Turned(Point p) => new(-p.Y, p.X);
            var other = Of(Mapped(on.Face, Turned), on, on.Turn + Angle.FromDegrees(90), on.U, on.V);

            // As the bond lies nothing has changed; what comes back to the face from just between two steps may come a step apart.
            Assert.Equal(Frames(on.Pieces()), Frames(other.Pieces()));
            var there = other.Pieces().ToLookup(piece => piece.Frame!.Outline);
            foreach (var piece in on.Pieces())
            {
                Assert.Contains(there[piece.Frame!.Outline], match => match.Outline.Points.Zip(piece.Outline.Points.Select(Turned)).All(pair =>
                    (pair.First.X - pair.Second.X).Abs().Steps <= 1 && (pair.First.Y - pair.Second.Y).Abs().Steps <= 1));
            }
        },
        iter: 300);

    [Fact]
    public void A_room_divided_by_a_line_has_as_much_tile_in_its_parts() => Gen.Select(RandomFields.Any, Gen.Double[0, Math.PI], Gen.Double[0.2, 0.8]).Each(
        (given, angle, part) =>
        {
            var on = Of(given.Face with { Holes = [] }, given, given.Turn, given.U, given.V);
            var (field, length) = (Judge.Shape(on.Face.Field.Outer, on.Face.Field.Inner), 0.0);
            var whole = Area(on, ref length);
            var parts = 0.0;
            foreach (var half in Halves(field, angle, part))
            {
                var shared = half.Intersection(field);
                for (var i = 0; i < shared.NumGeometries; i++)
                {
                    if (shared.GetGeometryN(i) is not Polygon { Area: > 1e6 } side) continue;
                    var face = RandomFields.Of(new(RingOf(side.ExteriorRing), side.InteriorRings.Select(RingOf).ToSequence()));
                    parts += Area(Of(face with { Unrolled = on.Face.Unrolled, Raised = on.Face.Raised }, on, on.Turn, on.U, on.V), ref length);
                }
            }

            Assert.InRange(parts - whole, -length, length);
        },
        iter: 300);

    /// <summary>The area of all pieces; and what may be missed of it: a hair along the field's sides, and three steps around pieces that are cut.</summary>
    private static double Area(BondOnFace on, ref double missed)
    {
        var pieces = on.Pieces();
        var field = Judge.Shape(on.Face.Field.Outer, on.Face.Field.Inner);
        missed += (field.Length * PatternCutter.Hair) + pieces.Where(piece => piece.Kind != PieceKind.Full).Sum(piece => 3 * Judge.Shape(piece.Outline, piece.Inner).Length);
        return pieces.Sum(piece => Judge.Shape(piece.Outline, piece.Inner).Area);
    }

    /// <summary>The plane, as far as it matters, on either side of a line through a place in the field's box.</summary>
    private static IEnumerable<Polygon> Halves(Geometry field, double angle, double part)
    {
        var box = field.EnvelopeInternal;
        var (x, y, far) = (box.MinX + (box.Width * part), box.MinY + (box.Height * part), 10 * (box.Width + box.Height));
        var (dx, dy) = (Math.Cos(angle) * far, Math.Sin(angle) * far);
        Coordinate one = new(x - dx, y - dy), other = new(x + dx, y + dy);
        foreach (var way in new[] { 1, -1 })
        {
            yield return Judge.Factory.CreatePolygon(
                [one, other, new(other.X - (dy * way), other.Y + (dx * way)), new(one.X - (dy * way), one.Y + (dx * way)), one]);
        }
    }

    private static Ring RingOf(LineString line) =>
        new Ring(line.Coordinates.Skip(1).Select(c => Point.FromSteps((long)Math.Round(c.X), (long)Math.Round(c.Y))).ToSequence()).CounterClockwise();

    private static BondOnFace Of(FinishedFace face, BondOnFace like, Angle turn, long u, long v) => new(face, like.Given, turn, u, v);

    private static List<string> Outlines(Sequence<Piece> pieces, Func<Point, Point> map) =>
        [.. pieces.Select(piece => $"{piece.Product} {piece.Kind} {Said(piece.Outline, map)} {string.Join(' ', piece.Inner.Select(hole => Said(hole, map)))}").Order(StringComparer.Ordinal)];

    private static List<string> Frames(Sequence<Piece> pieces) =>
        [.. pieces.Select(piece => $"{piece.Kind} {piece.Smallest} {piece.Course} {Said(piece.Frame!.Tile, p => p)} {Said(piece.Frame.Outline, p => p)}").Order(StringComparer.Ordinal)];

    private static string Said(Ring ring, Func<Point, Point> map) => string.Join(' ', ring.Points.Select(map).Select(p => $"{p.X.Steps},{p.Y.Steps}"));

    private static FinishedFace Mapped(FinishedFace face, Func<Point, Point> map)
    {
        Ring Map(Ring ring) => new(ring.Points.Select(map).ToSequence());
        return face with
        {
            Outline = Map(face.Outline),
            Field = new(Map(face.Field.Outer), face.Field.Inner.Select(Map).ToSequence()),
            Edges = face.Edges.Select(edge => edge with { From = map(edge.From), To = map(edge.To) }).ToSequence(),
            Holes = face.Holes.Select(hole => hole with { Centre = map(hole.Centre) }).ToSequence(),
        };
    }
}
