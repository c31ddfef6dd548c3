using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;

namespace Gaugerod.Engine.Tests.Boards;

/// <summary>What is cut and screwed, against another library's areas and lines.</summary>
public sealed class BoardPiecesTests
{
    [Fact]
    public void Pieces_gaps_and_openings_make_up_the_face() => RandomWalls.Of(5000, 2700).EachBoarded(
        (wall, task) =>
        {
            var (field, face) = (SeamSearchTests.Field(task), Boarding.Planned(task));
            var pieces = face.Pieces.Select(piece => (Geometry)Referee.Shape(piece.Shape)).ToList();
            var (before, after) = (task.Sheet(face.Lay).Before, task.Sheet(face.Lay).After);
            var gaps = face.Seams.Select(seam => new GeometryFactory().ToGeometry(seam.From.X == seam.To.X
                ? new Envelope(seam.From.X.Steps - before, seam.From.X.Steps + after, seam.From.Y.Steps - after, seam.To.Y.Steps + after)
                : new Envelope(seam.From.X.Steps - after, seam.To.X.Steps + after, seam.From.Y.Steps - before, seam.From.Y.Steps + after))).ToList();
            var covered = UnaryUnionOp.Union([.. pieces, .. gaps.Where(gap => gap.Area > 0)]).Intersection(field);
            var all = pieces.Sum(piece => piece.Area);

            // Square steps; a gap's end at a raking head is out by a sliver.
            Assert.Equal(field.Area, covered.Area, 1e-6 * field.Area);
            Assert.Equal(all, UnaryUnionOp.Union(pieces).Area, 1e-9 * all);
            Assert.Equal(all, UnaryUnionOp.Union(pieces).Intersection(field).Area, 1e-7 * all);
            Assert.Equal(all / 3200 / 3200, face.Area, 1e-6 * face.Area);
            Assert.All(face.Pieces, piece => Assert.True(piece.Along <= wall.Board.Length && piece.Across <= wall.Board.Width));
        },
        iter: 150);

    [Fact]
    public void Seams_are_as_long_as_their_lines_on_the_board() => RandomWalls.Of(5000, 2700).EachBoarded(
        (wall, task) =>
        {
            var (field, face) = (SeamSearchTests.Field(task), Boarding.Planned(task));
            var lines = face.Seams.Select(seam => (Geometry)new LineString([new(seam.From.X.Steps + 0.25, seam.From.Y.Steps), new(seam.To.X.Steps + 0.25, seam.To.Y.Steps)])).ToList();
            Assert.Equal(lines.Sum(line => line.Length), face.SeamLength.Steps, 1.0);
            Assert.Equal(lines.Sum(line => line.Intersection(field).Length), face.SeamLength.Steps, 2.0 * face.Seams.Count);

            // Every row's top but the highest is a seam all along.
            var levels = face.Seams.Where(seam => seam.From.Y == seam.To.Y).GroupBy(seam => seam.From.Y.Steps);
            foreach (var level in levels)
            {
                var whole = field.Intersection(new LineString([new(-1e9, level.Key + 0.25), new(1e9, level.Key + 0.25)]));
                Assert.Equal(whole.Length, level.Sum(seam => seam.Length.Steps), 4.0);
            }
        },
        iter: 100);

    [Fact]
    public void Every_stud_behind_a_piece_is_screwed_as_close_as_asked_and_nothing_else_is() => RandomWalls.Of(4000, 2700).EachBoarded(
        (wall, task) =>
        {
            var face = Boarding.Planned(task);
            var (apart, inset, half) = ((double)wall.Board.ScrewsApart.Steps, (double)wall.Board.Inset.Steps, wall.Face.Board!.Studs!.Width.Steps / 2.0);
            foreach (var piece in face.Pieces)
            {
                var (shape, outline) = (Referee.Shape(piece.Shape), Referee.Shape(piece.Shape).Boundary);
                var screws = piece.Screws.Select(at => new Point(at.X.Steps, at.Y.Steps)).ToList();
                Assert.All(screws, screw => Assert.True(shape.Covers(screw) && outline.Distance(screw) > (inset / 2) - 2, $"{piece.Id}"));
                for (var i = 0; i < screws.Count; i++) Assert.All(screws.Take(i), other => Assert.True(other.Distance(screws[i]) > inset - 2, $"{piece.Id}"));
                foreach (var stud in face.Studs)
                {
                    // Walked up in steps of 10 mm, wherever the stud lies behind the piece and off its edges.
                    for (var y = shape.EnvelopeInternal.MinY; y < shape.EnvelopeInternal.MaxY; y += 32000)
                    {
                        var place = new Point(stud.Steps, y);
                        if (!shape.Covers(place) || outline.Distance(place) < inset + half) continue;
                        Assert.True(screws.Exists(screw => Math.Abs(screw.X - stud.Steps) <= half && Math.Abs(screw.Y - y) <= (apart / 2) + inset + 1), $"{piece.Id} has no screw near {place}");
                    }
                }
            }
        },
        iter: 100);
}
