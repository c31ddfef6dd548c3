using Gaugerod.Engine.Surveys;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>Looks for heights that a wall hardly has: a level line above it, a fixture below its floor or above its ceiling.</summary>
internal static class HeightChecks
{
    /// <summary>Of a wall given by readings, once it could be drawn.</summary>
    public static void Check(string face, string path, FaceShape.Read read, Remarks remarks)
    {
        LevelLine(face, path, read, remarks);
        foreach (var fixture in read.Fixtures) Fixture(face, read.Readings, fixture, remarks);
    }

    /// <summary>Of a face given by its corners: its level line may run over or under it, but it is worth a word.</summary>
    public static void LevelLineBeside(string face, Length line, Ring outline, Remarks remarks)
    {
        var box = outline.Bounds;
        if (line <= box.Top && line >= box.Bottom) return;
        var over = line > box.Top;
        remarks.Find(
            FindingLevel.Note, "level-line", face,
            $"The level line runs {remarks.Say(over ? line - box.Top : box.Bottom - line)} {(over ? "above" : "below")} this face: measure from it with a staff or a tape held plumb.");
    }

    private static void LevelLine(string face, string path, FaceShape.Read read, Remarks remarks)
    {
        if (read.Readings is not { LevelLine: { } line, Height: var height }) return;
        foreach (var (name, at, top) in new[] { ("left", line.Left, height.Left), ("right", line.Right, height.Right ?? (height.Left - line.Left + line.Right)) })
        {
            if (at < top) continue;
            if (read.Head.Kind == EdgeKind.Ceiling)
            {
                remarks.Refuse(
                    $"{path}.readings.levelLine.{name}", LengthText.Finer(at, remarks.Tape), $"a level line under the ceiling, which is {LengthText.Finer(top, remarks.Tape)} high there",
                    "read it again; where the wall ends below the line, say what its head is: \"head\": { \"kind\": \"free\" }");
            }
            else
            {
                remarks.Find(
                    FindingLevel.Note, "level-line", face,
                    $"The level line runs {remarks.Say(at - top)} above the wall at its {name} end: measure from it with a staff or a tape held plumb.");
            }

            return;
        }
    }

    private static void Fixture(string face, FaceReadings readings, Fixture fixture, Remarks remarks)
    {
        var (width, floor) = (readings.Width.Foot, readings.LevelLine is { } line ? line.Left - line.Right : Length.Zero);
        var (left, right) = fixture.AtHead ? (readings.Height.Left, floor + (readings.Height.Right ?? (readings.Height.Left - floor))) : (Length.Zero, floor);
        var to = Length.Min(fixture.To ?? width, width);
        foreach (var (name, x, at) in new[] { ("left", Length.Max(fixture.From, Length.Zero), fixture.HeightLeft), ("right", to, fixture.HeightRight) })
        {
            var wall = Grid.Between(Length.Zero, left, width, right, x);
            var past = fixture.AtHead ? at - wall : wall - at;
            if (past <= remarks.Tape.Mark) continue;
            remarks.Find(
                FindingLevel.Warn, "fixture-height", face,
                $"'{fixture.Name}' ends {remarks.Say(past)} {(fixture.AtHead ? "above the ceiling" : "below the floor")} at its {name}: the tile runs {(fixture.AtHead ? "up" : "down")} to it. Read its height again unless {(fixture.AtHead ? "the ceiling is let up there" : "the floor is let down there")}.");
            return;
        }
    }
}
