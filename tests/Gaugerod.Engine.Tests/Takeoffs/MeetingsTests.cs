using CsCheck;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using NetTopologySuite.Geometries;
using Point = Gaugerod.Plane.Shapes.Point;

namespace Gaugerod.Engine.Tests.Takeoffs;

public sealed class MeetingsTests
{
    private const double Step = 3200;

    // By hand: three tiles wide and two high; two joints in either course, three between the courses, two crossings.
    [Fact]
    public void Six_tiles_in_a_grid_have_seven_joints_and_two_crossings()
    {
        var tiles = Enumerable.Range(0, 6).Select(i => Tile(i % 3 * 303, i / 3 * 303, 300, 300)).ToList();
        Assert.Equal(Enumerable.Repeat(300.0, 7), Meetings.Of(tiles, Mm(3)));
        Assert.Equal(2, Meetings.Crossings(Field(906, 603), tiles, Mm(3)));
        Assert.Equal(7, Meetings.Along(Meetings.Of(tiles, Mm(3)), Mm(300)));
        Assert.Equal(14, Meetings.Along(Meetings.Of(tiles, Mm(3)), Mm(299)));
    }

    // By hand: two whole tiles over a half, a whole and a half; 1 + 2 joints within the courses, four between them, three places where joints meet.
    [Fact]
    public void In_a_running_bond_every_tile_meets_two_of_the_next_course()
    {
        var tiles = new List<Piece> { Tile(0, 0, 600, 300), Tile(603, 0, 600, 300), Tile(0, 303, 298, 300), Tile(301, 303, 600, 300), Tile(904, 303, 299, 300) };
        var joints = Meetings.Of(tiles, Mm(3));
        Assert.Equal(7, joints.Count);
        Assert.Equal([298, 298, 299, 299, 300, 300, 300], joints.Order());
        Assert.Equal(3, Meetings.Crossings(Field(1203, 603), tiles, Mm(3)));
    }

    [Fact]
    public void Joints_between_two_pieces_of_random_rooms_are_as_many_and_as_long_as_NetTopologySuite_finds()
    {
        var held = 0;
        Gen.Select(RandomRooms.Any, Spot.Random).Each(
            (run, spot) =>
            {
                foreach (var face in run.Faces)
                {
                    var (x, y) = spot.On(face, run.Product);
                    var pieces = PieceCutter.Cut(FieldRings.Of(face), run.Laid, new(Length.FromSteps(x), Length.FromSteps(y), run.Joint), run.Product, Tape.Millimetres, "A");
                    if (run.Joint == Length.Zero || pieces.Count > 120) continue;
                    var found = Meetings.Of(pieces, run.Joint);
                    var theirs = Referee(pieces, run.Joint).ToList();

                    // What is about as long as a joint is wide may be taken for a crossing by one and for a joint by the other.
                    var doubtful = theirs.Count(length => Math.Abs(length - (run.Joint.Steps / Step)) < 0.5);
                    Assert.InRange(found.Count, theirs.Count(length => length > run.Joint.Steps / Step) - doubtful, theirs.Count(length => length > run.Joint.Steps / Step) + doubtful);
                    Assert.Equal(theirs.Where(length => length > run.Joint.Steps / Step).Sum(), found.Sum(), 1 + ((doubtful + 1) * run.Joint.Steps / Step));
                    if (theirs.Count > 0) Interlocked.Increment(ref held);
                }
            },
            iter: 60);

        // Faces without joints and those of too many pieces are left out: most are not.
        Assert.True(held >= 60, $"{held} faces were held");
    }

    // A strip as wide as the joint and a little more, pushed out from every side: what of another piece it covers, over that little: half a step, for a hair that is left beside a notch may be one step thick.
    private static IEnumerable<double> Referee(IReadOnlyList<Piece> pieces, Length joint)
    {
        const double Little = 0.5;
        var shapes = pieces.Select(piece => Judge.Shape(piece.Outline, [])).ToList();
        for (var i = 0; i < pieces.Count; i++)
        {
            for (var k = i + 1; k < pieces.Count; k++)
            {
                // Joints of a bond that is not turned stand level and upright; a slanting side is a cut.
                var sum = Sides(pieces[i].Outline).Where(side => side.From.X == side.To.X || side.From.Y == side.To.Y).Sum(side => Strip(side.From, side.To, joint.Steps + Little).Intersection(shapes[k]).Area / Little);
                if (sum > 0) yield return sum / Step;
            }
        }
    }

    private static IEnumerable<(Point From, Point To)> Sides(Ring ring) => ring.Points.Select((from, i) => (from, ring.Points[(i + 1) % ring.Points.Count]));

    private static Geometry Strip(Point from, Point to, double wide)
    {
        var (x, y) = ((double)(to.X - from.X).Steps, (double)(to.Y - from.Y).Steps);
        var length = Math.Sqrt((x * x) + (y * y));
        var (right, down) = (y / length * wide, -x / length * wide);
        Coordinate a = new(from.X.Steps, from.Y.Steps), b = new(to.X.Steps, to.Y.Steps);
        return Judge.Factory.CreatePolygon([a, b, new(b.X + right, b.Y + down), new(a.X + right, a.Y + down), a]);
    }

    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);

    private static Plane.Shapes.Polygon Field(long width, long height) => new(Rectangle(0, 0, width, height), []);

    private static Ring Rectangle(long x, long y, long width, long height) => new([new(Mm(x), Mm(y)), new(Mm(x + width), Mm(y)), new(Mm(x + width), Mm(y + height)), new(Mm(x), Mm(y + height))]);

    private static Piece Tile(long x, long y, long width, long height)
    {
        var outline = Rectangle(x, y, width, height);
        return new("A1", PieceKind.Full, "wall", 1, 1, "tile", outline.Bounds, outline, [], outline.Bounds.Width, []);
    }
}
