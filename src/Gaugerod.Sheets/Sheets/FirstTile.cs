using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Where the first tile goes: the piece, the face, and the words.</summary>
internal sealed record FirstTile(string Face, Piece? Piece, string Words)
{
    /// <summary>The first tile of a run, or of each strip of a border.</summary>
    public static IReadOnlyList<FirstTile> All(RunPlan run, Figures figures) => run.IsBorder ? [.. run.Strips.Select(strip => Of(strip, figures))] : [Of(run, figures)];

    /// <summary>All that is said of them.</summary>
    public static string Said(IReadOnlyList<FirstTile> tiles) => string.Join(" ", tiles.Select(tile => tile.Words));

    /// <summary>The same with words for a picture that has no room for their name.</summary>
    public static IReadOnlyList<FirstTile> Black(IReadOnlyList<FirstTile> tiles) => tiles.Count == 1
        ? [tiles[0] with { Words = tiles[0].Words + " It is solid black in the picture." }]
        : [.. tiles.SkipLast(1), tiles[^1] with { Words = tiles[^1].Words + " A first tile without its name is solid black in the picture." }];

    private static FirstTile Of(RunPlan run, Figures figures)
    {
        var faces = run.Faces.OrderByDescending(f => Score(run, f)).ToArray();
        var face = faces[0];
        var level = Nearest(run, face, Axis.Level);
        var plumb = Nearest(run, face, Axis.Plumb);
        var name = face.Face.Name;
        if (level is null && plumb is null) return new(name, null, "No line is given for this run; set out from the placing on the sheet of proposals.");
        if (run.IsPattern && level is not null && plumb is not null) return OfPattern(run, face, level, plumb, figures);
        var reach = run.Best.Placing.Joint + run.Best.Placing.Joint;
        var piece = face.Pieces
            .OrderBy(p => Away(level, p.Cell.Bottom))
            .ThenBy(p => Beside(plumb, p) <= reach.Steps && p.Kind == PieceKind.Full ? 0 : 1)
            .ThenBy(p => Beside(plumb, p))
            .ThenBy(p => p.Cell.Left.Steps)
            .FirstOrDefault();
        if (piece is null) return new(name, null, "No tile lies on this face.");
        var words = $"On {name}: the first tile {Stands(level, piece, run, figures)}{(level is not null && plumb is not null ? ", and " : "")}{Touches(plumb, piece, run, figures)}.";
        if (piece.Kind != PieceKind.Full) words += $" It is piece {piece.Id}, cut.";
        return new(name, piece, words + Onward(level, plumb));
    }

    /// <summary>The tile of a pattern that stands where its two lines cross.</summary>
    private static FirstTile OfPattern(RunPlan run, FacePlan face, SnapLine level, SnapLine plumb, Figures figures)
    {
        // One pattern runs over all planes of a floor that falls; its first tile may lie on any of them, or over a fold.
        var near = run.Faces.Where(of => LineFace.Is(of.Face, level.Face)).SelectMany(of => of.Pieces.Select(piece => (Plan: of, Piece: piece))).OrderBy(of => Off(of.Piece, new(plumb.At, level.At))).ToList();
        if (near.Count == 0) return new(face.Face.Name, null, "No tile lies on this face.");
        var (on, piece) = near[0];
        var parts = near.Where(of => of.Piece.Cell == piece.Cell).Select(of => of.Piece.Id).ToList();
        var cut = piece.Kind == PieceKind.Full ? "" : parts.Count == 1 ? $" It is piece {piece.Id}, cut." : $" It is cut: {NameList.Of(parts)} are its pieces.";
        var turned = run.Turned.Any(line => LineFace.Is(face.Face, line.Face)) ? " Its sides lie along the two turned lines." : "";
        var words = $"On {face.Face.SetOut.Name}: where the level line {Place(level, run, figures)} and the plumb line {Place(plumb, run, figures)} cross stands {level.Why[(level.Why.IndexOf("stands", StringComparison.Ordinal) + 7)..]}{cut}{turned} Lay the pattern out from it both ways.";
        return new(on.Face.Name, piece, words);

        Int128 Off(Piece piece, Point at)
        {
            // The first tile's own corner is nearest, of a strip of a border any; of a tile set by its middle, the middle.
            var (points, box) = (piece.Laid.Points, piece.Laid.Bounds);
            var middle = Point.FromSteps((box.Left.Steps + box.Right.Steps) / 2, (box.Bottom.Steps + box.Top.Steps) / 2);
            return (level.Why.Contains("stands a corner", StringComparison.Ordinal) ? points : points.Take(1)).Append(middle).Min(p => Segments.Dot(p, at, p, at));
        }
    }

