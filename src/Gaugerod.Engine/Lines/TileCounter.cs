using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Lines;

/// <summary>Makes the pieces of a placing, and counts the tiles they take.</summary>
internal sealed class TileCounter
{
    private readonly RunModel _model;
    private readonly FieldRings[] _fields;

    public TileCounter(RunModel model)
    {
        _model = model;
        _fields = [.. model.Frames.Select(frame => FieldRings.Of(frame.Face))];
    }

    /// <summary>The face with its drilled holes taken out of the field.</summary>
    public FinishedFace Drilled(int face) => _fields[face].Face with { Field = _fields[face].Covered };

    /// <summary>The pieces of each face, courses counted from 1 at the lowest of the run.</summary>
    /// <param name="placing">The placing.</param>
    /// <param name="letters">What the pieces' numbers begin with, by face.</param>
    public Sequence<Sequence<Piece>> Pieces(RunPlacing placing, IReadOnlyList<string> letters) => PiecesFaceByFace(placing, letters).Last();

    /// <summary>As <see cref="Pieces"/>, a face at a time: nothing until the last.</summary>
    /// <param name="placing">The placing.</param>
    /// <param name="letters">What the pieces' numbers begin with, by face.</param>
    public IEnumerable<Sequence<Sequence<Piece>>> PiecesFaceByFace(RunPlacing placing, IReadOnlyList<string> letters)
    {
        var placings = placing.OnFaces(_model);
        var faces = new List<Sequence<Piece>>();
        for (var f = 0; f < _fields.Length; f++)
        {
            faces.Add(PieceCutter.Cut(_fields[f], _model.Bond, placings[f], _model.Problem.Product, _model.Problem.Tape, letters[f]));
            yield return [];
        }

        var first = faces.SelectMany(face => face).Select(piece => piece.Course).DefaultIfEmpty(1).Min();
        yield return faces.Select(face => face.Select(piece => piece with { Course = piece.Course - first + 1 }).ToSequence()).ToSequence();
    }

    /// <summary>How many tiles the run's pieces take.</summary>
    public int Tiles(RunPlacing placing) => TilesFaceByFace(placing).Last();

    /// <summary>As <see cref="Tiles"/>, a face at a time: zero until the last.</summary>
    public IEnumerable<int> TilesFaceByFace(RunPlacing placing)
    {
        var letters = Enumerable.Range(0, _fields.Length).Select(f => (char)('A' + f) + "").ToArray();
        Sequence<Sequence<Piece>> pieces = [];
        foreach (var sofar in PiecesFaceByFace(placing, letters))
        {
            pieces = sofar;
            yield return 0;
        }

        yield return CuttingPlanner.Count(_model.Problem.Product, [.. pieces.SelectMany(face => face)]);
    }
}
