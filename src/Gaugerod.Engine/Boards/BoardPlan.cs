using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Boards;

/// <summary>A piece of board on a face.</summary>
/// <param name="Id">Its number on the job, such as <c>B3</c>.</param>
/// <param name="Row">Its row, from 1 at the foot, or at the left where rows stand.</param>
/// <param name="Shape">Its outline and what is cut out of it, on the face.</param>
/// <param name="Along">Its size along the sheet's longer side.</param>
/// <param name="Across">Its size along the sheet's shorter side.</param>
/// <param name="Screws">Where its screws go.</param>
public sealed record BoardPiece(string Id, int Row, Polygon Shape, Length Along, Length Across, Sequence<Point> Screws)
{
    /// <summary>The number of the sheet it is cut from, from 1 for each board.</summary>
    public int Sheet { get; init; }

    /// <summary>Whether it is a sheet as it comes.</summary>
    public bool IsWhole { get; init; }
}

/// <summary>A stretch of a seam, to be taped.</summary>
/// <param name="From">Where its middle begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="OnStud">Whether it stands on the middle of a stud; else nothing lies behind it between studs.</param>
public sealed record BoardSeam(Point From, Point To, bool OnStud)
{
    /// <summary>How long it is.</summary>
    public Length Length => (To.X - From.X).Abs() + (To.Y - From.Y).Abs();
}

/// <summary>A face with its sheets.</summary>
/// <param name="Face">Its name.</param>
/// <param name="Request">What was asked.</param>
/// <param name="Product">The board.</param>
/// <param name="Lay">Which way the sheets lie: across the studs or along them.</param>
/// <param name="Studs">The middles of its studs, or joists; none on a floor.</param>
/// <param name="Pieces">The pieces, row by row from the foot.</param>
/// <param name="Seams">The seams.</param>
public sealed record BoardedFace(
    string Face, BoardRequest Request, BoardProduct Product, BoardLay Lay, Sequence<Length> Studs, Sequence<BoardPiece> Pieces, Sequence<BoardSeam> Seams)
{
    /// <summary>The face as measured.</summary>
    public required Ring Outline { get; init; }

    /// <summary>Its openings.</summary>
    public required Sequence<NamedRing> Openings { get; init; }

    /// <summary>The pipes and valves that come through it.</summary>
    public Sequence<Hole> Holes { get; init; } = [];

    /// <summary>The linings of its niches. Default none.</summary>
    public Sequence<NicheBoards> Niches { get; init; } = [];

    /// <summary>How much board there is, linings of niches among it, in square millimetres.</summary>
    public double Area { get; init; }

    /// <summary>How long its inside corners are, to be taped.</summary>
    public Length Corners { get; init; }

    /// <summary>How often a seam runs into a corner of an opening, or comes nearer to it than 2 in.</summary>
    public int AtCorners { get; init; }

    /// <summary>How often seams of two rows are in line.</summary>
    public int InLine { get; init; }

    /// <summary>How many pieces are narrower than 4 in.</summary>
    public int Narrow { get; init; }

    /// <summary>How much of the seams lies under tile joints where water runs.</summary>
    public Length Under { get; init; }

    /// <summary>Whether no other choice of seams in its rows is better.</summary>
    public bool IsBest { get; init; }

    /// <summary>How long all seams are.</summary>
    public Length SeamLength => Seams.Aggregate(Length.Zero, (sum, seam) => sum + seam.Length);

    /// <summary>How long the joints of its niches are.</summary>
    public Length NicheSeams => Niches.Aggregate(Length.Zero, (sum, niche) => sum + niche.Seams);

    /// <summary>How many screws it takes.</summary>
    public int Screws => Pieces.Sum(piece => piece.Screws.Count) + Niches.Sum(niche => niche.Pieces.Sum(piece => piece.Screws));

    /// <summary>All pieces that are cut for it, by their numbers, with their sizes along and across a sheet.</summary>
    internal IEnumerable<SheetPiece> Cut => Pieces.Select(piece => new SheetPiece(piece.Id, piece.Along, piece.Across)).Concat(Niches.SelectMany(niche => niche.Pieces).Select(piece => new SheetPiece(piece.Id, piece.Along, piece.Across)));
}

/// <summary>A piece to be cut out of a sheet.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Along">Its size along the sheet's longer side.</param>
/// <param name="Across">Its size along the shorter.</param>
internal readonly record struct SheetPiece(string Id, Length Along, Length Across);

/// <summary>A piece in its sheet.</summary>
/// <param name="Id">The piece.</param>
/// <param name="At">Where the rectangle around it lies, the sheet's longer side level, its lower left corner at the origin.</param>
public sealed record PieceInSheet(string Id, Box At);

/// <summary>A sheet and what is cut from it.</summary>
/// <param name="Number">Its number, from 1 for each board.</param>
/// <param name="Pieces">Its pieces.</param>
public sealed record BoardSheet(int Number, Sequence<PieceInSheet> Pieces);

/// <summary>What is taken of a board.</summary>
/// <param name="Product">Its name.</param>
/// <param name="Sheets">The sheets.</param>
/// <param name="LowerBound">The least number of sheets that could give these pieces by straight cuts, none turned a quarter.</param>
public sealed record BoardStock(string Product, Sequence<BoardSheet> Sheets, int LowerBound);

/// <summary>The boards of a job.</summary>
/// <param name="Faces">The faces.</param>
/// <param name="Stocks">What is taken of each board.</param>
/// <param name="Corners">How long the inside corners to be taped are, each once.</param>
public sealed record BoardPlan(Sequence<BoardedFace> Faces, Sequence<BoardStock> Stocks, Length Corners)
{
    /// <summary>No board.</summary>
    public static BoardPlan None { get; } = new([], [], Length.Zero);

    /// <summary>How much tape seams, niches and inside corners take, without laps.</summary>
    public Length Tape => Faces.Aggregate(Corners, (sum, face) => sum + face.SeamLength + face.NicheSeams);

    /// <summary>How many screws all faces take.</summary>
    public int Screws => Faces.Sum(face => face.Screws);
}
