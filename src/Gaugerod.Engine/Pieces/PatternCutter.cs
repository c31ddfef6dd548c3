using System.Globalization;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Pieces;

/// <summary>Cuts the tiles of a bond of any kind, turned or not, to the field of a face.</summary>
internal sealed class PatternCutter
{
    /// <summary>A hundredth of a millimetre: what a side takes less than this off, it does not cut; what would be narrower is no piece.</summary>
    public const long Hair = 32;

    private readonly TurnedField _field;
    private readonly Bond _bond;
    private readonly Sequence<Product> _products;
    private readonly Tape _tape;
    private readonly TileShape[] _shapes;
    private readonly (long X, long Y)[][] _corners;
    private readonly EdgesNear _near;
    private readonly double[] _chords;
    private readonly List<int> _found = [];
    private readonly List<(int Edge, Chord Chord)> _crossing = [];

    /// <param name="field">The face's field, as the bond lies.</param>
    /// <param name="bond">The bond.</param>
    /// <param name="products">The bond's products, in its order.</param>
    /// <param name="tape">The tape; a cut whose two ends read the same on it is straight.</param>
    public PatternCutter(TurnedField field, Bond bond, Sequence<Product> products, Tape tape)
    {
        (_field, _bond, _products, _tape) = (field, bond, products, tape);
        _shapes = [.. bond.Motif.Select(tile => new TileShape(tile))];
        _corners = [.. bond.Motif.Select(tile => tile.Shape.Points.Select(point => (point.X.Steps, point.Y.Steps)).ToArray())];
        _chords = ArcLegs.Chords(field.Field.Face);
        _near = new(field.Edges, field.Bounds, bond.Motif.Min(tile => Math.Min(tile.Cell.Width.Steps, tile.Cell.Height.Steps)));
    }

    /// <summary>
    /// The pieces of the face as one reads it: from the top down, from the left. Cut pieces are numbered first, whole tiles
    /// after them. Courses are counted as the layout counts them.
    /// </summary>
    /// <param name="u">Where the bond's origin lies, along.</param>
    /// <param name="v">Where it lies, across.</param>
    /// <param name="letter">What the pieces' numbers begin with.</param>
    public Sequence<Piece> Cut(long u, long v, string letter)
    {
        var pieces = new List<Piece>();
        foreach (var tile in PatternLayout.Tiles(_bond, u, v, _field.Bounds))
        {
            var legs = Crossing(tile);
            if (legs is null)
            {
                if (IsInside(tile)) pieces.Add(Whole(tile));
                continue;
            }

            Parts(tile, legs.Value, pieces);
        }

        return Numbered(pieces, letter);
    }

    /// <summary>The sides that run through a tile are gathered; the narrowest leg of those that count, or null when none runs through it.</summary>
    private long? Crossing(PatternTile tile)
    {
        var (cell, shape) = (_bond.Motif[tile.Tile].Cell, _shapes[tile.Tile]);
        _crossing.Clear();
        _near.Find(cell.Left.Steps + tile.X, cell.Bottom.Steps + tile.Y, cell.Right.Steps + tile.X, cell.Top.Steps + tile.Y, _found);
        if (_found.Count == 0) return null;
        Span<double> exact = stackalloc double[shape.Sides];
        exact.Clear();
        foreach (var edge in _found)
        {
            if (shape.Crossed(_field.Edges[edge], tile.X, tile.Y, exact) is { } chord) _crossing.Add((edge, chord));
        }

        if (_crossing.Count == 0) return null;
        var least = double.MaxValue;
        foreach (var (edge, chord) in _crossing)
        {
            if (_field.Field.IsDrilled(_field.Tags[edge])) continue;
            var line = _field.Edges[edge];
            if (_chords[_field.Tags[edge]] is var rake && rake == 0) least = Math.Min(least, shape.Leg(line, tile.X, tile.Y, chord, exact));
            else if (ArcLegs.Square(line, rake, shape) is { } square) least = Math.Min(least, ArcLegs.Left(line, chord, shape, square, tile.X, tile.Y));
            foreach (var (other, facing) in _crossing)
            {
                if (!_field.Field.IsDrilled(_field.Tags[other])) least = Math.Min(least, FacingCuts.Gap(line, chord, _field.Edges[other], facing) ?? least);
            }
        }

        return least == double.MaxValue ? long.MaxValue : (long)least;
    }

    private bool IsInside(PatternTile tile)
    {
        var (x, y) = (0L, 0L);
        foreach (var corner in _corners[tile.Tile]) (x, y) = (x + corner.X, y + corner.Y);
        var count = _corners[tile.Tile].Length;
        return FieldRings.Contains(_field.Rings, tile.X + (x / count), tile.Y + (y / count));
    }

