using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Sheets.Sheets;

/// <summary>
/// A full course at an edge is held where the edge stands furthest out, and a joint that is missed may meet it there all the same.
/// Where the edge is out, the tiles beside that point are cut along it: whoever reads "held" must not be surprised by the cut.
/// </summary>
internal static class HeldJoint
{
    /// <summary>Which pieces are cut along the edge of a want that is met there; empty when none is.</summary>
    public static string Words(WantOutcome outcome, RunPlan run, Figures figures)
    {
        if (EdgeOf(outcome) is not { } edge || Out(edge, run) is not { } slope) return "";
        var pieces = run.Faces.Where(f => string.Equals(f.Face.Name, edge.Face, StringComparison.Ordinal)).SelectMany(f => f.Pieces).Where(p => Along(p, edge, slope.By, figures) is not null).Select(p => p.Id).ToArray();
        if (pieces.Length == 0) return "";
        return $" {Capital(Thing(edge.Edge))} is {figures.NearWithUnit(slope.By)} out of {slope.Of}: {NameList.Of(pieces)} {(pieces.Length == 1 ? "is" : "are")} cut along it.";
    }

    /// <summary>Why a piece is cut along an edge on which a joint is held; null when it is not.</summary>
    public static string? Of(Piece piece, RunPlan run, Figures figures)
    {
        foreach (var outcome in run.Best.Wants)
        {
            if (EdgeOf(outcome) is { } edge && string.Equals(edge.Face, piece.Face, StringComparison.Ordinal) && Out(edge, run) is { } slope && Along(piece, edge, slope.By, figures) is { } side)
            {
                return $"cut at the {CutWords.Side(side)} because {Thing(edge.Edge)} is out of {slope.Of}";
            }
        }

        return null;
    }

    private static EdgeRef? EdgeOf(WantOutcome outcome) => outcome switch
    {
        { Want: Want.JointOnEdge on } when outcome.Held || outcome.MeetsInPart => on.Edge,
        { Held: true, Want: Want.FullCourse full } => full.Edge,
        _ => null,
    };

    /// <summary>How far an edge is out of level or of plumb.</summary>
    private static (Length By, string Of)? Out(EdgeRef edge, RunPlan run)
    {
        var sides = run.Faces.Where(f => string.Equals(f.Face.Name, edge.Face, StringComparison.Ordinal))
            .SelectMany(f => f.Face.Edges).Where(e => string.Equals(e.Name, edge.Edge, StringComparison.Ordinal)).ToArray();
        if (sides.Length == 0) return null;
        var ends = sides.SelectMany(s => new[] { s.From, s.To }).ToArray();
        var (right, up) = (ends.Max(p => p.X) - ends.Min(p => p.X), ends.Max(p => p.Y) - ends.Min(p => p.Y));
        return right >= up ? (up, "level") : (right, "plumb");
    }

    /// <summary>The side at which a piece is cut by no more than the edge is out; null when it is not, or by less than the tape shows.</summary>
    private static TileSide? Along(Piece piece, EdgeRef edge, Length by, Figures figures)
    {
        foreach (var cut in piece.Cuts.Where(c => string.Equals(c.Faces, edge.Edge, StringComparison.Ordinal)))
        {
            var whole = cut.Away is TileSide.Left or TileSide.Right ? piece.Cell.Width : piece.Cell.Height;
            var off = whole - cut.Least;
            if (!figures.SameCut(cut.Least, whole) && off <= by + figures.Tape.Mark) return cut.Away;
        }

        return null;
    }

    /// <summary><c>window.bottom</c> as <c>the bottom of the window</c>.</summary>
    private static string Thing(string edge) => edge.IndexOf('.', StringComparison.Ordinal) is > 0 and var dot
        ? $"the {edge[(dot + 1)..]} of the {edge[..dot]}"
        : "the " + edge;

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
