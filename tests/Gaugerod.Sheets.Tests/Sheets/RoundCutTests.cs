using System.Text;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>
/// What the sheets say of arcs: a niche with a round head of radius 300, its trim 10 and its joint 3, so that tile is cut to a
/// radius of 313; and a round step at the foot of a floor. Invented.
/// </summary>
public sealed class RoundCutTests
{
    private static readonly Figures Millimetres = new(Tape.Millimetres);

    private static readonly Plan Niche = Planned("""
        { "name": "wall", "readings": { "width": { "foot": 3000 }, "height": { "left": 2400 } },
          "openings": [{ "name": "niche", "outline": [[1200, 900], [1800, 900], [1800, 1500], { "to": [1200, 1500], "through": [1500, 1800] }],
            "edge": { "kind": "free", "trim": 10 }, "edges": [{ "name": "bottom" }, { "name": "right" }, { "name": "arch" }, { "name": "left" }] }] }
        """);

    private static readonly Plan Step = Planned("""
        { "name": "floor", "outline": [[0, 0], [500, 0], { "to": [1500, 0], "through": [1000, 500] }, [2500, 0], [2500, 1800], [0, 1800]],
          "edges": [{ "kind": "inside corner" }, { "name": "step", "kind": "fixture" }, { "kind": "inside corner" }, { "kind": "inside corner" }, { "kind": "inside corner" }, { "kind": "inside corner" }] }
        """);

    [Fact]
    public void A_tile_cut_to_an_arc_is_told_its_radius_and_three_places_not_every_chord()
    {
        var round = Niche.Runs[0].Faces[0].Pieces.Where(piece => piece.Cuts.Count(cut => cut.Faces == "niche.arch") > 5).ToList();
        Assert.NotEmpty(round);
        Assert.All(round, piece =>
        {
            var words = CutWords.Of(PieceOnFace.Of(piece, Niche.Runs[0].Faces[0].Face), Millimetres);
            Assert.Matches("round, radius 31[23], through \\d+ right \\d+ up; \\d+ right \\d+ up; \\d+ right \\d+ up", words);
            Assert.True(words.Split('\n').Length <= 3, words);
        });
    }

    [Fact]
    public void Three_places_of_a_round_cut_stand_on_its_arc()
    {
        // The arch's middle stands 1500 right and 1500 up.
        var cuts = Niche.Runs[0].Faces[0].Pieces.SelectMany(piece => RoundCut.Of(piece).SelectMany(round => round.Marked.Select(at => at.Moved(piece.Cell.Left, piece.Cell.Bottom)))).ToList();
        Assert.NotEmpty(cuts);
        Assert.All(cuts, at => Assert.InRange(Math.Sqrt(Math.Pow((double)at.X.Millimetres - 1500, 2) + Math.Pow((double)at.Y.Millimetres - 1500, 2)), 312.85, 313.15));
    }

    [Fact]
    public void A_notch_is_no_arc_though_all_its_sides_have_one_name()
    {
        var piece = Niche.Runs[0].Faces[0].Pieces[0];
        Length tile = Length.FromMillimetres(300), one = Length.FromMillimetres(100), two = Length.FromMillimetres(200);
        var slot = piece with
        {
            Cell = new(Length.Zero, Length.Zero, tile, tile),
            Cuts = [new(TileSide.Right, one, one, one, tile, "post"), new(TileSide.Top, one, one, one, two, "post"), new(TileSide.Left, one, one, one, tile, "post")],
        };
        Assert.Empty(RoundCut.Of(slot));
    }

    [Fact]
    public void A_round_step_has_its_name_on_the_face_once()
    {
        var drawing = FaceDrawings.Of(Step)[0].Drawing;
        Assert.Single(drawing.Marks.OfType<Mark.Text>(), text => text.Words == "step");
        Assert.Single(drawing.Marks.OfType<Mark.Area>(), area => area.Name == "step");
    }

    [Fact]
    public void The_cut_list_of_an_arched_niche_stays_on_its_sheets() => Assert.All(JobSheets.Pages(Niche), page =>
        Assert.All(page.Marks.OfType<Mark.Line>().SelectMany(line => line.Spots), spot => Assert.True(spot.X >= 0 && spot.X <= page.Width && spot.Y >= 0 && spot.Y <= page.Height)));

    private static Plan Planned(string face)
    {
        var name = face.Contains("\"floor\"", StringComparison.Ordinal) ? "floor" : "wall";
        var text = $$"""
            { "format": "gaugerod-job/1", "name": "arcs", "units": "mm", "products": [{ "name": "tile", "width": 300, "height": 150 }], "faces": [{{face}}],
              "runs": [{ "name": "run", "product": "tile", "faces": ["{{name}}"], "bond": { "kind": "grid" }, "joint": 3 }] }
            """;
        return Planner.Plan(Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(text), "arcs.json")).Job);
    }
}
