using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tolerances;
using Gaugerod.Plane.Measure;
using Xunit.Abstractions;

namespace Gaugerod.Engine.Tests.Tolerances;

/// <summary>Source: tiles set in numbers, 100,000 times a case: a line snapped, tiles drawn from a batch, joints from spacers, and what is left up to the wall measured.</summary>
public sealed class CutRangeTests(ITestOutputHelper output)
{
    private const int Times = 100_000;

    [Theory]
    [InlineData(0, 1.5, 1.5, 1.5, 0.5)]
    [InlineData(3, 1.5, 1.5, 1.5, 0.5)]
    [InlineData(8, 1.5, 1.0, 3.0, 0.5)]
    [InlineData(20, 1.5, 1.5, 0.6, 1.0)]
    [InlineData(60, 2.0, 1.5, 1.5, 0.5)]
    [InlineData(12, 0.5, 0.5, 6.0, 0.2)]
    public void Nineteen_cuts_in_twenty_come_out_within_what_is_said_and_all_within_the_worst(int tiles, double reading, double setOut, double variation, double joint)
    {
        var chance = new Random(tiles + 1);
        var (stack, joints) = (new ErrorStack(new(Mm(reading), Mm(setOut), Mm(joint)), Mm(reading), Mm(variation)), tiles + 1);
        var (said, worst) = (Millimetres(stack.GiveOrTake(tiles, joints)), Millimetres(stack.AtWorst(tiles, joints)));
        const double Size = 300, Joint = 3, Cut = 120;
        var planned = (tiles * (Size + Joint)) + Joint + Cut;
        var (within, all) = (0, 0);
        for (var time = 0; time < Times; time++)
        {
            // What the wall truly is, beside what was read; and ten tiles of the batch measured for the size that was planned with.
            var wall = planned + (reading * Normal(chance));
            var mean = Size + Measured(chance, variation);
            var at = setOut * Normal(chance);
            for (var tile = 0; tile < tiles; tile++) at += mean + Even(chance, variation / 2) + Joint + Even(chance, joint);
            at += Joint + Even(chance, joint);
            var off = Math.Abs(wall - at - Cut);
            if (off <= said) within++;
            if (off <= worst) all++;
        }

        output.WriteLine($"{tiles} tiles: give or take {said:0.00}, at worst {worst:0.00}; within {within / (double)Times:0.0000}, all {all / (double)Times:0.00000}");
        Assert.InRange(within / (double)Times, 0.9475, 0.9725);
        Assert.True(all >= 0.9999 * Times, $"{Times - all} beyond the worst");
    }

    [Fact]
    public void A_batch_that_runs_large_takes_from_every_cut_the_same_way()
    {
        // Without anything else off, twice the tiles are off by twice as much: what is the same for all does not cancel.
        var batch = new ErrorStack(new(Length.Zero, Length.Zero, Length.Zero), Length.Zero, Length.Zero);
        Assert.InRange(Millimetres(batch.GiveOrTake(40, 0)) / Millimetres(batch.GiveOrTake(20, 0)), 1.99, 2.01);
        var joints = new ErrorStack(new(Length.Zero, Length.Zero, Mm(0.5)), Length.Zero, Length.Zero);
        Assert.InRange(Millimetres(joints.GiveOrTake(0, 40)) / Millimetres(joints.GiveOrTake(0, 20)), 1.41, 1.42);
    }

    [Fact]
    public void A_rectified_tile_differs_by_what_its_standard_allows_and_others_by_what_a_box_may()
    {
        var tile = new Product("tile", Length.FromInches(24), Length.FromInches(12), Length.Zero);

        // Source: ANSI A137.1, check value 15: a 24 in rectified tile 0.03 in either way, not 0.06.
        Assert.Equal(0.06 * 25.4, Millimetres(SettingErrors.Variation(tile with { Class = TileClass.Rectified })), 3);

        // Check value 14: 8 in from 7.98 to 8.02.
        Assert.Equal(0.04 * 25.4, Millimetres(SettingErrors.Variation(tile with { Width = Length.FromInches(8), Height = Length.FromInches(8), Class = TileClass.Rectified })), 3);
        Assert.Equal(Mm(1.5), SettingErrors.Variation(tile));
        Assert.Equal(Mm(0.8), SettingErrors.Variation(tile with { Variation = Mm(0.8) }));
    }

    private static double Measured(Random chance, double variation)
    {
        var sum = 0.0;
        for (var tile = 0; tile < 10; tile++) sum += Even(chance, variation / 2) + Even(chance, 0.25);
        return sum / 10;
    }

    private static double Even(Random chance, double most) => ((2 * chance.NextDouble()) - 1) * most;

    private static double Normal(Random chance) => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());

    private static Length Mm(double mm) => Length.FromSteps((long)Math.Round(mm * 3200));

    private static double Millimetres(Length length) => length.Steps / 3200.0;
}
