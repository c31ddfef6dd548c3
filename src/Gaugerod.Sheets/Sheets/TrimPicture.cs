using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Trims;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>The trims of a wall where they sit: every piece with its joints and mitres, corner pieces and stops, numbered where there is room.</summary>
/// <param name="map">Where the wall lies on the paper.</param>
/// <param name="pen">The pen.</param>
/// <param name="lines">The wall's lines of trim.</param>
internal sealed class TrimPicture(FaceMap map, Pen pen, IReadOnlyList<PlannedTrim> lines)
{
    private readonly IReadOnlyList<TrimPart> _parts = WallTrims.Of(lines);

    public bool Stands(string edge) => lines.Any(line => string.Equals(line.Edge, edge, StringComparison.Ordinal));

    public void Draw()
    {
        foreach (var part in _parts) pen.Area(map.Ring(part.Outline), FillOf(part), EdgeOf(part.IsCut), part.Id);
    }

    public void Number(PieceNumbers numbers)
    {
        foreach (var part in _parts) numbers.Within(part.Id, [map.Ring(part.Outline)]);
    }

    /// <summary>A piece to be sawn looks like a cut tile.</summary>
    public static Stroke EdgeOf(bool isCut) => isCut ? Stroke.CutEdge : Stroke.FixtureEdge;

    /// <summary>What is cut is hatched as cut tile is, so that it tells in black and white; a corner piece or a stop stands apart from the pieces of its lines.</summary>
    public static Fill FillOf(TrimPart part) => part.Corner is not null ? Fill.Paper : part.IsCut ? Fill.Straight : Fill.Fixture;

    /// <summary>What stands on a wall, for a person who cannot see it.</summary>
    public static string Describe(Plan plan, string wall) => string.Concat(WallTrims.Lines(plan, wall).Select(line =>
        $" Trim at {line.Edge}: {line.Product}, {Figures.Count(line.Pieces.Count, "piece", "pieces")}{string.Concat(line.CornerPieces.Select(corner => $", {TrimWords.Of(corner)} {corner.Id}"))}."));
}
