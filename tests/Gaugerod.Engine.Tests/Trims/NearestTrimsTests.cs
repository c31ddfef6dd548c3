using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using static Gaugerod.Engine.Tests.Trims.TrimmedWall;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>What cannot be had is said with the nearest that can; put in its place, that is taken without a word. The joints and the sizes are drawn at random.</summary>
public sealed class NearestTrimsTests
{
    [Fact]
    public void On_200_lines_the_greatest_stagger_that_is_said_can_be_had_and_a_mark_more_cannot()
    {
        var refused = 0;
        Wall(stagger: (40, 160), least: (20, 50)).Each(job =>
        {
            var plan = Planner.Plan(job);
            if (Said(plan, "trim-joints") is not { } finding) return;
            Assert.StartsWith("No arrangement keeps every joint ", finding.Text, StringComparison.Ordinal);
            Stands(plan);
            var nearest = Length(finding.Value);
            Assert.Null(Said(Planner.Plan(With(job, asked => asked with { Stagger = nearest })), "trim-joints"));
            Assert.NotNull(Said(Planner.Plan(With(job, asked => asked with { Stagger = nearest + Mm(1) })), "trim-joints"));
            Interlocked.Increment(ref refused);
        }, 200);
        Assert.True(refused > 100, $"{refused} staggers were refused");
    }

    [Fact]
    public void On_200_lines_the_least_piece_that_is_said_can_be_had_and_a_mark_more_cannot()
    {
        var refused = 0;
        Wall(stagger: (0, 0), least: (110, 190)).Each(job =>
        {
            var plan = Planner.Plan(job);
            if (Said(plan, "trim-piece") is not { } finding) return;
            Stands(plan);
            var nearest = Length(finding.Value);
            Assert.Null(Said(Planner.Plan(Least(job, nearest)), "trim-piece"));
            Assert.NotNull(Said(Planner.Plan(Least(job, nearest + Mm(1))), "trim-piece"));
            Interlocked.Increment(ref refused);
        }, 200);
        Assert.True(refused > 40, $"{refused} lines were refused");
    }

    /// <summary>Beside one wide tile no joint of the field stands. Two pieces of at least 90 mm and a joint of 3 fill 191, where one ends on a mitre that takes 8: 98 and 90, which are not alike.</summary>
    [Fact]
    public void A_line_beside_no_joint_that_cannot_be_alike_from_both_ends_is_said_and_planned_all_the_same()
    {
        var product = Bullnose with { Stock = Mm(100), Least = Mm(90), Width = Mm(8) };
        var job = Job(
            Ring.Of(new Box(Gaugerod.Plane.Measure.Length.Zero, Gaugerod.Plane.Measure.Length.Zero, Mm(194), Mm(600))),
            [new("foot", EdgeKind.Floor), new("right", EdgeKind.InsideCorner), Trimmed("head", product, TrimJoints.Centred, Mm(2)), Trimmed("left", product, TrimJoints.Free)], [], product,
            new("tile", Mm(3000), Mm(147), Mm(8)), Mm(3), new BondRequest.Grid(Lay.Level));
        var plan = Planner.Plan(job);
        Assert.Equal(("head", 0), (plan.Trims.Lines[0].Edge, plan.Trims.Lines[0].Beside.Count));
        Assert.Equal(
            "No arrangement is alike from both ends with pieces from 90 mm to 100 mm; there is no joint of the field beside it.",
            Assert.Single(plan.Findings, finding => finding.Where == "wall, head" && finding.Level == FindingLevel.Warn).Text);
        Assert.Equal([Mm(90), Mm(98)], plan.Trims.Lines[0].Pieces.Select(piece => piece.Length).Order());
    }

    /// <summary>403 mm of two pieces, 200 and 200, with their joint near the only one of the field; three of at least 150 do not go in. Alone, either can be had.</summary>
    [Fact]
    public void A_line_alike_from_both_ends_that_does_not_keep_its_stagger_is_said_with_the_stagger_that_it_keeps()
    {
        var product = Bullnose with { Stock = Mm(300), Least = Mm(150) };
        var job = Job(
            Ring.Of(new Box(Gaugerod.Plane.Measure.Length.Zero, Gaugerod.Plane.Measure.Length.Zero, Mm(409), Mm(600))),
            [new("foot", EdgeKind.Floor), new("right", EdgeKind.InsideCorner), Trimmed("head", product, TrimJoints.Centred, Mm(30)), new("left", EdgeKind.InsideCorner)], [], product,
            new("tile", Mm(213), Mm(147), Mm(8)), Mm(3), new BondRequest.Grid(Lay.Level));
        var plan = Planner.Plan(job);
        var beside = Assert.Single(plan.Trims.Lines[0].Beside);
        var off = (beside - Gaugerod.Plane.Measure.Length.FromSteps(Mm(403).Steps / 2)).Abs();
        Assert.True(off < Mm(30));
        Assert.StartsWith(
            $"No arrangement is alike from both ends and keeps every joint 30 mm from those of the field (so arranged they keep {LengthText.Down(off, Tape.Millimetres)})",
            Said(plan, "trim-joints")!.Text, StringComparison.Ordinal);
        Assert.Null(Said(Planner.Plan(With(job, asked => asked with { Stagger = off })), "trim-joints"));
        Assert.True(plan.Trims.Lines[0].Ways[0].Stagger >= Mm(30));
    }

    /// <summary>A trim of 195 mm along the head; a wall so narrow that a line is one to five pieces long.</summary>
    private static Gen<Job> Wall((int From, int To) stagger, (int From, int To) least) =>
        from width in Gen.Int[260, 1100]
        from tile in Gen.Int[70, 300]
        from off in Gen.Int[stagger.From, stagger.To]
        from shortest in Gen.Int[least.From, least.To]
        let product = Bullnose with { Stock = Mm(195), Least = Mm(shortest) }
        let head = Trimmed("head", product, off > 0 ? TrimJoints.Staggered : TrimJoints.Free, off > 0 ? Mm(off) : null)
        select Job(
            Ring.Of(new Box(Gaugerod.Plane.Measure.Length.Zero, Gaugerod.Plane.Measure.Length.Zero, Mm(width), Mm(600))), [new("foot", EdgeKind.Floor), new("right", EdgeKind.InsideCorner), head, new("left", EdgeKind.InsideCorner)], [], product,
            new("tile", Mm(tile), Mm(147), Mm(8)), Mm(3), new BondRequest.Grid(Lay.Level));

    private static Finding? Said(Plan plan, string rule) => plan.Findings.SingleOrDefault(finding => finding.Rule == rule && finding.Level == FindingLevel.Warn);

    /// <summary>The trim is planned as near as can be, and the tiles as ever.</summary>
    private static void Stands(Plan plan)
    {
        Assert.NotEmpty(Assert.Single(plan.Trims.Lines).Pieces);
        Assert.NotEmpty(plan.Runs[0].Faces[0].Pieces);
    }

    private static Length Length(string said) => Assert.IsType<LengthReading.Understood>(LengthText.Read(said, LengthUnit.Millimetre)).Value;

    private static Job Least(Job job, Length least) => job with { Trims = [job.Trims[0] with { Least = least }] };

    private static Job With(Job job, Func<TrimRequest, TrimRequest> change)
    {
        var outline = (FaceShape.Outline)job.Faces[0].Shape;
        return job with { Faces = [job.Faces[0] with { Shape = outline with { Edges = [.. outline.Edges.Select(edge => edge.Trimmed is { } asked ? edge with { Trimmed = change(asked) } : edge)] } }] };
    }
}
