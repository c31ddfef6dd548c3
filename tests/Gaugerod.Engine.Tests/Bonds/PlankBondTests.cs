using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Bonds;

public sealed class PlankBondTests
{
    // Staggers of up to ten parts of the twelve that are the most there can be with one length.
    private static readonly Gen<(string Start, long[] Widths, int Part)> Cases =
        Gen.Select(Gen.String[0, 12], Gen.Long[200, 1800].Array[1, 4], Gen.Int[1, 10]);

    [Fact]
    public void The_same_start_lays_the_same_courses_and_another_start_others() => Cases.Each(
        given =>
        {
            var bond = Laid(given.Start, given.Widths, given.Part);
            Assert.Equal(bond.Motif, Laid(given.Start, given.Widths, given.Part).Motif);
            Assert.NotEqual(bond.Motif, Laid(given.Start + "!", given.Widths, given.Part).Motif);
        },
        iter: 300);

    /// <summary>Ends are compared along the whole course and round the repeat both ways, the last course with the first of the next repeat.</summary>
    [Fact]
    public void No_end_is_nearer_to_one_of_the_next_course_than_the_stagger() => Cases.Each(
        given =>
        {
            var (bond, stagger) = (Laid(given.Start, given.Widths, given.Part), Stagger(given.Widths, given.Part));
            var period = bond.Lattice.First.Along.Steps;
            Assert.Equal(given.Widths.Sum(width => Mm(width + 2).Steps), period);
            var rows = bond.Motif.GroupBy(tile => tile.Row).OrderBy(row => row.Key).Select(row => row.Select(tile => tile.Cell.Left.Steps).ToList()).ToList();
            Assert.Equal(bond.Rows, rows.Count);
            for (var i = 0; i < rows.Count; i++)
            {
                foreach (var (one, other) in rows[i].SelectMany(one => rows[(i + 1) % rows.Count].Select(other => (one, other))))
                {
                    var off = Math.Abs((one - other) % period);
                    Assert.True(Math.Min(off, period - off) >= stagger.Steps, $"course {i}: {one} and {other} of {period}");
                }
            }
        },
        iter: 300);

    [Fact]
    public void Every_course_has_one_plank_of_every_length()
    {
        var bond = Laid("oak", [900, 600, 1200], 1);
        Assert.All(bond.Motif.GroupBy(tile => tile.Row), row => Assert.Equal([0, 1, 2], row.Select(tile => tile.Product).Order()));
        Assert.All(bond.Motif, tile => Assert.Equal(Mm(152) * tile.Row, tile.Cell.Bottom));
        Assert.True(bond.Motif.GroupBy(tile => tile.Row).Select(row => string.Join(' ', row.OrderBy(t => t.Cell.Left).Select(t => t.Product))).Distinct().Count() > 1, "planks come in more orders than one");
    }

    /// <summary>With planks of one length the greatest stagger there is puts every end over a middle.</summary>
    [Fact]
    public void A_stagger_of_just_half_a_plank_is_a_half_bond() =>
        Assert.Equal([0L, 451], Make.Bond(new BondRequest.Planks(Mm(451), "oak"), Mm(2), (Mm(900), Mm(150))).Motif.Select(tile => Math.Abs(tile.Cell.Left.Steps / 3200)).Distinct().Order());

    /// <summary>Chance words do not run into each other's courses: 200 starts, 200 orders.</summary>
    [Fact]
    public void Two_hundred_starts_give_two_hundred_floors() => Assert.Equal(
        200, Enumerable.Range(0, 200).Select(i => string.Join(' ', Laid($"{i}", [900, 600], 1).Motif.Select(tile => tile.Cell.Left.Steps))).Distinct().Count());

    private static Length Stagger(long[] widths, int part) => Mm((widths.Min() + 2) * part / (24 * widths.Length));

    private static Bond Laid(string start, long[] widths, int part) =>
        Make.Bond(new BondRequest.Planks(Stagger(widths, part), start), Mm(2), [.. widths.Select(width => (Mm(width), Mm(150)))]);
}
