using Gaugerod.Engine.Patterns;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Prepared;
using Polygon = NetTopologySuite.Geometries.Polygon;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>What a side of the field does to a tile, by the referee.</summary>
/// <param name="Edge">The side's place among the face's edges.</param>
/// <param name="Leg">How much tile is left square to it, at the most.</param>
/// <param name="Depth">How deep the whole tile is that way.</param>
/// <param name="Sure">Whether it cuts by more than a thousandth of a step over the hair that counts.</param>
internal readonly record struct SideCut(int Edge, double Leg, double Depth, bool Sure);

/// <summary>A tile that sides cut.</summary>
internal sealed record CutTile(Polygon Tile, List<SideCut> Sides)
{
    public bool Sure => Sides.Exists(side => side.Sure);
}

/// <summary>
/// The tiles that the sides of a field run through, and their legs, by NetTopologySuite: the side is cut to the tile, and rays
/// square to it are cut to the tile as well. Over a convex tile a ray's length is a concave function of where it starts, bent
/// only where it meets a corner: so the longest ray starts at an end of the cut side, or below a corner of the tile.
/// </summary>
internal static class CutTiles
{
    private const double Doubt = 1e-3;

    /// <summary>How far from the end of a cut side a ray starts: on the end itself it may run along a side of the tile, where a library that reckons in doubles sees it or not.</summary>
    private const double Nudge = 1e-4;

    public static List<CutTile> Of(PatternModel model, int face, long x, long y)
    {
        var field = model.Fields[face];
        var found = new List<CutTile>();
        var sides = field.Edges.Select((_, i) => i).Where(i => !field.Field.IsDrilled(field.Tags[i])).Select(i => (field.Tags[i], Line: SideOf(field, i))).ToList();
        foreach (var (tile, right, up) in Repeated.Around(model.Judged, x, y, field.Bounds))
        {
            var shape = Judge.Shape(Repeated.Laid(model.Judged, tile, right, up), []);
            var prepared = PreparedGeometryFactory.Prepare(shape);
            var cuts = sides.Where(side => prepared.Intersects(side.Line)).Select(side => (Cut: Cut(shape, side.Item1, side.Line), side.Line)).Where(cut => cut.Cut is not null).Select(cut => (cut.Cut!.Value, cut.Line)).ToList();
            if (cuts.Count > 0) found.Add(new(shape, Narrowed(shape, cuts)));
        }

        return found;
    }

    /// <summary>The field as the bond sees it, before the referee.</summary>
    public static Judge JudgeOf(TurnedField field) => new(new(
        new(field.Rings[0].Select(node => node.Point).ToSequence()),
        field.Rings.Skip(1).Select(ring => new Ring(ring.Reverse().Select(node => node.Point).ToSequence())).ToSequence()));

    private static LineString SideOf(TurnedField field, int index)
    {
        var edge = field.Edges[index];
        var (x, y) = (edge.X + (edge.AlongX * edge.Length), edge.Y + (edge.AlongY * edge.Length));
        return Judge.Factory.CreateLineString([new(edge.X, edge.Y), new(Math.Round(x), Math.Round(y))]);
    }

    /// <summary>The legs where another cut faces across the tile, the two within 1 in 8 of parallel: rays square to the one end at the other.</summary>
    private static List<SideCut> Narrowed(Polygon tile, List<(SideCut Cut, LineString Side)> cuts)
    {
        const double Parallel = -0.9923;
        return cuts.ConvertAll(one =>
        {
            var (a, (alongX, alongY)) = (one.Side.Coordinates[0], Way(one.Side));
            var chord = (LineString)one.Side.Intersection(tile);
            var leg = one.Cut.Leg;
            foreach (var other in cuts)
            {
                var (x, y) = Way(other.Side);
                if ((alongX * x) + (alongY * y) >= Parallel) continue;
                var facing = (LineString)other.Side.Intersection(tile);
                var (from, to) = Ends(chord, a, alongX, alongY);
                var (first, last) = Ends(facing, a, alongX, alongY);
                (from, to) = (Math.Max(from, first) + Nudge, Math.Min(to, last) - Nudge);
                if (from >= to) continue;
                foreach (var at in new[] { from, to })
                {
                    var foot = new Coordinate(a.X + (alongX * at), a.Y + (alongY * at));
                    var ray = Judge.Factory.CreateLineString([foot, new(foot.X - (alongY * one.Cut.Depth * 2), foot.Y + (alongX * one.Cut.Depth * 2))]);
                    if (ray.Intersection(facing) is { IsEmpty: false } met) leg = Math.Min(leg, met.Coordinate.Distance(foot));
                }
            }

            return one.Cut with { Leg = leg };
        });

        static (double X, double Y) Way(LineString side) =>
            ((side.Coordinates[1].X - side.Coordinates[0].X) / side.Length, (side.Coordinates[1].Y - side.Coordinates[0].Y) / side.Length);

        static (double From, double To) Ends(LineString chord, Coordinate a, double alongX, double alongY)
        {
            var at = chord.Coordinates.Select(p => ((p.X - a.X) * alongX) + ((p.Y - a.Y) * alongY)).ToList();
            return (at.Min(), at.Max());
        }
    }

    private static SideCut? Cut(Polygon tile, int edge, LineString side)
    {
        var (a, b) = (side.Coordinates[0], side.Coordinates[1]);
        var (alongX, alongY) = ((b.X - a.X) / side.Length, (b.Y - a.Y) / side.Length);
        double Inwards(Coordinate p) => ((p.Y - a.Y) * alongX) - ((p.X - a.X) * alongY);
        double Along(Coordinate p) => ((p.X - a.X) * alongX) + ((p.Y - a.Y) * alongY);
        var corners = tile.ExteriorRing.Coordinates;
        var (least, most) = (corners.Min(Inwards), corners.Max(Inwards));
        if (side.Intersection(tile) is not LineString { IsEmpty: false } chord) return null;
        var doubt = Math.Min(Math.Min(-least, most), chord.Length) - PatternCutter.Hair;
        if (doubt < -Doubt) return null;

        var (from, to) = (Along(chord.Coordinates[0]), Along(chord.Coordinates[^1]));
        (from, to) = (Math.Min(from, to) + Nudge, Math.Max(from, to) - Nudge);
        var leg = corners.Select(Along).Where(at => at > from && at < to).Append(from).Append(to).Max(at =>
        {
            var (x, y) = (a.X + (alongX * at), a.Y + (alongY * at));
            return Judge.Factory.CreateLineString([new(x, y), new(x - (alongY * (most + 9)), y + (alongX * (most + 9)))]).Intersection(tile).Length;
        });
        return new(edge, leg, most - least, doubt > Doubt);
    }
}
