using System.Globalization;
using Gaugerod.App.Desk;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Sheets;
using Microsoft.AspNetCore.Components;

namespace Gaugerod.App.Stations.Cuts;

/// <summary>The pieces by saw setting, to be ticked off; or one at a time in figures that can be read from the saw.</summary>
public sealed partial class CutsStation : ComponentBase
{
    private Piece? _one;
    private Plan? _wordsOf;
    private IReadOnlyDictionary<string, string> _words = new Dictionary<string, string>(StringComparer.Ordinal);

    [CascadingParameter]
    internal JobDesk Desk { get; set; } = null!;

    private IEnumerable<(string Title, List<Piece> Pieces)> Groups()
    {
        if (Desk.Plan is not { } plan) yield break;
        var pieces = plan.Runs.SelectMany(run => run.Faces).SelectMany(face => face.Pieces).ToDictionary(piece => piece.Id, StringComparer.Ordinal);
        foreach (var product in plan.Cutting)
        {
            foreach (var setting in product.Settings)
            {
                var title = $"Fence {LengthText.Down(setting.Fence, plan.Job.Tape)}, measured along the {(setting.Across ? "width" : "height")}";
                yield return (title, [.. setting.Pieces.Select(id => pieces[id])]);
            }

            if (product.ByHand.Count > 0) yield return ("Marked by hand", [.. product.ByHand.Select(id => pieces[id])]);
        }
    }

    private string Figure(Length length) => LengthText.Down(length, Desk.Plan!.Job.Tape);

    /// <summary>The cuts in the words of the printed cut list; made anew only for another plan.</summary>
    private string[] Words(Piece piece)
    {
        if (!ReferenceEquals(_wordsOf, Desk.Plan)) (_wordsOf, _words) = (Desk.Plan, CutText.Of(Desk.Plan!));
        return _words.TryGetValue(piece.Id, out var words) ? words.Split('\n') : [];
    }

    private string TileOf(string piece)
    {
        var tile = Desk.Plan!.Cutting.SelectMany(of => of.Tiles).FirstOrDefault(tile => tile.Pieces.Any(of => string.Equals(of.Id, piece, StringComparison.Ordinal)));
        return tile is null ? "" : string.Create(CultureInfo.InvariantCulture, $"from tile {tile.Number}");
    }

    private void Tick(string piece)
    {
        Desk.Tick(piece);
        if (_one is not null && Desk.Ticks.Contains(piece)) Step(1);
    }

    private void Step(int by)
    {
        var all = Groups().SelectMany(group => group.Pieces).ToList();
        if (all.Count == 0) return;
        var at = all.FindIndex(piece => string.Equals(piece.Id, _one?.Id, StringComparison.Ordinal));
        _one = all[(Math.Max(0, at) + by + all.Count) % all.Count];
    }
}
