using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Pieces;

/// <summary>
/// How the edges of a face make legs, for a bond whose tiles stand upright: the one rule for pieces as they are cut, for the search and for what slides
/// (docs/lines.md, "A leg").
/// </summary>
internal sealed class EdgeLegs
{
    private readonly int _edges;
    private readonly EdgeClass[] _classes;
    private readonly int[] _rounds;
    private readonly bool[,] _near;

    public EdgeLegs(FinishedFace face)
    {
        var chords = ArcLegs.Chords(face);
        _edges = face.Edges.Count;
        _classes = [.. face.Edges.Select((edge, i) => Class(edge, chords[i]))];
        _rounds = ArcLegs.Rounds(face);
        Rounds = _rounds.DefaultIfEmpty(0).Max();
        _near = new bool[Rounds + 1, _edges + Rounds + 1];
        for (var one = 0; one < _edges; one++)
        {
            for (var other = 0; _rounds[one] > 0 && other < _edges; other++)
            {
                if (Apart(face.Edges[one], face.Edges[other]) < Legs.Neck) _near[_rounds[one], Of(other)] = true;
            }
        }
    }

    /// <summary>How many rounds the face has.</summary>
    public int Rounds { get; }

    /// <summary>Which way an edge runs; of a round hollow, all but the chords at its crown are raking, for they have no leg.</summary>
    public EdgeClass ClassOf(int edge) => _classes[edge];

    /// <summary>The round that an edge belongs to, counted from 1; zero for one of none, and for a drilled hole.</summary>
    public int RoundOf(int edge) => edge < _edges ? _rounds[edge] : 0;

    /// <summary>Whether tile between two edges that face each other makes a leg: beside a round only where it is nowhere less than a <see cref="Legs.Neck"/> from the other.</summary>
    public bool HasStrip(int one, int other) =>
        (RoundOf(one) == 0 || !_near[RoundOf(one), Of(other)]) && (RoundOf(other) == 0 || !_near[RoundOf(other), Of(one)]);

    private int Of(int edge) => _rounds[edge] > 0 ? _edges + _rounds[edge] : edge;

    /// <summary>How far apart two edges stand that do not cross: at an end of one of them.</summary>
    private static double Apart(FieldEdge one, FieldEdge other) => new[] { Off(one.From, other), Off(one.To, other), Off(other.From, one), Off(other.To, one) }.Min();

    private static double Off(Point place, FieldEdge edge)
    {
        var along = (double)Segments.Dot(edge.From, edge.To, edge.From, edge.To);
        var part = Math.Clamp((double)Segments.Dot(edge.From, edge.To, edge.From, place) / along, 0, 1);
        var (x, y) = ((place.X - edge.From.X).Steps - (part * (edge.To.X - edge.From.X).Steps), (place.Y - edge.From.Y).Steps - (part * (edge.To.Y - edge.From.Y).Steps));
        return Math.Sqrt((x * x) + (y * y));
    }

    private static EdgeClass Class(FieldEdge edge, double rake)
    {
        var (x, y) = ((double)(edge.To.X - edge.From.X).Steps, (double)(edge.To.Y - edge.From.Y).Steps);
        return rake > 0 && Math.Min(Math.Abs(x), Math.Abs(y)) > rake * Math.Sqrt((x * x) + (y * y)) ? EdgeClass.Raking : EdgeClasses.Of(edge);
    }
}
