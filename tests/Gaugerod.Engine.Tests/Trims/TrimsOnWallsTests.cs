using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Engine.Trims;
using Gaugerod.Testing;
using NetTopologySuite.Geometries;
using static Gaugerod.Engine.Tests.Trims.TrimmedWall;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>Source: NetTopologySuite, which is handed the outlines of tiles and trims and nothing else of how they came about.</summary>
public sealed class TrimsOnWallsTests
{
    // A step squared is 1: what touches may overlap by rounding along a side of some metres.
    private const double Hair = 20_000;

    [Fact]
    public void On_100_walls_trims_lie_clear_of_tile_of_openings_and_of_each_other()
    {
        var (lines, staggers) = (0, 0);
        Any.Each(job =>
        {
            if (JobCheck.Check(job).Count > 0) return;
            var plan = Planner.Plan(job);
            Lies(job, plan);
            TrimReferee.Look(job, plan);
            Interlocked.Add(ref lines, plan.Trims.Lines.Count(line => line.Pieces.Count > 0));
            Interlocked.Add(ref staggers, plan.Trims.Lines.Count(line => line.Pieces.Count > 1 && line.Ways[0].Stagger is not null));
        });
        Assert.True(lines > 300 && staggers > 200, $"{lines} lines and {staggers} staggers were looked at");
    }

    private static void Lies(Job job, Plan plan)
    {
        var face = plan.Runs[0].Faces[0];
        var product = job.Trims[0];
        var field = Judge.Shape(face.Face.Field.Outer, face.Face.Field.Inner);
        var wall = Judge.Shape(face.Face.Outline, [.. face.Face.Openings.Select(o => o.Ring)]);
        var tiles = Judge.Factory.BuildGeometry([.. face.Pieces.Select(piece => (Geometry)Judge.Shape(piece.Outline, piece.Inner))]).Union();
        var all = plan.Trims.Lines.SelectMany(line => line.Pieces.Select(piece => (Line: line, Piece: piece, Shape: (Geometry)Judge.Shape(piece.Outline, [])))).ToList();
        foreach (var (line, piece, shape) in all)
        {
            var where = $"{piece.Id} at {line.Edge}, {line.Begin} to {line.End}";
            Assert.True(shape.Intersection(field).Area < Hair, $"{where} lies on the field");
            Assert.True(shape.Difference(wall).Area < Hair, $"{where} leaves the wall");
            Assert.True(piece.Length <= product.Stock, $"{where} is longer than its stock");
            Assert.True(piece.Length >= product.Least || plan.Trims.Findings.Any(f => f.Rule == "trim-piece"), $"{where} is shorter than the least, and nothing is said");
            var box = piece.Outline.Bounds;
            Assert.Equal(piece.Length, line.From.Y == line.To.Y ? box.Width : box.Height);
        }

        for (var i = 0; i < all.Count; i++)
        {
            for (var k = i + 1; k < all.Count; k++)
            {
                Assert.True(all[i].Shape.Intersection(all[k].Shape).Area < Hair, $"{all[i].Piece.Id} and {all[k].Piece.Id} lie over each other");
            }
        }

        foreach (var line in plan.Trims.Lines) Line(line, face, tiles, product);
        Mitres(all.ConvertAll(p => (p.Piece, p.Shape)));
        Stock(plan.Trims, product);
    }

    private static void Line(PlannedTrim line, FacePlan face, Geometry tiles, TrimProduct product)
    {
        if (line.Pieces.Count == 0) return;
        Assert.Equal(line.Length.Steps, line.Pieces.Sum(piece => piece.Length.Steps) + line.Pieces.Zip(line.Pieces.Skip(1), (one, next) => (next.From - one.To).Steps).Sum());
        Assert.All(line.Pieces.Zip(line.Pieces.Skip(1)), pair => Assert.InRange((pair.Second.From - pair.First.To - product.Joint).Steps, 0, 1));
        if (line.Begin is TrimEnd.Stop or TrimEnd.Covers) Assert.Equal(PieceEnd.Factory, line.Pieces[0].Begin);
        if (line.End is TrimEnd.Stop or TrimEnd.Covers) Assert.Equal(PieceEnd.Factory, line.Pieces[^1].End);
        Assert.Equal(line.Begin == TrimEnd.Mitre, line.Pieces[0].Begin == PieceEnd.Mitred);
        Assert.Equal(line.End == TrimEnd.Mitre, line.Pieces[^1].End == PieceEnd.Mitred);

        // A line just inside the field: what no tile covers of it are the joints. Where the field ends in a joint, tiles stand back by that.
        var edge = face.Face.Edges.Single(e => e.Name == line.Edge);
        var level = edge.From.Y == edge.To.Y;
        var (probe, open) = new[] { Mm(1).Steps / 4, (Mm(1).Steps / 4) + face.Placing.Joint.Steps }
            .Select(depth => Inside(edge, depth)).Select(inside => (inside, inside.Difference(tiles))).MinBy(found => found.Item2.Length);
        var middles = Enumerable.Range(0, open.NumGeometries).Select(open.GetGeometryN).Where(gap => gap.Length <= Mm(14).Steps && gap.Distance(probe.StartPoint) > 2 && gap.Distance(probe.EndPoint) > 2)
            .Select(gap => level ? gap.EnvelopeInternal.Centre.X : gap.EnvelopeInternal.Centre.Y).ToList();
        var joints = line.Pieces.Zip(line.Pieces.Skip(1), (one, next) => Centre(one, next, level)).ToList();
        var stagger = middles.Count == 0 || joints.Count == 0 ? null : (double?)joints.Min(joint => middles.Min(middle => Math.Abs(joint - middle)));
        var said = line.Ways[0].Stagger;
        if (stagger is null || said is null) return;
        Assert.True(
            Math.Abs(said.Value.Steps - stagger.Value) <= 2,
            $"{line.Edge}: {said} is said and {stagger / 3200} mm measured, joints of the trim at {string.Join(" ", joints.Select(j => j / 3200))}, of the field at {string.Join(" ", middles.Select(m => m / 3200))}");
    }

