using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>
/// Lays a plain grid on a simple wall, only so that sheets have something to show before and beside the engine: walls with
/// upright left sides, a right side that may lean, and boxes that keep the tile off.
/// </summary>
internal sealed class HandWall(string name, Length width, Length lean, Length height, Length unrolled, (string Name, Box Box, bool Fixture)[] boxes)
{
    private static readonly Length Soft = Length.FromInches(0, 1, 8);

    public FacePlan Lay(Placing placing, Length tileWidth, Length tileHeight, Func<int> next, Hole[] holes)
    {
        var field = new Box(Soft, Soft, width - Soft, height - Soft);
        var pieces = new List<Piece>();
        var (stepX, stepY) = (tileWidth + placing.Joint, tileHeight + placing.Joint);
        for (var row = 12; row >= -1; row--)
        {
            for (var column = -1; column < 8; column++)
            {
                var (x, y) = (placing.X + (stepX * column), placing.Y + (stepY * row));
                var piece = Cut(new(x, y, x + tileWidth, y + tileHeight), field, row + 1, column + 1, next, holes);
                if (piece is not null) pieces.Add(piece);
            }
        }

        return new(Face(field, holes), placing, pieces.ToSequence());
    }

    private Length RightAt(Length y) => width - Soft - Length.FromSteps(lean.Steps * y.Steps / height.Steps);

    private Piece? Cut(Box cell, Box field, int row, int column, Func<int> next, Hole[] holes)
    {
        var box = new Box(Length.Max(cell.Left, field.Left), Length.Max(cell.Bottom, field.Bottom), Length.Min(cell.Right, field.Right), Length.Min(cell.Top, field.Top));
        if (box.Width <= Length.Zero || box.Height <= Length.Zero) return null;
        var cuts = new List<CutMark>();
        if (box.Left > cell.Left) cuts.Add(new(TileSide.Left, cell.Right - box.Left, cell.Right - box.Left, Length.Zero, cell.Height, "left"));
        if (box.Bottom > cell.Bottom) cuts.Add(new(TileSide.Bottom, cell.Top - box.Bottom, cell.Top - box.Bottom, Length.Zero, cell.Width, "foot"));
        if (box.Top < cell.Top) cuts.Add(new(TileSide.Top, box.Top - cell.Bottom, box.Top - cell.Bottom, Length.Zero, cell.Width, "head"));
        var ring = Ring.Of(box);
        var kind = cuts.Count switch { 0 => PieceKind.Full, 1 => PieceKind.Straight, _ => PieceKind.Corner };
        if (box.Right < cell.Right)
        {
            var (foot, top) = (RightAt(box.Bottom) - cell.Left, RightAt(box.Top) - cell.Left);
            cuts.Add(new(TileSide.Right, foot, top, Length.Zero, cell.Height, "right"));
            ring = new([new(box.Left, box.Bottom), new(cell.Left + foot, box.Bottom), new(cell.Left + top, box.Top), new(box.Left, box.Top)]);
            kind = lean != Length.Zero ? PieceKind.Taper : cuts.Count == 1 ? PieceKind.Straight : PieceKind.Corner;
        }

        foreach (var (_, taken, _) in boxes)
        {
            var off = new Box(taken.Left - Soft, taken.Bottom - Soft, taken.Right + Soft, taken.Top + Soft);
            if (off.Left >= box.Right || box.Left >= off.Right || off.Bottom >= box.Top || box.Bottom >= off.Top) continue;
            if (Without(box, off) is not { } rest) return null;
            ring = rest;
            kind = Marks(cell, box, off, cuts);
        }

        var inner = holes.Where(h => cell.Left < h.Centre.X && h.Centre.X < cell.Right && cell.Bottom < h.Centre.Y && h.Centre.Y < cell.Top).Select(Octagon).ToSequence();
        if (inner.Count > 0 && cuts.Count == 0) kind = PieceKind.Hole;
        var smallest = cuts.Count == 0 ? Length.Min(cell.Width, cell.Height) : cuts.Select(c => c.Least).Aggregate(Length.Min);
        return new($"A{next()}", kind, name, row, column, "Hearth 12 x 24", cell, ring, inner, smallest, cuts.ToSequence());
    }

