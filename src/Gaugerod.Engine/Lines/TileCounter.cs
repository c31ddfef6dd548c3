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
    public Sequence<Sequence<Piece>> Pieces(RunPlacing placing, IReadOnlyList<string> letters)
    {
        var placings = placing.OnFaces(_model);
        var faces = Enumerable.Range(0, _fields.Length)
            .Select(f => PieceCutter.Cut(_fields[f], _model.Bond, placings[f], _model.Problem.Product, _model.Problem.Tape, letters[f]))
            .ToList();
        var first = faces.SelectMany(face => face).Select(piece => piece.Course).DefaultIfEmpty(1).Min();
        return faces.Select(face => face.Select(piece => piece with { Course = piece.Course - first + 1 }).ToSequence()).ToSequence();
    }

    /// <summary>How many tiles the run's pieces take.</summary>
    public int Tiles(RunPlacing placing)
    {
        var letters = Enumerable.Range(0, _fields.Length).Select(f => (char)('A' + f) + "").ToArray();
        var pieces = Pieces(placing, letters).SelectMany(face => face).ToSequence();
        return CuttingPlanner.Plan(_model.Problem.Product, pieces, _model.Problem.Tape).Bought;
    }
}