    private Piece Whole(PatternTile tile)
    {
        var outline = Laid(tile);
        var cell = Cell(tile);
        var smallest = Length.Min(cell.Width, cell.Height);
        return Make(tile, PieceKind.Full, cell, outline, [], outline, smallest, []);
    }

    private void Parts(PatternTile tile, long leg, List<Piece> pieces)
    {
        var (cell, laid) = (Cell(tile), Laid(tile));
        var corners = Array.ConvertAll(_corners[tile.Tile], corner => (corner.X + tile.X, corner.Y + tile.Y));
        var rings = ConvexClip.Clip(_field.Rings, corners);
        foreach (var outline in rings.Where(ring => Ring(ring).DoubledArea > 0))
        {
            var ring = Ring(outline);
            var bounds = ring.Bounds;
            if (ring.DoubledArea < (Int128)Hair * (bounds.Width + bounds.Height).Steps) continue;
            var inner = rings.Where(hole => Ring(hole).DoubledArea < 0 && FieldRings.Contains([outline], hole[0].X, hole[0].Y)).ToList();
            var cuts = CutMarks.Of(outline, cell, _field.Field);
            var drilled = inner.Count > 0 || outline.Any(node => _field.Field.IsDrilled(node.Tag));
            var pierced = inner.Any(hole => !_field.Field.IsDrilled(hole[0].Tag));
            var kind = _bond.Motif[tile.Tile].IsBox
                ? PieceKinds.Of(outline, cuts, drilled, pierced, cell, _tape)
                : drilled && !pierced && cuts.Count == 0 ? PieceKind.Hole : PieceKind.Shaped;
            var smallest = leg == long.MaxValue ? Length.Min(bounds.Width, bounds.Height) : Length.FromSteps(leg);
            pieces.Add(Make(tile, kind, cell, laid, inner.Select(hole => Ring(hole).Reversed()).ToSequence(), ring, smallest, cuts));
        }
    }

    private Piece Make(PatternTile tile, PieceKind kind, Box cell, Ring laid, Sequence<Ring> inner, Ring outline, Length smallest, Sequence<CutMark> cuts)
    {
        var (onFace, bonded) = (_field.OnFace(laid), _bond.Motif[tile.Tile]);
        var product = _products[bonded.Product];
        return new(
            "", kind, _field.Field.Face.Name, tile.Course, tile.Column, product.Name, cell,
            ReferenceEquals(outline, laid) ? onFace : _field.OnFace(outline), inner.Select(_field.OnFace).ToSequence(), smallest, cuts)
        {
            Lies = Grains.Lies(bonded, product), Grain = product.Grain,
            Frame = new(outline, inner, laid, onFace, _field.Heading, _field.Field.Face.Unrolled, _field.Field.Face.Raised),
        };
    }

    private Box Cell(PatternTile tile)
    {
        var (cell, right, up) = (_bond.Motif[tile.Tile].Cell, Length.FromSteps(tile.X), Length.FromSteps(tile.Y));
        return new(cell.Left + right, cell.Bottom + up, cell.Right + right, cell.Top + up);
    }

    private Ring Laid(PatternTile tile) => _bond.Motif[tile.Tile].Shape.Moved(Length.FromSteps(tile.X), Length.FromSteps(tile.Y));

    private static Ring Ring(TaggedCorner[] nodes) => new(nodes.Select(node => node.Point).ToSequence());

    private static Sequence<Piece> Numbered(List<Piece> pieces, string letter)
    {
        var (cut, whole) = (0, pieces.Count(piece => piece.Kind != PieceKind.Full));
        var placed = pieces.GroupBy(piece => piece.Course)
            .SelectMany(course => course.OrderBy(piece => piece.Column).ThenBy(piece => piece.Outline.Bounds.Left).Select((piece, i) => piece with { Column = i + 1 }));
        return Lines(placed).SelectMany(line => line
                .OrderBy(piece => piece.Laid.Bounds.Left).ThenByDescending(piece => piece.Outline.Bounds.Bottom).ThenBy(piece => piece.Outline.Bounds.Left))
            .Select(piece => piece with
            {
                Id = letter + (piece.Kind == PieceKind.Full ? ++whole : ++cut).ToString(CultureInfo.InvariantCulture),
            }).ToSequence();
    }

    /// <summary>The lines in which one reads the face, from the top: tiles whose feet differ by no more than rounding stand on one.</summary>
    private static List<List<Piece>> Lines(IEnumerable<Piece> pieces)
    {
        var lines = new List<List<Piece>>();
        var foot = long.MaxValue;
        foreach (var (piece, at) in pieces.Select(piece => (piece, At: piece.Laid.Bounds.Bottom.Steps)).OrderByDescending(pair => pair.At))
        {
            if (lines.Count == 0 || foot - at > Hair) lines.Add([]);
            lines[^1].Add(piece);
            foot = at;
        }

        return lines;
    }
}
