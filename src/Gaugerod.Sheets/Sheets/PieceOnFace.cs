using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A piece and the round holes of its face that reach into its tile.</summary>
internal sealed record PieceOnFace(Piece Piece, Sequence<Hole> Holes)
{
    /// <summary>What a person wonders at who cuts it; null for nothing.</summary>
    public string? Note { get; init; }

    /// <summary>The box that its tile is taken from; null where boxes are not planned.</summary>
    public int? Box { get; init; }

    /// <summary>Every piece of a plan by its number, with what is to be said of it.</summary>
    public static Dictionary<string, PieceOnFace> All(Plan plan, Figures figures)
    {
        var boxes = plan.Cutting.SelectMany(c => c.Tiles).SelectMany(t => t.Pieces.Select(p => (p.Id, t.Box))).ToDictionary(p => p.Id, p => p.Box, StringComparer.Ordinal);
        return plan.Runs
            .SelectMany(r => r.Faces.SelectMany(f => f.Pieces.Select(p => Of(p, f.Face) with { Note = HeldJoint.Of(p, r, figures), Box = boxes.GetValueOrDefault(p.Id) })))
            .ToDictionary(p => p.Piece.Id, StringComparer.Ordinal);
    }

    public static PieceOnFace Of(Piece piece, FinishedFace face) => new(piece, face.Holes.Where(h => Reaches(h, piece)).ToSequence());

    /// <summary>Whether a hole's middle lies in the tile, not beside it.</summary>
    public bool Within(Hole hole) => Piece.InCell(hole.Centre) is var at && Beyond(at.X, Piece.Cell.Width) == 0 && Beyond(at.Y, Piece.Cell.Height) == 0;

    private static bool Reaches(Hole hole, Piece piece)
    {
        var at = piece.InCell(hole.Centre);
        var (x, y) = (Beyond(at.X, piece.Cell.Width), Beyond(at.Y, piece.Cell.Height));
        return 4 * (((Int128)x * x) + ((Int128)y * y)) < (Int128)hole.Diameter.Steps * hole.Diameter.Steps;
    }

    /// <summary>How far a place lies beyond a tile's side, either way.</summary>
    private static long Beyond(Length at, Length size) => at.IsNegative ? -at.Steps : at > size ? (at - size).Steps : 0;
}
