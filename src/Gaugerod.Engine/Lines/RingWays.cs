using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Lines;

/// <summary>Which edge of a face follows which, where they meet and how they turn there.</summary>
internal sealed class RingWays
{
    private readonly int[] _next;
    private readonly (long Along, long Across)[] _end;
    private readonly TileSide[] _away;
    private readonly int[] _turn;

    public RingWays(FinishedFace face, Lay lay)
    {
        var edges = face.Edges;
        (_next, _end, _away, _turn) = (new int[edges.Count], new (long, long)[edges.Count], new TileSide[edges.Count], new int[edges.Count]);
        for (int i = 0, first = 0; i < edges.Count; i++)
        {
            var (from, to) = (edges[i].From, edges[i].To);
            var closes = to == edges[first].From;
            _next[i] = closes ? first : i + 1;
            _end[i] = lay == Lay.Level ? (to.X.Steps, to.Y.Steps) : (to.Y.Steps, to.X.Steps);
            _away[i] = CutMarks.Away(new(from.X.Steps, from.Y.Steps, 0), new(to.X.Steps, to.Y.Steps, 0));
            if (closes) first = i + 1;
        }

        for (var i = 0; i < edges.Count; i++)
        {
            var (one, other) = (edges[i], edges[_next[i]]);
            _turn[i] = Int128.Sign(
                ((Int128)(one.To.X - one.From.X).Steps * (other.To.Y - other.From.Y).Steps) - ((Int128)(one.To.Y - one.From.Y).Steps * (other.To.X - other.From.X).Steps));
        }
    }

    public bool Follows(int edge, int next) => _next[edge] == next;

    /// <summary>Where an edge ends, along and across.</summary>
    public (long Along, long Across) End(int edge) => _end[edge];

    /// <summary>The side of a tile that the edge takes off.</summary>
    public TileSide Away(int edge) => _away[edge];

    /// <summary>Which way the field's outline turns from an edge to the one that follows it: 1 outwards, -1 inwards.</summary>
    public int Turn(int edge, int next) => _next[edge] == next ? _turn[edge] : 0;
}
