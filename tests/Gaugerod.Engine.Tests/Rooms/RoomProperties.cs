using CsCheck;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using NetTopologySuite.Operation.Buffer;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rooms;

/// <summary>Random runs of three walls out of plumb and level, with a bath or a soffit and a window; nothing grows.</summary>
public sealed class RoomProperties
{
    private static readonly Gen<long> Slip = Gen.Long[-20, 20];

    private static readonly Gen<Edge> Side =
        from kind in Gen.Int[0, 2].Select(i => new[] { EdgeKind.InsideCorner, EdgeKind.Free, EdgeKind.Fixture }[i])
        from joint in Gen.Long[0, 6].Nullable()
        from trim in Gen.Long[0, 12]
        from cover in Gen.Long[0, 15].Nullable()
        select new Edge("", kind)
        {
            Joint = joint is { } j ? Mm(j) : null, Trim = kind == EdgeKind.Free ? Mm(trim) : Mm(0), Cover = cover is { } c ? Mm(c) : null,
        };

    private static readonly Gen<FaceReadings> Readings =
        from width in Gen.Long[1200, 4000]
        from top in Slip.Nullable()
        from middle in Slip.Nullable()
        from level in Slip
        from left in Slip.Nullable()
        from right in Slip.Nullable()
        select Wall(
            Mm(width), Mm(2400), middle is { } m ? Mm(width + m) : null, top is { } t ? Mm(width + t) : null, level: (Mm(1000), Mm(1000 + level)),
            leanLeft: left is { } l ? Mm(l) : null, leanRight: right is { } r ? Mm(r) : null);

    private static readonly Gen<Face> Faces =
        from readings in Readings
        from sides in Side.Array[4]
        from fixture in Gen.Int[0, 3]
        from height in Gen.Long[100, 500]
        from window in Gen.Select(Gen.Long[300, 500], Gen.Long[1000, 1200], Gen.Long[100, 400])
        select Read(
            "wall", foot: Floor with { Cover = sides[0].Cover }, right: sides[1] with { Name = "right" }, head: Ceiling with { Joint = sides[2].Joint },
            left: sides[3] with { Name = "left" }, readings: readings,
            fixtures: fixture switch { 0 => [], 1 => [Box("bath", 0, 700, height)], 2 => [Box("bench", 300, 800, height), Box("bath", 800, null, height + 50)], _ => [Box("soffit", 500, null, 2400 - height, true)] },
            openings: [Window("window", window.Item1, window.Item2, window.Item1 + window.Item3, window.Item2 + window.Item3)]);

    private static readonly Gen<Face[]> Runs = Faces.Array[3].Select(faces => faces.Select((f, i) => f with { Name = $"wall {i}" }).ToArray());

    [Fact]
    public void Where_nothing_grows_the_field_lies_inside_the_outline_and_is_a_sound_shape() => Runs.Each(faces =>
    {
        foreach (var face in Sound(Finish(faces)))
        {
            var (field, outline) = (Referee.Shape(face.Field), Referee.Shape(face.Outline));
            Assert.True(field.IsValid);
            Assert.Equal((double)face.Field.DoubledArea / 2, field.Area, tolerance: outline.Area * 1e-12);

            // A slanted side that takes nothing may be rounded out by a step.
            Assert.True(outline.Buffer(1).Contains(field));
        }
    });

    [Fact]
    public void Where_all_edges_take_alike_the_field_is_what_the_referee_leaves_of_the_outline() =>
        Gen.Select(Faces, Gen.Long[1, 40_000]).Each((face, take) =>
        {
            var read = (FaceShape.Read)face.Shape;
            Edge Alike(string name) => new(name, EdgeKind.Fixture) { Joint = Length.FromSteps(take) };
            var finished = One(face with
            {
                Shape = read with
                {
                    Foot = Alike("foot"), Right = Alike("right"), Head = Alike("head"), Left = Alike("left"),
                    Fixtures = read.Fixtures.Select(f => f with { Edge = Alike("edge"), Side = Alike("side") }).ToSequence(),
                },
            });
            var squareJoins = new BufferParameters(8, EndCapStyle.Flat, JoinStyle.Mitre, 5);
            var outline = Referee.Shape(finished.Outline);
            var expected = outline.Buffer(-take, squareJoins);
            var field = Referee.Shape(finished.Field.Outer);

            // Each corner is rounded by half a step at most, so each side sweeps less than one step along its length. The
            // referee itself takes two corners nearer than a thousandth of the distance for one (its
            // OFFSET_SEGMENT_SEPARATION_FACTOR), as happens at the gentle bend of a wall read at its middle too.
            var bent = read.Readings.Width.Middle is not null;
            Assert.InRange(field.SymmetricDifference(expected).Area, 0, outline.Length * (bent ? 1 + (take * 1e-3) : 1));
        });

    [Fact]
    public void Every_side_of_the_field_has_a_name_and_runs_with_the_tile_to_its_left() => Runs.Each(faces =>
    {
        foreach (var face in Sound(Finish(faces)))
        {
            Int128 doubled = 0;
            foreach (var e in face.Edges)
            {
                Assert.NotEqual(e.From, e.To);
                Assert.NotEqual("", e.Name);
                doubled += ((Int128)e.From.X.Steps * e.To.Y.Steps) - ((Int128)e.From.Y.Steps * e.To.X.Steps);
            }

            Assert.Equal(face.Field.DoubledArea, doubled);
        }
    });

    [Fact]
    public void The_same_faces_give_the_same_fields() => Runs.Each(faces =>
    {
        var (one, other) = (Finish(faces), Finish(faces));
        Assert.Equal(one.Faces, other.Faces);
        Assert.Equal(one.Findings, other.Findings);
    });

    [Fact]
    public void The_mirror_image_of_a_wall_has_the_mirror_image_of_its_field_to_a_step_of_the_grid() => Faces.Each(face =>
    {
        var read = (FaceShape.Read)face.Shape;
        var (readings, width) = (read.Readings, read.Readings.Width.Foot);
        var line = readings.LevelLine!;
        var down = line.Left - line.Right;
        var mirrored = face with
        {
            Shape = read with
            {
                Readings = readings with
                {
                    Height = new(readings.Height.Left - down, readings.Height.Left),
                    LevelLine = new(line.Right, line.Left),
                    Lean = new(readings.Lean.Right, readings.Lean.Left),
                },
                Left = read.Right with { Name = "left" },
                Right = read.Left with { Name = "right" },
                Fixtures = read.Fixtures.Select(f => f with
                {
                    From = width - (f.To ?? width), To = width - f.From, HeightLeft = f.HeightRight - down, HeightRight = f.HeightLeft - down,
                }).ToSequence(),
            },
            Openings = face.Openings.Select(o => o with
            {
                Ring = new Ring(o.Ring.Points.Select(p => new Point(width - p.X, p.Y - down)).ToSequence()),
            }).ToSequence(),
        };
        var (field, other) = (One(face).Field, One(mirrored).Field);

        AreMirrored(field.Outer, other.Outer, width, down);
        AreMirrored(field.Inner[0], other.Inner[0], width, down);
    });

    private static void AreMirrored(Ring one, Ring other, Length width, Length down)
    {
        Assert.Equal(one.Points.Count, other.Points.Count);
        foreach (var p in one.Points)
        {
            Assert.Contains(other.Points, q => (width - p.X - q.X).Abs().Steps <= Rounding && (p.Y - down - q.Y).Abs().Steps <= Rounding);
        }
    }

    /// <summary>Once where the survey meets the grid, once where the field does.</summary>
    private const int Rounding = 2;
}
