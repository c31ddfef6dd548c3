using Gaugerod.App.Desk;
using Gaugerod.Engine.Trims;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.App.Stations.Cuts;

/// <summary>The pieces of trim to cut, a line at a time.</summary>
public sealed partial class CutsStation
{
    /// <summary>The lines of trim that are bought and of which something is cut, with those pieces; what is worked on a field's tile is no piece of trim.</summary>
    private IEnumerable<(PlannedTrim Line, List<TrimPiece> Pieces)> TrimCuts =>
        from line in Desk.Plan?.Trims.Lines ?? []
        where Desk.Plan!.Job.Trims.Any(trim => !trim.IsWorked && string.Equals(trim.Name, line.Product, StringComparison.Ordinal))
        let pieces = line.Pieces.Where(piece => !TrimWords.IsWhole(piece)).ToList()
        where pieces.Count > 0
        select (line, pieces);

    private bool IsCut(PlannedTrim line, TrimPiece piece) => Desk.Ticks.Contains(PieceTick.Of(line, piece));

    private static string Taken(PlannedTrim line)
    {
        var whole = line.Pieces.Where(TrimWords.IsWhole).Select(piece => piece.Id).ToList();
        return $"{TrimWords.Of(line.Ways[0].Joints)}: {line.Ways[0].Why}." + (whole.Count == 0 ? "" : $" Whole: {string.Join(", ", whole)}.");
    }

    private string Stock(PlannedTrim line, TrimPiece piece)
    {
        var byBar = Desk.Plan!.Job.Trims.Any(trim => trim.ByBar && string.Equals(trim.Name, line.Product, StringComparison.Ordinal));
        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{(byBar ? "bar" : "piece")} {piece.Stock} of stock");
    }
}
