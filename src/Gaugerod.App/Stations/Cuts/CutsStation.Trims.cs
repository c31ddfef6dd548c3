using Gaugerod.App.Desk;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.App.Stations.Cuts;

/// <summary>The pieces of trim to cut, a line at a time.</summary>
public sealed partial class CutsStation
{
    /// <summary>The lines of trim that are bought and of which something is cut, with those pieces; what is worked on a field's tile is no piece of trim.</summary>
    private IEnumerable<(PlannedTrim Line, List<TrimCut> Pieces)> TrimCuts =>
        from line in Desk.Plan?.Trims.Lines ?? []
        where Desk.Plan!.Job.Trims.Any(trim => !trim.IsWorked && string.Equals(trim.Name, line.Product, StringComparison.Ordinal))
        let cut = line.Pieces.Where(piece => !TrimWords.IsWhole(piece)).Select(piece => new TrimCut(piece.Id, piece.Length, piece.MitreTakes, TrimWords.Ends(line, piece), piece.Stock))
            .Concat(line.Returns.Select(piece => new TrimCut(piece.Id, piece.Length, piece.MitreTakes, TrimWords.Of(piece), piece.Stock)))
        let pieces = cut.ToList()
        where pieces.Count > 0
        select (line, pieces);

    /// <summary>A piece of trim that is cut: of a line, or one that goes on round its end.</summary>
    private sealed record TrimCut(string Id, Length Length, Length MitreTakes, string Ends, int Stock)
    {
        public string Tick => PieceTick.Of(Id, Length, Ends);
    }

    private bool IsCut(TrimCut piece) => Desk.Ticks.Contains(piece.Tick);

    private static string Taken(PlannedTrim line)
    {
        var whole = line.Pieces.Where(TrimWords.IsWhole).Select(piece => piece.Id).ToList();
        return Way(line.Ways[0]) + "." + (whole.Count == 0 ? "" : $" Whole: {string.Join(", ", whole)}.")
            + string.Concat(line.CornerPieces.Select(corner => $" {corner.Id}: {TrimWords.Of(corner)}."));
    }

    /// <summary>A way to put the joints, and what is to be said for it; one piece has none to put.</summary>
    private static string Way(TrimWay way) => way.Lengths.Count == 1 ? way.Why : $"{TrimWords.Of(way.Joints)}: {way.Why}";

    /// <summary>How long a piece is, to the long point of a mitre and to the short one.</summary>
    private string Long(TrimCut piece)
    {
        var tape = Desk.Plan!.Job.Tape;
        return LengthText.Down(piece.Length, tape) + (piece.MitreTakes > Length.Zero ? $", {LengthText.Down(piece.Length - piece.MitreTakes, tape)} to the short point" : "");
    }

    private string Stock(PlannedTrim line, TrimCut piece)
    {
        var byBar = Desk.Plan!.Job.Trims.Any(trim => trim.ByBar && string.Equals(trim.Name, line.Product, StringComparison.Ordinal));
        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{(byBar ? "bar" : "piece")} {piece.Stock} of stock");
    }
}
