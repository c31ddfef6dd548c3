using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Pieces;

/// <summary>Cuts the tiles of a layout to the field of a face.</summary>
internal static class PieceCutter
{
    /// <summary>
    /// The pieces of one face, as one reads it: from the top down, each course from the left. Cut pieces are numbered
    /// first, whole tiles after them. Courses are counted as the layout counts them, from the one the placing names.
    /// </summary>
    /// <param name="field">The face's field.</param>
    /// <param name="bond">The bond.</param>
    /// <param name="placing">Where it sits on the face.</param>
    /// <param name="product">The tile.</param>
    /// <param name="tape">The tape; a cut whose two ends read the same on it is straight.</param>
    /// <param name="letter">What the pieces' numbers begin with.</param>
    /// <param name="course">The lower side of the one level course to cut; null, the default, for all.</param>
    public static Sequence<Piece> Cut(FieldRings field, Bond bond, Placing placing, Product product, Tape tape, string letter, Length? course = null)
    {
        var pieces = new List<Piece>();
        var bounds = field.Face.Field.Outer.Bounds;
        if (course is { } bottom) bounds = bounds with { Bottom = bottom, Top = bottom + Length.FromSteps(1) };
        var edges = new EdgeLegs(field.Face);
        var lies = bond.Lay == Lay.Upright ? Angle.FromThousandths(Angle.QuarterTurn) : Angle.Zero;
        foreach (var tile in CourseLayout.Tiles(bond, placing, bounds))
        {
            var parts = Parts(field, tile.Cell).ToList();
            List<TaggedCorner[]> all = [.. parts.SelectMany(part => part.Inner.Prepend(part.Outline))];
            foreach (var (outline, inner) in parts)
            {
                var cuts = CutMarks.Of(outline, tile.Cell, field);
                var drilled = inner.Count > 0 || outline.Any(node => field.IsDrilled(node.Tag));
                var leg = Legs.Narrowest([outline, .. inner], all, tile.Cell, tag => !field.IsDrilled(tag), edges);
                pieces.Add(new(
                    "", PieceKinds.Of(outline, cuts, drilled, inner.Any(hole => !field.IsDrilled(hole[0].Tag)), tile.Cell, tape),
                    field.Face.Name, tile.Course, tile.Column, product.Name, tile.Cell,
                    Ring(outline), inner.Select(hole => Ring(hole).Reversed()).ToSequence(),
                    Length.FromSteps(leg ?? Math.Min(Ring(outline).Bounds.Width.Steps, Ring(outline).Bounds.Height.Steps)), cuts) { Lies = lies, Grain = product.Grain });
            }
        }

        return Numbered(pieces, letter);
    }

    /// <summary>The parts of one tile that lie in the field, each with its holes.</summary>
    private static IEnumerable<(TaggedCorner[] Outline, List<TaggedCorner[]> Inner)> Parts(FieldRings field, Box cell)
    {
        if (!field.All.Any(ring => Crosses(ring, cell)))
        {
            var (x, y) = ((cell.Left.Steps + cell.Right.Steps) / 2, (cell.Bottom.Steps + cell.Top.Steps) / 2);
            if (FieldRings.Contains(field.All, x, y)) yield return (Whole(cell), []);
            yield break;
        }

        var rings = BoxClip.Clip(field.All, cell);
        var outlines = rings.Where(ring => Ring(ring).DoubledArea > 0).ToList();
        var holes = rings.Where(ring => Ring(ring).DoubledArea < 0).ToList();
        foreach (var outline in outlines)
        {
            var inner = outlines.Count == 1
                ? holes
                : holes.Where(hole => FieldRings.Contains([outline], hole[0].X, hole[0].Y)).ToList();
            yield return (outline, inner);
        }
    }

    /// <summary>Whether a ring may pass through the inside of a cell, by the boxes around its sides.</summary>
    private static bool Crosses(TaggedCorner[] ring, Box cell)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            if (Math.Max(a.X, b.X) > cell.Left.Steps && Math.Min(a.X, b.X) < cell.Right.Steps
                && Math.Max(a.Y, b.Y) > cell.Bottom.Steps && Math.Min(a.Y, b.Y) < cell.Top.Steps) return true;
        }

        return false;
    }

    private static TaggedCorner[] Whole(Box cell) =>
    [
        new(cell.Left.Steps, cell.Bottom.Steps, BoxClip.Bottom), new(cell.Right.Steps, cell.Bottom.Steps, BoxClip.Right),
        new(cell.Right.Steps, cell.Top.Steps, BoxClip.Top), new(cell.Left.Steps, cell.Top.Steps, BoxClip.Left),
    ];

    private static Ring Ring(TaggedCorner[] nodes) => new(nodes.Select(node => node.Point).ToSequence());

    private static Sequence<Piece> Numbered(List<Piece> pieces, string letter)
    {
        var ordered = pieces
            .OrderByDescending(piece => piece.Cell.Bottom).ThenBy(piece => piece.Cell.Left)
            .ThenByDescending(piece => piece.Outline.Bounds.Bottom).ThenBy(piece => piece.Outline.Bounds.Left)
            .ToList();
        if (ordered.Count == 0) return [];
        var firstColumn = ordered.Min(piece => piece.Column);
        var (cut, whole) = (0, ordered.Count(piece => piece.Kind != PieceKind.Full));
        return ordered.Select(piece => piece with
        {
            Id = letter + (piece.Kind == PieceKind.Full ? ++whole : ++cut).ToString(System.Globalization.CultureInfo.InvariantCulture),
            Column = piece.Column - firstColumn + 1,
        }).ToSequence();
    }
}
