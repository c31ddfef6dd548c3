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

    /// <summary>Every piece of a plan by its number, with what is to be said of it.</summary>
    public static Dictionary<string, PieceOnFace> All(Plan plan, Figures figures) => plan.Runs
        .SelectMany(r => r.Faces.SelectMany(f => f.Pieces.Select(p => Of(p, f.Face) with { Note = HeldJoint.Of(p, r, figures) })))
        .ToDictionary(p => p.Piece.Id, StringComparer.Ordinal);

    public static PieceOnFace Of(Piece piece, FinishedFace face) => new(piece, face.Holes.Where(h => Reaches(h, piece)).ToSequence());

    /// <summary>Whether a hole's middle lies in the tile, not beside it.</summary>
    public bool Within(Hole hole) =>
        Piece.Cell.Left <= hole.Centre.X && hole.Centre.X <= Piece.Cell.Right && Piece.Cell.Bottom <= hole.Centre.Y && hole.Centre.Y <= Piece.Cell.Top;

    private static bool Reaches(Hole hole, Piece piece)
    {
        var cell = piece.Cell;
        var x = Beyond(hole.Centre.X, cell.Left, cell.Right);
        var y = Beyond(hole.Centre.Y, cell.Bottom, cell.Top);
        return 4 * (((Int128)x * x) + ((Int128)y * y)) < (Int128)hole.Diameter.Steps * hole.Diameter.Steps;
    }

    private static long Beyond(Length at, Length least, Length most) =>
        at < least ? (least - at).Steps : at > most ? (at - most).Steps : 0;
}
