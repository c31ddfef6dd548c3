using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Cutting;

/// <summary>
/// Judges by geometry alone whether pieces may lie in a tile: it turns a piece with its cell, lays the cell on the tile,
/// and looks at the boxes. It knows nothing of pools, ends or needs.
/// </summary>
internal static class CutPlanReferee
{
    /// <summary>The turns this tile allows that lay the piece's cell on the lying tile.</summary>
    public static IEnumerable<int> Turns(Product tile, Piece piece)
    {
        var square = tile.Width == tile.Height;
        var upright = !square && piece.Cell.Width == tile.Height;
        int[] allowed = (tile.Turning, upright) switch
        {
            (Turning.None, false) => [0],
            (Turning.None, true) => [3],
            (Turning.Half, false) => [0, 2],
            (Turning.Half, true) => [1, 3],
            _ => [0, 1, 2, 3],
        };
        return allowed.Where(t => Lie(Ring.Of(piece.Cell), piece.Cell, t).Bounds == new Box(Length.Zero, Length.Zero, tile.Width, tile.Height));
    }

    /// <summary>A ring on the wall, turned about the origin by whole quarters and moved so that the cell's lower left is there.</summary>
    public static Ring Lie(Ring ring, Box cell, int quarters)
    {
        var (points, corners) = (ring.Points.AsEnumerable(), cell.Corners().AsEnumerable());
        for (var i = 0; i < quarters; i++)
        {
            points = points.Select(p => new Point(-p.Y, p.X));
            corners = corners.Select(p => new Point(-p.Y, p.X));
        }

        var box = Box.Around(corners);
        return new([.. points.Select(p => p.Moved(-box.Left, -box.Bottom))]);
    }

    public static bool Apart(Box a, Box b, Length kerf) =>
        a.Right + kerf <= b.Left || b.Right + kerf <= a.Left || a.Top + kerf <= b.Bottom || b.Top + kerf <= a.Bottom;

    /// <summary>Whether there is any way at all to lay both in one tile, each with its factory sides on the tile's, and one straight cut along a side of either between them.</summary>
    public static bool MayShare(Product tile, Piece a, Piece b) =>
        a.Kind != PieceKind.Full && b.Kind != PieceKind.Full &&
        Turns(tile, a).Any(s => Turns(tile, b).Any(t => Gap(Lie(a.Outline, a.Cell, s), Lie(b.Outline, b.Cell, t)) >= tile.Kerf.Steps));

    /// <summary>What is wrong with a tile of a plan, or null: every piece in it as it may be turned, of its shape, its factory sides on the tile's, the blade between any two, and the cuts so that they can be sawn.</summary>
    public static string? Fault(Product tile, CutTile cut, IReadOnlyDictionary<string, Piece> pieces)
    {
        var sheet = new Box(Length.Zero, Length.Zero, tile.Width, tile.Height);
        foreach (var lying in cut.Pieces)
        {
            var piece = pieces[lying.Id];
            if (!Turns(tile, piece).Contains(lying.Turned)) return $"{lying.Id} is turned by {lying.Turned} quarters";
            var natural = Lie(piece.Outline, piece.Cell, lying.Turned);
            var (box, own) = (lying.At.Bounds, natural.Bounds);
            if (natural.Moved(box.Left - own.Left, box.Bottom - own.Bottom) != lying.At) return $"{lying.Id} is not of its shape";
            if (box.Left < sheet.Left || box.Bottom < sheet.Bottom || box.Right > sheet.Right || box.Top > sheet.Top) return $"{lying.Id} leaves the tile";
            foreach (var (a, b, x, y) in Sides(natural, sheet))
            {
                var (toX, toY) = (box.Left - own.Left, box.Bottom - own.Bottom);
                if ((x && toX != Length.Zero) || (y && toY != Length.Zero)) return $"a factory side of {lying.Id} is cut: {a} to {b}";
            }
        }

        for (var i = 0; i < cut.Pieces.Count; i++)
        {
            for (var j = i + 1; j < cut.Pieces.Count; j++)
            {
                // A whole step is the finest that either of them knows.
                if (Referee.Shape(cut.Pieces[i].At).Distance(Referee.Shape(cut.Pieces[j].At)) < tile.Kerf.Steps - 1) return $"{cut.Pieces[i].Id} and {cut.Pieces[j].Id} are too near each other";
            }
        }

        return cut.Nests ? null : Sawn(tile, cut, sheet);
    }

