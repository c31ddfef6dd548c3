using System.Globalization;
using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>Stands walls on the beds of their floors: the edges that were said to follow one run as high as it does.</summary>
internal static class WallsOnBeds
{
    // A floor's edge and the wall over it are read apart; what lies further beyond the bed is told.
    private static readonly Length Beyond = Length.FromMillimetres(15);

    /// <summary>The job with its walls where their beds bring them.</summary>
    /// <param name="job">The job as read.</param>
    /// <param name="bases">Its beds.</param>
    /// <param name="faults">Takes beds and edges that there are not.</param>
    /// <param name="findings">Takes what is worth a word.</param>
    public static Job Stood(Job job, JobBases bases, List<Fault> faults, List<Finding> findings)
    {
        if (job.Faces.All(face => face.Beds.Count == 0)) return job;
        return job with { Faces = job.Faces.Select((face, i) => face.Beds.Count == 0 ? face : Stood(job, i, bases, faults, findings)).ToSequence() };
    }

    private static Face Stood(Job job, int index, JobBases bases, List<Fault> faults, List<Finding> findings)
    {
        var (face, heights) = (job.Faces[index], new List<EdgeHeights>());
        if (FaceDrawing.Draw(new(index, face with { Heights = [] }), new(job.Tape)) is not { } drawn) return face;
        for (var k = 0; k < face.Beds.Count; k++)
        {
            var on = face.Beds[k];
            var path = string.Create(CultureInfo.InvariantCulture, $"faces[{index}].beds[{k}]");
            var sides = Sides(drawn, on.Side);
            if (sides.Count == 0)
            {
                faults.Add(NoSuch(path + ".side", on.Side, $"an edge of {face.Name} that lies level, with tile above it", Level(drawn)));
                continue;
            }

            if (bases.Beds.FirstOrDefault(bed => string.Equals(bed.Face, on.Floor, StringComparison.Ordinal)) is not { } floor)
            {
                // What is wrong with a bed it says itself.
                if (job.Faces.FirstOrDefault(other => string.Equals(other.Name, on.Floor, StringComparison.Ordinal))?.Falls?.Bed is null)
                {
                    faults.Add(NoSuch(path + ".floor", on.Floor, "a floor of this job with a bed", [.. job.Faces.Where(other => other.Falls?.Bed is not null).Select(other => other.Name)]));
                }

                continue;
            }

            if (floor.Edges.FirstOrDefault(edge => string.Equals(edge.Name, on.Edge, StringComparison.Ordinal)) is not { } edge)
            {
                faults.Add(NoSuch(path + ".edge", on.Edge, $"a straight edge of {floor.Face}", [.. floor.Edges.Select(edge => edge.Name)]));
                continue;
            }

            var line = Line(on, floor, edge, sides, face);
            heights.Add(line);
            findings.AddRange(Off(job, face, on, line, sides));
        }

        return face with { Heights = heights.ToSequence() };
    }

    /// <summary>The edge's line on the face. Seen from the room the floor's edge, which has the floor to its left, runs from right to left.</summary>
    private static EdgeHeights Line(OnBed on, Bed bed, BedEdge edge, List<(Point From, Point To)> sides, Face face)
    {
        var (from, length) = (on.From ?? sides[0].From.X, edge.Line[^1].X);
        var lowest = on.Lowest ?? (IsFixture(face, on.Side) ? sides.Min(side => Length.Min(side.From.Y, side.To.Y)) : bed.Least);
        return new(on.Side, edge.Line.Reverse().Select(at => new Point(from + length - at.X, lowest + at.Y)).ToSequence());
    }

    private static IEnumerable<Finding> Off(Job job, Face face, OnBed on, EdgeHeights line, List<(Point From, Point To)> sides)
    {
        var covered = sides.Where(side => line.Covers(side.From.X, side.To.X)).ToList();
        var beyond = covered.Count == 0 ? Length.Zero : Length.Max(line.Line[0].X - covered.Min(side => side.From.X), covered.Max(side => side.To.X) - line.Line[^1].X);
        if (covered.Count == 0) yield return Warn($"{on.Side} does not stand along {on.Edge} of {on.Floor}: it is left as it was read.");
        else if (beyond > Beyond) yield return Warn($"{on.Side} reaches {LengthText.Nearest(beyond, job.Tape)} beyond {on.Edge} of {on.Floor}. There it is taken as high as the bed is at its end.");

        Finding Warn(string text) => new(FindingLevel.Warn, "bed", face.Name, text, "", "", Remarks.NoSource);
    }

    private static Fault NoSuch(string path, string found, string expected, IReadOnlyList<string> known) => new(
        path, $"\"{found}\"", known.Count == 0 ? $"{expected}, of which there is none" : $"{expected}: {string.Join(", ", known.Select(name => $"\"{name}\""))}", known.Count == 1 ? $"\"{known[0]}\"" : null)
    {
        Mends = known.Count == 1 ? [Mend.Of(path, known[0])] : [],
    };

    private static bool IsFixture(Face face, string side) => face.Shape is FaceShape.Read read && read.Fixtures.Any(fixture => string.Equals(fixture.Name, side, StringComparison.Ordinal));

    private static List<(Point From, Point To)> Sides(DrawnFace drawn, string name) =>
        [.. All(drawn).Where(side => string.Equals(side.Name, name, StringComparison.Ordinal)).Select(side => (side.From, side.To)).OrderBy(side => side.From.X)];

    private static List<string> Level(DrawnFace drawn) => [.. All(drawn).Select(side => side.Name).Distinct(StringComparer.Ordinal)];

    private static IEnumerable<(string Name, Point From, Point To)> All(DrawnFace drawn)
    {
        var (points, n) = (drawn.Outline.Ring.Points, drawn.Outline.Sides.Count);
        return Enumerable.Range(0, n).Select(i => (drawn.Outline.Sides[i].Name, points[i], points[(i + 1) % n])).Where(side => side.Item3.X - side.Item2.X > (side.Item3.Y - side.Item2.Y).Abs());
    }
}
