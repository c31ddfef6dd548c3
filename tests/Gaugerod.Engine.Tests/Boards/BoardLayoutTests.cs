using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Boards.Boarding;

namespace Gaugerod.Engine.Tests.Boards;

/// <summary>Walls and floors small enough to lay out in the head.</summary>
public sealed class BoardLayoutTests
{
    private static BoardRequest Wall(Studs? studs) => new("board") { Studs = studs };

    // By hand: 96 by 96 in takes two sheets of 4 by 8 ft whole, lying; seven rows of 7 screws in each, on the two ends and five studs between.
    [Fact]
    public void A_wall_of_two_sheets_takes_two_sheets()
    {
        var face = Planned(Face(Wall(Every(16, 16)), 96, 96), FourByEight);
        Assert.Equal(2, face.Pieces.Count);
        Assert.All(face.Pieces, piece => Assert.True(piece.IsWhole));
        Assert.Equal([49, 49], face.Pieces.Select(piece => piece.Screws.Count));
        Assert.Equal(Length.FromInches(96), face.SeamLength);
        Assert.Equal((0, 0, 0), (face.AtCorners, face.InLine, face.Narrow));
    }

    [Fact]
    public void Upright_seams_stand_on_the_middle_of_studs_and_no_two_rows_share_one()
    {
        var face = Planned(Face(Wall(Every(16, 12)), 130, 96), ThreeByFive);
        var upright = face.Seams.Where(seam => seam.From.X == seam.To.X).ToList();
        Assert.All(upright, seam => Assert.Contains(seam.From.X, face.Studs));
        Assert.All(upright, seam => Assert.True(seam.OnStud));
        Assert.Equal(0, face.InLine);
        foreach (var one in upright)
        {
            Assert.DoesNotContain(upright, other => other != one && other.From.X == one.From.X && (other.From.Y == one.To.Y || other.To.Y == one.From.Y));
        }
    }

    // By hand: studs at 40 and 56 in stand at the window's sides, so the seam goes elsewhere; a whole row would end level with its sill at 36 in.
    [Fact]
    public void Seams_keep_from_the_corners_of_a_window_where_they_can()
    {
        var face = Planned(Face(Wall(Every(16, 8)), 120, 96, Inches(40, 36, 16, 30)), ThreeByFive);
        Assert.Equal(0, face.AtCorners);
        var (near, corners) = (Length.FromInches(2), Inches(40, 36, 16, 30).Corners());
        Assert.All(face.Seams, seam => Assert.DoesNotContain(corners, corner => Off(corner.X, seam.From.X, seam.To.X) < near && Off(corner.Y, seam.From.Y, seam.To.Y) < near));

        static Length Off(Length at, Length one, Length other) => Length.Max(Length.Zero, Length.Max(Length.Min(one, other) - at, at - Length.Max(one, other)));
    }

    // A seam would stand on the stud at 48 in, under the tile joint drawn there; one at 32 in is as good otherwise.
    [Fact]
    public void Where_water_runs_seams_keep_from_under_tile_joints()
    {
        var face = Face(new("board") { Studs = Every(16, 16), Lay = BoardLay.Across }, 80, 36);
        var dry = Planned(face, ThreeByFive);
        var taken = Assert.Single(dry.Seams).From.X;
        var joint = new Box(taken - Length.FromInches(0, 1, 16), Length.Zero, taken + Length.FromInches(0, 1, 16), Length.FromInches(36));
        var wet = Planned(face, ThreeByFive, new([joint], []));
        Assert.Equal(Length.Zero, wet.Under);
        Assert.NotEqual(taken, Assert.Single(wet.Seams).From.X);
        Assert.Equal(dry.Pieces.Count, wet.Pieces.Count);
    }

    [Fact]
    public void Sheets_stand_where_that_takes_fewer()
    {
        // 48 by 96 in: one sheet standing; lying it would be cut in two.
        var face = Planned(Face(Wall(Every(16, 16)), 48, 96), FourByEight);
        Assert.Equal(BoardLay.Along, face.Lay);
        Assert.Single(face.Pieces);
    }

    [Fact]
    public void Joists_that_run_level_carry_sheets_as_studs_do_that_stand()
    {
        var up = Planned(Face(Wall(Every(16, 12)), 130, 96), ThreeByFive);
        var level = Planned(Face(Wall(Every(16, 12) with { RunLevel = true }), 96, 130), ThreeByFive);
        Assert.Equal(up.Pieces.Select(piece => (piece.Along, piece.Across, piece.Screws.Count)), level.Pieces.Select(piece => (piece.Along, piece.Across, piece.Screws.Count)));
        Assert.Equal(up.Seams.Select(seam => seam.From.Transposed()), level.Seams.Select(seam => seam.From));
        Assert.All(level.Pieces, piece => Assert.True(piece.Shape.Outer.DoubledArea > 0));
    }

