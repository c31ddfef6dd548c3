using System.Collections.Concurrent;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Index.Strtree;
using Shape = NetTopologySuite.Geometries.Polygon;

namespace Gaugerod.Engine.Tests.Pieces;

/// <summary>
/// The pieces of every bond on faces of every kind, judged by NetTopologySuite. The judge turns the bond to the face, with the
/// machine's own sine and cosine; the engine turns the face to the bond. What a side takes less than a hundredth of a
/// millimetre off is not cut, and what would be narrower is no piece: so much may be missed along a side, and no more.
/// </summary>
public sealed class PatternPiecesTests
{
    /// <summary>How far a corner may be from its true place, square to the sides it lies on, in steps: it is brought to whole ones when the face is turned, at each cut, and when the piece is turned back.</summary>
    private const double Off = 3;

    [Fact]
    public void Pieces_of_every_bond_are_its_tiles_cut_to_the_field_with_the_joint_between_them() => RandomFields.Any.Each(Check, iter: 1_000);

    [Fact]
    [Trait("Category", "Long")]
    public void Every_bond_has_a_thousand_faces_of_its_own()
    {
        var seen = new ConcurrentDictionary<string, int>();
        RandomFields.Any.EachDear(
            on =>
            {
                Check(on);
                seen.AddOrUpdate(on.Given.Name.Split(' ', ',')[0], 1, (_, count) => count + 1);
            },
            count: 15_000);
        Assert.Equal(13, seen.Count);
        Assert.All(seen, bond => Assert.InRange(bond.Value, 1_000, int.MaxValue));
    }

    private static void Check(BondOnFace on)
    {
        var (bond, pieces) = (on.Given.Bond, on.Pieces());
        var judge = new Judge(on.Field.Field.Covered);
        var byTile = pieces.ToLookup(piece => piece.Frame!.Tile);
        var (expected, found) = (0.0, 0.0);
        var sides = on.Field.Edges;
        var runsOut = ArcLegs.Chords(on.Face).Any(rake => rake > 0) || Array.Exists(sides, side => Array.Exists(sides, other => side.Faces(other) && Meet(side, other)));
        var around = on.Field.Bounds;
        var tiles = Repeated.Around(bond, on.U, on.V, around).Select(t => Repeated.Laid(bond, t.Tile, t.X, t.Y)).ToList();
        Assert.Empty(byTile.Select(group => group.Key).Except(tiles));
        foreach (var tile in tiles)
        {
            var (whole, mine) = (OnFace(on, tile), byTile[tile].ToList());
            var parts = judge.Parts(whole);
            var shapes = mine.ConvertAll(Shaped);
            (expected, found) = (expected + parts.Sum(p => p.Area), found + shapes.Sum(s => s.Area));
            CheckTile(whole, parts, mine, shapes, runsOut);
        }

        Assert.InRange(found - expected, -judge.Field.Length * PatternCutter.Hair, judge.Field.Length * PatternCutter.Hair);
        CheckJoints(pieces, on.Given.Joint.Steps);
        CheckNumbers(pieces);
    }

    /// <summary>A piece as the referee sees it. A hole drilled within a step of its side may, brought to whole steps, touch it: the referee then mends it, which must change no more than that.</summary>
    private static Geometry Shaped(Piece piece)
    {
        var shape = Judge.Shape(piece.Outline, piece.Inner);
        if (shape.IsValid) return shape;
        var mended = GeometryFixer.Fix(shape);
        Assert.True(mended.IsValid && Math.Abs(mended.Area - shape.Area) <= shape.Length, shape.ToString());
        return mended;
    }

