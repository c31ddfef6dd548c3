using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A run unrolled: its faces side by side, corners as fold lines, the lines to snap with their heights, the first tile marked.</summary>
internal static class RunPicture
{
    private const double Triangles = 1.6, Above = 8, Below = 6, Beside = 3, Fold = 5;

    public static Box BoundsOf(RunPlan run) => Box.Around(run.Faces.SelectMany(f =>
        f.Face.Outline.Points.Select(p => p.Moved(f.Face.Unrolled, f.Face.Raised))));

    public static double HeightAt(RunPlan run, int scale) => FaceMap.OnPaper(BoundsOf(run).Height, scale) + Above + Below;

    public static double WidthAt(RunPlan run, int scale) => FaceMap.OnPaper(BoundsOf(run).Width, scale) + (Fold * Corners(run).Last()) + (2 * Beside);

    /// <summary>Draws it; false when the first tile is too small for its name and was made solid instead.</summary>
    public static bool Draw(Pen pen, Plan plan, RunPlan run, int scale, double x, double y, double width, IReadOnlyList<FirstTile> first, Figures figures, bool numbered = false) =>
        Steps(pen, plan, run, scale, x, y, width, first, figures, numbered).Last();

    /// <summary>As <see cref="Draw"/>, a little at a time, so that the caller may do something else between; the last counts.</summary>
    public static IEnumerable<bool> Steps(Pen pen, Plan plan, RunPlan run, int scale, double x, double y, double width, IReadOnlyList<FirstTile> first, Figures figures, bool numbered)
    {
        var bounds = BoundsOf(run);
        var left = x + ((width - FaceMap.OnPaper(bounds.Width, scale) - (Fold * Corners(run).Last())) / 2);
        var corners = Corners(run);
        var map = new FaceMap(scale, new(left - FaceMap.OnPaper(bounds.Left, scale), y + Above + FaceMap.OnPaper(bounds.Top, scale)));
        var pictures = run.Faces.Select((f, i) => new FacePicture(f, Folded(map, corners[i]).Moved(f.Face.Unrolled, f.Face.Raised), pen)).ToArray();
        foreach (var wall in pictures.GroupBy(picture => picture.Plan.Face.Wall, StringComparer.Ordinal))
        {
            FacePicture.DrawTogether([.. wall], Others(plan, run, wall.Key).Select(other => new FacePicture(other, wall.First().Map, pen)), new(wall.First().Map, pen, WallTrims.Of(plan, wall.Key)));
            yield return true;
        }

        foreach (var wall in pictures.GroupBy(picture => picture.Plan.Face.Wall, StringComparer.Ordinal))
        {
            var frame = Frame.Around(wall.SelectMany(picture => picture.Map.Ring(picture.Plan.Face.Outline)));
            pen.Text(frame.Middle.X, y + Above + FaceMap.OnPaper(bounds.Height, scale) + 4.4, wall.Key, 9.5, bold: true, Anchor.Middle);
            if (wall.First() != pictures[0]) pen.Line(frame.X - (Fold / 2), frame.Y - 3, frame.X - (Fold / 2), frame.Bottom + 3, Stroke.FoldLine);
        }

        foreach (var picture in FacePicture.SetOut(pictures))
        {
            if (!run.IsBorder) picture.Lines(run.Turned);
            picture.Lines(run.Lines, Triangles, onTile: run.IsBorder);
        }

        var named = Mark(pen, pictures, first);
        var kept = run.IsBorder ? [] : Heights(pen, run, pictures, figures);
        if (run.IsBorder) kept.AddRange(pictures.Select(picture => Strip(pen, picture)));
        yield return named;
        if (!numbered) yield break;
        foreach (var _ in Numbers(pen, pictures, kept, named ? first : [], figures)) yield return named;
    }

    /// <summary>What other runs lay on a wall.</summary>
    private static IEnumerable<FacePlan> Others(Plan plan, RunPlan run, string wall) => plan.Runs.Where(other => !ReferenceEquals(other, run))
        .SelectMany(other => other.Faces).Where(face => string.Equals(face.Face.Wall, wall, StringComparison.Ordinal));

    /// <summary>Writes a strip's name beside its inner edge.</summary>
    private static Frame Strip(Pen pen, FacePicture picture)
    {
        var inner = picture.Plan.Face.Edges[2];
        var (from, to) = (picture.Map.At(inner.From), picture.Map.At(inner.To));
        var (along, up) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Sqrt((along * along) + (up * up));
        // The tile lies to the edge's left as seen from inside; on the paper y runs down, so the field lies to the other side.
        var at = new Spot(((from.X + to.X) / 2) - (up / length * 2.4), ((from.Y + to.Y) / 2) + (along / length * 2.4));
        var upright = Math.Abs(up) > Math.Abs(along);
        pen.TextAround(at, picture.Plan.Face.Name, 7.5, upright: upright, onPaper: true);
        return Pen.BoxAround(at, picture.Plan.Face.Name, 7.5, bold: false, upright);
    }