    /// <summary>Saws as the plan says: every cut from side to side of something that lies on the bench; in the end every piece lies in a part of its own.</summary>
    private static string? Sawn(Product tile, CutTile cut, Box sheet)
    {
        if (cut.Cuts.Count == 0) return cut.Pieces.Count == 1 ? null : "several pieces and no cut";
        var bench = new List<Box> { sheet };
        foreach (var saw in cut.Cuts)
        {
            if (!bench.Remove(saw.Over)) return $"nothing like {saw.Over} lies on the bench";
            var (near, far) = saw.FromFar ? (saw.At - tile.Kerf, saw.At) : (saw.At, saw.At + tile.Kerf);
            var kept = (saw.Upright, saw.FromFar) switch
            {
                (true, false) => saw.At - saw.Over.Left,
                (true, true) => saw.Over.Right - saw.At,
                (false, false) => saw.At - saw.Over.Bottom,
                _ => saw.Over.Top - saw.At,
            };
            if (saw.Fence > kept || kept - saw.Fence >= Tape.Millimetres.Mark) return $"the fence at {saw.Fence} keeps {kept}";
            var whole = saw.Upright ? saw.Over.Width : saw.Over.Height;
            if (tile.Snaps is { } least && cut.Pieces.Count > 1 && (kept < least || (whole > kept && whole - kept < least))) return $"a strip of {kept} of {whole} does not snap";
            bench.Add(saw.Upright ? saw.Over with { Right = near } : saw.Over with { Top = near });
            bench.Add(saw.Upright ? saw.Over with { Left = far } : saw.Over with { Bottom = far });
        }

        var own = cut.Pieces.Select(piece => bench.FindIndex(part => Holds(part, piece.At.Bounds))).ToList();
        return own.Contains(-1) || own.Distinct().Count() < own.Count ? "two pieces lie in one part" : null;
    }

    private static bool Holds(Box part, Box piece) => part.Left <= piece.Left && part.Bottom <= piece.Bottom && part.Right >= piece.Right && part.Top >= piece.Top;

    // The sides of a piece in its own tile that are sides of the tile, and which way it may then not be moved.
    private static IEnumerable<(Point A, Point B, bool X, bool Y)> Sides(Ring ring, Box sheet)
    {
        for (var i = 0; i < ring.Points.Count; i++)
        {
            var (a, b) = (ring.Points[i], ring.Points[(i + 1) % ring.Points.Count]);
            if (a.X == b.X && (a.X == sheet.Left || a.X == sheet.Right)) yield return (a, b, true, false);
            if (a.Y == b.Y && (a.Y == sheet.Bottom || a.Y == sheet.Top)) yield return (a, b, false, true);
        }
    }

    /// <summary>How far two convex outlines stand off each other, square to the side of either that parts them best; less than nothing where none does.</summary>
    private static double Gap(Ring one, Ring other) => Math.Max(Beyond(one, other), Beyond(other, one));

    private static double Beyond(Ring one, Ring other)
    {
        var best = double.MinValue;
        for (var i = 0; i < one.Points.Count; i++)
        {
            var (a, b) = (one.Points[i], one.Points[(i + 1) % one.Points.Count]);
            var (run, rise) = ((double)(b.X - a.X).Steps, (double)(b.Y - a.Y).Steps);
            var length = Math.Sqrt((run * run) + (rise * rise));
            if (length > 0) best = Math.Max(best, other.Points.Min(p => ((rise * (p.X - a.X).Steps) - (run * (p.Y - a.Y).Steps)) / length));
        }

        return best;
    }
}
