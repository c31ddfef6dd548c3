using System.Globalization;
using Gaugerod.App.Desk;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;
using Microsoft.AspNetCore.Components;

namespace Gaugerod.App.Stations.Cuts;

/// <summary>The pieces by saw setting, to be ticked off; or one at a time in figures that can be read from the saw.</summary>
public sealed partial class CutsStation : ComponentBase
{
    private Piece? _one;

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

    private string CutText(CutMark cut) =>
        $"{(cut.First == cut.Last ? Figure(cut.First) : $"{Figure(cut.First)} at one end, {Figure(cut.Last)} at the other")} from the {Across(cut.Away)}";

    private static string Across(TileSide away) => away switch
    {
        TileSide.Left => "right side",
        TileSide.Right => "left side",
        TileSide.Bottom => "upper side",
        _ => "lower side",
    };

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
