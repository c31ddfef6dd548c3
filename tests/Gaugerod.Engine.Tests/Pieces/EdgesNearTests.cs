using CsCheck;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using NetTopologySuite.Geometries;

namespace Gaugerod.Engine.Tests.Pieces;

public sealed class EdgesNearTests
{
    private static readonly Gen<(BondOnFace On, long Tile, double X, double Y, double Width, double Height)> Boxes =
        Gen.Select(RandomFields.Any, Gen.Long[1, 2_000_000], Gen.Double[-0.1, 1.1], Gen.Double[-0.1, 1.1], Gen.Double[0, 0.5], Gen.Double[0, 0.5]);

    /// <summary>NetTopologySuite says which sides touch a box; more may be found, none fewer, and each once.</summary>
    [Fact]
    public void Every_side_that_touches_a_box_is_found_near_it() => Boxes.Each(
        given =>
        {
            var (field, found) = (given.On.Field, new List<int>());
            var (left, bottom) = ((long)(field.Bounds.Left.Steps + (field.Bounds.Width.Steps * given.X)), (long)(field.Bounds.Bottom.Steps + (field.Bounds.Height.Steps * given.Y)));
            var (right, top) = (left + (long)(field.Bounds.Width.Steps * given.Width) + 1, bottom + (long)(field.Bounds.Height.Steps * given.Height) + 1);
            new EdgesNear(field, given.Tile).Find(left, bottom, right, top, found);

            var box = Judge.Shape(Ring.Of(new(Length.FromSteps(left), Length.FromSteps(bottom), Length.FromSteps(right), Length.FromSteps(top))), []);
            Assert.Equal(found.Count, found.Distinct().Count());
            for (var i = 0; i < field.Edges.Length; i++)
            {
                var edge = field.Edges[i];
                var line = new LineString([new(edge.X, edge.Y), new(edge.X + (edge.AlongX * edge.Length), edge.Y + (edge.AlongY * edge.Length))]);
                if (line.Intersects(box)) Assert.Contains(i, found);
            }
        },
        iter: 3_000);
}
