using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Trims.TrimmedWall;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>Edges at which the field's own tiles are worked: what is asked for there and cannot be had is said.</summary>
public sealed class WorkedEdgesTests
{
    [Theory]
    [InlineData(TrimKind.EasedEdge, TrimJoints.Free, null, null, null)]
    [InlineData(TrimKind.MitredEdge, TrimJoints.InLine, null, null, null)]
    [InlineData(TrimKind.MitredEdge, TrimJoints.Centred, null, null, "where joints fall")]
    [InlineData(TrimKind.EasedEdge, TrimJoints.Staggered, 20, null, "where joints fall, a stagger of 20 mm")]
    [InlineData(TrimKind.EasedEdge, TrimJoints.Free, null, TrimCorner.Covers, "how it meets at a corner")]
    [InlineData(TrimKind.MitredEdge, TrimJoints.Staggered, 20, TrimCorner.Mitred, "where joints fall, a stagger of 20 mm, how it meets at a corner")]
    public void Joints_a_stagger_and_a_corner_of_an_edge_that_is_worked_are_told_of_with_what_is_followed(TrimKind kind, TrimJoints joints, int? stagger, TrimCorner? corner, string? said)
    {
        var worked = new TrimProduct("edge", kind, Length.Zero, Length.Zero, Length.Zero, Length.Zero) { Thickness = Mm(8) };
        var head = Trimmed("head", worked, joints, stagger is { } far ? Mm(far) : null, corner);
        var job = Job(Ring.Of(new Box(Length.Zero, Length.Zero, Mm(1000), Mm(1000))), [new("foot", EdgeKind.Floor), new("right", EdgeKind.InsideCorner), head, new("left", EdgeKind.InsideCorner)], [], worked, new("tile", Mm(197), Mm(197), Mm(8)), Mm(3), new BondRequest.Grid(Lay.Level));
        Assert.Empty(JobCheck.Check(job));
        var findings = Planner.Plan(job).Trims.Findings;
        if (said is null)
        {
            Assert.Empty(findings);
            return;
        }

        var finding = Assert.Single(findings);
        Assert.Equal(("trim-worked", "wall, head", said == "where joints fall" ? FindingLevel.Note : FindingLevel.Warn), (finding.Rule, finding.Where, finding.Level));
        Assert.Equal($"The edge of the field's own tiles is worked here, and {said} was asked for: its joints are the field's, and at a corner it ends where the tiles do. Nearest: joints in line, without a stagger or a corner.", finding.Text);
    }
}
