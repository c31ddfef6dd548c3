using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Layouts;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Pieces;

/// <summary>A tile that lies in a field, whole or in part.</summary>
/// <param name="Tile">The tile.</param>
/// <param name="Rings">What the field's sides leave of it, outlines and holes mixed; null where none runs through it.</param>
internal readonly record struct ClippedTile(PatternTile Tile, IReadOnlyList<TaggedCorner[]>? Rings);

/// <summary>Which tiles of a bond lie in a field whole, and what is left of those that its sides cut.</summary>
internal sealed class TileClip
{
    private readonly TurnedField _field;
    private readonly Bond _bond;
    private readonly (long X, long Y)[][] _corners;
    private readonly (long X, long Y)[] _middles;
    private readonly EdgesNear _near;
    private readonly ConvexClip _clip;
    private readonly List<int> _found = [];
    private readonly (int Edge, Chord Chord)[] _crossing;

    public TileClip(TurnedField field, Bond bond)
    {
        (_field, _bond, Shapes) = (field, bond, [.. bond.Motif.Select(tile => new TileShape(tile))]);
        _corners = [.. bond.Motif.Select(tile => tile.Shape.Points.Select(point => (point.X.Steps, point.Y.Steps)).ToArray())];
        _middles = Array.ConvertAll(_corners, corners => (corners.Sum(corner => corner.X) / corners.Length, corners.Sum(corner => corner.Y) / corners.Length));
        _near = new(field, bond.Motif.Min(tile => Math.Min(tile.Cell.Width.Steps, tile.Cell.Height.Steps)));
        _clip = new(field.Rings);
        _crossing = new (int Edge, Chord Chord)[field.Edges.Length];
    }

    /// <summary>The tiles of the motif.</summary>
    public TileShape[] Shapes { get; }

    /// <summary>About how many tiles lie in the box around the field.</summary>
    public int About => (int)Int128.Min((Int128)_field.Bounds.Width.Steps * _field.Bounds.Height.Steps * _bond.Motif.Count / _bond.Lattice.Area, 1 << 15);

    /// <summary>The sides that run through the tile that was given last, and where.</summary>
    public ReadOnlySpan<(int Edge, Chord Chord)> Crossing => _crossing.AsSpan(0, Crossings);

    private int Crossings { get; set; }

    /// <summary>The tiles, as the layout gives them.</summary>
    /// <param name="u">Where the bond's origin lies, along.</param>
    /// <param name="v">Where it lies, across.</param>
    public IEnumerable<ClippedTile> Tiles(long u, long v)
    {
        foreach (var tile in PatternLayout.Tiles(_bond, u, v, _field.Bounds))
        {
            if (Lies(tile) is { } inside)
            {
                if (inside) yield return new(tile, null);
                continue;
            }

            yield return new(tile, Left(tile));
        }
    }

    /// <summary>Whether a tile lies in the field; null where sides run through it, which are gathered.</summary>
    private bool? Lies(in PatternTile tile)
    {
        Crossings = 0;
        var cell = _bond.Motif[tile.Tile].Cell;
        if (_near.Find(cell.Left.Steps + tile.X, cell.Bottom.Steps + tile.Y, cell.Right.Steps + tile.X, cell.Top.Steps + tile.Y, _found) is { } inside) return inside;
        var shape = Shapes[tile.Tile];
        Span<double> exact = stackalloc double[shape.Sides];
        exact.Clear();
        foreach (var edge in _found)
        {
            if (shape.Crossed(_field.Edges[edge], tile.X, tile.Y, exact) is { } chord) _crossing[Crossings++] = (edge, chord);
        }

        return Crossings > 0 ? null : FieldRings.Contains(_field.Rings, tile.X + _middles[tile.Tile].X, tile.Y + _middles[tile.Tile].Y);
    }

    private IReadOnlyList<TaggedCorner[]> Left(in PatternTile tile)
    {
        var corners = _corners[tile.Tile];
        Span<(long X, long Y)> moved = stackalloc (long X, long Y)[corners.Length];
        for (var i = 0; i < corners.Length; i++) moved[i] = (corners[i].X + tile.X, corners[i].Y + tile.Y);
        return _clip.To(moved);
    }
}
