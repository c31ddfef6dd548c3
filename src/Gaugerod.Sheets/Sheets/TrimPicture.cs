using Gaugerod.Engine.Trims;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>The trims of a wall where they sit: every piece with its joints and mitres, returns folded out, corner pieces and stops, numbered where there is room.</summary>
/// <param name="map">Where the wall lies on the paper.</param>
/// <param name="pen">The pen.</param>
/// <param name="parts">What stands on the wall, or beside the zone that is drawn.</param>
internal sealed class TrimPicture(FaceMap map, Pen pen, IReadOnlyList<TrimPart> parts)
{
    public bool Stands(string edge) => parts.Any(part => string.Equals(part.Line.Edge, edge, StringComparison.Ordinal));

    public void Draw()
    {
        foreach (var part in parts) pen.Area(map.Ring(part.Outline), FillOf(part), EdgeOf(part), part.Id);
    }

    public void Number(PieceNumbers numbers)
    {
        foreach (var part in parts) numbers.Within(part.Id, [map.Ring(part.Outline)]);
    }

    /// <summary>A piece to be sawn looks like a cut tile; a return is not where it is drawn.</summary>
    public static Stroke EdgeOf(TrimPart part) => part.Return is not null ? Stroke.Ghost : part.IsCut ? Stroke.CutEdge : Stroke.FixtureEdge;

    /// <summary>What is cut is hatched as cut tile is, so that it tells in black and white; a corner piece or a stop stands apart from the pieces of its lines.</summary>
    public static Fill FillOf(TrimPart part) => part.Return is not null ? Fill.None : part.Corner is not null ? Fill.Paper : part.IsCut ? Fill.Straight : Fill.Fixture;

    /// <summary>What is drawn, for a person who cannot see it.</summary>
    public static string Describe(IReadOnlyList<TrimPart> parts) => string.Concat(parts.GroupBy(part => part.Line).Select(of => Describe(of.Key, [.. of])));

    private static string Describe(PlannedTrim line, List<TrimPart> parts) =>
        $" Trim at {line.Edge}: {line.Product}, {Figures.Count(parts.Count(part => part.Piece is not null), "piece", "pieces")}"
        + string.Concat(parts.Where(part => part.Return is not null).Select(part => $", {TrimWords.Of(part.Return!)} {part.Id}"))
        + string.Concat(line.CornerPieces.Select(corner => $", {TrimWords.Of(corner)} {corner.Id}")) + ".";
}