    private static void CheckTile(Shape whole, List<Shape> parts, List<Piece> pieces, List<Geometry> shapes, bool runsOut)
    {
        var apart = Judge.Many(parts).SymmetricDifference(Judge.Many(shapes));
        var rounding = Off * (parts.Sum(part => part.Length) + shapes.Sum(shape => shape.Length));
        // A piece whose area is under half a hair times its width and height is nowhere more than 1.42 hairs wide.
        if (apart.Area > rounding) Assert.True(apart.Buffer(-(PatternCutter.Hair * 0.75) - Off).IsEmpty, $"{whole}\nshould be {Judge.Many(parts)}\nis {Judge.Many(shapes)}");

        // No part that is wider than a hair is lost, and none is there twice. What hangs together, or not, by no more than rounding may be one piece or two.
        var (fewest, most) = (parts.Count(part => !part.Buffer(-PatternCutter.Hair).IsEmpty), parts.Count);
        if (pieces.Count < fewest) fewest = Math.Min(fewest, Judge.Many(parts).Buffer(Off).NumGeometries);
        if (pieces.Count > most) most = parts.Sum(part => Math.Max(1, part.Buffer(-Off).NumGeometries));
        Assert.InRange(pieces.Count, fewest, most);
        foreach (var (piece, shape) in pieces.Zip(shapes))
        {
            // Beside an arc that leaves through the tile's far side nothing is left at that place, nor where two sides that face each other meet.
            Assert.True(piece.Smallest.Steps >= (runsOut ? 0 : 1), $"{piece.Id} {piece.Smallest}\n{shape}");
            Assert.True(piece.Outline.DoubledArea > 0);
            Assert.Equal(piece.Kind == PieceKind.Full, ReferenceEquals(piece.Frame!.Outline, piece.Frame.Tile) || piece.Frame.Outline == piece.Frame.Tile && piece.Inner.Count == 0);
        }
    }

    /// <summary>Between pieces of two tiles the joint is kept; parts of one tile only must not overlap.</summary>
    private static void CheckJoints(Sequence<Piece> pieces, double joint)
    {
        var shapes = pieces.Select(Shaped).ToList();
        var tree = new STRtree<int>();
        for (var i = 0; i < shapes.Count; i++) tree.Insert(shapes[i].EnvelopeInternal, i);
        for (var i = 0; i < shapes.Count; i++)
        {
            var near = new Envelope(shapes[i].EnvelopeInternal);
            near.ExpandBy(joint + 1);
            foreach (var j in tree.Query(near))
            {
                if (j <= i) continue;
                if (pieces[i].Frame!.Tile != pieces[j].Frame!.Tile && joint > 2 * Off)
                {
                    Assert.True(shapes[i].Distance(shapes[j]) >= joint - (2 * Off), $"{shapes[i]}\n{shapes[j]}\n{shapes[i].Distance(shapes[j])} for {joint}");
                }
                else
                {
                    Assert.InRange(shapes[i].Intersection(shapes[j]).Area, 0, Off * (shapes[i].Length + shapes[j].Length));
                }
            }
        }
    }

    private static void CheckNumbers(Sequence<Piece> pieces)
    {
        Assert.Equal(pieces.Count, pieces.Select(piece => piece.Id).Distinct().Count());
        foreach (var course in pieces.GroupBy(piece => piece.Course))
        {
            Assert.Equal(Enumerable.Range(1, course.Count()), course.Select(piece => piece.Column).Order());
        }

        var cuts = pieces.Count(piece => piece.Kind != PieceKind.Full);
        Assert.All(pieces, piece => Assert.Equal(piece.Kind == PieceKind.Full, int.Parse(piece.Id[1..], System.Globalization.CultureInfo.InvariantCulture) > cuts));
    }

    private static bool Meet(EdgeLine side, EdgeLine other) =>
        Math.Abs(side.X + (side.AlongX * side.Length) - other.X) < 1 && Math.Abs(side.Y + (side.AlongY * side.Length) - other.Y) < 1;

    /// <summary>A tile turned and moved to the face, in doubles.</summary>
    private static Shape OnFace(BondOnFace on, Ring tile)
    {
        var (sin, cos) = Math.SinCos((double)on.Turn.Thousandths * Math.PI / 180_000);
        var (right, up) = (on.Face.Unrolled.Steps, on.Face.Raised.Steps);
        return Judge.Factory.CreatePolygon([.. tile.Points.Append(tile.Points[0]).Select(p => new Coordinate((p.X.Steps * cos) - (p.Y.Steps * sin) - right, (p.X.Steps * sin) + (p.Y.Steps * cos) - up))]);
    }
}