    private static string Onward(SnapLine? level, SnapLine? plumb) => (level, plumb) switch
    {
        (not null, not null) => " Work along the line both ways, then up.",
        _ => "",
    };

    private static int Score(RunPlan run, FacePlan face) =>
        (Nearest(run, face, Axis.Level) is null ? 0 : 4) + (Nearest(run, face, Axis.Plumb) is null ? 0 : 4)
        + (string.Equals(run.Request.Through, face.Face.Name, StringComparison.Ordinal) ? 2 : 0) + (run.Faces.Count > 2 && run.Faces[run.Faces.Count / 2] == face ? 1 : 0);

    private static SnapLine? Nearest(RunPlan run, FacePlan face, Axis axis) =>
        run.Lines.FirstOrDefault(l => l.Axis == axis && LineFace.Is(face.Face, l.Face));

    private static long Away(SnapLine? line, Length side) => line is null ? 0 : Math.Abs((side - line.At).Steps);

    /// <summary>How far the nearer of a piece's upright sides lies from the plumb line.</summary>
    private static long Beside(SnapLine? plumb, Piece piece) => Math.Min(Away(plumb, piece.Cell.Left), Away(plumb, piece.Cell.Right));

    private static string Stands(SnapLine? level, Piece piece, RunPlan run, Figures figures)
    {
        if (level is null) return "";
        var line = $"the level line {Place(level, run, figures)}";
        var off = piece.Cell.Bottom - level.At;
        var under = (level.At - piece.Cell.Top).Abs();
        if (under < off.Abs()) return under == Length.Zero ? $"hangs with its top on {line}" : $"hangs with its top {figures.NearWithUnit(under)} {(piece.Cell.Top < level.At ? "below" : "above")} {line}";
        return off == Length.Zero ? $"stands on {line}"
            : $"stands {figures.NearWithUnit(off.Abs())} {(off.IsNegative ? "below" : "above")} {line}";
    }

    /// <summary>The line's place with the unit after the figure.</summary>
    private static string Place(SnapLine line, RunPlan run, Figures figures)
    {
        var words = LinePlace.Of(line, run, figures).Words;
        var end = 0;
        while (end < words.Length && (char.IsAsciiDigit(words[end]) || words[end] is '/' or '.' || (words[end] == ' ' && end + 1 < words.Length && char.IsAsciiDigit(words[end + 1])))) end++;
        return end == 0 ? words : $"{words[..end]} {figures.Unit}{words[end..]}";
    }

    private static string Touches(SnapLine? plumb, Piece piece, RunPlan run, Figures figures)
    {
        if (plumb is null) return "";
        var line = $"the plumb line {Place(plumb, run, figures)}";
        var (left, right) = (piece.Cell.Left - plumb.At, piece.Cell.Right - plumb.At);
        var (side, off) = left.Abs() <= right.Abs() ? ("left", left) : ("right", right);
        return off == Length.Zero ? $"its {side} side touches {line}"
            : $"its {side} side lies {figures.NearWithUnit(off.Abs())} {(off.IsNegative ? "left" : "right")} of {line}";
    }
}
