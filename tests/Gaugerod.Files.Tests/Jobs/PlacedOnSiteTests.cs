using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Things that are not built yet give way to the joints, floors fold, and a turn is found, read from files as they are written.</summary>
public sealed class PlacedOnSiteTests
{
    private static readonly Length s_hair = Length.FromSteps(64);

    [Fact]
    public void A_niche_and_a_bench_move_within_their_ranges_until_no_tile_is_cut_at_them()
    {
        var plan = Planned("""
            { "format": "gaugerod-job/1", "name": "niche", "units": "mm", "edgeJoint": 3,
              "products": [{ "name": "t", "width": 297, "height": 97 }],
              "faces": [{ "name": "north", "readings": { "width": { "foot": 1523 }, "height": { "left": 2231 } },
                "fixtures": [{ "name": "bench", "to": 600, "height": 455, "range": [440, 480] }],
                "openings": [{ "name": "niche", "left": 717, "bottom": 1130, "width": 310, "height": 430,
                  "range": { "left": [650, 760], "bottom": [1080, 1180], "height": [380, 480], "width": [290, 360] } }] }],
              "runs": [{ "name": "north", "product": "t", "faces": ["north"], "bond": { "kind": "grid" }, "joint": 3 }] }
            """);
        var niche = plan.Job.Faces[0].Openings[0].Ring.Bounds;
        Assert.InRange(niche.Left.Millimetres, 650, 760);
        Assert.InRange(niche.Bottom.Millimetres, 1080, 1180);
        Assert.InRange(niche.Width.Millimetres, 290, 360);
        Assert.InRange(niche.Height.Millimetres, 380, 480);
        // Judged by the tiles: none that reaches the niche or stands on the bench has lost anything there.
        Assert.DoesNotContain(plan.Runs[0].Faces[0].Pieces.SelectMany(piece => piece.Cuts), cut => cut.Faces.StartsWith("niche", StringComparison.Ordinal) || cut.Faces == "bench");
        Assert.Contains(plan.Findings, finding => finding.Rule == "moved");
    }

    [Fact]
    public void A_range_that_does_not_hold_what_is_asked_is_refused_with_one_that_would()
    {
        var fault = Assert.Single(Assert.IsType<JobReading.Refused>(JobReader.Read(Encoding.UTF8.GetBytes("""
            { "format": "gaugerod-job/1", "name": "niche", "units": "mm",
              "products": [{ "name": "t", "width": 297, "height": 97 }],
              "faces": [{ "name": "north", "readings": { "width": { "foot": 1523 }, "height": { "left": 2231 } },
                "fixtures": [{ "name": "bench", "to": 600, "height": 455, "range": [480, 500] }] }],
              "runs": [{ "name": "north", "product": "t", "faces": ["north"], "bond": { "kind": "grid" }, "joint": 3 }] }
            """), "job.json")).Faults);
        Assert.Equal("faces[0].fixtures[0].range", fault.Path);
        Assert.Equal("[455 mm, 500 mm]", fault.Nearest);
    }

    [Fact]
    public void A_bench_that_ends_before_it_begins_is_refused_for_that_whatever_its_height_may_be()
    {
        var fault = Assert.Single(Assert.IsType<JobReading.Refused>(JobReader.Read(Encoding.UTF8.GetBytes("""
            { "format": "gaugerod-job/1", "name": "bench", "units": "mm",
              "products": [{ "name": "t", "width": 297, "height": 97 }],
              "faces": [{ "name": "north", "readings": { "width": { "foot": 1523 }, "height": { "left": 2231 } },
                "fixtures": [{ "name": "bench", "from": 700, "to": 600, "height": 455, "range": { "height": [440, 480] } }] }],
              "runs": [{ "name": "north", "product": "t", "faces": ["north"], "bond": { "kind": "grid" }, "joint": 3 }] }
            """), "job.json")).Faults);
        Assert.Equal("faces[0].fixtures[0].to", fault.Path);
    }

    [Fact]
    public void A_floor_that_falls_to_its_drain_is_cut_along_every_fold_with_a_joint_between()
    {
        var plan = Planned("""
            { "format": "gaugerod-job/1", "name": "wet", "units": "mm", "edgeJoint": 3,
              "products": [{ "name": "t", "width": 147, "height": 147 }],
              "faces": [{ "name": "floor", "outline": [[0, 0], [1200, 0], [1200, 900], [0, 900]],
                "edges": [{ "name": "south", "kind": "floor" }, { "name": "east", "kind": "floor" }, { "name": "north", "kind": "floor" }, { "name": "west", "kind": "floor" }],
                "holes": [{ "name": "drain", "x": 600, "y": 450, "diameter": 100 }], "falls": { "to": "drain" } }],
              "runs": [{ "name": "floor", "product": "t", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": 3,
                "wants": [{ "want": "hole", "face": "floor", "hole": "drain", "on": "joint", "must": true }] }] }
            """);
        var faces = plan.Runs[0].Faces;
        Assert.Equal(["floor south", "floor east", "floor north", "floor west"], faces.Select(face => face.Face.Name));
        Assert.Equal(0, plan.Runs[0].Best.Score.MustsMissed);
        var drain = Point.FromSteps(600 * 3200, 450 * 3200);
        foreach (var corner in faces[0].Face.Outline.Points.Concat(faces[2].Face.Outline.Points).Where(p => p != drain))
        {
            // Every corner of a piece stands half a joint off the fold, to the rounding of a few cuts.
            var length = Math.Sqrt((double)Segments.Dot(drain, corner, drain, corner));
            Assert.All(faces.SelectMany(face => face.Pieces).SelectMany(piece => piece.Outline.Points), p =>
            {
                var along = (double)Segments.Dot(drain, corner, drain, p) / length;
                var off = Math.Abs((double)Segments.Cross(drain, corner, drain, p)) / length;
                if (along > 0 && along < length) Assert.True(off >= 4800 - s_hair.Steps, $"{p} stands {off / 3200:0.000} mm off the fold to {corner}");
            });
        }
    }

    [Fact]
    public void Of_turns_to_choose_among_the_one_with_the_largest_smallest_cut_is_laid()
    {
        const string Job = """
            { "format": "gaugerod-job/1", "name": "turn", "units": "mm", "edgeJoint": 3,
              "products": [{ "name": "t", "width": 150, "height": 75 }],
              "faces": [{ "name": "wall", "readings": { "width": { "foot": 900 }, "height": { "left": 600 } } }],
              "runs": [{ "name": "wall", "product": "t", "faces": ["wall"], "bond": { "kind": "herringbone", "turned": TURN }, "joint": 2, "limits": { "sliver": 10, "halfTile": false } }] }
            """;
        var free = Planned(Job.Replace("TURN", """{ "from": 0, "to": 60, "step": 15 }""", StringComparison.Ordinal)).Runs[0].Best;
        var each = new[] { 0, 15, 30, 45, 60 }.Select(turn => Planned(Job.Replace("TURN", $"{turn}", StringComparison.Ordinal)).Runs[0].Best).ToList();
        Assert.Equal(each.Min(best => best.Score.Slivers), free.Score.Slivers);
        Assert.Equal(each.Where(best => best.Score.Slivers == free.Score.Slivers).Max(best => best.Score.SmallestCut), free.Score.SmallestCut);
    }

    private static Plan Planned(string job) =>
        Planner.Plan(Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(job), "job.json")).Job);
}
