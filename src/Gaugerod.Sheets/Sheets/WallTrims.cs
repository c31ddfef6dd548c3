using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A piece of trim, a corner piece or a stop, where it sits on a wall.</summary>
/// <param name="Id">Its number on the job.</param>
/// <param name="Outline">Its outline on the wall.</param>
/// <param name="IsCut">Whether the saw has to do with it.</param>
/// <param name="Line">The line it is a piece of, or one of the two that a corner piece belongs to.</param>
/// <param name="Piece">The piece; null for a corner piece, a stop or a return.</param>
/// <param name="Corner">The corner piece or stop; null for a piece of a line.</param>
public sealed record TrimPart(string Id, Ring Outline, bool IsCut, PlannedTrim Line, TrimPiece? Piece, CornerPiece? Corner)
{
    /// <summary>The return, which goes into the depth and is drawn folded out; null for all else.</summary>
    public TrimReturn? Return { get; init; }
}

/// <summary>What stands on a wall of its trims; every picture of the wall, on paper and on the screen, draws the same.</summary>
public static class WallTrims
{
    /// <summary>How much further off than a joint a trim may stand and be beside a zone, 1 mm: what rounding makes of a raking side.</summary>
    private const double Near = Length.StepsPerMillimetre;

    /// <summary>The lines on a wall that have pieces of their own: not what is worked on the field's tiles.</summary>
    public static IReadOnlyList<PlannedTrim> Lines(Plan plan, string wall)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Trims.Lines.Count == 0 ? [] :
        [
            .. plan.Trims.Lines.Where(line => line.Pieces.Count > 0 && string.Equals(line.Face, wall, StringComparison.Ordinal)
                && plan.Job.Trims.Any(trim => !trim.IsWorked && string.Equals(trim.Name, line.Product, StringComparison.Ordinal))),
        ];
    }

    /// <summary>All that is drawn: the pieces of every line from its right end, then returns, corner pieces and stops.</summary>
    public static IReadOnlyList<TrimPart> Of(Plan plan, string wall) => Of(Lines(plan, wall));

    internal static IReadOnlyList<TrimPart> Of(IReadOnlyList<PlannedTrim> lines)
    {
        var pieces = lines.SelectMany(line => line.Pieces.Select(piece => new TrimPart(piece.Id, piece.Outline, !TrimWords.IsWhole(piece), line, piece, null)));
        var returns = lines.SelectMany(line => line.Returns.Select(turned => new TrimPart(turned.Id, FoldedOut(line, turned), true, line, null, null) { Return = turned }));
        var corners = lines.SelectMany(line => line.CornerPieces.SelectMany(corner => corner.Parts.Where(part => string.Equals(part.Face, line.Face, StringComparison.Ordinal))
            .Select(part => new TrimPart(corner.Id, part.Outline, false, line, null, corner))));
        return [.. pieces, .. returns, .. corners.DistinctBy(part => part.Id, StringComparer.Ordinal)];
    }

    /// <summary>Of a wall's trims those that stand at the sides of one field on it, a joint off.</summary>
    internal static IEnumerable<TrimPart> Beside(Job job, IEnumerable<TrimPart> parts, FinishedFace field)
    {
        // No joint beside a trim is wider than the widest asked for; beyond a band half of its own joint comes to it.
        var reach = Near + (2 * field.Edges.Select(edge => edge.Joint).Concat(job.Trims.Select(trim => trim.Joint)).Append(job.EdgeJoint).Max().Steps);
        var rings = field.Field.Inner.Prepend(field.Field.Outer).ToList();
        return parts.Where(part => rings.Exists(ring => Apart(ring, part.Outline) <= reach));
    }

    /// <summary>A return as it lies when it is folded out of the depth, on from the end that it goes round.</summary>
    private static Ring FoldedOut(PlannedTrim line, TrimReturn turned)
    {
        // A piece's outline: its far side from its beginning, then back along the side that faces the field.
        var ends = (turned.AtLeft ? line.Pieces[^1] : line.Pieces[0]).Outline.Points;
        var (far, near, behind) = turned.AtLeft ? (ends[1], ends[2], ends[3]) : (ends[0], ends[3], ends[2]);
        var (x, y) = ((double)(near.X - behind.X).Steps, (double)(near.Y - behind.Y).Steps);
        var part = turned.Length.Steps / Math.Sqrt((x * x) + (y * y));
        var (right, up) = (Grid.Nearest(x * part), Grid.Nearest(y * part));
        return turned.AtLeft
            ? new([far, far.Moved(right, up), near.Moved(right, up), near])
            : new([far.Moved(right, up), far, near, near.Moved(right, up)]);
    }

    /// <summary>How far apart two outlines lie that do not cross: at a corner of one of them.</summary>
    private static double Apart(Ring one, Ring other) => Math.Min(one.Points.Min(at => Off(at, other)), other.Points.Min(at => Off(at, one)));

    private static double Off(Point at, Ring ring)
    {
        var least = double.MaxValue;
        for (var i = 0; i < ring.Points.Count; i++)
        {
            var (a, b) = (ring.Points[i], ring.Points[(i + 1) % ring.Points.Count]);
            var (dx, dy) = ((double)(b.X - a.X).Steps, (double)(b.Y - a.Y).Steps);
            var (x, y) = ((double)(at.X - a.X).Steps, (double)(at.Y - a.Y).Steps);
            var part = Math.Clamp(((x * dx) + (y * dy)) / ((dx * dx) + (dy * dy)), 0, 1);
            least = Math.Min(least, Math.Sqrt(Math.Pow(x - (part * dx), 2) + Math.Pow(y - (part * dy), 2)));
        }

        return least;
    }
}
