using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Engine.Trims;
using NetTopologySuite.Geometries;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>Source: NetTopologySuite, which is handed the outlines of the wall, its tiles, its trims and their corner pieces. All of one wall.</summary>
internal static class TrimReferee
{
    // A step squared is 1: what touches may overlap by rounding along a side of some metres, along a slanted one by a step all its length.
    private static double Hair(Geometry shape) => 20_000 + Judge.SlantedLength(shape);

    /// <summary>Two places so near are one: a corner is a step off at most.</summary>
    private const double Near = 3;

    public static void Look(Job job, Plan plan)
    {
        var face = plan.Runs[0].Faces[0].Face;
        var whole = Judge.Shape(((Engine.Rooms.FaceShape.Outline)job.Faces[0].Shape).Ring, [.. face.Openings.Select(o => o.Ring)]);
        var tiles = plan.Runs.SelectMany(run => run.Faces).SelectMany(part => part.Pieces).Select(piece => (Geometry)Judge.Shape(piece.Outline, piece.Inner)).ToList();
        var pieces = plan.Trims.Lines.SelectMany(line => line.Pieces.Select(piece => (Line: line, Piece: piece, Shape: (Geometry)Judge.Shape(piece.Outline, [])))).ToList();
        var corners = plan.Trims.Lines.SelectMany(line => line.CornerPieces).DistinctBy(corner => corner.Id).Select(corner => (Corner: corner, Shape: (Geometry)Judge.Shape(Assert.Single(corner.Parts).Outline, []))).ToList();
        List<(string Name, Geometry Shape)> all = [.. pieces.Select(p => (p.Piece.Id, p.Shape)), .. corners.Select(c => (c.Corner.Id, c.Shape))];
        for (var i = 0; i < all.Count; i++)
        {
            Assert.True(all[i].Shape.Difference(whole).Area < Hair(all[i].Shape), $"{all[i].Name} leaves the wall");
            Assert.All(tiles, tile => Assert.True(tile.Intersection(all[i].Shape).Area < Hair(all[i].Shape), $"{all[i].Name} lies on a tile"));
            for (var k = i + 1; k < all.Count; k++) Assert.True(all[i].Shape.Intersection(all[k].Shape).Area < Hair(all[i].Shape), $"{all[i].Name} and {all[k].Name} lie over each other");
        }

        foreach (var (line, piece, shape) in pieces) Sides(line, piece, shape);
        Mitres(pieces.ConvertAll(p => (p.Piece, p.Shape)));
        foreach (var (corner, shape) in corners) Beside(job, plan, corner, shape, pieces.ConvertAll(p => (p.Line, p.Piece, p.Shape)));
    }

    /// <summary>The piece is as long as is said over all, and as is said to its short point along the shorter of its two long sides.</summary>
    private static void Sides(PlannedTrim line, TrimPiece piece, Geometry shape)
    {
        var (dx, dy) = ((double)(line.To.X - line.From.X).Steps, (double)(line.To.Y - line.From.Y).Steps);
        var size = Math.Sqrt((dx * dx) + (dy * dy));
        double Along(Coordinate at) => ((at.X * dx) + (at.Y * dy)) / size;
        var places = shape.Coordinates.Select(Along).ToList();
        Assert.InRange(places.Max() - places.Min() - piece.Length.Steps, -Near, Near);
        var sides = Judge.Sides(shape).Where(side => Math.Abs(((side.B.X - side.A.X) * dy) - ((side.B.Y - side.A.Y) * dx)) / size <= Near).Select(side => Math.Abs(Along(side.B) - Along(side.A)));
        Assert.InRange(sides.Min() - (piece.Length - piece.MitreTakes).Steps, -Near, Near);
    }

    /// <summary>A mitre lies against the other's from point to point.</summary>
    private static void Mitres(List<(TrimPiece Piece, Geometry Shape)> pieces)
    {
        foreach (var (piece, shape) in pieces.Where(p => p.Piece.Hand is not null))
        {
            var ends = pieces.Where(p => p.Piece != piece && p.Piece.Hand is not null)
                .Count(other => shape.Coordinates.Distinct().Count(at => other.Shape.Coordinates.Any(there => there.Distance(at) <= Near)) == 2);
            Assert.Equal(piece.Hand == MitreHand.Both ? 2 : 1, ends);
        }
    }

    /// <summary>What ends at a corner piece or a stop stands a joint before it.</summary>
    private static void Beside(Job job, Plan plan, CornerPiece corner, Geometry shape, List<(PlannedTrim Line, TrimPiece Piece, Geometry Shape)> pieces)
    {
        var lines = plan.Trims.Lines.Where(line => line.CornerPieces.Any(piece => piece.Id == corner.Id)).ToList();
        Assert.Equal(corner.Kind == CornerPieceKind.Stop ? 1 : 2, lines.Count);
        foreach (var line in lines.Where(line => line.Pieces.Count > 0))
        {
            var joint = job.Trims.Single(trim => trim.Name == line.Product).Joint.Steps;
            Assert.InRange(pieces.Where(p => p.Line == line).Min(p => p.Shape.Distance(shape)) - joint, -Near, Near);
        }
    }
}
