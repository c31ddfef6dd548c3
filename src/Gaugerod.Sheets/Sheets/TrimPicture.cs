using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>The trims of a wall where they sit: every piece with its joints and mitres, numbered where there is room.</summary>
/// <param name="map">Where the wall lies on the paper.</param>
/// <param name="pen">The pen.</param>
/// <param name="lines">The wall's lines of trim.</param>
internal sealed class TrimPicture(FaceMap map, Pen pen, IReadOnlyList<PlannedTrim> lines)
{
    /// <summary>The lines on a wall that have pieces of their own: not what is worked on the field's tiles.</summary>
    public static IReadOnlyList<PlannedTrim> On(Plan plan, string wall) => plan.Trims.Lines.Count == 0 ? [] :
    [
        .. plan.Trims.Lines.Where(line => line.Pieces.Count > 0 && string.Equals(line.Face, wall, StringComparison.Ordinal)
            && plan.Job.Trims.Any(trim => !trim.IsWorked && string.Equals(trim.Name, line.Product, StringComparison.Ordinal))),
    ];

    public bool Stands(string edge) => lines.Any(line => string.Equals(line.Edge, edge, StringComparison.Ordinal));

    public void Draw()
    {
        foreach (var piece in lines.SelectMany(line => line.Pieces)) pen.Area(Ring(piece), Fill.Fixture, EdgeOf(piece), piece.Id);
    }

    public void Number(PieceNumbers numbers)
    {
        foreach (var piece in lines.SelectMany(line => line.Pieces)) numbers.Within(piece.Id, [Ring(piece)]);
    }

    /// <summary>A piece to be sawn looks like a cut tile.</summary>
    public static Stroke EdgeOf(TrimPiece piece) => TrimWords.IsWhole(piece) ? Stroke.FixtureEdge : Stroke.CutEdge;

    /// <summary>What stands on a wall, for a person who cannot see it.</summary>
    public static string Describe(Plan plan, string wall) =>
        string.Concat(On(plan, wall).Select(line => $" Trim at {line.Edge}: {line.Product}, {Figures.Count(line.Pieces.Count, "piece", "pieces")}."));

    private Sequence<Spot> Ring(TrimPiece piece) => map.Ring(piece.Outline);
}
