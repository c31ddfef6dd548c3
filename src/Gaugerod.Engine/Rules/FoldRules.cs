using System.Globalization;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>
/// How many tiles the folds of a floor cut, and how many smaller ones they would. A straight line over a grid passes from tile to
/// tile at every joint it crosses: one tile, and one more for each joint either way.
/// </summary>
internal static class FoldRules
{
    private const string Fold = "fold";

    /// <summary>What there is to say of the planes of one floor; nothing where it is not folded.</summary>
    /// <param name="planes">The planes of a run with their pieces.</param>
    /// <param name="facts">The run.</param>
    internal static IEnumerable<Finding> Findings(IEnumerable<(FinishedFace Face, Sequence<Piece> Pieces)> planes, RunFacts facts) => planes
        .Where(plane => plane.Face.Plane is not null)
        .GroupBy(plane => plane.Face.Plane!.Face, StringComparer.Ordinal)
        .Select(floor => Of(floor.Key, [.. floor], facts));

    private static Finding Of(string floor, IReadOnlyList<(FinishedFace Face, Sequence<Piece> Pieces)> planes, RunFacts facts)
    {
        var pieces = planes.SelectMany(plane => plane.Pieces).ToList();
        var all = pieces.Select(Tile).Distinct().Count();
        var folded = pieces.Where(piece => piece.Cuts.Any(cut => string.Equals(cut.Faces, Fold, StringComparison.Ordinal))).Select(Tile).Distinct().Count();
        var small = facts.Tape.Unit == LengthUnit.Inch ? Length.FromInches(4) : Length.FromMillimetres(100);
        var many = 2 * folded > all;
        var text = string.Create(CultureInfo.InvariantCulture, $"{folded} of {all} tiles are cut along folds, each marked by hand.");
        // Every fold has a plane on either side.
        var (cut, area) = (planes.SelectMany(plane => plane.Face.Edges).Where(edge => string.Equals(edge.Name, Fold, StringComparison.Ordinal)).Sum(edge => Crossed(edge, small + facts.Joint)) / 2,
            planes.Sum(plane => (double)plane.Face.Field.Outer.DoubledArea / 2));
        var pitch = (double)(small + facts.Joint).Steps;
        var tiles = area / (pitch * pitch);
        if (facts.Longest > small && tiles > 0)
        {
            text += string.Create(CultureInfo.InvariantCulture, $" Of tiles {LengthText.Nearest(small, facts.Tape)} square in a grid about {Math.Min(100, Math.Round(100 * cut / tiles))} in a hundred would be, {Math.Round(100.0 * folded / all)} in a hundred are here.");
        }

        if (many) text += " A floor in one plane, to a drain along one side, has no folds to cut along.";
        return new(many ? FindingLevel.Warn : FindingLevel.Note, Fold, floor, text, "", string.Create(CultureInfo.InvariantCulture, $"{folded} of {all}"), Remarks.NoSource);
    }

    /// <summary>How many tiles of a grid a fold runs over.</summary>
    private static double Crossed(FieldEdge fold, Length pitch) => 1 + ((fold.To.X - fold.From.X).Abs().Steps + (fold.To.Y - fold.From.Y).Abs().Steps) / (double)pitch.Steps;

    /// <summary>The tile that a piece is of: pieces on both sides of a fold have its place in common.</summary>
    private static (long, long) Tile(Piece piece) => ((piece.Cell.Left.Steps + piece.Cell.Right.Steps) / 64, (piece.Cell.Bottom.Steps + piece.Cell.Top.Steps) / 64);
}
