using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Planning;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rules;

/// <summary>
/// Source: the wall itself. A side of a piece is at a joint where another piece lies beyond it, and shows where nothing does and the
/// edge there is open; then the piece is laid in its tile in every corner and along every side, and one looks whether all those sides are the tile's.
/// </summary>
public sealed class OpenEdgesAgainstTryingTests
{
    private static readonly Length s_hair = Length.FromSteps(Length.StepsPerMillimetre / 10);

    private static readonly Gen<Job> s_walls =
        from single in Gen.Bool
        from size in Gen.Select(Gen.Int[120, 2300], Gen.Int[100, single ? 195 : 1500])
        from open in Gen.Bool.Array[4]
        from window in Gen.Select(Gen.Bool, Gen.Bool.Array[4])
        from running in Gen.Bool
        select Wall(size.Item1, size.Item2, open, window.Item1 ? window.Item2 : null, running);

    [Fact]
    public void Those_pieces_are_named_that_no_place_in_the_tile_gives_and_no_others()
    {
        var (none, other) = (0, 0);
        s_walls.Each(job =>
        {
            if (JobCheck.Check(job).Count > 0) return;
            var plan = Planner.Plan(job);
            var pieces = plan.Runs[0].Faces[0].Pieces;
            var (notHad, turned) = (Named(plan, "no tile gives"), Named(plan, "need not"));
            foreach (var piece in pieces)
            {
                var sides = Sides(job.Faces[0], piece, pieces);
                var sawn = sides.Exists(side => side.Shows && !side.Own);
                var given = sawn && piece.Outline.Points.Count == 4 && Given(piece, sides);
                Assert.True(notHad.Contains(piece.Id) == (sawn && !given), $"{piece.Id}, {piece.Width.Millimetres} by {piece.Height.Millimetres} mm at {piece.Outline.Bounds.Left.Millimetres}, {piece.Outline.Bounds.Bottom.Millimetres}, is {(sawn ? given ? "given another way" : "given by no tile" : "not seen sawn")}: {string.Join(" ", sides)}");
                Assert.True(turned.Contains(piece.Id) == given, $"{piece.Id} is {(given ? "" : "not ")}given another way");
                if (given) Interlocked.Increment(ref other);
                else if (sawn) Interlocked.Increment(ref none);
            }
        }, iter: 150);
        Assert.True(none > 100 && other > 100, $"{none} given by no tile, {other} another way");
    }

    private static HashSet<string> Named(Plan plan, string words) => plan.Findings
        .Where(finding => finding.Rule == "open-edge" && finding.Text.Contains(words, StringComparison.Ordinal))
        .SelectMany(finding => finding.Text[..finding.Text.IndexOf(" show", StringComparison.Ordinal)].Split(", ")).ToHashSet(StringComparer.Ordinal);

    // Each side of the outline: which way it looks, whether it must be the tile's, whether it is, and whether it shows.
    private static List<(int X, int Y, bool Must, bool Own, bool Shows)> Sides(Face face, Piece piece, Sequence<Piece> pieces)
    {
        var sides = new List<(int, int, bool, bool, bool)>();
        var points = piece.Outline.Points;
        for (var i = 0; i < points.Count; i++)
        {
            var (a, b) = (points[i], points[(i + 1) % points.Count]);
            var (x, y) = (Math.Sign((b.Y - a.Y).Steps), -Math.Sign((b.X - a.X).Steps));
            var off = x < 0 ? a.X - piece.Cell.Left : x > 0 ? piece.Cell.Right - a.X : y < 0 ? a.Y - piece.Cell.Bottom : piece.Cell.Top - a.Y;

            // Just beyond a joint, so that a sliver is met too.
            var over = Mm(2) + Length.FromSteps(2);
            var beyond = Enumerable.Range(1, 9).Select(k => new Point(a.X + Part(b.X - a.X, k) + (over * x), a.Y + Part(b.Y - a.Y, k) + (over * y)));
            var joint = beyond.Any(at => pieces.Any(next => Holds(next.Outline, at)));
            var shows = !joint && Edge(face, Middle(a, b), x, y).Kind == EdgeKind.Free;
            sides.Add((x, y, joint || shows, off <= s_hair, shows));
        }

        return sides;
    }

    // Sides are level and plumb: as many of them to the left of a place inside as not is odd.
    private static bool Holds(Ring ring, Point at) => Enumerable.Range(0, ring.Points.Count).Count(i =>
        ring.Points[i] is var a && ring.Points[(i + 1) % ring.Points.Count] is var b && a.X == b.X && a.X < at.X && (a.Y > at.Y) != (b.Y > at.Y)) % 2 == 1;

    private static Length Part(Length whole, int tenths) => Length.FromSteps(whole.Steps * tenths / 10);

    private static Point Middle(Point a, Point b) => new(a.X + Part(b.X - a.X, 5), a.Y + Part(b.Y - a.Y, 5));

    private static Edge Edge(Face face, Point at, int x, int y)
    {
        if (face.Openings.Count > 0 && face.Openings[0].Ring.Bounds is var hole
            && at.X >= hole.Left - Mm(6) && at.X <= hole.Right + Mm(6) && at.Y >= hole.Bottom - Mm(6) && at.Y <= hole.Top + Mm(6))
        {
            // The tile on the opening's left looks right.
            return face.Openings[0].Edges[x > 0 ? 3 : x < 0 ? 1 : y > 0 ? 0 : 2];
        }

        var shape = (FaceShape.Read)face.Shape;
        return x > 0 ? shape.Right : x < 0 ? shape.Left : y > 0 ? shape.Head : shape.Foot;
    }

    private static bool Given(Piece piece, List<(int X, int Y, bool Must, bool Own, bool Shows)> sides)
    {
        var (room, tall) = (piece.Cell.Width - piece.Width, piece.Cell.Height - piece.Height);
        foreach (var right in new[] { Length.Zero, room, Length.FromSteps(room.Steps / 2) })
        {
            foreach (var up in new[] { Length.Zero, tall, Length.FromSteps(tall.Steps / 2) })
            {
                if (sides.TrueForAll(side => !side.Must || (side.X < 0 ? right : side.X > 0 ? room - right : side.Y < 0 ? up : tall - up) <= s_hair)) return true;
            }
        }

        return false;
    }

    private static Job Wall(int width, int height, bool[] open, bool[]? window, bool running)
    {
        BondRequest bond = running ? new BondRequest.Running(Lay.Level, 1, 2, Stepping.BackAndForth) : new BondRequest.Grid(Lay.Level);
        Edge Or(bool free, Edge edge) => free ? edge with { Kind = EdgeKind.Free } : edge;
        Sequence<Opening> openings = window is null ? [] :
        [
            new("hatch", RingMm((width / 3, height / 3), (width * 2 / 3, height / 3), (width * 2 / 3, height * 2 / 3), (width / 3, height * 2 / 3)),
                [.. new[] { "bottom", "right", "top", "left" }.Select((name, i) => Or(window[i], new(name, EdgeKind.Fixture)))]),
        ];
        var job = OneWall.Job(Mm(width), Mm(height), Mm(3), Mm(300), JointRange.Only(Mm(2)), Tape.Millimetres, openings: openings, bond: bond, depth: Mm(200));
        var shape = (FaceShape.Read)job.Faces[0].Shape;
        shape = shape with { Foot = Or(open[0], shape.Foot), Right = Or(open[1], shape.Right), Head = Or(open[2], shape.Head), Left = Or(open[3], shape.Left) };
        return job with { Faces = [job.Faces[0] with { Shape = shape }] };
    }
}
