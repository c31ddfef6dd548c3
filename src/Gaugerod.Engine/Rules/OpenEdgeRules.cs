using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>
/// Pieces that show a sawn side in the open. Where another side of theirs goes under something, that one is sawn instead; where
/// none does, no tile gives them, and what comes nearest is said.
/// </summary>
internal static class OpenEdgeRules
{
    private const string Rule = "open-edge";

    internal static IEnumerable<Finding> Findings(FinishedFace face, Sequence<Piece> pieces, Length joint, Tape tape)
    {
        var open = face.Edges.Where(edge => edge.Shows).Select(edge => edge.Name).ToHashSet(StringComparer.Ordinal);
        if (open.Count == 0) yield break;
        var sawn = pieces
            .SelectMany(piece => OpenSides.Sawn(piece, open.Contains).Select(cut => new Sawn(piece, cut)))
            .Select(of => of with { Needs = OpenSides.Needs(of.Piece, face, joint, open.Contains) })
            .ToLookup(of => of.Needs is { } needs && OpenSides.Gives(needs, of.Piece));
        foreach (var edge in sawn[true].GroupBy(of => of.Cut.Faces, StringComparer.Ordinal)) yield return Turned(face, edge.Key, [.. edge], tape);
        foreach (var edge in sawn[false].GroupBy(of => of.Cut.Faces, StringComparer.Ordinal)) yield return NotHad(face, edge.Key, [.. edge], joint, tape);
    }

    private static Finding Turned(FinishedFace face, string edge, List<Sawn> sawn, Tape tape) => Said(
        face, edge, sawn, "a sawn side here, and need not: turn the tile and take as much off the side across, which goes under something.",
        sawn.Min(of => of.Cut.Least), tape);

    private static Finding NotHad(FinishedFace face, string edge, List<Sawn> sawn, Length joint, Tape tape)
    {
        var them = Pieces(sawn).Count == 1 ? "it" : "them";
        var between = Between(sawn);
        return Said(
            face, edge, sawn, $"a sawn side here, where nothing covers it: no tile gives {them} with sides of its own here and at the joints. Nearest: {Nearest(sawn, between, joint, tape)}.",
            between ?? sawn.Min(of => of.Cut.Least), tape);
    }

    private static Finding Said(FinishedFace face, string edge, List<Sawn> sawn, string words, Length size, Tape tape)
    {
        var names = Pieces(sawn);
        return new(
            FindingLevel.Warn, Rule, EdgeWords.Of(face.Name, edge), $"{PieceNames.Of(names)} {(names.Count == 1 ? "shows" : "show")} {words}",
            "a side of the tile's own where it shows", $"cut to {LengthText.Narrowest(size, tape)} of {LengthText.Nearest(Whole(sawn[0]), tape)}", Remarks.NoSource);
    }

    /// <summary>Where whole tiles would end, when one place does for all; a trim always does.</summary>
    private static string Nearest(List<Sawn> sawn, Length? between, Length joint, Tape tape)
    {
        if (between is { } size) return $"{LengthText.Nearest(Whole(sawn[0]) - size, tape)} more from one open side to the other, so that a whole tile fills it; or a trim that covers them";
        var (least, most) = (sawn.Min(of => of.Cut.Least), sawn.Max(of => of.Cut.Most));
        if (most - least > tape.Mark || !AreAlike(sawn)) return "a trim that covers them";
        var (outwards, inwards) = (Whole(sawn[0]) - least, most + joint);
        var by = outwards <= inwards ? $"{LengthText.Nearest(outwards, tape)} further out" : $"{LengthText.Nearest(inwards, tape)} further in";
        return $"let the tile end {by}, where whole ones do; a trim that covers them; or shift the line with a full course asked for here";
    }

    /// <summary>The size of pieces that stand between two edges that show: neither the line nor one of the edges helps them. Null for others.</summary>
    private static Length? Between(List<Sawn> sawn)
    {
        if (!AreAlike(sawn) || !sawn.Exists(of => of.Needs![(int)Across(of.Cut.Away)].Shows)) return null;
        return sawn.Min(of => of.Cut.Away is TileSide.Left or TileSide.Right ? of.Piece.Upright.Bounds.Width : of.Piece.Upright.Bounds.Height);
    }

    private static bool AreAlike(List<Sawn> sawn) => sawn.TrueForAll(of => of.Needs is not null && of.Cut.Away == sawn[0].Cut.Away && Whole(of) == Whole(sawn[0]));

    private static Length Whole(Sawn sawn) => OpenSides.Whole(sawn.Piece, sawn.Cut.Away);

    private static List<Piece> Pieces(List<Sawn> sawn) => [.. sawn.Select(of => of.Piece).Distinct()];

    private static TileSide Across(TileSide side) => side switch { TileSide.Left => TileSide.Right, TileSide.Right => TileSide.Left, TileSide.Bottom => TileSide.Top, _ => TileSide.Bottom };

    private readonly record struct Sawn(Piece Piece, CutMark Cut, OpenSides.Need[]? Needs = null);
}
