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
    private readonly TileClip _clip;
    private readonly double[] _chords;
    private readonly EdgeLegs _legs;
    private readonly Dictionary<(int Round, int Way), double> _necks = [];
    private readonly bool[] _boxes;
    private readonly Angle[] _lies;

    /// <param name="field">The face's field, as the bond lies.</param>
    /// <param name="bond">The bond.</param>
    /// <param name="products">The bond's products, in its order.</param>
    /// <param name="tape">The tape; a cut whose two ends read the same on it is straight.</param>
    public PatternCutter(TurnedField field, Bond bond, Sequence<Product> products, Tape tape)
    {
        (_field, _bond, _products, _tape, _clip) = (field, bond, products, tape, new(field, bond));
        (_chords, _legs) = (ArcLegs.Chords(field.Field.Face), new(field.Field.Face));
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
        using var drafts = new Lent<Draft>(_clip.About);
        foreach (var clipped in _clip.Tiles(u, v))
        {
            if (clipped.Rings is { } rings) Parts(clipped.Tile, rings, Leg(clipped.Tile), drafts);
            else drafts.Add(new(clipped.Tile, null));
        }

        using var numbering = new Numbering(drafts, Laid, Outline);
        numbering.Sort();
        var (cut, whole) = (0, 0);
        foreach (ref readonly var draft in drafts.Items)
        {
            if (!draft.IsWhole) whole++;
        }

        return Sequence.Make(drafts.Count, (Drafts: drafts, Numbering: numbering), (from, i) =>
        {
            var (at, column) = from.Numbering[i];
            var draft = from.Drafts[at];
            return Made(draft, string.Create(CultureInfo.InvariantCulture, $"{letter}{(draft.IsWhole ? ++whole : ++cut)}"), column);
        });
    }

    /// <summary>The narrowest leg of a tile at the sides that run through it and count.</summary>
    private long Leg(in PatternTile tile)
    {
        var shape = _clip.Shapes[tile.Tile];
        var crossing = _clip.Crossing;
        Span<double> exact = stackalloc double[shape.Sides];
        exact.Clear();
        _necks.Clear();
        var least = double.MaxValue;
        foreach (var (edge, chord) in crossing)
        {
            if (_field.Field.IsDrilled(_field.Tags[edge])) continue;
            var line = _field.Edges[edge];
            if (_chords[_field.Tags[edge]] is var rake && rake == 0) least = Math.Min(least, shape.Leg(line, tile.X, tile.Y, chord, exact));
            else if (ArcLegs.Square(line, rake, shape) is { } square)
            {
                var left = ArcLegs.Left(line, chord, shape, square, tile.X, tile.Y);
                if (_legs.RoundOf(_field.Tags[edge]) is var round && round > 0) Neck((round, ArcLegs.Way(shape, square)), left.Least);
                else least = Math.Min(least, Legs.Of(left.Least, left.Most) ?? least);
            }

            foreach (var (other, facing) in crossing)
            {
                if (_field.Field.IsDrilled(_field.Tags[other]) || !_legs.HasStrip(_field.Tags[edge], _field.Tags[other])) continue;
                least = Math.Min(least, FacingCuts.Leg(line, chord, _field.Edges[other], facing) ?? least);
            }
        }

        foreach (var neck in _necks.Values)
        {
            if (neck >= Legs.Neck) least = Math.Min(least, neck);
        }

        return least == double.MaxValue ? long.MaxValue : (long)least;
    }

    private void Neck((int Round, int Way) at, double left) => _necks[at] = _necks.TryGetValue(at, out var other) ? Math.Min(other, left) : left;

    private void Parts(in PatternTile tile, IReadOnlyList<TaggedCorner[]> rings, long leg, Lent<Draft> drafts)
    {
        var cell = Cell(tile);
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
            drafts.Add(new(tile, new(kind, ring, inner.Select(hole => Ring(hole).Reversed()).ToSequence(), smallest, cuts)));
        }
    }

    private Piece Made(in Draft draft, string id, int column)
    {
        var (tile, part, face) = (draft.Tile, draft.Part, _field.Field.Face);
        var (motif, cell) = (_bond.Motif[tile.Tile], Cell(tile));
        var laid = motif.Shape.Moved(Length.FromSteps(tile.X), Length.FromSteps(tile.Y));
        var (onFace, inner, product) = (_field.OnFace(laid), part?.Inner ?? [], _products[motif.Product]);
        return new(
            id, part?.Kind ?? PieceKind.Full, face.Name, tile.Course, column, product.Name, cell, part is null ? onFace : _field.OnFace(part.Outline),
            inner.Count == 0 ? inner : inner.Select(_field.OnFace).ToSequence(), part?.Smallest ?? Length.Min(cell.Width, cell.Height), part?.Cuts ?? [])
        {
            Lies = _lies[tile.Tile], Grain = product.Grain,
            Frame = new(part?.Outline ?? laid, inner, laid, onFace, _field.Heading, face.Unrolled, face.Raised),
        };
    }

    private Box Cell(in PatternTile tile)
    {
        var (cell, right, up) = (_bond.Motif[tile.Tile].Cell, Length.FromSteps(tile.X), Length.FromSteps(tile.Y));
        return new(cell.Left + right, cell.Bottom + up, cell.Right + right, cell.Top + up);
    }

    /// <summary>The box around a piece's tile on the face.</summary>
    private Box Laid(Draft draft)
    {
        var points = _bond.Motif[draft.Tile.Tile].Shape.Points.AsSpan();
        Span<Point> onFace = stackalloc Point[points.Length];
        for (var i = 0; i < points.Length; i++) onFace[i] = _field.OnFace(points[i].Moved(Length.FromSteps(draft.Tile.X), Length.FromSteps(draft.Tile.Y)));
        return Box.Around(onFace);
    }

    /// <summary>The box around the piece itself on the face.</summary>
    private Box Outline(Draft draft) => draft.Part is { } part ? _field.OnFace(part.Outline).Bounds : Laid(draft);

    private static Ring Ring(TaggedCorner[] nodes) => new(Sequence.Make(nodes.Length, nodes, static (from, i) => from[i].Point));
}
