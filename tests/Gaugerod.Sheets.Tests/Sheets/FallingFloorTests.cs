using System.Text;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>A bathroom floor, invented, 2600 by 1900 mm, that falls to a drain over four folds: one pattern runs over all of its planes, and is set out as one.</summary>
public sealed class FallingFloorTests
{
    private static readonly Figures s_figures = new(Tape.Millimetres);
    private static readonly Plan s_hexagons = Planned("hexagon", 600, "692.8", "tile");
    private static readonly Plan s_squares = Planned("grid", 197, "197", "joint");

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_first_tile_stands_where_its_two_lines_cross_and_those_run_over_the_whole_floor(bool hexagons)
    {
        var run = (hexagons ? s_hexagons : s_squares).Runs[0];
        Assert.Equal(["bath floor", "bath floor"], run.Lines.Select(line => line.Face));
        var (level, plumb) = (run.Lines.Single(line => line.Axis == Axis.Level), run.Lines.Single(line => line.Axis == Axis.Plumb));
        var first = Assert.Single(FirstTile.All(run, s_figures));
        Assert.StartsWith("On bath floor: where", first.Words, StringComparison.Ordinal);
        Assert.Equal(PieceKind.Full, first.Piece!.Kind);
        var box = first.Piece.Outline.Bounds;
        // A hexagon is set by its middle, a square by its lower left corner; the lattice comes back to the grid within two steps.
        var (x, y) = hexagons ? ((box.Left + box.Right).Steps / 2, (box.Bottom + box.Top).Steps / 2) : (box.Left.Steps, box.Bottom.Steps);
        Assert.InRange(x - plumb.At.Steps, -2, 2);
        Assert.InRange(y - level.At.Steps, -2, 2);

        // 2600 by 1900 bare: the snapped lines go from wall to wall.
        var drawn = JobSheets.Pages(hexagons ? s_hexagons : s_squares)[0];
        var lines = drawn.Marks.OfType<Mark.Line>().Where(mark => mark.Stroke == Stroke.SnapLine).Select(mark => (Across: Math.Abs(mark.Spots[1].X - mark.Spots[0].X), Up: Math.Abs(mark.Spots[1].Y - mark.Spots[0].Y))).ToList();
        Assert.Equal(2, lines.Count);
        Assert.Equal(2600.0 / 1900, lines.Max(line => line.Across) / lines.Max(line => line.Up), 3);
        Assert.Equal(1, drawn.Marks.OfType<Mark.Text>().Count(text => text.Words == "first tile"));
    }

    /// <summary>A square every 200 mm from wall to wall, whatever folds lie between: 13 marks across 2594 mm, or 12, and nine or ten up.</summary>
    [Fact]
    public void A_rod_carries_the_joints_over_the_whole_floor()
    {
        var rods = s_squares.Runs[0].Rods;
        Assert.All(rods, rod => Assert.Equal("bath floor", rod.Face));
        Assert.InRange(rods.Single(rod => rod.Axis == Axis.Level).Marks.Count, 12, 13);
        Assert.InRange(rods.Single(rod => rod.Axis == Axis.Plumb).Marks.Count, 9, 10);
        Assert.All(rods, rod => Assert.All(rod.Marks.Zip(rod.Marks.Skip(1)), pair => Assert.Equal(Length.FromMillimetres(200), pair.Second - pair.First)));
    }

    /// <summary>Rows of hexagons 692.8 high with joints of 3 stand three quarters of a tile and a joint's share apart: 603 · √3/2 = 522.2 mm, and every second in line.</summary>
    [Fact]
    public void A_rod_of_hexagons_has_every_row()
    {
        var plumb = s_hexagons.Runs[0].Rods.Single(rod => rod.Axis == Axis.Plumb);
        Assert.All(plumb.Marks.Zip(plumb.Marks.Skip(1)), pair => Assert.Equal(603 * Math.Sqrt(3) / 2, (double)(pair.Second - pair.First).Millimetres, 1));
        Assert.Contains("every 2nd in line", plumb.From, StringComparison.Ordinal);
        var words = string.Join('\n', JobSheets.Pages(s_hexagons).Select(SheetLook.Words));
        Assert.DoesNotContain("side of a tile", words, StringComparison.Ordinal);
    }

    /// <summary>Counted here by the pieces that lie beside a fold on two planes.</summary>
    [Fact]
    public void It_is_said_how_many_tiles_the_folds_cut()
    {
        var finding = Assert.Single(s_hexagons.Findings, finding => finding.Rule == "fold");
        Assert.Equal(Engine.FindingLevel.Warn, finding.Level);
        var pieces = s_hexagons.Runs[0].Faces.SelectMany(face => face.Pieces).ToList();
        var tiles = pieces.GroupBy(piece => piece.Cell).ToList();
        var cut = tiles.Count(tile => tile.Any(piece => piece.Cuts.Any(one => one.Faces == "fold")));
        Assert.Equal(FormattableString.Invariant($"{cut} of {tiles.Count}"), finding.Value);
        Assert.DoesNotContain(s_hexagons.Findings, one => one.Text.Contains("a slope does not matter", StringComparison.Ordinal));
    }

    private static Plan Planned(string bond, int width, string height, string on)
    {
        var job = $$"""
            { "format": "gaugerod-job/1", "name": "Bath floor", "note": "Invented.", "units": "mm", "edgeJoint": 3,
              "products": [{ "name": "tile", "width": {{width}}, "height": {{height}} }],
              "faces": [{ "name": "bath floor", "outline": [[0, 0], [2600, 0], [2600, 1900], [0, 1900]],
                "edges": [{ "name": "foot", "kind": "inside corner" }, { "name": "right", "kind": "inside corner" }, { "name": "head", "kind": "inside corner" }, { "name": "left", "kind": "inside corner" }],
                "holes": [{ "name": "drain", "x": 450, "y": 1450, "diameter": 110 }], "falls": { "to": "drain" } }],
              "runs": [{ "name": "run 1", "product": "tile", "faces": ["bath floor"], "bond": { "kind": "{{bond}}" }, "joint": 3,
                "wants": [{ "want": "hole", "face": "bath floor", "hole": "drain", "on": "{{on}}", "must": true }] }] }
            """;
        return Planner.Plan(Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(job), "bath-floor.json")).Job);
    }
}