    // 100 ft2 of floor, 15 ft2 a sheet, 10 %: eight by area. Laid out: two whole sheets or one and two halves in each of three rows, and what is left, 12 in high, out of a seventh.
    [Fact]
    public void A_floor_of_a_hundred_square_feet_takes_seven_sheets_where_area_and_a_tenth_say_eight()
    {
        var face = Planned(Face(Wall(null), 120, 120), ThreeByFive);
        var stock = SheetCutting.Cut(ThreeByFive, [.. face.Cut]);
        Assert.Equal(7, stock.Sheets.Count);
        Assert.Equal(7, stock.LowerBound);
        Assert.Equal(8, TileOrder.ByArea(100, 10, 15).Packs);
        Assert.Equal((0, 0, 0), (face.AtCorners, face.InLine, face.Narrow));
    }

    // Source: a maker's page on its board prints 55 screws for 3 by 5 ft and 91 for 4 by 8 ft, 8 in apart; the grid half an inch from the edges gives 54 and 91.
    [Theory]
    [InlineData(60, 36, 54)]
    [InlineData(96, 48, 91)]
    [InlineData(60, 32, 45)]
    public void A_whole_sheet_on_a_floor_takes_the_screws_of_its_grid(long width, long height, int screws)
    {
        var face = Planned(Face(Wall(null), width, height), FourByEight with { Width = Length.FromInches(height), Length = Length.FromInches(width) });
        Assert.Equal(screws, Assert.Single(face.Pieces).Screws.Count);
    }

    [Fact]
    public void No_screw_stands_in_a_pipe()
    {
        var face = Face(Wall(Every(16, 16)), 48, 48);
        var bare = Planned(face, FourByEight).Screws;
        var pipe = Planned(face with { Holes = [new("pipe", new(Length.FromInches(16), Length.FromInches(24)), Length.FromInches(8))] }, FourByEight);
        Assert.True(pipe.Screws < bare);
        Assert.All(pipe.Pieces.SelectMany(piece => piece.Screws), at => Assert.False(at.X == Length.FromInches(16) && (at.Y - Length.FromInches(24)).Abs() <= Length.FromInches(4)));
    }

    // By hand, sheets of 4 by 8 ft: a piece of 60 and one of 36 in, as high as the sheet, share one.
    [Fact]
    public void Offcuts_are_used_on()
    {
        var long60 = new SheetPiece("B1", Length.FromInches(60), Length.FromInches(48));
        var stock = SheetCutting.Cut(FourByEight, [long60, long60 with { Id = "B2", Along = Length.FromInches(36) }, long60 with { Id = "B3", Along = Length.FromInches(40) }]);
        Assert.Equal(2, stock.Sheets.Count);
        Assert.Equal(2, stock.LowerBound);
        Assert.Equal(["B1", "B2"], stock.Sheets[0].Pieces.Select(piece => piece.Id));
    }

    // By hand: rows of 12 in without a gap. The lowest may be 4 in high and the highest a rest, so that a wall of n whole rows and a part is laid in n + 2.
    [Fact]
    public void A_wall_that_is_accepted_never_has_more_rows_than_the_search_keeps_apart()
    {
        var board = ThreeByFive with { Width = Length.FromInches(12), Length = Length.FromInches(60) };
        var refused = 0;
        for (var height = 12L * (LastSeams.Most - 3); height <= 12 * (LastSeams.Most + 1); height += 3)
        {
            var remarks = new Remarks(Tape.Sixteenths);
            // A window low down and one high up, so that rows are tried whose seams keep off their corners.
            var task = Task(Face(Wall(Every(16, 16)), 48, height, Inches(10, 17, 20, 9), Inches(10, height - 40, 20, 11)), board);
            BoardFaults.Find(task, "faces[0].board", large: true, remarks);
            if (remarks.Faults.Count > 0) refused++;
            else
            {
                var rows = RowHeights.Of(task.Field.Bounds.Bottom.Steps, task.Field.Bounds.Top.Steps, task.Sheet(BoardLay.Across), task.Field.Corners.Select(corner => corner.Y.Steps), RowHeights.Aside);
                Assert.All(rows, bands => Assert.InRange(bands.Length, 1, LastSeams.Most));
            }
        }

        Assert.InRange(refused, 5, 16);
    }
}