    /// <summary>The edge, moved into the field.</summary>
    private static LineString Inside(FieldEdge edge, long depth)
    {
        var (dx, dy) = (Math.Sign((edge.To.X - edge.From.X).Steps), Math.Sign((edge.To.Y - edge.From.Y).Steps));
        return Judge.Factory.CreateLineString([
            new(edge.From.X.Steps - (dy * depth), edge.From.Y.Steps + (dx * depth)), new(edge.To.X.Steps - (dy * depth), edge.To.Y.Steps + (dx * depth))]);
    }

    private static double Centre(TrimPiece one, TrimPiece next, bool level)
    {
        var (a, b) = (one.Outline.Bounds, next.Outline.Bounds);
        return level
            ? (a.Left < b.Left ? a.Right + b.Left : b.Right + a.Left).Steps / 2.0
            : (a.Bottom < b.Bottom ? a.Top + b.Bottom : b.Top + a.Bottom).Steps / 2.0;
    }

    /// <summary>Every mitre lies against another of the other hand.</summary>
    private static void Mitres(List<(TrimPiece Piece, Geometry Shape)> all)
    {
        foreach (var (piece, shape) in all.Where(p => p.Piece.Hand is not null))
        {
            var against = all.Where(p => p.Piece != piece && p.Piece.Hand is not null && p.Shape.Distance(shape) <= 2).ToList();
            if (piece.End == PieceEnd.Mitred) Assert.Contains(against, p => p.Piece.Begin == PieceEnd.Mitred);
            if (piece.Begin == PieceEnd.Mitred) Assert.Contains(against, p => p.Piece.End == PieceEnd.Mitred);
        }
    }

    /// <summary>What comes from one piece of stock fits in it with the blade between, and asks for each of its ends once.</summary>
    private static void Stock(TrimPlan plan, TrimProduct product)
    {
        var pieces = plan.Lines.SelectMany(line => line.Pieces).ToList();
        if (pieces.Count == 0) return;
        var stock = Assert.Single(plan.Stocks);
        Assert.Equal(Enumerable.Range(1, stock.Bought), pieces.Select(piece => piece.Stock).Distinct().Order());
        Assert.InRange(stock.LowerBound, 1, stock.Bought);
        var kept = plan.Lines.SelectMany(line => line.Pieces.Select((piece, i) => (
            piece.Id,
            Right: piece.Begin == PieceEnd.Factory && (i > 0 ? !product.ByBar : line.Begin is TrimEnd.Stop or TrimEnd.Covers),
            Left: piece.End == PieceEnd.Factory && (i < line.Pieces.Count - 1 ? !product.ByBar : line.End is TrimEnd.Stop or TrimEnd.Covers)))).ToDictionary(k => k.Id);
        var turns = product.Kind is TrimKind.Liner or TrimKind.QuarterRound;
        foreach (var shared in pieces.GroupBy(piece => piece.Stock))
        {
            Assert.True(shared.Sum(piece => (piece.Length + product.Kerf).Steps) <= (product.Stock + product.Kerf).Steps);
            var (right, left) = (shared.Count(piece => kept[piece.Id].Right), shared.Count(piece => kept[piece.Id].Left));
            Assert.True(turns ? right + left <= 2 : right <= 1 && left <= 1, $"stock {shared.Key} has one end for two pieces");
        }
    }
}