    /// <summary>For each face how many corners of the room lie before it: the parts of one wall lie together.</summary>
    private static int[] Corners(RunPlan run)
    {
        var corners = new int[run.Faces.Count];
        for (var i = 1; i < corners.Length; i++) corners[i] = corners[i - 1] + (string.Equals(run.Faces[i].Face.Wall, run.Faces[i - 1].Face.Wall, StringComparison.Ordinal) ? 0 : 1);
        return corners;
    }

    /// <summary>Every corner of the room opens a little gap, so that the fold line is seen and each wall's end cuts stand free.</summary>
    private static FaceMap Folded(FaceMap map, int corners) => map with { Origin = new(map.Origin.X + (Fold * corners), map.Origin.Y) };

    private static bool Mark(Pen pen, FacePicture[] pictures, IReadOnlyList<FirstTile> first) => first.Aggregate(true, (named, tile) => Mark(pen, pictures, tile) && named);

    private static bool Mark(Pen pen, FacePicture[] pictures, FirstTile first)
    {
        if (first.Piece is null) return true;
        var picture = Array.Find(pictures, p => string.Equals(p.Plan.Face.Name, first.Face, StringComparison.Ordinal))!;
        var frame = picture.Map.Frame(first.Piece.Outline.Bounds);
        var ring = picture.Map.Ring(first.Piece.Outline);
        pen.Area(ring, Fill.None, Stroke.Outline);
        foreach (var (words, size) in new[] { ("first tile", 8.0), ("first", 7.5) })
        {
            if (!Region.Holds([ring], Pen.BoxAround(frame.Middle, words, size, bold: true, upright: false))) continue;
            pen.TextAround(frame.Middle, words, size, bold: true, onPaper: true);
            return true;
        }

        pen.Area(ring, Fill.Ink, Stroke.Outline, "first tile");
        return false;
    }

    /// <summary>Numbers every cut piece, clear of what is written already.</summary>
    private static IEnumerable<Piece> Numbers(Pen pen, FacePicture[] pictures, List<Frame> kept, IReadOnlyList<FirstTile> first, Figures figures)
    {
        foreach (var picture in pictures)
        {
            var numbers = new PieceNumbers(picture, pen, picture.Bounds.Grown(4), figures);
            foreach (var frame in kept) numbers.Keep(frame);
            foreach (var opening in picture.Plan.Face.Openings) numbers.Keep(Pen.BoxAround(Frame.Around(picture.Map.Ring(opening.Ring)).Middle, opening.Name, 8, bold: false, upright: false));
            foreach (var piece in first.Where(tile => string.Equals(tile.Face, picture.Plan.Face.Name, StringComparison.Ordinal)).Select(tile => tile.Piece).OfType<Piece>())
            {
                numbers.Keep(Pen.BoxAround(picture.Map.Frame(piece.Outline.Bounds).Middle, "first tile", 8, bold: true, upright: false));
            }

            foreach (var done in numbers.OneByOne(picture.Plan.Pieces)) yield return done;
        }
    }

    /// <summary>Writes each line's height at its left end, and a plumb line's distance above it.</summary>
    private static List<Frame> Heights(Pen pen, RunPlan run, FacePicture[] pictures, Figures figures)
    {
        var taken = new List<Frame>();
        foreach (var picture in FacePicture.SetOut(pictures))
        {
            foreach (var line in run.Lines.Where(l => LineFace.Is(picture.Plan.Face, l.Face)))
            {
                var (from, _) = picture.Ends(line, line.Axis == Axis.Level ? 0 : Triangles);
                var words = LinePlace.Of(line, run, figures).Short;
                var box = Pen.BoxAround(default, words, 8.5, bold: true, upright: false);
                var at = line.Axis == Axis.Level
                    ? new Spot(from.X + (box.Width / 2) + 0.6, from.Y - (box.Height / 2) - 0.2)
                    : new Spot(from.X, from.Y - (box.Height / 2) - 0.8);
                for (var tries = 0; tries < 6 && taken.Exists(Pen.BoxAround(at, words, 8.5, bold: true, upright: false).Meets); tries++)
                {
                    at = line.Axis == Axis.Level ? new(at.X, at.Y - box.Height) : new(at.X, at.Y - box.Height + 0.4);
                }

                pen.TextAround(at, words, 8.5, bold: true, ink: Ink.SnapLine, onPaper: line.Axis == Axis.Level);
                taken.Add(Pen.BoxAround(at, words, 8.5, bold: true, upright: false));
            }
        }

        return taken;
    }
}
