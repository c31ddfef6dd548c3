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
    private readonly TileClip _clip;
    private readonly bool[] _chords, _boxes;
    private readonly Angle[] _lies;

    /// <param name="field">The face's field, as the bond lies.</param>
    /// <param name="bond">The bond.</param>
    /// <param name="products">The bond's products, in its order.</param>
    /// <param name="tape">The tape; a cut whose two ends read the same on it is straight.</param>
    public PatternCutter(TurnedField field, Bond bond, Sequence<Product> products, Tape tape)
    {
        (_field, _bond, _products, _tape, _clip) = (field, bond, products, tape, new(field, bond));
        _chords = ArcLegs.Chords(field.Field.Face);
        _boxes = [.. bond.Motif.Select(tile => tile.IsBox)];
        _lies = [.. bond.Motif.Select(tile => Grains.Lies(tile, products[tile.Product]))];
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
        foreach (var clipped in _clip.Tiles(u, v))
        {
            if (clipped.Rings is { } rings) Parts(clipped.Tile, rings, Leg(clipped.Tile), pieces);
            else pieces.Add(Whole(clipped.Tile));
        }

        return Numbering.Of(pieces, letter);
    }

    /// <summary>The narrowest leg of a tile at the sides that run through it and count.</summary>
    private long Leg(in PatternTile tile)
    {
        var shape = _clip.Shapes[tile.Tile];
        var crossing = _clip.Crossing;
        Span<double> exact = stackalloc double[shape.Sides];
        exact.Clear();
        var least = double.MaxValue;
        foreach (var (edge, chord) in crossing)
        {
            if (_field.Field.IsDrilled(_field.Tags[edge])) continue;
            var line = _field.Edges[edge];
            if (!_chords[_field.Tags[edge]]) least = Math.Min(least, shape.Leg(line, tile.X, tile.Y, chord, exact));
            else if (ArcLegs.Square(line, shape) is { } square) least = Math.Min(least, ArcLegs.Left(line, chord, shape, square, tile.X, tile.Y));
            foreach (var (other, facing) in crossing)
            {
                if (!_field.Field.IsDrilled(_field.Tags[other])) least = Math.Min(least, FacingCuts.Gap(line, chord, _field.Edges[other], facing) ?? least);
            }
        }

        return least == double.MaxValue ? long.MaxValue : (long)least;
    }

    private Piece Whole(in PatternTile tile)
    {
        var outline = Laid(tile);
        var cell = Cell(tile);
        var smallest = Length.Min(cell.Width, cell.Height);
        return Make(tile, PieceKind.Full, cell, outline, [], outline, smallest, []);
    }

    private void Parts(in PatternTile tile, IReadOnlyList<TaggedCorner[]> rings, long leg, List<Piece> pieces)
    {
        var (cell, laid) = (Cell(tile), Laid(tile));
        foreach (var outline in rings)
        {
            var ring = Ring(outline);
            var (area, bounds) = (ring.DoubledArea, ring.Bounds);
            if (area <= 0 || area < (Int128)Hair * (bounds.Width + bounds.Height).Steps) continue;
            var inner = rings.Count == 1 ? [] : rings.Where(hole => Ring(hole).DoubledArea < 0 && FieldRings.Contains([outline], hole[0].X, hole[0].Y)).ToList();
            var cuts = CutMarks.Of(outline, cell, _field.Field);
            var drilled = inner.Count > 0 || Array.Exists(outline, node => _field.Field.IsDrilled(node.Tag));
            var pierced = inner.Exists(hole => !_field.Field.IsDrilled(hole[0].Tag));
            var kind = _boxes[tile.Tile]
                ? PieceKinds.Of(outline, cuts, drilled, pierced, cell, _tape)
                : drilled && !pierced && cuts.Count == 0 ? PieceKind.Hole : PieceKind.Shaped;
            var smallest = leg == long.MaxValue ? Length.Min(bounds.Width, bounds.Height) : Length.FromSteps(leg);
            pieces.Add(Make(tile, kind, cell, laid, inner.Select(hole => Ring(hole).Reversed()).ToSequence(), ring, smallest, cuts));
        }
    }

    private Piece Make(in PatternTile tile, PieceKind kind, Box cell, Ring laid, Sequence<Ring> inner, Ring outline, Length smallest, Sequence<CutMark> cuts)
    {
        var (onFace, face) = (_field.OnFace(laid), _field.Field.Face);
        var product = _products[_bond.Motif[tile.Tile].Product];
        return new(
            "", kind, face.Name, tile.Course, tile.Column, product.Name, cell,
            ReferenceEquals(outline, laid) ? onFace : _field.OnFace(outline), inner.Count == 0 ? inner : inner.Select(_field.OnFace).ToSequence(), smallest, cuts)
        {
            Lies = _lies[tile.Tile], Grain = product.Grain,
            Frame = new(outline, inner, laid, onFace, _field.Heading, face.Unrolled, face.Raised),
        };
    }

    private Box Cell(in PatternTile tile)
    {
        var (cell, right, up) = (_bond.Motif[tile.Tile].Cell, Length.FromSteps(tile.X), Length.FromSteps(tile.Y));
        return new(cell.Left + right, cell.Bottom + up, cell.Right + right, cell.Top + up);
    }

    private Ring Laid(in PatternTile tile) => _bond.Motif[tile.Tile].Shape.Moved(Length.FromSteps(tile.X), Length.FromSteps(tile.Y));

    private static Ring Ring(TaggedCorner[] nodes) => new(Sequence.Make(nodes.Length, nodes, static (from, i) => from[i].Point));
}