    private static PieceKind Marks(Box cell, Box box, Box off, List<CutMark> cuts)
    {
        var (left, right) = (off.Left <= box.Left, off.Right >= box.Right);
        var (foot, head) = (off.Bottom <= box.Bottom, off.Top >= box.Top);
        var (from, to) = (Length.Max(off.Bottom, cell.Bottom) - cell.Bottom, Length.Min(off.Top, cell.Top) - cell.Bottom);
        if (left) cuts.Add(new(TileSide.Left, cell.Right - off.Right, cell.Right - off.Right, from, to, "box"));
        if (right) cuts.Add(new(TileSide.Right, off.Left - cell.Left, off.Left - cell.Left, from, to, "box"));
        if (left && right) cuts.RemoveRange(cuts.Count - 2, 2);
        var (start, end) = (Length.Max(off.Left, cell.Left) - cell.Left, Length.Min(off.Right, cell.Right) - cell.Left);
        if (foot && !head) cuts.Add(new(TileSide.Bottom, cell.Top - off.Top, cell.Top - off.Top, start, end, "box"));
        if (head && !foot) cuts.Add(new(TileSide.Top, off.Bottom - cell.Bottom, off.Bottom - cell.Bottom, start, end, "box"));
        if ((left && right) || (foot && head)) return cuts.Count == 1 ? PieceKind.Straight : PieceKind.Corner;
        return left || right ? PieceKind.Notch : PieceKind.Slot;
    }

    /// <summary>A box with another taken off it, by tracing what is left of the nine parts the two make.</summary>
    private static Ring? Without(Box box, Box off)
    {
        Length[] xs = [box.Left, Length.Max(box.Left, off.Left), Length.Min(box.Right, off.Right), box.Right];
        Length[] ys = [box.Bottom, Length.Max(box.Bottom, off.Bottom), Length.Min(box.Top, off.Top), box.Top];
        var sides = new HashSet<(Point From, Point To)>();
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                if ((i == 1 && j == 1) || xs[i] == xs[i + 1] || ys[j] == ys[j + 1]) continue;
                var corners = new Box(xs[i], ys[j], xs[i + 1], ys[j + 1]).Corners();
                for (var k = 0; k < 4; k++)
                {
                    var (a, b) = (corners[k], corners[(k + 1) % 4]);
                    if (!sides.Remove((b, a))) sides.Add((a, b));
                }
            }
        }

        if (sides.Count == 0) return null;
        var next = sides.ToDictionary(s => s.From, s => s.To);
        var points = new List<Point> { next.Keys.First() };
        while (next[points[^1]] != points[0]) points.Add(next[points[^1]]);
        points.RemoveAll(p => Straight(points, p));
        return new(points.ToSequence());
    }

    private static bool Straight(List<Point> points, Point p)
    {
        var i = points.IndexOf(p);
        var (before, after) = (points[(i + points.Count - 1) % points.Count], points[(i + 1) % points.Count]);
        return (before.X == p.X && p.X == after.X) || (before.Y == p.Y && p.Y == after.Y);
    }

    private static Ring Octagon(Hole hole) => new(Enumerable.Range(0, 16).Select(i => hole.Centre.Moved(
        Length.FromSteps((long)(hole.Diameter.Steps / 2 * Math.Cos(Math.Tau * i / 16))),
        Length.FromSteps((long)(hole.Diameter.Steps / 2 * Math.Sin(Math.Tau * i / 16))))).ToSequence());

    private FinishedFace Face(Box field, Hole[] holes)
    {
        var outline = new Ring([new(Length.Zero, Length.Zero), new(width, Length.Zero), new(width - lean, height), new(Length.Zero, height)]);
        var edges = new List<FieldEdge>();
        var outer = Ring.Of(field).Points.ToList();
        foreach (var (boxName, box, _) in boxes.Where(b => b.Fixture))
        {
            // A fixture in the lower right corner: the field steps up over it.
            outline = new([new(Length.Zero, Length.Zero), new(box.Left, Length.Zero), new(box.Left, box.Top), new(width, box.Top), new(width, height), new(Length.Zero, height)]);
            var (a, b) = (new Point(box.Left - Soft, box.Top + Soft), new Point(field.Right, box.Top + Soft));
            outer = [new(field.Left, field.Bottom), new(box.Left - Soft, field.Bottom), a, b, new(field.Right, field.Top), new(field.Left, field.Top)];
            edges.Add(new(a, b, boxName, EdgeKind.Fixture));
        }

        var openings = boxes.Where(b => !b.Fixture).Select(b => new NamedRing(b.Name, Ring.Of(b.Box))).ToSequence();
        return new(name, outline, openings, holes.ToSequence(), new(new(outer.ToSequence()), openings.Select(o => o.Ring).ToSequence()), edges.ToSequence(), unrolled, Length.Zero);
    }
}
