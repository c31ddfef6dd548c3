using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Patterns;

/// <summary>Makes the pieces of a pattern's place, and counts the tiles they take.</summary>
internal sealed class PatternTiles(PatternModel model)
{
    private readonly PatternCutter[] _cutters =
        [.. model.Fields.Select(field => new PatternCutter(field, model.Bond, model.Problem.Products, model.Problem.Run.Tape))];

    /// <summary>The face with its drilled holes taken out of the field.</summary>
    public FinishedFace Drilled(int face)
    {
        var field = model.Fields[face].Field;
        return field.Face with { Field = field.Covered };
    }

    /// <summary>The pieces of each face, a face at a time, nothing until the last; courses counted from 1 at the lowest of the run.</summary>
    /// <param name="placing">The place.</param>
    /// <param name="letters">What the pieces' numbers begin with, by face.</param>
    public IEnumerable<Sequence<Sequence<Piece>>> PiecesFaceByFace(PatternPlacing placing, IReadOnlyList<string> letters)
    {
        var faces = new List<Sequence<Piece>>();
        for (var f = 0; f < _cutters.Length; f++)
        {
            faces.Add(_cutters[f].Cut(placing.X, placing.Y, letters[f]));
            yield return [];
        }

        var first = faces.SelectMany(face => face).Select(piece => piece.Course).DefaultIfEmpty(1).Min();
        yield return faces.Select(face => face.Select(piece => piece with { Course = piece.Course - first + 1 }).ToSequence()).ToSequence();
    }

    /// <summary>The place with its tiles counted, of every product.</summary>
    public PatternPlacing Counted(PatternPlacing placing)
    {
        var letters = Enumerable.Range(0, _cutters.Length).Select(f => (char)('A' + f) + "").ToArray();
        var pieces = PiecesFaceByFace(placing, letters).Last().SelectMany(face => face).ToList();
        var tiles = model.Problem.Products.Distinct().Sum(product => Bought(product, pieces));
        return placing with { Score = placing.Score with { Tiles = tiles } };
    }

    private int Bought(Product product, List<Piece> pieces)
    {
        var own = pieces.Where(piece => string.Equals(piece.Product, product.Name, StringComparison.Ordinal)).ToSequence();
        return own.Count == 0 ? 0 : CuttingPlanner.Count(product, own);
    }
}
