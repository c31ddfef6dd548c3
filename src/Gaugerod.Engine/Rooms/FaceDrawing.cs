using System.Globalization;
using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>Draws a face from what was measured, with the name, the place and the hand of each side.</summary>
internal static class FaceDrawing
{
    /// <summary>The face drawn; null when it has faults, which are then among the remarks.</summary>
    public static DrawnFace? Draw(NumberedFace numbered, Remarks remarks)
    {
        var (face, path) = (numbered.Face, Path("faces", numbered.Index));
        var before = remarks.Faults.Count;
        EdgeChecks.Check(face, path, remarks);
        var (outline, levelLine) = face.Shape switch
        {
            FaceShape.Read wall => Draw(face.Name, path, wall, remarks),
            FaceShape.Surveyed surveyed => Draw(face.Name, path, surveyed, remarks),
            FaceShape.Outline given => (Draw(face.Name, path, given, remarks), given.LevelLine == default ? null : given.LevelLine),
            _ => throw new ArgumentException("A face is given by readings or by its corners.", nameof(numbered)),
        };
        if (outline is not null && Heights(face).ToList() is { Count: > 0 } heights) outline = HeightsFollowed.Follow(outline, heights, face.Heights.Count > 0 ? path + ".beds" : path + ".readings.levelLine", remarks);
        if (outline is not null && face.Shape is FaceShape.Surveyed) face = face with { Holes = face.Holes.Select((hole, i) => AtSpot(hole, $"{path}.{Path("holes", i)}", remarks)).ToSequence() };
        var openings = face.Openings.Select((opening, i) => Draw(opening, $"{path}.{Path("openings", i)}", remarks)).ToList();
        for (var i = 0; i < face.Holes.Count; i++)
        {
            if (face.Holes[i].Diameter > default(Length)) continue;
            remarks.Refuse($"{path}.{Path("holes", i)}.diameter", remarks.Say(face.Holes[i].Diameter), "more than zero");
        }

        if (outline is not null && face.Shape is FaceShape.Read read) HeightChecks.Check(face.Name, path, read, remarks);
        else if (outline is not null && levelLine is { } line) HeightChecks.LevelLineBeside(face.Name, line, outline.Ring, remarks);
        if (outline is null || openings.Contains(null) || remarks.Faults.Count > before) return null;
        foreach (var opening in openings) OpeningChecks.LiesInside(opening!, outline, remarks);
        if (remarks.Faults.Count == before) RangeChecks.Check(face, path, remarks);
        return remarks.Faults.Count > before ? null : new(face, path, outline, openings.Select(o => o!).ToSequence(), levelLine);
    }

    /// <summary>The hole where its spot came to stand.</summary>
    private static Hole AtSpot(Hole hole, string path, Remarks remarks)
    {
        if (hole.Spot is not { } name) return hole;
        if (remarks.Surveys[^1].Corners.FirstOrDefault(spot => string.Equals(spot.Name, name, StringComparison.Ordinal)) is { } placed) return hole with { Centre = placed.Place };
        remarks.Refuse(path + ".spot", $"\"{name}\"", "a corner or a spot of this face's survey");
        return hole;
    }

    /// <summary>How high edges of a face really run: what lies on them before what was read under it.</summary>
    private static IEnumerable<EdgeHeights> Heights(Face face)
    {
        foreach (var on in face.Heights) yield return on;
        if (face.Shape is not FaceShape.Read { Readings: { LevelLine: { Between.Count: > 0 } line, Width: var width } } read) yield break;
        var floor = line.Between.Select(station => new Point(station.At, line.Left - station.Height));
        yield return new(read.Foot.Name, floor.Prepend(default).Append(new(width.Foot, line.Left - line.Right)).ToSequence());
    }

    private static DrawnRing? Draw(string name, string path, FaceShape.Outline given, Remarks remarks)
    {
        var edges = EdgeSpans.Of(given.Edges);
        var sides = given.Edges.Select((edge, i) => new Side(edge, edge.Name, Hand.Neither, $"{path}.{Path("edges", edges[i])}")).ToSequence();
        var ring = RingDrawing.Draw(name, path, given.Ring, sides, remarks);
        return ring is null ? null : Hands.Of(ring);
    }

    private static (DrawnRing? Outline, Length? LevelLine) Draw(string name, string path, FaceShape.Surveyed surveyed, Remarks remarks)
    {
        var survey = surveyed.Draw(new(name, path, remarks.Tape));
        remarks.Findings.AddRange(survey.Findings);
        remarks.Faults.AddRange(survey.Faults);
        if (survey is not { Outline: { } ring, Weighed: { } weighed }) return (null, null);
        remarks.Surveys.Add(weighed);
        return (Draw(name, path, new FaceShape.Outline(ring, surveyed.Edges, survey.LevelLine ?? Length.Zero), remarks), survey.LevelLine);
    }

    private static DrawnRing? Draw(Opening opening, string path, Remarks remarks)
    {
        var sides = opening.Edges.Select(edge => new Side(edge, $"{opening.Name}.{edge.Name}", Hand.Neither, $"{path}.edges.{edge.Name}")).ToSequence();
        return RingDrawing.Draw(opening.Name, path, opening.Ring, sides, remarks);
    }

    private static (DrawnRing? Outline, Length? LevelLine) Draw(string name, string path, FaceShape.Read read, Remarks remarks)
    {
        var boxes = read.Fixtures.Select(f => new SurveyBox(f.Name, f.AtHead, f.From, f.To, f.HeightLeft, f.HeightRight)).ToSequence();
        var survey = ReadingsToOutline.Draw(read.Readings, boxes, new(name, path, remarks.Tape));
        remarks.Findings.AddRange(survey.Findings);
        remarks.Faults.AddRange(survey.Faults);
        if (survey.Outline is not { } ring) return (null, null);
        var sides = survey.Sides.Select(tag => tag.Of switch
        {
            SideOf.Foot => new Side(read.Foot, read.Foot.Name, Hand.Neither, $"{path}.edges.foot"),
            SideOf.Right => new Side(read.Right, read.Right.Name, Hand.Right, $"{path}.edges.right"),
            SideOf.Head => new Side(read.Head, read.Head.Name, Hand.Neither, $"{path}.edges.head"),
            SideOf.Left => new Side(read.Left, read.Left.Name, Hand.Left, $"{path}.edges.left"),
            SideOf.BoxEdge => OfFixture(read.Fixtures[tag.Box].Edge, "", "edge", tag.Box),
            SideOf.BoxLeft => OfFixture(read.Fixtures[tag.Box].Side, ".left", "side", tag.Box),
            _ => OfFixture(read.Fixtures[tag.Box].Side, ".right", "side", tag.Box),
        });
        return (new(name, path, ring, sides.ToSequence()), survey.LevelLine);

        Side OfFixture(Edge edge, string which, string field, int box) =>
            new(edge, read.Fixtures[box].Name + which, Hand.Neither, $"{path}.{Path("fixtures", box)}.{field}");
    }

    private static string Path(string list, int index) => string.Create(CultureInfo.InvariantCulture, $"{list}[{index}]");
}
