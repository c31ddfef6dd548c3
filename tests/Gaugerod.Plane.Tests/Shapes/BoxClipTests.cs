using CsCheck;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using static Gaugerod.Plane.Tests.Shapes.CoarseAreas;

namespace Gaugerod.Plane.Tests.Shapes;

/// <summary>What a box leaves of an area, judged by NetTopologySuite.</summary>
public sealed class BoxClipTests
{
    private static readonly Gen<Box> Boxes =
        from x in Gen.Select(Gen.Long[0, 11], Gen.Long[1, 8])
        from y in Gen.Select(Gen.Long[0, 11], Gen.Long[1, 8])
        select Of(x.Item1, y.Item1, x.Item1 + x.Item2, y.Item1 + y.Item2);

    [Fact]
    public void A_box_leaves_of_an_area_what_the_referee_says() => Gen.Select(Any, Boxes).Each(
        (area, box) =>
        {
            var rings = BoxClip.Clip(Tagged(area), box);
            var parts = Overlay.Shared(Overlay.Of(area), Overlay.Of(Ring.Of(box)));
            var mine = Overlay.Parts(rings);

            Assert.Equal(parts.Count, mine.Count);
            Assert.All(mine, part => Assert.True(part.IsValid, part.ToString()));
            Assert.InRange(Overlay.Apart(parts, mine), 0, parts.Sum(Overlay.Slanted) + mine.Sum(Overlay.Slanted));
            foreach (var ring in rings) CheckTags(ring, area, box);
        },
        iter: 20_000);

    [Fact]
    public void A_hole_that_touches_the_box_with_one_corner_stays_a_hole()
    {
        var diamond = new Ring([P(3, 4), P(5, 3), P(6, 5), P(4, 6)]);
        var rings = BoxClip.Clip(Tagged(new(Ring.Of(Of(0, 0, 12, 12)), [diamond])), Of(1, 1, 6, 9));

        Assert.Equal([-1, 1], rings.Select(ring => Int128.Sign(Overlay.RingOf(ring).DoubledArea)).Order());
    }

    /// <summary>A side tagged as the box's lies on that side of it; a side tagged as the area's lies on that side of the area, to a step.</summary>
    private static void CheckTags(TaggedCorner[] ring, Polygon area, Box box)
    {
        var sides = Sides(area);
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            var held = a.Tag switch
            {
                BoxClip.Left => a.X == box.Left.Steps && b.X == a.X,
                BoxClip.Right => a.X == box.Right.Steps && b.X == a.X,
                BoxClip.Bottom => a.Y == box.Bottom.Steps && b.Y == a.Y,
                BoxClip.Top => a.Y == box.Top.Steps && b.Y == a.Y,
                _ => Overlay.Off(sides[a.Tag].A, sides[a.Tag].B, a) <= 1.5 && Overlay.Off(sides[a.Tag].A, sides[a.Tag].B, b) <= 1.5,
            };
            Assert.True(held, $"{a} to {b}");
        }
    }
}
