using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>A bed joint asked for at a height means the joint's middle, however the bond is laid.</summary>
public sealed class JointAtHeightTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    public void A_joint_at_a_height_is_held_in_the_middle_of_the_joint_and_nowhere_else_in_it(int degrees)
    {
        // A tile's lower side 500 mm up, the joint of 3 mm under it: its middle is 498.5 mm up.
        Assert.True(IsHeld(degrees, 498.5));
        foreach (var height in new[] { 497.1, 498.0, 498.4, 498.6, 499.0, 499.9, 500.5, 540 }) Assert.False(IsHeld(degrees, height), $"{height}");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    public void The_search_brings_the_middle_of_a_joint_to_the_height_asked_for(int degrees)
    {
        var plan = Planner.Plan(Wall(degrees, 777));
        Assert.True(plan.Runs[0].Best.Wants[0].Held);
        // Tiles over it begin half a joint higher, those under it end half a joint lower, to a hundredth of a millimetre: nearer than anyone sets a tile.
        var boxes = plan.Runs[0].Faces[0].Pieces.Select(piece => piece.Outline.Bounds).ToList();
        Assert.Contains(boxes, box => (box.Bottom - Mm(778.5)).Abs() <= Mm(0.01));
        Assert.Contains(boxes, box => (box.Top - Mm(775.5)).Abs() <= Mm(0.01));
    }

    private static bool IsHeld(int degrees, double height)
    {
        var job = Wall(degrees, height);
        return Planner.Plan(job with { Runs = [job.Runs[0] with { Place = new([Mm(300)], Mm(500), null) }] }).Runs[0].Best.Wants[0].Held;
    }

    private static Job Wall(int degrees, double height) => OneWall.Job(
        Mm(1400), Mm(1300), Mm(3), Mm(240), JointRange.Only(Mm(3)), Tape.Millimetres, [new Want.JointAtHeight("wall", Mm(height), Must: true, 1)],
        bond: new BondRequest.Grid(Lay.Level) { Turn = Angle.FromDegrees(degrees) }, depth: Mm(90));

    private static Length Mm(double mm) => Length.FromSteps((long)Math.Round(mm * Length.StepsPerMillimetre));
}
