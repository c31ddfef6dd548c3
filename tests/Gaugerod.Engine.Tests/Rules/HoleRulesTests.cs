using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Planning;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rules;

/// <summary>
/// How much tile is left beside a hole. A wall of 2500 by 1400 mm, tiles of 300, joint 3, set by hand with a tile's corner 5
/// right and 5 up; worked by hand. How near is too near: common practice, no source; the job says it.
/// </summary>
public sealed class HoleRulesTests
{
    private static readonly Opening Window = new(
        "window", RingMm((700, 600), (1300, 600), (1300, 1000), (700, 1000)),
        new[] { "bottom", "right", "top", "left" }.Select(name => new Edge(name, EdgeKind.Fixture)).ToSequence());

    /// <summary>The tile begins at 5; the hole's rim at 30 less 20.</summary>
    [Fact]
    public void A_hole_drilled_too_near_to_a_tiles_side_is_warned_of()
    {
        var finding = Assert.Single(Findings(At(30, 150), 40, 15));

        Assert.Equal((FindingLevel.Warn, "at least 15 mm of tile beside the hole", "5 mm", "common practice, no source"), (finding.Level, finding.Limit, finding.Value, finding.Source));
        Assert.Equal("valve on wall", finding.Where);
    }

    [Fact]
    public void A_hole_with_tile_enough_beside_it_is_not_spoken_of()
    {
        Assert.Empty(Findings(At(30, 150), 40, 5));
        Assert.Empty(Findings(At(150, 150), 40, 100));
        Assert.Empty(Findings(At(30, 150), 40, null));
    }

    /// <summary>The notch's corner stands at 695, 595; the hole's middle 30 and 40 from it, so 50, and its rim 30. The tile's sides are 33 and 34 off.</summary>
    [Fact]
    public void A_corner_that_is_notched_out_counts_as_a_side_does()
    {
        Assert.Equal("30 mm", Assert.Single(Findings(At(665, 555), 40, 31)).Value);
        Assert.Empty(Findings(At(665, 555), 40, 30));
    }

    [Fact]
    public void A_hole_on_a_crossing_of_joints_is_nipped_from_the_sides_and_breaks_nothing_out() =>
        Assert.Empty(Findings(new(Length.FromSteps((306 * 3200) + 1600), Length.FromSteps((306 * 3200) + 1600)), 60, 100));

    /// <summary>It runs over the joint at 305 to 308; both tiles end at 5 below, 1.5 beside its middle: the root of 35 and 1.5 squared is 35.03, less 20.</summary>
    [Fact]
    public void A_hole_over_a_joint_may_still_be_too_near_to_the_next_side_of_both_tiles() =>
        Assert.Equal(["15.0 mm", "15.0 mm"], Findings(new(Length.FromSteps((306 * 3200) + 1600), Mm(40)), 40, 20).Select(finding => finding.Value));

    private static IReadOnlyList<Finding> Findings(Gaugerod.Plane.Shapes.Point middle, long diameter, long? clear)
    {
        var job = OneWall.Job(Mm(2500), Mm(1400), Mm(5), Mm(300), new(Mm(3), Mm(3), Mm(3)), Tape.Millimetres, openings: [Window]);
        var hole = new Hole("valve", middle, Mm(diameter)) { EdgeClear = clear is { } c ? Mm(c) : null };
        job = job with { Faces = [job.Faces[0] with { Holes = [hole] }], Runs = [job.Runs[0] with { Place = new([Mm(5)], Mm(5), null) }] };
        Assert.Empty(JobCheck.Check(job));
        return [.. Planner.Plan(job).Findings.Where(finding => finding.Rule == "hole-edge")];
    }
}
